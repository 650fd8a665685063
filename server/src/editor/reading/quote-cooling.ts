import { neverQuenched, neverTouched, noFan } from '../../quantity/prose/named/acts.ts';
import { cooledBefore, coolingMethods, coolingSurfaces, coolsDown } from '../../quantity/prose/named/cooling.ts';
import { firstOf } from '../../quantity/prose/named/named.ts';
import type { QuoteReading } from '../../quantity/prose/prose.ts';
import { asValue } from '../writing/bare.ts';
import type { NewField } from '../writing/insert-fields.ts';
import { inGroup } from './cited-fields.ts';
import type { Section } from './quote-section.ts';

/** How something cools after the cycle: on what, before what, and what is kept from it. */
export function cooled({ quote }: QuoteReading, src: string, { text }: Section): readonly NewField[] {
  const kept = [
    ['no_quench', neverQuenched],
    ['no_touch', neverTouched],
    ['no_fan', noFan],
  ] as const;
  const forbidden = kept.filter(([, words]) => words.test(quote)).map(([field]) => [field, 'true'] as const);
  const found = [...forbidden, ...(text === '' || afterCycle.test(text) ? howIn(quote) : [])];
  return inGroup('cooling', found, src);
}

/** What cools before it is looked at, or behind a washer, does not cool after the cycle. */
const afterCycle = /sterili|stérili|autoclav|cool|abkühl|refroidi|stor(?:e|age|ing)|lager|stock|unload/;

function howIn(quote: string): readonly (readonly [string, string])[] {
  if (!coolsDown.test(quote) || quote.length > longest) return [];
  const how = [
    ['surface', firstOf(coolingSurfaces, quote)],
    ['method', firstOf(coolingMethods, quote)],
    ['before', firstOf(cooledBefore, quote)],
  ] as const;
  return how.flatMap(([field, words]) => (words === undefined ? [] : [[field, asValue(words.trim())] as const]));
}

const longest = 160;
