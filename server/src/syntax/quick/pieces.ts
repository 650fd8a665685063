import type { ReadLimits } from '../limits.ts';
import type { MapEntry } from '../tree.ts';
import { readEntry } from './lines.ts';
import { readKey } from './scalars.ts';
import { isLineEnd, NUMBER_SIGN, Scan } from './scan.ts';

/** Lines of one key among others in the same column. `entry` is missing where they are not as the quick reader knows them. */
export interface Piece {
  /** Start of its first line. */
  readonly start: number;
  readonly entry?: MapEntry;
}

/** Where keys stand one below the other. */
export interface Block {
  /** Start of the first line. */
  readonly start: number;
  /** Start of the line after the last. */
  readonly end: number;
  readonly column: number;
  /** Maps around them. */
  readonly depth: number;
}

/** The pieces of a block. Each begins with a key in its column, but for those that the quick reader does not know. */
export function piecesOf(text: string, { start, end, column, depth }: Block, limits: ReadLimits): readonly Piece[] {
  const pieces: Piece[] = [];
  for (let at = start; at < end; ) {
    const scan = new Scan(text, limits);
    for (let level = 0; level <= depth; level++) scan.enter();
    scan.at = at + column;
    scan.column = column;
    const entry = readEntry(scan, column);
    const isWhole = entry !== undefined && (scan.at >= end || scan.column === column);
    pieces.push(isWhole ? { start: at, entry } : { start: at });
    at = isWhole ? Math.min(end, scan.at - Math.max(0, scan.column)) : nextKey(text, at, end, column);
  }
  return pieces;
}

/** The block below a key that has nothing else on its line; undefined where there is none that begins with a word. */
export function blockBelow(text: string, at: number, outer: Block, end: number): Block | undefined {
  const scan = new Scan(text);
  scan.at = at + outer.column;
  if (readKey(scan) === undefined) return undefined;
  scan.skipSpaces();
  const code = scan.code(scan.at);
  if ((code !== NUMBER_SIGN && !isLineEnd(code)) || !scan.nextLine()) return undefined;
  const { column } = scan;
  if (column <= outer.column || scan.at >= end || !/[A-Za-z_]/.test(text[scan.at] ?? '')) return undefined;
  return { start: scan.at - column, end, column, depth: outer.depth + 1 };
}

/** Start of the next line that begins with an ordinary key in this column; `end` when there is none. */
function nextKey(text: string, from: number, end: number, column: number): number {
  for (let line = text.indexOf('\n', from) + 1; line > 0 && line < end; line = text.indexOf('\n', line) + 1)
    if (isKeyLine(text, line, column)) return line;
  return end;
}

const KEY = /[A-Za-z_][\w-]*:(?=[ \r\n]|$)/y;

function isKeyLine(text: string, line: number, column: number): boolean {
  for (let at = line; at < line + column; at++) if (text[at] !== ' ') return false;
  KEY.lastIndex = line + column;
  return KEY.test(text);
}
