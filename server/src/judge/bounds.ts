import type { BoundWord, Quantity, Requirement } from '../model/node.ts';
import type { Bound } from '../quantity/bound.ts';
import { formatBound } from '../quantity/format.ts';
import type { Unit } from '../quantity/unit-list.ts';
import { unitNamed } from './unit-named.ts';

const boundWords: readonly BoundWord[] = ['at_least', 'at_most', 'between', 'exactly', 'stated', 'about'];

const read = new WeakMap<Requirement, readonly Bound[]>();

/** Every bound word of the requirement whose number can be read; several bind together. Base units. */
export function boundsOf(requirement: Requirement): readonly Bound[] {
  const known = read.get(requirement);
  if (known !== undefined) return known;
  const bounds: Bound[] = [];
  for (const word of boundWords) {
    const bound = boundOf(requirement, word);
    if (bound !== undefined) bounds.push(bound);
  }
  read.set(requirement, bounds);
  return bounds;
}

function boundOf(requirement: Requirement, word: BoundWord): Bound | undefined {
  if (word === 'between') {
    const [low, high] = requirement.between?.items.map(readable) ?? [];
    return low === undefined || high === undefined ? undefined : { bound: 'between', low, high };
  }
  const value = readable(requirement[word]);
  if (value === undefined) return undefined;
  if (word === 'at_least') return { bound: word, low: value };
  if (word === 'at_most') return { bound: word, high: value };
  const width = word === 'about' ? 0 : tolerance(requirement);
  if (width > 0) return { bound: 'between', low: value - width, high: value + width };
  return { bound: word, value };
}

function tolerance(requirement: Requirement): number {
  return readable(requirement.tol) ?? 0;
}

function readable(quantity: Quantity | undefined): number | undefined {
  return quantity === undefined || quantity.problem !== undefined ? undefined : quantity.value;
}

/** The amounts written, readable or not. */
export function amountsOf(requirement: Requirement): readonly Quantity[] {
  const { at_least, at_most, exactly, stated, about } = requirement;
  const singles = [at_least, at_most, exactly, stated, about].filter((one) => one !== undefined);
  return [...singles, ...(requirement.between?.items ?? [])];
}

const unreadable = new WeakMap<Requirement, boolean>();

/** Is one of its numbers not a usable amount? */
export function isUnreadable(requirement: Requirement): boolean {
  let known = unreadable.get(requirement);
  if (known === undefined) {
    known = amountsOf(requirement).some((amount) => amount.problem !== undefined);
    unreadable.set(requirement, known);
  }
  return known;
}

/** The unit in which the requirement is written. */
export function boundUnit(requirement: Requirement): Unit {
  return unitNamed(requirement.dimension, amountsOf(requirement)[0]?.unit);
}

const words = new WeakMap<Requirement, string>();

/** What is demanded, in words with units: `at least 30 min`, or what stands there instead of a number. */
export function requirementWords(requirement: Requirement): string {
  const known = words.get(requirement);
  if (known !== undefined) return known;
  const made = makeWords(requirement);
  words.set(requirement, made);
  return made;
}

function makeWords(requirement: Requirement): string {
  if (requirement.specific !== undefined) return requirementWords(requirement.specific);
  const unit = boundUnit(requirement);
  const numbers = boundsOf(requirement).map((bound) => formatBound(bound, unit));
  if (numbers.length > 0) return numbers.join(', ');
  if (requirement.conflict !== undefined) return requirement.conflict.items.map(requirementWords).join(' against ');
  if (requirement.ambiguous !== undefined) return `“${requirement.ambiguous.text}”`;
  if (requirement.silent?.on === true) return 'nothing: the document is silent';
  if (requirement.not_applicable !== undefined) return 'nothing: does not apply';
  if (requirement.defers_to !== undefined)
    return `left to the ${requirement.defers_to.text === 'chemistry' ? 'detergent maker' : requirement.defers_to.text}`;
  return 'a value that cannot be read';
}
