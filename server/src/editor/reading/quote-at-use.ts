import { wiping } from '../../quantity/prose/named/acts.ts';
import { keptApart, moisteners, moistKept, takenOff, whenDelayed } from '../../quantity/prose/named/at-use.ts';
import { firstOf, wordsFor } from '../../quantity/prose/named/named.ts';
import type { QuoteReading } from '../../quantity/prose/prose.ts';
import { asValue } from '../writing/bare.ts';
import type { NewField } from '../writing/insert-fields.ts';
import { inGroup } from './cited-fields.ts';
import type { Section } from './quote-section.ts';
import { isAtUse } from './quote-section.ts';
import { useChoice } from './quote-uses.ts';

/** What a sentence says is done at once where the device was used. */
export function doneAtUse(reading: QuoteReading, src: string, section: Section): readonly NewField[] {
  const { quote, negations } = reading;
  const text = quote.toLowerCase();
  const isWiped =
    wiping.test(text) && negations.length === 0 && (isAtUse(section) || /immediately after use/.test(text));
  const wiped = isWiped ? [{ path: 'point_of_use.wipe', value: `{use: ${useChoice('required')}, src: ${src}}` }] : [];
  const moist = keptMoist(text, src);
  // A moist cloth that covers it wipes nothing.
  const isCovered = moist.length > 0 && !/\b(?:wipe|remove)|(?:ab)?wischen|essuyer/.test(text);
  return [
    ...(isCovered ? [] : wiped),
    ...moist,
    ...disconnected(reading, src, section),
    ...keptSeparate(reading, src, section),
  ];
}

function keptMoist(quote: string, src: string): readonly NewField[] {
  const agents = wordsFor(moisteners, quote);
  if (!moistKept.some((words) => words.test(quote)) || notMoist.test(quote)) return [];
  const inside = [
    ...(agents.length === 0 || /\bor\b/.test(quote) ? [] : [`agents: [${agents.join(', ')}]`]),
    ...(whenDelayed.test(quote) ? ['when: delay-exceeded'] : []),
  ];
  return [
    {
      path: 'point_of_use.keep_moist',
      value: `{${[`use: ${useChoice('required')}`, ...inside, `src: ${src}`].join(', ')}}`,
    },
  ];
}

/** `Do not keep it wet`. */
const notMoist =
  /^(?:saline|salt solutions?|disinfectants?|detergents?|kochsalz\p{L}*)(?!\p{L})|\b(?:not|never)\s(?:be\s)?(?:keep|kept|stored?|transport\p{L}*|left (?:in|wet|moist))|nicht feucht (?:halten|lagern)|ne pas (?:garder|maintenir|conserver)/u;

/** `Disconnect the cable from the handle`, under a heading that speaks of that place. */
function disconnected({ quote, negations }: QuoteReading, src: string, section: Section): readonly NewField[] {
  const what = isAtUse(section) && quote.length < longest ? firstOf(takenOff, quote) : undefined;
  const isForbidden = negations.some(({ span }) => span.start === 0);
  const things = what === undefined || isForbidden ? [] : what.split(/\sand\s(?:the\s)?/i);
  return inGroup(
    'point_of_use',
    things.map((one) => ['disconnect[]', asValue(one)] as const),
    src,
  );
}

function keptSeparate({ quote, negations }: QuoteReading, src: string, section: Section): readonly NewField[] {
  const isThere = isAtUse(section) || /transport/.test(section.text);
  const what = isThere && negations.length === 0 ? firstOf(keptApart, quote)?.trim() : undefined;
  return what === undefined ? [] : inGroup('point_of_use', [['separate', asValue(what)]], src);
}

const longest = 160;
