import { afterAll, afterEach, beforeEach, describe, expect, it } from 'vitest';
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
    await eventually('the slip', () => said('d.ifu.yaml').length === 1);
    expect(said('d.ifu.yaml')).toEqual(['Page 1 of pf.pdf reads differently, in its numbers: "Dry for 30 minutes."']);
    expect(read).toEqual(['doc/pf.pdf']);
    folder.write('doc/pf.pdf', text('Dry for 20 minutes.'));
    await client.onDisk([{ uri: folder.uri('doc/pf.pdf'), type: 2 }]);
    await eventually('the new page', () => said('d.ifu.yaml').length === 0);
    folder.delete('doc/pf.pdf');
    await client.onDisk([{ uri: folder.uri('doc/pf.pdf'), type: 3 }]);
    await eventually('the loss', () => said('doc/pf.ifu.yaml').length === 1);
    folder.write('doc/pf.pdf', text('Dry for 20 minutes.'));
    await client.onDisk([{ uri: folder.uri('doc/pf.pdf'), type: 1 }]);
    await eventually('the return', () => said('doc/pf.ifu.yaml').length === 0);
    expect(read.length).toBe(4);
  });

  it('are not read again for what is typed elsewhere', async () => {
    await eventually('the slip', () => client.saidOf(folder.uri('d.ifu.yaml')).length === 1);
    await client.open(folder.uri('d.ifu.yaml'), 'kind: device\nid: d\n');
    await eventually('the typing', () => client.saidOf(folder.uri('d.ifu.yaml')).length === 0);
    expect(read).toEqual(['doc/pf.pdf']);
  });
});
