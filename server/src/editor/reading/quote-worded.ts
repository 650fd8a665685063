import { arriving, beforeFirstUse, containers, madeReady } from '../../quantity/prose/named/acts.ts';
import { usedUntil } from '../../quantity/prose/named/care.ts';
import { firstOf } from '../../quantity/prose/named/named.ts';
import type { QuoteReading } from '../../quantity/prose/prose.ts';
import type { Kind } from '../../schema/kinds.ts';
import { quoteScalar } from '../../syntax/quote.ts';
import { asValue } from '../writing/bare.ts';
import type { NewField } from '../writing/insert-fields.ts';
import { inGroup, type ReadFields } from './cited-fields.ts';
import { openedIn, takenApartIn } from './quote-apart.ts';
import { arranged } from './quote-arranged.ts';
import { lumenIn, materialsIn, partReplaced } from './quote-device.ts';
import { driedUntil } from './quote-drying.ts';
import { agentsForbidden, metalsApart } from './quote-forbidden.ts';
import { inMachine } from './quote-in-machine.ts';
import { normOf, rejectedIf, searched, testsAsked } from './quote-inspection.ts';
import { excessIn } from './quote-lubrication.ts';
import { packagingsIn } from './quote-packagings.ts';
import type { Section } from './quote-section.ts';
import { brushMeant, detergentMeant } from './quote-steps.ts';
import { stored } from './quote-storage.ts';
import { isAlwaysByHand } from './quote-ways.ts';

/** What a sentence without a number for a field says in words that have fields of their own. */
export function wordedOf(reading: QuoteReading, kind: Kind, { src, section, taken }: Citing): ReadFields {
  if (kind !== 'device') return { fields: [], left: [] };
  if (noSubstitute.test(reading.quote))
    return { fields: inGroup('disinfection', [['not_a_substitute', 'true']], src), left: [] };
  const forbidden = agentsForbidden(reading, src, section);
  const packed = packagingsIn(reading, src, section);
  const made = materialsIn(reading, section);
  const fields = [
    ...forbidden.fields,
    ...metalsApart(reading, src, section),
    ...rejectedIf(reading, src),
    ...searched(reading, src, section),
    ...saidOutright(reading, src),
    ...testsAsked(reading, src),
    ...byWords(reading, src, section),
    ...packed.fields,
    ...takenApartIn(reading, src, section),
    ...lumenIn(reading, src, taken),
    ...partReplaced(reading, src, taken),
    ...brushMeant(reading, src, section),
    ...detergentMeant(reading, src, section),
    ...driedUntil(reading, src, section),
    ...made.fields,
    ...alwaysByHand(reading, src),
  ];
  // In the words of the page where it has no word of the lists.
  const whole = fields.length > 0 ? [] : [...normOf(reading, src, section), ...arranged(reading, src, section)];
  const unknown = [...forbidden.unknown, ...made.unknown].map((item) => `no word of the list for: "${item}"`);
  return { fields: [...fields, ...whole], left: [...unknown, ...packed.left] };
}

export interface Citing {
  readonly src: string;
  readonly section: Section;
  /** Ids that the file has already. */
  readonly taken: ReadonlySet<string>;
}

/** `It must be reprocessed before the first use`, `wipe off surplus oil`. */
function saidOutright({ quote, negations }: QuoteReading, src: string): readonly NewField[] {
  if (negations.length > 0) return [];
  if (usedUntil.test(quote) && !/\d/.test(quote) && quote.length <= 200)
    return [{ path: 'limits.until', value: quoteScalar(quote) }];
  const isFirst = beforeFirstUse.test(quote) && madeReady.test(quote.replace(beforeFirstUse, ''));
  return [
    ...(isFirst ? [{ path: 'receipt.initial_cleaning', value: `{use: required, src: ${src}}` }] : []),
    ...inGroup('lubrication', excessIn(quote), src),
  ];
}

/** `Manual pre-cleaning (always required, also before automated cleaning)`. */
function alwaysByHand({ quote, negations, numbers }: QuoteReading, src: string): readonly NewField[] {
  return isAlwaysByHand(quote) && negations.length === 0 && numbers.length === 0
    ? inGroup('manual', [['needed', 'always']], src)
    : [];
}

/** `Disinfection is not a substitute for sterilization`: it forbids nothing. */
const noSubstitute =
  /\bdisinfection\b.{0,40}\b(?:not a substitute for|not replace|no substitute for)\b.{0,20}\bsterili[sz]/i;

/** Connectors, containers, packagings, places. */
function byWords(reading: QuoteReading, src: string, section: Section): readonly NewField[] {
  if (reading.negations.some(({ kind }) => kind !== 'without')) return arrives(reading, src);
  return [
    ...arrives(reading, src),
    ...inMachine(reading, src, section),
    ...carried(reading, src),
    ...opened(reading, src),
    ...stored(reading, src, section),
  ];
}

function arrives({ quote }: QuoteReading, src: string): readonly NewField[] {
  const state = firstOf(arriving, quote);
  if (state === undefined || quote.length > 140) return [];
  return inGroup('receipt', [['arrives', /^st[eé]rile?s?$/i.test(state) ? 'sterile' : 'non-sterile']], src);
}

function carried({ quote }: QuoteReading, src: string): readonly NewField[] {
  const container = firstOf(containers, quote);
  return container === undefined ? [] : inGroup('transport', [['container', asValue(container)]], src);
}

function opened({ quote, numbers }: QuoteReading, src: string): readonly NewField[] {
  const what = openedIn(quote);
  if (what === undefined || numbers.length > 0) return [];
  return inGroup('disassembly', [['open[]', asValue(what)]], src);
}
