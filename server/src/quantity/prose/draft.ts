import type { Unit } from '../unit-list.ts';
import type { Hit } from './lexicon.ts';
import type { NumberMention } from './prose.ts';
import type { Language, Token } from './token.ts';

/** A mention under construction. Each later step of the reading fills in what it knows. */
export type NumberDraft = { -readonly [Key in keyof NumberMention]: NumberMention[Key] } & {
  /** First and last token of number and unit. */
  first: number;
  last: number;
  units: readonly Unit[];
};

/** What all steps of a reading share: the quote cut into tokens, the phrases found, the sentence of each token. */
export interface ReadingText {
  readonly quote: string;
  readonly language: Language;
  readonly tokens: readonly Token[];
  readonly hits: readonly Hit[];
  /** Sentence number of each token. */
  readonly sentences: readonly number[];
}

export function tokenText(text: ReadingText, at: number): string {
  return text.tokens[at]?.text ?? '';
}
