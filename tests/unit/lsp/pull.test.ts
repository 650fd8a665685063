import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type {
  DocumentDiagnosticReport,
  WorkspaceDiagnosticReport,
  WorkspaceDocumentDiagnosticReport,
} from 'vscode-languageserver/node';
import { CancellationTokenSource, ProgressType } from 'vscode-languageserver/node';
import { eventually, firstLine, pulling, TestClient, TestFolder } from '../../support/lsp-client.ts';
import { deviceText, hotLimit, libraryText, setText, unknownDevice } from '../../support/lsp-rules.ts';

let folder: TestFolder;
let client: TestClient;

beforeEach(async () => {
  folder = new TestFolder({
    'library.ifu.yaml': libraryText,
    'pale.ifu.yaml': deviceText('pale', '130 C'),
    'knee.ifu.yaml': setText('knee', 'pale'),
    'hip.ifu.yaml': setText('hip', 'gone'),
  });
  client = await TestClient.start({ folders: [folder.path], rules: [unknownDevice, hotLimit], capabilities: pulling });
});
afterEach(() => folder.remove());

function pull(uri: string): Promise<DocumentDiagnosticReport> {
  return client.connection.sendRequest('textDocument/diagnostic', { textDocument: { uri } });
}

function said(report: DocumentDiagnosticReport | WorkspaceDocumentDiagnosticReport): readonly string[] {
  return report.kind === 'full' ? report.items.map(firstLine) : ['unchanged'];
}

describe('findings on request', () => {
  it('a request for a text that is no longer the newest is cancelled, and asks to be put again', async () => {
    const uri = folder.uri('pale.ifu.yaml');
    await client.open(uri, deviceText('pale', '130 C'));
    const early = pull(uri);
    void client.replace(uri, deviceText('pale', '150 C'));
    await expect(early).rejects.toMatchObject({ code: -32802, data: { retriggerRequest: true } });
    expect(said(await pull(uri))).toEqual(['The limit is high.']);
  });

  it('a request that the client takes back ends at once', async () => {
    const source = new CancellationTokenSource();
    const answer = client.connection.sendRequest('workspace/diagnostic', { previousResultIds: [] }, source.token);
    source.cancel();
    expect(await answer).toEqual({ items: [] });
  });

  it('a request about a file that the client takes back, to ask it anew, is not told that it need not ask again', async () => {
    const uri = folder.uri('pale.ifu.yaml');
    await client.open(uri, deviceText('pale', '130 C'));
    void client.replace(uri, deviceText('pale', '150 C'));
    const source = new CancellationTokenSource();
    const params = { textDocument: { uri } };
    const early = client.connection.sendRequest('textDocument/diagnostic', params, source.token);
    source.cancel();
    const failed: unknown = await early.catch((reason: unknown) => reason);
    expect(failed).toMatchObject({ code: -32800 });
    expect(failed).not.toHaveProperty('data.retriggerRequest');
    expect(said(await pull(uri))).toEqual(['The limit is high.']);
  });

  it('two hundred edits, each with its request, end in the right state', async () => {
    const uri = folder.uri('pale.ifu.yaml');
    await client.open(uri, deviceText('pale', '130 C'));
    const answers: Promise<unknown>[] = [];
    for (let i = 0; i < 200; i++) {
      void client.replace(uri, deviceText('pale', i === 199 ? '150 C' : '1 C'));
      answers.push(pull(uri).catch(() => 'cancelled'));
    }
    const ended = await Promise.all(answers);
    expect(ended.filter((answer) => answer === 'cancelled').length).toBeGreaterThan(100);
    expect(said(await pull(uri))).toEqual(['The limit is high.']);
  });

  it('the question about the workspace stays open, and every change follows in a part', async () => {
    const parts: WorkspaceDocumentDiagnosticReport[] = [];
    client.connection.onProgress(
      new ProgressType<WorkspaceDiagnosticReport>(),
      'parts',
      ({ items }) => void parts.push(...items),
    );
    const source = new CancellationTokenSource();
    const ended = client.connection.sendRequest(
      'workspace/diagnostic',
      { previousResultIds: [], partialResultToken: 'parts' },
      source.token,
    );
    await eventually('the first part', () => parts.length === 1);
    expect(parts.map(({ uri }) => uri)).toEqual([folder.uri('hip.ifu.yaml')]);
    folder.delete('pale.ifu.yaml');
    await client.onDisk([{ uri: folder.uri('pale.ifu.yaml'), type: 3 }]);
    await eventually('the next part', () => parts.length === 2);
    expect(parts[1]?.uri).toBe(folder.uri('knee.ifu.yaml'));
    folder.delete('hip.ifu.yaml');
    await client.onDisk([{ uri: folder.uri('hip.ifu.yaml'), type: 3 }]);
    await eventually('the part that takes back', () => parts.length === 3);
    expect(parts[2]).toMatchObject({ uri: folder.uri('hip.ifu.yaml'), items: [] });
    source.cancel();
    expect(await ended).toEqual({ items: [] });
  });

  it('a client without parts is answered with what is new to it, and otherwise kept waiting', async () => {
    const first: WorkspaceDiagnosticReport = await client.connection.sendRequest('workspace/diagnostic', {
      previousResultIds: [],
    });
    const previousResultIds = first.items.map(({ uri, resultId }) => ({ uri, value: resultId }));
    let next: WorkspaceDiagnosticReport | undefined;
    void client.connection.sendRequest('workspace/diagnostic', { previousResultIds }).then((report) => {
      next = report as WorkspaceDiagnosticReport;
    });
    await client.settled();
    expect(next).toBeUndefined();
    folder.write('hip.ifu.yaml', setText('hip', 'pale'));
    await client.onDisk([{ uri: folder.uri('hip.ifu.yaml'), type: 2 }]);
    await eventually('the answer', () => next !== undefined);
    expect(next?.items.map((item) => [item.uri, said(item)])).toEqual([[folder.uri('hip.ifu.yaml'), []]]);
  });

  it('open documents that another file concerns are asked for again; the edited one is not', async () => {
    const set = folder.uri('knee.ifu.yaml');
    const device = folder.uri('pale.ifu.yaml');
    await client.open(set, setText('knee', 'pale'));
    await client.open(device, deviceText('pale'));
    await pull(set);
    await pull(device);
    await client.replace(device, deviceText('pale', '150 C'));
    await pull(device);
    await client.settled();
    expect(client.refreshes).toBe(0);
    await client.replace(device, deviceText('other', '150 C'));
    await pull(device);
    await eventually('the request to ask again', () => client.refreshes === 1);
    expect(said(await pull(set))).toEqual(['No file describes "pale".']);
  });
});
