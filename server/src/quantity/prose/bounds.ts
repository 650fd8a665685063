import type { Span } from '../../base/span.ts';
import { span } from '../../base/span.ts';
import type { Dimension } from '../quantity.ts';
import type { NumberDraft, ReadingText } from './draft.ts';
import { tokenText } from './draft.ts';
import type { Hit } from './lexicon.ts';
import type { Meaning, ProseBound } from './meaning.ts';
import { negationOver } from './negated.ts';

type BoundMeaning = Extract<Meaning, { role: 'bound' }>;
type CompareMeaning = Extract<Meaning, { role: 'compare' }>;

/** Words after which a bound word that stands behind its number is complete: `4 minutes minimum at 132 °C`. */
const afterTrailingWord: ReadonlySet<string> = new Set(
  `at in with and or for per on by of each , . ; : ) ] | bei in mit und oder pro je à en avec et ou par dans pour chaque then puis dann`.split(
    ' ',
  ),
);
/** Words that may stand between a comparison and its number: `above a temperature of 140 °C`. */
const lightWords: ReadonlySet<string> = new Set(
  `a an the of at for to is temperature temperatures value values ph einer eine einem einen der die das von temperatur temperaturen wert
  une un le la de du des température températures valeur à d' l' pendant während lang is total max maximum limit limits ± approx about . ( =`.split(
    /\s+/,
  ),
);
const measureNouns: ReadonlySet<string> = new Set(
  'magnification pressure temperature drying exposure vergrößerung druck temperatur trocknung grossissement pression température séchage'.split(
    ' ',
  ),
);
/** A bound word reaches over so many words to its number: `minimum dry time in the chamber 30 minutes`. */
const reachOfBound = 6;
const reachOfComparison = 4;

/**
 * Gives each bound word to the number it limits, and only to that one (its range partner and second unit included). Returns the negation
 * words that were used up in turning a comparison round (`do not exceed 140 °C` forbids nothing but going above).
 */
export function bindBounds(text: ReadingText, drafts: readonly NumberDraft[]): ReadonlySet<Hit> {
  const used = new Set<Hit>();
  for (const hit of text.hits) {
    if (isInsideRange(drafts, hit)) continue;
    const joined = comparisonIn(text, drafts, hit);
    if (joined !== undefined) bindComparison(text, drafts, hit, joined, used);
    else if (hit.meaning.role === 'bound') bindWord(text, drafts, hit, hit.meaning);
    else if (hit.meaning.role === 'compare') bindComparison(text, drafts, hit, hit.meaning, used);
  }
  spreadBounds(drafts);
  return used;
}

/** `below 25 °C and below 70 %`: with a number right behind it the phrase says nothing of the number before it. */
function comparisonIn(text: ReadingText, drafts: readonly NumberDraft[], hit: Hit): CompareMeaning | undefined {
  const { meaning } = hit;
  if (meaning.role !== 'bound' || meaning.place !== 'after-number') return undefined;
  if (!/^(?:above|over|below|under)$/.test(tokenText(text, hit.last))) return undefined;
  if (!drafts.some((draft) => draft.first === hit.last + 1 && !draft.isReference)) return undefined;
  return { role: 'compare', side: meaning.bound === 'at_least' ? 'over' : 'under', place: 'word' };
}

/** The `bis zu` of `3 bis zu 18 min` joins the range and bounds nothing. */
function isInsideRange(drafts: readonly NumberDraft[], hit: Hit): boolean {
  return drafts.some((draft, index) => {
    const partner = draft.range?.partner === index + 1 ? drafts[index + 1] : undefined;
    return partner !== undefined && draft.last < hit.first && hit.last < partner.first;
  });
}

function bindWord(text: ReadingText, drafts: readonly NumberDraft[], hit: Hit, meaning: BoundMeaning): void {
  const before = numberJustBefore(text, drafts, hit, meaning.fits);
  const after = numberAfter(text, drafts, hit, reachOfBound);
  const trails = before !== undefined && (after === undefined || endsAfterWord(text, hit));
  if (meaning.place === 'after-number') setBound(text, before, meaning.bound, hit);
  else if (meaning.place === 'before-number') setBound(text, after ?? before, meaning.bound, hit);
  else setBound(text, trails ? before : after, meaning.bound, hit);
}

/** True when nothing that could be a noun of measure follows: `4 minutes minimum.` but not `4 minutes, minimum dry time 30 minutes`. */
function endsAfterWord(text: ReadingText, hit: Hit): boolean {
  if (tokenText(text, hit.first - 1) === ',') return false;
  let next = hit.last + 1;
  if (tokenText(text, next) === '.') next++;
  return (
    next >= text.tokens.length ||
    isGap(text, next - 1, next) ||
    afterTrailingWord.has(tokenText(text, next)) ||
    text.sentences[next] !== text.sentences[hit.last]
  );
}

/** The number right before a word; a word of time or temperature looks further back for a number of its kind. */
function numberJustBefore(
  text: ReadingText,
  drafts: readonly NumberDraft[],
  hit: Hit,
  fits: Dimension | undefined,
): NumberDraft | undefined {
  for (let index = drafts.length - 1; index >= 0; index--) {
    const draft = drafts[index];
    if (draft === undefined || draft.last >= hit.first || draft.isReference) continue;
    if (draft.sentence !== text.sentences[hit.first] || isGap(text, hit.first - 1, hit.first)) return undefined;
    if (fits !== undefined) {
      if (hasDimension(draft, fits)) return draft;
      if (draft.units.length > 0) continue;
    }
    return isOnlyPunctuation(text, draft.last + 1, hit.first) ? mainOf(drafts, draft) : undefined;
  }
  return undefined;
}

/** A word after a tolerance or a second unit speaks of the number itself. */
function mainOf(drafts: readonly NumberDraft[], draft: NumberDraft): NumberDraft {
  const owner = draft.tolerance?.of;
  return owner === undefined ? draft : (drafts[owner] ?? draft);
}

/** A wide gap or an upright line between the cells of a row: `20   max. 110`. */
function isGap({ quote, tokens }: ReadingText, before: number, behind: number): boolean {
  const [left, right] = [tokens[before], tokens[behind]];
  if (left === undefined || right === undefined) return false;
  return left.text === '|' || right.text === '|' || /\t|\s{3}/.test(quote.slice(left.end, right.start));
}

function hasDimension(draft: NumberDraft, dimension: Dimension): boolean {
  return draft.units.some((unit) => unit.dimension === dimension);
}

/** `20x magnification or more`: the noun of what is measured belongs to the number. */
function isOnlyPunctuation(text: ReadingText, from: number, to: number): boolean {
  const first = measureNouns.has(tokenText(text, from)) ? from + 1 : from;
  for (let at = first; at < to; at++) if (!'(),[]-–.'.includes(tokenText(text, at))) return false;
  return to - first <= 2;
}

/** The nearest number after a word in its sentence, over at most `reach` words and no comma, bracket or other bound word. */
function numberAfter(
  text: ReadingText,
  drafts: readonly NumberDraft[],
  hit: Hit,
  reach: number,
): NumberDraft | undefined {
  const draft = drafts.find((one) => one.first > hit.last && !one.isReference);
  if (draft === undefined || draft.sentence !== text.sentences[hit.last]) return undefined;
  let words = 0;
  for (let at = hit.last + 1; at < draft.first; at++) {
    const token = text.tokens[at];
    if (token === undefined || token.text === ')' || token.text === '|') return undefined;
    if (token.text === ',' && !isHead(text, at, draft) && !isAdverbComma(hit, at)) return undefined;
    if (token.kind === 'word' && ++words > reach) return undefined;
  }
  return hasOtherBound(text, hit, draft) ? undefined : draft;
}

/** `minimum exposure time, pre-vacuum: 4 minutes`: the comma belongs to a head that a colon ends right before the number. */
function isHead(text: ReadingText, comma: number, draft: NumberDraft): boolean {
  return tokenText(text, draft.first - 1) === ':' && draft.first - comma <= 5;
}

/** `Typically, 15 minutes`. */
function isAdverbComma(hit: Hit, comma: number): boolean {
  return comma === hit.last + 1 && hit.meaning.role === 'bound' && hit.meaning.bound === 'about';
}

/** `up to a maximum of 10` agrees with itself; `at least ... up to 10` does not reach over. */
function hasOtherBound(text: ReadingText, hit: Hit, draft: NumberDraft): boolean {
  return text.hits.some((other) => {
    if (other.first <= hit.last || other.last >= draft.first || other.meaning.role !== 'bound') return false;
    return (
      hit.meaning.role !== 'bound' || (other.meaning.bound !== hit.meaning.bound && other.meaning.bound !== 'about')
    );
  });
}

function bindComparison(
  text: ReadingText,
  drafts: readonly NumberDraft[],
  hit: Hit,
  meaning: CompareMeaning,
  used: Set<Hit>,
): void {
  const target = numberCompared(text, drafts, hit, meaning);
  if (target === undefined || isLookedThrough(target, meaning)) return;
  const negation = negationOver(text, hit, target);
  if (negation?.hit !== undefined && negation.isUsedUp) used.add(negation.hit);
  const isOver = meaning.side === 'over';
  const bound = isOver === (negation === undefined) ? 'at_least' : 'at_most';
  setBound(text, target, bound, hit, negation?.hit);
  if (meaning.place === 'verb' && target.first > hit.last)
    for (const other of listedWith(text, drafts, target)) setBound(text, other, bound, hit, negation?.hit);
}

/** `inspect under 4x magnification`: what it lies under is a glass. */
function isLookedThrough(target: NumberDraft, { side, place }: CompareMeaning): boolean {
  return side === 'under' && place === 'word' && hasDimension(target, 'magnification');
}

/** `do not exceed 140 °C, 100 uses or pH 11`: the verb holds for a list that `or` ends. */
function listedWith(text: ReadingText, drafts: readonly NumberDraft[], target: NumberDraft): readonly NumberDraft[] {
  const listed: NumberDraft[] = [];
  let [last, isEnded] = [target, false];
  for (const draft of drafts.slice(drafts.indexOf(target) + 1)) {
    const between = Array.from({ length: draft.first - last.last - 1 }, (_none, at) =>
      tokenText(text, last.last + 1 + at),
    );
    const joins = between.filter((word) => listJoins.has(word));
    if (joins.length === 0 || between.length > 3 || draft.sentence !== target.sentence || isEnded) break;
    isEnded = joins.some((word) => word !== ',');
    listed.push(draft);
    last = draft;
  }
  return isEnded ? listed : [];
}

const listJoins: ReadonlySet<string> = new Set([',', 'or', 'nor', 'oder', 'noch', 'ou', 'ni']);

function numberCompared(
  text: ReadingText,
  drafts: readonly NumberDraft[],
  hit: Hit,
  meaning: CompareMeaning,
): NumberDraft | undefined {
  const after = numberAfter(text, drafts, hit, reachOfComparison);
  if (meaning.place === 'word')
    return after !== undefined && isLightBetween(text, hit.last + 1, after.first) ? after : undefined;
  return after ?? lastBefore(text, drafts, hit);
}

function isLightBetween(text: ReadingText, from: number, to: number): boolean {
  for (let at = from; at < to; at++) if (!lightWords.has(tokenText(text, at))) return false;
  return true;
}

/** `140 °C must not be exceeded`: the last level before the verb in its sentence. */
function lastBefore(text: ReadingText, drafts: readonly NumberDraft[], hit: Hit): NumberDraft | undefined {
  for (let index = drafts.length - 1; index >= 0; index--) {
    const draft = drafts[index];
    if (draft === undefined || draft.last >= hit.first || draft.isReference) continue;
    const near = draft.sentence === text.sentences[hit.first] && hit.first - draft.last <= 8;
    return near ? mainOf(drafts, draft) : undefined;
  }
  return undefined;
}

function setBound(
  text: ReadingText,
  draft: NumberDraft | undefined,
  bound: ProseBound,
  hit: Hit,
  negation?: Hit,
): void {
  if (draft === undefined) return;
  const isWeaker = bound === 'about' && draft.bound !== 'none' && draft.bound !== 'between';
  if (isWeaker) return;
  draft.bound = bound;
  draft.boundSpan = spanOf(
    text,
    Math.min(hit.first, negation?.first ?? hit.first),
    Math.max(hit.last, negation?.last ?? hit.last),
  );
}

function spanOf(text: ReadingText, first: number, last: number): Span {
  return span(text.tokens[first]?.start ?? 0, text.tokens[last]?.end ?? 0);
}

/** A bound holds for the whole range and for the second unit. */
function spreadBounds(drafts: readonly NumberDraft[]): void {
  for (const draft of drafts) {
    if (draft.boundSpan === undefined) continue;
    const range = draft.range?.partner;
    for (const index of [range, draft.pair, range === undefined ? undefined : drafts[range]?.pair]) {
      const other = index === undefined ? undefined : drafts[index];
      if (other === undefined || other.boundSpan !== undefined) continue;
      other.bound = draft.bound;
      other.boundSpan = draft.boundSpan;
    }
  }
}
