import type { QuantityFault } from './quantity.ts';

/** A plain number at the start of a text. */
export interface NumberReading {
  /** As written, with its sign. */
  readonly written: string;
  readonly amount: number;
  /** Digits after the point. */
  readonly decimals: number;
  /** Offset just after the number. */
  readonly end: number;
}

/** Beyond this many digits a number may not be kept exactly. */
const mostDigits = 15;

const falseMinus = new Set(['\u2212', '\u2013', '\u2014', '\u2010', '\u2011', '\ufe63', '\uff0d']);
const foreignDigit = /[\p{Nd}\p{No}\p{Nl}]/u;

/** One of the ten digits, and nothing beside it. */
export function isDigit(character: string): boolean {
  return character >= '0' && character <= '9' && character.length === 1;
}

function skipDigits(text: string, from: number): number {
  let at = from;
  while (isDigit(text.charAt(at))) at++;
  return at;
}

/** True for the digits, fractions and superscripts of any script other than 0-9. */
export function isForeignDigit(character: string): boolean {
  return character > '\u007f' && foreignDigit.test(character);
}

function badForm(found: string, hint: string): QuantityFault {
  return { fault: 'number-form', found, hint };
}

/** The number that starts at the first character: `132`, `-5`, `+0.5`. The text is trimmed and at most 64 characters long. */
export function readNumber(text: string): NumberReading | QuantityFault {
  const start = text.startsWith('-') || text.startsWith('+') ? 1 : 0;
  const whole = skipDigits(text, start);
  if (whole === start) return faultOfMissingDigits(text, start);
  let end = whole;
  if (text.charAt(whole) === '.' && isDigit(text.charAt(whole + 1))) end = skipDigits(text, whole + 1);
  const fault = faultOfForm(text, start, whole, end) ?? faultAfterNumber(text, end);
  if (fault !== undefined) return fault;
  const written = text.slice(0, end);
  return { written, amount: Number(written), decimals: end === whole ? 0 : end - whole - 1, end };
}

function faultOfMissingDigits(text: string, start: number): QuantityFault {
  const first = text.charAt(start);
  if (isForeignDigit(first)) return { fault: 'digits-not-ascii', found: foreignRun(text, start) };
  if (falseMinus.has(first))
    return badForm(first, 'this is a dash, not a minus sign: write the minus with the hyphen key');
  const word = text.slice(start).toLowerCase();
  if (['.inf', '.nan', 'inf', 'nan', 'infinity', '∞'].some((one) => word === one || word.startsWith(`${one} `))) {
    return badForm(text, 'write a number that can be measured');
  }
  if (first === '.' && isDigit(text.charAt(start + 1))) return badForm(text, 'write a 0 before the decimal point');
  return faultOfLeadingWord(text);
}

/** Signs and words that people put before a number, and the bound word of a rule file that says the same. */
const leadingWords: readonly (readonly [string, string])[] = [
  ['±', 'write the difference without the ± sign'],
  ['+/-', 'write the difference without the +/- sign'],
  ['<=', 'a limit is a word: use at_most'],
  ['≤', 'a limit is a word: use at_most'],
  ['<', 'a limit is a word: use at_most'],
  ['up to', 'a limit is a word: use at_most'],
  ['max', 'a limit is a word: use at_most'],
  ['not more than', 'a limit is a word: use at_most'],
  ['>=', 'a limit is a word: use at_least'],
  ['≥', 'a limit is a word: use at_least'],
  ['>', 'a limit is a word: use at_least'],
  ['at least', 'a limit is a word: use at_least'],
  ['min', 'a limit is a word: use at_least'],
  ['~', 'an approximate number is a word: use about'],
  ['≈', 'an approximate number is a word: use about'],
  ['about', 'an approximate number is a word: use about'],
  ['approx', 'an approximate number is a word: use about'],
  ['ca', 'an approximate number is a word: use about'],
];

function faultOfLeadingWord(text: string): QuantityFault {
  const at = firstDigit(text);
  if (at === -1) return { fault: 'no-number' };
  const before = text.slice(0, at).trim();
  const lower = text.toLowerCase();
  if (lower.startsWith('between ')) return { fault: 'range-in-one-value' };
  const known = leadingWords.find(([word]) => lower.startsWith(word));
  return badForm(before, known?.[1] ?? 'write the number first, then its unit');
}

function firstDigit(text: string): number {
  for (let i = 0; i < text.length; i++) {
    if (isDigit(text.charAt(i)) || isForeignDigit(text.charAt(i))) return i;
  }
  return -1;
}

function foreignRun(text: string, from: number): string {
  let end = from;
  while (end < text.length && isForeignDigit(text.charAt(end))) end++;
  return text.slice(from, end);
}

function faultOfForm(text: string, start: number, whole: number, end: number): QuantityFault | undefined {
  const written = text.slice(0, end);
  const digits = whole - start;
  const decimals = end === whole ? 0 : end - whole - 1;
  if (text.charAt(start) === '0' && digits > 1) return badForm(written, 'write the number without zeros in front');
  if (digits + decimals > mostDigits) return badForm(written, 'more digits than can be kept exactly');
  if (text.startsWith('-') && Number(written) === 0) return badForm(written, 'write 0 without a sign');
  if (decimals === 3 && digits <= 3 && text.charAt(start) !== '0') {
    const hint =
      'the point may separate thousands or decimals: write it without the point, or with another number of decimals';
    return badForm(written, hint);
  }
  return undefined;
}

/** What stands right after the digits may show that they were not the whole number. */
function faultAfterNumber(text: string, end: number): QuantityFault | undefined {
  const next = text.charAt(end);
  const after = text.charAt(end + 1);
  if (next === '' || (next === ' ' && isAsciiLetter(after))) return undefined;
  const glued = text.slice(0, Math.min(text.length, skipDigits(text, end + 1)));
  if (isForeignDigit(next)) return { fault: 'digits-not-ascii', found: foreignRun(text, end) };
  if (isSpace(next) && isDigit(after)) return badForm(glued, 'write the digits without spaces between them');
  if (isSpace(next) && isForeignDigit(after)) return { fault: 'digits-not-ascii', found: foreignRun(text, end + 1) };
  if (next === ',') {
    return badForm(
      glued,
      'a comma may separate decimals or thousands: write decimals with a point and thousands without a sign',
    );
  }
  if (next === '_' || next === "'" || next === '\u2019') {
    return isDigit(after) || next === '_' ? badForm(glued, 'write the digits without separators') : undefined;
  }
  if (next === '.') return faultAfterPoint(text, glued, after);
  if (next === ':')
    return badForm(glued, 'this reads as a time of day or a ratio: write a number with its unit, such as min or mL/L');
  if (next === '/' && isDigit(after)) return badForm(glued, 'write a fraction as a decimal number');
  if (next === '^') return badForm(glued, 'write all digits of the number');
  return faultOfProgrammerNumber(text, end);
}

function faultAfterPoint(text: string, glued: string, after: string): QuantityFault | undefined {
  if (after === '.' || after === '') return after === '.' ? { fault: 'range-in-one-value' } : needsDigits(text);
  return isDigit(after) ? badForm(glued, 'a number has one decimal point at most') : needsDigits(glued);
}

function needsDigits(found: string): QuantityFault {
  return badForm(found, 'write a digit after the decimal point, or leave the point out');
}

/** `1e3`, `0x1F`, `0o17`, `0b101`. */
function faultOfProgrammerNumber(text: string, end: number): QuantityFault | undefined {
  const next = text.charAt(end).toLowerCase();
  const after = text.charAt(end + 1);
  const signed = (after === '+' || after === '-') && isDigit(text.charAt(end + 2));
  if (next === 'e' && (isDigit(after) || signed)) return badForm(text, 'write all digits of the number');
  const base = end === 1 && text.startsWith('0') && ['x', 'o', 'b'].includes(next);
  return base && /^[0-9a-f]/i.test(after) ? badForm(text, 'write an ordinary number') : undefined;
}

function isAsciiLetter(character: string): boolean {
  return (character >= 'a' && character <= 'z') || (character >= 'A' && character <= 'Z');
}

function isSpace(character: string): boolean {
  return character !== '' && character.trim() === '';
}
