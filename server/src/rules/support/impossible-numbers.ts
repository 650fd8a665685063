import type { QuantityValue } from '../../quantity/quantity.ts';
import type { Kind } from '../../schema/kinds.ts';

const absoluteZero = -273.15;
/** Kinds in which a percentage is a share of something. A site may compare: "at most 130 % of the usual". */
const shareKinds: ReadonlySet<Kind> = new Set<Kind>([
  'device',
  'packaging',
  'chemistry',
  'water',
  'sterilizer',
  'washer',
]);
const mayBeNegative: ReadonlySet<QuantityValue['dimension']> = new Set([
  'temperature',
  'temperature-difference',
  'temperature-rate',
  'pressure',
  'number',
  'ph',
]);

/** Why a number can't be, whoever wrote it; undefined when it can. Knows no limits of the trade: those are the site's. */
export function impossibleIn({ dimension, value }: QuantityValue, kind: Kind): string | undefined {
  if (dimension === 'temperature') return value < absoluteZero ? 'it lies below absolute zero' : undefined;
  if (dimension === 'ph') return value < 0 || value > 14 ? 'a pH lies between 0 and 14' : undefined;
  if (dimension === 'magnification' && value <= 1) return 'nothing looks larger under it than to the eye alone';
  if (dimension === 'percentage' && value > 100 && shareKinds.has(kind)) return 'a share is 100 % at most';
  if (value >= 0 || mayBeNegative.has(dimension)) return undefined;
  return dimension === 'length' && kind === 'site' ? undefined : 'it can’t be less than nothing';
}
