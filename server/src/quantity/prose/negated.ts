import type { NumberDraft, ReadingText } from './draft.ts';
import { tokenText } from './draft.ts';
import type { Hit } from './lexicon.ts';

/** What turns a comparison round, and whether it says nothing else. */
export interface NegationOver {
  /** Absent when a harm or a condition turns it (`above 140 °C damages the seal`). */
  readonly hit?: Hit;
  readonly isUsedUp: boolean;
}

const orWords: ReadonlySet<string> = new Set(['or', 'nor', 'oder', 'noch', 'ou', 'ni', 'and', 'und', 'et']);

/**
 * The word that negates a comparison: before it in the same clause (`do not soak longer than`), after its number (`above 140 °C must be
 * avoided`), a harm (`above 140 °C damages the seal`) or a condition (`if more than 30 minutes have passed`).
 */
export function negationOver(text: ReadingText, comparison: Hit, target: NumberDraft): NegationOver | undefined {
  const before = negationBefore(text, comparison);
  if (before !== undefined) return { hit: before, isUsedUp: !isAlternativeBetween(text, before, comparison) };
  const after = negationAfter(text, Math.max(comparison.last, target.last), target.sentence);
  if (after !== undefined) return { hit: after, isUsedUp: true };
  return isHarmful(text, comparison, target) || isCondition(text, comparison) ? { isUsedUp: true } : undefined;
}

function isNegation(hit: Hit): boolean {
  return hit.meaning.role === 'negation' && (hit.meaning.kind === 'prohibition' || hit.meaning.kind === 'without');
}

/** `up to 10 minutes, but not less than 3`: an exception in form, a bound word in meaning. */
function isButNot(text: ReadingText, hit: Hit, comparison: Hit): boolean {
  if (hit.meaning.role !== 'negation' || hit.meaning.kind !== 'exception') return false;
  return tokenText(text, hit.last) === 'not' && comparison.first - hit.last <= 2;
}

function negationBefore(text: ReadingText, comparison: Hit): Hit | undefined {
  let found: Hit | undefined;
  for (const hit of text.hits) {
    if (hit.last >= comparison.first) break;
    if ((isNegation(hit) || isButNot(text, hit, comparison)) && reaches(text, hit, comparison)) found = hit;
  }
  return found;
}

/** Same sentence, no "but", and no comma but an inserted one (`do not, under any circumstances, exceed`) or one before "or". */
function reaches(text: ReadingText, negation: Hit, comparison: Hit): boolean {
  if (text.sentences[negation.last] !== text.sentences[comparison.first]) return false;
  if (hasContrast(text, negation.last, comparison.first)) return false;
  const inserted = tokenText(text, negation.last + 1) === ',';
  for (let at = negation.last + 1; at < comparison.first; at++) {
    if (tokenText(text, at) !== ',' || inserted || orWords.has(tokenText(text, at + 1))) continue;
    if (isListComma(text, at, comparison)) continue;
    return false;
  }
  return true;
}

const listWords: ReadonlySet<string> = new Set(['or', 'nor', 'oder', 'noch', 'ou', 'ni']);
const longestItem = 5;

/** `do not use bleach, hydrogen peroxide or detergents above pH 10.5`: an "or" before the comparison closes the list. */
function isListComma(text: ReadingText, comma: number, comparison: Hit): boolean {
  const end = Math.min(comparison.first, comma + longestItem + 1);
  for (let at = comma + 1; at < end; at++) {
    const word = tokenText(text, at);
    if (word === ',' || listWords.has(word)) return word !== ',' || isListComma(text, at, comparison);
    if (word === ';' || word === ':') return false;
  }
  return false;
}

function hasContrast(text: ReadingText, from: number, to: number): boolean {
  return text.hits.some((hit) => hit.first > from && hit.last < to && hit.meaning.role === 'contrast');
}

/** `no metal brushes or temperatures above 60 °C`: the negation also forbids the first thing. */
function isAlternativeBetween(text: ReadingText, negation: Hit, comparison: Hit): boolean {
  for (let at = negation.last + 1; at < comparison.first; at++) if (orWords.has(tokenText(text, at))) return true;
  return false;
}

function negationAfter(text: ReadingText, from: number, sentence: number): Hit | undefined {
  for (const hit of text.hits) {
    if (hit.first <= from) continue;
    if (text.sentences[hit.first] !== sentence || hit.first - from > 8 || isBroken(text, from, hit.first))
      return undefined;
    if (hit.meaning.role === 'negation' && hit.meaning.kind === 'prohibition' && hit.meaning.scope === 'both')
      return hit;
  }
  return undefined;
}

function isBroken(text: ReadingText, from: number, to: number): boolean {
  for (let at = from + 1; at < to; at++) if (tokenText(text, at) === ',') return true;
  return hasContrast(text, from, to);
}

function isHarmful(text: ReadingText, comparison: Hit, target: NumberDraft): boolean {
  return text.hits.some(
    (hit) =>
      hit.meaning.role === 'harm' &&
      text.sentences[hit.first] === target.sentence &&
      Math.abs(hit.first - comparison.last) <= 10,
  );
}

/** `9 months when stored below 25 °C`: how it is to be kept, which turns nothing round. */
const keeping: ReadonlySet<string> = new Set(['stored', 'kept']);

function isCondition(text: ReadingText, comparison: Hit): boolean {
  const isUnder = comparison.meaning.role === 'compare' && comparison.meaning.side === 'under';
  return text.hits.some(
    (hit) =>
      hit.meaning.role === 'condition' &&
      !(isUnder && keeping.has(tokenText(text, hit.last + 1))) &&
      hit.last < comparison.first &&
      comparison.first - hit.last <= 8 &&
      text.sentences[hit.first] === text.sentences[comparison.first] &&
      !isBroken(text, hit.last, comparison.first),
  );
}
