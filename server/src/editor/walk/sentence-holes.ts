import type { Edit } from '../../base/problem.ts';
import type { FieldsFromQuote } from '../reading/quote-to-fields.ts';
import { wordIn } from '../writing/marked.ts';
import type { Hole } from '../writing/offer.ts';
import { asPlain } from '../writing/offer.ts';

/** What is proposed for a sentence, with the words that somebody chose in its open places. */

/** The open places in their own order, which is that of the words told. */
export function holesOf(found: FieldsFromQuote | undefined): readonly Hole[] {
  const holes = (found?.insertions ?? []).flatMap(({ pieces }) => pieces.filter((piece) => typeof piece !== 'string'));
  return holes.toSorted((a, b) => (a.at ?? 0) - (b.at ?? 0));
}

/** Nothing says which word stands there. */
export function isUndecided({ choices, at = 0 }: Hole, words: readonly string[]): boolean {
  return choices === undefined && (words[at] ?? '') === '';
}

export function editsOf({ insertions }: FieldsFromQuote, words: readonly string[], lineEnd: string): readonly Edit[] {
  return insertions.map(({ span, pieces }) => {
    const filled = pieces.map((piece) => (typeof piece === 'string' ? piece : wordIn(piece, words)));
    return { span, text: asPlain(filled, lineEnd) };
  });
}

/** The words told, with one more. */
export function withWord(words: readonly string[], at: number, word: string): readonly string[] {
  const all = Array.from({ length: Math.max(words.length, at + 1) }, (_none, index) => words[index] ?? '');
  return all.with(at, word);
}
