import {
  airGrades,
  driesSo,
  dryingMeans,
  dryUntil,
  filteredAir,
  medicalAir,
} from '../../quantity/prose/named/drying.ts';
import { firstOf, wordsFor } from '../../quantity/prose/named/named.ts';
import type { QuoteReading } from '../../quantity/prose/prose.ts';
import { asValue } from '../writing/bare.ts';
import type { NewField } from '../writing/insert-fields.ts';
import { inGroup } from './cited-fields.ts';
import type { Section } from './quote-section.ts';

/** With what a sentence dries a device, with which air, and until when. */

/** For text in small letters. */
export function dryingMethods(quote: string): readonly string[] {
  return wordsFor(dryingMeans, quote);
}

export function airGrade(quote: string): string | undefined {
  if (medicalAir.test(quote)) return 'medical';
  return filteredAir.test(quote) ? 'filtered' : firstOf(airGrades, quote)?.toLowerCase();
}

/** Two grades of air, and air that is not used, are for the reader. */
export function dryingIn(quote: string): readonly string[] {
  const named = dryingMethods(quote);
  const grade = named.includes('air') ? airGrade(quote) : undefined;
  const until = firstOf(dryUntil, quote);
  return [
    ...(named.length === 0 ? [] : [`method: [${named.join(', ')}]`]),
    ...(grade === undefined ? [] : [`air: {grade: ${grade}}`]),
    ...(until === undefined ? [] : [`endpoint: ${asValue(until)}`]),
  ];
}

/** `No moisture may remain in the plugs`, `blow out the lumen with filtered air`: under the heading of drying. */
export function driedUntil(reading: QuoteReading, src: string, section: Section): readonly NewField[] {
  const { quote, stages, numbers, negations } = reading;
  const isMeant = section.stages.length === 1 && section.stages[0] === 'dry' && numbers.length === 0;
  if (!isMeant || stages.some(({ stage }) => stage !== 'wipe')) return [];
  const until = firstOf(dryUntil, quote);
  if (until !== undefined && (negations.length > 0 || dryingMethods(quote.toLowerCase()).length === 0))
    return inGroup('drying', [['endpoint', asValue(until)]], src);
  const inside = driesSo.test(quote) && negations.length === 0 ? dryingIn(quote.toLowerCase()) : [];
  return inside.length === 0
    ? []
    : [{ path: 'drying', value: `{${['use: required', ...inside, `src: ${src}`].join(', ')}}` }];
}
