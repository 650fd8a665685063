import { unitsOf } from '../units.ts';
import type { NumberDraft, ReadingText } from './draft.ts';
import { tokenText } from './draft.ts';

/** Where a table head names the unit of time: `Exposure (min): 4`, `time in minutes`. */
const headMarks: ReadonlySet<string> = new Set([')', ':', ']']);

/**
 * Decides whether `min` beside a number means minutes or minimum. Behind a number without another unit it is minutes; before a number that
 * has a unit it is minimum; before a bare number nobody can tell.
 */
export function readMinTokens(text: ReadingText, drafts: readonly NumberDraft[]): void {
  for (const [at, token] of text.tokens.entries()) {
    if (token.text !== 'min') continue;
    const owner = drafts.find((draft) => draft.first <= at && at <= draft.last);
    if (owner === undefined) readLoneMin(text, drafts, at);
    else if (!owner.isReference) owner.minToken = isSecondTimeUnit(text, owner) ? 'ambiguous' : 'minutes';
  }
}

/** `(minutes): 4 min.`: the head has named the unit, so the second may be a bound. */
function isSecondTimeUnit(text: ReadingText, owner: NumberDraft): boolean {
  if (text.quote.charAt(owner.span.end - 1) !== '.' && tokenText(text, owner.last + 1) !== '.') return false;
  return text.tokens.some(
    (token, at) =>
      at < owner.first &&
      (token.text === 'minutes' || token.text === 'minuten') &&
      headMarks.has(tokenText(text, at + 1)) &&
      text.sentences[at] === owner.sentence,
  );
}

function readLoneMin(text: ReadingText, drafts: readonly NumberDraft[], at: number): void {
  const next = drafts.find((draft) => draft.first > at && !draft.isReference);
  const previous = drafts.filter((draft) => draft.last < at && !draft.isReference).at(-1);
  if (next !== undefined && isBefore(text, at, next)) readBefore(text, next, at);
  else if (previous !== undefined && isBehind(text, previous, at)) {
    previous.minToken = previous.units.length > 0 ? 'minimum' : 'ambiguous';
  }
}

function isBefore(text: ReadingText, at: number, next: NumberDraft): boolean {
  return text.sentences[at] === next.sentence && next.first - at <= 6;
}

function isBehind(text: ReadingText, previous: NumberDraft, at: number): boolean {
  return text.sentences[at] === previous.sentence && at - previous.last <= 2;
}

function readBefore(text: ReadingText, next: NumberDraft, at: number): void {
  if (next.unitFrom !== 'none') {
    if (next.minToken !== 'ambiguous') next.minToken = 'minimum';
    return;
  }
  const isHead = headMarks.has(tokenText(text, at + 1)) && '(['.includes(tokenText(text, at - 1));
  next.minToken = isHead ? 'minutes' : 'ambiguous';
  next.units = unitsOf('time').filter((unit) => unit.name === 'min');
  if (!isHead) return;
  next.unitFrom = 'shared';
  if (next.boundSpan?.start !== text.tokens[at]?.start) return;
  next.bound = 'none';
  delete next.boundSpan;
}
