import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { statementsFromRaw } from '../../../server/src/editor/page/raw-statements.ts';
import { cleanPaste } from '../../../server/src/quantity/prose/clean-paste.ts';

/** Every word of pasted pages stands in a statement, in a section, or among what is told as left out. */

const head = 'kind: device\nid: pale\nsources:\n  - {doc: D-1, rev: "02", role: device-specific}\nstatements:\n';

function lost(pages: string): readonly string[] {
  const made = statementsFromRaw(`${head}${pages}\n`, 'device', undefined);
  if (made === undefined) return ['nothing is made of it'];
  const sections = new Set(made.sentences.map(({ section }) => section));
  const told = new Set(wordsOf([...made.leftOut, ...sections].join('\n')));
  const left = new Map<string, number>();
  for (const word of wordsOf(made.sentences.map(({ sentence }) => sentence).join('\n')))
    left.set(word, (left.get(word) ?? 0) + 1);
  return wordsOf(cleanPaste(pages).text.split('\n').map(withoutMarks).join('\n')).filter((word) => {
    const count = left.get(word) ?? 0;
    left.set(word, count - 1);
    return count < 1 && !told.has(word);
  });
}

/** Numbers of pages, headings and listed steps are no words. */
function withoutMarks(line: string): string {
  return line
    .replace(/(?:page|seite|p\.|sheet(?=\s*\d+\s*of))\s*\d+(?:\s*(?:of|von|sur|\/)\s*\d+)?/iu, '')
    .replace(/(?:^|\s{3}|[|·])\s*\d+\s*\/\s*\d+\s*$|^\s*[-–] \d+ [-–]\s*$/u, '')
    .replace(
      /^\s*(?:(?:section|abschnitt|chapter|kapitel)\s+)?\(?(?:\d{1,2}(?:\.\d{1,2})*|[a-zA-Z]|[A-Z]\d{1,2}(?=\s+\p{Lu}[\p{L}\s]+$))[.)]?\s+/iu,
      '',
    );
}

function wordsOf(text: string): readonly string[] {
  return text.match(/[\p{L}\p{N}]+/gu) ?? [];
}

const lines = [
  ...['', '', '3 Taking apart', '3.1 Open the jaws.', '4 Cleaning', 'Storage', 'By hand:', 'Aufbereitung (Vorsicht)'],
  ...['Step              Time (min)      Temp. (°C)      Agent', 'Dry               20              max. 110        -'],
  ...[
    'Schritt   Zeit (min)   Temp. (°C)',
    'Trocknen   20   max. 110',
    'Étape | Durée (min) | Température',
    'Sécher | 20 | -',
  ],
  ...[
    'Rinse for 2 min. 5 times. - 110 -',
    'Dry 20 max. 110 -',
    'Caution!',
    '15',
    '110 -',
    'Keep dry   Page 2 of 3',
    '- 4 -',
  ],
  ...[
    'D-1 Rev. 02   Page 1 of 2',
    'MAKER | Instructions for use | 2/2',
    'Wipe it, e.g. with a cloth; dry it',
    '• Rinse it',
    'b) Dry it',
  ],
  ...[
    'WARNING: never soak',
    'at 60 °C.',
    'Rinse it with',
    'Region   Exposure   Drying',
    'USA   4 min at 132 °C   30 min',
  ],
];

const folder = path.join(import.meta.dirname, 'instructions');
const instructions = readdirSync(folder).filter((name) => /^(?!many-numbers).*\.txt$/.test(name));

describe('no word of a paste is lost', () => {
  it.each(instructions)('%s', (name) => {
    const pages = readFileSync(path.join(folder, name), 'utf8').replace(/^ {2}[=!?-] .*\n/gm, '');
    expect(lost(pages.replace(/\n\+ /g, ' '))).toEqual([]);
  });

  it('lines of tables, headings, marks and sentences in any order', () => {
    const pages = fc.array(fc.constantFrom(...lines), { minLength: 1, maxLength: 14 });
    fc.assert(
      fc.property(pages, (found) => {
        expect(lost(['Begin here.', ...found].join('\n'))).toEqual([]);
      }),
      { numRuns: 400, seed: 7 },
    );
  });
});
