import { excessRemoved } from '../../quantity/prose/named/acts.ts';
import { lubricants, oiledBefore, oiledPlaces } from '../../quantity/prose/named/lubricants.ts';
import { firstOf, wordFor } from '../../quantity/prose/named/named.ts';
import { asValue } from '../writing/bare.ts';
import type { FieldValue } from './cited-fields.ts';

/** With what, where and when a sentence says to lubricate: fields of the lubrication with their values. */
export function oiling(quote: string): readonly FieldValue[] {
  const text = quote.toLowerCase();
  const agent = /\b(?:or|oder|ou)\b/.test(text) ? undefined : wordFor(lubricants, text);
  const place = firstOf(oiledPlaces, quote)?.trim();
  return [
    ...(agent === undefined ? [] : [['agent', agent] as const]),
    ...(/\b(?:put|apply|add|place)\sa (?:single )?drop\b/.test(text) ? [['drops', '{stated: 1 drops}'] as const] : []),
    ...(place === undefined ? [] : [['where', asValue(place)] as const]),
    ...(oiledBefore.test(text) ? [['before_packaging', 'true'] as const] : []),
    ...excessIn(quote),
  ];
}

/** `Wipe off surplus oil`, in a sentence of its own or beside the oiling. */
export function excessIn(quote: string): readonly FieldValue[] {
  return excessRemoved.test(quote) ? [['remove_excess', 'true']] : [];
}
