import { escapedCharacter, isUnprintable } from '../base/printable.ts';

/** One character of a source line as a terminal shows it. `columns`: the terminal columns that `shown` fills. */
export interface Cell {
  readonly shown: string;
  readonly columns: number;
  /** UTF-16 offset in the line, and its end. */
  readonly start: number;
  readonly end: number;
}

const tabStop = 4;

/** A line's characters as a terminal shows them: tabs as blanks to the next stop, unprintable ones as escapes. */
export function cellsOf(line: string): readonly Cell[] {
  const cells: Cell[] = [];
  let column = 0;
  let offset = 0;
  for (const character of line) {
    const code = character.codePointAt(0) ?? 0;
    const shown = shownCharacter(character, code, column);
    const columns = shown === character ? widthOf(code) : shown.length;
    cells.push({ shown, columns, start: offset, end: offset + character.length });
    column += columns;
    offset += character.length;
  }
  return cells;
}

function shownCharacter(character: string, code: number, column: number): string {
  if (code === 9) return ' '.repeat(tabStop - (column % tabStop));
  return isUnprintable(code) ? escapedCharacter(code) : character;
}

const combining = /^\p{M}$/u;

/** East Asian wide and full-width characters and pictographs, as ranges of code points that fill two columns. */
const wideRanges: readonly (readonly [number, number])[] = [
  [0x1100, 0x115f],
  [0x231a, 0x231b],
  [0x2e80, 0x303e],
  [0x3041, 0xa4cf],
  [0xa960, 0xa97c],
  [0xac00, 0xd7a3],
  [0xf900, 0xfaff],
  [0xfe30, 0xfe6f],
  [0xff01, 0xff60],
  [0xffe0, 0xffe6],
  [0x1f300, 0x1f64f],
  [0x1f680, 0x1f6ff],
  [0x1f900, 0x1faff],
  [0x20000, 0x3fffd],
];

/** Terminal columns of one printable character: 0, 1 or 2. */
export function widthOf(code: number): number {
  if (code < 0x300) return 1;
  if (combining.test(String.fromCodePoint(code)) || (code >= 0xfe00 && code <= 0xfe0f)) return 0;
  return wideRanges.some(([from, to]) => code >= from && code <= to) ? 2 : 1;
}
