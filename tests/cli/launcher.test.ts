import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';

const build = join(import.meta.dirname, '../../server/build');

/** A program of one line, named as a build is. */
function core(name: string, says: string): string {
  return `/*${name.padEnd(32, '0')}*/process.stdout.write(${JSON.stringify(says)});\n`;
}

describe('the launcher of the command line', () => {
  let folder = '';
  const inFolder = (name: string) => join(folder, name);

  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'launcher-'));
    copyFileSync(join(build, 'launcher.cjs'), inFolder('traywright.cjs'));
    writeFileSync(inFolder('traywright-core.cjs'), core('a', 'first'));
  });

  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  function started(): string {
    return spawnSync(process.execPath, [inFolder('traywright.cjs')], { encoding: 'utf8' }).stdout;
  }

  function compiled(): Buffer {
    spawnSync(process.execPath, [join(build, 'compile.cjs'), inFolder('traywright-core.cjs'), folder]);
    return readFileSync(inFolder('traywright-core.cache'));
  }

  it('runs the program without what was made of it', () => {
    expect(started()).toBe('first');
  });

  it('runs the program with what was made of it', () => {
    expect(compiled().length).toBeGreaterThan(32);
    expect(started()).toBe('first');
  });

  it('never runs what was made of another text, not even of one as long', () => {
    compiled();
    writeFileSync(inFolder('traywright-core.cjs'), core('b', 'other'));
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
