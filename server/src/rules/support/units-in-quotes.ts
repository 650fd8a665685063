import type { AnyEntity } from '../../model/entity.ts';
import type { Place, Quantity } from '../../model/node.ts';
import { fieldOf, nodesIn } from '../../model/walk.ts';
import { formatQuantity } from '../../quantity/format.ts';
import { readNumber } from '../../quantity/number-form.ts';
import { isEqualAmount } from '../../quantity/prose/ratio.ts';
import type { Transcribed } from './transcription.ts';
import { readStatement } from './transcription.ts';

/** The number with the units that the cited quotes print behind it, in our spelling: nothing is invented. */
export function unitsInQuotes(quantity: Quantity, entity: AnyEntity): readonly string[] {
  const number = readNumber(quantity.text.trim());
  if ('fault' in number) return [];
  const found = new Set<string>();
  for (const id of citedAround(quantity.at, entity)) {
    for (const mention of readStatement(entity as Transcribed, id)?.reading.numbers ?? []) {
      const value = mention.quantities.find((one) => one.dimension === quantity.dimension);
      if (value !== undefined && isEqualAmount(value.amount, number.amount)) found.add(formatQuantity(value));
    }
  }
  found.delete(quantity.text);
  return [...found];
}

/** Ids that the nearest citation around a place names. */
function citedAround(place: Place, entity: AnyEntity): readonly string[] {
  const records = new Map(
    nodesIn(entity).flatMap((node) => (node.node === 'record' ? [[node.at, node] as const] : [])),
  );
  for (let at: Place | undefined = place; at !== undefined; at = at.parent) {
    const record = records.get(at);
    const src = record === undefined ? undefined : fieldOf(record, 'src');
    if (src?.node === 'citation') return src.statements.map((statement) => statement.text);
  }
  return [];
}
