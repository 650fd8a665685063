import { mkdtempSync, rmSync } from 'node:fs';
import path from 'node:path';
import { Worker } from 'node:worker_threads';
import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { pushing } from '../../support/lsp-client.ts';
import { readSample } from '../../support/samples.ts';

/** The server as a browser runs it: bundled without any module of Node, in a worker, with files that are sent to it. */

const root = path.resolve(import.meta.dirname, '../../..');
const folderUri = 'file:///vscode-vfs/github/owner/lanternfield';

/** What a worker in a browser finds around it, and no more. */
const asInBrowser = `
const { parentPort } = require('node:worker_threads');
globalThis.addEventListener = () => undefined;
globalThis.postMessage = (message) => parentPort.postMessage(message);
parentPort.on('message', (data) => globalThis.onmessage({ data }));
`;

interface Said {
  readonly id?: number;
  readonly method?: string;
  readonly params?: { readonly uri?: string; readonly diagnostics?: readonly { readonly code: string }[] };
  readonly result?: unknown;
}

let folder: string;
let worker: Worker;
const said: Said[] = [];

beforeAll(async () => {
  folder = mkdtempSync(path.join(root, 'node_modules', '.worker-'));
  const program = path.join(folder, 'server-worker.cjs');
  await build({
    absWorkingDir: root,
    entryPoints: ['server/src/lsp/worker.ts'],
    outfile: program,
    bundle: true,
    format: 'iife',
    platform: 'browser',
    banner: { js: asInBrowser },
    logLevel: 'error',
  });
  worker = new Worker(program);
  worker.on('message', (message: Said) => said.push(message));
  ask(1, 'initialize', {
    processId: null,
    rootUri: null,
    capabilities: pushing,
    workspaceFolders: [{ uri: folderUri, name: 'lanternfield' }],
  });
  await answer(1);
  tell('initialized', {});
}, 60_000);
afterAll(async () => {
  await worker.terminate();
  rmSync(folder, { recursive: true, force: true });
});

function tell(method: string, params: unknown): void {
  worker.postMessage({ jsonrpc: '2.0', method, params });
}

function ask(id: number, method: string, params: unknown): void {
  worker.postMessage({ jsonrpc: '2.0', id, method, params });
}

async function answer(id: number): Promise<unknown> {
  const isAnswer = (message: Said): boolean => message.id === id && message.method === undefined;
  await eventually(() => said.some(isAnswer));
  return said.find(isAnswer)?.result;
}

async function eventually(holds: () => boolean): Promise<void> {
  await vi.waitFor(() => expect(holds()).toBe(true), { timeout: 60_000, interval: 20 });
}

function codesAt(file: string): readonly string[] {
  const last = said.findLast(({ params }) => params?.uri === `${folderUri}/${file}`);
  return (last?.params?.diagnostics ?? []).map(({ code }) => code);
}

function sent(file: string, text: string): unknown {
  return { uri: `${folderUri}/${file}`, base64: Buffer.from(text).toString('base64') };
}

describe('the server in a worker', () => {
  it('reads a library that is sent to it', async () => {
    tell('traywright/files', { files: [...readSample('lanternfield')].map(([file, text]) => sent(file, text)) });
    await eventually(() => codesAt('sets/LAP-CHOLE-B.ifu.yaml').length > 0);
  });

  it('says for a set what it says elsewhere', async () => {
    ask(2, 'traywright/setSheet', { set: 'LAP-CHOLE-B', keys: [] });
    expect(await answer(2)).toMatchObject({ set: 'LAP-CHOLE-B', status: 'No route for the set as built' });
  });

  it('follows a file that is written and one that goes', async () => {
    const file = 'sets/new.ifu.yaml';
    tell('traywright/files', {
      files: [sent(file, 'kind: set\nid: NEW-1\nmembers:\n  - {device: nobody-knows-it, qty: 1}\n')],
    });
    await eventually(() => codesAt(file).includes('unknown-id'));
    tell('traywright/files', { files: [{ uri: `${folderUri}/${file}`, gone: true }] });
    await eventually(() => codesAt(file).length === 0);
  });

  it('passes over what is no file', async () => {
    const odd = [
      null,
      7,
      {},
      { uri: 3 },
      { uri: 'http://127.0.0.1/x.ifu.yaml', base64: '' },
      { uri: `${folderUri}/x.txt` },
    ];
    tell('traywright/files', { files: odd });
    tell('traywright/files', null);
    tell('traywright/files', { files: [{ uri: `${folderUri}/sets/bad.ifu.yaml`, base64: '***' }] });
    await eventually(() => codesAt('sets/bad.ifu.yaml').length > 0);
  });
});
