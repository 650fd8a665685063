import type { QuoteReading } from '../quantity/prose/prose.ts';
import { quoteScalar } from '../syntax/quote.ts';
import type { NewField } from './insert-fields.ts';
import { marked } from './marked.ts';

/** Packagings that a sentence names as a choice, each as its own words have it: a pouch in a pouch is no single pouch. */

const packages: readonly (readonly [string, RegExp])[] = [
  [
    'double-wrap',
    /double[\s-]wrap|(?:two|2|double) layers? of (?:\p{L}+\s){0,2}wrap|wrap(?:ped)? in (?:two|2) layers|doubly wrapped/iu,
  ],
  [
    'rigid-container',
    /(?:rigid|sterili[sz]ation|sterili[sz]ing)\s(?:(?:sterili[sz]ation|sterili[sz]ing)\s)?container/i,
  ],
  [
    'double-pouch',
    /\b(?:double|two|2|twin)[\s-](?:[\p{L}-]+[\s-]){0,3}pouch|pouch(?:es)?\s(?:in|inside|within)\s(?:an?|another)\s(?:\p{L}+\s)?pouch|double[\s-]pouch/iu,
  ],
  ['pouch', /pouch/i],
];

export interface Packed {
  readonly fields: readonly NewField[];
  /** What the reader is told besides. */
  readonly left: readonly string[];
}

/** `Double peel pouch or two layers of wrap`: what the words mean for other packagings is asked where the sentence does not say. */
export function packagingsIn({ quote, numbers, stages, negations }: QuoteReading, src: string): Packed {
  const none = { fields: [], left: [] };
  const isOfCycle =
    numbers.some(({ units }) => units.some(({ dimension }) => dimension !== 'count')) ||
    stages.some(({ stage }) => stage === 'steam');
  if (isOfCycle || quote.length > 160 || negations.some(({ kind }) => kind !== 'without')) return none;
  if (!/\b(?:or|either)\b|\//i.test(quote)) return none;
  const parts = quote.split(/\s*(?:,\s*)?(?:\b(?:or|and\/or)\b|[,/])\s*/);
  const named = parts.flatMap((part) => {
    const name = packages.find(([, words]) => words.test(part))?.[0];
    return name === undefined ? [] : [{ name, part }];
  });
  const names = [...new Set(named.filter(({ part }) => !narrowed.test(part)).map(({ name }) => name))];
  const conditional = named.filter(({ part, name }) => narrowed.test(part) && !names.includes(name));
  if (named.length < 2 || names.length === 0) return none;
  const notes = conditional.map(({ part }) => part.trim().replace(/[.;]$/, ''));
  return {
    fields: [
      { path: 'packaging.relation', value: relationIn(quote) },
      ...names.map((name) => ({ path: 'packaging.allowed[]', value: name })),
      ...(notes.length === 0 ? [] : [{ path: 'packaging.note', value: quoteScalar(notes.join('; ')) }]),
      { path: 'packaging.src', value: src },
    ],
    left: notes.map((note) => `"${note}" holds under a condition and stands as a note only`),
  };
}

/** `a rigid container whose maker lists lumens of this size`: a packaging of which the page says when it may be used. */
const narrowed =
  /(?:pouch(?:es)?|wrap|container)s?\b.{0,20}\b(?:whose|that|which|if|when|where|provided|listed|only (?:if|when|for|with|in)|unless|except|validated)\b/i;

function relationIn(quote: string): string {
  if (/\b(?:validated|tested|qualified)\b/i.test(quote)) return 'validated_with';
  return /\bonly\b|\bexclusively\b/i.test(quote) ? 'restricted_to' : marked.hole('relation');
}
