import { spawn, spawnSync } from 'node:child_process';
import { cpSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { allRules } from '../../server/src/rules/all.generated.ts';
import { badText, cli, folderWith, goodText, libraryText } from '../support/cli.ts';

const root = new URL('../..', import.meta.url).pathname;
const program = join(root, 'dist/traywright.cjs');
const losesPromise = join(root, 'tests/support/loses-promise.cjs');

beforeAll(() => {
  const { status, stderr } = spawnSync(process.execPath, ['server/build/bundle.mjs', 'cli'], {
    cwd: root,
    encoding: 'utf8',
  });
  expect(stderr).toBe('');
  expect(status).toBe(0);
});

function traywright(words: readonly string[], cwd: string) {
  return spawnSync(process.execPath, [program, ...words], {
    cwd,
    encoding: 'utf8',
    timeout: 10_000,
    env: { PATH: process.env.PATH },
  });
}

describe('the program as built', () => {
  it('gives each exit code to the shell', () => {
    const good = folderWith({ 'library.ifu.yaml': libraryText, 'a.ifu.yaml': goodText });
    const bad = folderWith({ 'library.ifu.yaml': libraryText, 'a.ifu.yaml': badText });
    expect(traywright(['check'], good).status).toBe(0);
    expect(traywright(['check'], bad).status).toBe(1);
    expect(traywright(['chekc'], bad).status).toBe(2);
    expect(traywright(['check', '--fail-on', 'never'], bad).status).toBe(0);
    expect(traywright(['check'], folderWith({})).status).toBe(4);
  });

  it('explains every rule as its file does, and prints every form of report, from what it reads on demand', async () => {
    const words = ['explain', ...allRules.map(({ id }) => id)];
    const cwd = folderWith({ 'library.ifu.yaml': libraryText, 'a.ifu.yaml': badText });
    expect(traywright(words, cwd).stdout).toBe((await cli(words, { cwd })).out);
    const check = ['check', '--format', 'sarif', '--today', '2025-03-03'];
    expect(traywright(check, cwd).stdout).toBe((await cli(check, { cwd })).out);
  });

  it('reads nothing that another build left', () => {
    const folder = folderWith({});
    for (const name of readdirSync(dirname(program)))
      if (name.startsWith('traywright')) cpSync(join(dirname(program), name), join(folder, name));
    writeFileSync(join(folder, 'traywright.texts'), readFileSync(program).subarray(0, 1000));
    const { status, stderr } = spawnSync(process.execPath, [join(folder, 'traywright.cjs'), 'explain', 'internal'], {
      encoding: 'utf8',
    });
    expect(status).toBe(0);
    expect(stderr).toBe('');
    const rule = allRules[0]?.id ?? '';
    const other = spawnSync(process.execPath, [join(folder, 'traywright.cjs'), 'explain', rule], { encoding: 'utf8' });
    expect(other.status).toBe(3);
    expect(other.stderr).toContain('traywright.texts belongs to another build');
  });

  it('can be run by its first line, and through a link as npm makes them', () => {
    const cwd = folderWith({});
    symlinkSync(program, join(cwd, 'traywright'));
    expect(spawnSync(join(cwd, 'traywright'), ['--version'], { encoding: 'utf8' }).stdout).toMatch(
      /^traywright \d+\.\d+\.\d+\n$/,
    );
  });

  it('writes no colours and no progress to pipes', () => {
    const { stdout, stderr } = traywright(
      ['check'],
      folderWith({ 'library.ifu.yaml': libraryText, 'a.ifu.yaml': badText }),
    );
    expect(stdout).not.toContain('\u001b');
    expect(stderr).toBe('');
  });

  it('ends quietly, with its own exit code, when nobody reads on', async () => {
    const files: Record<string, string> = { 'library.ifu.yaml': libraryText };
    for (let n = 0; n < 1500; n++)
      files[`q${n}.ifu.yaml`] = `kind: question\nid: q${n}\nfrobnicate: "${'x'.repeat(60)}"\n`;
    const child = spawn(process.execPath, [program, 'check'], {
      cwd: folderWith(files),
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let err = '';
    child.stderr.on('data', (data: Buffer) => {
      err += data.toString();
    });
    child.stdout.once('data', () => child.stdout.destroy());
    const status = await new Promise((resolve) => child.on('exit', resolve));
    expect(err).toBe('');
    expect(status).toBe(1);
  });

  it.each([['check'], ['routes']])('[R13] %s ends with 3 when a promise fails that nobody waits for', (command) => {
    const cwd = folderWith({ 'library.ifu.yaml': libraryText, 'a.ifu.yaml': badText });
    const ended = spawnSync(process.execPath, ['--require', losesPromise, program, command], { cwd, encoding: 'utf8' });
    expect(ended.stderr).toContain('a fault of Traywright itself, not of your files.\nError: lost');
    expect(ended.status).toBe(3);
  });

  it('does not wait for a pipe nor read a device', () => {
    const cwd = folderWith({ 'library.ifu.yaml': libraryText, 'a.ifu.yaml': badText });
    spawnSync('mkfifo', [join(cwd, 'p.ifu.yaml')]);
    symlinkSync('/dev/zero', join(cwd, 'z.ifu.yaml'));
    const { status, stdout } = traywright(['check'], cwd);
    expect(stdout.match(/file-refused/g)).toHaveLength(2);
    expect(stdout).toContain('unknown-field');
    expect(status).toBe(1);
  });

  it('gives the same bytes twice', () => {
    const cwd = folderWith({ 'library.ifu.yaml': libraryText, 'a.ifu.yaml': badText, 'b.ifu.yaml': badText });
    const words = ['check', '--format', 'json', '--today', '2025-03-03'];
    expect(traywright(words, cwd).stdout).toBe(traywright(words, cwd).stdout);
  });
});
