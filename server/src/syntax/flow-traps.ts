import type { CST } from 'yaml';
import { span } from '../base/span.ts';
import { endOf, type Reading } from './reading.ts';
import { fixQuote } from './repairs.ts';
import { GLUED_COLON } from './text-traps.ts';
import { shown } from './words.ts';

/** A bracket that is never closed, or closed by the other kind. */
export function reportUnclosed(reading: Reading, token: CST.FlowCollection, wanted: string): void {
  const open = token.start.source;
  const found = token.end[0]?.source;
  const wrong = found === '}' || found === ']' ? ` The ${found} further on is the other kind.` : '';
  const message = `The ${open} here is never closed. Write ${wanted} after the last item, on the same line or further right than the key.${wrong}`;
  reading.sink.report('unclosed-bracket', span(token.offset, token.offset + 1), message);
}

export function reportMissingComma(reading: Reading, at: number): void {
  const message =
    'A comma is missing in front of this. Items between brackets are kept apart by commas; text with commas goes in quotes.';
  reading.sink.report('comma-missing', span(at, at + 1), message);
}

/** `{a:1}`: without a space it is one word. */
export function reportColonGlued(reading: Reading, token: CST.FlowScalar): boolean {
  const match = token.source.length > 200 ? null : GLUED_COLON.exec(token.source);
  if (match === null) return false;
  const at = token.offset + (match[1] ?? '').length;
  const fix = { title: 'Put a space after the colon', edits: [{ span: span(at + 1, at + 1), text: ' ' }] };
  const message = `Put a space after the colon in ${shown(token.source)}. Without it, key and value are one piece of text.`;
  reading.sink.report('colon-without-space', span(token.offset, endOf(token)), message, { fixes: [fix] });
  return true;
}

/** `{word}`: a key that holds nothing. */
export function reportLoneWord(reading: Reading, token: CST.Token): void {
  if (!('source' in token)) return;
  const at = span(token.offset, endOf(token));
  const message = `${shown(token.source)} stands between braces without a value. Write a colon, a space and the value; if the braces are part of the text, put the whole text in quotes.`;
  const before = reading.text[at.start - 1];
  const whole = before === '{' && reading.text[at.end] === '}' ? span(at.start - 1, at.end + 1) : undefined;
  reading.sink.report(
    'brace-without-value',
    at,
    message,
    whole === undefined ? {} : { fixes: [fixQuote(reading.text, whole)] },
  );
}

/** A list with dashes, or keys on lines of their own, inside brackets. */
export function reportBlockInBrackets(reading: Reading, token: CST.Token): void {
  const message =
    'A list with dashes cannot stand between brackets. Write its items with commas, or take the brackets away.';
  reading.sink.report('unexpected-sign', span(token.offset, token.offset + 1), message);
}
