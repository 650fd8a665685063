import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Lock, runtimeDependencies } from '../../../server/build/dependency-page.ts';
import { Built, bundleText, bundling, root } from '../../support/built.ts';

/** All that any bundle takes from its surroundings. Nothing here reaches a network. */
const harmless = new Set([
  'vscode',
  ...['child_process', 'crypto', 'fs', 'fs/promises', 'module', 'os', 'path', 'readline', 'stream', 'string_decoder'],
  ...['url', 'util', 'v8', 'worker_threads', 'zlib', 'events', 'buffer'],
]);

/** Ways to a network that could be written down without importing anything. A word behind a dot or inside a word is another name. */
const ways =
  /(?<![.\w$])(?:new )?(?:XMLHttpRequest|WebSocket|WebSocketStream|WebTransport|EventSource|RTCPeerConnection)\b(?!["'`])|sendBeacon\(|importScripts\(|(?:=|\(|,|;|await |return )fetch\(/g;

const { bundles } = await bundling();
const lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as Lock;
const listed = new Set(runtimeDependencies(lock).map(({ name }) => name));

describe('[X03] no bundle can reach a network, or holds a package that is not listed', () => {
  it.each(bundles.map((bundle) => [bundle.name, bundle] as const))('%s', async (_name, bundle) => {
    const { text, made } = await bundleText(bundle);
    const outside = Object.values(made.outputs).flatMap(({ imports }) => imports.map(({ path }) => path));
    expect(outside.map((path) => path.replace(/^node:/, '')).filter((path) => !harmless.has(path))).toEqual([]);
    expect(text).not.toMatch(/require\(["'](?:node:)?(?:net|https?|http2|tls|dgram|dns)["'/]/);
    expect([...text.matchAll(ways)].map(([found]) => found)).toEqual([]);
    for (const file of Object.keys(made.inputs)) {
      const name = /(?:^|\/)node_modules\/((?:@[^/]+\/)?[^/]+)\/(?!.*node_modules\/)/.exec(file)?.[1];
      if (name !== undefined) expect(listed, file).toContain(name);
    }
  });
});

let built: Built;
beforeAll(async () => {
  built = await Built.of('cli', 'pdf-reader', 'workbook', 'server');
}, 120_000);
afterAll(() => built.remove());

/** Where the system has it, the program is put where there is no network at all; everywhere a reach for one ends the program. */
const cutOff = spawnSync('unshare', ['-rn', 'true']).status === 0 ? ['unshare', '-rn', process.execPath] : [];

function run(words: readonly string[], input = '', cut: readonly string[] = []) {
  const guard = cut.length > 0 ? ['--require', join(root, 'tests/support/no-network.cjs')] : [];
  const [program = process.execPath, ...before] = cut;
  const { status, stdout, stderr } = spawnSync(program, [...before, ...guard, ...words], {
    cwd: root,
    encoding: 'utf8',
    input,
    maxBuffer: 100_000_000,
  });
  return { status, stdout, stderr };
}

const commands: readonly (readonly string[])[] = [
  ['check', 'samples/lanternfield'],
  ['check', 'samples/saltmere-eye-clinic', '--format', 'json'],
  ['route', 'LAP-CHOLE-B', '--library', 'samples/lanternfield'],
];

describe('[X03] without a network everything is the same', () => {
  const without = cutOff.length > 0 ? cutOff : [process.execPath];

  it.each(commands.map((words) => [words.join(' '), words] as const))('%s', (_name, words) => {
    const free = run([built.cli, ...words]);
    expect(free.status).toBeLessThan(3);
    expect(free.stdout.length).toBeGreaterThan(100);
    expect(run([built.cli, ...words], '', without)).toEqual(free);
  });

  it('the language server', () => {
    const uri = `file://${root}samples/lanternfield`;
    const params = { processId: null, rootUri: uri, capabilities: {}, workspaceFolders: [{ uri, name: 'x' }] };
    const input = [
      { id: 1, method: 'initialize', params },
      { method: 'initialized', params: {} },
      { id: 2, method: 'workspace/diagnostic', params: { previousResultIds: [] } },
      { id: 3, method: 'shutdown' },
      { method: 'exit' },
    ].map(framed);
    const free = run([built.server, '--stdio'], input.join(''));
    expect(free.status).toBe(0);
    expect(run([built.server, '--stdio'], input.join(''), without)).toEqual(free);
  });

  it('the server refuses to be spoken to through a socket', () => {
    const { status, stderr } = run([built.server, '--socket=1'], '');
    expect(stderr).toContain('opens no connection over a network or a socket');
    expect(status).not.toBe(97);
  });
});

function framed(message: object): string {
  const body = JSON.stringify({ jsonrpc: '2.0', ...message });
  return `Content-Length: ${Buffer.byteLength(body)}\r\n\r\n${body}`;
}
