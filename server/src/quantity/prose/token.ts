import { isDigit, isLetter, isSpace, isSuperscript, plainDigits } from './characters.ts';

export type Language = 'en' | 'de' | 'fr';

/** A word, a number as printed (`1.200`, `3,5`), raised digits (`²`), or one other character. */
export interface Token {
  readonly kind: 'word' | 'number' | 'raised' | 'mark';
  readonly start: number;
  readonly end: number;
  /** Words in lower case, dashes as `-`, raised digits as plain ones, everything else as printed. */
  readonly text: string;
  /** True when white space (or the start of the quote) stands before it. */
  readonly spaced: boolean;
}

/** Short words that stand before a number without a space: `pH7`, `max10`. */
const stickyWords: ReadonlySet<string> = new Set(['ph', 'min', 'max', 'ca', 'x']);

/** Splits a quote into tokens with offsets into it. A hyphen inside a word separates two words and leaves no token. */
export function tokenize(quote: string, language: Language): Token[] {
  const lower = lowerCase(quote);
  const tokens: Token[] = [];
  let at = 0;
  let spaced = true;
  while (at < quote.length) {
    const code = quote.charCodeAt(at);
    if (isSpace(code)) {
      if (code === 10) tokens.push({ kind: 'mark', start: at, end: at + 1, text: '\n', spaced });
      spaced = true;
      at++;
      continue;
    }
    // Field by field: spreading the piece costs more than all the rest of this loop.
    const { kind, start, end, text } = readPiece(quote, lower, at, language);
    const token: Token = { kind, start, end, text, spaced };
    at = token.end;
    spaced = false;
    tokens.push(token);
    if (token.kind === 'word' && isInnerHyphen(quote, at)) at++;
  }
  return tokens;
}

function readPiece(quote: string, lower: string, start: number, language: Language): Omit<Token, 'spaced'> {
  const code = quote.charCodeAt(start);
  if (isLetter(code)) {
    const end = wordEnd(quote, lower, start);
    return { kind: 'word', start, end, text: wordText(lower, start, end) };
  }
  if (isDigit(code)) {
    const end = numberEnd(quote, start, language);
    return { kind: 'number', start, end, text: quote.slice(start, end) };
  }
  if (isSuperscript(code)) {
    let end = start + 1;
    while (end < quote.length && isSuperscript(quote.charCodeAt(end))) end++;
    return { kind: 'raised', start, end, text: plainDigits(quote.slice(start, end)) };
  }
  const text = isDash(code) ? '-' : quote.charAt(start);
  return { kind: 'mark', start, end: start + 1, text };
}

function wordText(lower: string, start: number, end: number): string {
  return lower.charCodeAt(end - 1) === 0x2019 ? `${lower.slice(start, end - 1)}'` : lower.slice(start, end);
}

/** Lower case of the same length: a few letters grow when lowered, and offsets must not move. */
function lowerCase(quote: string): string {
  const lower = quote.toLowerCase();
  if (lower.length === quote.length) return lower;
  let same = '';
  for (let at = 0; at < quote.length; at++) {
    const one = quote.charAt(at).toLowerCase();
    same += one.length === 1 ? one : quote.charAt(at);
  }
  return same;
}

/** A word takes digits that follow its letters (`ST79`, `H2O2`) and ends after an apostrophe (`jusqu'`, `don't` is two words). */
function wordEnd(quote: string, lower: string, start: number): number {
  let at = start;
  while (at < quote.length) {
    const code = quote.charCodeAt(at);
    if (isDigit(code)) {
      if (stickyWords.has(lower.slice(start, at))) return at;
    } else if (!isLetter(code)) {
      return code === 39 || code === 0x2019 ? at + 1 : at;
    }
    at++;
  }
  return at;
}

function isInnerHyphen(quote: string, at: number): boolean {
  return isDash(quote.charCodeAt(at)) && at + 1 < quote.length && isLetter(quote.charCodeAt(at + 1));
}

/** Digits, with points, commas, apostrophes or narrow spaces between them. A plain space groups thousands in French only. */
function numberEnd(quote: string, start: number, language: Language): number {
  let at = start;
  for (;;) {
    while (isDigit(quote.charCodeAt(at))) at++;
    const separator = quote.charCodeAt(at);
    if (!isDigit(quote.charCodeAt(at + 1))) return at;
    if (separator === 44 || separator === 46) at++;
    else if (groupsThousands(separator, language) && threeDigits(quote, at + 1) && at - start <= 3) at++;
    else return at;
  }
}

function groupsThousands(code: number, language: Language): boolean {
  if (code === 32) return language === 'fr';
  return code === 0xa0 || code === 0x202f || code === 0x2009 || code === 39 || code === 0x2019;
}

function threeDigits(quote: string, at: number): boolean {
  for (let i = 0; i < 3; i++) if (!isDigit(quote.charCodeAt(at + i))) return false;
  return !isDigit(quote.charCodeAt(at + 3));
}

function isDash(code: number): boolean {
  return code === 45 || (code >= 0x2010 && code <= 0x2015) || code === 0x2212;
}
