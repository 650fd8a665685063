import { assertNever } from '../../base/assert.ts';
import type { Quantity } from '../../model/node.ts';
import { dimensionName } from '../../quantity/dimension-name.ts';
import type { Dimension, QuantityFault } from '../../quantity/quantity.ts';
import { unitsOf } from '../../quantity/units.ts';
import { listed } from './lists.ts';

/** What is wrong with a number or its unit, in plain words that say what to write instead. */
export function quantityFaultInWords(
  { text, dimension }: Pick<Quantity, 'text' | 'dimension'>,
  fault: QuantityFault,
): string {
  switch (fault.fault) {
    case 'no-number':
      return `There is no number here. ${wanted(dimension)}`;
    case 'unit-missing':
      return `"${text}" has no unit. ${wanted(dimension)}`;
    case 'unit-unknown':
      return `"${fault.unit}" is no unit known here.${meant(fault.suggestion, fault.hint) ?? ` ${wanted(dimension)}`}`;
    case 'unit-of-other-kind':
      return `"${text}" is ${dimensionName(fault.dimension as Dimension)}, but ${dimensionName(dimension)} belongs here.`;
    case 'unit-ambiguous':
      return `"${fault.unit}" can mean ${listed(fault.choices)}. Write the unit so that it means one thing.`;
    case 'range-in-one-value':
      return `"${text}" is more than one number. Write a range as {between: [first, second]}.`;
    case 'digits-not-ascii':
      return `"${fault.found}" is not written in the digits 0 to 9. Type the number again.`;
    case 'number-form':
      return `"${fault.found}" can't be read as one number: ${fault.hint}.`;
    default:
      return assertNever(fault);
  }
}

function meant(suggestion: string | undefined, hint: string | undefined): string | undefined {
  if (suggestion !== undefined) return ` Did you mean "${suggestion}"?`;
  return hint === undefined ? undefined : ` ${hint.charAt(0).toUpperCase()}${hint.slice(1)}.`;
}

const mostUnitsNamed = 4;

/** `A time needs its unit, such as s, min or h.` */
function wanted(dimension: Dimension): string {
  const name = dimensionName(dimension);
  const units = unitsOf(dimension)
    .map((unit) => unit.name)
    .filter((unit) => unit !== '');
  const start = `${name.charAt(0).toUpperCase()}${name.slice(1)}`;
  return units.length === 0
    ? `${start} belongs here.`
    : `${start} needs its unit, such as ${units.slice(0, mostUnitsNamed).join(', ')}.`;
}
