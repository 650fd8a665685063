import { cleanPaste } from './clean-paste.ts';

/** A page made ready for looking up quotes in it. */
export interface SearchPage {
  readonly text: string;
  /** The text without spaces, quotation marks and dashes each in one form: what the layout of a page can't change. */
  readonly letters: string;
  /** Where each of `letters` stands in `text`. */
  readonly places: Uint32Array;
  readonly words: readonly PageWord[];
}

export interface PageWord {
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

const longestPage = 200_000;

export function searchPage(pageText: string): SearchPage {
  const text = pageText.slice(0, longestPage);
  const places = new Uint32Array(text.length);
  let letters = '';
  for (let at = 0; at < text.length; at++) {
    const sign = text[at] ?? '';
    if (isSpace(sign)) continue;
    places[letters.length] = at;
    letters += oneForm.get(sign) ?? sign;
  }
  return { text, letters, places: places.subarray(0, letters.length), words: wordsOf(text) };
}

function isSpace(sign: string): boolean {
  return sign === ' ' || sign === '\n' || sign === '\t' || sign === '\r' || sign === '\f' || sign === '\u00a0';
}

const oneForm: ReadonlyMap<string, string> = new Map([
  ...[...'‘’‚‛′`´'].map((sign) => [sign, "'"] as const),
  ...[...'“”„‟″«»'].map((sign) => [sign, '"'] as const),
  ...[...'–—−‐‑'].map((sign) => [sign, '-'] as const),
]);

function wordsOf(text: string): readonly PageWord[] {
  const words: PageWord[] = [];
  for (const found of text.matchAll(/\S{1,200}/g))
    words.push({ text: plainWord(found[0]), start: found.index, end: found.index + found[0].length });
  return words;
}

function plainWord(word: string): string {
  return word.toLowerCase().replace(/^[^\p{L}\p{N}]{1,20}|[^\p{L}\p{N}°%]{1,20}$/gu, '');
}

/** A quote made ready: its passages (dots that stand for left-out words part it), each as the letters of a page are. */
export type SearchQuote = readonly SearchPage[];

const gap = /\s?(?:\[(?:…|\.{3})\]|\((?:…|\.{3})\)|…|\.{3})\s?/;

export function searchQuote(quote: string): SearchQuote {
  const passages = cleanPaste(quote.slice(0, longestPage)).text.split(gap);
  return passages.map((passage) => searchPage(passage.trim())).filter(({ letters }) => letters !== '');
}

/** True when the page holds every passage of the quote, whole words and whole numbers, in their order. */
export function standsOn(page: SearchPage, quote: SearchQuote): boolean {
  let from = 0;
  for (const { letters } of quote) {
    const at = foundAt(page, letters, from);
    if (at < 0) return false;
    from = at + letters.length;
  }
  return true;
}

/** True when the quote begins on one page and ends on the next, whatever stands between at the foot and head of the pages. */
export function runsOver(page: SearchPage, next: SearchPage, quote: SearchQuote): boolean {
  const [passage] = quote;
  if (passage === undefined || quote.length > 1) return false;
  for (let split = passage.words.length - 2; split >= 2; split--) {
    const end = passage.words[split]?.start ?? 0;
    const first = searchPage(passage.text.slice(0, end)).letters;
    if (foundAt(page, first, 0) < 0) continue;
    return foundAt(next, searchPage(passage.text.slice(end)).letters, 0) >= 0;
  }
  return false;
}

function foundAt(page: SearchPage, letters: string, from: number): number {
  for (let at = page.letters.indexOf(letters, from); at >= 0; at = page.letters.indexOf(letters, at + 1))
    if (isWhole(page, at, letters.length)) return at;
  return -1;
}

/** Not the end of a longer word or number, nor its beginning: "4 minutes" does not stand in "14 minutes" or "2.4 minutes". */
function isWhole({ text, places, letters }: SearchPage, at: number, length: number): boolean {
  const start = places[at] ?? 0;
  const end = places[at + length - 1] ?? 0;
  const before = text.slice(Math.max(0, start - 2), start);
  const after = text.slice(end + 1, end + 3);
  if (isWordSign(letters[at]) && (isWordSign(before.at(-1)) || /\d[.,]$/.test(before))) return false;
  const last = letters[at + length - 1] ?? '';
  if (isWordSign(last) && isWordSign(after[0])) return false;
  return !(/\d/.test(last) && /^[.,]\d/.test(after));
}

function isWordSign(sign: string | undefined): boolean {
  return sign !== undefined && /[\p{L}\p{N}]/u.test(sign);
}

export interface Nearest {
  readonly page: number;
  /** As printed, spaces of the layout taken together. */
  readonly text: string;
  /** How many of the quote's words it shares, 0 to 1. */
  readonly share: number;
}

/** The stretch of as many words as the quote has that shares most words with it; the first of several. `page` counts from 0. */
export function nearestIn(pages: readonly SearchPage[], quote: SearchQuote): Nearest | undefined {
  const wanted = quote.flatMap(({ words }) => words.map(({ text }) => text));
  let best: Nearest | undefined;
  for (const [page, searched] of pages.entries()) {
    const found = bestWindow(searched.words, wanted);
    const share = found === undefined ? 0 : found.shared / wanted.length;
    if (found === undefined || share <= (best?.share ?? 0)) continue;
    const [first, last] = [searched.words[found.at], searched.words[found.at + found.size - 1]];
    const text = searched.text.slice(first?.start ?? 0, last?.end ?? 0).replace(/\s+/g, ' ');
    best = { page, text, share };
  }
  return best;
}

function bestWindow(
  words: readonly PageWord[],
  wanted: readonly string[],
): { at: number; size: number; shared: number } | undefined {
  const size = Math.min(wanted.length, words.length);
  if (size === 0) return undefined;
  const left = new Map<string, number>();
  for (const word of wanted) left.set(word, (left.get(word) ?? 0) + 1);
  let [shared, best, bestAt] = [0, 0, 0];
  for (let end = 0; end < words.length; end++) {
    shared += taken(left, words[end]?.text);
    if (end >= size) shared -= givenBack(left, words[end - size]?.text);
    if (shared > best) [best, bestAt] = [shared, Math.max(0, end - size + 1)];
  }
  return { at: bestAt, size, shared: best };
}

/** 1 when the window's new word is one that the quote still lacks. Counts go below zero for what is there too often. */
function taken(left: Map<string, number>, word: string | undefined): number {
  const count = word === undefined ? undefined : left.get(word);
  if (word === undefined || count === undefined) return 0;
  left.set(word, count - 1);
  return count > 0 ? 1 : 0;
}

function givenBack(left: Map<string, number>, word: string | undefined): number {
  const count = word === undefined ? undefined : left.get(word);
  if (word === undefined || count === undefined) return 0;
  left.set(word, count + 1);
  return count >= 0 ? 1 : 0;
}

/** True when two texts differ in the numbers they hold, however often and in whatever order. */
export function numbersDiffer(one: string, other: string): boolean {
  return numbersIn(one).join(' ') !== numbersIn(other).join(' ');
}

function numbersIn(text: string): readonly string[] {
  return (text.match(/\d{1,20}(?:[.,]\d{1,20}){0,5}/g) ?? []).sort();
}
