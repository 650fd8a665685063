import type { PaperSize } from '../paper-size.ts';
import type { Line } from '../piece.ts';
import { plain } from '../piece.ts';
import type { Band, Card } from './card.ts';

/*
 * Which size of type lets a card stay on one side of its sheet: the largest that fits by an estimate of its lines. The estimate takes wide
 * letters, so that a printer with other fonts does not break the page.
 */

const mmPerPt = 0.3528;
/** Average width of a letter and height of a line, in parts of the type size. */
const letter = 0.56;
const leading = 1.3;
const smallest = 0.66;

/** In points; never under two thirds of the usual size of the sheet: such a card goes over two sides. */
export function typeSizeFor(card: Card, { widthMm, heightMm, marginMm, typePt }: PaperSize): number {
  for (let share = 1; share > smallest; share -= 0.02) {
    const size = typePt * share;
    const lettersPerLine = (widthMm - 2 * marginMm) / (size * mmPerPt * letter);
    const linesPerPage = (heightMm - 2 * marginMm) / (size * mmPerPt * leading);
    if (rowsOf(card, lettersPerLine) <= linesPerPage) return Math.round(size * 100) / 100;
  }
  return Math.round(typePt * smallest * 100) / 100;
}

function rowsOf(card: Card, letters: number): number {
  let rows = 5 + rowsFor([...card.facts.map(({ line }) => line)].flat(), letters * 0.6);
  if (card.draft.length > 0) rows += 1.5 + card.draft.join(' ').length / letters;
  for (const band of card.bands) rows += bandRows(band, letters - 5);
  const small = letters * 1.15;
  rows += rowsFor(card.why.flat(), small) + rowsFor(card.call.flat(), small) + 0.5;
  return rows + 0.8 * (7 + card.notes.length / 2);
}

function bandRows({ blocks, drawing, figures }: Band, letters: number): number {
  const across = drawing === undefined ? letters : letters - 24;
  let rows = figures.length > 0 ? 3 : 0;
  for (const { title, signs, lines } of blocks) {
    rows += 0.35 + (title === undefined && signs.length === 0 ? 0 : 1.1 + signs.length / 3);
    for (const line of lines) rows += rowsFor(line, across);
  }
  const drawn = drawing === undefined ? 0 : drawing.shows === 'aim' ? 9 : 4 + 3.6 * drawing.levels;
  return 2 + Math.max(rows, drawn);
}

function rowsFor(line: Line, letters: number): number {
  const length = plain(line).length;
  return length === 0 ? 0 : Math.ceil(length / letters);
}
