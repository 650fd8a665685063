import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
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
    spawnSync(process.execPath, [join(build, 'compile.cjs'), inFolder('traywright-core.cjs'), 'routes']);
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
