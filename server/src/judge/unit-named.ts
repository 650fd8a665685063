import { invariant } from '../base/assert.ts';
import type { Dimension } from '../quantity/quantity.ts';
import type { Unit } from '../quantity/unit-list.ts';
import { unitsOf } from '../quantity/units.ts';

/** The unit of this name, or the usual one of the dimension. */
export function unitNamed(dimension: Dimension, name?: string): Unit {
  const units = unitsOf(dimension);
  const unit = units.find((one) => one.name === name) ?? units[0];
  invariant(unit !== undefined, 'every dimension has a unit');
  return unit;
}
