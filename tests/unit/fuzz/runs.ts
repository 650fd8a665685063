/** How often a trial is repeated: as often as here, or so many times as often with `npm run fuzz` (FUZZ_TIMES). */
export function runs(quick: number): number {
  const times = Number(process.env.FUZZ_TIMES ?? '1');
  return Math.round(quick * (Number.isFinite(times) && times > 0 ? times : 1));
}

/** A branch switch: so many files, of which each so-and-so-many-th changes. In the long trial a thousand of ten thousand. */
export const branch = { files: Math.min(10_000, runs(200)), everyOther: runs(200) < 2_000 ? 2 : 10 };

/** The share of the trials that succeed, so that a trial which never does what it is there for is seen. */
export function shareOf(trials: number, succeeds: () => boolean): number {
  let succeeded = 0;
  for (let left = trials; left > 0; left--) if (succeeds()) succeeded++;
  return succeeded / trials;
}
