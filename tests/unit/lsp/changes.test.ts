import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { IsoDate } from '../../../server/src/base/brand.ts';
import { defineRule } from '../../../server/src/rules/rule.ts';
import { eventually, TestClient, TestFolder } from '../../support/lsp-client.ts';
import { deviceText, hotLimit, libraryText, setText, throwing, unknownDevice } from '../../support/lsp-rules.ts';

let folder: TestFolder;
let client: TestClient;
const rules = [unknownDevice, hotLimit];

beforeEach(async () => {
  folder = new TestFolder({
    'library.ifu.yaml': libraryText,
    'pale.ifu.yaml': deviceText('pale', '130 C'),
    'knee.ifu.yaml': setText('knee', 'pale'),
    'more/hip.ifu.yaml': setText('hip', 'gone'),
  });
  client = await TestClient.start({ folders: [folder.path], rules });
  await eventually('the first check', () => client.saidOf(folder.uri('more/hip.ifu.yaml')).length === 1);
});
afterEach(() => folder.remove());

describe('findings follow what happens to files', () => {
  it('an open document stands before the disk, and other files follow it', async () => {
    await client.open(folder.uri('pale.ifu.yaml'), deviceText('pale', '130 C'));
    await client.replace(folder.uri('pale.ifu.yaml'), deviceText('paler', '130 C'));
    await eventually('the set to follow', () => client.saidOf(folder.uri('knee.ifu.yaml')).length === 1);
    expect(client.saidOf(folder.uri('knee.ifu.yaml'))).toEqual(['No file describes "pale".']);
    await client.close(folder.uri('pale.ifu.yaml'));
    await eventually('the disk to count again', () => client.saidOf(folder.uri('knee.ifu.yaml')).length === 0);
  });

  it('a file that comes, changes and goes', async () => {
    folder.write('new.ifu.yaml', deviceText('gone', '150 C'));
    await client.onDisk([{ uri: folder.uri('new.ifu.yaml'), type: 1 }]);
    await eventually('the new file', () => client.saidOf(folder.uri('new.ifu.yaml')).length === 1);
    await eventually('the set to know it', () => client.saidOf(folder.uri('more/hip.ifu.yaml')).length === 0);
    folder.write('new.ifu.yaml', deviceText('gone', '120 C'));
    await client.onDisk([{ uri: folder.uri('new.ifu.yaml'), type: 2 }]);
    await eventually('the change', () => client.saidOf(folder.uri('new.ifu.yaml')).length === 0);
    folder.delete('new.ifu.yaml');
    await client.onDisk([{ uri: folder.uri('new.ifu.yaml'), type: 3 }]);
    await eventually('the set to miss it', () => client.saidOf(folder.uri('more/hip.ifu.yaml')).length === 1);
  });

  it('a renamed file takes its findings along', async () => {
    folder.write('sets/hip.ifu.yaml', setText('hip', 'gone'));
    folder.delete('more/hip.ifu.yaml');
    await client.onDisk([
      { uri: folder.uri('more/hip.ifu.yaml'), type: 3 },
      { uri: folder.uri('sets/hip.ifu.yaml'), type: 1 },
    ]);
    await eventually('the new name', () => client.saidOf(folder.uri('sets/hip.ifu.yaml')).length === 1);
    expect(client.saidOf(folder.uri('more/hip.ifu.yaml'))).toEqual([]);
  });

  it('a folder that comes brings everything in it, told by its name alone; other new files change nothing', async () => {
    folder.write('copied/toe.ifu.yaml', setText('toe', 'gone'));
    folder.write('notes', 'not a rule file');
    await client.onDisk([
      { uri: folder.uri('notes'), type: 1 },
      { uri: folder.uri('copied'), type: 1 },
    ]);
    await eventually('the file in it', () => client.saidOf(folder.uri('copied/toe.ifu.yaml')).length === 1);
  });

  it('a deleted folder takes everything in it along, told by its name alone', async () => {
    folder.delete('more');
    await client.onDisk([{ uri: folder.uri('more'), type: 3 }]);
    await eventually('nothing to be left', () => client.saidOf(folder.uri('more/hip.ifu.yaml')).length === 0);
  });

  it('a library that goes, and one that comes', async () => {
    folder.delete('library.ifu.yaml');
    await client.onDisk([{ uri: folder.uri('library.ifu.yaml'), type: 3 }]);
    await eventually('nothing to be told', () => client.saidOf(folder.uri('more/hip.ifu.yaml')).length === 0);
    folder.write('library.ifu.yaml', libraryText);
    await client.onDisk([{ uri: folder.uri('library.ifu.yaml'), type: 1 }]);
    await eventually('the library to be back', () => client.saidOf(folder.uri('more/hip.ifu.yaml')).length === 1);
  });

  it('a folder that the library leaves out', async () => {
    await client.open(folder.uri('library.ifu.yaml'), libraryText);
    await client.replace(folder.uri('library.ifu.yaml'), `${libraryText}generated: [more]\n`);
    await eventually('the folder to be left out', () => client.saidOf(folder.uri('more/hip.ifu.yaml')).length === 0);
    await client.replace(folder.uri('library.ifu.yaml'), libraryText);
    await eventually('the folder to be back', () => client.saidOf(folder.uri('more/hip.ifu.yaml')).length === 1);
  });

  it('a second folder opened and closed again', async () => {
    const other = new TestFolder({
      'deep/library.ifu.yaml': libraryText,
      'deep/hip.ifu.yaml': setText('hip', 'nowhere'),
    });
    const at = { uri: other.uri(''), name: 'other' };
    await client.connection.sendNotification('workspace/didChangeWorkspaceFolders', {
      event: { added: [at], removed: [] },
    });
    await eventually('the second library', () => client.saidOf(other.uri('deep/hip.ifu.yaml')).length === 1);
    await client.connection.sendNotification('workspace/didChangeWorkspaceFolders', {
      event: { added: [], removed: [at] },
    });
    await eventually('the second library to go', () => client.saidOf(other.uri('deep/hip.ifu.yaml')).length === 0);
    expect(client.saidOf(folder.uri('more/hip.ifu.yaml'))).toHaveLength(1);
    other.remove();
  });
});

describe('bursts', () => {
  it('[R12] two hundred edits at once end in the last state, checked far fewer times', async () => {
    const uri = folder.uri('pale.ifu.yaml');
    await client.open(uri, deviceText('pale', '130 C'));
    await client.settled();
    const before = client.pushes.length;
    for (let i = 0; i < 200; i++)
      void client.replace(uri, deviceText('pale', i % 2 === 0 ? '141 C' : `${100 + i} C x`));
    void client.replace(uri, deviceText('pale', '150 C'));
    await client.settled();
    await eventually('the last state', () => client.pushed.get(uri)?.version === 202);
    expect(client.saidOf(uri)).toEqual(['The limit is high.']);
    expect(client.pushes.length - before).toBeLessThan(60);
  });

  it('[R09] a thousand files that come and go within a moment leave nothing behind', async () => {
    const names = Array.from({ length: 1000 }, (_, i) => `many/d${i}.ifu.yaml`);
    for (const name of names) folder.write(name, deviceText(name.slice(5, -9), '150 C'));
    await client.onDisk(names.map((name) => ({ uri: folder.uri(name), type: 1 as const })));
    folder.delete('many');
    await client.onDisk([{ uri: folder.uri('many'), type: 3 }]);
    await client.settled();
    await eventually(
      'nothing to be left',
      () =>
        [...client.pushed].filter(([uri, { diagnostics }]) => uri.includes('/many/') && diagnostics.length > 0)
          .length === 0,
    );
    expect(client.saidOf(folder.uri('more/hip.ifu.yaml'))).toHaveLength(1);
  });
});

describe('faults of ours', () => {
  it('[R13] a rule that throws costs one finding; the others still run', async () => {
    const other = await TestClient.start({ folders: [folder.path], rules: [throwing, hotLimit] });
    folder.write('pale.ifu.yaml', deviceText('pale', '150 C'));
    await other.onDisk([{ uri: folder.uri('pale.ifu.yaml'), type: 2 }]);
    await eventually('both findings', () => other.saidOf(folder.uri('pale.ifu.yaml')).length === 2);
    expect(other.pushed.get(folder.uri('pale.ifu.yaml'))?.diagnostics.map(({ code }) => code)).toEqual([
      'internal',
      'test-hot-limit',
    ]);
  });

  it('findings of yesterday are judged anew', async () => {
    let today = '2025-03-03' as IsoDate;
    const dated = defineRule({
      ...unknownDevice,
      id: 'test-dated',
      kinds: ['device'],
      check: (device, context) => context.report({ at: device.at, message: `Today is ${context.today}.` }),
    });
    const other = await TestClient.start({ folders: [folder.path], rules: [dated], today: () => today });
    await eventually('the first day', () => other.saidOf(folder.uri('pale.ifu.yaml'))[0] === 'Today is 2025-03-03.');
    today = '2025-03-04' as IsoDate;
    await other.open(folder.uri('knee.ifu.yaml'), setText('knee', 'pale'));
    await eventually('the second day', () => other.saidOf(folder.uri('pale.ifu.yaml'))[0] === 'Today is 2025-03-04.');
  });
});
