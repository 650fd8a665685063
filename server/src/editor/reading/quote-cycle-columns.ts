import { type Column, titleAt } from '../../quantity/prose/column-titles.ts';
import type { NumberMention, QuoteReading } from '../../quantity/prose/prose.ts';
import { readQuote } from '../../quantity/prose/read-quote.ts';
import type { MapTree, Tree } from '../../syntax/tree.ts';
import { valueUnder } from '../../syntax/value-under.ts';
import { asValue } from '../writing/bare.ts';
import type { NewField } from '../writing/insert-fields.ts';
import { sentencesOf } from './open-sentences.ts';
import { homesOf } from './quote-homes.ts';
import { isOwnValue, partnerOf } from './quote-own-values.ts';
import { cycleNamed, idsIn, methodStages, requirement } from './quote-values.ts';

/**
 * Tables whose columns are cycles: `Parameter | Pre-vacuum | Gravity` above `Temperature | 132 °C | 121 °C`. The first row makes a cycle of each
 * column, each later row gives them one more value. A row must have a value, or a word for none, for every column.
 */
export function cyclesInColumns(reading: QuoteReading, tree: MapTree, statement: string): readonly NewField[] {
  const title = titleAt(reading.quote.toLowerCase());
  const field = title === undefined ? undefined : fieldsOfRow[title.column.title];
  const head = field === undefined ? undefined : headAbove(tree, statement, reading);
  if (title === undefined || field === undefined || head === undefined) return [];
  const cells = cellsOf(reading, title.column, title.length);
  if (cells.length !== head.methods.length || reading.negations.some(({ kind }) => kind === 'exception')) return [];
  const values = cells.map((cell) => (cell === 'none' ? undefined : valueIn(cell, field, title.column, reading)));
  const known = cyclesCiting(tree, head.id);
  const src = asValue(statement);
  if (known.length === head.methods.length)
    return values.flatMap((value, at) =>
      value === undefined
        ? []
        : [{ path: `sterilization.any_of.${known[at]}.${field}`, value: `${value}, src: ${src}}` }],
    );
  return known.length === 0 && values.every((one) => one !== undefined)
    ? newCycles(
        head,
        values.map((value) => `${field}: ${value}}`),
        { tree, src, cells: field === 'temp' ? cells : [] },
      )
    : [];
}

const fieldsOfRow: Readonly<Partial<Record<Column['title'], string>>> = {
  exposure: 'exposure',
  time: 'exposure',
  temp: 'temp',
  dry: 'dry',
  pulses: 'pulses',
};

interface Head {
  readonly id: string;
  readonly methods: readonly string[];
}

/** The nearest line above, under the same heading, that names one method after the other and no number. */
function headAbove(tree: MapTree, statement: string, { language }: QuoteReading): Head | undefined {
  const all = sentencesOf(tree);
  const at = all.findIndex(({ id }) => id === statement);
  const above = all.slice(Math.max(0, at - farthest), at).filter(({ section }) => section === all[at]?.section);
  for (const { id, quote } of above.toReversed()) {
    const { stages, numbers, negations } = readQuote(quote, language);
    const methods = stages.map(({ stage }) => stage).filter((stage) => methodStages.has(stage));
    if (/[.!?;:]\s*$/.test(quote) || negations.length > 0) return undefined;
    if (methods.length > 1 && numbers.length === 0) return quote.length > longestHead ? undefined : { id, methods };
  }
  return undefined;
}

const farthest = 10;
const longestHead = 120;

/** What stands in the cells, in their order: a number, or a word for none. */
function cellsOf(reading: QuoteReading, { dimension }: Column, from: number): readonly (NumberMention | 'none')[] {
  const own = reading.numbers.filter((one, at) => isOwnValue(one, at, reading) && one.span.start >= from);
  const isOf = ({ quantities }: NumberMention): boolean =>
    dimension === 'count'
      ? quantities.every((one) => one.dimension === 'count')
      : quantities.some((one) => one.dimension === dimension);
  if (!own.every(isOf)) return [];
  const none = [...reading.quote.slice(from).matchAll(noValue)].map(({ index }) => [from + index, 'none'] as const);
  const shared = boundOfAll(own, reading.quote);
  const bounded = own.map((one) => (one.bound === 'none' && shared !== undefined ? { ...one, bound: shared } : one));
  const cells = [...bounded.map((one) => [one.span.start, one] as const), ...none];
  return cells.sort(([a], [b]) => a - b).map(([, cell]) => cell);
}

/** `30 minutes min. 45 minutes min.`: read on, a word stands before the next number; it is that of each. */
function boundOfAll(own: readonly NumberMention[], quote: string): 'at_least' | 'at_most' | undefined {
  const bounds = [...new Set(own.map(({ bound }) => bound).filter((bound) => bound !== 'none'))];
  const [bound] = bounds;
  if (bounds.length !== 1 || (bound !== 'at_least' && bound !== 'at_most')) return undefined;
  const words = quote.match(/(?<!\p{L})(?:min|max)(?:imum)?(?:\.|(?!\p{L}))/giu) ?? [];
  return words.length === own.length ? bound : undefined;
}

const noValue = /(?<=\s)(?:none|n\/a|not applicable|keine?|entfällt|aucune?|[–—-](?=\s*(?:$|\|)))(?!\p{L})/giu;

/** `{at_least: 30 min`, to be closed with what else stands in it. */
function valueIn(cell: NumberMention, field: string, { bound }: Column, reading: QuoteReading): string | undefined {
  const group = homesOf.device?.find(({ path }) => path === 'sterilization.any_of[]');
  const home = group?.fields.find((one) => one.field === field);
  if (group === undefined || home === undefined) return undefined;
  const mention = bound === undefined || cell.bound !== 'none' ? cell : { ...cell, bound };
  const counted = field === 'pulses' ? { ...home, counted: 'pulses' } : home;
  const made = requirement({ group, home: counted, mentions: [mention, ...partnerOf(cell, reading)] }, reading, '');
  return made.slice(0, -1);
}

interface Making {
  readonly tree: MapTree;
  readonly src: string;
  /** Where the row is one of temperatures: they are part of the names of the cycles. */
  readonly cells: readonly (NumberMention | 'none')[];
}

function newCycles(head: Head, values: readonly string[], { tree, src, cells }: Making): readonly NewField[] {
  const ids = new Set(idsIn(tree));
  return head.methods.map((method, at) => {
    const cell = cells[at];
    const { id, head: begin } = cycleNamed(
      method,
      cell === undefined || cell === 'none' ? undefined : cell.amount,
      ids,
    );
    ids.add(id);
    const value = `{${begin}, ${values[at] ?? ''}, src: [${asValue(head.id)}, ${src}]}`;
    return { path: 'sterilization.any_of[]', value, head: begin };
  });
}

/** The cycles that were made of the columns under a head, by their number in the list. */
function cyclesCiting(tree: MapTree, head: string): readonly number[] {
  const sterilization = valueUnder(tree, 'sterilization');
  const cycles = sterilization?.node === 'map' ? valueUnder(sterilization, 'any_of') : undefined;
  if (cycles?.node !== 'list') return [];
  return cycles.items.flatMap((item, index) => (cites(item, head) ? [index] : []));
}

function cites(cycle: Tree, head: string): boolean {
  const src = cycle.node === 'map' ? valueUnder(cycle, 'src') : undefined;
  return src?.node === 'list' && src.items.some((one) => one.node === 'scalar' && one.text === head);
}
