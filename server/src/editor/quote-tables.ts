import { type Column, captionBound, columnsIn } from '../quantity/prose/column-titles.ts';
import type { NumberMention, QuoteReading } from '../quantity/prose/prose.ts';
import { asValue } from '../quantity/prose/ratio.ts';
import type { Kind } from '../schema/kinds.ts';
import type { MapTree } from '../syntax/tree.ts';
import { valueUnder } from '../syntax/value-under.ts';
import { type Sentence, sentencesOf } from './open-sentences.ts';
import { isAside } from './quote-clauses.ts';
import { homesOf } from './quote-homes.ts';
import type { Matched } from './quote-match.ts';
import { isOwnValue, partnerOf } from './quote-own-values.ts';
import type { Section } from './quote-section.ts';

/** Rows of a table that was pasted as lines: the heading above says what each number is, and which bound it has. */

const farthestHead = 12;

/** The columns of the heading above a statement, over rows of the same table. */
export function columnsAbove(tree: MapTree, statement: string): readonly Column[] | undefined {
  const all = sentencesOf(tree);
  const own = all.findIndex(({ id }) => id === statement);
  for (let at = own - 1; at >= 0 && at >= own - farthestHead; at--) {
    const one = all[at];
    if (one === undefined || one.section !== all[own]?.section) return undefined;
    const columns = columnsIn(one.quote, isNotedHead(one) ? 'known as a head' : 'unknown');
    if (columns !== undefined) return underCaption(columns, all[at - 1]?.quote ?? '');
    if (/[.!?:]\s*$/.test(one.quote) && !one.quote.includes('|')) return undefined;
  }
  return undefined;
}

/** A head whose gaps were lost when it was put into the file still says there what it is. */
function isNotedHead({ node }: Sentence): boolean {
  const noted = valueUnder(node, 'not_needed');
  const [first] = noted?.node === 'list' ? noted.items : [];
  const reason = first?.node === 'map' ? valueUnder(first, 'reason') : undefined;
  return reason?.node === 'scalar' && reason.text === 'heading of a table';
}

/** `Cycle parameters (minimum):` above the heading holds for every column that has no bound of its own. */
function underCaption(columns: readonly Column[], caption: string): readonly Column[] {
  const bound = /\d/.test(caption) ? undefined : captionBound(caption.toLowerCase().replace(/\s*:\s*$/, ''));
  return bound === undefined ? columns : columns.map((column) => ({ ...column, bound: column.bound ?? bound }));
}

/** The row with what its heading says of each number: the bound, and the unit where the cells print none. */
export function underColumns(reading: QuoteReading, columns: readonly Column[]): QuoteReading {
  const of = columnsOf(reading, columns);
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
  const [printed] = mention.readings;
  const isBare = mention.units.length === 0;
  const measured =
    isBare && units.length > 0 && printed !== undefined
      ? { ...mention, units, quantities: units.map((unit) => asValue(printed, unit)) }
      : mention;
  const isBound = bound !== undefined && mention.bound === 'none' && !(isBoundOrUnit && isBare);
  return isBound ? { ...measured, bound } : measured;
}

/** Which column each number stands in: by its cell, else by the order of what measures the same. */
function columnsOf(reading: QuoteReading, columns: readonly Column[]): ReadonlyMap<NumberMention, Column> {
  const all = reading.numbers.filter((one, at) => isOwnValue(one, at, reading));
  const own = all.filter((one) => !isAside(one, all, reading));
  const found = new Map<NumberMention, Column>();
  if (reading.quote.includes('|')) {
    for (const mention of own) {
      const column = columns[reading.quote.slice(0, mention.span.start).split('|').length - 1];
      if (column?.dimension !== undefined && fits(mention, column)) found.set(mention, column);
    }
    return found;
  }
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

function fits({ units, quantities }: NumberMention, { dimension, units: own }: Column): boolean {
  if (units.length === 0) return own.length > 0 || dimension === 'ph' || dimension === 'a0';
  return quantities.some((quantity) => quantity.dimension === dimension);
}

const fieldsOfCycle: Readonly<Partial<Record<Column['title'], string>>> = {
  exposure: 'exposure',
  time: 'exposure',
  temp: 'temp',
  dry: 'dry',
  pulses: 'pulses',
};

/** The table is one of cycles: it has a column of exposure, or stands under a heading of sterilizing. */
function isOfCycles(columns: readonly Column[], { text, stages }: Section): boolean {
  if (stages.includes('mechanical') || stages.includes('manual')) return false;
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
  const placed = [...new Set(of.values())].flatMap((column) => {
    const home = group.fields.find(({ field }) => field === fieldsOfCycle[column.title]);
    const [first, second, more] = own.filter((one) => of.get(one) === column);
    if (home === undefined || first === undefined || more !== undefined) return [];
    return [{ group, home, mentions: [first, ...(second === undefined ? partnerOf(first, reading) : [second])] }];
  });
  const pulses = own.filter(
    (one) => !of.has(one) && /^[\s-]?(?:puls|impuls)/i.test(reading.quote.slice(one.numberSpan.end)),
  );
  const home = group.fields.find(({ field }) => field === 'pulses');
  if (home !== undefined && pulses.length === 1) placed.push({ group, home, mentions: pulses });
  const taken = new Set(placed.flatMap(({ mentions }) => mentions));
  const wanted = columns.filter(({ title, dimension }) => dimension !== undefined && title in fieldsOfCycle);
  const isWhole = wanted.every((column) => placed.some(({ home }) => home.field === fieldsOfCycle[column.title]));
  // A cell may say that the column does not apply: then every number of the row must have its place.
  if (placed.length < 2 || (!isWhole && own.some((one) => !taken.has(one)))) return undefined;
  const left = all.filter((one) => !taken.has(one)).map(({ span }) => reading.quote.slice(span.start, span.end));
  return { placed, left };
}
