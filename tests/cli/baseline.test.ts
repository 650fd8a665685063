import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { cli, folderWith } from '../support/cli.ts';

const library = 'kind: library\nid: demo\n';
const procedure = (steps: readonly string[]) =>
  `kind: procedure\nid: p\nowner: manager\nsteps:\n${steps.map((step) => `  - ${step}\n`).join('')}`;
const bare = '{stage: cooling, do: cool, time: 60 min, release_temp: 24 C}';
const told = '{stage: cooling, do: cool, time: 60 min, release_temp: 24 C, why: hot packs draw in moisture}';
const cold = '{stage: cooling, do: cool, time: 60 min, release_temp: 24 C, surface: steel-table, why: it is near}';
const file = 'procedures/p.ifu.yaml';

function department(...steps: readonly string[]): string {
  return folderWith({ 'library.ifu.yaml': library, [file]: procedure(steps) });
}

function baselineOf(folder: string): { findings: readonly { fingerprint: string; count: number }[] } {
  return JSON.parse(readFileSync(join(folder, '.traywright-baseline.json'), 'utf8')) as ReturnType<typeof baselineOf>;
}

async function checked(
  cwd: string,
): Promise<{ rules: readonly string[]; known: number; settled: number; code: number }> {
  const { out, code } = await cli(['check', '--format', 'json', '--fail-on', 'advice'], { cwd });
  const [one] = JSON.parse(out).libraries;
  const known = one.baseline?.known.reduce((sum: number, { count }: { count: number }) => sum + count, 0) ?? -1;
  return {
    rules: one.findings.map(({ rule }: { rule: string }) => rule),
    known,
    settled: one.baseline?.settled ?? -1,
    code,
  };
}

describe('traywright baseline', () => {
  it('holds back what is there, counts it in every output, and shows what is new', async () => {
    const cwd = department(bare, told);
    const before = await checked(cwd);
    expect(before).toMatchObject({ rules: ['step-without-why'], known: -1, code: 1 });
    expect(await cli(['baseline'], { cwd })).toMatchObject({ code: 0 });
    expect(await checked(cwd)).toMatchObject({ rules: [], known: 1, settled: 0, code: 0 });
    const { out } = await cli(['check'], { cwd });
    expect(out).toContain('1 finding was kept back because the baseline holds them: step-without-why 1.');
    writeFileSync(join(cwd, file), procedure([bare, told, cold]));
    expect(await checked(cwd)).toMatchObject({ rules: ['cool-touch-or-cold-surface'], known: 1 });
  });

  it('only gets smaller, unless it is told to grow', async () => {
    const cwd = department(bare, bare);
    await cli(['baseline'], { cwd });
    expect(baselineOf(cwd).findings).toHaveLength(2);
    writeFileSync(join(cwd, file), procedure([bare, told, cold]));
    expect((await checked(cwd)).settled).toBe(1);
    expect((await cli(['check'], { cwd })).out).toContain('1 finding of the baseline is no longer found');
    const shrunk = await cli(['baseline'], { cwd });
    expect(shrunk.out).toBe('the baseline holds 1 finding; 1 settled since the last time.\n');
    expect(baselineOf(cwd).findings.map(({ fingerprint }) => fingerprint)).toEqual([
      'step-without-why procedure/p steps[0]',
    ]);
    const grown = await cli(['baseline', '--grow'], { cwd });
    expect(grown.out).toBe('the baseline holds 2 findings; 1 more than before.\n');
  });

  it('holds back no prohibition', async () => {
    const cwd = folderWith({
      'library.ifu.yaml': library,
      'procedures/wet.ifu.yaml':
        'kind: procedure\nid: wet\nsteps:\n  - {when: moisture-found, do: air-dry-then-release, why: the list is full}\n',
    });
    expect((await cli(['baseline'], { cwd })).out).toContain('Prohibitions are always shown.');
    expect((await checked(cwd)).rules).toContain('wet-pack-released');
  });

  it('that cannot be read holds nothing back, and is said', async () => {
    const cwd = folderWith({
      'library.ifu.yaml': library,
      [file]: procedure([bare]),
      '.traywright-baseline.json':
        '{"format":"traywright-baseline","version":1,"findings":[{"fingerprint":"","count":1e9}]}',
    });
    const { code, err, out } = await cli(['check'], { cwd });
    expect(code).toBe(2);
    expect(err).toContain('nothing is held back: entry 1 has a count that cannot be');
    expect(out).toContain('step-without-why');
    expect((await cli(['baseline'], { cwd })).code).toBe(2);
  });
});
