/** A watch that was just started: each call gives the milliseconds since then. */
export function stopwatch(): () => number {
  const start = now();
  return () => now() - start;
}

/** Node has this at hand; what `performance` needs it would load first, a hundredth of a short check. */
function now(): number {
  const [seconds, nanoseconds] = process.hrtime();
  return seconds * 1_000 + nanoseconds / 1_000_000;
}
