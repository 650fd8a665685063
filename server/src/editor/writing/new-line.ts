import type { Edit } from '../../base/problem.ts';
import { fileForm } from '../../syntax/edits.ts';
import { lineEndAt } from './writing-scan.ts';
import { wantedAt } from './writing-shape.ts';

/** A place where a line may go on: with the next dash of a list, or with the next key of a map. */
interface Level {
  readonly column: number;
  readonly is: 'item' | 'key';
}

/**
 * What Enter means in a rule file, once the new line is there: behind an item the next item, behind a field the next field, below a key its
 * first item or field. Enter on a line where nothing was written goes one level out and adds no line. Before the brackets that close a value it
 * means the same as behind them: they stay where they are. `offset`: the cursor on the new line.
 */
export function afterNewLine(text: string, offset: number): readonly Edit[] {
  const start = text.lastIndexOf('\n', offset - 1) + 1;
  if (start === 0 || text.slice(start, offset).trim() !== '') return [];
  const end = lineEndAt(text, offset);
  const rest = text.slice(offset, end).trim();
  if (rest !== '') return /^[\]}]+$/.test(rest) ? behindBrackets(text, { start, offset, end }, rest) : [];
  const before = text.lastIndexOf('\n', start - 2) + 1;
  const line = text.slice(before, start).replace(/[\r\n]{1,2}$/, '');
  const indent = offset - start;
  const emptyDash = /^( *)- *$/.exec(line);
  if (emptyDash !== null) return outwards(text, before, { column: emptyDash[1]?.length ?? 0, is: 'item' }, end);
  if (line.trim() === '') return indent === 0 ? [] : outwards(text, before, { column: indent, is: 'key' }, end);
  const wanted = nextLine(line, text.slice(0, start), fileForm(text).step);
  return wanted === undefined || wanted === text.slice(start, end) ? [] : [{ span: { start, end }, text: wanted }];
}

interface NewLine {
  readonly start: number;
  readonly offset: number;
  readonly end: number;
}

/** Brackets that the new line took along go back to the value that they close, and the line begins as behind it. */
function behindBrackets(text: string, { start, offset, end }: NewLine, brackets: string): readonly Edit[] {
  const before = text.lastIndexOf('\n', start - 2) + 1;
  const written = text.slice(before, start).trimEnd();
  const line = `${written}${brackets}`;
  const { column, dashes, rest } = partsOf(line);
  // Right behind a bracket somebody opens a value over several lines.
  if (/[[{]$/.test(written) || !isClosed(keyOf(rest) ?? rest)) return [];
  const wanted = nextLine(line, `${text.slice(0, before)}${line}\n`, fileForm(text).step);
  const lineEnd = before + written.length;
  return [
    { span: { start: lineEnd, end: lineEnd }, text: brackets },
    { span: { start, end: offset }, text: wanted ?? ' '.repeat(dashes[0] ?? column) },
    { span: { start: offset, end }, text: '' },
  ];
}

/** The line where nothing was written is used again, one level further out. */
function outwards(text: string, from: number, level: Level, end: number): readonly Edit[] {
  const around = levelsAbove(text, from);
  const own = around.findIndex(({ column, is }) => column === level.column && is === level.is);
  const out = own >= 0 ? around[own + 1] : around.find(({ column }) => column < level.column);
  return [{ span: { start: from, end }, text: out === undefined ? '' : lineAt(out) }];
}

function lineAt({ column, is }: Level): string {
  return `${' '.repeat(column)}${is === 'item' ? '- ' : ''}`;
}

/** The lists and maps that the lines above `from` leave open, innermost first. */
function levelsAbove(text: string, from: number): readonly Level[] {
  const levels: Level[] = [];
  let limit = Number.POSITIVE_INFINITY;
  for (let end = from - 1; end >= 0 && limit > 0; ) {
    const start = text.lastIndexOf('\n', end - 1) + 1;
    const line = text.slice(start, end).trimEnd();
    for (const level of levelsOf(line, limit, levels.at(-1))) {
      levels.push(level);
      limit = level.column;
    }
    end = start - 1;
  }
  return levels;
}

/** A list may stand at the column of the key above it. */
function levelsOf(line: string, limit: number, inner: Level | undefined): readonly Level[] {
  const { column, dashes, rest } = partsOf(line);
  if (rest === '' && dashes.length === 0) return [];
  if (rest.startsWith('#')) return [];
  const isKey = keyOf(rest) !== undefined;
  if (inner?.is === 'item' && column === limit && dashes.length === 0 && isKey) return [{ column, is: 'key' }];
  const own: readonly Level[] = [
    ...(isKey ? [{ column, is: 'key' as const }] : []),
    ...dashes.toReversed().map((dash) => ({ column: dash, is: 'item' as const })),
  ];
  return own.filter((level) => level.column < limit);
}

interface LineParts {
  /** Where its content begins, behind the dashes. */
  readonly column: number;
  readonly dashes: readonly number[];
  readonly rest: string;
}

function partsOf(line: string): LineParts {
  const dashes: number[] = [];
  let column = line.length - line.trimStart().length;
  for (let dash = /^- +/.exec(line.slice(column)); dash !== null; dash = /^- +/.exec(line.slice(column))) {
    dashes.push(column);
    column += dash[0].length;
  }
  const rest = line.slice(column).trimEnd();
  return rest === '-' ? { column: column + 2, dashes: [...dashes, column], rest: '' } : { column, dashes, rest };
}

/** What stands behind the key that a line begins with; undefined where it begins with none. */
function keyOf(rest: string): string | undefined {
  return /^[A-Za-z0-9_][A-Za-z0-9_.-]{0,79}:(?:\s+(.*))?$/.exec(rest)?.slice(1)[0]?.trim() ?? emptyKey(rest);
}

function emptyKey(rest: string): '' | undefined {
  return /^[A-Za-z0-9_][A-Za-z0-9_.-]{0,79}:\s*$/.test(rest) ? '' : undefined;
}

/** How the line behind this one begins; undefined where the editor's own indent is as good as any. */
function nextLine(line: string, above: string, step: number): string | undefined {
  const { column, dashes, rest } = partsOf(line);
  const value = keyOf(rest);
  const dash = dashes.at(-1);
  if (value === undefined)
    return dash === undefined || !isWholeItem(rest) ? undefined : lineAt({ column: dash, is: 'item' });
  if (/^[|>][-+0-9]{0,2}$/.test(value)) return ' '.repeat(column + step);
  if (value === '' || value.startsWith('#')) return firstInside(above, column, step);
  return dash === undefined || !isClosed(value) ? undefined : ' '.repeat(column);
}

function isWholeItem(item: string): boolean {
  return item !== '' && !/^[|>#&*!%@`?]/.test(item) && isClosed(item);
}

/** Below a key without a value: as the schema has it, its first item or field; a value that is a word stands behind its key. */
function firstInside(above: string, column: number, step: number): string {
  const inner = ' '.repeat(column + step);
  const shape = wantedAt(`${above}${inner}`, above.length + inner.length)?.shape;
  if (shape === undefined || shape.form === 'record' || shape.form === 'table') return inner;
  return shape.form === 'list' ? `${inner}- ` : ' '.repeat(column);
}

/** All brackets and quotation marks that it opens are closed again. */
function isClosed(value: string): boolean {
  const open: string[] = [];
  let quote = '';
  for (let at = 0; at < value.length; at++) {
    const sign = value[at] ?? '';
    if (quote !== '') {
      if (sign === '\\' && quote === '"') at++;
      else if (sign === quote) quote = '';
    } else if ((sign === '"' || sign === "'") && /^$|[\s{[,:]/.test(value[at - 1] ?? '')) quote = sign;
    else if ('{['.includes(sign)) open.push(sign);
    else if ('}]'.includes(sign)) open.pop();
    else if (sign === '#' && value[at - 1] === ' ') break;
  }
  return open.length === 0 && quote === '';
}
