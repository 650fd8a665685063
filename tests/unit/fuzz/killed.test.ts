import { spawn, spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { Built, root } from '../../support/built.ts';
import { folderWith } from '../../support/cli.ts';
import { runs } from './runs.ts';

let built: Built;
beforeAll(async () => {
  built = await Built.of('cli', 'workbook', 'pdf-reader');
}, 120_000);
afterAll(() => built.remove());

const sample = join(root, 'samples/lanternfield');
const day = ['--today', '2025-03-03'];

/** A command that writes. Its words are the same each time, and so is what it writes. */
interface Writer {
  readonly name: string;
  readonly words: readonly string[];
  /** What has to be there before it begins. */
  readonly before?: (folder: string) => void;
  /** Files of the library that it may change. */
  readonly changes?: (path: string) => boolean;
}

const outputs = ['sarif', 'json', 'junit', 'markdown', 'text', 'annotations'].flatMap((form) => [
  '--output',
  `${form}=../out/report.${form}`,
]);

const writers: readonly Writer[] = [
  { name: 'check with outputs and kept results', words: ['check', '.', '--cache', '../cache', ...outputs, ...day] },
  { name: 'baseline', words: ['baseline', '--grow', ...day], changes: (path) => path === '.traywright-baseline.json' },
  { name: 'cards', words: ['cards', '--out', '../out', ...day] },
  { name: 'posters', words: ['posters', '--out', '../out', ...day] },
  { name: 'binder', words: ['binder', '--day', '2025-03-03', '--out', '../out'] },
  { name: 'quiz', words: ['quiz', '--format', 'qti', '--out', '../out', ...day] },
  { name: 'export of sheets', words: ['sheet', 'export', '--out', '../out', ...day] },
  { name: 'export of a workbook', words: ['sheet', 'export', '--out', '../out/all.xlsx', ...day] },
  {
    name: 'import of a sheet',
    words: ['sheet', 'import', '--write', '../sheets/devices.csv', ...day],
    before: editedSheets,
    changes: (path) => path.startsWith('devices/'),
  },
];

/** Every device gets another name in the sheet. */
function editedSheets(folder: string): void {
  run(['sheet', 'export', '--out', '../sheets', ...day], join(folder, 'library'));
  const file = join(folder, 'sheets/devices.csv');
  const [head = '', ...rows] = readFileSync(file, 'utf8').split('\r\n');
  const renamed = rows.map((row) => row.replace(/^("[^"]*","[^"]*)/, '$1 renamed'));
  writeFileSync(file, [head, ...renamed].join('\r\n'));
}

/** The folder as it is before the command. It is the same each time: what is kept of a library is named after the library's place. */
function placeAnew(writer: Writer, folder: string): void {
  for (const name of readdirSync(folder)) rmSync(join(folder, name), { recursive: true });
  for (const name of ['out', 'cache']) {
    mkdirSync(join(folder, name));
    writeFileSync(join(folder, name, 'kept.txt'), 'kept');
  }
  cpSync(sample, join(folder, 'library'), { recursive: true });
  writer.before?.(folder);
}

function run(words: readonly string[], cwd: string): void {
  const { status, stderr } = spawnSync(process.execPath, [built.cli, ...words], { cwd, encoding: 'utf8' });
  expect(status, stderr).toBeLessThan(3);
}

const counting = ['--require', join(root, 'tests/support/dies-writing.cjs')];

/** By how many steps it writes what it writes. */
function stepsOf(words: readonly string[], cwd: string): number {
  const file = join(folderWith({}), 'steps');
  const env = { ...process.env, STEPS_FILE: file };
  spawnSync(process.execPath, [...counting, built.cli, ...words], { cwd, env, stdio: 'ignore' });
  return Number(readFileSync(file, 'utf8'));
}

/** When a command is ended: after so many milliseconds, or at one of the steps by which it writes. */
type Moment = { readonly after: number } | { readonly step: number };

/** Runs it and ends it by force. */
async function killed(words: readonly string[], cwd: string, moment: Moment): Promise<void> {
  const env = { ...process.env, ...('step' in moment && { DIES_AT: String(moment.step) }) };
  const child = spawn(process.execPath, [...counting, built.cli, ...words], { cwd, env, stdio: 'ignore' });
  const ended = new Promise((resolve) => child.once('exit', resolve));
  if ('after' in moment) {
    await pause(moment.after);
    child.kill('SIGKILL');
  }
  await ended;
}

/**
 * By the clock and by what is written in turn: all that a command writes it writes within a few milliseconds, which a clock seldom meets.
 * Each as likely as the next: doubles by chance are nearly all next to 0.
 */
function momentsIn(milliseconds: number, steps: number): fc.Arbitrary<Moment> {
  const times = fc.integer({ min: 0, max: 10_000 }).map((one) => ({ after: (1.1 * milliseconds * one) / 10_000 }));
  return fc.noBias(
    fc.oneof(
      times,
      fc.integer({ min: 1, max: steps }).map((step) => ({ step })),
    ),
  );
}

const unfinished = /\.[0-9a-f-]{16,36}\.tmp$/;

/** Of each command: a command writes in some dozens of steps, so that more of them meet the same again. */
const mostTrials = 30;

/** Every file below the folder, by its path, but for what has no name of its own yet. */
function filesBelow(folder: string): ReadonlyMap<string, Buffer> {
  const files = new Map<string, Buffer>();
  for (const name of readdirSync(folder, { recursive: true, encoding: 'utf8' }).sort())
    if (statSync(join(folder, name)).isFile() && !unfinished.test(name))
      files.set(name, readFileSync(join(folder, name)));
  return files;
}

/** Each file is as it was before the command or as it is after it, whole. */
function expectWhole(folder: string, before: ReadonlyMap<string, Buffer>, after: ReadonlyMap<string, Buffer>): void {
  const now = filesBelow(folder);
  for (const [path, bytes] of now) {
    const known = [before.get(path), after.get(path)].filter((one) => one !== undefined);
    expect(
      known.some((one) => one.equals(bytes)),
      `${path} is neither old nor new`,
    ).toBe(true);
  }
  for (const path of before.keys()) expect(now.has(path), `${path} is gone`).toBe(true);
}

/** How far the command had come. */
function stateOf(folder: string, before: ReadonlyMap<string, Buffer>, after: ReadonlyMap<string, Buffer>): string {
  if (readdirSync(folder, { recursive: true, encoding: 'utf8' }).some((name) => unfinished.test(name)))
    return 'with one unfinished';
  const now = filesBelow(folder);
  if (isSame(now, before)) return 'as before';
  return isSame(now, after) ? 'as after' : 'in between';
}

function isSame(some: ReadonlyMap<string, Buffer>, others: ReadonlyMap<string, Buffer>): boolean {
  return some.size === others.size && [...some].every(([path, bytes]) => others.get(path)?.equals(bytes) === true);
}

describe('[R13] a command that is ended by force at any moment', () => {
  it.each(writers.map((writer) => [writer.name, writer] as const))(
    '%s: every file is the old one or the new one, and the next run is as if nothing had been',
    async (_name, writer) => {
      const folder = folderWith({});
      placeAnew(writer, folder);
      const before = filesBelow(folder);
      const started = performance.now();
      run(writer.words, join(folder, 'library'));
      const took = performance.now() - started;
      const after = filesBelow(folder);
      const changed = [...after].filter(([path, bytes]) => before.get(path)?.equals(bytes) !== true);
      expect(changed).not.toEqual([]);
      for (const [path] of changed.filter(([name]) => name.startsWith('library/')))
        expect(writer.changes?.(path.slice('library/'.length)), path).toBe(true);
      placeAnew(writer, folder);
      const moments = momentsIn(took, stepsOf(writer.words, join(folder, 'library')));
      const left: string[] = [];
      await fc.assert(
        fc.asyncProperty(moments, async (moment) => {
          placeAnew(writer, folder);
          await killed(writer.words, join(folder, 'library'), moment);
          const state = stateOf(folder, before, after);
          left.push(state);
          expectWhole(folder, before, after);
          // From the same files as the first time the next run is the first one again.
          if (state === 'as before') return;
          run(writer.words, join(folder, 'library'));
          expectWhole(folder, new Map(), after);
          expect([...filesBelow(folder).keys()]).toEqual([...after.keys()]);
        }),
        { numRuns: Math.min(mostTrials, runs(2)), endOnFailure: true },
      );
      const counts = [...new Set(left)].sort().map((state) => `${state} ${left.filter((one) => one === state).length}`);
      process.stdout.write(`${writer.name}, ended by force: files ${counts.join(', ')}\n`);
    },
    3_600_000,
  );
});
