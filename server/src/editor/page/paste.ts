import type { Span } from '../../base/span.ts';
import type { CleanPaste, PasteChange } from '../../quantity/prose/clean-paste.ts';
import { cleanPaste } from '../../quantity/prose/clean-paste.ts';
import { isSafeBare } from '../../syntax/edits.ts';
import { quoteScalar } from '../../syntax/quote.ts';
import { lineEndAt, quoteEnd } from '../writing/writing-scan.ts';
import { wantedAt } from '../writing/writing-shape.ts';

/**
 * Text from a PDF as it was meant, and so that it stays one text where it comes in: between quotation marks its lines are joined and its own
 * marks are told apart from those around it; where a text is to be written and no marks stand yet, they are put around it. Lines of a rule
 * file, and everything that is pasted elsewhere, are only cleaned.
 */
export function pasteInto(text: string, { start, end }: Span, pasted: string): CleanPaste {
  const cleaned = cleanPaste(pasted);
  const mark = markAround(text, start, end);
  if (mark !== undefined) return between(mark, cleaned);
  return isForText(text, start, end) && isPassage(cleaned.text) ? marked(cleaned) : cleaned;
}

type Mark = '"' | "'";

/** The quotation mark that is open at a place of a line, when it is still open at `end`. */
function markAround(text: string, start: number, end: number): Mark | undefined {
  const from = text.lastIndexOf('\n', start - 1) + 1;
  const limit = lineEndAt(text, from);
  for (let at = from; at < start; at++) {
    const character = text[at];
    const isMark = (character === '"' || character === "'") && /[\s:,[{]/.test(text[at - 1] ?? ' ');
    if (!isMark) continue;
    const close = quoteEnd(text, at, limit);
    const isOpen = start < close || text[close - 1] !== character;
    if (isOpen) return end <= limit ? (character as Mark) : undefined;
    at = close - 1;
  }
  return undefined;
}

/** Replaces signs and writes down how often. */
function replaced(
  { text, changes }: CleanPaste,
  sign: RegExp,
  to: string,
  told: Omit<PasteChange, 'count'>,
): CleanPaste {
  const count = text.match(sign)?.length ?? 0;
  return count === 0 ? { text, changes } : { text: text.replace(sign, to), changes: [...changes, { ...told, count }] };
}

function joined({ text, changes }: CleanPaste): CleanPaste {
  const why = 'a line of the page ended here';
  return replaced({ text: trimmed(text), changes }, lineBreak, ' ', { from: '⏎', to: ' ', why });
}

/** Without the line ends around it; a space that joins it to the words beside it stays. */
function trimmed(text: string): string {
  const [before, after] = [/^[ \t]/, /[ \t]$/].map((blank) => (blank.test(text) ? ' ' : ''));
  return `${before}${text.trim()}${after}`;
}

function between(mark: Mark, cleaned: CleanPaste): CleanPaste {
  const line = joined(cleaned);
  const why = 'so that it is not taken for the end of the text';
  // What was copied from a rule file has its marks told apart already.
  if (line.text.includes('\\"')) return line;
  if (mark === "'") return replaced(line, /'/g, "''", { from: "'", to: "''", why });
  const told = { from: '\\', to: '\\\\', why: 'a backslash means itself only when it is doubled' };
  return replaced(replaced(line, /\\/g, '\\\\', told), /"/g, '\\"', { from: '"', to: '\\"', why });
}

const lineBreak = /[ \t]{0,100}(?:\r?\n[ \t]{0,100}){1,20}/g;

/** Nothing stands there yet, and the schema wants a text. */
function isForText(text: string, start: number, end: number): boolean {
  const wanted = start === end ? wantedAt(text, start) : undefined;
  const { as, shape, slot } = wanted ?? {};
  return as === 'value' && shape?.form === 'text' && slot?.word.start === slot?.word.end;
}

/** Words that are read wrongly without marks; not something that is written as a rule file already. */
function isPassage(text: string): boolean {
  const trimmed = text.trim();
  const isWritten = /^(?:["'{[|>]|- )/.test(trimmed) || /\n *(?:- |[a-z_]{1,40}:(?:\s|$))/.test(trimmed);
  return trimmed !== '' && !isWritten && !isSafeBare(trimmed);
}

function marked(cleaned: CleanPaste): CleanPaste {
  const { text, changes } = joined({ ...cleaned, text: cleaned.text.trim() });
  const why = 'signs in the sentence mean something else without quotation marks';
  return {
    text: quoteScalar(text),
    changes: [...changes, { from: 'the sentence', to: '"the sentence"', why, count: 1 }],
  };
}
