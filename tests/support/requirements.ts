import { entityId, fileId } from '../../server/src/base/brand.ts';
import type { BoundWord, Place, Quantity, Requirement } from '../../server/src/model/node.ts';
import { isFault, parseQuantity } from '../../server/src/quantity/parse.ts';
import type { Dimension } from '../../server/src/quantity/quantity.ts';

/** A place in no file, for values made by a test. */
export const nowhere: Place = {
  span: { start: 0, end: 0 },
  key: '',
  root: { file: fileId('test.ifu.yaml'), kind: 'device', id: entityId('test') },
};

export function quantity(text: string, dimension: Dimension): Quantity {
  const value = parseQuantity(text, dimension);
  if (isFault(value)) throw new Error(`${text}: ${value.fault}`);
  return { node: 'quantity', at: nowhere, text, ...value };
}

/** `{at_least: '4 min'}`, `{between: ['132 C', '135 C']}`, several words at once: as a requirement. */
export function requirement(
  dimension: Dimension,
  bounds: Partial<Record<Exclude<BoundWord, 'between'>, string>> & { between?: readonly [string, string] },
  rest: Partial<Requirement> = {},
): Requirement {
  const made: Record<string, unknown> = {};
  for (const [word, text] of Object.entries(bounds)) {
    if (typeof text === 'string') made[word] = quantity(text, dimension);
    else made[word] = { node: 'list', at: nowhere, items: text.map((one) => quantity(one, dimension)) };
  }
  return { node: 'record', at: nowhere, dimension, ...made, ...rest };
}
