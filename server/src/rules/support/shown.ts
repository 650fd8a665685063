import type { Quantity } from '../../model/node.ts';
import { formatQuantity } from '../../quantity/format.ts';

/** A quantity with its unit in our spelling (`132 °C` for `132 C`); as written when it can't be read; empty when there is none. */
export function shown(quantity: Quantity | undefined): string {
  if (quantity === undefined) return '';
  return quantity.problem === undefined ? formatQuantity(quantity) : quantity.text;
}
