import type { Quantity, Requirement } from '../model/node.ts';
import { fromBase } from '../quantity/units.ts';
import { amountsOf } from './bounds.ts';
import { unitNamed } from './unit-named.ts';

/**
 * Is our temperature the one on the page, printed in the other scale? "270 °F" and "132 °C" are one cycle: each is the other, rounded to
 * its written digits. Both roundings must agree, so that 131.5 °C never passes for 270 °F. For °C against °F only: every other pair of
 * units converts without rounding. `a` and `b` are the two values compared, in °C.
 */
export function sameAsWritten(requirement: Requirement, ours: Quantity, a: number, b: number): boolean {
  if (requirement.dimension !== 'temperature' || (ours.value !== a && ours.value !== b)) return false;
  const theirs = amountsOf(requirement).find((amount) => amount.value === a || amount.value === b);
  if (theirs === undefined || isFahrenheit(theirs) === isFahrenheit(ours)) return false;
  return roundsTo(theirs, ours) && roundsTo(ours, theirs);
}

function isFahrenheit(quantity: Quantity): boolean {
  return quantity.unit === '°F';
}

function roundsTo(value: Quantity, printed: Quantity): boolean {
  const converted = fromBase(value.value, unitNamed('temperature', printed.unit));
  return Math.abs(converted - printed.amount) <= 0.5 * 10 ** -printed.decimals + 1e-9;
}
