import type { Span } from '../../base/span.ts';
import { span } from '../../base/span.ts';
import { phases } from '../../quantity/prose/named/phases.ts';
import type { NumberMention, QuoteReading } from '../../quantity/prose/prose.ts';

/** Where the words of a sentence part its numbers from each other: brackets, clauses, rows and phases. */

/** The quote in small letters; `dry heat` and `washer-disinfector` are names, and no drying or disinfecting is read out of them. */
export function withoutNames({ quote, stages }: QuoteReading): string {
  let text = quote.toLowerCase();
  for (const { stage, span: name } of stages)
    if (stage === 'dry-heat' || stage === 'mechanical')
      text = text.slice(0, name.start) + '·'.repeat(name.end - name.start) + text.slice(name.end);
  return text;
}

/** Where the bracket around a place begins; nothing outside brackets. */
export function bracketAt(quote: string, at: number): number | undefined {
  const open = quote.lastIndexOf('(', at);
  return open < 0 || quote.slice(open, at).includes(')') ? undefined : open;
}

/** `3 min (18 min permitted)`: a bracket that gives a further value of the same kind says when that one holds, and is for the reader. */
export function isAside(mention: NumberMention, own: readonly NumberMention[], { quote }: QuoteReading): boolean {
  if (bracketAt(quote, mention.span.start) === undefined) return false;
  return own.some(
    (other) =>
      other.sentence === mention.sentence &&
      other.span.end <= mention.span.start &&
      bracketAt(quote, other.span.start) === undefined &&
      isAlike(other, mention),
  );
}

/** Both measure the same. */
export function isAlike(a: NumberMention, b: NumberMention): boolean {
  return a.quantities.some(({ dimension }) => b.quantities.some((other) => other.dimension === dimension));
}

/** Words that part a number from a word of a field before it: `drying after 4 min`. */
export const partsBefore =
  /[,;]|(?<!\p{L})(?:and|then|after|following|before|und|dann|nach|vor|et|puis|après|avant)(?!\p{L})/u;

/** Marks and words at which what belongs to the number before them ends: `4 minutes and dry`. */
export const partsBehind =
  /[,;.:(]|\s(?:and|then|und|dann|oder|et|puis|ou|or(?!\s(?:more|longer|less|above|below|higher|lower)))\s/;

/** The stretch between two partings of rows around a number: `121 °C for 20 min or [134 °C for 3 min]`. */
export function rowAround({ quote }: QuoteReading, { span: own }: NumberMention): Span {
  const parting = /[,;](?!\d)|\.\s|\s(?:or|then|and|oder|dann|und|ou|puis|et)\s/g;
  const start = Math.max(0, ...[...quote.slice(0, own.start).matchAll(parting)].map(({ index }) => index));
  const end = quote.slice(own.end).search(parting);
  return span(start, end < 0 ? quote.length : own.end + end);
}

/** The phase of a machine that was named last before a number: `wash 10 min` in a sentence that begins with a prewash. */
export function phaseBefore(text: string, { span: { start } }: { readonly span: Span }): string | undefined {
  const before = text.slice(0, start);
  let [last, found]: [number, string | undefined] = [-1, undefined];
  for (const [phase, words] of phases)
    for (const { index } of before.matchAll(words)) if (index > last) [last, found] = [index, `mechanical.${phase}`];
  return found;
}
