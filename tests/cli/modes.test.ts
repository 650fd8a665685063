import { spawn, spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import type { JsonReport } from '../../server/src/report/json.ts';
import { badText, cli, folderWith, goodText, libraryText, namesIn } from '../support/cli.ts';
import { git } from '../support/git.ts';

const root = new URL('../..', import.meta.url).pathname;
const program = join(root, 'dist/traywright.cjs');

beforeAll(() => {
  const built = spawnSync(process.execPath, ['server/build/bundle.mjs', 'cli'], { cwd: root, encoding: 'utf8' });
  expect(built.status).toBe(0);
});

const device = (id: string) => `kind: device\nid: ${id}\nmanual: {use: required}\n`;
const set = (id: string, of: string) => `kind: set\nid: ${id}\nmembers: [{device: ${of}, qty: 1}]\n`;

describe('--changed-since', () => {
  function history(): string {
    const cwd = folderWith({
      'library.ifu.yaml': libraryText,
      'clamp.ifu.yaml': device('clamp'),
      'tray.ifu.yaml': set('tray', 'clamp'),
      'old.ifu.yaml': badText,
    });
    git(cwd, 'init', '-q', '-b', 'main');
    git(cwd, 'add', '-A');
    git(cwd, 'commit', '-q', '-m', 'first');
    return cwd;
  }

  it('reports nothing, and nothing is wrong, where nothing changed', async () => {
    const cwd = history();
    const { code, out } = await cli(['check', '--changed-since', 'HEAD', '--format', 'json'], { cwd });
    expect([code, namesIn(out)]).toEqual([0, []]);
  });

  it('reports changed and new files, and those that a change or a loss affects', async () => {
    const cwd = history();
    writeFileSync(join(cwd, 'new.ifu.yaml'), 'kind: question\nid: q-new\nfrobnicate: yes\n');
    rmSync(join(cwd, 'clamp.ifu.yaml'));
    const { code, out } = await cli(['check', '--changed-since', 'HEAD', '--format', 'json'], { cwd });
    expect(code).toBe(1);
    expect(namesIn(out)).toContain('new.ifu.yaml unknown-field');
    expect(namesIn(out)).toContain('tray.ifu.yaml unknown-id');
    expect(namesIn(out).filter((name) => name.startsWith('old.'))).toEqual([]);
  });

  it('says of a file that did not change itself which change it depends on', async () => {
    const cwd = history();
    writeFileSync(join(cwd, 'new.ifu.yaml'), 'kind: question\nid: q-new\nfrobnicate: yes\n');
    rmSync(join(cwd, 'clamp.ifu.yaml'));
    const words = ['check', '--changed-since', 'HEAD'];
    const { out } = await cli([...words, '--format', 'json'], { cwd });
    const { libraries } = JSON.parse(out) as JsonReport;
    const why = libraries.flatMap(({ findings }) =>
      findings.map(({ at, rule, shownBecause }) => `${at.file} ${rule}: ${shownBecause?.file} ${shownBecause?.change}`),
    );
    expect(why).toContain('new.ifu.yaml unknown-field: new.ifu.yaml new');
    expect(why).toContain('tray.ifu.yaml unknown-id: clamp.ifu.yaml gone');
    const text = await cli(words, { cwd });
    expect(text.out).toContain('    Shown because:        it depends on clamp.ifu.yaml, which is gone\n');
    expect(text.out.match(/Shown because/g)?.length).toBe(why.filter((one) => one.startsWith('tray.')).length);
    expect(text.out).toContain('findings are shown for 2 of them, as asked: 1 changed, 1 depends on what changed.');
    const brief = await cli([...words, '--quiet'], { cwd });
    expect(brief.out).toMatch(
      /^tray\..* unknown-id: .* \(shown because it depends on clamp\.ifu\.yaml, which is gone\)$/m,
    );
    writeFileSync(join(cwd, 'library.ifu.yaml'), `${libraryText}as_of: 2024-01-01\n`);
    const all = await cli([...words, '--quiet'], { cwd });
    expect(all.out).toMatch(/^old\..* \(shown because it depends on library\.ifu\.yaml, which changed\)$/m);
    const whole = JSON.parse((await cli(['check', '--format', 'json'], { cwd })).out) as JsonReport;
    expect(
      whole.libraries.flatMap(({ findings }) => findings.map((one) => one.shownBecause)).every((one) => one === null),
    ).toBe(true);
  });

  it('takes other line ends for no change', async () => {
    const cwd = history();
    for (const name of ['library', 'clamp', 'tray', 'old'])
      writeFileSync(
        join(cwd, `${name}.ifu.yaml`),
        readFileSync(join(cwd, `${name}.ifu.yaml`), 'utf8').replaceAll('\n', '\r\n'),
      );
    const { out } = await cli(['check', '--changed-since', 'HEAD', '--format', 'json'], { cwd });
    expect(namesIn(out)).toEqual([]);
  });

  it('reports everything after a change of the library’s own file, which has a say in all', async () => {
    const cwd = history();
    writeFileSync(join(cwd, 'library.ifu.yaml'), `${libraryText}as_of: 2024-01-01\n`);
    const { out } = await cli(['check', '--changed-since', 'HEAD', '--format', 'json'], { cwd });
    expect(namesIn(out)).toContain('old.ifu.yaml unknown-field');
  });

  it('says that a shallow copy holds too little history', async () => {
    const cwd = history();
    writeFileSync(join(cwd, 'old.ifu.yaml'), goodText);
    git(cwd, 'commit', '-q', '-a', '-m', 'second');
    const copy = join(folderWith({}), 'copy');
    git(cwd, 'clone', '-q', '--depth', '1', `file://${cwd}`, copy);
    const { code, err } = await cli(['check', '--changed-since', 'HEAD~1'], { cwd: copy });
    expect(code).toBe(2);
    expect(err).toContain('holds only the newest part of its history');
  });

  it('does not take for ours what others changed since the lines of work parted', async () => {
    const cwd = history();
    git(cwd, 'checkout', '-q', '-b', 'ours');
    git(cwd, 'checkout', '-q', 'main');
    writeFileSync(join(cwd, 'old.ifu.yaml'), goodText);
    git(cwd, 'commit', '-q', '-a', '-m', 'theirs');
    git(cwd, 'checkout', '-q', 'ours');
    const { out } = await cli(['check', '--changed-since', 'main', '--format', 'json'], { cwd });
    expect(namesIn(out)).toEqual([]);
  });

  it.each(['gone', '--output=x', '-x', '$(touch owned)', 'HEAD\n'])(
    'says when %j is no recorded state',
    async (revision) => {
      const cwd = history();
      const { code, err } = await cli(['check', `--changed-since=${revision}`], { cwd });
      expect(code).toBe(2);
      expect(err).toMatch(/recorded state/);
      expect(git(cwd, 'status', '--porcelain')).toBe('');
    },
  );

  it('[X12] takes names of files and of lines of work as names, whatever they look like', async () => {
    const cwd = history();
    git(cwd, 'branch', '$(id)');
    const names = ['-rf.ifu.yaml', ';rm -rf *.ifu.yaml', '--output=x.ifu.yaml', 'new\nline.ifu.yaml', '`id`.ifu.yaml'];
    for (const [n, name] of names.entries()) writeFileSync(join(cwd, name), badText.replace('q-bad', `q-bad-${n}`));
    const { code, out } = await cli(['check', '--changed-since', '$(id)', '--format', 'json'], { cwd });
    expect(code).toBe(1);
    expect(namesIn(out).toSorted()).toEqual(names.map((name) => `${name} unknown-field`).toSorted());
    git(cwd, 'add', '-A');
    git(cwd, 'commit', '-q', '-m', 'odd names');
    const after = await cli(['check', '--changed-since', 'HEAD', '--format', 'json'], { cwd });
    expect([after.code, namesIn(after.out)]).toEqual([0, []]);
  });

  it('says when there is no history at all', async () => {
    const { code, err } = await cli(['check', '--changed-since', 'HEAD'], {
      cwd: folderWith({ 'library.ifu.yaml': libraryText }),
    });
    expect(code).toBe(2);
    expect(err).toContain('no recorded history');
  });
});

describe('--max-warnings', () => {
  const files = { 'library.ifu.yaml': libraryText, 'clamp.ifu.yaml': device('clamp') };

  it('fails beyond the number, and not at it', async () => {
    const cwd = folderWith(files);
    const { out } = await cli(['check', '--format', 'json'], { cwd });
    const warnings = (JSON.parse(out) as { counts: { warning: number } }).counts.warning;
    expect(warnings).toBeGreaterThan(0);
    expect((await cli(['check', '--fail-on', 'never', '--max-warnings', String(warnings)], { cwd })).code).toBe(0);
    expect((await cli(['check', '--fail-on', 'never', '--max-warnings', String(warnings - 1)], { cwd })).code).toBe(1);
  });

  it('says that it was them, and shows them as what failed to a build server', async () => {
    const cwd = folderWith(files);
    const check = ['check', '--format', 'junit', '--fail-on', 'never'];
    const within = await cli([...check, '--max-warnings', '9'], { cwd });
    expect(within.err).toBe('');
    expect(within.out).not.toContain('<failure');
    const { out, err } = await cli([...check, '--max-warnings', '0'], { cwd });
    expect(err).toMatch(/^traywright: there are more warnings \(\d\) than --max-warnings allows \(0\)\.\n$/);
    expect(out).toContain('<failure type="warning"');
  });

  it.each(['x', '-1', '1.5', ''])('takes whole numbers only, not %j', async (value) => {
    const { code, err } = await cli(['check', `--max-warnings=${value}`], { cwd: folderWith(files) });
    expect(code).toBe(2);
    expect(err).toContain('--max-warnings needs a whole number');
  });
});

describe('--timing', () => {
  it('speaks on the error output only', async () => {
    const cwd = folderWith({ 'library.ifu.yaml': libraryText, 'a.ifu.yaml': goodText });
    const { out, err } = await cli(['check', '--timing', '--format', 'json'], { cwd });
    expect(err).toMatch(/read in \d+ ms, checked in \d+ ms/);
    expect(() => JSON.parse(out) as unknown).not.toThrow();
  });
});

describe('--stdin', () => {
  const typed = (words: readonly string[], cwd: string, input: string | Uint8Array) =>
    spawnSync(process.execPath, [program, 'check', '--format', 'json', ...words], { cwd, input, encoding: 'utf8' });

  it('checks a text in the place of a file, against the rest of the library', () => {
    const cwd = folderWith({
      'library.ifu.yaml': libraryText,
      'clamp.ifu.yaml': device('clamp'),
      'tray.ifu.yaml': set('tray', 'clamp'),
    });
    const { stdout, status } = typed(['--stdin', 'tray.ifu.yaml'], cwd, set('tray', 'clmp'));
    expect(status).toBe(1);
    expect(namesIn(stdout)).toContain('tray.ifu.yaml unknown-id');
    expect(namesIn(stdout).every((name) => name.startsWith('tray.'))).toBe(true);
  });

  it('takes a file that is not there yet', () => {
    const cwd = folderWith({ 'library.ifu.yaml': libraryText, 'sets/a.ifu.yaml': goodText });
    const { stdout } = typed(['--stdin', 'sets/new.ifu.yaml'], cwd, badText);
    expect(namesIn(stdout)).toEqual(['sets/new.ifu.yaml unknown-field']);
  });

  it.each([
    ['notes.txt', 'is not a rule file'],
    ['gone/a.ifu.yaml', 'there is no file or folder'],
  ])('says why %s cannot be checked', (name, why) => {
    const { status, stderr } = typed(['--stdin', name], folderWith({ 'library.ifu.yaml': libraryText }), '');
    expect(status).toBe(2);
    expect(stderr).toContain(why);
  });

  it('refuses what is no text or too long', () => {
    const cwd = folderWith({ 'library.ifu.yaml': libraryText });
    expect(typed(['--stdin', 'a.ifu.yaml'], cwd, new Uint8Array([0xff, 0xfe, 0xfd, 0x00])).status).toBe(2);
    expect(typed(['--stdin', 'a.ifu.yaml'], cwd, 'x'.repeat(5_000_000)).status).toBe(2);
  });
});

describe('--watch', () => {
  function watching(cwd: string, words: readonly string[] = []) {
    const child = spawn(process.execPath, [program, 'check', '--watch', ...words], {
      cwd,
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    const told = { out: '' };
    child.stdout.on('data', (data: Buffer) => {
      told.out += data.toString();
    });
    const said = async (line: string): Promise<void> => {
      for (const last = Date.now() + 20_000; !told.out.includes(line); ) {
        if (Date.now() > last) throw new Error(`"${line}" was never said:\n${told.out}`);
        await new Promise((resolve) => setTimeout(resolve, 20));
      }
    };
    const end = (): Promise<unknown> => {
      const ended = new Promise((resolve) => child.on('exit', resolve));
      child.kill('SIGINT');
      return ended;
    };
    return { said, told, end };
  }

  it('tells what a change brought and settled, and ends with the last exit code', async () => {
    const cwd = folderWith({ 'library.ifu.yaml': libraryText, 'a.ifu.yaml': badText });
    const { said, end } = watching(cwd);
    await said('Waiting for changes');
    writeFileSync(join(cwd, 'b.ifu.yaml'), badText.replace('q-bad', 'q-other'));
    await said('+ b.ifu.yaml:3 error unknown-field');
    rmSync(join(cwd, 'b.ifu.yaml'));
    writeFileSync(join(cwd, 'a.ifu.yaml'), goodText);
    await said('- a.ifu.yaml:3 error unknown-field');
    expect(await end()).toBe(0);
  });

  it('says of every check that it was made, also where nothing is new', async () => {
    const cwd = folderWith({ 'library.ifu.yaml': libraryText, 'a.ifu.yaml': badText });
    const { said, told, end } = watching(cwd);
    await said('Waiting for changes');
    writeFileSync(join(cwd, 'a.ifu.yaml'), `${badText}# a remark\n`);
    await said('settled.');
    expect(told.out).toMatch(/\nChecked again in \d+\.\d\d s: 2 files; \d+ findings? stays?, 0 new, 0 settled\.\n$/);
    writeFileSync(join(cwd, 'a.ifu.yaml'), goodText);
    await said('0 new, 1 settled.');
    expect(await end()).toBe(0);
  });

  it('sees every save of an editor that puts a new file in the place of the old, also in folders made meanwhile', async () => {
    const cwd = folderWith({ 'library.ifu.yaml': libraryText, 'a.ifu.yaml': badText });
    const { said, end } = watching(cwd);
    const saved = (path: string, word: string): void => {
      writeFileSync(join(cwd, 'beside.tmp'), badText.replace('frobnicate', word));
      renameSync(join(cwd, 'beside.tmp'), join(cwd, path));
    };
    await said('Waiting for changes');
    for (const word of ['first', 'second', 'third', 'fourth']) {
      saved('a.ifu.yaml', word);
      await said(`no field "${word}"`);
    }
    mkdirSync(join(cwd, 'sets/new'), { recursive: true });
    for (const word of ['fifth', 'sixth']) {
      saved('sets/new/b.ifu.yaml', word);
      await said(`no field "${word}"`);
    }
    expect(await end()).toBe(1);
  });

  it('is not called by the reports that it writes', async () => {
    const cwd = folderWith({ 'library.ifu.yaml': libraryText, 'a.ifu.yaml': badText });
    const { said, end } = watching(cwd, ['--output', 'json=out.json']);
    await said('Waiting for changes');
    writeFileSync(join(cwd, 'a.ifu.yaml'), badText.replace('frobnicate', 'other'));
    await said('no field "other"');
    await new Promise((resolve) => setTimeout(resolve, 300));
    const written = statSync(join(cwd, 'out.json')).mtimeMs;
    await new Promise((resolve) => setTimeout(resolve, 1_000));
    expect(statSync(join(cwd, 'out.json')).mtimeMs).toBe(written);
    expect(readFileSync(join(cwd, 'out.json'), 'utf8')).toContain('other');
    await end();
  });

  it('prints text only', async () => {
    const { code, err } = await cli(['check', '--watch', '--format', 'json'], { cwd: root });
    expect([code, err]).toEqual([2, expect.stringContaining('--watch prints text only')]);
  });
});
