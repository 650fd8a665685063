import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { CodeAction, CompletionList, Location, SemanticTokens, WorkspaceEdit } from 'vscode-languageserver/node';
import { isSentencesDone, isServerSentence } from '../../../client/src/server-sentences.ts';
import { allRules } from '../../../server/src/rules/all.generated.ts';
import { pushing, TestClient, TestFolder } from '../../support/lsp-client.ts';
import { libraryText, setText } from '../../support/lsp-rules.ts';

const device = `kind: device\r\nid: pale\r\nnam: Pale\r\nmakr: X\r\nstatements:\r\n  s1: {doc: D, rev: A, page: 3, quote: "Do not exceed 140 °C."}\r\n`;
let folder: TestFolder;
let client: TestClient;
let uri: string;

const capabilities = {
  ...pushing,
  workspace: { ...pushing.workspace, workspaceEdit: { documentChanges: true } },
  textDocument: {
    ...pushing.textDocument,
    completion: { completionItem: { snippetSupport: true, documentationFormat: ['markdown' as const] } },
    codeAction: { resolveSupport: { properties: ['edit'] } },
  },
};

beforeEach(async () => {
  folder = new TestFolder({
    'library.ifu.yaml': libraryText,
    'pale.ifu.yaml': device,
    'knee.ifu.yaml': setText('knee', 'pale'),
  });
  uri = folder.uri('pale.ifu.yaml');
  client = await TestClient.start({
    folders: [folder.path],
    rules: [],
    capabilities,
    initializationOptions: { askAgainCommand: 'ask.again', usesCommand: 'show.uses' },
  });
  await client.open(uri, device);
});
afterEach(() => folder.remove());

function ask<Answer>(method: string, params: object): Promise<Answer> {
  return client.connection.sendRequest(method, { textDocument: { uri }, ...params });
}

describe('writing over the protocol', () => {
  it('completion at a place, as a snippet, with the command that asks again', async () => {
    await client.replace(uri, `${device}cl`);
    const { items } = await ask<CompletionList>('textDocument/completion', { position: { line: 6, character: 2 } });
    expect(items.find(({ label }) => label === 'class')).toMatchObject({
      textEdit: { newText: 'class: $0', range: { start: { line: 6, character: 0 }, end: { line: 6, character: 2 } } },
      command: { command: 'ask.again' },
      insertTextFormat: 2,
    });
  });

  it('[E04] fixes as edits of the version that they were made for; all of a rule when chosen', async () => {
    const range = { start: { line: 2, character: 1 }, end: { line: 2, character: 1 } };
    const actions = await ask<CodeAction[]>('textDocument/codeAction', { range, context: { diagnostics: [] } });
    expect(actions.map(({ title }) => title)).toEqual([
      'Change to "name"',
      'Fix all 2 of "unknown-field" in this file',
    ]);
    expect(actions[0]?.edit?.documentChanges?.[0]).toMatchObject({ textDocument: { uri, version: 1 } });
    expect(actions[1]?.edit).toBeUndefined();
    const resolved: CodeAction = await client.connection.sendRequest('codeAction/resolve', actions[1]);
    expect(resolved.edit?.documentChanges?.[0]).toMatchObject({ edits: [{ newText: 'e: Pale\r\nmake' }] });
  });

  it('a field is offered before its number is noted as not needed, and no key press notes many at once', async () => {
    const second = device.replace(
      'Do not exceed 140 °C."}',
      'Do not exceed 140 °C."}\r\n  s2: {doc: D, page: 3, quote: "Up to 9 kg."}',
    );
    const checking = await TestClient.start({ folders: [folder.path], rules: allRules, capabilities });
    await checking.open(uri, second);
    const range = { start: { line: 5, character: 3 }, end: { line: 5, character: 3 } };
    const params = { textDocument: { uri }, range, context: { diagnostics: [] } };
    const actions: CodeAction[] = await checking.connection.sendRequest('textDocument/codeAction', params);
    expect(actions.map(({ title, kind, isPreferred }) => [title, kind, isPreferred])).toEqual([
      ['Turn the quote into fields', 'quickfix', undefined],
      ['Note 140 °C as not needed (then write the reason)', 'quickfix', undefined],
      ['The page leaves it unclear: write that down for “Limits: Highest temperature”', 'refactor.rewrite', undefined],
    ]);
    expect(actions[2]?.edit?.documentChanges?.[0]).toMatchObject({
      edits: [{ newText: expect.stringContaining('temp: {ambiguous: "Do not exceed 140 °C.", src: s1}') }],
    });
  });

  it('where all is there already, the action stays and says why', async () => {
    const disabling = {
      ...capabilities,
      textDocument: { ...capabilities.textDocument, codeAction: { disabledSupport: true } },
    };
    const checking = await TestClient.start({ folders: [folder.path], rules: [], capabilities: disabling });
    await checking.open(uri, `${device}limits:\r\n  temp: {at_most: 140 °C, src: s1}\r\n`);
    const range = { start: { line: 5, character: 10 }, end: { line: 5, character: 10 } };
    const params = { textDocument: { uri }, range, context: { diagnostics: [] } };
    const actions: CodeAction[] = await checking.connection.sendRequest('textDocument/codeAction', params);
    expect(actions.map(({ title, disabled }) => [title, disabled?.reason])).toEqual([
      ['Turn the quote into fields', '“Limits: Highest temperature” is there already.'],
    ]);
  });

  it('pasted sentences become statements by one edit', async () => {
    await client.replace(uri, 'kind: device\nid: pale\nstatements:\n  Rinse it well.\n  Dry it at once.\n');
    const range = { start: { line: 4, character: 3 }, end: { line: 4, character: 3 } };
    const actions = await ask<CodeAction[]>('textDocument/codeAction', { range, context: { diagnostics: [] } });
    const action = actions.find(({ title }) => title === 'Make a statement of each sentence');
    expect(action?.edit?.documentChanges).toMatchObject([{ edits: [{ range: { start: { line: 3, character: 0 } } }] }]);
  });

  it('fields from a quote, as text where the client has no places to fill', async () => {
    const range = { start: { line: 5, character: 10 }, end: { line: 5, character: 10 } };
    const actions = await ask<CodeAction[]>('textDocument/codeAction', {
      range,
      context: { diagnostics: [], only: ['refactor'] },
    });
    expect(actions[0]?.edit?.documentChanges?.[0]).toMatchObject({
      edits: [{ newText: 'limits:\r\n  temp: {at_most: 140 °C, src: s1}\r\n' }],
    });
    const own: unknown = await client.connection.sendRequest('traywright/quoteToFields', {
      uri,
      position: range.start,
    });
    expect(own).toMatchObject({ version: 1, made: ['limits.temp'], left: [] });
  });

  it('what the fields do not hold is told before they are taken, whoever takes them', async () => {
    const packed = device.replace(
      'Do not exceed 140 °C.',
      'Pre-vacuum steam 134 °C for 3 minutes in a double wrap on a mesh tray, dry 20 minutes.',
    );
    await client.replace(uri, packed);
    const position = { line: 5, character: 10 };
    const left = 'no field for: "double wrap"; not taken into a field: “mesh tray”';
    const actions = await ask<CodeAction[]>('textDocument/codeAction', {
      range: { start: position, end: position },
      context: { diagnostics: [], only: ['refactor'] },
    });
    expect(actions[0]?.title).toBe(`Turn the quote into fields (left for you: ${left})`);
    const made = JSON.stringify(actions[0]?.edit);
    for (const words of ['temp: {stated: 134 °C}', 'exposure: {stated: 3 min}', 'dry: {stated: 20 min}'])
      expect(made).toContain(words);
    const own = await client.connection.sendRequest('traywright/quoteToFields', { uri, position });
    expect(own).toMatchObject({ left: left.split('; ') });
  });

  it('goes through the sentences: proposed, asked about, and at the end', async () => {
    const next = (params: object) => client.connection.sendRequest('traywright/nextSentence', { uri, ...params });
    const first = await next({});
    expect(first).toMatchObject({
      is: 'sentence',
      statement: 's1',
      quote: 'Do not exceed 140 °C.',
      version: 1,
      place: { start: { line: 5, character: 2 } },
    });
    expect(first).toHaveProperty('choices.0.label', 'Limits: highest temperature at most 140 °C');
    expect(first).toHaveProperty('choices.0.edits.0.newText', 'limits:\r\n  temp: {at_most: 140 °C, src: s1}\r\n');
    expect(isServerSentence(first)).toBe(true);
    const other = await next({ statement: 's1', told: { words: ['exactly'] } });
    expect(other).toHaveProperty('choices.0.label', 'Limits: highest temperature exactly 140 °C');
    const end = await next({ statement: 's1' });
    expect(isSentencesDone(end)).toBe(true);
    expect(end).toMatchObject({ counts: '1 sentence: 0 became fields, 0 say nothing to encode, 1 left open (s1).' });
    const further = isSentencesDone(end) ? end.next.map(({ label }) => label.replace(/[:,].*/, '')) : [];
    expect(further).toEqual(['Go to the first sentence left open', 'Say who encoded it']);
    expect(await next({ statement: 5, told: { words: [{}], way: 7, next: 'run' } })).toMatchObject({ is: 'sentence' });
  });

  it('asks on about a sentence: the field, what stands in it, and whether it says more', async () => {
    const next = (told: object) =>
      client.connection.sendRequest('traywright/nextSentence', { uri, statement: 's1', told: { words: [], ...told } });
    const fields = await next({ next: 'field' });
    expect(isServerSentence(fields)).toBe(true);
    expect(fields).toHaveProperty('choices.0.label', 'Limits: Highest temperature');
    expect(fields).toHaveProperty('choices.0.told', { words: [], field: 'limits.temp' });
    const values = await next({ field: 'limits.temp' });
    expect(isServerSentence(values)).toBe(true);
    expect(values).toHaveProperty('choices.0.label', 'Limits: highest temperature at most 140 °C');
    expect(values).toHaveProperty('choices.0.told', { words: [], next: 'more' });
    expect(await next({ next: 'more' })).toHaveProperty('choices.0.label', 'Go on to the next sentence');
    // A field that no file of the kind has is asked for again.
    expect(await next({ field: '__proto__' })).toHaveProperty('choices.0.label', 'Limits: Highest temperature');
  });

  it('renames over files that are open and not, and refuses in words', async () => {
    const position = { line: 1, character: 5 };
    expect(await ask('textDocument/prepareRename', { position })).toMatchObject({ placeholder: 'pale' });
    const edit = await ask<WorkspaceEdit>('textDocument/rename', { position, newName: 'grey' });
    expect(edit.documentChanges?.map((one) => ('textDocument' in one ? one.textDocument : undefined))).toEqual([
      { uri, version: 1 },
      { uri: folder.uri('knee.ifu.yaml'), version: null },
    ]);
    await expect(ask('textDocument/rename', { position, newName: 'a b' })).rejects.toThrow("can't be an id");
    const places = await ask<Location[]>('textDocument/references', {
      position,
      context: { includeDeclaration: false },
    });
    expect(places.map((place) => place.uri)).toEqual([folder.uri('knee.ifu.yaml')]);
  });
});

describe('reading over the protocol', () => {
  it('hierarchy: what includes this', async () => {
    const [item] = await ask<object[]>('textDocument/prepareCallHierarchy', { position: { line: 1, character: 5 } });
    expect(item).toMatchObject({ name: 'pale', detail: 'device' });
    expect(await client.connection.sendRequest('callHierarchy/incomingCalls', { item })).toMatchObject([
      { from: { name: 'knee' } },
    ]);
  });

  it('folds, kinds of words, lenses, hints, links, layout, symbols', async () => {
    expect(await ask('textDocument/foldingRange', {})).toEqual([{ startLine: 4, endLine: 5 }]);
    expect((await ask<SemanticTokens>('textDocument/semanticTokens/full', {})).data.length % 5).toBe(0);
    expect(await ask('textDocument/codeLens', {})).toMatchObject([
      { command: { title: 'in 1 set', command: 'show.uses' } },
    ]);
    const all = { start: { line: 0, character: 0 }, end: { line: 9, character: 0 } };
    expect(await ask('textDocument/inlayHint', { range: all })).toEqual([]);
    expect(await ask('textDocument/documentLink', {})).toEqual([]);
    expect(await ask('textDocument/formatting', { options: {} })).toEqual([]);
    expect(await client.connection.sendRequest('workspace/symbol', { query: 'kne' })).toMatchObject([{ name: 'knee' }]);
    expect(await ask('textDocument/selectionRange', { positions: [{ line: 1, character: 5 }] })).toMatchObject([
      { range: { start: { line: 1, character: 4 } }, parent: { range: { start: { line: 1, character: 0 } } } },
    ]);
  });

  it('a new file by questions, and a cleaned paste', async () => {
    const asked: { questions: { key: string }[]; folder: string } = await client.connection.sendRequest(
      'traywright/newFileQuestions',
      { kind: 'set', near: uri },
    );
    expect([asked.folder, asked.questions.at(-1)?.key]).toEqual(['', 'id']);
    const answers = { name: ['Hip tray'], id: ['knee'] };
    expect(
      await client.connection.sendRequest('traywright/newFile', { kind: 'set', near: uri, answers }),
    ).toMatchObject({ proposed: 'hip-tray', taken: true });
    expect(await client.connection.sendRequest('traywright/cleanPaste', { text: 'ﬁlter' })).toMatchObject({
      text: 'filter',
    });
    const end = { line: 5, character: device.split('\r\n')[5]?.indexOf('."') ?? 0 };
    const inQuote = { uri, range: { start: end, end }, text: ' at "any"\nstage' };
    expect(await client.connection.sendRequest('traywright/cleanPaste', inQuote)).toMatchObject({
      text: ' at \\"any\\" stage',
    });
    for (const method of ['newFile', 'newFileQuestions', 'quoteToFields', 'nextSentence', 'cleanPaste'])
      expect(
        await client.connection.sendRequest(`traywright/${method}`, {
          kind: '__proto__',
          answers: 3,
          text: {},
          uri: 5,
        }),
      ).toBeNull();
  });
});
