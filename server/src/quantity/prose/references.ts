import type { NumberDraft, ReadingText } from './draft.ts';
import { tokenText } from './draft.ts';

const ordinals: ReadonlySet<string> = new Set(['st', 'nd', 'rd', 'th', 'er', 'ère', 'e', 'ème', 'te', 'ten', 'ter']);
/** Marks that may stand between a reference word and its number: `Fig. 3`, `REF: 45-1`, `n° 4`. */
const bridges: ReadonlySet<string> = new Set(['.', ':', '#', '-', '°', '/', '(', 'no', 'nr']);
/** Listed numbers share the reference of the first: `steps 2, 3 and 4`. */
const listSigns: ReadonlySet<string> = new Set([
  ',',
  '-',
  '/',
  'and',
  'or',
  'to',
  'und',
  'oder',
  'bis',
  'et',
  'ou',
  'à',
]);

/** Marks the numbers that count or measure nothing: page, figure, standard, catalogue and list numbers, dates, powers of ten. */
export function markReferences(text: ReadingText, drafts: readonly NumberDraft[]): void {
  const namedAt = referenceWords(text);
  let before: NumberDraft | undefined;
  for (const draft of drafts) {
    if (isReference(text, draft, namedAt) || (before !== undefined && continuesList(text, before, draft))) {
      draft.isReference = true;
      draft.units = [];
      draft.unitFrom = 'none';
    }
    before = draft;
  }
}

function referenceWords(text: ReadingText): ReadonlySet<number> {
  const ends = new Set<number>();
  for (const hit of text.hits) {
    if (hit.meaning.role === 'reference' && isWrittenAsName(text, hit.last)) ends.add(hit.last);
    if (hit.meaning.role === 'negation' && tokenText(text, hit.last) === 'no' && tokenText(text, hit.last + 1) === '.')
      ends.add(hit.last);
  }
  return ends;
}

/** `EN 285` names a standard; French `en 3 minutes` does not. Single letters name a page only with a point. */
function isWrittenAsName(text: ReadingText, at: number): boolean {
  const token = text.tokens[at];
  if (token === undefined) return false;
  if (token.text === 'en' || token.text === 'art')
    return text.quote.charAt(token.start) !== token.text.charAt(0) || token.text === 'art';
  return token.text.length > 1 || tokenText(text, at + 1) === '.' || tokenText(text, at + 1) === '°';
}

function isReference(text: ReadingText, draft: NumberDraft, namedAt: ReadonlySet<number>): boolean {
  if (draft.isReference) return true;
  if (draft.written === 'word') return false;
  const bare = draft.unitFrom === 'none' || isGluedLetter(text, draft);
  if (isPowerOfTen(text, draft) || isLogReduction(text, draft) || isParagraph(text, draft)) return true;
  if (!bare) return false;
  return (
    followsName(text, draft, namedAt) ||
    isCode(text, draft) ||
    isOrdinal(text, draft) ||
    isListNumber(text, draft) ||
    isRatio(text, draft) ||
    isYear(text, draft)
  );
}

/** `316L`: a letter glued to a number is a unit only where nothing names the number. */
function isGluedLetter(text: ReadingText, draft: NumberDraft): boolean {
  return draft.span.end - draft.numberSpan.end === 1 && text.tokens[draft.last]?.kind === 'word';
}

function followsName(text: ReadingText, draft: NumberDraft, namedAt: ReadonlySet<number>): boolean {
  for (let at = draft.first - 1; at >= 0 && at >= draft.first - 4; at--) {
    if (namedAt.has(at)) return true;
    if (!bridges.has(tokenText(text, at)) && !isStandardPart(text, at)) return false;
  }
  return false;
}

/** `DIN EN ISO 17664-1`, `ANSI/AAMI ST79`: names run on. */
function isStandardPart(text: ReadingText, at: number): boolean {
  const token = text.tokens[at];
  return token?.kind === 'number' && tokenText(text, at + 1) === '-' && text.tokens[at + 1]?.spaced === false;
}

/** `DW-3301`, `S1-pv132-4-30`: letters and numbers in one string. */
function isCode(text: ReadingText, draft: NumberDraft): boolean {
  if (draft.unitFrom !== 'none') return false;
  let at = draft.first;
  while (at > 0 && text.tokens[at]?.spaced === false && '-/.'.includes(tokenText(text, at - 1))) {
    const part = text.tokens[at - 2];
    if (part === undefined || text.tokens[at - 1]?.spaced === true) return false;
    if (part.kind === 'word') return true;
    at -= 2;
  }
  const next = text.tokens[draft.last + 1];
  return next?.kind === 'word' && !next.spaced && next.text !== 'x';
}

function isOrdinal(text: ReadingText, draft: NumberDraft): boolean {
  const next = text.tokens[draft.last + 1];
  return next !== undefined && !next.spaced && ordinals.has(next.text);
}

/** `1. Rinse`, `2) Dry`: the number opens its sentence and a mark follows. */
function isListNumber(text: ReadingText, draft: NumberDraft): boolean {
  const opens = draft.first === 0 || text.sentences[draft.first - 1] !== draft.sentence;
  const mark = tokenText(text, draft.last + 1);
  return opens && (mark === ')' || (mark === '.' && draft.last + 2 < text.tokens.length));
}

/**
 * `5.4 Move the jaws`, `5.3 Pass a brush`: the number of a paragraph, though what follows may be spelled as a unit of what is counted. Nothing is
 * counted in fractions.
 */
function isParagraph({ quote }: ReadingText, { span, units }: NumberDraft): boolean {
  return span.start === 0 && units.every(({ dimension }) => dimension === 'count') && paragraph.test(quote);
}

const paragraph = /^\d{1,2}(?:\.\d{1,2}){1,3}\.?\s+\p{Lu}\p{Ll}/u;

/** A colon glued between two numbers: `1:200`, `12:30`. */
function isRatio(text: ReadingText, draft: NumberDraft): boolean {
  return isGluedColon(text, draft.last + 1) || isGluedColon(text, draft.first - 1);
}

function isGluedColon(text: ReadingText, at: number): boolean {
  if (tokenText(text, at) !== ':' || text.tokens[at]?.spaced === true || text.tokens[at + 1]?.spaced === true)
    return false;
  return text.tokens[at - 1]?.kind === 'number' && text.tokens[at + 1]?.kind === 'number';
}

function isYear(text: ReadingText, draft: NumberDraft): boolean {
  return draft.last === draft.first && /^(?:19|20)\d\d$/.test(tokenText(text, draft.first));
}

/** `10^-6`, `10⁻⁶`, `10-6` after "SAL": a power of ten, both its numbers. */
function isPowerOfTen(text: ReadingText, draft: NumberDraft): boolean {
  const after = text.tokens[draft.first + 1];
  if (tokenText(text, draft.first) === '10' && after !== undefined) {
    if (after.text === '^' || (after.kind === 'raised' && draft.unitFrom === 'none')) return true;
    if (after.text === '-' && !after.spaced && tokenText(text, draft.first + 2) === '6')
      return nearSal(text, draft.first);
  }
  const before = tokenText(text, draft.first - 1);
  if (before === '^') return true;
  if (before !== '-') return false;
  const base = draft.first - 2;
  if (tokenText(text, base) === '^') return true;
  return tokenText(text, base) === '10' && tokenText(text, draft.first) === '6' && nearSal(text, base);
}

function nearSal(text: ReadingText, at: number): boolean {
  return text.tokens
    .slice(Math.max(0, at - 6), at + 7)
    .some((token) => token.text === 'sal' || token.text.startsWith('log'));
}

function isLogReduction(text: ReadingText, draft: NumberDraft): boolean {
  for (let at = draft.last + 1; at <= draft.last + 2; at++) if (tokenText(text, at).startsWith('log')) return true;
  return tokenText(text, draft.first - 1) === 'log' || tokenText(text, draft.first - 1) === 'sal';
}

function continuesList(text: ReadingText, before: NumberDraft, draft: NumberDraft): boolean {
  if (!before.isReference || draft.unitFrom !== 'none' || draft.written === 'word') return false;
  if (draft.first === before.last + 1) return false;
  for (let at = before.last + 1; at < draft.first; at++) if (!listSigns.has(tokenText(text, at))) return false;
  return draft.first - before.last <= 3;
}
