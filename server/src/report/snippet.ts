import type { Cell } from './display-width.ts';
import { cellsOf } from './display-width.ts';

/** A source line cut to a window, and the carets that go under it. Both harmless to a terminal. */
export interface Snippet {
  readonly line: string;
  readonly carets: string;
}

/** Longest line whose every character is looked at: a window around the words is cut from longer ones first. */
const longestLine = 2_000;

/**
 * `line` as a terminal shows it, with carets under the characters from `from` to `to` (UTF-16 offsets in the line). At least one caret;
 * a line wider than `columns` is cut on both sides of the words.
 */
export function snippetOf(line: string, from: number, to: number, columns: number): Snippet {
  const cutBefore = line.length > longestLine ? Math.max(0, from - longestLine / 2) : 0;
  const cells = cellsOf(line.slice(cutBefore, cutBefore + longestLine).replace(/[ \t]+$/, ''));
  const first = cells.findIndex((cell) => cell.end > from - cutBefore);
  const start = first < 0 ? cells.length : first;
  const after = cells.findIndex((cell) => cell.start >= Math.max(to, from + 1) - cutBefore);
  const end = after < 0 ? Math.max(cells.length, start) : Math.max(after, start);
  return windowed(cells, start, end, columns, cutBefore > 0 ? 'cut' : 'whole');
}

function windowed(
  cells: readonly Cell[],
  start: number,
  end: number,
  columns: number,
  before: 'cut' | 'whole',
): Snippet {
  const room = Math.max(20, columns - 4);
  const left = columnsOf(cells, 0, cells.length) <= room ? 0 : windowStart(cells, start, end, room);
  const right = windowEnd(cells, left, room);
  const lead = left > 0 || before === 'cut' ? '… ' : '';
  const tail = right < cells.length ? ' …' : '';
  const shown = cells
    .slice(left, right)
    .map((cell) => cell.shown)
    .join('');
  const blanks = ' '.repeat(lead.length + columnsOf(cells, left, Math.min(start, right)));
  const carets = '^'.repeat(Math.max(1, columnsOf(cells, start, Math.min(end, right))));
  return { line: `${lead}${shown}${tail}`, carets: `${blanks}${carets}` };
}

/** Leaves a third of the room before the words; words wider than the room begin it. */
function windowStart(cells: readonly Cell[], start: number, end: number, room: number): number {
  const words = columnsOf(cells, start, end);
  let spare = words >= room ? Math.floor(room / 6) : Math.max(0, Math.min(room - words, Math.floor(room / 3)));
  let left = start;
  while (left > 0 && spare >= (cells[left - 1]?.columns ?? 0)) {
    left--;
    spare -= cells[left]?.columns ?? 0;
  }
  return left;
}

function windowEnd(cells: readonly Cell[], left: number, room: number): number {
  let spare = room;
  let right = left;
  while (right < cells.length && spare >= (cells[right]?.columns ?? 0)) {
    spare -= cells[right]?.columns ?? 0;
    right++;
  }
  return right;
}

function columnsOf(cells: readonly Cell[], from: number, to: number): number {
  let columns = 0;
  for (let at = from; at < to; at++) columns += cells[at]?.columns ?? 0;
  return columns;
}
