import { createHash } from 'node:crypto';
import {
  chmodSync,
  copyFileSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { keptFileAt, readKeptFile } from '../../../server/src/host/kept-files.ts';
import { PdfReader } from '../../../server/src/host/pdf/pdf-reader.ts';
import { PdfTexts } from '../../../server/src/host/pdf-texts.ts';
import { cli, folderWith, libraryText } from '../../support/cli.ts';
import { pdfOf } from '../../support/pdf.ts';
import { builtPdfReader } from '../../support/pdf-reader.ts';

const program = builtPdfReader();
const reader = new PdfReader(program);
const pdf = pdfOf([{ lines: ['Dry for at least', '20 minutes.'] }, { lines: ['Second page'] }]);
const sha256 = createHash('sha256').update(pdf).digest('hex');
const name = `${sha256}.pdf-text`;

/** A reader that must not be asked. */
const none = new PdfReader('/nowhere');

describe('texts of PDFs', () => {
  it('are read once, and from then on known by the bytes of the PDF, whatever its name', async () => {
    const [root, kept] = [folderWith({ 'a.pdf': pdf }), join(folderWith({}), 'new/cache')];
    const first = keptFileAt(root, 'a.pdf', reader, new PdfTexts(kept, program));
    copyFileSync(join(root, 'a.pdf'), join(root, 'b.pdf'));
    expect(keptFileAt(root, 'b.pdf', none, new PdfTexts(kept, program))).toEqual(first);
    expect(first).toEqual(keptFileAt(root, 'a.pdf', reader));
    expect(await readKeptFile(root, 'a.pdf', none, new PdfTexts(kept, program))).toEqual(first);
    expect(readdirSync(kept)).toEqual([name]);
    expect([kept, join(kept, name)].map((path) => statSync(path).mode & 0o777)).toEqual([0o700, 0o600]);
  });

  it('of another program, or under the name of another PDF, are not used', () => {
    const kept = folderWith({ 'other-program.cjs': 'x' });
    new PdfTexts(kept, program).keep(sha256, [{ text: 'old' }]);
    expect(new PdfTexts(kept, program).pagesOf(sha256)).toEqual([{ text: 'old' }]);
    expect(new PdfTexts(kept, join(kept, 'other-program.cjs')).pagesOf(sha256)).toBeUndefined();
    expect(new PdfTexts(kept, '/nowhere').pagesOf(sha256)).toBeUndefined();
    const other = 'f'.repeat(64);
    copyFileSync(join(kept, name), join(kept, `${other}.pdf-text`));
    expect(new PdfTexts(kept, program).pagesOf(other)).toBeUndefined();
  });

  it('are not kept of what could not be read, nor where nothing can be written', () => {
    const [root, kept] = [
      folderWith({ 'a.pdf': '%PDF-1.4 and then nothing', 'b.pdf': pdf }),
      folderWith({ file: 'x' }),
    ];
    expect(keptFileAt(root, 'a.pdf', reader, new PdfTexts(kept, program))).toMatchObject({ state: 'unread' });
    expect(readdirSync(kept)).toEqual(['file']);
    const under = new PdfTexts(join(kept, 'file/below'), program);
    expect(keptFileAt(root, 'b.pdf', reader, under)).toMatchObject({ state: 'read' });
  });

  it('are used whole or not at all, whatever has happened to them', () => {
    const [root, kept] = [folderWith({ 'a.pdf': pdf }), folderWith({})];
    const right = keptFileAt(root, 'a.pdf', reader, new PdfTexts(kept, program));
    const whole = readFileSync(join(kept, name));
    const damage = fc.record({ at: fc.nat(whole.length - 1), to: fc.nat(255) });
    fc.assert(
      fc.property(fc.array(damage, { maxLength: 3 }), fc.option(fc.nat(whole.length)), (changes, cut) => {
        const bytes = Uint8Array.from(whole);
        for (const { at, to } of changes) bytes[at] = to;
        writeFileSync(join(kept, name), cut === null ? bytes : bytes.subarray(0, cut));
        expect(keptFileAt(root, 'a.pdf', reader, new PdfTexts(kept, program))).toEqual(right);
      }),
      { numRuns: 200 },
    );
  });

  it('are no link, pipe or folder', () => {
    const kept = folderWith({ 'x/y': 'x' });
    symlinkSync('/dev/zero', join(kept, name));
    expect(new PdfTexts(kept, program).pagesOf(sha256)).toBeUndefined();
    const second = folderWith({});
    mkdirSync(join(second, name));
    expect(new PdfTexts(second, program).pagesOf(sha256)).toBeUndefined();
    new PdfTexts(second, program).keep(sha256, [{ text: 'x' }]);
    expect(statSync(join(second, name)).isDirectory()).toBe(true);
  });

  it('that nobody has asked for in a long time go, and nothing else does', () => {
    const old = `${'0'.repeat(64)}.pdf-text`;
    const kept = folderWith({ [old]: 'x', 'old.txt': 'x' });
    for (const one of [old, 'old.txt']) utimesSync(join(kept, one), 1_000_000_000, 1_000_000_000);
    new PdfTexts(kept, program).keep(sha256, [{ text: 'x' }]);
    expect(readdirSync(kept).sort()).toEqual([name, 'old.txt']);
  });
});

describe('a check with texts that are kept', () => {
  const statement = '  s1: {doc: PF-1, rev: A, page: 1, quote: "Dry for at least 30 minutes."}';
  const root = () =>
    folderWith({
      'library.ifu.yaml': libraryText,
      'd.ifu.yaml': `kind: device\nid: pale\nstatements:\n${statement}\ndrying: {time: {at_least: 30 min}, src: s1}\n`,
      'pf.ifu.yaml': 'kind: document\nid: pf-1-a\ndoc: PF-1\nrev: A\nfile: pf.pdf\n',
      'pf.pdf': pdf,
    });

  it('finds what it finds without, whatever has happened to them', async () => {
    const [cwd, kept] = [root(), folderWith({})];
    const check = async (...more: string[]) =>
      (await cli(['check', '--format', 'json', ...more], { cwd, pdfReader: program })).out;
    const without = await check('--no-cache');
    expect(without).toContain('reads differently, in its numbers');
    expect(await check('--cache', kept)).toBe(without);
    const whole = readFileSync(join(kept, name));
    for (const bytes of [whole, whole.subarray(0, 200), new Uint8Array()]) {
      writeFileSync(join(kept, name), bytes);
      expect(await check('--cache', kept)).toBe(without);
    }
    expect(readFileSync(join(kept, name)).equals(whole)).toBe(true);
  });

  it('neither uses nor keeps them when told so', async () => {
    const [cwd, kept] = [root(), folderWith({})];
    await cli(['check', '--cache', kept, '--no-cache'], { cwd, pdfReader: program });
    expect(readdirSync(kept)).toEqual([]);
  });

  it('goes on where it may not write', async () => {
    const [cwd, kept] = [root(), folderWith({})];
    chmodSync(kept, 0o500);
    expect((await cli(['check', '--cache', kept], { cwd, pdfReader: program })).out).toContain('quote-not-on-page');
    chmodSync(kept, 0o700);
  });
});
