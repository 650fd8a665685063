/*
 * What the names of indicator places mean. `two-opposed-corners-per-level` are two places on each level; a name without a number is one
 * place, and a name without "level" is one for the whole set.
 */

const numbers: ReadonlyMap<string, number> = new Map([
  ['one', 1],
  ['two', 2],
  ['three', 3],
  ['four', 4],
  ['five', 5],
  ['six', 6],
  ['eight', 8],
]);

/** How many indicators these places need in a set with so many levels. */
export function indicatorsNeeded(places: readonly string[], levels: number): number {
  let needed = 0;
  for (const place of places) {
    const words = wordsOf(place);
    const count = words.map((word) => numbers.get(word) ?? Number.parseInt(word, 10)).find((number) => number > 0) ?? 1;
    needed += isPerLevel(words) ? count * levels : count;
  }
  return needed;
}

/** True when both names mean the same spot, whatever they say about levels: `centre` and `geometric-centre-per-level`. */
export function isSameSpot(one: string, other: string): boolean {
  return spotOf(one) === spotOf(other);
}

const fillers: ReadonlySet<string> = new Set([
  'geometric',
  'geometrical',
  'per',
  'each',
  'every',
  'of',
  'on',
  'in',
  'the',
  'level',
  'levels',
  'tray',
  'layer',
]);
const spellings: ReadonlyMap<string, string> = new Map([
  ['center', 'centre'],
  ['middle', 'centre'],
  ['opposite', 'opposed'],
  ['corner', 'corners'],
  ['diagonal', 'opposed'],
]);

function spotOf(place: string): string {
  return wordsOf(place)
    .filter((word) => !fillers.has(word))
    .map((word) => spellings.get(word) ?? word)
    .join(' ');
}

function isPerLevel(words: readonly string[]): boolean {
  return words.some((word) => word === 'level' || word === 'levels' || word === 'layer');
}

function wordsOf(place: string): readonly string[] {
  return place
    .toLowerCase()
    .slice(0, 200)
    .split(/[^a-z0-9]+/)
    .filter((word) => word !== '');
}
