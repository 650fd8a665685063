import { symlinkSync } from 'node:fs';
import path from 'node:path';
import { PassThrough } from 'node:stream';
import { afterEach, describe, expect, it } from 'vitest';
import {
  createConnection,
  createProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import type { Disk } from '../../../server/src/lsp/disk.ts';
import { serve } from '../../../server/src/lsp/server.ts';
import { addressOf, isWithin, pathOfUri, uriOfPath } from '../../../server/src/lsp/uris.ts';
import { testDay } from '../../support/examples.ts';
import { eventually, TestClient, TestFolder } from '../../support/lsp-client.ts';
import { deviceText, hotLimit, libraryText, setText, unknownDevice } from '../../support/lsp-rules.ts';

const oddUris = [
  'untitled:Untitled-1',
  'git:/x/a.ifu.yaml?%7B%22ref%22%3A%22HEAD%22%7D',
  'vscode-vfs://github/x/a.ifu.yaml',
  'file:///a/%2e%2e/b.ifu.yaml',
  'file:///a/..%2Fb.ifu.yaml',
  'file:///a%00b.ifu.yaml',
  'file:///%E0%A4%A.ifu.yaml',
  'file:///a?x=1',
  'not a uri',
  '',
  'file:',
  'https://example.invalid/a.ifu.yaml',
];

const forbidden: Disk = {
  realFolder: () => expect.unreachable('the disk was asked for a folder'),
  librariesFor: (at) => expect.unreachable(`the disk was asked for ${at}`),
  list: () => expect.unreachable('the disk was listed'),
  load: () => expect.unreachable('the disk was read'),
};

function rawPair(disk: Disk) {
  const up = new PassThrough();
  const down = new PassThrough();
  const client = createProtocolConnection(new StreamMessageReader(down), new StreamMessageWriter(up));
  serve(createConnection(new StreamMessageReader(up), new StreamMessageWriter(down)), {
    disk,
    rules: [hotLimit],
    today: () => testDay,
  });
  client.listen();
  return client;
}

let folder: TestFolder | undefined;
afterEach(() => folder?.remove());

describe('[X15] URIs', () => {
  it('lead to a path only when they are plain file URIs', () => {
    expect(oddUris.map(pathOfUri)).toEqual(oddUris.map(() => undefined));
    expect(pathOfUri('file:///C:/a')).toBe('c:/a');
    expect(pathOfUri('file:///c%3A/a')).toBe('c:/a');
    expect(pathOfUri('file://host/share/a')).toBe('//host/share/a');
    expect(addressOf('file:///C:/x y/é.ifu.yaml')).toBe('file:///c%3A/x%20y/%C3%A9.ifu.yaml');
    expect(uriOfPath('/a#b/(1)%.ifu.yaml')).toBe('file:///a%23b/%281%29%25.ifu.yaml');
    expect(isWithin('/a/b', '/a/bc')).toBe(false);
  });

  it('of other schemes never touch the disk; their documents are checked by themselves', async () => {
    const client = rawPair(forbidden);
    await client.sendRequest('initialize', {
      processId: null,
      rootUri: null,
      capabilities: {},
      workspaceFolders: [{ uri: 'vscode-vfs://github/x', name: 'x' }],
    });
    await client.sendNotification('initialized', {});
    const told = new Map<string, number>();
    client.onNotification(
      'textDocument/publishDiagnostics',
      ({ uri, diagnostics }: { uri: string; diagnostics: unknown[] }) => {
        told.set(uri, diagnostics.length);
      },
    );
    for (const uri of oddUris) {
      await client.sendNotification('textDocument/didOpen', {
        textDocument: { uri, languageId: 'traywright-rules', version: 1, text: deviceText('pale') },
      });
      const position = { line: 4, character: 20 };
      expect(await client.sendRequest('textDocument/hover', { textDocument: { uri }, position })).toMatchObject({
        contents: {},
      });
      await client.sendRequest('textDocument/definition', {
        textDocument: { uri },
        position: { line: -1, character: 1e9 },
      });
      await client.sendRequest('textDocument/documentSymbol', { textDocument: { uri } });
    }
    await eventually('all to be told', () => told.size === oddUris.length);
    expect([...told.values()]).toEqual(oddUris.map(() => 1));
    await client.sendNotification('workspace/didChangeWatchedFiles', {
      changes: oddUris.map((uri) => ({ uri, type: 2 })),
    });
    for (const uri of oddUris) await client.sendNotification('textDocument/didClose', { textDocument: { uri } });
    await eventually('all to be taken back', () => [...told.values()].every((count) => count === 0));
  });
});

describe('[X15] messages out of turn', () => {
  it('requests before initialize, unknown ones and a second greeting get an error', async () => {
    const client = rawPair(forbidden);
    await expect(
      client.sendRequest('textDocument/hover', {
        textDocument: { uri: 'untitled:a' },
        position: { line: 0, character: 0 },
      }),
    ).rejects.toMatchObject({ code: -32002 });
    await client.sendNotification('textDocument/didOpen', {
      textDocument: { uri: 'untitled:a', languageId: 'x', version: 1, text: 'a' },
    });
    await client.sendRequest('initialize', { processId: null, rootUri: null, capabilities: {} });
    await expect(
      client.sendRequest('initialize', { processId: null, rootUri: null, capabilities: {} }),
    ).rejects.toMatchObject({ code: -32600 });
    await expect(client.sendRequest('no/such')).rejects.toMatchObject({ code: -32601 });
    await expect(client.sendRequest('textDocument/hover', { broken: true })).rejects.toMatchObject({ code: -32603 });
    await client.sendNotification('textDocument/didChange', { textDocument: null, contentChanges: 3 });
    await client.sendRequest('shutdown');
    await expect(
      client.sendRequest('textDocument/hover', {
        textDocument: { uri: 'untitled:a' },
        position: { line: 0, character: 0 },
      }),
    ).rejects.toMatchObject({ code: -32600 });
  });
});

describe('folders', () => {
  it('a rule file opened alone brings its library along, and only the open one is told', async () => {
    folder = new TestFolder({
      'library.ifu.yaml': libraryText,
      'a/pale.ifu.yaml': deviceText('pale'),
      'knee.ifu.yaml': setText('knee', 'pale', 'gone'),
    });
    const client = await TestClient.start({ folders: [], rules: [unknownDevice, hotLimit] });
    await client.open(folder.uri('knee.ifu.yaml'), setText('knee', 'pale', 'gone'));
    await eventually('the finding', () => client.saidOf(folder?.uri('knee.ifu.yaml') ?? '').length === 1);
    expect(client.saidOf(folder.uri('knee.ifu.yaml'))).toEqual(['No file describes "gone".']);
    expect([...client.pushed.keys()]).toEqual([folder.uri('knee.ifu.yaml')]);
  });

  it('two libraries below one folder are kept apart', async () => {
    folder = new TestFolder({
      'one/library.ifu.yaml': libraryText,
      'one/pale.ifu.yaml': deviceText('pale', '1 C'),
      'two/library.ifu.yaml': libraryText,
      'two/knee.ifu.yaml': setText('knee', 'pale'),
    });
    const client = await TestClient.start({ folders: [folder.path], rules: [unknownDevice] });
    await eventually('the finding', () => client.saidOf(folder?.uri('two/knee.ifu.yaml') ?? '').length === 1);
  });

  it('a folder opened through a link is spelled as the editor spells it', async () => {
    folder = new TestFolder({ 'real/library.ifu.yaml': libraryText, 'real/knee.ifu.yaml': setText('knee', 'gone') });
    const link = path.join(folder.path, 'link');
    symlinkSync(path.join(folder.path, 'real'), link);
    const client = await TestClient.start({ folders: [link], rules: [unknownDevice] });
    await eventually('the finding', () => client.saidOf(folder?.uri('link/knee.ifu.yaml') ?? '').length === 1);
    await client.open(folder.uri('link/knee.ifu.yaml'), 'kind: set\nid: knee\n');
    await eventually('the edit', () => client.saidOf(folder?.uri('link/knee.ifu.yaml') ?? '').length === 0);
  });

  it('another spelling of a URI is the same file, and is answered as spelled', async () => {
    folder = new TestFolder({ 'library.ifu.yaml': libraryText, 'a b.ifu.yaml': setText('knee', 'gone') });
    const client = await TestClient.start({ folders: [folder.path], rules: [unknownDevice] });
    await eventually('the finding', () => client.saidOf(folder?.uri('a b.ifu.yaml') ?? '').length === 1);
    const spelled = folder.uri('a b.ifu.yaml').replace('%20', ' ');
    await client.open(spelled, setText('knee', 'gone', 'lost'));
    await eventually('the finding', () => client.saidOf(spelled).length === 2);
  });
});
