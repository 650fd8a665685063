import type { AddedItem } from '../../panel/sentences.ts';
import { isFault, parseQuantity } from '../../quantity/parse.ts';
import type { NumberMention, QuoteReading } from '../../quantity/prose/prose.ts';
import type { Shape } from '../../schema/shape.ts';
import { type FieldPlace, headOf } from '../reading/field-places.ts';
import type { Home } from '../reading/home.ts';
import { partNamed } from '../reading/quote-device.ts';
import { amountOf, isOwnValue } from '../reading/quote-own-values.ts';

/** Lists of the device whose items are asked for part by part, such as its lumens, with what a sentence says of them. */

/** Undefined where an item of the field begins with what it is, so that it can be chosen at once. */
export function itemSaid({ path, shape }: FieldPlace, reading: QuoteReading, src: string): AddedItem | undefined {
  if (shape.form !== 'list' || shape.item.form !== 'record' || headOf(shape.item) !== undefined) return undefined;
  const list = path.replace('[]', '');
  const said = list === 'lumens' ? lumenSaid(reading) : list === 'parts' ? partSaid(reading) : {};
  const known = Object.entries({ ...said, src }).filter(([key]) => shapeHas(shape.item, key));
  return { list, known: Object.fromEntries(known) };
}

function shapeHas(item: Shape, key: string): boolean {
  return item.form === 'record' && item.fields.has(key);
}

const length: Home = { field: 'length', dimension: 'length', near: [] };
const isWide = /\b(?:diameter|bore|wide|width|inner|inside|ID|French|Fr|gauge)\b|Ø/i;

/** Of two lengths the smaller one is the bore; of one its own words say which it is. */
function lumenSaid(reading: QuoteReading): Readonly<Record<string, string>> {
  const lengths = reading.numbers.filter(
    (one, at) => isOwnValue(one, at, reading) && one.quantities.some(({ dimension }) => dimension === 'length'),
  );
  const [first, second, third] = lengths.map((mention) => amountOf(mention, length));
  const [only] = lengths;
  const [, name] = /((?:\p{L}+\s)?(?:lumen|channel|cannulation))\b/iu.exec(reading.quote) ?? [];
  const named = name === undefined ? {} : { name: name.replace(/^(?:the|one|each|a)\s/i, '') };
  if (first === undefined || only === undefined || third !== undefined) return named;
  if (second === undefined) return { ...named, [wordsAround(reading.quote, only) ? 'bore' : 'length']: first };
  const isFirstBore = sizeOf(first) < sizeOf(second);
  return { ...named, bore: isFirstBore ? first : second, length: isFirstBore ? second : first };
}

function wordsAround(quote: string, { span }: NumberMention): boolean {
  return isWide.test(quote.slice(Math.max(0, span.start - 24), span.end + 24));
}

function sizeOf(amount: string): number {
  const read = parseQuantity(amount, 'length');
  return isFault(read) ? 0 : Number(read.value);
}

function partSaid({ quote }: QuoteReading): Readonly<Record<string, string>> {
  const name = partNamed(quote);
  return name === undefined ? {} : { name };
}
