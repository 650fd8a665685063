import type { QuantityValue } from '../quantity.ts';
import { withinRounding } from '../rounding.ts';
import type { Unit } from '../unit-list.ts';
import { fromBase, toBase } from '../units.ts';

/** True when one unit is a whole number of the other (min and s, mL and L): a conversion between them leaves nothing to round. */
export function isExactRatio(a: Unit, b: Unit): boolean {
  if (a.zero !== b.zero) return a.times === b.times && a.per === b.per;
  const ratio = toBase(1, { ...a, zero: 0 }) / toBase(1, { ...b, zero: 0 });
  const whole = ratio >= 1 ? ratio : 1 / ratio;
  return Math.abs(whole - Math.round(whole)) < 1e-9 * whole;
}

/** Equal, up to the noise of floating point. */
export function isEqualAmount(a: number, b: number): boolean {
  return a === b || Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));
}

/** How a printed number in `unit` agrees with a claimed one: to the digit, within the rounding of a conversion, or not at all. */
export function compareAmount(
  printed: { readonly amount: number; readonly decimals: number },
  unit: Unit,
  claimed: QuantityValue,
  claimedUnit: Unit | undefined,
): 'equal' | 'rounded' | 'apart' {
  const value = toBase(printed.amount, unit);
  if (isEqualAmount(value, claimed.value)) return 'equal';
  if (claimedUnit === undefined || unit.name === claimedUnit.name || !withinRounding(asValue(printed, unit), claimed))
    return 'apart';
  if (!isExactRatio(unit, claimedUnit)) return 'rounded';
  return isRoundedToClaim(value, claimed, claimedUnit) ? 'rounded' : 'apart';
}

/** Even units that divide evenly may leave a fraction: 5 Fr is 1.67 mm. A whole number is never taken for a rounded one. */
function isRoundedToClaim(value: number, claimed: QuantityValue, claimedUnit: Unit): boolean {
  return (
    claimed.decimals > 0 &&
    fromBase(value, claimedUnit).toFixed(claimed.decimals) === claimed.amount.toFixed(claimed.decimals)
  );
}

export function asValue(printed: { readonly amount: number; readonly decimals: number }, unit: Unit): QuantityValue {
  const value = {
    dimension: unit.dimension,
    value: toBase(printed.amount, unit),
    amount: printed.amount,
    unit: unit.name,
    decimals: printed.decimals,
  };
  return unit.reference === undefined ? value : { ...value, reference: unit.reference };
}
