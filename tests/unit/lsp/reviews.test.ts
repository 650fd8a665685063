import { cpSync, mkdtempSync, readFileSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { isRecordFiles, isServerReview, type ServerReview } from '../../../client/src/server-review.ts';
import { nodeDisk } from '../../../server/src/lsp/node-disk.ts';
import { uriOfPath } from '../../../server/src/lsp/uris.ts';
import { git } from '../../support/git.ts';
import { pushing, TestClient } from '../../support/lsp-client.ts';
import { demoDay } from '../../support/routes.ts';

const samples = new URL('../../../samples', import.meta.url).pathname;
const scissors = 'devices/duskwell-lap-scissors-takeapart.ifu.yaml';
const capabilities = { ...pushing, workspace: { ...pushing.workspace } };
const classes = ['stricter', 'stricter', 'became silent', 'looser', 're-citation', 'new prohibition'];
let top: string;
let library: string;

beforeEach(() => {
  top = realpathSync(mkdtempSync(join(tmpdir(), 'review-')));
  library = join(top, 'department');
  cpSync(join(samples, 'lanternfield-corrected'), library, { recursive: true });
});
afterEach(() => rmSync(top, { recursive: true, force: true }));

function start(folder: string, disk = nodeDisk): Promise<TestClient> {
  return TestClient.start({ folders: [folder], rules: [], capabilities, today: () => demoDay, disk });
}

const uri = (path: string) => uriOfPath(join(top, path));

async function review(client: TestClient, params: object): Promise<ServerReview> {
  const answer: unknown = await client.connection.sendRequest('traywright/review', params);
  if (!isServerReview(answer)) throw new Error(JSON.stringify(answer).slice(0, 500));
  return answer;
}

async function why(client: TestClient, params: object, method = 'traywright/review'): Promise<string> {
  const answer: { why?: string } = await client.connection.sendRequest(method, params);
  return answer.why ?? '';
}

/** The first time makes the folder a repository. */
function recordState(folder: string, subject: string): void {
  git(folder, 'init', '-q', '-b', 'main');
  git(folder, 'add', '-A');
  git(folder, 'commit', '-q', '-m', subject);
}

function newRevision(): void {
  cpSync(join(samples, 'lanternfield-revision'), library, { recursive: true });
}

function titles({ sheet }: ServerReview): readonly string[] {
  return sheet.changes.map(({ title }) => title);
}

function decisionsFor({ sheet }: ServerReview): Record<string, string> {
  const asked = sheet.changes.filter(({ needs }) => needs === 'decide');
  return Object.fromEntries(asked.map(({ fingerprint }, index) => [fingerprint, index === 0 ? 'ask' : 'agree']));
}

/** The record as a person completes it. */
function completed(text: string): string {
  return text
    .replace(/decision: .*/g, 'decision: agree')
    .replace(/shelf_stock: {3,}.*/g, 'shelf_stock: reprocess')
    .replace(/reviewer: .*/, 'reviewer: educator-1')
    .replace(/second_reader: .*/, 'second_reader: educator-2')
    .replace(/manager: .*/, 'manager: manager')
    .replace(/^on: .*/m, 'on: 2025-03-03')
    .replace(/shelf_stock_reason: .*/, 'shelf_stock_reason: insulation was tested')
    .replace(/archived: .*/, 'archived: documents, kept');
}

describe('a review in the editor', () => {
  it('of a file against the state recorded last, with both texts and every place', async () => {
    recordState(library, 'as it was');
    newRevision();
    const client = await start(library);
    const made = await review(client, { uri: uri(`department/${scissors}`) });
    expect([...titles(made)].sort()).toEqual([...classes].sort());
    expect(made.sheet.changes[0]).toMatchObject({ title: 'stricter', mark: 'breaks', effect: 'route breaks' });
    expect(made.sheet.old).toMatch(/^as last recorded \(\d{4}-\d\d-\d\d\)$/);
    expect(made.files).toEqual([
      { entity: 'device/duskwell-lap-scissors-takeapart', old: scissors, now: uri(`department/${scissors}`) },
    ]);
    expect(made.places.every((place) => place !== null)).toBe(true);
    const old = await client.connection.sendRequest('traywright/reviewOldText', { number: 1, file: scissors });
    expect(old).toBe(readFileSync(join(samples, 'lanternfield-corrected', scissors), 'utf8'));
    for (const params of [{ number: 7, file: scissors }, { number: 1, file: '../secret' }, {}])
      expect(await client.connection.sendRequest('traywright/reviewOldText', params)).toBeNull();
  });

  it('of a document: what is taken from it', async () => {
    recordState(library, 'as it was');
    newRevision();
    const client = await start(library);
    const made = await review(client, { uri: uri('department/documents/DW-REP-077-E.ifu.yaml') });
    expect([...titles(made)].sort()).toEqual([...classes].sort());
    expect(made.sheet.head[0]).toContain('revision D to E');
  });

  it('of the whole library, with what is typed and not saved', async () => {
    recordState(library, 'as it was');
    const client = await start(library);
    expect(titles(await review(client, {}))).toEqual([]);
    const text = readFileSync(join(library, scissors), 'utf8');
    await client.open(uri(`department/${scissors}`), text.replaceAll('at_least: 30 min', 'at_least: 45 min'));
    expect(titles(await review(client, {}))).toContain('stricter');
  });

  it('of a new revision in a folder beside the library', async () => {
    cpSync(join(samples, 'lanternfield-revision'), join(top, 'arrived'), { recursive: true });
    const client = await start(top);
    const made = await review(client, { uri: uri(`arrived/${scissors}`) });
    expect([...titles(made)].sort()).toEqual([...classes].sort());
    expect(made.sheet).toMatchObject({ old: 'as the library has it', now: 'as in the folder "arrived"' });
    expect(made.sheet.head[0]).toContain('revision D to E');
    expect(made.files[0]).toMatchObject({ old: scissors, now: uri(`arrived/${scissors}`) });
  });

  it('writes the record of what was decided, and nothing while a change waits', async () => {
    recordState(library, 'as it was');
    newRevision();
    const client = await start(library);
    const params = { uri: uri(`department/${scissors}`) };
    const decisions = decisionsFor(await review(client, params));
    const [, ...some] = Object.entries(decisions);
    const partly = { ...params, decisions: Object.fromEntries(some) };
    expect(await why(client, partly, 'traywright/reviewRecord')).toMatch(/^1 change waits for a decision/);
    const odd = { ...params, decisions: { ...decisions, [Object.keys(decisions)[0] ?? '']: 'yes' } };
    expect(await why(client, odd, 'traywright/reviewRecord')).toMatch(/^1 change waits/);
    const answer: unknown = await client.connection.sendRequest('traywright/reviewRecord', { ...params, decisions });
    if (!isRecordFiles(answer)) throw new Error(JSON.stringify(answer));
    const [file, more] = answer.files;
    expect(more).toBeUndefined();
    expect(file?.uri).toMatch(/\/SO-DW-REP-077-E(?:-\d)?\.ifu\.yaml$/);
    for (const [fingerprint, decision] of Object.entries(decisions))
      expect(file?.text).toMatch(
        new RegExp(`fingerprint: "${fingerprint}"[^-]*(?:-[^ ][^-]*)*decision: ${decision}\\n`),
      );
    expect(file?.text).toMatch(/\nreviewer: +#/);
  });

  it('compares with the state that somebody accepted, not with a later one that nobody did', async () => {
    recordState(library, 'as it was');
    newRevision();
    const first = await start(library);
    const params = { uri: uri(`department/${scissors}`) };
    const decisions = decisionsFor(await review(first, params));
    const answer: unknown = await first.connection.sendRequest('traywright/reviewRecord', { ...params, decisions });
    const [file] = isRecordFiles(answer) ? answer.files : [];
    writeFileSync(new URL(file?.uri ?? ''), completed(file?.text ?? ''));
    recordState(library, 'accepted');
    const path = join(library, scissors);
    writeFileSync(path, readFileSync(path, 'utf8').replace('at_least: 40 min', 'at_least: 50 min'));
    recordState(library, 'recorded, decided by nobody');
    const second = await start(library);
    const made = await review(second, params);
    expect(made.sheet.old).toMatch(/^as accepted with SO-DW-REP-077-E/);
    expect(titles(made)).toContain('stricter');
    expect(titles(await review(second, {}))).toEqual([]);
  });
});

describe('a review that is open', () => {
  it('is told anew as somebody types, and no more when it was closed', async () => {
    recordState(library, 'as it was');
    const client = await start(library);
    const told: unknown[] = [];
    client.connection.onNotification('traywright/reviewChanged', (answer: unknown) => {
      told.push(answer);
    });
    const next = async (): Promise<unknown> => {
      const before = told.length;
      await expect.poll(() => told.length, { timeout: 10_000 }).toBeGreaterThan(before);
      return told.at(-1);
    };
    const here = uri(`department/${scissors}`);
    const text = readFileSync(join(library, scissors), 'utf8');
    const opened = await review(client, { uri: here });
    expect(titles(opened)).toEqual([]);
    await client.open(here, text);
    await client.replace(here, text.replaceAll('at_least: 30 min', 'at_least: 45 min'));
    const typed = await next();
    if (!isServerReview(typed)) throw new Error(JSON.stringify(typed).slice(0, 500));
    expect(titles(typed)).toContain('stricter');
    expect(typed.number).toBe(opened.number);
    await client.replace(here, text.replace(/^id: .*/m, 'id: '));
    expect(await next()).toEqual({ why: expect.stringMatching(/^This file can’t be read as it is now\. ./) });
    await client.replace(here, text);
    expect(titles((await next()) as ServerReview)).toEqual([]);
    expect((await review(client, { uri: here })).number).toBe(opened.number);
    await client.connection.sendNotification('traywright/reviewClosed', {});
    await client.replace(here, text.replaceAll('at_least: 30 min', 'at_least: 50 min'));
    const before = told.length;
    await new Promise((resolve) => setTimeout(resolve, 1_000));
    expect(told).toHaveLength(before);
    const old = { number: opened.number, file: scissors };
    expect(await client.connection.sendRequest('traywright/reviewOldText', old)).toBe(text);
  });
});

describe('what cannot be reviewed', () => {
  it('no history, nothing recorded, and a place where no history is read', async () => {
    const client = await start(library);
    expect(await why(client, {})).toMatch(/no recorded history/);
    git(library, 'init', '-q', '-b', 'main');
    expect(await why(client, {})).toMatch(/^Nothing of this library was recorded yet/);
    const { history: _none, ...without } = nodeDisk;
    expect(await why(await start(library, without), {})).toMatch(/can’t be read here/);
  });

  it('no library, another file, a thing that the library does not have', async () => {
    cpSync(join(samples, 'lanternfield-revision'), join(top, 'arrived'), { recursive: true });
    const path = join(top, 'arrived', scissors);
    writeFileSync(path, readFileSync(path, 'utf8').replace(/^id: .*/m, 'id: unheard-of'));
    const client = await start(top);
    expect(await why(client, { uri: uri(`arrived/${scissors}`) })).toMatch(
      /No open library has a file of the same kind/,
    );
    expect(await why(client, { uri: uri('arrived/notes.txt') })).toMatch(/Choose a rule file/);
    expect(await why(client, { uri: 'https://example.invalid/x.ifu.yaml' })).toMatch(/Choose a rule file/);
    rmSync(library, { recursive: true });
    expect(await why(await start(top), {})).toMatch(/^No library is open/);
  });
});
