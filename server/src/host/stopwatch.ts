/** A watch that was just started: each call gives the milliseconds since then. */
export function stopwatch(): () => number {
  const start = performance.now();
  return () => performance.now() - start;
}
