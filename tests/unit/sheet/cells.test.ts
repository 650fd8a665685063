import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readWorkbook, workbookOf } from '../../../server/src/host/workbook/workbook.ts';
import { fromCell, portable, toCell } from '../../../server/src/sheet/cells.ts';
import { csvOf, readCsv } from '../../../server/src/sheet/csv.ts';

/** What spreadsheets are known to take for something else. */
const traps = [
  ...['=1+1', '+5', '-5', '@x', '\tx', '\rx', "'=x", "'", "''", '007', '1E5', '3/4', '12:30', '1-2', '2024-01-02'],
  ...[
    'MARCH1',
    'Sep-4',
    'TRUE',
    'wahr',
    ' 4 ',
    '4 min',
    '12 AM',
    '5 May',
    '1.000,5',
    '€5',
    '(5)',
    '5%',
    '00',
    '0',
    '22',
  ],
  ...[
    'a,b',
    'a;b',
    'a"b',
    '"',
    'a\nb',
    'a\tb',
    "=cmd|' /C calc'!A0",
    '_x0041_',
    '_x005F_x0041_',
    '<&>]]>',
    '…',
    'ﬁ',
    '😀',
  ],
];

const texts = fc.oneof(
  fc.constantFrom(...traps),
  fc.string({ unit: 'binary', maxLength: 12 }),
  fc.string({ maxLength: 12 }),
);
const rows = fc
  .integer({ min: 1, max: 5 })
  .chain((columns) =>
    fc.array(fc.array(texts, { minLength: columns, maxLength: columns }), { minLength: 1, maxLength: 5 }),
  );

describe('[E05] [X10] a cell', () => {
  it('gives back every text, and never begins as a formula', () => {
    fc.assert(
      fc.property(texts, fc.constantFrom('text' as const, 'loose' as const), (text, type) => {
        const cell = toCell(text, type);
        expect(cell).not.toMatch(/^[=+\-@\t\r\n]/);
        expect(fromCell(cell)).toBe(text);
      }),
      { numRuns: 2000, seed: 1 },
    );
  });

  it.each([
    ['007', "'007"],
    ['1-2', "'1-2"],
    ['1E5', "'1E5"],
    ['12:30', "'12:30"],
    ['MARCH1', "'MARCH1"],
    ['2024-01-02', "'2024-01-02"],
    ['12 pm', "'12 pm"],
    ['22', '22'],
    ['4 min', '4 min'],
    ['8.9 kg', '8.9 kg'],
    ['Market', 'Market'],
    ['S1-pv132-4-20', 'S1-pv132-4-20'],
  ])('%s in a table without types is written %s', (text, cell) => {
    expect(toCell(text, 'loose')).toBe(cell);
  });
});

describe('[E05] a table', () => {
  it('comes back from CSV as it was, whichever separator', () => {
    fc.assert(
      fc.property(rows, fc.constantFrom(',' as const, ';' as const), (table, separator) => {
        const head = table[0]?.map((_, column) => `Column ${column}`) ?? [];
        expect(readCsv(csvOf([head, ...table], separator))).toEqual({ rows: [head, ...table] });
      }),
      { numRuns: 500, seed: 2 },
    );
  });

  it('comes back from CSV that a spreadsheet has saved: bare cells, other line ends, no mark', () => {
    expect(readCsv('Set,Line\n"a ""b""",1\r\nc,\n')).toEqual({
      rows: [
        ['Set', 'Line'],
        ['a "b"', '1'],
        ['c', ''],
      ],
    });
    expect(readCsv('Set\tLine\rx\t2')).toEqual({
      rows: [
        ['Set', 'Line'],
        ['x', '2'],
      ],
    });
    expect(readCsv('a,"b')).toEqual({ why: 'row 1 opens a quotation mark that nothing closes' });
    expect(readCsv('')).toEqual({ rows: [] });
  });

  it('comes back from a workbook as it was, but for signs that no workbook can hold', async () => {
    await fc.assert(
      fc.asyncProperty(rows, async (table) => {
        const head = table[0]?.map((_, column) => `Column ${column}`) ?? [];
        const read = await readWorkbook(
          await workbookOf([{ title: 'Sheet', widths: [], rows: [head, ...portableRows(table)] }]),
        );
        const found = 'tables' in read ? (read.tables[0]?.rows ?? []) : read.why;
        expect(withoutEmpty(found)).toEqual(withoutEmpty([head, ...portableRows(table)]));
      }),
      { numRuns: 150, seed: 3 },
    );
  });

  it('makes the same workbook whenever it is written', async () => {
    const sheet = { title: 'Sheet', widths: [10], rows: [['Set'], ['007']] };
    const first = await workbookOf([sheet]);
    await new Promise((resolve) => setTimeout(resolve, 2100));
    expect(await workbookOf([sheet])).toEqual(first);
  });
});

function portableRows(table: readonly (readonly string[])[]): readonly (readonly string[])[] {
  return table.map((row) => row.map(portable));
}

/** Empty cells at the end of a row, and empty rows at the end of a sheet, are not kept. */
function withoutEmpty(table: readonly (readonly string[])[] | string): unknown {
  if (typeof table === 'string') return table;
  const trimmed = table.map((row) => row.slice(0, row.findLastIndex((cell) => cell !== '') + 1));
  return trimmed.slice(0, trimmed.findLastIndex((row) => row.length > 0) + 1);
}
