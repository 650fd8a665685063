import { createHash } from 'node:crypto';
import { existsSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { badText, cli, findingsIn, folderWith, libraryText, namesIn } from '../support/cli.ts';
import { git } from '../support/git.ts';
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

describe('--changed-since', () => {
  const other = pdfOf([{ lines: ['Dry for at least', '30 minutes.'] }]);

  /** A library in git with a document, who cites it, and a file with a fault that nothing concerns. */
  function history(recorded: Uint8Array | string): string {
    const cwd = folderWith({
      'lib/library.ifu.yaml': libraryText,
      'lib/d.ifu.yaml': device('Dry for at least 20 minutes.'),
      'lib/old.ifu.yaml': badText,
      'lib/doc/pf.ifu.yaml': registered(`file: pf.pdf\nchecksum: "${checksum}"\n`),
      'lib/doc/pf.pdf': recorded,
    });
    git(cwd, 'init', '-q', '-b', 'main');
    git(cwd, 'add', '-A');
    git(cwd, 'commit', '-q', '-m', 'first');
    return join(cwd, 'lib');
  }

  async function changed(cwd: string): Promise<readonly string[]> {
    const { out } = await cli(['check', '--changed-since', 'HEAD', '--format', 'json'], { cwd, pdfReader });
    return [...new Set(namesIn(out))];
  }

  it('counts a document of the library that changed, comes or goes: whoever cites it is looked at', async () => {
    const cwd = history(pdf);
    expect(await changed(cwd)).toEqual([]);
    writeFileSync(join(cwd, 'doc/pf.pdf'), other);
    const after = await changed(cwd);
    expect(after).toContain('d.ifu.yaml quote-not-on-page');
    expect(after).toContain('doc/pf.ifu.yaml document-file-changed');
    expect(after.filter((name) => name.startsWith('old.'))).toEqual([]);
    rmSync(join(cwd, 'doc/pf.pdf'));
    expect(await changed(cwd)).toContain('doc/pf.ifu.yaml document-file-missing');
    git(cwd, 'rm', '-q', 'doc/pf.pdf');
    git(cwd, 'commit', '-q', '-m', 'without');
    expect(await changed(cwd)).toEqual([]);
    writeFileSync(join(cwd, 'doc/pf.pdf'), other);
    expect(await changed(cwd)).toContain('d.ifu.yaml quote-not-on-page');
  });

  it('knows a document by the lines that stand for it where large files are recorded elsewhere', async () => {
    const pointer = `version https://git-lfs.github.com/spec/v1\noid sha256:${checksum}\nsize ${pdf.length}\n`;
    const cwd = history(pointer);
    writeFileSync(join(cwd, 'doc/pf.pdf'), pdf);
    expect(await changed(cwd)).toEqual([]);
    writeFileSync(join(cwd, 'doc/pf.pdf'), other);
    expect(await changed(cwd)).toContain('d.ifu.yaml quote-not-on-page');
  });

  it('runs no filter that the repository names for its files', async () => {
    const cwd = history(pdf);
    const mark = join(cwd, 'ran');
    git(cwd, 'config', 'filter.x.clean', `touch ${mark}; cat`);
    git(cwd, 'config', 'filter.x.smudge', `touch ${mark}; cat`);
    writeFileSync(join(cwd, '.gitattributes'), '*.pdf filter=x\n*.yaml filter=x\n');
    writeFileSync(join(cwd, 'doc/pf.pdf'), other);
    writeFileSync(join(cwd, 'd.ifu.yaml'), device('Dry.'));
    expect(await changed(cwd)).toContain('doc/pf.ifu.yaml document-file-changed');
    expect(existsSync(mark)).toBe(false);
  });
});
