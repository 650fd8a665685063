import type { Dimension } from '../quantity.ts';
import type { Unit } from '../unit-list.ts';
import { toBase, unitsOf } from '../units.ts';
import type { NumberDraft, ReadingText } from './draft.ts';
import { tokenText } from './draft.ts';

/** Words and marks that may stand between two numbers of one list or range. */
const listSigns: ReadonlySet<string> = new Set([
  '-',
  ',',
  '/',
  '…',
  '~',
  'to',
  'and',
  'or',
  'bis',
  'zu',
  'und',
  'oder',
  'à',
  'et',
  'ou',
  'through',
  'respectively',
  '.',
  '÷',
]);
const rangeSigns: ReadonlySet<string> = new Set([
  '-',
  '…',
  '~',
  '÷',
  'to',
  'through',
  'bis',
  'à',
  '. . .',
  '. .',
  'bis zu',
  'up to',
  "jusqu' à",
]);
const andWords: ReadonlySet<string> = new Set(['and', 'und', 'et']);
/** French needs the most words between: `le pH de la solution prête à l'emploi doit être compris entre 6 et 8`. */
const reachOfName = 14;
const noUnitWords: ReadonlySet<string> = new Set(['ph', 'a0', 'a₀']);

/** pH and A0 stand before their number, with a few words between at most: `pH between 7 and 10.8`. */
export function unitsBefore(text: ReadingText, drafts: readonly NumberDraft[]): void {
  for (const [index, draft] of drafts.entries()) {
    if (draft.unitFrom !== 'none' || draft.isReference || draft.written === 'word') continue;
    const word = wordBefore(text, drafts, index);
    if (word === undefined || isRangeOfOther(text, draft, drafts[index + 1])) continue;
    draft.units = unitsOf(word === 'ph' ? 'ph' : 'a0').slice(0, 1);
    draft.unitFrom = 'printed';
  }
}

/** `pH 8 - 9, 20 - 45 °C`: the second range has a unit of its own. */
function isRangeOfOther(text: ReadingText, draft: NumberDraft, next: NumberDraft | undefined): boolean {
  return next?.unitFrom === 'printed' && next.units.length > 0 && wordsBetween(text, draft, next) === '-';
}

function wordBefore(text: ReadingText, drafts: readonly NumberDraft[], index: number): string | undefined {
  const draft = drafts[index];
  if (draft === undefined) return undefined;
  for (let at = draft.first - 1; at >= 0 && at >= draft.first - reachOfName; at--) {
    const token = tokenText(text, at);
    // `pH-neutral` says nothing of a number.
    if (token === 'ph' && tokenText(text, at + 1).startsWith('neutral')) return undefined;
    if (noUnitWords.has(token)) return text.sentences[at] === draft.sentence ? token : undefined;
    const before = drafts[index - 1];
    if (before === undefined || at < before.first || before.last < at) continue;
    if (before.units[0]?.name !== '' || !onlyListSigns(text, before, draft)) return undefined;
    return before.units[0].dimension === 'ph' ? 'ph' : 'a0';
  }
  return undefined;
}

/** Gives a bare number the unit of its neighbour in a list or range: `3-18 min`, `3 or 18 min`, `132 °C to 135`, `pH 7 to 9`. */
export function shareUnits(text: ReadingText, drafts: readonly NumberDraft[]): void {
  for (let index = drafts.length - 2; index >= 0; index--)
    takeUnit(text, drafts[index], drafts[index], drafts[index + 1]);
  for (let index = 1; index < drafts.length; index++) {
    const before = drafts[index - 1];
    const draft = drafts[index];
    if (before === undefined || draft === undefined) continue;
    const between = wordsBetween(text, before, draft);
    if (rangeSigns.has(between) || andWords.has(between)) takeUnit(text, draft, before, draft);
  }
}

function takeUnit(
  text: ReadingText,
  taker: NumberDraft | undefined,
  first: NumberDraft | undefined,
  second: NumberDraft | undefined,
): void {
  if (taker === undefined || first === undefined || second === undefined) return;
  const giver = taker === first ? second : first;
  if (taker.units.length > 0 || taker.isReference || giver.units.length === 0) return;
  if (first.sentence !== second.sentence || !onlyListSigns(text, first, second)) return;
  taker.units = giver.units;
  taker.unitFrom = 'shared';
}

function onlyListSigns(text: ReadingText, first: NumberDraft, second: NumberDraft): boolean {
  const gap = second.first - first.last - 1;
  if (gap < 1 || gap > 6) return false;
  for (let at = first.last + 1; at < second.first; at++) {
    if (!listSigns.has(tokenText(text, at)) && !isBoundWord(text, at)) return false;
  }
  return true;
}

/** `at least 5, at most 30 minutes`: bound words do not break a list. */
function isBoundWord(text: ReadingText, at: number): boolean {
  return text.hits.some((hit) => {
    if (hit.first > at || hit.last < at) return false;
    const { role } = hit.meaning;
    return role === 'bound' || role === 'compare' || role === 'contrast' || role === 'negation';
  });
}

/** Texts of the tokens between two numbers, joined by spaces. */
export function wordsBetween(text: ReadingText, first: NumberDraft, second: NumberDraft): string {
  const gap = second.first - first.last - 1;
  if (gap <= 0 || gap > 4) return gap === 0 ? '' : '?';
  let words = tokenText(text, first.last + 1);
  for (let at = first.last + 2; at < second.first; at++) words += ` ${tokenText(text, at)}`;
  return words;
}

/** Joins the two ends of a range. Their bound is `between` until a bound word says otherwise. */
export function linkRanges(text: ReadingText, drafts: readonly NumberDraft[]): void {
  for (let index = 0; index + 1 < drafts.length; index++) {
    const first = drafts[index];
    const second = drafts[index + 1];
    if (first === undefined || second === undefined || first.range !== undefined) continue;
    if (first.sentence !== second.sentence || sharedDimension(first, second) === undefined) continue;
    if (first.tolerance !== undefined || second.tolerance !== undefined) continue;
    if (!isRange(text, first, second)) continue;
    linkRange(drafts, index, index + 1);
  }
}

function isRange(text: ReadingText, first: NumberDraft, second: NumberDraft): boolean {
  const between = wordsBetween(text, first, second);
  if (rangeSigns.has(between)) return true;
  return andWords.has(between) && isOpenedAsRange(text, first);
}

/** `between 3 and 18`, `zwischen 3 und 18`: the opening word stands shortly before the first number. */
function isOpenedAsRange(text: ReadingText, first: NumberDraft): boolean {
  return text.hits.some(
    (hit) => hit.meaning.role === 'range-open' && hit.last < first.first && first.first - hit.last <= 4,
  );
}

function linkRange(drafts: readonly NumberDraft[], a: number, b: number): void {
  const first = drafts[a];
  const second = drafts[b];
  if (first === undefined || second === undefined) return;
  const dimension = sharedDimension(first, second);
  const inOrder = baseIn(first, dimension) <= baseIn(second, dimension);
  first.range = { part: inOrder ? 'low' : 'high', partner: b };
  second.range = { part: inOrder ? 'high' : 'low', partner: a };
  first.bound = 'between';
  second.bound = 'between';
}

export function sharedDimension(a: NumberDraft, b: NumberDraft): Dimension | undefined {
  for (const unit of a.units) if (b.units.some((other) => other.dimension === unit.dimension)) return unit.dimension;
  return undefined;
}

function baseIn(draft: NumberDraft, dimension: Dimension | undefined): number {
  const unit = unitIn(draft, dimension);
  return unit === undefined ? draft.amount : toBase(draft.amount, unit);
}

export function unitIn(draft: { readonly units: readonly Unit[] }, dimension: Dimension | undefined): Unit | undefined {
  return draft.units.find((unit) => unit.dimension === dimension);
}
