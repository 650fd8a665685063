import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { foundByCommandLine } from './command-line.ts';
import { browserFlags, findChromium } from './harness.ts';

/** The server as an editor in a browser runs it: the built worker in a real browser, without a disk. */

const repository = path.resolve(import.meta.dirname, '../..');
const library = path.join(repository, 'samples/saltmere-eye-clinic');
let page: Page;
let close: () => Promise<void>;

beforeAll(async () => {
  const browser = await chromium.launch({ executablePath: findChromium(), args: browserFlags });
  close = () => browser.close();
  page = await browser.newPage();
  await page.goto('about:blank');
  const code = readFileSync(path.join(repository, 'dist/server-worker.js'), 'utf8');
  await page.evaluate(starting(code));
});
afterAll(() => close?.());

/** Runs in the page: messages to the worker, and its answers by number. What the worker itself asks is answered with nothing. */
const starting = (code: string): string => `{
  const worker = new Worker(URL.createObjectURL(new Blob([${JSON.stringify(code)}], { type: 'text/javascript' })));
  const answers = new Map();
  worker.onmessage = ({ data }) => {
    if (data.id === undefined) return;
    if (data.method === undefined) answers.get(data.id)?.(data.result);
    else worker.postMessage({ jsonrpc: '2.0', id: data.id, result: null });
  };
  let next = 1;
  globalThis.tell = (method, params) => worker.postMessage({ jsonrpc: '2.0', method, params });
  globalThis.ask = (method, params) => new Promise((resolve) => {
    const id = next++;
    answers.set(id, resolve);
    worker.postMessage({ jsonrpc: '2.0', id, method, params });
  });
}`;

function request(method: string, params: unknown): Promise<unknown> {
  return page.evaluate(`ask(${JSON.stringify(method)}, ${JSON.stringify(params)})`);
}

async function tell(method: string, params: unknown): Promise<void> {
  await page.evaluate(`tell(${JSON.stringify(method)}, ${JSON.stringify(params)})`);
}

const uriOf = (name: string): string => `file:///vscode-vfs/-/clinic/${name}`;

it('finds in a library that was sent to it what the command line finds', async () => {
  await request('initialize', {
    processId: null,
    rootUri: null,
    workspaceFolders: [{ uri: 'file:///vscode-vfs/-/clinic', name: 'clinic' }],
    capabilities: { textDocument: { diagnostic: {} }, workspace: { diagnostics: {} } },
  });
  await tell('initialized', {});
  const names = readdirSync(library, { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.ifu.yaml'),
  );
  const files = names.map((name) => ({
    uri: uriOf(name),
    base64: readFileSync(path.join(library, name)).toString('base64'),
  }));
  await tell('traywright/files', { files });
  const lines: string[] = [];
  for (const name of names) {
    const answer = (await request('textDocument/diagnostic', { textDocument: { uri: uriOf(name) } })) as {
      items: readonly { code: string; range: { start: { line: number } } }[];
    };
    for (const { code, range } of answer.items) lines.push(`${name}:${range.start.line + 1} ${code}`);
  }
  const expected = foundByCommandLine(library).map(({ file, line, code }) => `${file}:${line} ${code}`);
  expect(expected.length).toBeGreaterThan(10);
  expect(lines.sort()).toEqual(expected.sort());
});
