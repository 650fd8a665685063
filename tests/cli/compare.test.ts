import { chmodSync, existsSync, mkdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { cli, folderWith, libraryText } from '../support/cli.ts';
import { git } from '../support/git.ts';

const samples = new URL('../../samples', import.meta.url).pathname;
const day = ['--today', '2025-03-03'];

function device(dry: number): string {
  return `kind: device\nid: pale-forceps\nsterilization:\n  any_of:\n    - {id: pv, modality: steam-prevac, dry: {at_least: ${dry} min}}\n`;
}

function write(folder: string, files: Readonly<Record<string, string>>): void {
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
}

/** A history with two states of a library in a folder of the repository: tags `first` and `second`. */
function history(): { readonly top: string; readonly library: string } {
  const top = folderWith({ 'readme.txt': 'beside the library\n' });
  const library = join(top, 'our library');
  git(top, 'init', '-q', '-b', 'main');
  write(library, { 'library.ifu.yaml': libraryText, 'devices/forceps.ifu.yaml': device(20) });
  git(top, 'add', '-A');
  git(top, 'commit', '-q', '-m', 'first');
  git(top, 'tag', 'first');
  write(library, { 'devices/forceps.ifu.yaml': device(30) });
  git(top, 'commit', '-q', '-a', '-m', 'second');
  git(top, 'tag', 'second');
  return { top, library };
}

/** Line of the sample's old file on which these words stand, counted from 1. */
function lineOf(words: string): number {
  const path = join(samples, 'lanternfield-corrected/devices/duskwell-lap-scissors-takeapart.ifu.yaml');
  const lines = readFileSync(path, 'utf8').split('\n');
  return lines.findIndex((line) => line.includes(words)) + 1;
}

const stricter = 'stricter: device pale-forceps, sterilization.any_of[pv].dry';

describe('compare', () => {
  it('two folders, of which the new one holds only what it changes', async () => {
    const { code, out } = await cli(['compare', 'lanternfield-corrected', 'lanternfield-revision', ...day], {
      cwd: samples,
    });
    expect(code).toBe(1);
    expect(out).toContain('1 new prohibition, 2 stricter, 1 became silent, 1 looser, 1 re-citation.');
    expect(out).toContain('LAP-CHOLE-B: route breaks.');
    expect(out.indexOf('Passages that are gone')).toBeLessThan(out.indexOf('1. stricter'));
    const again = await cli(['compare', 'lanternfield-corrected', 'lanternfield-revision', ...day], { cwd: samples });
    expect(again.out).toBe(out);
  });

  it.each([
    ['lanternfield-corrected', 'stock', 'route holds, nothing visible. every route stays as it was'],
    ['lanternfield', 'stock', 'no route before or after. nothing visible changes'],
    ['lanternfield', 'mass', 'no route before or after, card text changes. LAP-CHOLE-B: Mass'],
    ['lanternfield', 'cycle', 'no route before or after, card text changes. LAP-CHOLE-B: S1-pv132-4-20'],
  ])('in %s, another %s of a set: %s', async (name, field, words) => {
    const set = readFileSync(join(samples, name, 'sets/LAP-CHOLE-B.ifu.yaml'), 'utf8');
    const others: Readonly<Record<string, string>> = { stock: '5', mass: '8.8 kg', cycle: 'S1-pv132-4-30' };
    const changed = set.replace(new RegExp(`^${field}: .*`, 'm'), `${field}: ${others[field]}`);
    const now = folderWith({ 'sets/LAP-CHOLE-B.ifu.yaml': changed });
    const { out } = await cli(['compare', join(samples, name), now, ...day], { cwd: samples });
    expect(out).toContain(`Here: ${words}`);
  });

  it('two files, with and without a department around them', async () => {
    const folder = folderWith({ 'old/f.ifu.yaml': device(20), 'new/g.ifu.yaml': device(30) });
    const { code, out } = await cli(['compare', 'old/f.ifu.yaml', 'new/g.ifu.yaml'], { cwd: folder });
    expect(code).toBe(1);
    expect(out).toContain(stricter);
    expect(out).toContain('No library lies around the old side, so no effects were derived');
    const scissors = 'devices/duskwell-lap-scissors-takeapart.ifu.yaml';
    const inside = await cli(
      ['compare', `lanternfield-corrected/${scissors}`, `lanternfield-revision/${scissors}`, ...day],
      { cwd: samples },
    );
    expect(inside.out).toContain('Here: route breaks.');
  });

  it('says the same as data and as a page, in valid forms', async () => {
    const words = ['compare', 'lanternfield-corrected', 'lanternfield-revision', ...day];
    const json = JSON.parse((await cli([...words, '--format', 'json'], { cwd: samples })).out);
    expect(json).toMatchObject({
      format: 'traywright-compare',
      version: 1,
      counts: { stricter: 2 },
      effects: { 'route-breaks': 1 },
    });
    expect(json.changes[0]).toMatchObject({
      class: 'stricter',
      effect: 'route-breaks',
      decision: 'open',
      before: { field: 'sterilization.any_of[pv132].dry', line: lineOf('dry: {at_least: 30 min}') },
      impact: { cards: ['LAP-CHOLE-B'], shelfChoice: 'needed' },
    });
    expect((await cli([...words, '--format', 'html'], { cwd: samples })).out).toMatch(/^<!DOCTYPE html>/);
    const markdown = (await cli([...words, '--format', 'markdown'], { cwd: samples })).out;
    expect(markdown).toMatch(/^## 1 new prohibition, 2 stricter/);
    expect(markdown.split('\n').length).toBeLessThan(60);
  });

  it('caps the page for a pull request and counts what it leaves out', async () => {
    const { out } = await cli(['compare', 'lanternfield', 'lanternfield-corrected', '--format', 'markdown', ...day], {
      cwd: samples,
    });
    expect(out).toMatch(/\d+ more changes are not shown/);
    expect(out.length).toBeLessThan(20_000);
  }, 60_000);

  it('exit codes follow the policy', async () => {
    const folder = folderWith({ 'old.ifu.yaml': device(20), 'new.ifu.yaml': device(30) });
    const codeOf = async (...words: readonly string[]) =>
      (await cli(['compare', 'old.ifu.yaml', 'new.ifu.yaml', ...words], { cwd: folder })).code;
    expect(await codeOf('--fail-on', 'stricter')).toBe(1);
    expect(await codeOf('--fail-on', 'looser,different')).toBe(0);
    expect(await codeOf('--fail-on', 'looser,any')).toBe(1);
    expect(await codeOf('--fail-on', 'never')).toBe(0);
    expect(await codeOf('--fail-on', 'strict')).toBe(2);
  });

  it('writes the record to complete, and never over one that exists', async () => {
    const folder = folderWith({ 'old.ifu.yaml': device(20), 'new.ifu.yaml': device(30) });
    const words = ['compare', 'old.ifu.yaml', 'new.ifu.yaml', '--fail-on', 'never', '--write-sign-off', 'so.ifu.yaml'];
    expect((await cli(words, { cwd: folder })).code).toBe(0);
    const text = readFileSync(join(folder, 'so.ifu.yaml'), 'utf8');
    expect(text).toContain('field: "sterilization.any_of[pv].dry"\n    class: stricter');
    const again = await cli(words, { cwd: folder });
    expect(again.code).toBe(2);
    expect(again.err).toContain('exists already');
    expect(readFileSync(join(folder, 'so.ifu.yaml'), 'utf8')).toBe(text);
  });

  it('says what cannot be compared', async () => {
    const folder = folderWith({
      'a.ifu.yaml': device(20),
      'b.ifu.yaml': 'kind: water\nid: tap\n',
      'c.ifu.yaml': 'no rule file\n',
      'd/x.txt': '',
    });
    const of = (...words: readonly string[]) => cli(['compare', ...words], { cwd: folder });
    expect(await of('a.ifu.yaml')).toMatchObject({ code: 2 });
    expect(await of('a.ifu.yaml', 'nowhere')).toMatchObject({ code: 2, err: expect.stringContaining('"nowhere"') });
    expect(await of('a.ifu.yaml', 'd')).toMatchObject({
      code: 2,
      err: expect.stringContaining('two files or two folders'),
    });
    expect(await of('a.ifu.yaml', 'b.ifu.yaml')).toMatchObject({
      code: 2,
      err: expect.stringContaining('different kinds'),
    });
    expect(await of('a.ifu.yaml', 'c.ifu.yaml')).toMatchObject({
      code: 4,
      err: expect.stringContaining('nothing to compare'),
    });
    expect(await of('d', 'd')).toMatchObject({ code: 4 });
  });

  it('a file that cannot be read on one side is not taken for one that is gone', async () => {
    const files = { 'library.ifu.yaml': libraryText, 'devices/f.ifu.yaml': device(20) };
    const folder = folderWith({});
    write(join(folder, 'old'), files);
    write(join(folder, 'new'), { ...files, 'devices/f.ifu.yaml': 'kind: device\nid: pale-forceps\n  broken: [\n' });
    const { out } = await cli(['compare', 'old', 'new'], { cwd: folder });
    expect(out).not.toContain('the file is gone');
  });
});

describe('compare --swap', () => {
  const at = (...words: readonly string[]) => cli(['compare', ...words, ...day], { cwd: samples });

  it('shows a matrix with reasons, as text and as data', async () => {
    const swap = ['lanternfield-corrected', '--swap', 'packaging/P3-rigid-container=P1-wrap-light'];
    const { code, out } = await at(...swap);
    expect(code).toBe(1);
    expect(out).toMatch(/LAP-CHOLE-B +S1-pv132-4-30 in P1-wrap-light +ok +no +Mass: P1-wrap-light asks at most 5 kg/);
    expect(out).toContain('Cards to print again: LAP-CHOLE-B.');
    expect(JSON.parse((await at(...swap, '--format', 'json')).out)).toMatchObject({
      format: 'traywright-swap',
      cards: ['LAP-CHOLE-B'],
    });
    expect((await at(...swap, '--fail-on', 'never')).code).toBe(0);
  });

  it.each(['packaging', 'packaging/P3', 'device/a=b', 'packaging/=b', 'packaging/P3-rigid-container=P99'])(
    '%s cannot be followed',
    async (swap) => {
      expect(await at('lanternfield-corrected', '--swap', swap)).toMatchObject({ code: 2, out: '' });
    },
  );
});

describe('compare of recorded states', () => {
  it('two states, and one state with the files as they are', async () => {
    const { library } = history();
    const both = await cli(['compare', '--from', 'first', '--to', 'second'], { cwd: library });
    expect(both.out).toContain(stricter);
    expect(both.code).toBe(1);
    expect((await cli(['compare', '--from', 'second', '--to', 'first'], { cwd: library })).out).toContain('looser');
    expect((await cli(['compare', '--from', 'second'], { cwd: library })).out).toContain('No change of meaning');
    write(library, { 'devices/forceps.ifu.yaml': device(45) });
    expect((await cli(['compare', '--from', 'second'], { cwd: library })).out).toContain(
      'at least 30 min -> at least 45 min',
    );
    expect((await cli(['compare', '.', '--from', 'second~1'], { cwd: library })).out).toContain(
      'at least 20 min -> at least 45 min',
    );
  });

  it.each([
    '--upload-pack=touch pwned',
    '-rf',
    '$(touch pwned)',
    '`touch pwned`',
    'first; touch pwned',
    'first\ntouch pwned',
    'no such state',
    '--output=pwned',
    ':/',
    '',
  ])('[X12] a revision is only ever a name: %j', async (revision) => {
    const { top, library } = history();
    const { code, err } = await cli(['compare', `--from=${revision}`, '--to', 'second'], { cwd: library });
    expect(code).toBe(2);
    expect(err).toMatch(/^traywright: /);
    expect(err.trim().split('\n')).toHaveLength(1);
    expect(existsSync(join(top, 'pwned')) || existsSync(join(library, 'pwned'))).toBe(false);
  });

  it('odd file names are names; links are not followed', async () => {
    const { top, library } = history();
    const odd = [
      'devices/-rf.ifu.yaml',
      'devices/;touch pwned.ifu.yaml',
      'devices/two\nlines.ifu.yaml',
      'devices/$(touch pwned).ifu.yaml',
      'devices/ü.ifu.yaml',
    ];
    write(library, Object.fromEntries(odd.map((path, at) => [path, device(20).replace('pale-forceps', `odd-${at}`)])));
    writeFileSync(join(top, 'secret.ifu.yaml'), device(20).replace('pale-forceps', 'secret'));
    symlinkSync('../../secret.ifu.yaml', join(library, 'devices/link.ifu.yaml'));
    git(top, 'add', '-A');
    git(top, 'commit', '-q', '-m', 'odd');
    const { out } = await cli(['compare', '--from', 'second', '--to', 'HEAD'], { cwd: library });
    for (let at = 0; at < odd.length; at++) expect(out).toContain(`device odd-${at}`);
    expect(out).not.toContain('secret');
    expect(existsSync(join(library, 'pwned'))).toBe(false);
  });

  it('nothing that the repository names is started', async () => {
    const { top, library } = history();
    const mark = join(top, 'started');
    const program = join(top, 'program.sh');
    writeFileSync(program, `#!/bin/sh\ntouch '${mark}'\n`);
    chmodSync(program, 0o755);
    mkdirSync(join(top, '.git/hooks'), { recursive: true });
    for (const hook of ['post-checkout', 'post-index-change', 'reference-transaction']) {
      writeFileSync(join(top, '.git/hooks', hook), `#!/bin/sh\ntouch '${mark}'\n`);
      chmodSync(join(top, '.git/hooks', hook), 0o755);
    }
    for (const [key, value] of [
      ['core.fsmonitor', program],
      ['core.pager', program],
      ['diff.external', program],
      ['filter.x.smudge', program],
      ['core.sshCommand', program],
    ])
      git(top, 'config', key ?? '', value ?? '');
    write(top, { '.gitattributes': '*.yaml filter=x diff=x\n' });
    const { out } = await cli(['compare', '--from', 'first', '--to', 'second'], { cwd: library });
    expect(out).toContain(stricter);
    expect(existsSync(mark)).toBe(false);
  });

  it('variables that lead git elsewhere are not followed', async () => {
    const { library } = history();
    const kept = { ...process.env };
    Object.assign(process.env, { GIT_DIR: '/nowhere', GIT_WORK_TREE: '/nowhere' });
    try {
      expect((await cli(['compare', '--from', 'first', '--to', 'second'], { cwd: library })).out).toContain(stricter);
    } finally {
      process.env = kept;
    }
  });

  it('a copy without the older history says so', async () => {
    const { top } = history();
    const old = git(top, 'rev-parse', 'first');
    const copy = folderWith({});
    git(copy, 'clone', '-q', '--depth', '1', '--no-tags', `file://${top}`, 'shallow');
    const { code, err } = await cli(['compare', '--from', old], { cwd: join(copy, 'shallow', 'our library') });
    expect(code).toBe(2);
    expect(err).toContain('holds only the newest part of its history');
  });

  it('a library without a history says so', async () => {
    const folder = folderWith({ 'library.ifu.yaml': libraryText });
    const { code, err } = await cli(['compare', '--from', 'main'], { cwd: folder });
    expect(code).toBe(2);
    expect(err).toContain('This folder has no recorded history');
    expect(await cli(['compare', '--to', 'main'], { cwd: folder })).toMatchObject({
      code: 2,
      err: expect.stringContaining('--from'),
    });
  });
});

describe('the day', () => {
  it('is the one that the library names, as for a check of it, whatever the clock says', async () => {
    const words = ['compare', 'lanternfield-corrected', 'lanternfield-revision', '--format', 'json'];
    const now = await cli(words, { cwd: samples, today: '2031-01-01' });
    expect(now).toEqual(await cli([...words, ...day], { cwd: samples }));
    expect(now.out).toContain('"effect": "route-breaks"');
  });
});
