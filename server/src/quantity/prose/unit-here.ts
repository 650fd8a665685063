import { Remembered } from '../../base/remembered.ts';
import type { Unit } from '../unit-list.ts';
import { readUnitAt, spellingsFrom, type UnitReading } from '../unit-reading.ts';
import { isDigit, isLetter, isSpace, isSuperscript } from './characters.ts';
import type { Language } from './token.ts';

/** The unit printed after a number: what it may be, and where its text lies. */
export interface UnitHere {
  readonly units: readonly Unit[];
  readonly start: number;
  readonly end: number;
}

/** Spellings that `readUnitAt` knows and that are hardly ever a unit beside a number in a sentence. */
const neverUnits: ReadonlySet<string> = new Set(['at']);
/** Words that are a unit only when no other word follows them: `2 in.` but not `3 in the basket`. */
const endOnlyUnits: ReadonlySet<string> = new Set(['in', 'in.', 'exposure']);

/** The unit that stands at `offset` or after the space or hyphen there (`4 min`, `4min`, `4-minute`). A glued footnote sign is left out. */
export function unitHere(quote: string, offset: number, language: Language): UnitHere | undefined {
  let start = offset;
  while (start < quote.length && isSpace(quote.charCodeAt(start))) start++;
  if (start === offset && quote.charCodeAt(start) === 45 && isLetter(quote.charCodeAt(start + 1))) start++;
  if (start >= quote.length || isDigit(quote.charCodeAt(start))) return undefined;
  const reading = readUnitQuickly(quote, start);
  if (reading === undefined) return undefined;
  const end = start + reading.length;
  if (!isPlausible(quote, start, end, language)) return undefined;
  return { units: unitsIn(reading, language), start, end };
}

/** Units of one printed word, remembered: a library repeats a few hundred of them. The answer never depends on it. */
const unitsOfWords = new Remembered(5000, (word: string) => readUnitAt(word, 0) ?? withoutFootnote(word, 0));
const longestWord = 40;

/** Spellings of one first letter that go on after a space (`mg/L as CaCO3`, `bar (g)`): first word to the second words it may have, in lower case. */
const longUnits = new Remembered(200, (letter: string): ReadonlyMap<string, ReadonlySet<string>> => {
  const long = new Map<string, Set<string>>();
  for (const { text } of spellingsFrom(letter)) {
    const [first, second] = text.toLowerCase().split(' ');
    if (first === undefined || second === undefined) continue;
    const seconds = long.get(first) ?? new Set();
    long.set(first, seconds.add(withoutMarks(second)));
  }
  return long;
});

function withoutMarks(word: string): string {
  return word.replace(/^[([]+|[.,;:)\]]+$/g, '');
}

function wordEnd(quote: string, start: number): number {
  let end = start;
  while (end < quote.length && end - start < longestWord && !isSpace(quote.charCodeAt(end))) end++;
  return end;
}

function readUnitQuickly(quote: string, start: number): UnitReading | undefined {
  const end = wordEnd(quote, start);
  const word = quote.slice(start, end);
  const lower = word.toLowerCase();
  const seconds = longUnits.of(lower.charAt(0)).get(lower);
  if (seconds?.has(withoutMarks(quote.slice(end + 1, wordEnd(quote, end + 1)).toLowerCase())) === true) {
    return readUnitAt(quote, start);
  }
  return unitsOfWords.of(word);
}

/** `min²`, `min2`: the unit ends where the raised or lowered digit begins. */
function withoutFootnote(quote: string, start: number): UnitReading | undefined {
  let at = start;
  while (at < quote.length && at - start < 20 && isLetter(quote.charCodeAt(at))) at++;
  if (at === start) return undefined;
  const code = quote.charCodeAt(at);
  return isDigit(code) || isSuperscript(code) ? readUnitAt(quote.slice(start, at), 0) : undefined;
}

function isPlausible(quote: string, start: number, end: number, language: Language): boolean {
  const text = quote.slice(start, end);
  if (neverUnits.has(text) || (text === 'an' && language !== 'fr')) return false;
  const next = quote.charCodeAt(end);
  if (end - start === 1 && (next === 39 || next === 0x2019)) return false;
  if (!endOnlyUnits.has(text)) return true;
  return !wordFollows(quote, end);
}

function wordFollows(quote: string, end: number): boolean {
  let at = end;
  while (at < quote.length && isSpace(quote.charCodeAt(at))) at++;
  const code = quote.charCodeAt(at);
  return at < quote.length && (isLetter(code) || isDigit(code));
}

/** Candidates of the quote's language. A difference of temperatures is chosen later, by what stands around the number. */
function unitsIn(reading: UnitReading, language: Language): Unit[] {
  const units: Unit[] = [];
  for (const candidate of reading.candidates) {
    if (candidate.language === undefined || candidate.language === language) units.push(candidate.unit);
  }
  return units.length > 0 ? units : reading.candidates.map((candidate) => candidate.unit);
}
