import type { Part } from './paper-part.ts';
import type { PaperSize } from './paper-size.ts';
import { type Line, plain } from './piece.ts';

/*
 * Which size of type saves a sheet: a page of a few sheets is set a little smaller where that leaves no last sheet with only its foot on
 * it. By an estimate of lines with wide letters, so that a printer with other fonts gains room and loses none.
 */

const usualPt = 10.5;
const smallest = 0.8;
const step = 0.02;
const mmPerPt = 0.3528;
/** Average width of a letter and height of a line, in parts of the type size. */
const letter = 0.55;
const leading = 1.32;
/** Of longer papers nobody minds one sheet more. */
const shortPaper = 6;

/** In points. */
export function typeSizeForParts(parts: readonly Part[], size: PaperSize): number {
  const pages = segmentsOf(parts);
  const usual = sheetsAt(1, pages, size);
  const fewest = usual > shortPaper ? usual : sheetsAt(smallest, pages, size);
  let share = 1;
  while (share > smallest && sheetsAt(share, pages, size) > fewest) share -= step;
  return Math.round(usualPt * share * 100) / 100;
}

/** What stands between two new pages. */
function segmentsOf(parts: readonly Part[]): readonly (readonly Part[])[] {
  const segments: Part[][] = [[]];
  for (const part of parts) {
    if (part.is === 'new-page') segments.push([]);
    else segments.at(-1)?.push(part);
  }
  return segments;
}

function sheetsAt(
  share: number,
  pages: readonly (readonly Part[])[],
  { widthMm, heightMm, marginMm }: PaperSize,
): number {
  const em = usualPt * share * mmPerPt;
  const letters = (widthMm - 2 * marginMm - 6) / (em * letter);
  const lines = (heightMm - 2 * marginMm - 6) / (em * leading);
  let sheets = 0;
  for (const parts of pages) {
    let rows = 0;
    for (const part of parts) rows += rowsOf(part, letters);
    sheets += Math.max(1, Math.ceil(rows / lines));
  }
  return sheets;
}

/** How many lines of the usual height a part takes. */
function rowsOf(part: Part, letters: number): number {
  switch (part.is) {
    case 'heading':
      return part.level === 1 ? 2.4 * rowsFor(part.line, letters / 1.6) : 0.7 + 1.2 * rowsFor(part.line, letters / 1.2);
    case 'verdict':
      return (
        1.6 + 1.5 * rowsFor(part.line, letters / 1.65) + sum(part.under, (line) => rowsFor(line, letters - 6) + 0.3)
      );
    case 'text':
      return rowsFor(part.line, letters) + 0.45;
    case 'small':
      return 0.9 * rowsFor(part.line, letters * 1.15) + 0.4;
    case 'list':
    case 'choices':
    case 'numbered':
      return 0.3 + sum(part.items, (item) => rowsFor(item, letters - 4) + 0.18);
    case 'contents':
      return 0.3 + 1.2 * part.items.length;
    case 'cautions':
      return 1.6 + 0.8 * 0.5 * sum(part.items, (item) => rowsFor(item, letters * 0.57));
    case 'table':
      return tableRows(part, letters);
    case 'quote':
      return 0.4 + rowsFor([...part.quote, ...part.citation], letters - 4);
    case 'figure':
      return 1.6 + 0.24 * letters;
    case 'blank':
      return 1.5;
    case 'new-page':
      return 0;
  }
}

/** Columns share the width by their longest cells, as a browser does it, none less than its longest word needs. */
function tableRows({ head, rows, narrow = [] }: Extract<Part, { is: 'table' }>, letters: number): number {
  const all = [head.map((cell): Line => [cell]), ...rows];
  const longest = head.map((_, column) => Math.max(...all.map((row) => Math.min(plain(row[column] ?? []).length, 90))));
  const fixed = longest.map((length, column) => (narrow.includes(column) ? length + 2 : 0));
  const left = letters * 1.05 - fixed.reduce((a, b) => a + b, 0) - 2 * head.length;
  const shared = longest.reduce((a, b, column) => a + (narrow.includes(column) ? 0 : b), 0);
  const widths = longest.map((length, column) =>
    narrow.includes(column) ? (fixed[column] ?? 0) : Math.max(6, Math.min(length + 1, (left * length) / shared)),
  );
  return 0.5 + sum(all, (row) => 0.2 + 0.92 * Math.max(1, ...row.map((cell, at) => rowsFor(cell, widths[at] ?? 10))));
}

function rowsFor(line: Line, letters: number): number {
  return Math.ceil(plain(line).length / Math.max(4, letters));
}

function sum<Item>(items: readonly Item[], rows: (item: Item) => number): number {
  let all = 0;
  for (const item of items) all += rows(item);
  return all;
}
