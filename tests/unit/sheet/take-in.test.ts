import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FileId } from '../../../server/src/base/brand.ts';
import { fileId } from '../../../server/src/base/brand.ts';
import { editBetween } from '../../../server/src/editor/fix-all.ts';
import { readWorkbook, workbookOf } from '../../../server/src/host/workbook/workbook.ts';
import { Library } from '../../../server/src/library/library.ts';
import { csvOf, readCsv } from '../../../server/src/sheet/csv.ts';
import { cellsOf, tablesOf } from '../../../server/src/sheet/tables-of.ts';
import type { GivenTable } from '../../../server/src/sheet/take-in.ts';
import { takeIn } from '../../../server/src/sheet/take-in.ts';
import { readSample } from '../../support/samples.ts';

const samples = ['lanternfield', 'lanternfield-corrected', 'saltmere-eye-clinic', 'saltmere-eye-clinic-corrected'];

function libraryOf(texts: Iterable<readonly [string, string]>): Library {
  const library = new Library();
  for (const [file, text] of texts) library.set(fileId(file), text);
  return library;
}

type Cells = string[][];

function exported(library: Library): { name: string; rows: Cells }[] {
  return tablesOf(library).map((table) => ({
    name: table.spec.title,
    rows: cellsOf(table).map((row) => [...row]),
  }));
}

/** The library with the new texts in place. */
function changed(library: Library, texts: ReadonlyMap<FileId, string>): Library {
  const copy = library.emptyCopy();
  for (const file of library.files()) {
    const record = library.record(file);
    if (record !== undefined) copy.put(record);
  }
  for (const [file, text] of texts) copy.set(file, text);
  return copy;
}

const nothing = { changes: [], mistakes: [], notices: [], texts: new Map() };

describe.each(samples)('the tables of %s', (sample) => {
  const library = libraryOf(readSample(sample));

  it('come back from CSV and from a workbook without a change', async () => {
    const tables = exported(library);
    const csv = tables.map(({ name, rows }): GivenTable => {
      const read = readCsv(csvOf(rows, ';'));
      return { name, rows: 'rows' in read ? read.rows : [] };
    });
    expect(takeIn(csv, library)).toEqual(nothing);
    const book = await readWorkbook(
      await workbookOf(tables.map(({ name, rows }) => ({ title: name, widths: [], rows }))),
    );
    expect(takeIn('tables' in book ? book.tables : [], library)).toEqual(nothing);
  });

  it('with one cell edited change that cell and nothing else', () => {
    // Each in a library of its own: what else a library holds plays no part, and is slow to read again and again.
    const alone = [...readSample(sample)].map((file) => libraryOf([file]));
    const spots = alone.flatMap((one) =>
      tablesOf(one).flatMap(({ spec, rows }, table) =>
        rows.flatMap((_, row) =>
          spec.columns.flatMap(({ is }, column) =>
            is === 'text' || is === 'list' ? [{ library: one, table, row, column }] : [],
          ),
        ),
      ),
    );
    const words = fc.constantFrom(
      ...['007', '1-2', 'new words', '=1+1', "it's", 'a: b', '- x', 'yes', '12:30', '#x', '', 'x; y', '9'],
    );
    const seen = { changed: 0, refused: 0 };
    fc.assert(
      fc.property(fc.constantFrom(...spots), words, (spot, value) => {
        seen[edit(spot, value)]++;
      }),
      { numRuns: 150, seed: 11 },
    );
    expect(seen.changed).toBeGreaterThan(40);
    expect(seen.refused).toBeGreaterThan(4);
  });
});

interface Spot {
  readonly library: Library;
  readonly table: number;
  readonly row: number;
  readonly column: number;
}

/** Edits one cell of the sheet and asserts that this is all that changes. */
function edit({ library, table, row, column }: Spot, value: string): 'changed' | 'refused' {
  const tables = exported(library);
  const cells = tables[table]?.rows[row + 1] ?? [];
  const before = cells[column] ?? '';
  cells[column] = value;
  const taken = takeIn(tables, library);
  if (taken.mistakes.length > 0 || taken.changes.length === 0) {
    expect(taken.texts.size).toBe(0);
    if (taken.mistakes.length === 0) expect(value).toBe(before);
    return 'refused';
  }
  expect(taken.changes).toMatchObject([{ before, after: value }]);
  expect(taken.texts.size).toBe(1);
  expect(exported(changed(library, taken.texts))).toEqual(tables);
  for (const [file, text] of taken.texts) {
    const made = editBetween(library.record(file)?.text ?? '', text);
    expect((made?.text ?? '').split('\n').length).toBeLessThanOrEqual(2);
  }
  return 'changed';
}

describe('contents of a set', () => {
  const text = `kind: set
id: "007"
members: # counted twice
  - {device: scissors, qty: 2} # curved
  # the next one is fragile
  - device: forceps
    qty: 1
  - {device: tray, qty: 1}
name: Minor
`;
  const library = libraryOf([['s.ifu.yaml', text]]);
  const contents = (): Cells => exported(library).find(({ name }) => name === 'Set contents')?.rows ?? [];
  const taking = (rows: Cells) => takeIn([{ name: 'Set contents', rows }], library);

  it('keep their ids as text', () => {
    expect(contents()[1]?.slice(0, 5)).toEqual(['007', '1', 'scissors', '', '2']);
  });

  it('get a new line where the number of the line is empty', () => {
    const taken = taking([...contents(), ['007', '', 'clamp', '', '3']]);
    expect([...taken.texts.values()]).toEqual([
      text.replace('tray, qty: 1}\n', 'tray, qty: 1}\n  - {device: clamp, qty: 3}\n'),
    ]);
  });

  it('lose the line that is gone, and no comment of another', () => {
    const taken = taking(contents().filter((row) => row[1] !== '2'));
    expect([...taken.texts.values()]).toEqual([text.replace('  - device: forceps\n    qty: 1\n', '')]);
    expect(taken.changes).toMatchObject([{ where: 'Set contents, set "007", line 2 taken out', before: 'forceps, 1' }]);
  });

  it('change in the middle of a line, and the rest of the line stays', () => {
    const rows = contents();
    const [, first, second] = rows;
    if (first !== undefined) first[4] = '4';
    if (second !== undefined) second[4] = '';
    const taken = taking(rows);
    expect([...taken.texts.values()]).toEqual([text.replace('qty: 2', 'qty: 4').replace('\n    qty: 1', '')]);
  });

  it('of a set that the sheet leaves out stay', () => {
    expect(taking(contents().slice(0, 1))).toEqual(nothing);
  });
});

describe('a sheet with mistakes', () => {
  const library = libraryOf([
    ['d.ifu.yaml', 'kind: device\nid: forceps\nname: Forceps\nstock: 2\ncovers:\n  - F-1\n  - F-2\n'],
  ]);
  const table = (...rows: string[][]): GivenTable => ({ name: 'Devices', rows });
  const mistakes = (...rows: string[][]) => takeIn([table(...rows)], library).mistakes;

  it('says each at its row, and changes nothing for it', () => {
    expect(mistakes(['Device id', 'Name'], ['forceps', 'A'], ['forceps', 'B'], ['clamp', 'C'])).toEqual([
      'Devices, row 3: "forceps" stands in a second row. Leave one of them.',
      'Devices, row 4: the library has no device "clamp". A new one gets a file of its own; an id is changed by renaming it there.',
    ]);
    expect(mistakes(['Something'], ['x'])[0]).toMatch(
      /^"Devices" is no table of this library: its first row must hold/,
    );
    expect(mistakes(['Device id', 'Pieces in stock'], ['forceps', 'many'])[0]).toMatch(
      /^Devices, row 2, "Pieces in stock": "2" cannot become "many": /,
    );
  });

  it('takes columns in any order, leaves missing ones alone and names unknown ones', () => {
    const taken = takeIn(
      [table(['Colour', 'catalogue numbers', ' Device id '], ['red', 'F-1; F-3; 007', 'forceps'])],
      library,
    );
    expect(taken.notices).toEqual(['"Devices": the column "Colour" is not taken over.']);
    expect([...taken.texts.values()]).toEqual([
      'kind: device\nid: forceps\nname: Forceps\nstock: 2\ncovers:\n  - F-1\n  - F-3\n  - "007"\n',
    ]);
  });
});
