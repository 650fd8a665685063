import { createHash } from 'node:crypto';
import { symlinkSync } from 'node:fs';
import { afterAll, afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { CodeAction } from 'vscode-languageserver/node';
import { readKeptFile } from '../../../server/src/host/kept-files.ts';
import { PdfReader } from '../../../server/src/host/pdf/pdf-reader.ts';
import { nodeDisk } from '../../../server/src/lsp/node-disk.ts';
import { rule as missing } from '../../../server/src/rules/revision/document-file-missing.ts';
import { rule as notOnPage } from '../../../server/src/rules/source/quote-not-on-page.ts';
import { eventually, TestClient, TestFolder } from '../../support/lsp-client.ts';
import { libraryText } from '../../support/lsp-rules.ts';
import { pdfOf } from '../../support/pdf.ts';
import { builtPdfReader } from '../../support/pdf-reader.ts';

const reader = new PdfReader(builtPdfReader());
afterAll(() => reader.end());

/** Documents are read in a thread of its own, which has to start: on a busy computer that takes a while. */
const within = 15_000;

const text = (words: string) => Buffer.from(pdfOf([{ lines: [words] }])).toString('latin1');

describe('documents that a library in the editor keeps', () => {
  let folder: TestFolder;
  let client: TestClient;
  let read: string[];

  beforeEach(async () => {
    read = [];
    folder = new TestFolder({
      'library.ifu.yaml': libraryText,
      'd.ifu.yaml':
        'kind: device\nid: d\nstatements:\n  s1: {doc: PF-1, rev: A, page: 1, quote: "Dry for 20 minutes."}\n',
      'doc/pf.ifu.yaml': 'kind: document\nid: pf\ndoc: PF-1\nrev: A\nfile: pf.pdf\n',
      'doc/pf.pdf': text('Dry for 30 minutes.'),
    });
    const keptFile = (root: string, path: string) => {
      read.push(path);
      return readKeptFile(root, path, reader);
    };
    client = await TestClient.start({
      folders: [folder.path],
      rules: [notOnPage, missing],
      disk: { ...nodeDisk, keptFile },
    });
  });
  afterEach(() => folder.remove());

  it('are read once, and again when they change, go and come', async () => {
    const said = (file: string) => client.saidOf(folder.uri(file));
    await eventually('the slip', () => said('d.ifu.yaml').length === 1, within);
    expect(said('d.ifu.yaml')).toEqual(['Page 1 of pf.pdf reads differently, in its numbers: "Dry for 30 minutes."']);
    expect(read).toEqual(['doc/pf.pdf']);
    folder.write('doc/pf.pdf', text('Dry for 20 minutes.'));
    await client.onDisk([{ uri: folder.uri('doc/pf.pdf'), type: 2 }]);
    await eventually('the new page', () => said('d.ifu.yaml').length === 0, within);
    folder.delete('doc/pf.pdf');
    await client.onDisk([{ uri: folder.uri('doc/pf.pdf'), type: 3 }]);
    await eventually('the loss', () => said('doc/pf.ifu.yaml').length === 1, within);
    folder.write('doc/pf.pdf', text('Dry for 20 minutes.'));
    await client.onDisk([{ uri: folder.uri('doc/pf.pdf'), type: 1 }]);
    await eventually('the return', () => said('doc/pf.ifu.yaml').length === 0, within);
    expect(read.length).toBe(4);
  });

  it('are not read again for what is typed elsewhere', async () => {
    await eventually('the slip', () => client.saidOf(folder.uri('d.ifu.yaml')).length === 1, within);
    await client.open(folder.uri('d.ifu.yaml'), 'kind: device\nid: d\n');
    await eventually('the typing', () => client.saidOf(folder.uri('d.ifu.yaml')).length === 0, within);
    expect(read).toEqual(['doc/pf.pdf']);
  });
});

describe('a file that is not where its document says', () => {
  const bytes = { first: text('Dry for 30 minutes.'), other: text('Dry for 20 minutes.') };
  const sha256 = (held: string) => createHash('sha256').update(Buffer.from(held)).digest('hex');
  const offersIn = async (
    files: Readonly<Record<string, string>>,
    line: string,
    more = '',
    prepare: (folder: TestFolder) => void = () => undefined,
  ): Promise<readonly CodeAction[]> => {
    const document = `kind: document\nid: pf\ndoc: PF-1\nrev: A\n${line}\n${more}`;
    const folder = new TestFolder({ 'library.ifu.yaml': libraryText, 'doc/pf.ifu.yaml': document, ...files });
    prepare(folder);
    try {
      const keptFile = async (root: string, path: string) =>
        path in files ? await readKeptFile(root, path, reader) : ({ state: 'missing' } as const);
      const client = await TestClient.start({
        folders: [folder.path],
        rules: [missing],
        disk: { ...nodeDisk, keptFile },
      });
      const uri = folder.uri('doc/pf.ifu.yaml');
      await eventually('the loss', () => client.saidOf(uri).length === 1, within);
      const place = { line: 4, character: line.length };
      const offered: readonly CodeAction[] = await client.connection.sendRequest('textDocument/codeAction', {
        textDocument: { uri },
        range: { start: place, end: place },
        context: { diagnostics: client.pushed.get(uri)?.diagnostics ?? [], only: ['quickfix'] },
      });
      for (const { diagnostics } of offered) expect(diagnostics?.[0]?.code).toBe('document-file-missing');
      return offered;
    } finally {
      folder.remove();
    }
  };
  const told = (offered: readonly CodeAction[]) =>
    offered.map(({ title, edit, isPreferred }) => [
      title,
      ...Object.values(edit?.changes ?? {}).flatMap((edits) => edits.map(({ newText }) => newText)),
      ...(isPreferred === true ? ['preferred'] : []),
    ]);

  it('is offered wherever a file of its name lies', async () => {
    const offered = await offersIn(
      { 'papers/PF.pdf': 'x', 'a/b, c/pf.pdf': 'x', 'doc/other.pdf': 'x' },
      'file: pf.pdf',
    );
    expect(told(offered)).toEqual([
      ['Name "../a/b, c/pf.pdf": a file of that name lies there', '"../a/b, c/pf.pdf"'],
      ['Name "../papers/PF.pdf": a file of that name lies there', '../papers/PF.pdf'],
    ]);
  });

  it('is known by its checksum under another name too', async () => {
    const files = { 'papers/renamed.pdf': bytes.first, 'x/pf.pdf': bytes.other };
    const offered = await offersIn(files, 'file: ../old/pf.pdf', `checksum: sha256:${sha256(bytes.first)}\n`);
    expect(told(offered)).toEqual([
      ['Name "../papers/renamed.pdf": that is the file with the stored checksum', '../papers/renamed.pdf'],
      ['Name "../x/pf.pdf": a file of that name, but not the one with the stored checksum', '../x/pf.pdf'],
    ]);
  });

  it('is none of those that another document names, nor what lies outside', async () => {
    const other = 'kind: document\nid: q\ndoc: Q-1\nrev: A\nfile: q.pdf\n';
    expect(await offersIn({ 'doc/q.ifu.yaml': other, 'doc/q.pdf': bytes.first }, 'file: pf.pdf')).toEqual([]);
    expect(told(await offersIn({ 'pf.pdf': 'x' }, 'file: ../../elsewhere/pf.pdf'))).toEqual([
      ['Name "../pf.pdf": a file of that name lies there', '../pf.pdf', 'preferred'],
    ]);
  });

  it('[X02] is never one behind a link; [X08] a name that would not be seen is spelled out', async () => {
    const elsewhere = new TestFolder({ 'pf.pdf': 'x' });
    const offered = await offersIn({ 'a\u202eb/pf.pdf': 'x' }, 'file: pf.pdf', '', ({ path }) => {
      symlinkSync(elsewhere.path, `${path}/linked`);
      symlinkSync(`${elsewhere.path}/pf.pdf`, `${path}/pf.pdf`);
    });
    elsewhere.remove();
    expect(offered.map(({ title }) => title)).toEqual(['Name "../a\\u{202e}b/pf.pdf": a file of that name lies there']);
  });
});
