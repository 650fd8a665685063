import type { CST } from 'yaml';
import { type Span, span } from '../base/span.ts';
import { endOf, type Reading } from './reading.ts';
import { fixQuote, lineRest } from './repairs.ts';
import { shown } from './words.ts';

/** What stands between two values: spaces, comments, line ends, and signs that are not allowed. */
export interface Trivia {
  /** The `:`, `-`, `?` or `,` looked for. */
  readonly sign: CST.SourceToken | undefined;
  readonly comma: CST.SourceToken | undefined;
  readonly hasNewline: boolean;
  /** True when something was reported in front of the value (an anchor, a tag). */
  readonly marked: boolean;
}

type SignType = 'map-value-ind' | 'seq-item-ind' | 'explicit-key-ind' | 'doc-start';

/** Walks the tokens in front of a value. Reports every sign that may not stand there. */
export function walkTrivia(reading: Reading, tokens: readonly CST.SourceToken[], looked: SignType): Trivia {
  let sign: CST.SourceToken | undefined;
  let comma: CST.SourceToken | undefined;
  let hasNewline = false;
  let marked = false;
  for (const token of tokens) {
    switch (token.type) {
      case 'space':
        break;
      case 'comment':
        checkCommentSpace(reading, token);
        break;
      case 'newline':
        hasNewline = true;
        break;
      case 'anchor':
      case 'tag':
        marked = true;
        reportMark(reading, token);
        break;
      case 'comma':
        if (comma !== undefined) reportExtraComma(reading, token);
        comma = token;
        break;
      case looked:
        if (sign === undefined) {
          sign = token;
          hasNewline = false;
        } else reportUnexpected(reading, token);
        break;
      default:
        reportUnexpected(reading, token);
    }
  }
  return { sign, comma, hasNewline, marked };
}

/** What follows a value on its line. Only spaces, comments and line ends may. */
export function walkEnd(reading: Reading, tokens: readonly CST.SourceToken[] | undefined): void {
  if (tokens === undefined) return;
  for (const token of tokens) {
    if (token.type === 'comment') checkCommentSpace(reading, token);
    else if (token.type !== 'space' && token.type !== 'newline') {
      reportUnexpected(reading, token);
      return;
    }
  }
}

function checkCommentSpace(reading: Reading, token: CST.SourceToken): void {
  const before = token.offset === 0 ? '\n' : (reading.text[token.offset - 1] ?? '\n');
  if (/\s/.test(before)) return;
  reading.sink.report(
    'comment-needs-space',
    span(token.offset, token.offset + 1),
    'A comment needs a space in front of its number sign. If the number sign belongs to the text, put the whole text in quotes.',
    {
      fixes: [
        { title: 'Put a space before the comment', edits: [{ span: span(token.offset, token.offset), text: ' ' }] },
      ],
    },
  );
}

export function reportUnexpected(reading: Reading, token: { offset: number; source: string }): void {
  const at = span(token.offset, Math.max(token.offset + 1, endOf(token)));
  reading.sink.report(
    'unexpected-sign',
    at,
    `${shown(token.source)} cannot stand here. If it is part of the text, put the whole text in quotes.`,
  );
}

function reportExtraComma(reading: Reading, token: CST.SourceToken): void {
  const at = span(token.offset, token.offset + 1);
  const fix = { title: 'Delete the comma', edits: [{ span: at, text: '' }] };
  reading.sink.report(
    'comma-extra',
    at,
    'There is one comma too many here, so an item is missing. Delete the comma or write the item.',
    {
      fixes: [fix],
    },
  );
}

/** An anchor (`&name`) or a tag (`!word`). A sign followed by a space was meant as text. */
function reportMark(reading: Reading, token: CST.SourceToken): void {
  const at = span(token.offset, endOf(token));
  if (token.source === '&' || token.source === '!') {
    reportSign(reading, at.start);
    return;
  }
  if (token.type === 'anchor') {
    reading.anchors.push({ name: token.source.slice(1), span: at });
    return;
  }
  const rest = spacesAfter(reading.text, at.end);
  const fixes = [{ title: `Delete ${shown(token.source)}`, edits: [{ span: span(at.start, rest), text: '' }] }];
  const message = `${shown(token.source)} tells programs to read the value in a special way, which is not allowed here. Delete it; if it is part of the text, put the whole text in quotes.`;
  reading.sink.report('tag-not-allowed', at, message, { fixes });
}

/** Text that starts with a sign which YAML keeps for itself. */
export function reportSign(reading: Reading, start: number): void {
  const whole = lineRest(reading.text, start);
  const sign = reading.text[start] ?? '';
  const message = `Text that starts with ${shown(sign)} is not read as text. Put the whole text in quotes: ${quotedExample(reading, whole)}.`;
  reading.sink.report('sign-needs-quotes', whole, message, { fixes: [fixQuote(reading.text, whole)] });
}

function quotedExample(reading: Reading, whole: Span): string {
  return `"${shown(reading.text.slice(whole.start, whole.end)).slice(1, -1)}"`;
}

function spacesAfter(text: string, from: number): number {
  let at = from;
  while (text[at] === ' ') at++;
  return at;
}
