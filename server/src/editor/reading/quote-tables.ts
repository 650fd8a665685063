import { type Column, columnsIn } from '../../quantity/prose/column-titles.ts';
import type { NumberMention, QuoteReading } from '../../quantity/prose/prose.ts';
import { columnsByCell, hasCells, headNote, headOver, withColumns } from '../../quantity/prose/table-rows.ts';
import type { Kind } from '../../schema/kinds.ts';
import type { MapTree } from '../../syntax/tree.ts';
import { valueUnder } from '../../syntax/value-under.ts';
import type { Group } from './home.ts';
import { type Sentence, sentencesOf } from './open-sentences.ts';
import { isAside } from './quote-clauses.ts';
import { homesOf } from './quote-homes.ts';
import type { Matched, Placed } from './quote-match.ts';
import { isOwnValue, partnerOf } from './quote-own-values.ts';
import { isPulses } from './quote-pulses.ts';
import type { Section } from './quote-section.ts';

/** Rows of a table that was pasted as lines: the heading above says what each number is, and which bound it has. */

/** The head above a statement, over rows of the same table, with the statement right above it. */
export function tableAbove(tree: MapTree, statement: string): TableAbove | undefined {
  const all = sentencesOf(tree);
  const lines = all.map((one) => ({ quote: one.quote, section: one.section, isNotedHead: isNotedHead(one) }));
  const head = headOver(
    lines,
    all.findIndex(({ id }) => id === statement),
  );
  return head === undefined ? undefined : { columns: head.columns, caption: all[head.caption] };
}

/** A table of cycles begins right below the statement: its rows take what the statement says of all of them. */
export function isAboveCycles(tree: MapTree, statement: string, section: Section): boolean {
  const all = sentencesOf(tree);
  const below = all[all.findIndex(({ id }) => id === statement) + 1];
  const columns = below === undefined || !isNotedHead(below) ? undefined : columnsIn(below.quote, 'known as a head');
  return columns !== undefined && isOfCycles(columns, section);
}

export interface TableAbove {
  readonly columns: readonly Column[];
  readonly caption: Sentence | undefined;
}

/** A head whose gaps were lost when it was put into the file still says there what it is. */
function isNotedHead({ node }: Sentence): boolean {
  const noted = valueUnder(node, 'not_needed');
  const [first] = noted?.node === 'list' ? noted.items : [];
  const reason = first?.node === 'map' ? valueUnder(first, 'reason') : undefined;
  return reason?.node === 'scalar' && reason.text === headNote;
}

/** The row with what its heading says of each number: the bound, and the unit where the cells print none. */
export function underColumns(reading: QuoteReading, columns: readonly Column[]): QuoteReading {
  return withColumns(reading, columnsOf(reading, columns));
}

/** Which column each number stands in: by its cell, else by the order of what measures the same. */
function columnsOf(reading: QuoteReading, columns: readonly Column[]): ReadonlyMap<NumberMention, Column> {
  const all = reading.numbers.filter((one, at) => isOwnValue(one, at, reading));
  const own = all.filter((one) => !isAside(one, all, reading));
  if (hasCells(reading.quote))
    return new Map([...columnsByCell(reading, columns)].filter(([mention]) => own.includes(mention)));
  const found = new Map<NumberMention, Column>();
  for (const dimension of new Set(columns.map((one) => one.dimension))) {
    const inOrder = columns.filter((one) => one.dimension === dimension);
    const measured = own.filter((one) => one.quantities.some((quantity) => quantity.dimension === dimension));
    if (dimension === undefined || measured.length !== inOrder.length) continue;
    for (const [at, mention] of measured.entries()) {
      const column = inOrder[at];
      if (column !== undefined) found.set(mention, column);
    }
  }
  return found;
}

/** `4 minutes at 132 °C` under one title: the temperature has no column of its own. */
function beside(own: readonly NumberMention[], columns: readonly Column[], group: Group): readonly Placed[] {
  const home = group.fields.find(({ field }) => field === 'temp');
  const [first, ...more] = own.filter((one) => one.quantities.some(({ dimension }) => dimension === 'temperature'));
  const isNamed = columns.some(({ title }) => title === 'temp');
  return isNamed || home === undefined || first === undefined || more.length > 0
    ? []
    : [{ group, home, mentions: [first] }];
}

const fieldsOfCycle: Readonly<Partial<Record<Column['title'], string>>> = {
  exposure: 'exposure',
  time: 'exposure',
  temp: 'temp',
  dry: 'dry',
  pulses: 'pulses',
};

/** The table is one of cycles: it has a column of exposure, or stands under a heading of sterilizing. */
export function isOfCycles(columns: readonly Column[], { text, stages }: Section): boolean {
  if (stages.includes('mechanical') || stages.includes('manual')) return false;
  if (columns.some(({ title }) => title === 'exposure') && /steril|stéril/.test(text)) return true;
  const isNamed = columns.some(({ title }) => title === 'exposure' || title === 'dry');
  return columns.some(({ title }) => title === 'temp') && (isNamed || text === '' || /steril|stéril/.test(text));
}

/**
 * A cycle from its row: a number for each column that measures something. Undefined where the row lacks one, has more than two ends of a value,
 * or where a time may be any of two columns.
 */
export function inColumns(
  reading: QuoteReading,
  kind: Kind,
  columns: readonly Column[],
  section: Section,
): Matched | undefined {
  const group = (homesOf[kind] ?? []).find(({ fields }) => fields.some(({ field }) => field === 'exposure'));
  if (group === undefined || !isOfCycles(columns, section)) return undefined;
  const of = columnsOf(reading, columns);
  const all = reading.numbers.filter((one, at) => isOwnValue(one, at, reading));
  const own = all.filter((one) => !isAside(one, all, reading));
  const placed: Placed[] = [...new Set(of.values())].flatMap((column) => {
    const home = group.fields.find(({ field }) => field === fieldsOfCycle[column.title]);
    const [first, second, more] = own.filter((one) => of.get(one) === column);
    if (home === undefined || first === undefined || more !== undefined) return [];
    // `5 min, max. 20 min` are two ends; of other two numbers none is surer.
    if (second !== undefined && (first.range !== undefined || second.bound === 'none')) return [];
    return [{ group, home, mentions: [first, ...(second === undefined ? partnerOf(first, reading) : [second])] }];
  });
  const pulses = own.filter((one) => !of.has(one) && isPulses(one, reading));
  const home = group.fields.find(({ field }) => field === 'pulses');
  if (home !== undefined && pulses.length === 1) placed.push({ group, home, mentions: pulses });
  placed.push(...beside(own, columns, group));
  const taken = new Set(placed.flatMap(({ mentions }) => mentions));
  const wanted = columns.filter(({ title, dimension }) => dimension !== undefined && title in fieldsOfCycle);
  const isWhole = wanted.every((column) => placed.some(({ home }) => home.field === fieldsOfCycle[column.title]));
  // A cell may say that the column does not apply: then every number of the row must have its place.
  if (placed.length < 2 || (!isWhole && own.some((one) => !taken.has(one)))) return undefined;
  const left = all.filter((one) => !taken.has(one)).map(({ span }) => reading.quote.slice(span.start, span.end));
  return { placed, left };
}
