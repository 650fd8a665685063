import { wordsFor } from '../quantity/prose/named/named.ts';
import { regions } from '../quantity/prose/named/regions.ts';
import type { QuoteReading } from '../quantity/prose/prose.ts';
import { readQuote } from '../quantity/prose/read-quote.ts';
import { cellUnder } from '../quantity/prose/table-rows.ts';
import { asValue } from './bare.ts';
import type { NewField } from './insert-fields.ts';
import type { TableAbove } from './quote-tables.ts';
import { requirement } from './quote-values.ts';

/**
 * What a row of cycles takes from around it: the line right above its head, `Pre-vacuum, minimum 3 pulses`, says the method and the pulses of
 * every row; a row for one region holds for the markets there.
 */

interface Caption {
  readonly id: string;
  readonly reading: QuoteReading;
}

/** The line above the head, where it says of cycles what no cell does. */
function captionOf({ caption }: TableAbove, { language, quote }: QuoteReading): Caption | undefined {
  if (caption === undefined) return undefined;
  const reading = readQuote(caption.quote, language);
  const isOfCycles = reading.stages.some(({ stage }) => methods.has(stage)) && !caption.quote.includes(quote);
  const isWhole = reading.numbers.every((one) => one.isReference || isPulses(one, reading));
  return isOfCycles && isWhole && reading.negations.length === 0 ? { id: caption.id, reading } : undefined;
}

const methods: ReadonlySet<string> = new Set(['prevac', 'gravity', 'steam', 'vh2o2', 'eo', 'formaldehyde', 'dry-heat']);

function isPulses({ numberSpan }: QuoteReading['numbers'][number], { quote }: QuoteReading): boolean {
  return /^[\s-]?(?:puls|impuls)/i.test(quote.slice(numberSpan.end));
}

/** The row with the method of its caption, where it names none. */
export function underMethod(reading: QuoteReading, table: TableAbove): QuoteReading {
  const above = captionOf(table, reading);
  if (above === undefined || reading.stages.some(({ stage }) => methods.has(stage))) return reading;
  const { quote, language, numbers, negations, joins, flags } = reading;
  const own = above.reading.stages.filter(({ stage }) => methods.has(stage));
  const stages = [...own.map(({ stage }) => ({ stage, span: { start: 0, end: 0 } })), ...reading.stages];
  return { quote, language, numbers, stages, negations, joins, flags };
}

/** The cycles of a row with pulses and region, and both sentences cited. */
export function withCaption(
  fields: readonly NewField[],
  reading: QuoteReading,
  table: TableAbove,
): readonly NewField[] {
  const above = captionOf(table, reading);
  const region = cellUnder(reading.quote, table.columns, 'region');
  return fields.map((field) => {
    if (field.path !== 'sterilization.any_of[]') return field;
    const pulses = field.value.includes('pulses: ') ? undefined : pulsesIn(above?.reading);
    const [, own = '', src = ''] = /^(.*), src: ([^,{}[\]]+)\}$/.exec(field.value) ?? [];
    if (src === '') return field;
    const further = [
      ...(pulses === undefined ? [] : [`pulses: ${pulses}`]),
      ...forRegion(region),
      above === undefined ? `src: ${src}` : `src: [${asValue(above.id)}, ${src}]`,
    ];
    return { ...field, value: `${own}, ${further.join(', ')}}` };
  });
}

/** Markets that the files have a word for; of any other region the words stand as a note, which is not judged. */
function forRegion(region: string | undefined): readonly string[] {
  if (region === undefined) return [];
  const markets = wordsFor(regions, region.toLowerCase());
  return [markets.length === 0 ? `note: ${asValue(region)}` : `market: [${markets.join(', ')}]`];
}

function pulsesIn(reading: QuoteReading | undefined): string | undefined {
  if (reading === undefined) return undefined;
  const [first, ...more] = reading.numbers.filter((one) => isPulses(one, reading));
  if (first === undefined || more.length > 0) return undefined;
  const home = { field: 'pulses', dimension: 'count', near: [], counted: 'pulses' } as const;
  const group = { path: 'sterilization.any_of[]', stages: [], words: [], fields: [home] } as const;
  return requirement({ group, home, mentions: [first] }, reading, '');
}
