import { mkdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { rewriteAll } from '../../../server/src/host/rewrite.ts';
import { folderWith } from '../../support/cli.ts';

const rewrites = [
  { path: 'a.ifu.yaml', before: 'a: 1\n', after: 'a: 2\n' },
  { path: 'sets/b.ifu.yaml', before: 'b: 1\r\n', after: 'b: 2\r\n' },
];

function folder(): string {
  return folderWith({ 'a.ifu.yaml': '\ufeffa: 1\n', 'sets/b.ifu.yaml': 'b: 1\r\n' });
}

function textsIn(root: string): readonly string[] {
  return ['a.ifu.yaml', 'sets/b.ifu.yaml'].map((name) => readFileSync(join(root, name), 'utf8'));
}

describe('[E04] new texts for files that have moved on', () => {
  it('are written where nothing has changed, with the mark of the encoding', () => {
    const root = folder();
    expect(rewriteAll(root, rewrites)).toEqual({ written: 2 });
    expect(textsIn(root)).toEqual(['\ufeffa: 2\n', 'b: 2\r\n']);
  });

  it('are refused, all of them, when one file has another text', () => {
    const root = folder();
    writeFileSync(join(root, 'sets/b.ifu.yaml'), 'b: 1\r\nc: 1\r\n');
    expect(rewriteAll(root, rewrites)).toEqual({
      why: '"sets/b.ifu.yaml" has changed meanwhile, so nothing was written. Try again.',
    });
    expect(textsIn(root)).toEqual(['\ufeffa: 1\n', 'b: 1\r\nc: 1\r\n']);
  });

  it('are refused, all of them, when one file is gone, a link or outside', () => {
    const root = folder();
    const outside = folderWith({ 'c.ifu.yaml': 'c: 1\n' });
    rmSync(join(root, 'sets/b.ifu.yaml'));
    expect(rewriteAll(root, rewrites)).toMatchObject({ why: expect.stringContaining('can no longer be read') });
    symlinkSync(join(outside, 'c.ifu.yaml'), join(root, 'sets/b.ifu.yaml'));
    expect(rewriteAll(root, rewrites)).toMatchObject({ why: expect.stringContaining('can no longer be read') });
    const away = { path: '../c.ifu.yaml', before: 'c: 1\n', after: 'c: 2\n' };
    expect(rewriteAll(root, [...rewrites.slice(0, 1), away])).toMatchObject({ why: expect.any(String) });
    expect(readFileSync(join(root, 'a.ifu.yaml'), 'utf8')).toBe('\ufeffa: 1\n');
  });

  it('are taken back when a later file cannot be written', () => {
    const root = folder();
    mkdirSync(join(root, 'other'));
    rmSync(join(root, 'sets'), { recursive: true });
    writeFileSync(join(root, 'other/b.ifu.yaml'), 'b: 1\r\n');
    // Read through the link, refused when written.
    symlinkSync('other', join(root, 'sets'));
    expect(rewriteAll(root, rewrites)).toMatchObject({ why: expect.stringContaining('No other file was changed') });
    expect(textsIn(root)).toEqual(['\ufeffa: 1\n', 'b: 1\r\n']);
  });
});
