/** Numbers from `low` to `high`, both included, in one base unit. ±Infinity stands for "no limit". Empty when `low` is above `high`. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

export const everything: Interval = { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY };

export function exactly(value: number): Interval {
  return { low: value, high: value };
}

/** A limit that is not a number makes the interval empty: nothing is ever allowed by it. */
export function isEmpty(interval: Interval): boolean {
  return !(interval.low <= interval.high);
}

/** True when `value` lies in the interval; never for NaN. */
export function contains(interval: Interval, value: number): boolean {
  return interval.low <= value && value <= interval.high;
}

/** What both allow. Empty intervals stay empty. */
export function intersect(a: Interval, b: Interval): Interval {
  return { low: Math.max(a.low, b.low), high: Math.min(a.high, b.high) };
}

/** What all of them allow; everything when there are none. */
export function intersectAll(intervals: Iterable<Interval>): Interval {
  let common = everything;
  for (const interval of intervals) common = intersect(common, interval);
  return common;
}

/** How the numbers allowed by `a` lie to those allowed by `b`. An empty one is a subset of every other. */
export type IntervalRelation = 'equal' | 'subset' | 'superset' | 'overlap' | 'disjoint';

/** `subset`: `a` allows less than `b` (an instruction grew stricter from `b` to `a`). Two intervals that share one end number overlap. */
export function compareIntervals(a: Interval, b: Interval): IntervalRelation {
  const within = isSubset(a, b);
  const around = isSubset(b, a);
  if (within && around) return 'equal';
  if (within) return 'subset';
  if (around) return 'superset';
  return isEmpty(intersect(a, b)) ? 'disjoint' : 'overlap';
}

/** True when every number that `inner` allows is allowed by `outer`. */
export function isSubset(inner: Interval, outer: Interval): boolean {
  return isEmpty(inner) || (outer.low <= inner.low && inner.high <= outer.high);
}

/** How far `value` lies outside, in the base unit: negative below the interval, positive above it, 0 inside. NaN for an empty interval. */
export function distanceTo(interval: Interval, value: number): number {
  if (isEmpty(interval)) return Number.NaN;
  if (value < interval.low) return value - interval.low;
  return value > interval.high ? value - interval.high : 0;
}
