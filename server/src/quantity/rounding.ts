import type { Dimension, QuantityValue } from './quantity.ts';
import { toBase, unitsOf } from './units.ts';

/** How far two written values of one quantity ("270 °F (132 °C)") may lie apart before they are two quantities. */
export interface PairTolerance {
  /** In the dimension's base unit. */
  readonly absolute?: number;
  /** Of the larger value. */
  readonly relative?: number;
  /** Where units convert to odd numbers: also agree when one is the other rounded to its written digits, up to this share. */
  readonly writtenRounding?: number;
  readonly source: string;
}

const threePercent = { relative: 0.03, source: 'practice: others 3 %' } as const;
const customary = {
  relative: 0.03,
  writtenRounding: 0.1,
  source: 'practice: others 3 %; a tenth for a pair that is rounded as written (3 °C, 5 °F; 11 kg, 25 lb)',
} as const;
const exactly = { relative: 1e-9, source: 'units convert without rounding' } as const;

const tolerances: ReadonlyMap<Dimension, PairTolerance> = new Map<Dimension, PairTolerance>([
  ['temperature', { absolute: 0.6, source: 'practice: a pair of temperatures within 0.6 K is one temperature' }],
  ['temperature-difference', customary],
  ['temperature-rate', customary],
  ['pressure', customary],
  ['length', customary],
  ['mass', customary],
  ['count', exactly],
]);

/** The one table of pair tolerances. */
export function pairToleranceOf(dimension: Dimension): PairTolerance {
  return tolerances.get(dimension) ?? threePercent;
}

/**
 * Do two written values agree, but for the rounding of a conversion? False for different dimensions. Pressures against different
 * references cannot be compared without the room's pressure: true, since nothing shows that they differ.
 */
export function withinRounding(a: QuantityValue, b: QuantityValue): boolean {
  if (a.dimension !== b.dimension) return false;
  if (a.dimension === 'pressure' && a.reference !== b.reference) return true;
  const apart = Math.abs(a.value - b.value);
  const tolerance = pairToleranceOf(a.dimension);
  const larger = Math.max(Math.abs(a.value), Math.abs(b.value));
  const allowed = Math.max(tolerance.absolute ?? 0, (tolerance.relative ?? 0) * larger);
  if (apart <= allowed + noise) return true;
  const rounded = Math.max(halfLastDigit(a), halfLastDigit(b)) + noise;
  return tolerance.writtenRounding !== undefined && apart <= rounded && apart <= tolerance.writtenRounding * larger;
}

/** Far below any written digit: keeps 0.6 K from failing at 0.6000000001. */
const noise = 1e-9;

/** Half a step of the last written digit, in the base unit. */
export function halfLastDigit(quantity: QuantityValue): number {
  const unit = unitsOf(quantity.dimension).find((one) => one.name === quantity.unit);
  if (unit === undefined) return 0;
  return Math.abs(toBase(10 ** -quantity.decimals, unit) - toBase(0, unit)) / 2;
}
