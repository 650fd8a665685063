import fc from 'fast-check';
import { strToU8, unzipSync, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { readWorkbook, workbookOf } from '../../../server/src/host/workbook/workbook.ts';
import { runs } from '../fuzz/runs.ts';

const head =
  '<?xml version="1.0"?><worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>';
const tail = '</sheetData></worksheet>';
const cell = (at: string, text: string) => `<c r="${at}" t="inlineStr"><is><t>${text}</t></is></c>`;

/** A workbook with one sheet of this content, and other parts. */
function book(rows: string, more: Readonly<Record<string, Uint8Array>> = {}): Uint8Array {
  const relations = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
  const packages = 'http://schemas.openxmlformats.org/package/2006/relationships';
  const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
  return zipSync({
    'xl/workbook.xml': strToU8(
      `<workbook xmlns="${main}" xmlns:r="${relations}"><sheets><sheet name="S" sheetId="1" r:id="rId1"/></sheets></workbook>`,
    ),
    'xl/_rels/workbook.xml.rels': strToU8(
      `<Relationships xmlns="${packages}"><Relationship Id="rId1" Type="${relations}/worksheet" Target="worksheets/sheet1.xml"/></Relationships>`,
    ),
    'xl/styles.xml': strToU8(`<styleSheet xmlns="${main}"/>`),
    'xl/worksheets/sheet1.xml': strToU8(rows.startsWith('<?xml') ? rows : `${head}${rows}${tail}`),
    ...more,
  });
}

/** Packed without compression, so that it unpacks to no more than it seems. */
function stored(bytes: Uint8Array): Uint8Array {
  return zipSync(unzipSync(bytes), { level: 0 });
}

const plain = `<row r="1">${cell('A1', 'Set')}</row><row r="2">${cell('A2', '007')}</row>`;

describe('[X13] a workbook from outside', () => {
  it('gives its cells, and nothing of macros, links or paths that lead elsewhere', async () => {
    const more = {
      'xl/vbaProject.bin': strToU8('macro'),
      'xl/externalLinks/externalLink1.xml': strToU8('<externalLink/>'),
      '../../outside.txt': strToU8('x'),
    };
    expect(await readWorkbook(book(plain, more))).toEqual({ tables: [{ name: 'S', rows: [['Set'], ['007']] }] });
  });

  it.each([
    [
      'a formula',
      book(`<row r="1"><c r="A1"><f>1+1</f><v>2</v></c></row>`),
      'it holds formulas: put their values in their place',
    ],
    [
      'names of its own for signs',
      book(`<?xml version="1.0"?><!DOCTYPE x [<!ENTITY a "aaaa">]><worksheet>${plain}</worksheet>`),
      'it holds something else than cells',
    ],
    ['a cell far down', book(`<row r="1048576">${cell('A1048576', 'x')}</row>`), 'it has more than 100000 rows'],
    ['a cell far out', book(`<row r="1">${cell('XFD1', 'x')}</row>`), 'it has more than 200 columns'],
    ['no sheet', zipSync({ 'a.txt': strToU8('x') }), 'it is no workbook'],
    ['something else', strToU8('PK and then nothing'), 'it is no workbook, or it is damaged'],
  ])('with %s is refused in words', async (_, bytes, why) => {
    expect(await readWorkbook(bytes)).toEqual({ why });
  });

  it('that unpacks to far more than its size is refused before it is unpacked', async () => {
    const swollen = book(`${plain}${' '.repeat(40_000_000)}`);
    expect(swollen.length).toBeLessThan(100_000);
    const started = performance.now();
    expect(await readWorkbook(swollen)).toEqual({ why: 'it unpacks to far more than it seems' });
    expect(performance.now() - started).toBeLessThan(5000);
  });

  it('that lies about what it unpacks to gets no more room than it claims', async () => {
    const bytes = book(`${plain}${' '.repeat(40_000_000)}`);
    const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    for (let at = 0; at + 4 < bytes.length; at++) {
      const mark = view.getUint32(at, true);
      if (mark === 0x02014b50 && view.getUint32(at + 24, true) > 1_000_000) view.setUint32(at + 24, 2000, true);
      if (mark === 0x04034b50 && view.getUint32(at + 22, true) > 1_000_000) view.setUint32(at + 22, 2000, true);
    }
    expect(await readWorkbook(bytes)).toEqual({ why: 'it is no workbook, or it is damaged' });
  });

  it('with more parts than any workbook is refused', async () => {
    const parts = Object.fromEntries(Array.from({ length: 1200 }, (_, at) => [`xl/media/${at}.png`, strToU8('x')]));
    expect(await readWorkbook(book(plain, parts))).toEqual({ why: 'it has more than 1000 parts' });
  });

  it('with a claim to be of any size is read by its cells', async () => {
    const claimed = `${head.replace('<sheetData>', '<dimension ref="A1:XFD1048576"/><sheetData>')}${plain}${tail}`;
    expect(await readWorkbook(book(claimed))).toEqual({ tables: [{ name: 'S', rows: [['Set'], ['007']] }] });
  });

  /** Each would keep what reads it busy for minutes, or fill the memory. */
  const endless: readonly (readonly [what: string, rows: string, why: string])[] = [
    ['a million rows without numbers', '<row/>'.repeat(1_000_000), 'it has more than 100000 rows'],
    ['rows in rows', '<row>'.repeat(500_000), 'it has more than 100000 rows'],
    ['a table that is long and wide', `<row r="99999">${cell('GR99999', 'x')}</row>`, 'it has more than 4000000 cells'],
    ['a tag of many parts', `<row ${'a="1" '.repeat(500_000)}/>`, 'it holds something else than cells'],
    ['a long part of a tag', `<row a="${'x'.repeat(8_000_000)}"/>`, 'it holds something else than cells'],
    ['tags in the part of a tag', `<row a="${'<b>'.repeat(500_000)}"/>`, 'it holds something else than cells'],
    ['tags that do not end', '<row <'.repeat(500_000), 'it holds something else than cells'],
    ['remarks that do not end', '<!--'.repeat(500_000), 'it holds something else than cells'],
    ['instructions that do not end', '<?x>'.repeat(500_000), 'it holds something else than cells'],
    ['a text that does not end', cell('A1', 'x'.repeat(8_000_000)), 'it holds something else than cells'],
    ['an address in other signs', cell('&#88;FD1', 'x'), 'it holds something else than cells'],
    ['an address in small letters', cell('xfd1', 'x'), 'it holds something else than cells'],
    ['a second address', `<row r="1"><c r="A1" x:r="XFD1"><v>1</v></c></row>`, 'it has more than 200 columns'],
  ];

  it.each(endless)('with %s is refused at once', async (_, rows, why) => {
    const bytes = stored(book(rows));
    const before = process.cpuUsage();
    expect(await readWorkbook(bytes)).toEqual({ why });
    expect(process.cpuUsage(before).user).toBeLessThan(2_000_000);
  });

  it('with bytes changed or cut anywhere gives cells or a reason', async () => {
    const whole = await workbookOf([
      {
        title: 'S',
        widths: [],
        rows: [
          ['Set', 'Line'],
          ['a', '1'],
        ],
      },
    ]);
    const change = fc.record({ at: fc.nat(whole.length - 1), to: fc.nat(255) });
    await fc.assert(
      fc.asyncProperty(fc.array(change, { minLength: 1, maxLength: 5 }), fc.boolean(), async (changes, cut) => {
        let bytes = Uint8Array.from(whole);
        for (const { at, to } of changes) bytes[at] = to;
        if (cut) bytes = bytes.slice(0, changes[0]?.at);
        const read = await readWorkbook(bytes);
        expect('why' in read ? read.why : read.tables).toBeTruthy();
      }),
      { numRuns: runs(300), seed: 5 },
    );
  });
});
