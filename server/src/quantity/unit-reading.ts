import { Remembered } from '../base/remembered.ts';
import { type Unit, unitList } from './unit-list.ts';
import { type UnitWord, unitWords, type WordLanguage } from './unit-words.ts';
import { foldLookAlikes } from './units.ts';

/** A unit that a piece of running text may mean. `language` is set when the word belongs to that language only. */
export interface UnitCandidate {
  readonly unit: Unit;
  readonly language?: WordLanguage;
}

export interface UnitReading {
  /** Never empty. Several when the text alone does not decide (`F`: temperature, difference or French gauge). */
  readonly candidates: readonly UnitCandidate[];
  /** In UTF-16 units of the text read. */
  readonly length: number;
  /** True when the spelling is also an ordinary word or a lone letter (`in`, `use`, `set`, `C`, `m`): look at what stands around it. */
  readonly doubtful: boolean;
}

interface Spelling {
  readonly text: string;
  readonly candidates: UnitCandidate[];
}

/** English words that are units only beside a number, and not always then. Lone letters are doubtful as well. */
const ordinaryWords: ReadonlySet<string> = new Set([
  ...['in', 'in.', 'use', 'uses', 'set', 'sets', 'load', 'loads', 'time', 'times', 'foot', 'feet', 'second', 'piece'],
  ...[
    'cycle',
    'drop',
    'item',
    'items',
    'layer',
    'layers',
    'exposure',
    'exposures',
    'at',
    'an',
    'mal',
    'Min.',
    'min.',
    'min',
  ],
]);

/** Degrees without a scale: °C or °F, the reader of the sentence must decide. */
const bareDegrees = ['°', 'deg', 'degree', 'degrees'];

/** A spelling with what it names; of a word the names of the units, since few words are ever met. */
interface Listed {
  readonly text: string;
  readonly names: Unit | UnitWord;
}

/** All spellings by their first letter in lower case: what stands beside one number begins with one of them. */
let listed: ReadonlyMap<string, readonly Listed[]> | undefined;

function listByFirstLetter(): ReadonlyMap<string, readonly Listed[]> {
  const letters = new Map<string, Listed[]>();
  const add = (text: string, names: Unit | UnitWord): void => {
    const first = text.charAt(0).toLowerCase();
    const sharing = letters.get(first);
    if (sharing === undefined) letters.set(first, [{ text, names }]);
    else sharing.push({ text, names });
  };
  for (const unit of unitList) {
    if (unit.name !== '') add(unit.name, unit);
    for (const text of unit.variants) add(text, unit);
    if (unit.dimension.startsWith('temperature') && (unit.name === '°C' || unit.name === '°F')) {
      for (const text of bareDegrees) add(text, unit);
    }
    if (unit.dimension === 'time' && unit.name === 'min') add('m', unit);
  }
  for (const word of unitWords) add(word.text, word);
  return letters;
}

const spellingsByLetter = new Remembered(200, (letter: string): readonly Spelling[] => {
  listed ??= listByFirstLetter();
  const spellings = new Map<string, Spelling>();
  for (const { text, names } of listed.get(letter) ?? []) {
    const known = spellings.get(text) ?? { text, candidates: [] };
    for (const candidate of candidatesOf(names))
      if (!known.candidates.some((one) => one.unit === candidate.unit)) known.candidates.push(candidate);
    spellings.set(text, known);
  }
  return [...spellings.values()].sort((a, b) => b.text.length - a.text.length);
});

function candidatesOf(names: Unit | UnitWord): readonly UnitCandidate[] {
  if (!('language' in names)) return [{ unit: names }];
  const { units, language } = names;
  return unitList.filter((unit) => units.includes(unit.name)).map((unit) => ({ unit, language }));
}

/** Every spelling that begins with this letter (lower case), be it written large or small; longest first. */
export function spellingsFrom(letter: string): readonly Spelling[] {
  return spellingsByLetter.of(letter);
}

const longestSpelling = 40;
const letterOrDigit = /[\p{L}\p{N}]/u;

/**
 * The unit that starts exactly at `offset` of running text: the longest spelling that ends at a word boundary. Reads English, German and
 * French unit words as well. Undefined when no unit starts there. Exact case wins; otherwise case is ignored from two letters on.
 */
export function readUnitAt(text: string, offset: number): UnitReading | undefined {
  const window = foldLookAlikes(text.slice(offset, offset + longestSpelling));
  const lower = window.toLowerCase();
  let loose: Spelling | undefined;
  for (const spelling of spellingsFrom(window.charAt(0).toLowerCase())) {
    const length = spelling.text.length;
    if (loose !== undefined && length < loose.text.length) break;
    if (!endsAtBoundary(window, length)) continue;
    if (window.startsWith(spelling.text)) return asReading(spelling);
    if (loose === undefined && length > 1 && lower.startsWith(spelling.text.toLowerCase())) loose = spelling;
  }
  return loose === undefined ? undefined : asReading(loose);
}

function endsAtBoundary(window: string, length: number): boolean {
  const next = window.charAt(length);
  return next === '' || !letterOrDigit.test(next) || !letterOrDigit.test(window.charAt(length - 1));
}

function asReading(spelling: Spelling): UnitReading {
  const doubtful = spelling.text.length === 1 ? letterOrDigit.test(spelling.text) : ordinaryWords.has(spelling.text);
  return { candidates: spelling.candidates, length: spelling.text.length, doubtful };
}
