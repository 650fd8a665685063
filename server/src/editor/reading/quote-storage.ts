import { eventRelated } from '../../quantity/prose/named/acts.ts';
import { aboutStoring, leadingOn, places, placesAlone } from '../../quantity/prose/named/storing.ts';
import type { QuoteReading } from '../../quantity/prose/prose.ts';
import { asValue } from '../writing/bare.ts';
import type { NewField } from '../writing/insert-fields.ts';
import { firstOf } from './quote-in-machine.ts';
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
  if (place === '' && !isByEvent) return [];
  return [
    ...(isByEvent ? [{ path: 'storage.event_related', value: 'true' }] : []),
    ...(place === '' ? [] : [{ path: 'storage.place', value: asValue(place) }]),
    { path: 'storage.src', value: src },
  ];
}
