import type { Line } from '../../../server/src/print/piece.ts';
import { plain } from '../../../server/src/print/piece.ts';
import { wordsOf } from '../../../server/src/print/words/languages.ts';
import { termIn } from '../../../server/src/print/words/words.ts';
import { valueAt } from '../traced.ts';
import { type Asked, type Fault, isTable, originsOf, tablesIn, wordsIn } from './asked.ts';

/* Where indicators lie and where the thermometer points: by the packaging's own file, else by what the site says of its type. */

const fields = {
  packing: { own: 'indicator_places', site: 'indicator_places', word: 'places' },
  cooling: { own: 'cool_aim', site: 'cool_aims', word: 'aim' },
} as const;

type Which = keyof typeof fields;

/** The words of the file that the key must show. */
function placesOf({ files }: Asked, which: Which, packaging: string): readonly string[] {
  const file = files.get(`packaging/${packaging}`);
  const { own, site, word } = fields[which];
  if (isTable(file) && file[own] !== undefined) return wordsIn(file[own]);
  for (const [name, department] of files) {
    if (!name.startsWith('site/') || !isTable(department) || !isTable(file)) continue;
    const row = tablesIn(department[site]).find(({ packaging_type: type }) => type === file.type);
    if (row !== undefined) return wordsIn(row[word]);
  }
  return [];
}

export function placeFault(asked: Asked): Fault {
  const { draft } = asked;
  const [, stage = '', packaging = ''] = /where (\S+) packaging\/(\S+)$/.exec(draft.key) ?? [];
  const which: Which = stage === 'cooling' ? 'cooling' : 'packing';
  const right = placesOf(asked, which, packaging);
  if (right.length === 0) return 'no file says where';
  const shown = right.map((word) => termIn(wordsOf('en'), word)).join(', ');
  if (plain(draft.right) !== shown) return `the file says ${shown}`;
  const twin = draft.wrong.find((line) =>
    wordsOfLine(asked, which, line).some((word) => right.some((one) => sameSpot(one, word))),
  );
  return twin === undefined ? undefined : `${plain(twin)} is right too`;
}

/** The words in the file that a wrong answer was taken from. */
function wordsOfLine({ files }: Asked, which: Which, line: Line): readonly string[] {
  return originsOf(line).flatMap((origin) => {
    const value = valueAt(files, origin);
    return isTable(value) ? wordsIn(value[fields[which].word]) : wordsIn(value);
  });
}

/** Levels and shape left aside: a corner is a corner. */
function sameSpot(one: string, other: string): boolean {
  const bare = (word: string): string =>
    word
      .replace(/-?(?:per|each|every|on-each)-(?:level|tray|layer)s?/g, '')
      .replace(/geometric(?:al)?-/g, '')
      .replace('center', 'centre');
  return bare(one) === bare(other);
}
