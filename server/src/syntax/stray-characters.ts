import { span } from '../base/span.ts';
import { characterName } from './characters.ts';
import type { MendedText } from './mended-text.ts';
import type { ProblemSink } from './problem-sink.ts';

/** Control characters, NUL and BEL among them. */
export function reportControl(sink: ProblemSink, at: number, code: number): void {
  if (code === 0x85) {
    const message = `The ${characterName(code)} ends a line in some programs and not in others. Replace it with a space or a new line.`;
    sink.report('odd-line-end', span(at, at + 1), message, replaceWith(at, ' ', 'Replace with a space'));
    return;
  }
  const message = `There is a ${characterName(code)} here, which has no place in text. The file may be damaged; delete the character.`;
  sink.report('control-character', span(at, at + 1), message, replaceWith(at, '', 'Delete the character'));
}

/** Half of a character that needs two halves. */
export function reportSurrogate(text: string, sink: ProblemSink, at: number, code: number): void {
  const next = text.charCodeAt(at + 1);
  if (code < 0xdc00 && next >= 0xdc00 && next < 0xe000) return;
  const before = at > 0 ? text.charCodeAt(at - 1) : 0;
  if (code >= 0xdc00 && before >= 0xd800 && before < 0xdc00) return;
  const message = `Here is half of a character (${characterName(code)}); the other half is missing. Delete it or type the character again.`;
  sink.report('control-character', span(at, at + 1), message, replaceWith(at, '', 'Delete the half character'));
}

/**
 * A no-break space or a full-width colon where YAML needs the ordinary one: in the indent, or between key and value. Elsewhere in
 * text they are harmless and stay.
 */
export function mendSpaceLikes(mended: MendedText, sink: ProblemSink, at: number, code: number): void {
  const start = mended.lineStart;
  if (at - start > 200) return;
  const before = mended.source.slice(start, at);
  if (code === 0xff1a) {
    if (KEY_BEFORE.test(before)) mendWideColon(mended, sink, at);
    return;
  }
  if (mended.lineEnd(at) === at + 1 && before.trim() === '') return;
  if (!INDENT_OR_COLON_BEFORE.test(before)) return;
  mended.replace(at, ' ');
  if (before.length > 0 && mended.source.charCodeAt(at - 1) === code) return;
  const message = `The ${characterName(code)} here looks like a space but is not read as one, so this line means something else. Type an ordinary space.`;
  const end = endOfRun(mended.source, at, code);
  const fix = { title: 'Replace with ordinary spaces', edits: [{ span: span(at, end), text: ' '.repeat(end - at) }] };
  sink.report('hidden-character', span(at, end), message, { fixes: [fix] });
}

/** Linear: each class is disjoint from the next. */
const KEY_BEFORE = /^[\s-]*[\w"']+$/;
const INDENT_OR_COLON_BEFORE = /^(?:[\s-]*|[\s-]*[\w"'-]+:\s*)$/;

function mendWideColon(mended: MendedText, sink: ProblemSink, at: number): void {
  mended.replace(at, ':');
  const next = mended.source[at + 1];
  const spaced = next === undefined || /\s/.test(next);
  const message =
    'The colon here is a full-width one (U+FF1A), so this line is not read as a key with a value. Type an ordinary colon and a space.';
  sink.report(
    'look-alike-character',
    span(at, at + 1),
    message,
    replaceWith(at, spaced ? ':' : ': ', 'Type an ordinary colon'),
  );
}

function endOfRun(text: string, at: number, code: number): number {
  let end = at + 1;
  while (text.charCodeAt(end) === code) end++;
  return end;
}

/** One problem a line for all hidden characters on it. */
export function reportUnseen(mended: MendedText, sink: ProblemSink): void {
  let line: number[] = [];
  let lineStart = -1;
  for (const { at, lineStart: start } of mended.unseen) {
    if (isHonestJoiner(mended.source, at)) continue;
    if (start !== lineStart) {
      reportUnseenLine(mended.source, sink, line);
      line = [];
      lineStart = start;
    }
    line.push(at);
  }
  reportUnseenLine(mended.source, sink, line);
}

/** Joiners are part of ordinary spelling in some scripts, never in Latin. */
function isHonestJoiner(text: string, at: number): boolean {
  const code = text.charCodeAt(at);
  if (code !== 0x200c && code !== 0x200d) return false;
  return text.charCodeAt(at - 1) > 0x58f && text.charCodeAt(at + 1) > 0x58f;
}

function reportUnseenLine(text: string, sink: ProblemSink, places: readonly number[]): void {
  const first = places[0];
  if (first === undefined) return;
  const code = text.charCodeAt(first);
  const more = places.length > 1 ? ` and ${places.length - 1} more on this line` : '';
  const message = `There is a hidden character here: ${characterName(code)}${more}. It cannot be seen but makes this text a different one. Delete it.`;
  const edits = places.map((at) => ({ span: span(at, at + 1), text: isLineBreak(text.charCodeAt(at)) ? ' ' : '' }));
  sink.report('hidden-character', span(first, first + 1), message, {
    fixes: [{ title: 'Delete the hidden characters', edits }],
  });
}

function isLineBreak(code: number): boolean {
  return code === 0x2028 || code === 0x2029;
}

function replaceWith(at: number, text: string, title: string) {
  return { fixes: [{ title, edits: [{ span: span(at, at + 1), text }] }] };
}
