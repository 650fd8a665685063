import type { CST } from 'yaml';
import { span } from '../base/span.ts';
import { quoteScalar } from './quote.ts';
import { endOf, type Reading } from './reading.ts';
import { lineRest } from './repairs.ts';
import { shown } from './words.ts';

/**
 * A quote that is never closed: reported where it opens, because that is where the mistake is, and blanked, so that the lines it
 * swallowed are read. Faults of structure up to the line that holds the next such quote are its echo.
 */
export function reportUnclosedQuote(reading: Reading, token: CST.FlowScalar): void {
  const quote = token.source[0] ?? '"';
  const at = span(token.offset, token.offset + 1);
  const message = `The quote ${quote} that opens here is not closed where its text ends. Close it on this line, or delete it.`;
  const echo = span(at.start, endOfSwallowed(reading.text, at.end, quote));
  reading.blanks.push({
    at: token.offset,
    report: (sink) => {
      sink.report('unclosed-quote', at, message);
      sink.expectEchoes(echo);
    },
  });
}

function endOfSwallowed(text: string, from: number, quote: string): number {
  const ownEnd = text.indexOf('\n', from);
  const next = text.indexOf(quote, from);
  if (next < 0 || next - from > 2_000) return ownEnd < 0 ? text.length : ownEnd;
  const end = text.indexOf('\n', next);
  return end < 0 ? text.length : end;
}

/** `"A" and B`: the text ends at the second quote. */
export function reportTextAfter(reading: Reading, token: CST.FlowScalar): void {
  const whole = lineRest(reading.text, token.offset);
  const written = reading.text.slice(whole.start, whole.end);
  const message = `The text ends at its closing quote, and ${shown(written.slice(token.source.length).trim())} stands behind it. Put the whole text in quotes of the other kind.`;
  const fixes = [{ title: 'Put the whole text in quotes', edits: [{ span: whole, text: quoteScalar(written) }] }];
  const at = span(whole.start, Math.max(whole.end, endOf(token)));
  reading.sink.report('text-after-quote', at, message, token.source.includes('\n') ? {} : { fixes });
}

const ESCAPES = '0abefnrtvN_LP "/\\\n\r\txuU';
const LONG = new Map([
  ['x', 2],
  ['u', 4],
  ['U', 8],
]);

/** Backslashes between double quotes that start no known code, or that stand in what looks like a path. One problem a text. */
export function checkEscapes(reading: Reading, token: CST.FlowScalar): void {
  const { source } = token;
  const path = /^"[A-Za-z]:\\[^\\]/.test(source);
  for (let at = source.indexOf('\\'); at >= 0; at = source.indexOf('\\', at + 2)) {
    if (!path && isKnownEscape(source, at)) continue;
    const inner = source.slice(1, -1);
    const message = `Between double quotes a backslash starts a code, so ${shown(source.slice(at, at + 2))} does not stay as written. Use single quotes around this text.`;
    const fixes = [
      {
        title: 'Use single quotes',
        edits: [{ span: span(token.offset, endOf(token)), text: `'${inner.replaceAll("'", "''")}'` }],
      },
    ];
    const place = span(token.offset + at, token.offset + at + 2);
    reading.sink.report('backslash-in-quotes', place, message, source.includes('\n') ? {} : { fixes });
    return;
  }
}

function isKnownEscape(source: string, at: number): boolean {
  const letter = source[at + 1] ?? '';
  if (!ESCAPES.includes(letter)) return false;
  const length = LONG.get(letter);
  if (length === undefined) return true;
  const digits = source.slice(at + 2, at + 2 + length);
  return digits.length === length && /^[0-9a-fA-F]+$/.test(digits) && Number.parseInt(digits, 16) <= 0x10ffff;
}

/** A quoted text over several lines, one of which reads like a key of a rule file (small letters, a colon, a value). */
export function reportSwallowed(reading: Reading, token: CST.FlowScalar): void {
  const lines = token.source.split('\n', 2_000);
  const key = lines.slice(1).find((line) => /^\s*(?:- )?[a-z][a-z_]*:(?:\s|$)/.test(line.slice(0, 200)));
  if (key === undefined) return;
  const message = `The quote that opens here closes ${lines.length - 1} lines later, so ${shown(key.trim())} is part of the text and not a key. Close the quote on this line if it was meant as a key.`;
  reading.sink.report('quote-swallows-lines', span(token.offset, token.offset + 1), message);
}
