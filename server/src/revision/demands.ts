import { acceptedInterval } from '../judge/accepted.ts';
import { amountsOf, boundsOf } from '../judge/bounds.ts';
import { unitNamed } from '../judge/unit-named.ts';
import { tidy } from '../model/content.ts';
import type { Policies } from '../model/entities/site.generated.ts';
import type { BoundWord, Quantity, Requirement } from '../model/node.ts';
import { intervalOf } from '../quantity/bound.ts';
import { compareIntervals, type Interval, intersectAll, isSubset } from '../quantity/interval.ts';
import { fromBase } from '../quantity/units.ts';
import type { ChangeClass } from './change.ts';
import { rankedWords } from './fields.ts';
import { parameterOf } from './parameter-of.ts';

export interface Verdict {
  readonly class: ChangeClass;
  readonly because?: string;
}

/**
 * How the values that satisfy the new demand lie to those that satisfied the old. Undefined when the two demand the same. `path` tells the
 * row of the direction table; the site's policies say how a bare number counts.
 */
export function compareDemands(
  old: Requirement,
  now: Requirement,
  path: string,
  policies: Policies | undefined,
): Verdict | undefined {
  const [before, after] = [old.specific ?? old, now.specific ?? now];
  const [was, is] = [stateOf(before), stateOf(after)];
  if (was !== is) return compareStates(was, is);
  if (was !== 'bounded')
    return sameWords(before, after) ? withSetting(undefined, before, after) : { class: 'different' };
  return withSetting(compareBounds(before, after, path, policies), before, after);
}

type State = 'bounded' | 'silent' | 'ambiguous' | 'conflict' | 'left-to-others' | 'not-applicable' | 'empty';

function stateOf(requirement: Requirement): State {
  if (requirement.not_applicable !== undefined) return 'not-applicable';
  if (requirement.conflict !== undefined) return 'conflict';
  if (requirement.ambiguous !== undefined) return 'ambiguous';
  if (amountsOf(requirement).length > 0) return 'bounded';
  if (requirement.silent?.on === true) return 'silent';
  return requirement.defers_to === undefined ? 'empty' : 'left-to-others';
}

const saysNothing: ReadonlySet<State> = new Set(['silent', 'empty', 'left-to-others']);
const notClear: ReadonlySet<State> = new Set(['ambiguous', 'conflict']);

function compareStates(was: State, is: State): Verdict {
  if (saysNothing.has(was) && saysNothing.has(is)) return { class: 'different', because: 'silent in another way' };
  if (saysNothing.has(is)) return { class: 'became-silent' };
  if (saysNothing.has(was)) return { class: 'became-stated' };
  if (is === 'not-applicable') return { class: 'looser', because: 'it no longer applies' };
  if (was === 'not-applicable') return { class: 'stricter', because: 'it applies now' };
  if (notClear.has(was) && !notClear.has(is))
    return { class: 'clarification', because: 'the page can now be carried out as written' };
  return { class: 'different', because: 'the page can no longer be carried out as written' };
}

/** The words that stand in place of a number. */
function sameWords(old: Requirement, now: Requirement): boolean {
  const words = ({ ambiguous, not_applicable, defers_to, edition, conflict }: Requirement) =>
    [ambiguous, not_applicable, defers_to, edition]
      .map((one) => tidy(one?.text ?? ''))
      .concat((conflict?.items ?? []).map((one) => JSON.stringify(boundsOf(one))))
      .join('|');
  return words(old) === words(now);
}

function compareBounds(
  old: Requirement,
  now: Requirement,
  path: string,
  policies: Policies | undefined,
): Verdict | undefined {
  if (sameNumbers(old, now)) return undefined;
  const [before, after] = [accepted(old, path, policies), accepted(now, path, policies)];
  const relation = compareIntervals(after, before);
  if (isClarified(old, now, before, after)) return { class: 'clarification', because: 'our reading still fits' };
  switch (relation) {
    case 'subset':
      return { class: 'stricter' };
    case 'superset':
      return { class: 'looser' };
    case 'equal':
      return sameAccepted(old, now);
    default:
      return { class: 'different' };
  }
}

/** The site reads both alike; only the words differ. An "approximately" limits nothing, so its number is compared as written. */
function sameAccepted(old: Requirement, now: Requirement): Verdict | undefined {
  if (isBare(now) && !isBare(old)) return { class: 'different', because: 'the bound word is gone' };
  const [before, after] = [literal(old), literal(now)];
  const abouts = [old.about, now.about].map((one) => one?.value ?? Number.NaN);
  if (old.about !== undefined || now.about !== undefined)
    return abouts[0] === abouts[1] ? undefined : { class: 'different', because: '"approximately" limits nothing' };
  return compareIntervals(before, after) === 'equal' ? undefined : { class: 'different' };
}

function isBare(requirement: Requirement): boolean {
  return requirement.stated !== undefined;
}

/** A bare number got a bound word, the number is the same, and what we read it as is still inside. */
function isClarified(old: Requirement, now: Requirement, before: Interval, after: Interval): boolean {
  if (!isBare(old) || isBare(now) || old.stated === undefined || !isSubset(before, after)) return false;
  const number = old.stated.value;
  return amountsOf(now).some(({ value }) => value === number);
}

function accepted(requirement: Requirement, path: string, policies: Policies | undefined): Interval {
  const parameter = parameterOf(path, requirement.dimension);
  return parameter === undefined ? literal(requirement) : acceptedInterval(parameter, requirement, policies);
}

function literal(requirement: Requirement): Interval {
  return intersectAll(boundsOf(requirement).map(intervalOf));
}

const boundWords: readonly BoundWord[] = ['at_least', 'at_most', 'between', 'exactly', 'stated', 'about'];

/** The same bound words with the same amounts, be it printed in another unit. */
function sameNumbers(old: Requirement, now: Requirement): boolean {
  const words = (one: Requirement) => boundWords.filter((word) => one[word] !== undefined).join(' ');
  const [ours, theirs] = [amountsOf(old), amountsOf(now)];
  const tolerance = (one: Requirement) => one.tol?.value ?? 0;
  if (words(old) !== words(now) || ours.length !== theirs.length || tolerance(old) !== tolerance(now)) return false;
  if (old.of?.text !== now.of?.text) return false;
  return ours.every((amount, at) => {
    const other = theirs[at];
    return other !== undefined && sameAmount(amount, other);
  });
}

/** The same amount, or one temperature printed in the other scale and rounded to its digits. */
export function sameAmount(a: Quantity, b: Quantity): boolean {
  if (a.problem !== undefined || b.problem !== undefined) return a.text === b.text;
  if (a.reference !== b.reference) return false;
  if (Math.abs(a.value - b.value) <= 1e-9 * Math.max(1, Math.abs(a.value))) return true;
  return (
    a.dimension === 'temperature' && b.dimension === a.dimension && a.unit !== b.unit && rounds(a, b) && rounds(b, a)
  );
}

function rounds(value: Quantity, printed: Quantity): boolean {
  const converted = fromBase(value.value, unitNamed('temperature', printed.unit));
  return Math.abs(converted - printed.amount) <= 0.5 * 10 ** -printed.decimals + 1e-9;
}

/** How strongly it is worded, when it applies and what a pH is measured in, beside the number. */
function withSetting(verdict: Verdict | undefined, old: Requirement, now: Requirement): Verdict | undefined {
  let joined = verdict;
  if (old.of?.text !== now.of?.text)
    joined = together(joined, { class: 'different', because: 'measured in another solution' });
  joined = together(joined, compareRanked('strength', old.strength?.text ?? 'must', now.strength?.text ?? 'must'));
  return together(joined, compareConditions(old.when?.text, now.when?.text, 'demand'));
}

/** Words of which one leaves fewer ways than the other. */
export function compareRanked(field: string, old: string, now: string): Verdict | undefined {
  if (old === now) return undefined;
  const ranks = rankedWords[field] ?? [];
  const [before, after] = [ranks.indexOf(old), ranks.indexOf(now)];
  if (before < 0 || after < 0) return { class: 'different' };
  return { class: after > before ? 'stricter' : 'looser' };
}

/** A demand that holds in one situation only asks less; a way that is open in one situation only offers less. */
export function compareConditions(
  old: string | undefined,
  now: string | undefined,
  of: 'demand' | 'option',
): Verdict | undefined {
  if (old === now) return undefined;
  if (old !== undefined && now !== undefined) return { class: 'different', because: 'another situation' };
  const asksLess = (now !== undefined) === (of === 'demand');
  return {
    class: asksLess ? 'looser' : 'stricter',
    because: now === undefined ? 'in every situation now' : 'in one situation only',
  };
}

/** Two verdicts on one demand: what points two ways is neither. */
export function together(a: Verdict | undefined, b: Verdict | undefined): Verdict | undefined {
  if (a === undefined || b === undefined) return a ?? b;
  return a.class === b.class ? a : { class: 'different' };
}
