import type { Column } from '../../quantity/prose/column-titles.ts';
import { wordsFor } from '../../quantity/prose/named/named.ts';
import { regions } from '../../quantity/prose/named/regions.ts';
import type { QuoteReading } from '../../quantity/prose/prose.ts';
import { cellUnder } from '../../quantity/prose/table-rows.ts';
import type { MapTree } from '../../syntax/tree.ts';
import { asValue } from '../writing/bare.ts';
import type { NewField } from '../writing/insert-fields.ts';
import { type Sentence, sentencesOf } from './open-sentences.ts';
import { partNouns } from './quote-device.ts';
import { isPulses } from './quote-pulses.ts';
import { readStep } from './quote-things.ts';
import { requirement } from './quote-values.ts';

/**
 * What a cycle takes from around it: the line above it, or above the head of its table, `Pre-vacuum, minimum 3 pulses`, says the method and the
 * pulses of every cycle below; a row for one region holds for the markets there.
 */

export interface AroundCycle {
  /** The line that may say the method. */
  readonly caption: Sentence | undefined;
  readonly columns: readonly Column[];
}

interface Caption {
  readonly id: string;
  readonly reading: QuoteReading;
}

/** The line, where it says of cycles what these do not say themselves. */
function captionOf(caption: Sentence | undefined, { language, quote }: QuoteReading): Caption | undefined {
  if (caption === undefined) return undefined;
  const reading = readStep(caption.quote, language);
  const isOfCycles = methodsIn(reading).length > 0 && !caption.quote.includes(quote);
  const isWhole = reading.numbers.every((one) => one.isReference || isPulses(one, reading));
  return isOfCycles && isWhole && reading.negations.length === 0 ? { id: caption.id, reading } : undefined;
}

const methods: ReadonlySet<string> = new Set(['prevac', 'gravity', 'steam', 'vh2o2', 'eo', 'formaldehyde', 'dry-heat']);

function methodsIn({ stages }: QuoteReading): QuoteReading['stages'] {
  return stages.filter(({ stage }) => methods.has(stage));
}

/** Nearest above a cycle that names no method, under the same heading: the line that names one and gives no cycle itself. */
export function methodAbove(tree: MapTree, statement: string, reading: QuoteReading): Sentence | undefined {
  const all = sentencesOf(tree);
  const at = all.findIndex(({ id }) => id === statement);
  const section = all[at]?.section;
  if (section === undefined || methodsIn(reading).length > 0) return undefined;
  const above = all
    .slice(0, at)
    .filter((one) => one.section === section)
    .map((one) => ({ one, read: readStep(one.quote, reading.language) }));
  const nearest = above.findLast(({ read }) => methodsIn(read).length > 0 && read.negations.length === 0);
  return nearest === undefined || captionOf(nearest.one, reading) === undefined ? undefined : nearest.one;
}

/** The row with the method of its caption, where it names none. */
export function underMethod(reading: QuoteReading, caption: Sentence | undefined): QuoteReading {
  const above = captionOf(caption, reading);
  if (above === undefined || methodsIn(reading).length > 0) return reading;
  const { quote, language, numbers, negations, joins, flags } = reading;
  const own = methodsIn(above.reading);
  const stages = [...own.map(({ stage }) => ({ stage, span: { start: 0, end: 0 } })), ...reading.stages];
  return { quote, language, numbers, stages, negations, joins, flags };
}

/** Cycles with their pulses and region, and both sentences cited. */
export function withCaption(
  fields: readonly NewField[],
  reading: QuoteReading,
  { caption, columns }: AroundCycle,
): readonly NewField[] {
  const above = captionOf(caption, reading);
  const region = columns.length === 0 ? regionBefore(reading.quote) : cellUnder(reading.quote, columns, 'region');
  return fields.map((field) => {
    if (field.path !== 'sterilization.any_of[]') return field;
    const pulses = field.value.includes('pulses: ') ? undefined : (pulsesIn(reading) ?? pulsesIn(above?.reading));
    const [, own = '', src = ''] = /^(.*), src: ([^,{}[\]]+)\}$/.exec(field.value) ?? [];
    if (src === '') return field;
    const further = [
      ...(pulses === undefined ? [] : [`pulses: ${pulses}`]),
      ...forRegion(region),
      ...forPart(reading.quote),
      above === undefined ? `src: ${src}` : `src: [${asValue(above.id)}, ${src}]`,
    ];
    return { ...field, value: `${own}, ${further.join(', ')}}` };
  });
}

/** `121 °C, 20 min for seal caps`: no cycle for the whole device. */
function forPart(quote: string): readonly string[] {
  const [, part] = cycleOfPart.exec(quote) ?? [];
  return part === undefined ? [] : [`when: ${asValue(`for ${part}`)}`];
}

const cycleOfPart = new RegExp(
  String.raw`\d[^.;]{0,40}\s(?:for|für|pour)\s(?:the\s|all\s|die\s|les\s)?((?:[\p{L}-]+\s)?(?!tray|case|box|basket|tip)${partNouns})\.?$`,
  'iu',
);

/** `UK: 134 °C, 3 min`. */
function regionBefore(quote: string): string | undefined {
  const [, before = ''] = /^(?:(?:for|in) (?:the )?)?([^:.;\d]{2,40}):\s/i.exec(quote) ?? [];
  return wordsFor(regions, before.toLowerCase()).length === 0 ? undefined : before;
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
  // Whatever the page calls them: `three times fractionated`.
  return requirement({ group, home, mentions: [{ ...first, quantities: [] }] }, reading, '');
}
