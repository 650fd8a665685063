import { type ChildProcessWithoutNullStreams, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import path from 'node:path';
import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { eventually } from '../../support/lsp-client.ts';

const root = path.resolve(import.meta.dirname, '../../..');

let folder: string;
let program: string;

beforeAll(async () => {
  folder = mkdtempSync(path.join(root, 'node_modules', '.server-'));
  program = path.join(folder, 'server.cjs');
  await build({
    absWorkingDir: root,
    entryPoints: ['server/src/lsp/main.ts'],
    outfile: program,
    bundle: true,
    format: 'cjs',
    platform: 'node',
    logLevel: 'error',
  });
}, 60_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

interface Answer {
  readonly id?: number | string | null;
  readonly method?: string;
  readonly result?: unknown;
  readonly error?: { readonly code: number; readonly message: string };
}

/** The server as a process of its own, spoken to in bytes. */
class Process {
  readonly child: ChildProcessWithoutNullStreams = spawn(process.execPath, [program, '--stdio']);
  readonly answers: Answer[] = [];
  exitCode: number | null | undefined;
  #rest = Buffer.alloc(0);

  constructor() {
    this.child.stdout.on('data', (chunk: Buffer) => {
      this.#rest = Buffer.concat([this.#rest, chunk]);
      for (;;) {
        const header = /^Content-Length: (\d+)\r\n\r\n/.exec(this.#rest.toString('latin1'));
        if (header === null || this.#rest.length < header[0].length + Number(header[1])) return;
        const end = header[0].length + Number(header[1]);
        this.answers.push(JSON.parse(this.#rest.subarray(header[0].length, end).toString('utf8')) as Answer);
        this.#rest = this.#rest.subarray(end);
      }
    });
    this.child.on('exit', (code) => {
      this.exitCode = code;
    });
  }

  raw(bytes: Buffer | string): void {
    this.child.stdin.write(bytes);
  }

  send(message: object): void {
    const body = Buffer.from(JSON.stringify({ jsonrpc: '2.0', ...message }));
    this.raw(Buffer.concat([Buffer.from(`Content-Length: ${body.length}\r\n\r\n`), body]));
  }

  async answerTo(id: number, within = 2_000): Promise<Answer> {
    await eventually(`the answer to ${id}`, () => this.answers.some((answer) => answer.id === id), within);
    return this.answers.find((answer) => answer.id === id) ?? {};
  }

  get broken(): number {
    return this.answers.filter(({ id, error }) => id === null && error?.code === -32700).length;
  }
}

async function running(): Promise<Process> {
  const server = new Process();
  server.send({ id: 1, method: 'initialize', params: { processId: null, rootUri: null, capabilities: {} } });
  await new Promise((resolve) => setTimeout(resolve, 300));
  await server.answerTo(1);
  server.send({ method: 'initialized', params: {} });
  return server;
}

const brokenFrames: readonly (readonly [string, Buffer | string])[] = [
  ['a negative length', 'Content-Length: -5\r\n\r\n'],
  ['no number', 'Content-Length: abc\r\n\r\n'],
  ['a huge length', 'Content-Length: 999999999999\r\n\r\n'],
  ['a length over the limit', 'Content-Length: 999999999\r\n\r\n'],
  ['no length', 'Content-Type: x\r\n\r\n'],
  ['no JSON', 'Content-Length: 3\r\n\r\n{x}'],
  ['no object', 'Content-Length: 4\r\n\r\nnull'],
  ['no UTF-8', Buffer.concat([Buffer.from('Content-Length: 4\r\n\r\n'), Buffer.from([0x7b, 0xff, 0xfe, 0x7d])])],
];

describe('a server of its own', () => {
  it('[X15] answers broken frames with an error and goes on', async () => {
    const server = await running();
    for (const [index, [, bytes]] of brokenFrames.entries()) {
      server.raw(bytes);
      server.send({ id: 10 + index, method: 'no/such' });
      expect((await server.answerTo(10 + index)).error?.code).toBe(-32601);
    }
    expect(server.broken).toBe(brokenFrames.length);
    server.child.kill();
  });

  it('takes messages in pieces, and several at once', async () => {
    const server = await running();
    const body = Buffer.from(JSON.stringify({ jsonrpc: '2.0', id: 5, method: 'no/such', params: 'é'.repeat(50) }));
    const frame = Buffer.concat([Buffer.from(`Content-Length: ${body.length}\r\n\r\n`), body]);
    for (const byte of frame) server.raw(Buffer.from([byte]));
    await server.answerTo(5);
    server.raw(
      Buffer.concat([frame, Buffer.from(frame.toString('latin1').replace('"id":5', '"id":6'), 'latin1'), frame]),
    );
    expect((await server.answerTo(6)).error?.code).toBe(-32601);
    expect(server.broken).toBe(0);
    server.child.kill();
  });

  it('[X15] drops junk without end instead of keeping it', async () => {
    const server = await running();
    server.raw(Buffer.alloc(100_000, 'x'));
    server.raw('Content-Length: -1\r\n\r\n{"jsonrpc":"2.0","id":8,"method":"lost"}');
    server.send({ id: 7, method: 'no/such' });
    expect((await server.answerTo(7)).error?.code).toBe(-32601);
    server.child.kill();
  });

  it('takes a message of many megabytes, and refuses one that is larger than any editor sends', async () => {
    const server = await running();
    const text = `kind: library\nid: big\n${'# x\n'.repeat(8_000_000)}`;
    const textDocument = { uri: 'untitled:big', languageId: 'traywright-rules', version: 1, text };
    server.send({ method: 'textDocument/didOpen', params: { textDocument } });
    server.send({ id: 3, method: 'textDocument/documentSymbol', params: { textDocument: { uri: 'untitled:big' } } });
    await server.answerTo(3, 30_000);
    const told = server.answers.find(({ method }) => method === 'textDocument/publishDiagnostics');
    expect(JSON.stringify(told)).toContain('file-too-large');
    server.raw(`Content-Length: ${65 * 1024 * 1024}\r\n\r\n`);
    for (let megabyte = 0; megabyte < 65; megabyte++) server.raw(Buffer.alloc(1024 * 1024, 'x'));
    server.send({ id: 4, method: 'no/such' });
    expect((await server.answerTo(4, 30_000)).error?.code).toBe(-32601);
    expect(server.broken).toBeGreaterThan(0);
    server.child.kill();
  }, 90_000);

  it('a message that is cut off by the end of the input does no harm', async () => {
    const server = await running();
    server.raw('Content-Length: 5000\r\n\r\n{"jsonrpc":"2.0","id":9,"method":');
    server.child.stdin.end();
    await eventually('the end', () => server.exitCode !== undefined);
    expect(server.exitCode).toBe(0);
    expect(server.answers.some(({ id }) => id === 9)).toBe(false);
  });

  it('ends with 0 after shutdown and exit, and when its input ends', async () => {
    const polite = await running();
    polite.send({ id: 2, method: 'shutdown' });
    expect((await polite.answerTo(2)).result).toBeNull();
    polite.send({ method: 'exit' });
    await eventually('the end', () => polite.exitCode !== undefined);
    expect(polite.exitCode).toBe(0);
    const left = await running();
    left.child.stdin.end();
    await eventually('the end', () => left.exitCode !== undefined);
    expect(left.exitCode).toBe(0);
  });
});
