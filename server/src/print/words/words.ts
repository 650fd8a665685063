import type { BoundWords, CardWords } from './card-words.ts';
import type { PosterWords } from './poster-words.ts';

/** Everything that is printed in one language. A further language is one more object of this form. */
export interface Words {
  /** Two-letter code. */
  readonly language: string;
  readonly decimalMark: '.' | ',';
  readonly bounds: BoundWords;
  /** Units that are words: of counts, and of days. Others are the same in every language. */
  readonly units: ReadonlyMap<string, string>;
  /** Closed words of the rule files: places, methods, tests. A word that is not in it is printed as the file writes it. */
  readonly terms: ReadonlyMap<string, string>;
  readonly card: CardWords;
  readonly poster: PosterWords;
}

/** `geometric-centre-per-level`: the term in this language, or the file's own word with its hyphens as spaces. */
export function termIn(words: Words, text: string): string {
  return words.terms.get(text) ?? text.replaceAll('-', ' ');
}
