/** How often a trial is repeated: as often as here, or so many times as often with `npm run fuzz` (FUZZ_TIMES). */
export function runs(quick: number): number {
  const times = Number(process.env.FUZZ_TIMES ?? '1');
  return Math.round(quick * (Number.isFinite(times) && times > 0 ? times : 1));
}
