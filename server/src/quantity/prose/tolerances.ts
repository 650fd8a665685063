import type { NumberDraft, ReadingText } from './draft.ts';
import { tokenText } from './draft.ts';

/**
 * Marks tolerances (`±3 °C`, `+3/-0 °C`, `plus or minus 3 K`) and other differences (`within 3 °C of`, `a deviation of 3 °C`), and leaves
 * every number with the units that fit: differences measure in the difference dimension, levels never do.
 */
export function markDifferences(text: ReadingText, drafts: readonly NumberDraft[]): void {
  const differenceEnds = new Set<number>();
  for (const hit of text.hits) if (hit.meaning.role === 'difference') differenceEnds.add(hit.last);
  for (const [index, draft] of drafts.entries()) {
    if (draft.isReference) continue;
    if (hasToleranceSign(text, draft)) markTolerance(text, drafts, index);
    else if (isMeasuredAsDifference(text, draft, differenceEnds)) draft.isDifference = true;
    else if (isSecondUnitOfDifference(text, drafts[index - 1], draft)) draft.isDifference = true;
    keepFittingUnits(draft);
  }
}

function hasToleranceSign(text: ReadingText, draft: NumberDraft): boolean {
  const before = tokenText(text, draft.first - 1);
  if (before === '±') return true;
  const second = tokenText(text, draft.first - 2);
  if (before === '-' && second === '/')
    return isPlus(text, draft.first - 3) || isPlus(text, draft.first - 4) || isSplitPlus(text, draft);
  if (before === '+') return measuresTemperature(draft) || tokenText(text, draft.last + 1) === '/' || second === '-';
  if (before === 'minus') return second === 'or' || second === 'plus' || second === 'oder' || second === 'ou';
  return before === 'moins' && (second === 'ou' || second === 'plus');
}

function isPlus(text: ReadingText, at: number): boolean {
  return tokenText(text, at) === '+';
}

/** `+3 °C/-0 °C`: the plus stands a few tokens back. */
function isSplitPlus(text: ReadingText, draft: NumberDraft): boolean {
  for (let at = draft.first - 5; at >= 0 && at >= draft.first - 8; at--) if (isPlus(text, at)) return true;
  return false;
}

function measuresTemperature(draft: NumberDraft): boolean {
  return draft.units.some((unit) => unit.dimension === 'temperature');
}

function markTolerance(text: ReadingText, drafts: readonly NumberDraft[], index: number): void {
  const draft = drafts[index];
  if (draft === undefined) return;
  draft.isDifference = true;
  const of = ownerOf(drafts, index);
  const side = sideOf(text, draft);
  draft.tolerance = of === undefined ? { side } : { of, side };
}

function sideOf(text: ReadingText, draft: NumberDraft): 'both' | 'plus' | 'minus' {
  const sign = tokenText(text, draft.first - 1);
  if (sign === '+') return 'plus';
  return sign === '-' && tokenText(text, draft.first - 3) !== '+' ? 'minus' : 'both';
}

/** The nearest earlier number that is no tolerance itself and stands close by. */
function ownerOf(drafts: readonly NumberDraft[], index: number): number | undefined {
  const draft = drafts[index];
  for (let at = index - 1; at >= 0; at--) {
    const owner = drafts[at];
    if (owner === undefined || draft === undefined || owner.isReference || owner.sentence !== draft.sentence)
      return undefined;
    if (!owner.isDifference) return draft.first - owner.last <= 12 ? at : undefined;
  }
  return undefined;
}

function isMeasuredAsDifference(text: ReadingText, draft: NumberDraft, ends: ReadonlySet<number>): boolean {
  if (!measuresTemperature(draft) || hasOwnTolerance(text, draft)) return false;
  for (let at = draft.first - 1; at >= 0 && at >= draft.first - 4; at--) {
    if (ends.has(at)) return true;
    const word = tokenText(text, at);
    if (word === 'within') return tokenText(text, draft.last + 1) === 'of' || tokenText(text, draft.last + 1) === '(';
    if (text.tokens[at]?.kind === 'number') return false;
  }
  return false;
}

/** `a band of 134 °C +3/-0 K`: what has a tolerance is a level. */
function hasOwnTolerance(text: ReadingText, draft: NumberDraft): boolean {
  const next = tokenText(text, draft.last + 1);
  return next === '±' || next === '+';
}

/** The second unit of a difference is a difference, alone in its brackets: `a deviation of 3 °C (5.4 °F)`. */
function isSecondUnitOfDifference(text: ReadingText, before: NumberDraft | undefined, draft: NumberDraft): boolean {
  if (before === undefined || !before.isDifference || draft.first - before.last !== 2) return false;
  return tokenText(text, draft.first - 1) === '(' && tokenText(text, draft.last + 1) === ')';
}

function keepFittingUnits(draft: NumberDraft): void {
  if (draft.units.length < 2) return;
  const unfit = draft.isDifference ? 'temperature' : 'temperature-difference';
  const fit = draft.units.filter((unit) => unit.dimension !== unfit);
  if (fit.length > 0) draft.units = fit;
}
