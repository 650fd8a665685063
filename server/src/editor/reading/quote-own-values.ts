import { formatQuantity } from '../../quantity/format.ts';
import type { NumberMention, QuoteReading } from '../../quantity/prose/prose.ts';
import type { Home } from './home.ts';

/** Which numbers of a sentence are values of their own, and how they are written. */

/** A page number, a tolerance, the far end of a range, the same value in a second unit, a total or half cycle: not a value of its own. */
export function isOwnValue(mention: NumberMention, index: number, { numbers }: QuoteReading): boolean {
  if (mention.isReference || mention.isDifference || mention.tolerance !== undefined || mention.about !== undefined)
    return false;
  if (mention.range?.part === 'high') return false;
  if (mention.pair === undefined) return true;
  const partner = numbers[mention.pair];
  const own = isMetric(mention);
  return partner === undefined || own === isMetric(partner) ? mention.pair > index : own;
}

const metric: ReadonlySet<string> = new Set(['°C', 'K', 'kg', 'g', 'mm', 'cm', 'm', 'mL', 'L', 'kPa', 'bar', 'mbar']);

/** Of a value given twice, the metric one is encoded; the other stays in `as_written`. */
function isMetric({ quantities }: NumberMention): boolean {
  return quantities.some(({ unit }) => metric.has(unit));
}

export function partnerOf({ range }: NumberMention, { numbers }: QuoteReading): readonly NumberMention[] {
  const partner = range === undefined ? undefined : numbers[range.partner];
  return partner === undefined ? [] : [partner];
}

/** `132 °C` as our spelling has it; the digits are those of the page. */
export function amountOf(mention: NumberMention, home: Home): string {
  const quantity = mention.quantities.find(({ dimension }) => dimension === home.dimension);
  if (quantity !== undefined) return formatQuantity(quantity);
  return home.counted === undefined ? String(mention.amount) : `${mention.amount} ${home.counted}`;
}
