import { span } from '../../base/span.ts';
import { unitsOf } from '../units.ts';
import type { NumberDraft, ReadingText } from './draft.ts';
import { tokenText } from './draft.ts';
import type { Hit } from './lexicon.ts';
import { type NumberReading, numberReadings } from './number-forms.ts';
import type { Token } from './token.ts';
import { smallerPart, startsClock } from './two-part-times.ts';
import { type UnitHere, unitHere } from './unit-here.ts';

const halves: ReadonlyMap<string, number> = new Map([
  ['½', 0.5],
  ['¼', 0.25],
  ['¾', 0.75],
]);
/** An article that counts one, when a unit of time follows: `eine Minute`. */
const articles: ReadonlySet<string> = new Set(['eine', 'einer', 'une', 'un', 'a', 'an']);
const countedTimes: ReadonlySet<string> = new Set(['minute', 'hour', 'stunde', 'heure']);

/** Every number of the quote, in order, with the unit printed beside it. */
export function draftNumbers(text: ReadingText): NumberDraft[] {
  const drafts: NumberDraft[] = [];
  let hitAt = 0;
  for (let at = 0; at < text.tokens.length; at++) {
    while ((text.hits[hitAt]?.last ?? Infinity) < at) hitAt++;
    const hit = text.hits[hitAt];
    const token = text.tokens[at];
    if (token === undefined) break;
    const draft = asPulses(text, hit?.first === at ? draftOfHit(text, hit) : draftOfToken(text, token, at));
    if (draft !== undefined) {
      drafts.push(draft);
      at = Math.max(at, draft.last);
    } else if (hit?.first === at) at = hit.last;
  }
  return drafts;
}

const vacuumPhases: ReadonlySet<string> = new Set(
  'phase phases phasen fractions fraktionen evacuations evakuierungen impulsions évacuations'.split(' '),
);
const ofVacuum = /vacuum|vakuum|(?:^|-)vide$|evacuat|fraction|fraktion/;

/** `at least three phases`, where the quote speaks of a vacuum: its pulses. */
function asPulses(text: ReadingText, draft: NumberDraft | undefined): NumberDraft | undefined {
  if (draft === undefined || draft.units.length > 0 || !vacuumPhases.has(tokenText(text, draft.last + 1))) return draft;
  if (!text.tokens.some((token) => ofVacuum.test(token.text))) return draft;
  draft.units = unitsOf('count').filter(({ name }) => name === 'pulses');
  draft.unitFrom = 'printed';
  draft.last += 1;
  return draft;
}

function draftOfHit(text: ReadingText, hit: Hit): NumberDraft | undefined {
  const meaning = hit.meaning;
  if (meaning.role === 'number') {
    if (isRepeatedInDigits(text, hit.last)) return undefined;
    return draft(text, hit.first, hit.last, [{ amount: meaning.amount, decimals: 0, how: 'word' }]);
  }
  if (meaning.role !== 'times') return undefined;
  const counted = draft(text, hit.first, hit.last, [{ amount: meaning.amount, decimals: 0, how: 'word' }]);
  counted.units = unitsOf('count').slice(0, 1);
  counted.unitFrom = 'printed';
  return counted;
}

/** `three (3) times`: the digits speak. */
function isRepeatedInDigits(text: ReadingText, last: number): boolean {
  return (
    tokenText(text, last + 1) === '(' && text.tokens[last + 2]?.kind === 'number' && tokenText(text, last + 3) === ')'
  );
}

function draftOfToken(text: ReadingText, token: Token, at: number): NumberDraft | undefined {
  if (token.kind === 'number') return withSmallerUnit(text, draftOfDigits(text, token, at));
  const half = token.kind === 'mark' ? halves.get(token.text) : undefined;
  if (half !== undefined) return draft(text, at, at, [{ amount: half, decimals: 1, how: 'as-printed' }]);
  if (articles.has(token.text) && countedTimes.has(tokenText(text, at + 1)) && text.tokens[at + 1]?.spaced === true) {
    return draft(text, at, at, [{ amount: 1, decimals: 0, how: 'word' }]);
  }
  return undefined;
}

/** `2:30 min`: what stands behind the colon are parts of sixty. */
function draftOfDigits(text: ReadingText, token: Token, at: number): NumberDraft {
  const amount = startsClock(text, at);
  const plain = draft(text, at, at, numberReadings(token.text, text.language));
  if (amount === undefined) return plain;
  const clock = draft(text, at, at + 2, [amount]);
  return clock.units.some(({ dimension }) => dimension === 'time') ? clock : plain;
}

/** `3 minutes 30 seconds` is one time. */
function withSmallerUnit(text: ReadingText, own: NumberDraft): NumberDraft {
  const part = smallerPart(text, own);
  if (part === undefined) return own;
  const { amount, last } = part;
  const end = text.tokens[last]?.end ?? own.span.end;
  return { ...own, span: span(own.span.start, end), amount: amount.amount, readings: [amount], last };
}

function draft(text: ReadingText, first: number, last: number, readings: readonly NumberReading[]): NumberDraft {
  const start = text.tokens[first]?.start ?? 0;
  let endToken = last;
  const raised = text.tokens[last + 1];
  const glued = raised !== undefined && raised.kind === 'raised' && !raised.spaced;
  if (glued) endToken++;
  const numberEnd = text.tokens[endToken]?.end ?? start;
  const unit = unitFor(text, endToken, numberEnd);
  const end = unit?.end ?? numberEnd;
  const likeliest = readings[0];
  return {
    span: span(start, end),
    numberSpan: span(start, numberEnd),
    amount: likeliest?.amount ?? Number.NaN,
    readings: glued ? [...readings, ...gluedReadings(text, last, raised)] : readings,
    units: unit?.units ?? [],
    quantities: [],
    unitFrom: unit === undefined ? 'none' : 'printed',
    written: likeliest?.how === 'word' ? 'word' : 'digits',
    bound: 'none',
    isDifference: false,
    isReference: readings.length === 0,
    sentence: text.sentences[first] ?? 0,
    first,
    last: lastTokenBefore(text, end, endToken),
  };
}

/** After a bracketed repeat (`three (3) times`) the unit stands behind the bracket. */
function unitFor(text: ReadingText, last: number, numberEnd: number): UnitHere | undefined {
  const bracketed = tokenText(text, last + 1) === ')' && tokenText(text, last - 1) === '(';
  const here = unitHere(text.quote, numberEnd, text.language);
  if (here !== undefined || !bracketed) return here;
  const isRepeat = text.hits.some((hit) => hit.last === last - 2 && hit.meaning.role === 'number');
  return isRepeat ? unitHere(text.quote, text.tokens[last + 1]?.end ?? numberEnd, text.language) : undefined;
}

/** `4²` to a hasty eye is 42. */
function gluedReadings(text: ReadingText, last: number, raised: Token): readonly NumberReading[] {
  const glued = Number(`${tokenText(text, last)}${raised.text}`);
  return Number.isFinite(glued) ? [{ amount: glued, decimals: 0, how: 'footnote-glued' }] : [];
}

function lastTokenBefore(text: ReadingText, end: number, from: number): number {
  let last = from;
  while ((text.tokens[last + 1]?.start ?? Infinity) < end) last++;
  return last;
}
