import { wordFor } from '../../quantity/prose/named/named.ts';
import { packagings, relations } from '../../quantity/prose/named/packagings.ts';
import type { QuoteReading } from '../../quantity/prose/prose.ts';
import { quoteScalar } from '../../syntax/quote.ts';
import type { NewField } from '../writing/insert-fields.ts';
import { inGroup, type ReadFields } from './cited-fields.ts';
import type { Section } from './quote-section.ts';

/** Packagings that a sentence names as a choice, each as its own words have it: a pouch in a pouch is no single pouch. */

/**
 * `Double peel pouch or two layers of wrap`: what the words mean for other packagings is written where the sentence says it, else it stays
 * unsaid. One packaging alone counts under a heading of packing only.
 */
export function packagingsIn(reading: QuoteReading, src: string, section: Section): ReadFields {
  const none = { fields: [], left: [] };
  const quote = withoutForbidden(reading);
  if (isOfCycle(reading) || ofMass.test(quote) || reading.quote.length > 200 || quote === '') return none;
  const parts = quote.toLowerCase().split(between);
  const named = parts.flatMap((part) => {
    const name = wordFor(packagings, part);
    return name === undefined ? [] : [{ name, part: inPrint(quote, part) }];
  });
  const isTwofold = /(?<!\p{L})(?:two|2|double) (?:layers|sheets)/iu.test(quote);
  const names = [...new Set(named.filter(({ part }) => !narrowed.test(part)).map(({ name }) => name))];
  const layered = names.map((name) => (name === 'wrap' && isTwofold ? 'double-wrap' : name));
  const conditional = named.filter(({ part, name }) => narrowed.test(part) && !names.includes(name));
  const isChoice = parts.length > 1 && named.length > 1;
  const isAlone = section.stages.includes('packaging') && parts.length === 1 && !handled.test(quote);
  if (names.length === 0 || !(isChoice || isAlone || (parts.length > 1 && section.stages.includes('packaging'))))
    return none;
  const notes = conditional.map(({ part }) => part.trim().replace(/[.;]$/, ''));
  const relation = wordFor(relations, quote.toLowerCase());
  return {
    fields: inGroup(
      'packaging',
      [
        ...(relation === undefined ? [] : [['relation', relation] as const]),
        ...[...new Set(layered)].map((name) => ['allowed[]', name] as const),
        ...(notes.length === 0 ? [] : [['note', quoteScalar(notes.join('; '))] as const]),
      ],
      src,
    ),
    left: [
      ...notes.map((note) => `"${note}" holds under a condition and stands as a note only`),
      ...(relation === undefined ? ['whether other packagings may be used is not said, and stays unclear'] : []),
    ],
  };
}

/** What weighs how much with its wrap says nothing of which one is used. */
const ofMass = /\binclud\p{L}*\s.{0,30}(?:wrap|container|packag)|\bweigh/iu;

/** `The limit of 10 kg includes the wrap`. */
export function massOf({ quote }: QuoteReading): readonly NewField[] {
  const isGross =
    /\b(?:including|includes?|inclusive of|with)\s(?:the\s|its\s|all\s)?(?:\p{L}+\s)?(?:wrap|container|packaging|tray|basket|case)/iu.test(
      quote,
    );
  return isGross ? [{ path: 'packaging.mass_of', value: 'gross' }] : [];
}

/** What is done to the package says nothing of which one it is. */
const handled =
  /^(?:seal|label|mark|close|open|check|inspect|verify|date|peel|remove|store|keep|(?:place|put|attach|include)\s.{0,30}indicator)(?!\p{L})/iu;

/** `One per pouch; the seam must not be under tension`: the clauses that forbid nothing. */
function withoutForbidden({ quote, negations }: QuoteReading): string {
  let at = 0;
  const kept = quote.split(/;\s/).filter((clause) => {
    const [start, end] = [quote.indexOf(clause, at), quote.indexOf(clause, at) + clause.length];
    at = end;
    return !negations.some(({ kind, span }) => kind !== 'without' && span.start >= start && span.start < end);
  });
  return kept.join('; ');
}

/** A packaging that stands beside the numbers of a cycle is that of the cycle. */
function isOfCycle({ numbers, stages }: QuoteReading): boolean {
  const isOther = numbers.some(({ units }) =>
    units.some(({ dimension }) => dimension !== 'count' && dimension !== 'mass'),
  );
  return isOther || stages.some(({ stage }) => stage === 'steam');
}

const between = /\s*(?:,\s*)?(?:(?<!\p{L})(?:or|and\/or|either|oder|ou)(?!\p{L})|[,;/])\s*/u;

function inPrint(quote: string, part: string): string {
  const at = quote.toLowerCase().indexOf(part);
  return quote.slice(at, at + part.length);
}

/** `a rigid container whose maker lists lumens of this size`: a packaging of which the page says when it may be used. */
const narrowed =
  /(?:pouch(?:es)?|wrap|container)s?\b.{0,20}\b(?:whose|that|which|if|when|where|provided|listed|only (?:if|when|for|with|in)|unless|except|validated)\b/i;
