import type { Citation, Quantity, Requirement, Text } from '../model/node.ts';
import { isFault, parseQuantity } from '../quantity/parse.ts';
import type { Dimension } from '../quantity/quantity.ts';

/*
 * Limits that rule files write as a plain amount (`mass_max: 5 kg`, `{what: temp-above, value: 140 C}`), in the form of a requirement,
 * so that one table judges them all.
 */

const atMosts = new WeakMap<Quantity, Requirement>();

export function atMost(quantity: Quantity, src?: Citation): Requirement {
  const known = atMosts.get(quantity);
  if (known !== undefined) return known;
  const requirement: Requirement = {
    node: 'record',
    at: quantity.at,
    dimension: quantity.dimension,
    at_most: quantity,
    ...(src && { src }),
  };
  atMosts.set(quantity, requirement);
  return requirement;
}

const limits = new WeakMap<Text, Requirement>();

/** The limit that a prohibition's value sets. Its `at_most` or `at_least` carries the problem when the text is not an amount. */
export function limitFrom(
  value: Text,
  dimension: Dimension,
  side: 'at_most' | 'at_least',
  src: Citation | undefined,
): Requirement {
  const known = limits.get(value);
  if (known !== undefined) return known;
  const parsed = parseQuantity(value.text, dimension);
  const base = { node: 'quantity', at: value.at, text: value.text } as const;
  const quantity: Quantity = isFault(parsed)
    ? { ...base, dimension, value: Number.NaN, amount: Number.NaN, unit: '', decimals: 0, problem: parsed }
    : { ...base, ...parsed };
  const requirement: Requirement = { node: 'record', at: value.at, dimension, [side]: quantity, ...(src && { src }) };
  limits.set(value, requirement);
  return requirement;
}
