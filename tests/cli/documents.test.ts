import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { cli, findingsIn, folderWith, libraryText, namesIn } from '../support/cli.ts';
import { pdfOf } from '../support/pdf.ts';
import { builtPdfReader } from '../support/pdf-reader.ts';

const pdfReader = builtPdfReader();
const pdf = pdfOf([{ lines: ['Dry for at least', '20 minutes.'] }]);
const checksum = createHash('sha256').update(pdf).digest('hex');

const device = (quote: string) =>
  `kind: device\nid: pale-forceps\nstatements:\n  s1: {doc: PF-1, rev: A, page: 1, quote: "${quote}"}\ndrying: {time: {at_least: 20 min}, src: s1}\n`;
const registered = (more: string) => `kind: document\nid: pf-1-a\ndoc: PF-1\nrev: A\n${more}`;

const aboutFiles = /quote-not-on-page|document-file|checksum|after-file-change/;

async function found(files: Readonly<Record<string, string | Uint8Array>>): Promise<readonly string[]> {
  const cwd = folderWith({ 'library.ifu.yaml': libraryText, ...files });
  const { out } = await cli(['check', '--format', 'json'], { cwd, pdfReader });
  return namesIn(out).filter((name) => aboutFiles.test(name));
}

describe('check of a library that keeps its documents', () => {
  it('finds nothing where the quotes stand on their pages', async () => {
    const names = await found({
      'd.ifu.yaml': device('Dry for at least 20 minutes.'),
      'doc/pf.ifu.yaml': registered(`file: pf.pdf\nchecksum: "${checksum}"\n`),
      'doc/pf.pdf': pdf,
    });
    expect(names).toEqual([]);
  });

  it('finds a slip in a quote, with what the page says', async () => {
    const cwd = folderWith({
      'library.ifu.yaml': libraryText,
      'd.ifu.yaml': device('Dry for at least 30 minutes.'),
      'pf.ifu.yaml': registered(`file: pf.pdf\nchecksum: "${checksum}"\n`),
      'pf.pdf': pdf,
    });
    const { out } = await cli(['check', '--format', 'json'], { cwd, pdfReader });
    const slip = findingsIn(out).find(({ rule }) => rule === 'quote-not-on-page');
    expect(slip?.message).toBe('Page 1 of pf.pdf reads differently, in its numbers: "Dry for at least 20 minutes."');
    expect(slip?.severity).toBe('error');
  });

  it('marks every value after the file was exchanged', async () => {
    const names = await found({
      'd.ifu.yaml': device('Dry for at least 20 minutes.'),
      'pf.ifu.yaml': registered(`file: pf.pdf\nchecksum: "${'0'.repeat(64)}"\n`),
      'pf.pdf': pdf,
    });
    expect(names).toEqual(['d.ifu.yaml value-after-file-change', 'pf.ifu.yaml document-file-changed']);
  });

  it('says what is missing, damaged or leads elsewhere, and checks the rest', async () => {
    const names = await found({
      'a.ifu.yaml': registered('file: none.pdf\n').replace('pf-1-a', 'a'),
      'b.ifu.yaml': registered('file: bad.pdf\n').replace('pf-1-a', 'b').replace('rev: A', 'rev: B'),
      'c.ifu.yaml': registered('file: ../../../../etc/passwd\n').replace('pf-1-a', 'c').replace('rev: A', 'rev: C'),
      'bad.pdf': '%PDF-1.4 and then nothing',
    });
    expect(names).toEqual([
      'a.ifu.yaml document-file-missing',
      'b.ifu.yaml document-file-unreadable',
      'c.ifu.yaml document-file-missing',
    ]);
  });

  it('says nothing about documents that it could not look at', async () => {
    const cwd = folderWith({ 'library.ifu.yaml': libraryText, 'a.ifu.yaml': registered('file: none.pdf\n') });
    const { out } = await cli(['check', '--format', 'json'], { cwd });
    expect(namesIn(out).filter((name) => aboutFiles.test(name))).toEqual([]);
  });
});
