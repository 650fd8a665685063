import { type Unit, unitList } from './unit-list.ts';
import { unitWords, type WordLanguage } from './unit-words.ts';
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

function collectSpellings(): Map<string, Spelling> {
  const spellings = new Map<string, Spelling>();
  const add = (text: string, candidate: UnitCandidate): void => {
    const known = spellings.get(text) ?? { text, candidates: [] };
    if (!known.candidates.some((one) => one.unit === candidate.unit)) known.candidates.push(candidate);
    spellings.set(text, known);
  };
  for (const unit of unitList) {
    for (const text of [unit.name, ...unit.variants]) if (text !== '') add(text, { unit });
    if (unit.dimension.startsWith('temperature') && (unit.name === '°C' || unit.name === '°F')) {
      for (const text of bareDegrees) add(text, { unit });
    }
    if (unit.dimension === 'time' && unit.name === 'min') add('m', { unit });
  }
  for (const word of unitWords) {
    const meant = unitList.filter((unit) => word.units.includes(unit.name));
    for (const unit of meant) add(word.text, { unit, language: word.language });
  }
  return spellings;
}

/** Spellings by their first letter in lower case, longest first. */
function indexByFirstLetter(spellings: Iterable<Spelling>): Map<string, Spelling[]> {
  const index = new Map<string, Spelling[]>();
  for (const spelling of spellings) {
    const first = spelling.text.charAt(0).toLowerCase();
    const sharing = index.get(first) ?? [];
    sharing.push(spelling);
    index.set(first, sharing);
  }
  for (const sharing of index.values()) sharing.sort((a, b) => b.text.length - a.text.length);
  return index;
}

const byFirstLetter = indexByFirstLetter(collectSpellings().values());
const longestSpelling = 40;
const letterOrDigit = /[\p{L}\p{N}]/u;

/**
 * The unit that starts exactly at `offset` of running text: the longest spelling that ends at a word boundary. Reads English, German and
 * French unit words as well. Undefined when no unit starts there. Exact case wins; otherwise case is ignored from two letters on.
 */
export function readUnitAt(text: string, offset: number): UnitReading | undefined {
  const window = foldLookAlikes(text.slice(offset, offset + longestSpelling));
  const sharing = byFirstLetter.get(window.charAt(0).toLowerCase());
  if (sharing === undefined) return undefined;
  const lower = window.toLowerCase();
  let loose: Spelling | undefined;
  for (const spelling of sharing) {
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
