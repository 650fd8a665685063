import { afterEach, describe, expect, it } from 'vitest';
import type { Diagnostic, DocumentDiagnosticReport, WorkspaceDiagnosticReport } from 'vscode-languageserver/node';
import { fileId } from '../../../server/src/base/brand.ts';
import { LineIndex } from '../../../server/src/base/line-index.ts';
import { printable } from '../../../server/src/base/printable.ts';
import { Engine } from '../../../server/src/check/engine.ts';
import { fingerprintOf } from '../../../server/src/check/finding.ts';
import { testDay } from '../../support/examples.ts';
import { eventually, firstLine, pulling, TestClient, TestFolder } from '../../support/lsp-client.ts';
import { deviceText, hotLimit, libraryText, setText, unknownDevice } from '../../support/lsp-rules.ts';

const rules = [hotLimit, unknownDevice];
const files: Record<string, string> = {
  'library.ifu.yaml': libraryText,
  'devices/a b (1).ifu.yaml': deviceText('pale'),
  'devices/broken.ifu.yaml': 'kind: device\nid: broken\nexposre: 3\nlimits: {temp: {at_most: 150 C}}\n',
  'sets/é.ifu.yaml': setText('knee', 'pale', 'gone', 'lost'),
  'sets/crlf.ifu.yaml': setText('hip', 'none').replaceAll('\n', '\r\n'),
};

interface Line {
  readonly code: unknown;
  readonly message: string;
  readonly at: string;
  readonly fingerprint: unknown;
}

/** What a check from scratch finds, per file and in its order. */
function expected(): Record<string, Line[]> {
  const engine = new Engine({ rules, today: testDay });
  for (const [name, text] of Object.entries(files)) engine.set(fileId(name), text);
  const found: Record<string, Line[]> = {};
  for (const [name, text] of Object.entries(files)) {
    const lines = new LineIndex(text);
    const inFile = engine.findings(fileId(name)).map((finding) => ({
      code: finding.rule,
      message: printable(finding.message),
      at: JSON.stringify({ start: lines.position(finding.span.start), end: lines.position(finding.span.end) }),
      fingerprint: fingerprintOf(finding),
    }));
    if (inFile.length > 0) found[name] = inFile;
  }
  return found;
}

function lineOf(diagnostic: Diagnostic): Line {
  const { start, end } = diagnostic.range;
  return {
    code: diagnostic.code,
    message: firstLine(diagnostic),
    at: JSON.stringify({ start, end }),
    fingerprint: (diagnostic.data as { fingerprint: string }).fingerprint,
  };
}

let folder: TestFolder | undefined;
afterEach(() => folder?.remove());

describe('the same findings as the core, in the same order and words', () => {
  it('pushed, for files never opened', async () => {
    folder = new TestFolder(files);
    const client = await TestClient.start({ folders: [folder.path], rules });
    await eventually('all files to be told', () => client.pushed.size === Object.keys(expected()).length);
    const pushed = Object.fromEntries(
      Object.keys(expected()).map((name) => [
        name,
        client.pushed.get(folder?.uri(name) ?? '')?.diagnostics.map(lineOf),
      ]),
    );
    expect(pushed).toEqual(expected());
  });

  it('pulled for the workspace, and for one document', async () => {
    folder = new TestFolder(files);
    const client = await TestClient.start({ folders: [folder.path], rules, capabilities: pulling });
    const report = (await client.connection.sendRequest('workspace/diagnostic', {
      previousResultIds: [],
    })) as WorkspaceDiagnosticReport;
    const pulled = Object.fromEntries(
      report.items.map((item) => [item.uri, item.kind === 'full' ? item.items.map(lineOf) : []]),
    );
    expect(pulled).toEqual(
      Object.fromEntries(Object.entries(expected()).map(([name, lines]) => [folder?.uri(name), lines])),
    );
    for (const [name, lines] of Object.entries(expected())) {
      const textDocument = { uri: folder.uri(name) };
      const one = (await client.connection.sendRequest('textDocument/diagnostic', {
        textDocument,
      })) as DocumentDiagnosticReport;
      expect(one.kind === 'full' ? one.items.map(lineOf) : []).toEqual(lines);
      const again = (await client.connection.sendRequest('textDocument/diagnostic', {
        textDocument,
        previousResultId: one.resultId,
      })) as DocumentDiagnosticReport;
      expect(again).toEqual({ kind: 'unchanged', resultId: one.resultId });
    }
    expect(client.pushes).toEqual([]);
  });

  it('with the quote as a related place, advice as information, and what we do, the gap and who settles it', async () => {
    folder = new TestFolder(files);
    const initializationOptions = { ruleLinkScheme: 'some-rule' };
    const client = await TestClient.start({ folders: [folder.path], rules, initializationOptions });
    const uri = folder.uri('devices/a b (1).ifu.yaml');
    await eventually('the file to be told', () => client.pushed.has(uri));
    const [diagnostic] = client.pushed.get(uri)?.diagnostics ?? [];
    expect(diagnostic).toMatchObject({
      severity: 3,
      source: 'Traywright',
      code: 'test-hot-limit',
      codeDescription: { href: 'some-rule:/test-hot-limit.md' },
      message: 'The limit is high.\nWe do: 134 °C\nGap: 6 °C\nWho can settle it: the manufacturer',
      relatedInformation: [
        {
          message: 'The instruction says: “Do not exceed 140 °C.” (DW-1, revision D, page 3)',
          location: { uri, range: { start: { line: 3 } } },
        },
      ],
      data: { fingerprint: 'test-hot-limit device/pale limits.temp.at_most' },
    });
  });
});
