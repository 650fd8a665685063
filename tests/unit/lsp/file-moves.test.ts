import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { TextEdit, WorkspaceEdit } from 'vscode-languageserver/node';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { fileKeys } from '../../../server/src/library/named-files.ts';
import { nodeDisk } from '../../../server/src/lsp/node-disk.ts';
import { kinds } from '../../../server/src/schema/kinds.ts';
import type { Shape } from '../../../server/src/schema/shape.ts';
import { shapeOf } from '../../../server/src/schema/shapes.ts';
import { pulling, pushing, TestClient, TestFolder } from '../../support/lsp-client.ts';

const files: Readonly<Record<string, string>> = {
  'library.ifu.yaml': 'kind: library\nid: demo\ngenerated: [./out/, papers/old]\n',
  'doc/pf.ifu.yaml': 'kind: document\r\nid: pf\r\ndoc: PF-1\r\nrev: A\r\nfile:   "pf.pdf"   # the scan\r\n',
  'doc/lost.ifu.yaml': 'kind: document\nid: lost\ndoc: PF-2\nrev: A\nfile: lost.pdf\n',
  'doc/out.ifu.yaml': 'kind: document\nid: out\ndoc: PF-3\nrev: A\nfile: ../../elsewhere.pdf\n',
  'answers/a1.ifu.yaml': '{kind: response, id: a1, file: ../doc/letter.pdf}\n',
  'sets/t.ifu.yaml': 'kind: set\nid: t\nphoto: photos/t.jpg\nmembers: []\n',
  'doc/pf.pdf': 'x',
  'doc/letter.pdf': 'x',
  'sets/photos/t.jpg': 'x',
};

function textAfter(name: string, edits: TextEdit[]): string {
  return TextDocument.applyEdits(TextDocument.create(name, '', 0, files[name] ?? ''), edits);
}

const asking = { ...pushing, workspace: { ...pushing.workspace, fileOperations: { willRename: true } } };

describe('files that are about to be moved', () => {
  let folder: TestFolder;
  let client: TestClient;

  beforeEach(async () => {
    folder = new TestFolder(files);
    const keptFile = async (_root: string, kept: string) =>
      kept in files ? ({ state: 'unread', why: 'no-pdf' } as const) : ({ state: 'missing' } as const);
    client = await TestClient.start({
      folders: [folder.path],
      rules: [],
      capabilities: asking,
      disk: { ...nodeDisk, keptFile },
    });
    await client.settled();
  });
  afterEach(() => folder.remove());

  const uriOf = (name: string): string => (name.startsWith('file:') ? name : folder.uri(name));

  /** The files that one answer changes, with their text after it. Outside the edits nothing differs, since ranges are applied. */
  async function changed(...moves: readonly (readonly [string, string])[]): Promise<Readonly<Record<string, string>>> {
    const given = moves.map(([from, to]) => ({ oldUri: uriOf(from), newUri: uriOf(to) }));
    const answer: WorkspaceEdit | null = await client.connection.sendRequest('workspace/willRenameFiles', {
      files: given,
    });
    const after: Record<string, string> = {};
    for (const [uri, edits] of Object.entries(answer?.changes ?? {})) {
      const name = uri.slice(folder.uri('').length + 1);
      after[name] = textAfter(name, edits);
    }
    return after;
  }

  const written = (name: string, was: string, now: string) => ({ [name]: files[name]?.replace(was, () => now) });

  it('a PDF renamed or moved: the document and the answer that name it name it anew', async () => {
    expect(await changed(['doc/pf.pdf', 'doc/PF-1 A.pdf'])).toEqual(
      written('doc/pf.ifu.yaml', '"pf.pdf"', '"PF-1 A.pdf"'),
    );
    expect(await changed(['doc/pf.pdf', 'papers/2025/pf.pdf'])).toEqual(
      written('doc/pf.ifu.yaml', '"pf.pdf"', '"../papers/2025/pf.pdf"'),
    );
    expect(await changed(['doc/letter.pdf', 'answers/letter.pdf'])).toEqual(
      written('answers/a1.ifu.yaml', '../doc/letter.pdf', 'letter.pdf'),
    );
    expect(await changed(['doc/letter.pdf', 'doc/a, b.pdf'])).toEqual(
      written('answers/a1.ifu.yaml', '../doc/letter.pdf', '"../doc/a, b.pdf"'),
    );
  });

  it('a rule file moved alone: it names its file from where it will lie', async () => {
    expect(await changed(['doc/pf.ifu.yaml', 'pf.ifu.yaml'])).toEqual(
      written('doc/pf.ifu.yaml', '"pf.pdf"', '"doc/pf.pdf"'),
    );
    expect(await changed(['sets/t.ifu.yaml', 'sets/eye/t.ifu.yaml'])).toEqual(
      written('sets/t.ifu.yaml', 'photos/t.jpg', '../photos/t.jpg'),
    );
    expect(await changed(['doc/pf.ifu.yaml', 'doc/other.ifu.yaml'])).toEqual({});
  });

  it('both moved at once, to the same folder or to two', async () => {
    expect(await changed(['doc/pf.ifu.yaml', 'a/pf.ifu.yaml'], ['doc/pf.pdf', 'a/pf.pdf'])).toEqual({});
    expect(await changed(['doc/pf.ifu.yaml', 'a/pf.ifu.yaml'], ['doc/pf.pdf', 'b/pf.pdf'])).toEqual(
      written('doc/pf.ifu.yaml', '"pf.pdf"', '"../b/pf.pdf"'),
    );
  });

  it('a folder: what lies in it goes along, and a file of it that is moved on its own goes its own way', async () => {
    expect(await changed(['doc', 'papers'])).toEqual(
      written('answers/a1.ifu.yaml', '../doc/letter.pdf', '../papers/letter.pdf'),
    );
    expect(await changed(['doc', 'papers'], ['doc/pf.pdf', 'pf.pdf'])).toEqual({
      ...written('doc/pf.ifu.yaml', '"pf.pdf"', '"../pf.pdf"'),
      ...written('answers/a1.ifu.yaml', '../doc/letter.pdf', '../papers/letter.pdf'),
    });
    expect(await changed(['sets', 'a/b/sets'])).toEqual({});
  });

  it('a folder that the library leaves out stays left out', async () => {
    expect(await changed(['out', 'papers/out'])).toEqual(written('library.ifu.yaml', './out/', './papers/out/'));
    expect(await changed(['papers', 'kept'])).toEqual(written('library.ifu.yaml', 'papers/old', 'kept/old'));
  });

  it('changes nothing for a name that leads nowhere or away, a move out of the library, and a library as a whole', async () => {
    expect(await changed(['doc/lost.ifu.yaml', 'lost.ifu.yaml'])).toEqual({});
    expect(await changed(['doc/out.ifu.yaml', 'a/out.ifu.yaml'])).toEqual({});
    expect(await changed(['doc/pf.pdf', 'file:///elsewhere/pf.pdf'])).toEqual({});
    expect(await changed(['doc/pf.ifu.yaml', 'file:///elsewhere/pf.ifu.yaml'])).toEqual({});
    expect(await changed(['doc/pf.pdf', 'doc/100%25%23.pdf'])).toEqual({});
    const root = folder.uri('').replace(/\/$/, '');
    expect(await changed([root, `${root}-2`])).toEqual({});
  });

  it('takes what somebody has typed but not saved, and names the version', async () => {
    const versioned = await TestClient.start({
      folders: [folder.path],
      rules: [],
      capabilities: { ...asking, workspace: { ...asking.workspace, workspaceEdit: { documentChanges: true } } },
    });
    const uri = folder.uri('doc/pf.ifu.yaml');
    await versioned.open(uri, 'kind: document\nid: pf\ndoc: PF-1\nrev: A\ntitle: Pale forceps\nfile: pf.pdf\n');
    const answer: WorkspaceEdit = await versioned.connection.sendRequest('workspace/willRenameFiles', {
      files: [{ oldUri: folder.uri('doc/pf.pdf'), newUri: folder.uri('doc/pale.pdf') }],
    });
    expect(answer).toEqual({
      documentChanges: [
        {
          textDocument: { uri, version: 1 },
          edits: [
            { range: { start: { line: 5, character: 6 }, end: { line: 5, character: 12 } }, newText: 'pale.pdf' },
          ],
        },
      ],
    });
  });

  it('[X02] a name that leads out of the library by dots is no move', async () => {
    expect(await changed(['doc/pf.pdf', `${folder.uri('doc')}/../../pf.pdf`])).toEqual({});
    expect(await changed(['doc/pf.pdf', `${folder.uri('doc')}/%2e%2e/%2e%2e/pf.pdf`])).toEqual({});
    expect(await changed([`${folder.uri('doc')}/../doc/pf.pdf`, 'doc/q.pdf'])).toEqual({});
  });

  it('odd questions are answered with nothing', async () => {
    for (const given of [
      {},
      { files: 'x' },
      { files: [null, {}, { oldUri: 3, newUri: [] }, { oldUri: 'untitled:x' }] },
    ])
      expect(await client.connection.sendRequest('workspace/willRenameFiles', given)).toBeNull();
  });

  it('is offered only to a client that asks before it moves files', async () => {
    for (const [capabilities, expected] of [
      [asking, { willRename: { filters: [{ pattern: { glob: '**' } }] } }],
      [pulling, undefined],
    ] as const) {
      const { told } = await TestClient.start({ folders: [], rules: [], capabilities });
      expect(told?.workspace?.fileOperations).toEqual(expected);
    }
  });
});

describe('the fields that name a file of the library', () => {
  it('stand in the outermost record of their kind, under the keys that a move looks at', () => {
    const found = new Set<string>();
    const seen = new Set<Shape>();
    const walk = (shape: Shape, at: readonly string[]): void => {
      if (shape.form === 'link') found.add(at.join('/'));
      if (shape.form === 'list') walk(shape.item, [...at, '-']);
      if (shape.form === 'table') walk(shape.value, [...at, '*']);
      if (shape.form !== 'record' || seen.has(shape)) return;
      seen.add(shape);
      for (const [key, field] of shape.fields) walk(field.shape, [...at, key]);
    };
    for (const kind of kinds) walk(shapeOf(kind), []);
    expect([...found].sort()).toEqual([...fileKeys]);
  });
});
