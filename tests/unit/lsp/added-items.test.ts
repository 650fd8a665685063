import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { CodeAction, CodeLens, CompletionList } from 'vscode-languageserver/node';
import {
  isAnswerProblem,
  isServerLists,
  isServerMade,
  isServerQuestion,
} from '../../../client/src/server-questions.ts';
import { pushing, TestClient, TestFolder } from '../../support/lsp-client.ts';
import { libraryText } from '../../support/lsp-rules.ts';

const washer = 'kind: washer\nid: W1\ncycles:\n  - {id: W1-std, name_on_screen: STD}\n';
const other = 'kind: washer\nid: W2\ncycles:\n  - {id: W2-hot, a0: 3000}\n';
let folder: TestFolder;
let client: TestClient;
let uri: string;

async function started(initializationOptions: unknown): Promise<void> {
  client = await TestClient.start({ folders: [folder.path], rules: [], capabilities: pushing, initializationOptions });
  await client.open(uri, washer);
}

beforeEach(async () => {
  folder = new TestFolder({ 'library.ifu.yaml': libraryText, 'W1.ifu.yaml': washer, 'W2.ifu.yaml': other });
  uri = folder.uri('W1.ifu.yaml');
  await started({ addCommand: 'add.item' });
});
afterEach(() => folder.remove());

function ask<Answer>(method: string, params: object): Promise<Answer> {
  return client.connection.sendRequest(method, params);
}

describe('adding to a list over the protocol', () => {
  it('every list has its path and its place; the one at the cursor comes first', async () => {
    const lists: unknown = await ask('traywright/listsToAddTo', { uri, position: { line: 3, character: 8 } });
    expect(isServerLists(lists)).toBe(true);
    expect(lists).toMatchObject([
      { path: 'cycles', title: 'Add a further cycle', where: 'cycles, line 3', here: true },
      { path: 'sources', where: 'not in the file yet', here: false },
    ]);
  });

  it('one question after the other, then edits of the version that they are meant for', async () => {
    const first: unknown = await ask('traywright/addItem', { uri, list: 'cycles', answers: [] });
    expect(isServerQuestion(first) && first.title).toBe('Add a further cycle: Name on the screen');
    const refused: unknown = await ask('traywright/addItem', {
      uri,
      list: 'cycles',
      answers: [['HOT'], [], ['W1-std']],
    });
    expect(isAnswerProblem(refused) && refused.words).toBe('There is one with the id "W1-std" already.');
    const made: unknown = await ask('traywright/addItem', { uri, list: 'cycles', answers: [['HOT'], [], ['W1-hot']] });
    expect(isServerMade(made)).toBe(true);
    expect(made).toMatchObject({ version: 1, edits: [{ newText: '  - {id: W1-hot, name_on_screen: HOT}\n' }] });
  });

  it('a list that has nothing yet is learnt from the other files', async () => {
    await client.replace(uri, 'kind: washer\nid: W1\ncycles:\n');
    const first: unknown = await ask('traywright/addItem', { uri, list: 'cycles', answers: [] });
    expect(isServerQuestion(first) && first.title).toBe('Add a cycle: A0 as written');
  });

  it.each([
    [{}],
    [{ uri: 'file:///nowhere', list: 'cycles', answers: [] }],
    [{ uri: '', list: 'no.such.list', answers: [] }],
    [{ uri: '', list: 'cycles', answers: 'none' }],
    [{ uri: '', list: 7, answers: [] }],
  ])('anything else that comes in is passed over: %j', async (params) => {
    const given = 'uri' in params && params.uri === '' ? { ...params, uri } : params;
    expect(await ask('traywright/addItem', given)).toBeNull();
  });

  it('is offered by the light bulb, above the list and behind an empty dash', async () => {
    const range = { start: { line: 3, character: 8 }, end: { line: 3, character: 8 } };
    const textDocument = { uri };
    const actions: CodeAction[] = await ask('textDocument/codeAction', {
      textDocument,
      range,
      context: { diagnostics: [] },
    });
    expect(actions.map(({ title, command }) => [title, command?.arguments?.[1]])).toEqual([
      ['Add a further cycle…', 'cycles'],
    ]);
    const lenses: CodeLens[] = await ask('textDocument/codeLens', { textDocument });
    expect(lenses.map(({ command }) => [command?.title, command?.command])).toEqual([
      ['Add a further cycle…', 'add.item'],
    ]);
    await client.replace(uri, `${washer}  - `);
    const { items }: CompletionList = await ask('textDocument/completion', {
      textDocument,
      position: { line: 4, character: 4 },
    });
    const [best] = items.toSorted((a, b) => ((a.sortText ?? '') < (b.sortText ?? '') ? -1 : 1));
    expect(best).toMatchObject({ label: 'Add a further cycle…', command: { arguments: [uri, 'cycles'] } });
  });

  it('mends a list that only waits for its first item', async () => {
    await client.replace(uri, 'kind: washer\nid: W1\ncycles: # to do: the cycles\n');
    const range = { start: { line: 2, character: 3 }, end: { line: 2, character: 3 } };
    const context = { diagnostics: [], only: ['quickfix'] };
    const actions: CodeAction[] = await ask('textDocument/codeAction', { textDocument: { uri }, range, context });
    expect(actions.map(({ title, kind }) => [title, kind])).toEqual([['Add a cycle…', 'quickfix']]);
  });

  it('a client without such a command is offered nothing that it could not do', async () => {
    await started({});
    const range = { start: { line: 3, character: 8 }, end: { line: 3, character: 8 } };
    const textDocument = { uri };
    expect(await ask('textDocument/codeAction', { textDocument, range, context: { diagnostics: [] } })).toEqual([]);
    expect(await ask('textDocument/codeLens', { textDocument })).toEqual([]);
  });
});
