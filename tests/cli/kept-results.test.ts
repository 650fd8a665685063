import { mkdirSync, readdirSync, readFileSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cli, folderWith, libraryText } from '../support/cli.ts';
import { readSample } from '../support/samples.ts';
import { runs } from '../unit/fuzz/runs.ts';

const build = 'build-one';
const files: Readonly<Record<string, string>> = Object.fromEntries([
  ['library.ifu.yaml', libraryText],
  ...[...readSample('lanternfield')].filter(([file]) => /^(devices\/d|sets\/|documents\/DW)/.test(file)).slice(0, 14),
]);
const paths = Object.keys(files);

interface Asked {
  readonly cwd: string;
  readonly results: string;
  readonly words?: readonly string[];
  readonly build?: string;
  readonly today?: string;
}

/** The same check without and with kept results; the second must not tell itself from the first by a byte. */
async function both({ cwd, results, words = ['--format', 'json'], ...around }: Asked) {
  const surroundings = { cwd, build, ...around };
  const plain = await cli(['check', ...words, '--no-cache'], surroundings);
  const kept = await cli(['check', ...words, '--cache', results], surroundings);
  expect(kept).toEqual(plain);
  return plain;
}

function resultFile(results: string): string {
  const [name, ...others] = readdirSync(results);
  expect(others).toEqual([]);
  return join(results, name ?? 'none');
}

function isKept(results: string): boolean {
  return statSync(results, { throwIfNoEntry: false }) !== undefined && readdirSync(results).length === 1;
}

describe('results kept from earlier checks', () => {
  it('are used when nothing differs, and say the same in every form and for every part', async () => {
    const cwd = folderWith(files);
    const results = join(folderWith({}), 'results');
    await both({ cwd, results });
    const before = statSync(resultFile(results));
    for (const words of [
      ['--format', 'json'],
      [],
      ['-q'],
      ['--format', 'sarif'],
      ['--format', 'junit'],
      ['--format', 'markdown'],
      ['devices', '--format', 'json'],
      [paths[2] ?? '', '--format', 'json'],
      ['--fail-on', 'never', '-q'],
    ]) {
      await both({ cwd, results, words });
    }
    // A result that is written again is another file.
    expect(statSync(resultFile(results)).ino).toBe(before.ino);
  }, 120_000);

  it('are never used for other bytes, though size and time of the file stay', async () => {
    const cwd = folderWith(files);
    const results = join(folderWith({}), 'results');
    await both({ cwd, results });
    const edit = fc.record({
      which: fc.nat(paths.length - 1),
      how: fc.constantFrom('digit', 'letter', 'swap', 'delete', 'restore'),
      at: fc.double({ min: 0, max: 0.999, noNaN: true }),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(edit, { minLength: 1, maxLength: 3 }), async (edits) => {
        for (const { which, how, at } of edits) change(cwd, paths[which] ?? '', how, at);
        await both({ cwd, results });
      }),
      { numRuns: 25, seed: 20250303 },
    );
  }, 300_000);

  it('are as if they were not there when they are cut, changed or of an older form', async () => {
    const cwd = folderWith(files);
    const results = join(folderWith({}), 'results');
    await both({ cwd, results });
    const whole = readFileSync(resultFile(results));
    const name = basename(resultFile(results));
    await fc.assert(
      fc.asyncProperty(
        fc.constantFrom('cut', 'flip', 'empty', 'old', 'other'),
        fc.nat(whole.length - 1),
        async (how, at) => {
          rmSync(results, { recursive: true });
          mkdirSync(results);
          writeFileSync(join(results, name), damaged(whole, how, at));
          await both({ cwd, results });
          // Damage in the kept bytes of a file is a change of that file: the first part stays, and what is true now stands beside it.
          const parts = readdirSync(results);
          if (parts.length === 1) expect(readFileSync(join(results, name)).equals(whole)).toBe(true);
          await both({ cwd, results });
        },
      ),
      { numRuns: 20, seed: 20250303 },
    );
  }, 300_000);

  it('say what became of a library since they were first kept, in a part of its own, whatever is damaged or of another time', async () => {
    const cwd = folderWith(Object.fromEntries(readSample('lanternfield')));
    const results = join(folderWith({}), 'results');
    const parts = () =>
      Object.fromEntries(readdirSync(results).map((name) => [name, readFileSync(join(results, name))]));
    const putBack = (kept: Readonly<Record<string, Uint8Array>>) => {
      rmSync(results, { recursive: true });
      mkdirSync(results);
      for (const [name, bytes] of Object.entries(kept)) writeFileSync(join(results, name), bytes);
    };
    await both({ cwd, results });
    const first = parts();
    change(cwd, 'devices/quillmark-suction-tube.ifu.yaml', 'digit', 0.8);
    await both({ cwd, results });
    const second = parts();
    const [later, ...others] = Object.keys(second).filter((name) => !(name in first));
    expect(others).toEqual([]);
    const [name] = Object.keys(first);
    if (later === undefined || name === undefined) throw new Error('nothing was kept');
    expect(second[name]).toEqual(first[name]);
    expect(second[later]?.length).toBeLessThan((second[name]?.length ?? 0) / 4);
    change(cwd, 'devices/pellamont-bone-clamp.ifu.yaml', 'letter', 0.8);
    await both({ cwd, results });
    const third = parts();
    expect(third[name]).toEqual(first[name]);
    // Another first part, to which no later one belongs.
    rmSync(join(results, name));
    await both({ cwd, results });
    const anew = parts();
    expect(Object.keys(anew)).toEqual([name]);
    const states = [first, second, third, anew];
    const state = fc.integer({ min: 0, max: states.length - 1 });
    await fc.assert(
      fc.asyncProperty(
        fc.record({ ofFirst: state, ofLater: state, which: fc.constantFrom(name, later) }),
        fc.constantFrom('cut', 'flip', 'flip', 'flip', 'empty', 'other', 'whole'),
        fc.double({ min: 0, max: 0.999, noNaN: true }),
        fc.constantFrom('nothing', 'a device', 'the machine'),
        async ({ ofFirst, ofLater, which }, how, at, changed) => {
          const kept = { [name]: states[ofFirst]?.[name] ?? Buffer.alloc(0), [later]: states[ofLater]?.[later] };
          const whole = kept[which];
          if (whole !== undefined && how !== 'whole')
            kept[which] = Buffer.from(damaged(whole, how, Math.floor(at * whole.length)));
          putBack(
            Object.fromEntries(
              Object.entries(kept).flatMap(([key, bytes]) => (bytes === undefined ? [] : [[key, bytes]])),
            ),
          );
          if (changed === 'a device') change(cwd, 'devices/pellamont-bone-clamp.ifu.yaml', 'digit', at);
          if (changed === 'the machine') change(cwd, 'sterilizers/S1.ifu.yaml', 'digit', at);
          await both({ cwd, results });
          await both({ cwd, results });
        },
      ),
      { numRuns: runs(12), seed: 20250303 },
    );
  }, 300_000);

  it('are of one program, one day and one library', async () => {
    const cwd = folderWith(files);
    const results = join(folderWith({}), 'results');
    await both({ cwd, results });
    await both({ cwd, results, build: 'build-two' });
    await both({ cwd, results, today: '2031-01-01' });
    await both({ cwd, results, words: ['--today', '2024-01-01', '--format', 'json'] });
    writeFileSync(join(cwd, 'library.ifu.yaml'), `${libraryText}generated: [sets]\n`);
    await both({ cwd, results });
  }, 120_000);

  it('are not kept by a part of a check, by standard input, or by a program without a name', async () => {
    const cwd = folderWith(files);
    const results = join(folderWith({}), 'results');
    await cli(['check', '--cache', results, 'devices'], { cwd, build });
    await cli(['check', '--cache', results], { cwd });
    await cli(['check'], { cwd, build });
    expect(isKept(results)).toBe(false);
  }, 60_000);

  it('cost nothing but time where their folder cannot be used', async () => {
    const cwd = folderWith(files);
    const results = join(folderWith({ 'in-the-way': 'a file' }), 'in-the-way');
    await both({ cwd, results });
    await both({ cwd, results: join(results, 'below') });
  }, 60_000);
});

function change(cwd: string, path: string, how: string, at: number): void {
  const target = join(cwd, path);
  const stats = statSync(target, { throwIfNoEntry: false });
  if (how === 'delete' && path !== 'library.ifu.yaml') {
    rmSync(target, { force: true });
    return;
  }
  const text = stats === undefined || how === 'restore' ? (files[path] ?? '') : readFileSync(target, 'utf8');
  writeFileSync(target, edited(text, how, Math.floor(at * text.length)));
  // As a copy program or a version control may leave it: nothing but the bytes tells.
  if (stats !== undefined) utimesSync(target, stats.atime, stats.mtime);
}

function edited(text: string, how: string, at: number): string {
  if (how === 'digit')
    return text.slice(0, at) + text.slice(at).replace(/\d/, (digit) => String((Number(digit) + 1) % 10));
  if (how === 'letter')
    return (
      text.slice(0, at) + text.slice(at).replace(/[a-y]/, (letter) => String.fromCharCode(letter.charCodeAt(0) + 1))
    );
  if (how === 'swap' && at + 2 < text.length)
    return `${text.slice(0, at)}${text[at + 1]}${text[at]}${text.slice(at + 2)}`;
  return text;
}

function damaged(whole: Buffer, how: string, at: number): Uint8Array {
  if (how === 'cut') return whole.subarray(0, at);
  if (how === 'empty') return new Uint8Array();
  if (how === 'old')
    return Buffer.from(whole.toString('latin1').replace('traywright-result', 'traywright-report'), 'latin1');
  if (how === 'other') return Buffer.concat([whole, Buffer.from(' ')]);
  const bytes = Buffer.from(whole);
  bytes[at] = (bytes[at] ?? 0) ^ 1;
  return bytes;
}
