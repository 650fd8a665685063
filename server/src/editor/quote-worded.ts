import type { QuoteReading } from '../quantity/prose/prose.ts';
import type { Kind } from '../schema/kinds.ts';
import { asValue } from './bare.ts';
import type { NewField } from './insert-fields.ts';
import { stepsApart } from './quote-apart.ts';
import { lumenIn, materialsIn, partReplaced } from './quote-device.ts';
import { agentsForbidden, metalsApart } from './quote-forbidden.ts';
import { rejectedIf, testsAsked } from './quote-inspection.ts';
import { packagingsIn } from './quote-packagings.ts';
import type { Section } from './quote-section.ts';
import { isAlwaysByHand } from './quote-ways.ts';

export interface Worded {
  readonly fields: readonly NewField[];
  /** What the reader is told besides. */
  readonly left: readonly string[];
}

/** What a sentence without a number for a field says in words that have fields of their own. */
export function wordedOf(reading: QuoteReading, kind: Kind, { src, section, taken }: Citing): Worded {
  if (kind !== 'device') return { fields: [], left: [] };
  if (noSubstitute.test(reading.quote)) return { fields: substitute(src), left: [] };
  const forbidden = agentsForbidden(reading, src, section);
  const packed = packagingsIn(reading, src);
  const made = materialsIn(reading);
  const fields = [
    ...forbidden.fields,
    ...metalsApart(reading, src, section),
    ...rejectedIf(reading, src),
    ...testsAsked(reading, src),
    ...byWords(reading, src, section),
    ...packed.fields,
    ...stepsApart(reading, src, section),
    ...lumenIn(reading, src, taken),
    ...partReplaced(reading, src, taken),
    ...made.fields,
    ...alwaysByHand(reading, src),
  ];
  const unknown = [...forbidden.unknown, ...made.unknown].map((item) => `no word of the list for: "${item}"`);
  return { fields, left: [...unknown, ...packed.left] };
}

export interface Citing {
  readonly src: string;
  readonly section: Section;
  /** Ids that the file has already. */
  readonly taken: ReadonlySet<string>;
}

/** `Manual pre-cleaning (always required, also before automated cleaning)`. */
function alwaysByHand({ quote, negations, numbers }: QuoteReading, src: string): readonly NewField[] {
  return isAlwaysByHand(quote) && negations.length === 0 && numbers.length === 0
    ? [
        { path: 'manual.needed', value: 'always' },
        { path: 'manual.src', value: src },
      ]
    : [];
}

/** `Disinfection is not a substitute for sterilization`: it forbids nothing. */
const noSubstitute =
  /\bdisinfection\b.{0,40}\b(?:not a substitute for|not replace|no substitute for)\b.{0,20}\bsterili[sz]/i;

function substitute(src: string): readonly NewField[] {
  return [
    { path: 'disinfection.not_a_substitute', value: 'true' },
    { path: 'disinfection.src', value: src },
  ];
}

/** Connectors, containers, packagings, places. */
function byWords(reading: QuoteReading, src: string, section: Section): readonly NewField[] {
  if (reading.negations.some(({ kind }) => kind !== 'without')) return arriving(reading, src);
  return [
    ...arriving(reading, src),
    ...connected(reading, src, section),
    ...carried(reading, src),
    ...opened(reading, src),
    ...stored(reading, src),
  ];
}

function arriving({ quote }: QuoteReading, src: string): readonly NewField[] {
  const [, state] =
    /\b(?:delivered|supplied|provided|shipped|sold)\b(?:\s\p{L}+){0,2}\s(non[\s-]?sterile|unsterile|sterile)\b(?!\s(?:water|gloves|drape))/iu.exec(
      quote,
    ) ?? [];
  if (state === undefined || quote.length > 120) return [];
  return [
    { path: 'receipt.arrives', value: /^sterile$/i.test(state) ? 'sterile' : 'non-sterile' },
    { path: 'receipt.src', value: src },
  ];
}

/** `Connect the lumen to the irrigation nozzle of the washer`: the words for what it is connected to. */
function connected({ quote, stages }: QuoteReading, src: string, section: Section): readonly NewField[] {
  const [, to] =
    /\b(?:connect|attach)\b\s[^.;:,]{0,60}?\bto\s(?:the\s|an?\s)?([^.;:,]{3,80}?)(?:\s(?:of|in|on)\s(?:the|an?|your)\s[^.;:,]*)?[.;,]?$/i.exec(
      quote,
    ) ?? [];
  const [, rack] =
    /\b(?:place|load|put)\b\s[^.;:,]{0,60}?\b(?:in|on|into|onto)\s(?:the\s|an?\s)?([^.;:,]{0,40}?(?:rack|basket|insert|trolley))\b[^.;:]{0,20}[.;]?$/i.exec(
      quote,
    ) ?? [];
  const named = new Set([...section.stages, ...stages.map(({ stage }) => stage)]);
  if (!named.has('mechanical') || named.has('ultrasonic')) return [];
  const [, position] =
    /\b(?:place|load|put|lay)\b\s[^.;:]{0,60}?\b(?:washer|machine|rack|basket)[\p{L}-]*,\s((?:[^.;:]{3,80}?\b)?(?:open|opened|disassembled|upright|flat|connected)\b[^.;:]{0,60}?)[.;]?$/iu.exec(
      quote,
    ) ?? [];
  if (position !== undefined)
    return [
      { path: 'mechanical.orientation', value: asValue(position) },
      { path: 'mechanical.src', value: src },
    ];
  const isRack = to === undefined || /(?:rack|basket|trolley)$/i.test(to);
  const [field, words] = isRack ? ['rack', to ?? rack] : ['connector', to];
  if (words === undefined) return [];
  return [
    { path: `mechanical.${field}`, value: asValue(words) },
    { path: 'mechanical.src', value: src },
  ];
}

function carried({ quote }: QuoteReading, src: string): readonly NewField[] {
  const [, container] =
    /\btransport(?:ed)?\b[^.;:]{0,60}?\bin\s(?:an?\s)?((?:[\p{L}-]+,?\s(?:and\s)?){0,4}(?:container|box|bin))\b/iu.exec(
      quote,
    ) ?? [];
  return container === undefined
    ? []
    : [
        { path: 'transport.container', value: asValue(container) },
        { path: 'transport.src', value: src },
      ];
}

/** `Open all stopcocks`: what is opened before cleaning. */
function opened({ quote, numbers }: QuoteReading, src: string): readonly NewField[] {
  const [, what] =
    /^(?:always )?open\s(?:the\s)?(\p{L}+(?:[\s-]\p{L}+){0,4}?)(?:\sbefore\scleaning)?[.!]?$/iu.exec(quote) ?? [];
  if (what === undefined || numbers.length > 0 || /\b(?:clos|pack|pouch|door|lid|and)/i.test(what)) return [];
  return [
    { path: 'disassembly.open[]', value: asValue(what.trim()) },
    { path: 'disassembly.src', value: src },
  ];
}

/** `Store dry and free of dust`: how and where, up to the first comma that is none of a list (`dust, moisture and sunlight`). */
export function stored({ quote }: QuoteReading, src: string): readonly NewField[] {
  const [, place] =
    /^(?:packed\s|the\s|sterile\s|\p{L}+\s){0,3}?stored?\s((?:in\s|at\s|away\s|dry|free\s|clean|protected\s|cool)[^,;:.\d]*(?:(?:,\s\p{L}{1,30}){1,6},?\s(?:and|or)\s\p{L}[^,;:.\d]*)?)/iu.exec(
      quote,
    ) ?? [];
  const words =
    place
      ?.trim()
      .replace(
        /(?:(?:^|\s)(?:at|for|up to|below|under|between|from|not above|no more than|a|temperatures?|of|room))+$/i,
        '',
      ) ?? '';
  if (words === '') return [];
  return [
    { path: 'storage.place', value: asValue(words) },
    { path: 'storage.src', value: src },
  ];
}
