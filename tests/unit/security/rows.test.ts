import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readCsv } from '../../../server/src/sheet/csv.ts';
import { root } from '../../support/built.ts';

/** Sections of the list of inputs that must not hurt, with how many rows each has. */
const sections = { S: 28, L: 45, R: 13, E: 5, X: 16 } as const;

const read = readCsv(readFileSync(join(root, 'tests/hostile-rows.csv'), 'utf8'));
const table = 'rows' in read ? read.rows.slice(1) : [];

/** Names of tests and of rows of tests begin with the rows they stand for, in square brackets. */
function rowsNamedIn(text: string): ReadonlySet<string> {
  const heads = [...text.matchAll(/['"`]((?:\[[SLREX]\d\d\] ?)+)/g)].map(([, head = '']) => head);
  return new Set(heads.flatMap((head) => head.match(/[SLREX]\d\d/g) ?? []));
}

const named = readdirSync(join(root, 'tests'), { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts'))
  .map((file) => [file, rowsNamedIn(readFileSync(join(root, 'tests', file), 'utf8'))] as const);

describe('the table of hostile inputs', () => {
  it('has every row, in order, in words', () => {
    const all = Object.entries(sections).flatMap(([section, count]) =>
      Array.from({ length: count }, (_, n) => `${section}${String(n + 1).padStart(2, '0')}`),
    );
    expect(table.map(([row]) => row)).toEqual(all);
    for (const [row, what = ''] of table) expect(what, row).not.toBe('');
  });

  it.each(table.map(([row = '', what = '', tests = '']) => [row, what, tests] as const))(
    '%s, %s: has a test with its name wherever the table says',
    (row, _what, tests) => {
      const files = named.filter(([, rows]) => rows.has(row)).map(([file]) => file);
      expect(tests).not.toBe('');
      expect(files).toEqual(expect.arrayContaining(tests.split(' ')));
    },
  );
});
