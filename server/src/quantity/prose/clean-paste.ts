/** One kind of change that was made to pasted text, with how often. */
export interface PasteChange {
  readonly from: string;
  readonly to: string;
  readonly why: string;
  readonly count: number;
}

export interface CleanPaste {
  readonly text: string;
  readonly changes: readonly PasteChange[];
}

const longestCleaned = 200_000;

/**
 * Text from a PDF as it was meant: ligatures, hyphens that only broke a line, spaces and signs that look like others, raised digits. A
 * dash in a range or an id is never touched, nor any quotation mark. Every change is told.
 */
export function cleanPaste(text: string): CleanPaste {
  if (text.length > longestCleaned) return { text, changes: [] };
  const log = new ChangeLog();
  let clean = text.replace(singles, (character) => log.note(character, replacementOf(character), reasonOf(character)));
  clean = clean.replace(brokenWord, (found, before: string, after: string) => log.joined(found, before, after));
  clean = clean.replace(minusSign, (sign) => log.note(sign, '-', 'minus sign that looks like a dash'));
  clean = clean.replace(raisedBehindNumber, (found: string) => log.note(found, `^${plain(found)}`, 'raised digits'));
  clean = clean.replace(
    raisedBehindUnit,
    (_found, unit: string, raised: string) => `${unit}${log.note(raised, plain(raised), 'raised digit of a unit')}`,
  );
  clean = clean.replace(raisedElsewhere, (found) =>
    log.note(found, '', 'raised digit taken for the mark of a footnote'),
  );
  clean = clean.replace(foreignLetter, (found) =>
    log.note(found, foreignLetters.get(found) ?? found, 'letter of another alphabet that looks the same'),
  );
  return { text: clean, changes: log.changes() };
}

class ChangeLog {
  readonly #changes = new Map<string, { from: string; to: string; why: string; count: number }>();

  /** Gives `to` back, so that it can stand where the replacement is made. */
  note(from: string, to: string, why: string): string {
    const key = `${from}→${to}`;
    const known = this.#changes.get(key);
    if (known === undefined) this.#changes.set(key, { from: spelled(from), to: spelled(to), why, count: 1 });
    else known.count++;
    return to;
  }

  /** A hyphen that belongs to the word stays: pre-vacuum. Names with capitals or digits are ids and are not joined. */
  joined(found: string, before: string, after: string): string {
    const first = before.toLowerCase();
    const to = keptPrefixes.has(first) ? `${before}-${after}` : `${before}${after}`;
    return this.note(found, to, 'word broken at a line end');
  }

  changes(): readonly PasteChange[] {
    return [...this.#changes.values()];
  }
}

const ligatures: ReadonlyMap<string, string> = new Map([
  ['ﬀ', 'ff'],
  ['ﬁ', 'fi'],
  ['ﬂ', 'fl'],
  ['ﬃ', 'ffi'],
  ['ﬄ', 'ffl'],
  ['ﬅ', 'st'],
  ['ﬆ', 'st'],
]);

const lookAlikes: ReadonlyMap<string, string> = new Map([
  ['º', '°'],
  ['˚', '°'],
  ['℃', '°C'],
  ['℉', '°F'],
  ['\u03bc', 'µ'],
  ['\u2010', '-'],
  ['\u2011', '-'],
  ['\uff1a', ':'],
]);

const singles =
  /[ﬀ-ﬆ\u00ad\u00a0\u2000-\u200d\u202f\u205f\u2060\ufeff\u3000º˚℃℉\u03bc\u2010\u2011\uff1a\uff10-\uff19]/g;
/** A line break inside a word of small letters, at most 30 on each side. */
const brokenWord = /(?<![\p{L}\p{N}-])(\p{L}\p{Ll}{0,30})-[ \t]{0,4}\r?\n[ \t]{0,40}(\p{Ll}{2,30})(?![\p{N}-])/gu;
/** A minus before a number that no other number or letter stands before: never the dash of a range. */
const minusSign = /(?<![\p{L}\p{N}]|\p{N} )(\u2212)(?=\d)|(?<![\p{L}\p{N}] ?)(\u2013)(?=\d)/gu;
const raised = '[\u00b2\u00b3\u00b9\u2070\u2074-\u207b]';
const raisedBehindNumber = new RegExp(`(?<=\\d)${raised}{1,6}`, 'g');
const raisedBehindUnit = new RegExp(`(?<![\\p{L}])(mm|cm|dm|m|km|in|ft)(${raised})`, 'gu');
const raisedElsewhere = new RegExp(`${raised}{1,6}`, 'g');

const foreignLetters: ReadonlyMap<string, string> = new Map([
  ['а', 'a'],
  ['е', 'e'],
  ['о', 'o'],
  ['р', 'p'],
  ['с', 'c'],
  ['х', 'x'],
  ['у', 'y'],
  ['А', 'A'],
  ['В', 'B'],
  ['Е', 'E'],
  ['К', 'K'],
  ['М', 'M'],
  ['Н', 'H'],
  ['О', 'O'],
  ['Р', 'P'],
  ['С', 'C'],
  ['Т', 'T'],
  ['Х', 'X'],
]);
/** Between Latin letters only: whole words of another alphabet stay. */
const foreignLetter = /(?<=[A-Za-z])[а-яА-Я]|[а-яА-Я](?=[A-Za-z])/gu;

const keptPrefixes: ReadonlySet<string> = new Set([
  'pre',
  'non',
  'semi',
  'self',
  'low',
  'high',
  'single',
  'multi',
  'post',
  'anti',
  'ultra',
  're-use',
]);

function replacementOf(character: string): string {
  const code = character.charCodeAt(0);
  const known = ligatures.get(character) ?? lookAlikes.get(character);
  if (known !== undefined) return known;
  if (code >= 0xff10 && code <= 0xff19) return String(code - 0xff10);
  return isInvisible(code) ? '' : ' ';
}

function isInvisible(code: number): boolean {
  return code === 0xad || (code >= 0x200b && code <= 0x200d) || code === 0x2060 || code === 0xfeff;
}

function reasonOf(character: string): string {
  const code = character.charCodeAt(0);
  if (ligatures.has(character)) return 'letters printed as one sign';
  if (code === 0xad) return 'hyphen that shows only at a line end';
  if (isInvisible(code)) return 'sign that can’t be seen';
  if (lookAlikes.has(character) || code >= 0xff10) return 'sign that looks like another';
  return 'space that is no ordinary space';
}

function plain(raisedDigits: string): string {
  let digits = '';
  for (const character of raisedDigits) {
    const at = '⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(character);
    digits += at >= 0 ? String(at) : character === '⁻' ? '-' : character === '⁺' ? '+' : '';
  }
  return digits;
}

/** Signs that can't be seen by their number. */
function spelled(text: string): string {
  return text
    .replace(/\r?\n[ \t]*/g, '⏎')
    .replace(/[\u00a0\u00ad\u2000-\u200d\u202f\u205f\u2060\ufeff\u3000]/g, (character) => {
      const code = character.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0');
      return `U+${code}`;
    });
}
