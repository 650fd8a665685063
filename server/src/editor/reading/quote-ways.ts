import { alwaysByHand } from '../../quantity/prose/named/acts.ts';
import type { QuoteReading } from '../../quantity/prose/prose.ts';
import type { MapTree } from '../../syntax/tree.ts';
import { valueUnder } from '../../syntax/value-under.ts';
import type { NewField } from '../writing/insert-fields.ts';
import type { Section, Way } from './quote-section.ts';
import { ways } from './quote-section.ts';

/** How several ways of cleaning belong together: all are done, or any one of them is enough. */
export type Together = 'all_of' | 'any_of';

export interface WaysJoined {
  readonly ways: readonly Way[];
  /** As the words between them say; undefined where they leave it open. */
  readonly together: Together | undefined;
}

/**
 * `Clean by hand or in a washer`: ways of cleaning that a sentence names beside each other and says nothing else of. Undefined where the file
 * has its ways already, where a heading says which is meant, and where one is forbidden.
 */
export function waysJoined(
  { quote, stages, joins, negations, numbers, flags }: QuoteReading,
  tree: MapTree,
  section: Section,
): WaysJoined | undefined {
  const named = ways.filter((way) => stages.some(({ stage }) => stage === way));
  const cleaning = valueUnder(tree, 'cleaning');
  const isWritten = cleaning !== undefined && cleaning.node !== 'empty';
  const isAbout = negations.length === 0 && numbers.every(({ isReference }) => isReference) && flags.length === 0;
  if (isAlwaysByHand(quote)) return undefined;
  if (named.length < 2 || isWritten || !isAbout || section.stages.some((stage) => isWay(stage))) return undefined;
  const inOrder = [...new Set(stages.map(({ stage }) => stage).filter(isWay))];
  const words = joins.filter(({ before, after }) => isWay(before.stage) && isWay(after.stage)).map(({ join }) => join);
  return { ways: inOrder, together: words.length === inOrder.length - 1 ? togetherBy(words) : undefined };
}

/** `Manual pre-cleaning (always required, also before automated cleaning)`: it says when one way is needed, not how two belong together. */
export function isAlwaysByHand(quote: string): boolean {
  return alwaysByHand.test(quote);
}

function isWay(stage: string): stage is Way {
  return ways.some((way) => way === stage);
}

/** `and/or` and words of both kinds decide nothing. */
function togetherBy(words: readonly string[]): Together | undefined {
  if (words.every((word) => word === 'or')) return 'any_of';
  return words.every((word) => word === 'and' || word === 'then') ? 'all_of' : undefined;
}

export function fieldsOfWays({ ways: named }: WaysJoined, together: Together, src: string): readonly NewField[] {
  return named.map((way) => ({ path: `cleaning.${together}[]`, value: `{stage: ${way}, src: ${src}}` }));
}

export function isTogether(word: string | undefined): word is Together {
  return word === 'all_of' || word === 'any_of';
}
