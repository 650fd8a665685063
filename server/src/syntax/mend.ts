import { span } from '../base/span.ts';
import { isOddSpace, isUnseen } from './characters.ts';
import { mendConflicts } from './conflicts.ts';
import { MendedText } from './mended-text.ts';
import type { ProblemSink } from './problem-sink.ts';
import { mendSpaceLikes, reportControl, reportSurrogate, reportUnseen } from './stray-characters.ts';
import { mendTab, reportTabs } from './tabs.ts';

/**
 * Looks at every character once, before any YAML is read: tabs, carriage returns, hidden and look-alike characters, merge marks.
 * Each is reported, and replaced by what was meant where that keeps the length, so that the rest of the file is still read with
 * the right offsets.
 */
export function mend(text: string, sink: ProblemSink): string {
  if (!UNUSUAL.test(text)) return text;
  const mended = new MendedText(text);
  mendConflicts(mended, sink);
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code >= 32 && code < 127) continue;
    if (code === 10) mended.lineStart = at + 1;
    else mendCharacter(mended, sink, at, code);
  }
  reportTabs(mended, sink);
  reportUnseen(mended, sink);
  reportLoneReturns(mended, sink);
  return mended.text();
}

const UNUSUAL = /[^\n\r\x20-\x7e]|\r(?!\n)|<<<<<<</;

function mendCharacter(mended: MendedText, sink: ProblemSink, at: number, code: number): void {
  if (code === 9) mendTab(mended, at);
  else if (code === 13) {
    if (mended.source.charCodeAt(at + 1) !== 10) mended.noteLoneReturn(at);
  } else if (code < 160) reportControl(sink, at, code);
  else if (code < 173 && code !== 160) return;
  else if (isUnseen(code)) noteUnseen(mended, at);
  else if (isOddSpace(code) || code === 0xff1a) mendSpaceLikes(mended, sink, at, code);
  else if (code >= 0xd800 && code < 0xe000) reportSurrogate(mended.source, sink, at, code);
}

function noteUnseen(mended: MendedText, at: number): void {
  if (at === 0 && mended.source.charCodeAt(0) === 0xfeff) return;
  mended.unseen.push({ at, lineStart: mended.lineStart });
}

function reportLoneReturns(mended: MendedText, sink: ProblemSink): void {
  const first = mended.loneReturns[0];
  if (first === undefined) return;
  const edits = mended.loneReturns.map((at) => ({ span: span(at, at + 1), text: '\n' }));
  sink.report(
    'odd-line-end',
    span(first, first + 1),
    'This line ends with a lone carriage return, which some programs do not take for a line end. Save the file with ordinary line ends.',
    { fixes: [{ title: 'Replace with ordinary line ends', edits }] },
  );
}
