import { assertNever } from '../base/assert.ts';
import type { Interval } from './interval.ts';
import { everything } from './interval.ts';

/**
 * What a text demands of a number, in the base unit of its dimension. `stated` has no bound word and `about` is no limit: how either is
 * judged is the site's policy, never ours. Silence, ambiguity and "not applicable" are not bounds.
 */
export type Bound =
  | { readonly bound: 'at_least'; readonly low: number }
  | { readonly bound: 'at_most'; readonly high: number }
  /** As written: `low` above `high` is a finding of its own, and then the interval is empty. */
  | { readonly bound: 'between'; readonly low: number; readonly high: number }
  | { readonly bound: 'exactly'; readonly value: number }
  | { readonly bound: 'stated'; readonly value: number }
  | { readonly bound: 'about'; readonly value: number };

/** The numbers that a bound allows when its words are taken literally: a stated number alone, and no limit at all for `about`. */
export function intervalOf(bound: Bound): Interval {
  switch (bound.bound) {
    case 'at_least':
      return { low: bound.low, high: Number.POSITIVE_INFINITY };
    case 'at_most':
      return { low: Number.NEGATIVE_INFINITY, high: bound.high };
    case 'between':
      return { low: bound.low, high: bound.high };
    case 'exactly':
    case 'stated':
      return { low: bound.value, high: bound.value };
    case 'about':
      return everything;
    default:
      return assertNever(bound);
  }
}
