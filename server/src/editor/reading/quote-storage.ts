import { eventRelated } from '../../quantity/prose/named/acts.ts';
import { firstOf } from '../../quantity/prose/named/named.ts';
import { aboutStoring, leadingOn, places, placesAlone } from '../../quantity/prose/named/storing.ts';
import type { QuoteReading } from '../../quantity/prose/prose.ts';
import { asValue } from '../writing/bare.ts';
import type { NewField } from '../writing/insert-fields.ts';
import { inGroup } from './cited-fields.ts';
import type { Section } from './quote-section.ts';

/** `Store dry and free of dust`: how and where, and whether its life depends on events. */
export function stored({ quote, negations }: QuoteReading, src: string, { text }: Section): readonly NewField[] {
  // `Keep it dry` may be said of anything.
  const isKept = /^keep\b/i.test(quote) && !aboutStoring.test(text);
  const place = isKept
    ? ''
    : (firstOf(aboutStoring.test(text) ? [...places, placesAlone] : places, quote)
        ?.trim()
        .replace(leadingOn, '')
        .trim() ?? '');
  const isByEvent = eventRelated.test(quote) && negations.length === 0;
  const values = [
    ...(isByEvent ? [['event_related', 'true'] as const] : []),
    ...(place === '' ? [] : [['place', asValue(place)] as const]),
  ];
  return inGroup('storage', values, src);
}
