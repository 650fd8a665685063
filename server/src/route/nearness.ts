import type { Judgement } from '../judge/outcome.ts';
import { allowedIn } from './governing.ts';
import type { Derivation } from './route.ts';

/** What stands between a means and being consistent, in the order in which it counts: less is nearer. */
export interface Nearness {
  /** What no number bridges: another method, a packaging that is not for it, a thing the instruction forbids. */
  readonly kinds: number;
  /** Numbers that are missed. */
  readonly numbers: number;
  /** By how much, all together: each as a share of the scale on which the set sheet draws it. */
  readonly size: number;
}

interface Ends {
  readonly low: number;
  readonly high: number;
}

/** The outermost finite numbers: between them misses are measured and drawn. */
export function outermost(intervals: Iterable<Ends | undefined>): Ends | undefined {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const interval of intervals) {
    if (interval === undefined) continue;
    for (const end of [interval.low, interval.high]) {
      if (!Number.isFinite(end)) continue;
      low = Math.min(low, end);
      high = Math.max(high, end);
    }
  }
  return low <= high ? { low, high } : undefined;
}

/** How near each of several means comes, one list of judgements each. The same demand is measured on one scale in all of them. */
export function nearnesses(each: readonly (readonly Judgement[])[], derivation: Derivation): readonly Nearness[] {
  const demands = new Map<string, { readonly allowed: Ends | undefined; readonly given: (Ends | undefined)[] }>();
  const demandOf = (judgement: Judgement) => {
    const key = keyOf(judgement);
    const known = demands.get(key);
    if (known !== undefined) return known;
    const made = { allowed: allowedIn(judgement, derivation)?.interval, given: [] };
    demands.set(key, made);
    return made;
  };
  for (const judgement of each.flat()) demandOf(judgement).given.push(judgement.givenRange);
  const shareOf = (judgement: Judgement): number => {
    const { allowed, given } = demandOf(judgement);
    const scale = outermost([allowed, ...given]);
    const { givenRange } = judgement;
    if (allowed === undefined || givenRange === undefined || scale === undefined) return 1;
    const outside = Math.max(allowed.low - givenRange.low, givenRange.high - allowed.high, 0);
    return scale.high > scale.low ? Math.min(outside / (scale.high - scale.low), 1) : 1;
  };
  return each.map((judgements) => nearnessOf(judgements, shareOf));
}

function nearnessOf(judgements: readonly Judgement[], shareOf: (judgement: Judgement) => number): Nearness {
  const failing = new Map<string, Judgement>();
  for (const judgement of judgements) if (judgement.outcome === 'fails') failing.set(keyOf(judgement), judgement);
  const all = [...failing.values()];
  const missed = all.filter(({ gap }) => gap !== undefined && gap !== '');
  const size = missed.reduce((sum, judgement) => sum + shareOf(judgement), 0);
  return { kinds: all.length - missed.length, numbers: missed.length, size };
}

/** Negative when `a` is nearer. */
export function compareNearness(a: Nearness, b: Nearness): number {
  return a.kinds - b.kinds || a.numbers - b.numbers || a.size - b.size;
}

function keyOf({ demandedBy, parameter, required }: Judgement): string {
  return `${demandedBy} ${parameter} ${required}`;
}
