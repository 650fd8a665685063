import { chmodSync, mkdirSync, readdirSync, readFileSync, statSync, symlinkSync, utimesSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { writeAtomically } from '../../../server/src/host/atomic-write.ts';
import { folderWith } from '../../support/cli.ts';

describe('careful writing', () => {
  it('creates and replaces a file, keeps its mode, and leaves nothing else behind', () => {
    const root = folderWith({ 'a/old.ifu.yaml': 'old' });
    chmodSync(join(root, 'a/old.ifu.yaml'), 0o640);
    expect(writeAtomically(root, 'a/old.ifu.yaml', 'new °C')).toEqual({ written: join(root, 'a/old.ifu.yaml') });
    expect(writeAtomically(root, 'a/new.ifu.yaml', '')).toEqual({ written: join(root, 'a/new.ifu.yaml') });
    expect(readFileSync(join(root, 'a/old.ifu.yaml'), 'utf8')).toBe('new °C');
    expect(statSync(join(root, 'a/old.ifu.yaml')).mode & 0o777).toBe(0o640);
    expect(readdirSync(join(root, 'a')).sort()).toEqual(['new.ifu.yaml', 'old.ifu.yaml']);
  });

  it('takes away what an ended run left unfinished an hour ago, and nothing else', () => {
    const left = '.a.ifu.yaml.0b1f6a8e-3c1d-4c55-9f43-6d8a1c1f0e11.tmp';
    const others = [
      '.a.tmp',
      'a.0b1f6a8e-3c1d-4c55-9f43-6d8a1c1f0e11.tmp',
      '.b.0b1f6a8e-3c1d-4c55-9f43-6d8a1c1f0e12.tmp',
    ];
    const root = folderWith(Object.fromEntries([left, ...others].map((name) => [name, 'x'])));
    for (const name of [left, '.a.tmp', others[1] ?? '']) utimesSync(join(root, name), 1_700_000_000, 1_700_000_000);
    writeAtomically(root, 'a.ifu.yaml', 'new');
    expect(readdirSync(root).sort()).toEqual([...others, 'a.ifu.yaml'].sort());
  });

  it('refuses paths out of the library, links, and what is no file', () => {
    const outside = folderWith({ 'x.ifu.yaml': 'outside' });
    const root = folderWith({ 'a.ifu.yaml': 'inside' });
    symlinkSync(join(outside, 'x.ifu.yaml'), join(root, 'link.ifu.yaml'));
    symlinkSync(outside, join(root, 'folder'));
    mkdirSync(join(root, 'dir.ifu.yaml'));
    for (const path of [
      '../x.ifu.yaml',
      '/etc/x',
      'link.ifu.yaml',
      'folder/x.ifu.yaml',
      'dir.ifu.yaml',
      'a\0b',
      '',
      'nowhere/x.ifu.yaml',
    ]) {
      expect(writeAtomically(root, path, 'new'), path).toHaveProperty('why');
    }
    expect(readFileSync(join(outside, 'x.ifu.yaml'), 'utf8')).toBe('outside');
    expect(readdirSync(root).sort()).toEqual(['a.ifu.yaml', 'dir.ifu.yaml', 'folder', 'link.ifu.yaml']);
  });
});
