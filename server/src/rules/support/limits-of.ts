import type { BoundWord, Quantity, Requirement } from '../../model/node.ts';
import type { Interval } from '../../quantity/interval.ts';
import { shown } from './shown.ts';

/** The number that `low` or `high` was read from is kept for messages. */
export interface Demand extends Interval {
  readonly lowest?: Quantity;
  readonly highest?: Quantity;
}

/**
 * The numbers that a requirement allows when its words are taken literally: a bare number alone. Undefined when it sets no limit at all
 * (silent, ambiguous, "about", unreadable numbers).
 */
export function demandOf(requirement: Requirement | undefined): Demand | undefined {
  if (requirement === undefined) return undefined;
  const single = usable(requirement.exactly) ?? usable(requirement.stated);
  const [from, to] = requirement.between?.items ?? [];
  const lowest = usable(requirement.at_least) ?? usable(from) ?? single;
  const highest = usable(requirement.at_most) ?? usable(to) ?? single;
  if (lowest === undefined && highest === undefined) return undefined;
  return {
    low: lowest?.value ?? Number.NEGATIVE_INFINITY,
    high: highest?.value ?? Number.POSITIVE_INFINITY,
    ...(lowest !== undefined && { lowest }),
    ...(highest !== undefined && { highest }),
  };
}

/** More than the highest value that a requirement allows; false where it gives none. Base units on both sides. */
export function isAbove(quantity: Quantity, requirement: Requirement): boolean {
  const demand = demandOf(requirement);
  return quantity.problem === undefined && demand !== undefined && quantity.value > demand.high;
}

/** `at least 4 min`, `4 min (no bound word)`: the requirement with the bound word the page uses; empty when it has none. */
export function demandInWords(requirement: Pick<Requirement, BoundWord>): string {
  const { at_least, at_most, between, exactly, stated, about } = requirement;
  const parts: string[] = [];
  if (at_least !== undefined) parts.push(`at least ${shown(at_least)}`);
  if (at_most !== undefined) parts.push(`at most ${shown(at_most)}`);
  if (between !== undefined) parts.push(`between ${between.items.map(shown).join(' and ')}`);
  if (exactly !== undefined) parts.push(`exactly ${shown(exactly)}`);
  if (stated !== undefined) parts.push(`${shown(stated)} (no bound word)`);
  if (about !== undefined) parts.push(`about ${shown(about)}`);
  return parts.join(', ');
}

function usable(quantity: Quantity | undefined): Quantity | undefined {
  return quantity?.problem === undefined ? quantity : undefined;
}
