import { type Span, span } from '../base/span.ts';
import { counted } from '../base/words.ts';
import type { MendedText } from './mended-text.ts';
import type { ProblemSink } from './problem-sink.ts';

/** Sorts a tab into: part of an indent, after a colon or dash, or harmless (inside text, before a comment, at a line's end). */
export function mendTab(mended: MendedText, at: number): void {
  const start = mended.lineStart;
  if (at - start > 200 || mended.isHidden(at)) return;
  const before = mended.source.slice(start, at);
  const rest = mended.source.slice(at, Math.min(mended.lineEnd(at), at + 200)).trimStart();
  if (rest === '' || rest.startsWith('#')) return;
  if (INDENT.test(before)) {
    if ((mended.indentTabs.at(-1) ?? -1) < start) mended.tabbedLines++;
    mended.indentTabs.push(at);
    mended.replace(at, ' ');
  } else if (AFTER_COLON.test(before)) mended.signTabs.push(at);
}

const INDENT = /^[\s-]*$/;
const AFTER_COLON = /^[\s-]*[\w"'-]+:\s*$/;

/** One problem for all indent tabs of a file, one for all tabs after a colon. The fix never changes what the lines say. */
export function reportTabs(mended: MendedText, sink: ProblemSink): void {
  const first = mended.indentTabs[0];
  if (first !== undefined) {
    const others = mended.tabbedLines - 1;
    const also = others > 0 ? ` (and ${counted(others, 'more line')})` : '';
    const message = `This line is indented with a tab${also}. Indent with spaces; two for each level.`;
    const edits = mended.indentTabs.map((at) => ({ span: span(at, at + 1), text: spacesFor(mended.source, at) }));
    sink.report('tab-indent', span(first, first + 1), message, {
      fixes: [{ title: 'Replace the tabs with spaces', edits }],
    });
  }
  let before = -2;
  for (const at of mended.signTabs) {
    if (at !== before + 1) reportSignTab(sink, tabRun(mended.source, at));
    before = at;
  }
}

/** After a dash one space keeps the item; in an indent two spaces make a level. */
function spacesFor(text: string, at: number): string {
  return text.charCodeAt(at - 1) === 45 ? ' ' : '  ';
}

function tabRun(text: string, at: number): Span {
  let end = at;
  while (text.charCodeAt(end) === 9) end++;
  return span(at, end);
}

function reportSignTab(sink: ProblemSink, at: Span): void {
  const message = 'There is a tab after the colon, which some programs refuse. Type a space.';
  sink.report('tab-after-sign', at, message, {
    fixes: [{ title: 'Replace the tab with a space', edits: [{ span: at, text: ' ' }] }],
  });
}
