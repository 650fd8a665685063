import { chmodSync, mkdirSync, readdirSync, readFileSync, statSync, symlinkSync } from 'node:fs';
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
