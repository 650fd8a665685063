import type { Dimension } from '../../quantity/quantity.ts';
import { sayingWords } from '../../schema/saying-words.ts';
import type { Field, RecordShape } from '../../schema/shape.ts';
import type { Piece } from '../writing/offer.ts';
import { typicalUnits } from './typical-units.ts';

/** Those offered as whole values: the others hold requirements of their own. */
const wholeWords = [
  'stated',
  'at_least',
  'at_most',
  'between',
  'exactly',
  'about',
  'silent',
  'ambiguous',
  'not_applicable',
];

export function saysSomething(present: Iterable<string>): boolean {
  for (const key of present) if (sayingWords.has(key)) return true;
  return false;
}

/** The saying words of a requirement with what the schema says of each, those of bare numbers first. */
export function wordsOfRequirement(shape: RecordShape): readonly Field[] {
  return wholeWords.flatMap((word) => shape.fields.get(word) ?? []);
}

/** What is measured and how it is usually spelled. */
export interface Measure {
  readonly dimension: Dimension | 'any';
  readonly examples: readonly string[];
  readonly today: string;
}

/** `at_least: 4 min` with a hole for the number; the unit is one of the list. */
export function sayingPieces(word: string, measure: Measure): readonly Piece[] {
  switch (word) {
    case 'between':
      return [`${word}: [`, ...amountPieces(measure), ', ', ...amountPieces(measure), ']'];
    case 'silent':
      return [`silent: true, checked: ${measure.today}`];
    case 'ambiguous':
    case 'not_applicable':
      return [`${word}: "`, { hole: 'words' }, '"'];
    default:
      return [`${word}: `, ...amountPieces(measure)];
  }
}

export function amountPieces({ dimension, examples }: Measure): readonly Piece[] {
  const [unit, ...more] = typicalUnits(dimension, examples);
  if (unit === undefined) return [{ hole: 'number' }];
  return [{ hole: 'number' }, ' ', more.length === 0 ? unit : { hole: 'words', choices: [unit, ...more] }];
}
