import type { Edit } from '../base/problem.ts';
import { span } from '../base/span.ts';
import { scalarHazard } from './hazards.ts';
import { quoteScalar } from './quote.ts';
import { readTree } from './read.ts';
import { columnOf } from './repairs.ts';
import type { ListTree, MapTree, ScalarTree, Tree } from './tree.ts';

export type Applied = { readonly text: string } | { readonly refused: string };

/**
 * Text with the edits applied; everything outside their spans is unchanged. Refused when two edits touch the same characters, are
 * insertions at the same place, or lie outside the text: none is applied then.
 */
export function applyEdits(text: string, edits: readonly Edit[]): Applied {
  const sorted = [...edits].sort((a, b) => a.span.start - b.span.start || a.span.end - b.span.end);
  const parts: string[] = [];
  let done = 0;
  let before: Edit | undefined;
  for (const edit of sorted) {
    const { start, end } = edit.span;
    if (start < 0 || end < start || end > text.length) return { refused: 'An edit lies outside the text.' };
    if (start < done || (before !== undefined && samePlace(before, edit)))
      return { refused: 'Two edits touch the same characters.' };
    parts.push(text.slice(done, start), edit.text);
    done = end;
    before = edit;
  }
  parts.push(text.slice(done));
  return { text: parts.join('') };
}

function samePlace(a: Edit, b: Edit): boolean {
  return a.span.start === b.span.start && a.span.end === b.span.end;
}

/** How a file is laid out, as far as new lines have to follow it. */
export interface FileForm {
  readonly lineEnd: '\n' | '\r\n';
  /** Columns from one level to the next. */
  readonly step: number;
}

/** The line end that most lines have, and the smallest indent in use (2 when there is none). */
export function fileForm(text: string): FileForm {
  const head = text.slice(0, 100_000);
  const all = head.split('\n').length - 1;
  const crlf = head.split('\r\n').length - 1;
  let step = 0;
  for (const line of head.split('\n', 2_000)) {
    const indent = line.length - line.trimStart().length;
    if (indent > 1 && indent <= 8 && indent < line.length && (step === 0 || indent < step)) step = indent;
  }
  return { lineEnd: crlf * 2 > all ? '\r\n' : '\n', step: step === 0 ? 2 : step };
}

/** Puts another value in place of one, quotes and all. Bare where every reader takes the bare text for that text, quoted otherwise. */
export function replaceScalar(scalar: ScalarTree, value: string, style: 'bare' | 'quoted'): Edit {
  return { span: scalar.span, text: style === 'bare' && isSafeBare(value) ? value : quoteScalar(value) };
}

/** True when `value` without quotes is read as exactly that text, whatever the reader. */
export function isSafeBare(value: string): boolean {
  if (!/^[A-Za-z0-9][\w .°/%+-]{0,198}$/.test(value) || value.endsWith(' ')) return false;
  const { tree, problems } = readTree(`k: [${value}]\n`);
  const list = tree?.node === 'map' ? tree.entries[0]?.value : undefined;
  const scalar = list?.node === 'list' && list.items.length === 1 ? list.items[0] : undefined;
  if (problems.length > 0 || scalar?.node !== 'scalar' || scalar.text !== value) return false;
  return scalarHazard(scalar, 'text') === undefined;
}

/**
 * Adds `key` to a map, after its last entry. `lines` are the lines of the value, without indent of their own level: one line goes
 * behind the colon, several go below it, and so does a list with dashes. In a map between braces only one line fits; undefined when there
 * are more.
 */
export function insertEntry(text: string, map: MapTree, key: string, lines: readonly string[]): Edit | undefined {
  const [first = '', ...more] = lines;
  if (text[map.span.start] === '{') {
    return more.length > 0
      ? undefined
      : insertBetween(map.span.start, map.entries.at(-1)?.value.span.end, `${key}: ${first}`);
  }
  const { step } = fileForm(text);
  const column = columnOf(text, map.span.start);
  const own = ' '.repeat(column);
  const isBehindColon = more.length === 0 && !first.startsWith('- ');
  const body = isBehindColon ? [`${own}${key}: ${first}`] : [`${own}${key}:`, ...indented(lines, column + step)];
  return insertLines(text, map.span.end, body);
}

/** Adds an item at the end of a list. `lines` as for `insertEntry`; undefined when several lines do not fit between brackets. */
export function appendItem(text: string, list: ListTree, lines: readonly string[]): Edit | undefined {
  return insertItem(text, list, lines, list.items.at(-1));
}

/** Adds an item behind one of the list. */
export function insertItem(
  text: string,
  list: ListTree,
  lines: readonly string[],
  behind: Tree | undefined,
): Edit | undefined {
  const [first = '', ...more] = lines;
  if (text[list.span.start] === '[') {
    return more.length > 0 ? undefined : insertBetween(list.span.start, behind?.span.end, first);
  }
  const column = columnOf(text, list.span.start);
  const end = behind === undefined || behind === list.items.at(-1) ? list.span.end : behind.span.end;
  return insertLines(text, end, [`${' '.repeat(column)}- ${first}`, ...indented(more, column + 2)]);
}

function indented(lines: readonly string[], columns: number): string[] {
  return lines.map((line) => (line === '' ? '' : `${' '.repeat(columns)}${line}`));
}

/** Right behind the last item between brackets, before any comment or comma that follows it. */
function insertBetween(open: number, lastEnd: number | undefined, item: string): Edit {
  return lastEnd === undefined
    ? { span: span(open + 1, open + 1), text: item }
    : { span: span(lastEnd, lastEnd), text: `, ${item}` };
}

/** New lines after the line on which a value ends; a comment behind the value stays with it. */
function insertLines(text: string, end: number, lines: readonly string[]): Edit {
  const { lineEnd } = fileForm(text);
  const atLineStart = end > 0 && text[end - 1] === '\n';
  const next = atLineStart ? end : text.indexOf('\n', end) + 1;
  const block = lines.join(lineEnd);
  if (atLineStart || next > 0) return { span: span(next, next), text: `${block}${lineEnd}` };
  return { span: span(text.length, text.length), text: `${lineEnd}${block}` };
}
