import {
  aboutInspecting,
  actionOn,
  doneByHand,
  eachUse,
  norms,
  normsInShort,
  notOfTheDevice,
  rejections,
  replacedIf,
  searches,
  tests,
} from '../../quantity/prose/named/care.ts';
import { firstOf, wordsFor } from '../../quantity/prose/named/named.ts';
import type { QuoteReading } from '../../quantity/prose/prose.ts';
import { asValue } from '../writing/bare.ts';
import type { NewField } from '../writing/insert-fields.ts';
import { marked } from '../writing/marked.ts';
import { inGroup, withoutStop } from './cited-fields.ts';
import type { Section } from './quote-section.ts';
import { ways } from './quote-section.ts';

/** What a sentence says is looked at and tested, and what takes a device out of use. */

export function rejectedIf({ quote, numbers, stages }: QuoteReading, src: string): readonly NewField[] {
  // `Do not use ultrasound for instruments with optics` speaks of a step.
  if (stages.some(({ stage }) => ways.some((way) => way === stage))) return [];
  const text = withoutStop(quote);
  const found = rejections.find(({ form }) => form.test(text));
  const condition = found?.form.exec(text)?.[1];
  const isOther = notOfTheDevice.test(text.replace(madeSafe, ''));
  if (found === undefined || condition === undefined || numbers.length > 0 || isOther) return [];
  // What is done first is no state of it.
  if (/(?<!\p{L})(?:must|should|shall|before)(?!\p{L})/iu.test(condition)) return [];
  const part = replacedPart(text);
  // What is replaced is the part: the device stays in use.
  const action = part === undefined ? actionOn(text) : undefined;
  const seen = partsOf(part === undefined ? condition : ofPart(condition, part), found.of);
  const values = [
    ...seen.map((one) => ['reject_if[]', asValue(one)] as const),
    ...(action === undefined ? [] : [['action', action] as const]),
  ];
  return inGroup('inspection', values, src);
}

/** `Replace the cap if it is brittle`: it is the cap that is brittle. */
function ofPart(condition: string, part: string): string {
  const named = condition.replace(/^(?:it|they|these|this)\s/i, `${part} `);
  return named === condition && /^\p{L}+(?:\s(?:and|or)\s\p{L}+)?$/u.test(condition) ? `${part} ${condition}` : named;
}

function replacedPart(text: string): string | undefined {
  const part = firstOf(replacedIf, text);
  return part === undefined || /\b(?:device|instrument|product|it|them|handpiece|attachment)s?$/i.test(part)
    ? undefined
    : part;
}

/** Before it is sent away. */
const madeSafe = /\b(?:cleaned|decontaminated|disinfected)(?=,|\sand\s)/giu;

/** `the tip is bent or the grip is cracked` in two, `the tip or the shaft is bent` in one: each part must say by itself what is seen. */
function partsOf(text: string, of: 'clauses' | 'words'): readonly string[] {
  const parts = listed(text);
  const isWhole = (part: string): boolean =>
    /(?<!\p{L})(?:is|are|has|have|shows?|does|do|can|cannot|no longer|becomes?|fails?|ist|sind|hat|haben|zeigt|est|sont|présente)(?!\p{L})/u.test(
      part,
    );
  return of === 'words' || parts.every(isWhole) ? parts : [text.trim()];
}

function listed(text: string): readonly string[] {
  return text
    .split(/\s*(?:,\s*(?:and|or)?|(?<!\p{L})(?:and|or|und|oder|et|ou)(?!\p{L}))\s*/u)
    .map((part) => part.trim())
    .filter((part) => part !== '');
}

/** `Inspect for corrosion, cracks and loose screws`: what is looked for. Nothing where it is something else than nouns. */
export function lookedFor(quote: string): readonly string[] {
  const found = firstOf(searches, quote)?.replace(/,?\s(?:before|prior to|after|at)\s(?:each|every)\s\p{L}+$/iu, '');
  const isOther =
    found === undefined ||
    /\d|\b(?:each|every|use|cleaning|function\p{L}*|movement|operation|proper|correct|smooth|free|complete\p{L}*|the|if|when|under|with|by|before|after|until|and\/or)\b/iu.test(
      found,
    );
  return isOther ? [] : listed(found.replace(/^any\s/, ''));
}

/** `The jaws must close evenly`, under the heading of inspection: the sentence itself is what is looked for. */
export function normOf({ quote, numbers, stages }: QuoteReading, src: string, section: Section): readonly NewField[] {
  const words = withoutStop(quote);
  const isAbout = section.stages.includes('inspection') || aboutInspecting.test(section.text);
  const isMeasured = numbers.some(({ units, isReference }) => units.length > 0 && !isReference);
  if (
    !isAbout ||
    isMeasured ||
    stages.some(({ stage }) => stage !== 'inspection' && stage !== 'dry') ||
    words.length > longest
  )
    return [];
  const isNorm =
    normsInShort.test(words) || (norms.some((norm) => norm.test(words)) && !/;\s(?!it\s|they\s)/.test(words));
  if (!isNorm || doneByHand.test(words) || /[.!?]\s/.test(words)) return [];
  return inGroup('inspection', [['criteria[]', asValue(words)]], src);
}

const longest = 140;

/** Tests that the sentence asks for by name. */
export function testsAsked({ quote, negations, numbers }: QuoteReading, src: string): readonly NewField[] {
  const isOther = numbers.some(({ units }) => units.some(({ dimension }) => dimension !== 'percentage'));
  if (negations.length > 0 || isOther) return [];
  const each = eachUse.test(quote) ? 'each_use: true, ' : '';
  return wordsFor(tests, quote.toLowerCase()).map((name) => ({
    path: `inspection.${name}`,
    value: `{required: true, ${each}src: ${src}}`,
  }));
}

/** `Look for damage and loose screws`, under the heading of inspection. */
export function searched(
  { quote, negations, stages }: QuoteReading,
  src: string,
  section: Section,
): readonly NewField[] {
  if (!section.stages.includes('inspection') || negations.length > 0 || stages.length > 0) return [];
  const found = lookedFor(quote);
  return found.length === 0 ? [] : lookedAt(found, src);
}

/** That it is looked at, and what for. */
export function lookedAt(found: readonly string[], src: string): readonly NewField[] {
  const visual = ['visual', marked.choice(['true', 'false'], 'visual')] as const;
  return inGroup('inspection', [visual, ...found.map((what) => ['criteria[]', asValue(what)] as const)], src);
}
