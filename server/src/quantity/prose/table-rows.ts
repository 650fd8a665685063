import { type Column, captionBound, columnsIn } from './column-titles.ts';
import type { NumberMention, QuoteReading } from './prose.ts';
import { asValue } from './ratio.ts';

/**
 * Rows of a table that was pasted as lines. The head above says what each number is: its unit, where the cells print none, and which bound
 * it has. Cells are parted by upright lines or wide gaps.
 */

/** A statement as far as it may be the head of a table or one of its rows. */
export interface Line {
  readonly quote: string;
  readonly section: string;
  /** It is noted that this is the head of a table. */
  readonly isNotedHead: boolean;
}

export const headNote = 'heading of a table';
const farthestHead = 12;
const gap = /\s*\|\s*|\t|\s{3,}/;

export function hasCells(line: string): boolean {
  return gap.test(line.trim());
}

/** A head with what stands right above it. */
export interface TableHead {
  readonly columns: readonly Column[];
  /** Where the line above the head stands among the lines. */
  readonly caption: number;
}

/** The head above a line, over rows of the same table. */
export function headOver(lines: readonly Line[], own: number): TableHead | undefined {
  for (let at = own - 1; at >= 0 && at >= own - farthestHead; at--) {
    const one = lines[at];
    if (one === undefined || one.section !== lines[own]?.section) return undefined;
    const columns = columnsIn(one.quote, one.isNotedHead ? 'known as a head' : 'unknown');
    if (columns !== undefined) return { columns: underCaption(columns, lines[at - 1]?.quote ?? ''), caption: at - 1 };
    if (/[.!?:]\s*$/.test(one.quote) && !hasCells(one.quote)) return undefined;
  }
  return undefined;
}

/** `Cycle parameters (minimum):` above the heading holds for every column that has no bound of its own. */
function underCaption(columns: readonly Column[], caption: string): readonly Column[] {
  const bound = /\d/.test(caption) ? undefined : captionBound(caption.toLowerCase().replace(/\s*:\s*$/, ''));
  return bound === undefined ? columns : columns.map((column) => ({ ...column, bound: column.bound ?? bound }));
}

/** What stands in the cell of a row under a title. */
export function cellUnder(row: string, columns: readonly Column[], title: Column['title']): string | undefined {
  const at = columns.findIndex((column) => column.title === title);
  const cells = row.trim().split(gap);
  return at < 0 || cells.length !== columns.length ? undefined : cells[at];
}

/** The row with what its head says of the numbers in its cells. */
export function inCells(reading: QuoteReading, columns: readonly Column[]): QuoteReading {
  return withColumns(reading, columnsByCell(reading, columns));
}

/** Which column each number stands in. A row with fewer cells than the head leaves open which are empty, and only units tell. */
export function columnsByCell(
  { quote, numbers }: QuoteReading,
  columns: readonly Column[],
): ReadonlyMap<NumberMention, Column> {
  const cells = quote.split(gap).length;
  // Above the names of the rows a head may say nothing.
  const all = cells === columns.length + 1 && !quote.trimEnd().endsWith('|') ? [undefined, ...columns] : columns;
  const row = cells >= all.length || isMissingAtTheEnd(quote, all) ? 'whole' : 'cells missing';
  const found = new Map<NumberMention, Column>();
  for (const mention of numbers) {
    const column = all[quote.slice(0, mention.span.start).split(gap).length - 1];
    const isOwn = !mention.isReference && !mention.isDifference && mention.tolerance === undefined;
    if (column?.dimension !== undefined && isOwn && fits(mention, column, row)) found.set(mention, column);
  }
  return found;
}

/** Only remarks are left out at the end: each cell with a number stands under a title that measures, each other under one that does not. */
function isMissingAtTheEnd(row: string, columns: readonly (Column | undefined)[]): boolean {
  const cells = row.trim().split(gap);
  const isMeasured = (at: number): boolean => columns[at]?.dimension !== undefined;
  return (
    columns.every((_column, at) => at < cells.length || !isMeasured(at)) &&
    cells.every(
      (cell, at) => at === 0 || cell === '-' || isMeasured(at) === /^\W{0,3}(?:\p{L}{2,4}\.?\s)?\d/u.test(cell),
    )
  );
}

function fits(mention: NumberMention, { dimension, units }: Column, row: 'whole' | 'cells missing'): boolean {
  const isWhole = row === 'whole';
  if (isBare(mention) && isWhole && units.length > 0) return true;
  if (mention.units.length === 0) return isWhole && (dimension === 'ph' || dimension === 'a0');
  return mention.quantities.some((quantity) => quantity.dimension === dimension);
}

/** `min. 5` may be minutes or a minimum where nothing else says what is measured. */
function isBare({ units, minToken }: NumberMention): boolean {
  return units.length === 0 || minToken === 'ambiguous';
}

export function withColumns(reading: QuoteReading, of: ReadonlyMap<NumberMention, Column>): QuoteReading {
  if (of.size === 0) return reading;
  const numbers = reading.numbers.map((mention) => {
    const owner = mention.pair === undefined ? mention : (reading.numbers[mention.pair] ?? mention);
    const column = of.get(mention) ?? of.get(owner);
    return column === undefined ? mention : under(mention, column);
  });
  const { quote, language, stages, negations, joins, flags } = reading;
  return { quote, language, numbers, stages, negations, joins, flags };
}

function under(mention: NumberMention, { bound, isBoundOrUnit, units }: Column): NumberMention {
  const bare = isBare(mention);
  const measured = bare && units.length > 0 ? measuredIn(mention, units) : mention;
  const isBound = bound !== undefined && mention.bound === 'none' && !(isBoundOrUnit && bare);
  return isBound ? { ...measured, bound } : measured;
}

/** With the unit of the head, and a `min.` beside the number is then a minimum. */
function measuredIn(mention: NumberMention, units: Column['units']): NumberMention {
  const [printed] = mention.readings;
  if (printed === undefined) return mention;
  const measured = { ...mention, units, quantities: units.map((unit) => asValue(printed, unit)) };
  return mention.minToken === 'ambiguous' ? { ...measured, minToken: 'minimum', bound: 'at_least' } : measured;
}
