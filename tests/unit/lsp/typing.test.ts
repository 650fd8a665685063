import { setTimeout as pause } from 'node:timers/promises';
import { afterEach, describe, expect, it } from 'vitest';
import type { Disk } from '../../../server/src/lsp/disk.ts';
import { nodeDisk } from '../../../server/src/lsp/node-disk.ts';
import { defineRule } from '../../../server/src/rules/rule.ts';
import { eventually, pulling, TestClient, TestFolder } from '../../support/lsp-client.ts';
import { deviceText, hotLimit, libraryText, setText, unknownDevice } from '../../support/lsp-rules.ts';

let folder: TestFolder;
afterEach(() => folder.remove());

function busyFor(milliseconds: number): void {
  for (const end = performance.now() + milliseconds; performance.now() < end; );
}

/** Reading a file takes so long that each is a slice of its own. */
const slowDisk: Disk = {
  ...nodeDisk,
  load: (root, file) => {
    busyFor(12);
    return nodeDisk.load(root, file);
  },
};

describe('while a library is read', () => {
  const broken = `${setText('knee', 'zebra')}mass: "4 kg\n`;

  function largeLibrary(): TestFolder {
    const files: Record<string, string> = { 'library.ifu.yaml': libraryText, 'a-knee.ifu.yaml': broken };
    for (let n = 0; n < 40; n++) files[`d${n}.ifu.yaml`] = deviceText(`d${n}`, '130 C');
    return new TestFolder({ ...files, 'zebra.ifu.yaml': deviceText('zebra', '130 C') });
  }

  it('what an open document says by itself is told at once, and nothing that would be wrong a moment later', async () => {
    folder = largeLibrary();
    const uri = folder.uri('a-knee.ifu.yaml');
    const client = await TestClient.start({ folders: [folder.path], rules: [unknownDevice, hotLimit], disk: slowDisk });
    await client.open(uri, broken);
    await client.settled();
    expect(client.pushes[0]).toMatchObject({ uri, version: 1, diagnostics: [{ severity: 1 }] });
    const codes = client.pushes.flatMap(({ diagnostics }) => diagnostics).map(({ code }) => code);
    expect(codes).not.toContain(unknownDevice.id);
    await client.replace(uri, setText('knee', 'nobody'));
    await eventually('the whole judgement', () => client.pushed.get(uri)?.version === 2);
    expect(client.saidOf(uri)).toEqual(['No file describes "nobody".']);
  });

  it('a client that asks is answered at once, and told to ask again when there is more', async () => {
    folder = largeLibrary();
    const uri = folder.uri('a-knee.ifu.yaml');
    const options = { folders: [folder.path], rules: [unknownDevice, hotLimit], capabilities: pulling };
    const client = await TestClient.start({ ...options, disk: slowDisk });
    const ask = (): Promise<{ readonly items: readonly unknown[] }> =>
      client.connection.sendRequest('textDocument/diagnostic', { textDocument: { uri } });
    await client.open(uri, setText('knee', 'nobody'));
    expect((await ask()).items).toEqual([]);
    const outline = await client.connection.sendRequest<readonly unknown[]>('textDocument/documentSymbol', {
      textDocument: { uri },
    });
    expect(outline.length).toBeGreaterThan(0);
    expect(client.refreshes).toBe(0);
    await eventually('the request to ask again', () => client.refreshes === 1);
    expect((await ask()).items).toHaveLength(1);
  });
});

describe('the counts', () => {
  it('are told when a library is whole, of the files in view and of no other', async () => {
    folder = new TestFolder({
      'library.ifu.yaml': libraryText,
      'more/pale.ifu.yaml': deviceText('pale', '150 C'),
      'more/knee.ifu.yaml': setText('knee', 'pale', 'gone'),
      'hip.ifu.yaml': setText('hip', 'gone'),
    });
    const part = folder.path.concat('/more');
    for (const [open, files] of [[folder.path, 4] as const, [part, 2] as const]) {
      const told: { files: number }[] = [];
      const options = { folders: [open], rules: [unknownDevice, hotLimit], disk: slowDisk };
      const client = await TestClient.start({ ...options, initializationOptions: { status: true } });
      client.connection.onNotification('traywright/status', (status: { files: number }) => void told.push(status));
      await eventually('the counts', () => told.length > 0);
      expect(told[0]?.files).toBe(files);
      await client.open(folder.uri('hip.ifu.yaml'), setText('hip', 'nobody'));
      await client.open('untitled:one', setText('one', 'nobody'));
      await eventually('the open documents too', () => told.at(-1)?.files === (open === part ? files + 2 : files + 1));
    }
  });
});

describe('typing', () => {
  it('how a text is shown is answered behind what is wrong with it, also when it was asked before', async () => {
    folder = new TestFolder({ 'library.ifu.yaml': libraryText, 'pale.ifu.yaml': deviceText('pale', '130 C') });
    const textDocument = { uri: folder.uri('pale.ifu.yaml') };
    const options = { folders: [folder.path], rules: [hotLimit], capabilities: pulling };
    const client = await TestClient.start(options);
    await client.open(textDocument.uri, deviceText('pale', '130 C'));
    await client.connection.sendRequest('textDocument/diagnostic', { textDocument });
    await client.replace(textDocument.uri, deviceText('pale', '150 C'));
    const answered: string[] = [];
    const methods = ['documentSymbol', 'foldingRange', 'semanticTokens/full', 'diagnostic'];
    await Promise.all(
      methods.map(async (method) => {
        await client.connection.sendRequest(`textDocument/${method}`, { textDocument });
        answered.push(method);
      }),
    );
    expect(answered[0]).toBe('diagnostic');
  });

  it('is answered for the file itself at once; the files that it affects follow in the next pause', async () => {
    const judged: string[] = [];
    const slow = defineRule({
      ...unknownDevice,
      id: 'test-slow',
      kinds: ['set'],
      check: (set, { view }) => {
        view.get('device', 'pale');
        judged.push(set.id?.text ?? '');
        busyFor(15);
      },
    });
    const sets = Array.from({ length: 30 }, (_, n) => [`s${n}.ifu.yaml`, setText(`s${n}`, 'pale')] as const);
    folder = new TestFolder({
      'library.ifu.yaml': libraryText,
      'pale.ifu.yaml': deviceText('pale', '130 C'),
      ...Object.fromEntries(sets),
    });
    const uri = folder.uri('pale.ifu.yaml');
    const client = await TestClient.start({ folders: [folder.path], rules: [slow, hotLimit] });
    await eventually('the first check', () => judged.length === sets.length);
    await client.open(uri, deviceText('pale', '130 C'));
    await client.settled();
    judged.length = 0;
    for (let key = 0; key < 10; key++) {
      const hot = key % 2 === 0;
      await client.replace(uri, deviceText('pale', hot ? '150 C' : '130 C'));
      await eventually('the answer', () => client.pushed.get(uri)?.version === key + 2);
      expect(client.saidOf(uri)).toHaveLength(hot ? 1 : 0);
      await pause(20);
    }
    expect(judged.length).toBeLessThan(sets.length);
    judged.length = 0;
    await eventually('the sets to follow', () => judged.length >= sets.length);
  });
});
