import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { deflateSync } from 'node:zlib';
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { keptFileAt, readKeptFile } from '../../../server/src/host/kept-files.ts';
import { PdfReader } from '../../../server/src/host/pdf/pdf-reader.ts';
import { folderWith } from '../../support/cli.ts';
import { pdfOf } from '../../support/pdf.ts';
import { builtPdfReader } from '../../support/pdf-reader.ts';

const program = builtPdfReader();
const reader = new PdfReader(program);
afterAll(() => reader.end());

const twoPages = pdfOf([
  { lines: ['Expose at 132 \u00b0C for 4', 'minutes. Rinse (twice) with ster-', 'ile water.'] },
  { lines: [] },
]);

describe('a document that the library keeps', () => {
  it('gives the text of each page, cleaned as pasted text is, and its checksum', () => {
    const root = folderWith({ 'documents/a.pdf': twoPages });
    expect(keptFileAt(root, 'documents/a.pdf', reader)).toEqual({
      state: 'read',
      sha256: createHash('sha256').update(twoPages).digest('hex'),
      pages: [{ text: 'Expose at 132 °C for 4\nminutes. Rinse (twice) with sterile water.' }, { text: '' }],
    });
  });

  it('is read the same by a server, which does not wait', async () => {
    const root = folderWith({ 'a.pdf': twoPages });
    expect(await readKeptFile(root, 'a.pdf', reader)).toEqual(keptFileAt(root, 'a.pdf', reader));
  });

  it('tells the numbers printed on its pages where they differ from the count', () => {
    const labelled = pdfOf([{ lines: ['one'] }, { lines: ['two'] }], { labels: '/St 11 /S /D' });
    expect(reader.readNow(labelled)).toEqual({
      pages: [
        { text: 'one', label: '11' },
        { text: 'two', label: '12' },
      ],
    });
  });
});

describe('what can be wrong with it', () => {
  it.each([
    ['no PDF', new Uint8Array(Buffer.from('PK\u0003\u0004 something else')), 'no-pdf'],
    ['an empty file', new Uint8Array(), 'no-pdf'],
    ['a beginning and nothing else', new Uint8Array(Buffer.from('%PDF-1.7\n')), 'broken'],
    ['a password', pdfOf([{ lines: ['x'] }], { trailer: locked() }), 'locked'],
    ['too many pages', pdfOf(Array.from({ length: 2001 }, () => ({ lines: [] }))), 'too-many-pages'],
  ])('%s is a value, not an exception', (_, bytes, why) => {
    const root = folderWith({ 'a.pdf': bytes });
    expect(keptFileAt(root, 'a.pdf', reader)).toMatchObject({ state: 'unread', why });
  });

  it('what takes too long is stopped, and the next file is read all the same', () => {
    const impatient = new PdfReader(program, { milliseconds: 300, growth: 1_000_000_000 });
    const long = pdfOf(Array.from({ length: 1500 }, () => ({ lines: Array.from({ length: 60 }, () => 'rinse well') })));
    expect(impatient.readNow(long)).toEqual({ why: 'too-slow' });
    const patient = new PdfReader(program);
    expect(patient.readNow(pdfOf([{ lines: ['next'] }]))).toEqual({ pages: [{ text: 'next' }] });
    impatient.end();
    patient.end();
  });

  it('a stream that unpacks to a thousand times its size is given up', () => {
    const careful = new PdfReader(program, { milliseconds: 20_000, growth: 150_000_000 });
    const bomb = pdfOf([{ lines: [], deflated: deflateSync(Buffer.alloc(400_000_000, ' ')) }]);
    expect(bomb.length).toBeLessThan(1_000_000);
    expect(careful.readNow(bomb)).toEqual({ why: 'too-slow' });
    careful.end();
  });

  it('an action at opening is left alone', () => {
    const catalog = '/OpenAction << /S /JavaScript /JS (throw new Error\\(1\\)) >>';
    expect(reader.readNow(pdfOf([{ lines: ['text'] }], { catalog }))).toEqual({ pages: [{ text: 'text' }] });
  });

  it('bytes that were changed or cut anywhere give pages or a reason', () => {
    const change = fc.record({ at: fc.nat(twoPages.length - 1), to: fc.nat(255), cut: fc.boolean() });
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 6 }), (changes) => {
        let bytes = Uint8Array.from(twoPages);
        for (const { at, to } of changes) bytes[at] = to;
        if (changes[0]?.cut === true) bytes = bytes.slice(0, changes[0].at);
        const read = reader.readNow(bytes);
        expect('pages' in read ? read.pages.length : read.why).toBeTruthy();
      }),
      { numRuns: 150, seed: 7 },
    );
  });
});

describe('the program that reads documents', () => {
  it('has no way over a network and loads no drawing package', () => {
    const text = readFileSync(program, 'utf8');
    expect(text).not.toMatch(
      /\bXMLHttpRequest\b|\bWebSocket\b|\bEventSource\b|node:https?\b|["'](?:https?|net|tls|dgram)["']\)/,
    );
    expect(text).not.toMatch(/(?:await|return|=|\()\s?fetch\(/);
    expect(text).not.toContain('import.meta');
  });
});

describe('[X02] a path that leads out of the library', () => {
  it('is as if nothing were there, whether or not something is', () => {
    const outside = folderWith({ 'a.pdf': twoPages });
    const root = folderWith({ 'b.pdf': twoPages });
    mkdirSync(join(root, 'pipe.pdf'));
    symlinkSync(join(outside, 'a.pdf'), join(root, 'link.pdf'));
    symlinkSync(outside, join(root, 'folder'));
    const ways = ['../a.pdf', '/etc/passwd', 'link.pdf', 'folder/a.pdf', 'folder/none.pdf', 'pipe.pdf', 'none.pdf', ''];
    for (const path of ways) expect(keptFileAt(root, path, reader)).toEqual({ state: 'missing' });
    writeFileSync(join(root, 'c.pdf'), twoPages);
    expect(keptFileAt(root, 'c.pdf', reader)).toMatchObject({ state: 'read' });
  });
});

function locked(): string {
  const key = '12345678901234567890123456789012';
  return `/Encrypt << /Filter /Standard /V 1 /R 2 /O (${key}) /U (${key}) /P -4 >> /ID [(a) (b)]`;
}
