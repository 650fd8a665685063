import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';

const build = join(import.meta.dirname, '../../server/build');

/** A program of one line, named and put into a function as a build does it. */
function program(name: string, says: string): string {
  const line = `process.stdout.write(${JSON.stringify(says)});`;
  return `/*${name.padEnd(32, '0')}*/(function (exports, require, module, __filename, __dirname) {${line}\n})`;
}

describe('the launcher of the command line', () => {
  let folder = '';
  const inFolder = (name: string) => join(folder, name);

  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'launcher-'));
    copyFileSync(join(build, 'launcher.cjs'), inFolder('traywright.cjs'));
    writeFileSync(inFolder('traywright-core.cjs'), program('a', 'first'));
  });

  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  function started(...words: readonly string[]): string {
    return spawnSync(process.execPath, [inFolder('traywright.cjs'), ...words], { encoding: 'utf8' }).stdout;
  }

  function compiled(): Buffer {
    spawnSync(process.execPath, [join(build, 'compile.cjs'), inFolder('traywright-core.cjs'), 'all', 'routes']);
    return readFileSync(inFolder('traywright-core.cache'));
  }

  it('runs the program without what was made of it', () => {
    expect(started()).toBe('first');
  });

  it('runs the program with what was made of it', () => {
    expect(compiled().length).toBeGreaterThan(32);
    expect(started()).toBe('first');
  });

  it('runs a program of its own for `check`, whatever was made of the other', () => {
    compiled();
    writeFileSync(inFolder('traywright-check.cjs'), program('a', 'check'));
    expect(started('check', '--help')).toBe('check');
    expect(started('routes', 'check')).toBe('first');
  });

  it('checks few files with what such a check needs, whatever else it is told, and others with all of it', () => {
    writeFileSync(inFolder('traywright-check.cjs'), program('a', 'check'));
    const compile = (how: string) =>
      spawnSync(process.execPath, [join(build, 'compile.cjs'), inFolder('traywright-check.cjs'), how, 'check']);
    compile('few');
    compile('all');
    const [few, many] = [inFolder('few'), inFolder('many')];
    for (const [library, files] of [
      [few, 3],
      [many, 40],
    ] as const) {
      mkdirSync(join(library, 'devices'), { recursive: true });
      for (let at = 0; at < files; at++) writeFileSync(join(library, 'devices', `${at}.ifu.yaml`), '');
    }
    const used = (...words: readonly string[]) => {
      const trace = ['--require', inFolder('trace.cjs')];
      writeFileSync(
        inFolder('trace.cjs'),
        "const fs = require('node:fs'); const read = fs.readFileSync; fs.readFileSync = (path, ...rest) => { if (String(path).endsWith('.cache')) process.stderr.write(require('node:path').basename(path)); return read(path, ...rest); };",
      );
      return spawnSync(process.execPath, [...trace, inFolder('traywright.cjs'), 'check', ...words], {
        encoding: 'utf8',
      });
    };
    for (const [words, cache] of [
      [['--today', '2025-03-03', few], 'traywright-check-few.cache'],
      [[many, '--quiet'], 'traywright-check.cache'],
      [[few, many], 'traywright-check-few.cache'],
      [['--judge-a-share'], 'traywright-check.cache'],
      [[join(few, 'devices/1.ifu.yaml')], 'traywright-check.cache'],
    ] as const) {
      const { stdout, stderr } = used(...words);
      expect([words, stdout, stderr]).toEqual([words, 'check', cache]);
    }
  });

  it('never runs what was made of another text, not even of one as long', () => {
    compiled();
    writeFileSync(inFolder('traywright-core.cjs'), program('b', 'other'));
    expect(started()).toBe('other');
  });

  it.each([
    ['empty', (_: Buffer) => Buffer.alloc(0)],
    ['cut off', (bytes: Buffer) => bytes.subarray(0, bytes.length / 2)],
    [
      'of another version of Node',
      (bytes: Buffer) => Buffer.concat([bytes.subarray(0, 36), Buffer.alloc(64, 7), bytes.subarray(100)]),
    ],
  ])('runs the program when that file is %s', (_, damaged) => {
    writeFileSync(inFolder('traywright-core.cache'), damaged(compiled()));
    expect(started()).toBe('first');
  });
});
