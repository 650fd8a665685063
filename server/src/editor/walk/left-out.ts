import type { QuoteReading } from '../../quantity/prose/prose.ts';
import { readQuote } from '../../quantity/prose/read-quote.ts';
import type { MapTree } from '../../syntax/tree.ts';
import { languageOf } from '../reading/quote-language.ts';
import { stepsMeant } from '../reading/quote-things.ts';
import type { FieldsFromQuote } from '../reading/quote-to-fields.ts';
import { statementAt } from '../reading/quote-to-fields.ts';
import { wordsUnsaid } from '../reading/quote-unsaid.ts';

/** What a sentence says and the fields made of it do not hold: nothing may vanish without a word, whoever makes them. */
export interface LeftOut {
  /** Numbers and packagings without a field, and what else to mind. */
  readonly told: readonly string[];
  /** Its own words that no field holds, each between quotation marks. */
  readonly words: readonly string[];
}

export function leftOut({ left, fields }: FieldsFromQuote, reading: QuoteReading): LeftOut {
  return { told: left, words: wordsUnsaid(reading, fields) };
}

/** The same of the statement at `offset`; no words where nothing is put in, since that says it all. */
export function leftOutAt(found: FieldsFromQuote, tree: MapTree, offset: number): LeftOut {
  const statement = statementAt(tree, offset);
  if (statement === undefined || found.insertions.length === 0) return { told: found.left, words: [] };
  return leftOut(found, stepsMeant(readQuote(statement.quote, languageOf(tree, statement))));
}

/** As a list for a person. */
export function leftOutWords({ told, words }: LeftOut): readonly string[] {
  return words.length === 0 ? told : [...told, `not taken into a field: ${words.join(', ')}`];
}
