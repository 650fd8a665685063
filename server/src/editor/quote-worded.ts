import type { QuoteReading } from '../quantity/prose/prose.ts';
import type { Kind } from '../schema/kinds.ts';
import { asValue } from './bare.ts';
import type { NewField } from './insert-fields.ts';
import { marked } from './marked.ts';
import { agentsForbidden, metalsApart } from './quote-forbidden.ts';
import { rejectedIf, testsAsked } from './quote-inspection.ts';
import type { Section } from './quote-section.ts';

export interface Worded {
  readonly fields: readonly NewField[];
  /** What the reader is told besides. */
  readonly left: readonly string[];
}

/** What a sentence without a number for a field says in words that have fields of their own. */
export function wordedOf(reading: QuoteReading, kind: Kind, src: string, section: Section): Worded {
  if (kind !== 'device') return { fields: [], left: [] };
  if (noSubstitute.test(reading.quote)) return { fields: substitute(src), left: [] };
  const forbidden = agentsForbidden(reading, src, section);
  const fields = [
    ...forbidden.fields,
    ...metalsApart(reading, src, section),
    ...rejectedIf(reading, src),
    ...testsAsked(reading, src),
    ...byWords(reading, src, section),
  ];
  return { fields, left: forbidden.unknown.map((item) => `no word of the list for: "${item}"`) };
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
    ...packagings(reading, src),
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

const packages: readonly (readonly [string, RegExp])[] = [
  [
    'double-wrap',
    /double[\s-]wrap|(?:two|2|double) layers? of (?:\p{L}+\s){0,2}wrap|wrap(?:ped)? in (?:two|2) layers|doubly wrapped/iu,
  ],
  [
    'rigid-container',
    /(?:rigid|sterili[sz]ation|sterili[sz]ing)\s(?:(?:sterili[sz]ation|sterili[sz]ing)\s)?container/i,
  ],
  ['pouch', /pouch/i],
];

/** `Double peel pouch or two layers of wrap`: what the words mean for other packagings is asked where the sentence does not say. */
function packagings({ quote, numbers, stages }: QuoteReading, src: string): readonly NewField[] {
  const isOfCycle =
    numbers.some(({ units }) => units.some(({ dimension }) => dimension !== 'count')) ||
    stages.some(({ stage }) => stage === 'steam');
  const named = packages.filter(([, words]) => words.test(quote)).map(([name]) => name);
  const isChoice = /\b(?:or|either)\b|\//i.test(quote);
  if (isOfCycle || named.length < 2 || !isChoice || quote.length > 160) return [];
  return [
    { path: 'packaging.relation', value: relationIn(quote) },
    ...named.map((name) => ({ path: 'packaging.allowed[]', value: name })),
    { path: 'packaging.src', value: src },
  ];
}

function relationIn(quote: string): string {
  if (/\b(?:validated|tested|qualified)\b/i.test(quote)) return 'validated_with';
  return /\bonly\b|\bexclusively\b/i.test(quote) ? 'restricted_to' : marked.hole('relation');
}

/** `Store dry and free of dust`: how and where, up to the first comma. */
function stored({ quote }: QuoteReading, src: string): readonly NewField[] {
  const [, place] =
    /^(?:packed\s|the\s|sterile\s|\p{L}+\s){0,3}?stored?\s((?:in\s|at\s|away\s|dry|free\s|clean|protected\s|cool)[^,;:.\d]*)/iu.exec(
      quote,
    ) ?? [];
  if (place === undefined) return [];
  return [
    { path: 'storage.place', value: asValue(place.trim()) },
    { path: 'storage.src', value: src },
  ];
}
