import { spawn, spawnSync } from 'node:child_process';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { build } from 'esbuild';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { commands } from '../../../server/src/cli/commands.ts';
import { Built, root } from '../../support/built.ts';
import { badText, cli, folderWith, goodText, libraryText } from '../../support/cli.ts';
import { runs } from './runs.ts';

let built: Built;
beforeAll(async () => {
  built = await Built.of('cli', 'server');
}, 120_000);
afterAll(() => built.remove());

const library = { 'library.ifu.yaml': libraryText, 'good.ifu.yaml': goodText, 'bad.ifu.yaml': badText };

describe('any command line', () => {
  const words = fc.oneof(
    fc.constantFrom(
      '--format',
      '--library',
      '--fail-on',
      '--',
      '-',
      '.',
      '',
      'json',
      'good.ifu.yaml',
      '--quiet=',
      '--no',
      '-x',
      '--help',
    ),
    fc.string({ unit: 'binary', maxLength: 12 }),
  );
  // What writes beside the library or waits for somebody is left out here.
  const reading = commands
    .map(({ name }) => name)
    .filter((name) => ['check', 'route', 'routes', 'rules', 'explain', 'compare', 'whatif'].includes(name));

  it('ends with one of the exit codes, and never with a fault of ours', async () => {
    const cwd = folderWith(library);
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...reading), fc.array(words, { maxLength: 5 }), async (command, rest) => {
        const { code, err } = await cli([command, ...rest], { cwd });
        expect([0, 1, 2, 4]).toContain(code);
        expect(err).not.toMatch(/\n {4}at /);
      }),
      { numRuns: runs(150), seed: 20250303 },
    );
    expect(readdirSync(cwd).sort()).toEqual(Object.keys(library).sort());
  }, 3_600_000);
});

const methods = [
  'textDocument/didOpen',
  'textDocument/didChange',
  'textDocument/didClose',
  'textDocument/hover',
  'textDocument/completion',
  'textDocument/definition',
  'textDocument/rename',
  'textDocument/codeAction',
  'textDocument/diagnostic',
  'workspace/diagnostic',
  'workspace/didChangeWatchedFiles',
  'workspace/didChangeWorkspaceFolders',
  'workspace/symbol',
  'textDocument/onTypeFormatting',
  '$/cancelRequest',
  'textDocument/documentSymbol',
  'traywright/explainRule',
  'textDocument/inlayHint',
  'textDocument/semanticTokens/full',
  'no/such',
];

describe('any bytes and messages', () => {
  const uri = 'file:///x/a.ifu.yaml';
  const document = fc.record(
    {
      uri: fc.constantFrom(uri, '', 'untitled:a', 'file:///..%2F', 'git:/x'),
      version: fc.oneof(fc.integer(), fc.constant(null)),
      text: fc.string({ unit: 'binary', maxLength: 40 }),
      languageId: fc.constant('traywright-rules'),
    },
    { requiredKeys: [] },
  );
  const position = fc.record({
    line: fc.oneof(fc.integer(), fc.double()),
    character: fc.oneof(fc.integer(), fc.string()),
  });
  const params = fc.oneof(
    fc.record(
      {
        textDocument: document,
        position,
        range: fc.record({ start: position, end: position }),
        contentChanges: fc.array(fc.record({ text: fc.string({ unit: 'binary' }) }), { maxLength: 2 }),
        newName: fc.string(),
        context: fc.constant({ diagnostics: [] }),
        changes: fc.anything(),
        event: fc.anything(),
        rule: fc.anything(),
        query: fc.anything(),
      },
      { requiredKeys: [] },
    ),
    fc.jsonValue({ maxDepth: 2 }),
  );
  const message = fc
    .tuple(fc.constantFrom(...methods), params)
    .map(([method, given], index = 0) => framed({ id: 100 + index, method, params: given }));
  const junk = fc.oneof(
    fc.uint8Array({ maxLength: 60 }).map((bytes) => Buffer.from(bytes)),
    fc.tuple(message, fc.nat(80)).map(([whole, less]) => whole.subarray(0, Math.max(1, whole.length - less))),
    fc
      .constantFrom(
        'Content-Length: 99999999999\r\n\r\n',
        'Content-Length: -1\r\n\r\n',
        'Content-Length: 70000000\r\n\r\n{}',
      )
      .map((text) => Buffer.from(text)),
  );

  it('the server goes on and answers', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(message, { minLength: 30, maxLength: 120 }),
        fc.array(junk, { maxLength: 3 }),
        async (messages, ends) => {
          const { alive, answered, said } = await talk(messages, ends);
          expect({ alive, answered }).toEqual({ alive: true, answered: true });
          expect(said).not.toContain('FATAL');
        },
      ),
      { numRuns: runs(4), seed: 20250303 },
    );
  }, 3_600_000);

  async function talk(messages: readonly Buffer[], ends: readonly Buffer[]) {
    const server = spawn(process.execPath, [built.server, '--stdio']);
    let out = '';
    let said = '';
    server.stdout.on('data', (chunk: Buffer) => {
      out += chunk.toString('latin1');
    });
    server.stderr.on('data', (chunk: Buffer) => {
      said += chunk.toString('latin1');
    });
    server.stdin.on('error', () => undefined);
    server.stdin.write(
      framed({ id: 1, method: 'initialize', params: { processId: null, rootUri: null, capabilities: {} } }),
    );
    server.stdin.write(framed({ method: 'initialized', params: {} }));
    for (const bytes of messages) server.stdin.write(bytes);
    server.stdin.write(framed({ id: 2, method: 'no/such' }));
    for (const end = Date.now() + 60_000; Date.now() < end && !out.includes('"id":2,') && server.exitCode === null; )
      await pause(20);
    const answered = out.includes('"id":2,');
    for (const bytes of ends) server.stdin.write(bytes);
    await pause(100);
    const alive = server.exitCode === null;
    server.kill('SIGKILL');
    return { alive, answered, said };
  }
});

/** Writes two texts in turn without end, and says so once it has begun. */
const writer = `
import { writeAtomically } from './server/src/host/atomic-write.ts';
const root = process.argv[2] ?? '';
for (let round = 0; ; round++) {
  writeAtomically(root, 'x.txt', (round % 2 === 0 ? 'a' : 'b').repeat(2_000_000));
  if (round === 1) process.stdout.write('begun');
}`;

describe('ended at any moment (kill -9)', () => {
  it('in the midst of writing, a file holds the old text or the new, whole', async () => {
    const program = join(built.folder, 'writer.cjs');
    const stdin = { contents: writer, resolveDir: root, loader: 'ts' as const };
    await build({ stdin, outfile: program, bundle: true, platform: 'node', format: 'cjs' });
    for (let round = 0; round < runs(15); round++) {
      const cwd = folderWith({ 'x.txt': '' });
      const child = spawn(process.execPath, [program, cwd]);
      const ended = new Promise((resolve) => child.once('exit', resolve));
      await new Promise((resolve) => child.stdout.once('data', resolve));
      await pause((round * 37) % 60);
      child.kill('SIGKILL');
      await ended;
      const text = readFileSync(join(cwd, 'x.txt'), 'utf8');
      expect(text.length).toBe(2_000_000);
      expect(text === 'a'.repeat(2_000_000) || text === 'b'.repeat(2_000_000)).toBe(true);
    }
  }, 3_600_000);

  it('the command line leaves a baseline that can be read, and no other file changed', async () => {
    const cwd = folderWith({ 'library.ifu.yaml': libraryText });
    const files: Record<string, string> = {};
    for (let n = 0; n < 300; n++) files[`q${n}.ifu.yaml`] = `kind: question\nid: q${n}\nodd: "x"\n`;
    for (const [name, text] of Object.entries(files)) writeFileSync(join(cwd, name), text);
    expect(spawnSync(process.execPath, [built.cli, 'baseline', cwd]).status).toBe(0);
    const file = join(cwd, '.traywright-baseline.json');
    for (let round = 0; round < runs(12); round++) {
      const before = readFileSync(file, 'utf8');
      // A finding more each time, so that each run that gets so far has something new to write.
      writeFileSync(join(cwd, `q${round}.ifu.yaml`), `kind: question\nid: q${round}\nodd: "x"\nodder: "y"\n`);
      const child = spawn(process.execPath, [built.cli, 'baseline', '--grow', cwd], { stdio: 'ignore' });
      const ended = new Promise((resolve) => child.once('exit', resolve));
      await pause(40 + ((round * 97) % 700));
      child.kill('SIGKILL');
      await ended;
      const left = readFileSync(file, 'utf8');
      expect(() => JSON.parse(left)).not.toThrow();
      expect(left.length).toBeGreaterThanOrEqual(before.length);
      for (const [name, text] of Object.entries(files).slice(runs(12)))
        expect(readFileSync(join(cwd, name), 'utf8')).toBe(text);
    }
    expect(spawnSync(process.execPath, [built.cli, 'baseline', '--grow', cwd]).status).toBe(0);
    expect(spawnSync(process.execPath, [built.cli, 'check', cwd]).status).toBeLessThan(2);
  }, 3_600_000);
});

function framed(message: object): Buffer {
  const body = Buffer.from(JSON.stringify({ jsonrpc: '2.0', ...message }));
  return Buffer.concat([Buffer.from(`Content-Length: ${body.length}\r\n\r\n`), body]);
}
