import { describe, expect, it } from 'vitest';
import { catalogueOf } from '../../../server/src/check/catalogue.ts';
import { allRules } from '../../../server/src/rules/all.generated.ts';
import { neverWaivable } from '../../../server/src/rules/support/never-waivable.ts';
import { badText, cli, findingsIn, folderWith, libraryText, namesIn } from '../../support/cli.ts';

const every = catalogueOf(allRules).map(({ id }) => id);

const faulty = { 'bad.ifu.yaml': badText, 'device.ifu.yaml': 'kind: device\nid: d1\nname: x\n' };

async function bothOf(files: Readonly<Record<string, string>>) {
  const cwd = folderWith(files);
  return { text: await cli(['check'], { cwd }), found: (await cli(['check', '--format', 'json'], { cwd })).out };
}

describe('[X14] a library that would hide what is found', () => {
  it('by ignoring everything: it is counted by name, and what nobody may ignore is said once each', async () => {
    const rows = every.map((id) => `  ${id}: {severity: ignored, reason: "quiet"}`);
    const settings = `${libraryText}rules:\n${rows.join('\n')}\n`;
    const { text, found } = await bothOf({ ...faulty, 'library.ifu.yaml': settings });
    expect(text.code).toBe(2);
    expect(text.out).toMatch(/kept back by the library's own settings: .*stage-undeclared 7.*unknown-field 1/);
    const refused = findingsIn(found).filter(({ rule }) => rule === 'setting-refused');
    expect(refused).toHaveLength(neverWaivable.size);
  });

  it('by a waiver of every finding for every file: it is counted by name, and what nobody may waive is said', async () => {
    const waiver = (id: string, n: number) =>
      `kind: waiver\nid: w${n}\nrule: ${id}\nscope: [all]\nreason: quiet\nowner: manager\nexpires: 2026-01-01\n`;
    const waivers = Object.fromEntries(every.map((id, n) => [`waivers/w${n}.ifu.yaml`, waiver(id, n)]));
    const { text, found } = await bothOf({ ...faulty, 'library.ifu.yaml': libraryText, ...waivers });
    expect(text.code).toBe(1);
    expect(text.out).toMatch(/kept back by waivers in force: .*stage-undeclared 7\./);
    expect(namesIn(found)).toContain('bad.ifu.yaml unknown-field');
    const told = new Set(findingsIn(found).map(({ at }) => at.file));
    const silent = every.filter((_, n) => !told.has(`waivers/w${n}.ifu.yaml`));
    expect(silent.toSorted()).toEqual(['stage-undeclared']);
  });

  it.each(['"**/**/**/**"', '"*"', '"/"', '".."', '"."', '"../x"', '"d/../.."'])(
    'by leaving out %s, which names no folder: everything is read',
    async (folder) => {
      const settings = `${libraryText}generated: [${folder}]\n`;
      const { text, found } = await bothOf({ 'library.ifu.yaml': settings, 'd/bad.ifu.yaml': badText });
      expect(text.out).toContain('Read 2 rule files.');
      expect(namesIn(found)).toEqual(['d/bad.ifu.yaml unknown-field']);
    },
  );

  it('by leaving out a folder: the summary says so', async () => {
    const settings = `${libraryText}generated: [d]\n`;
    const { text } = await bothOf({ 'library.ifu.yaml': settings, 'd/bad.ifu.yaml': badText });
    expect(text.out).toContain("1 file left out, in folders that the library's settings name");
  });

  it('by numbers below nothing', async () => {
    const { found } = await bothOf({ 'library.ifu.yaml': `${libraryText}question_age: -5 d\n` });
    expect(namesIn(found)).toEqual(['library.ifu.yaml unit-missing-or-implausible']);
    for (const count of ['-1', '1e9', '99999999999999999999', '0x10', 'NaN', ''])
      expect(await cli(['check', `--max-warnings=${count}`], { cwd: folderWith(faulty) }), count).toMatchObject({
        code: 2,
      });
  });

  it.each([1e9, -1, 0, 0.5, null, '1'])(
    'by a baseline that holds a finding %j times: it is refused in words',
    async (count) => {
      const { text, found } = await bothOf({ ...faulty, 'library.ifu.yaml': libraryText, ...baselineWith(count) });
      expect([text.code, text.err]).toEqual([2, expect.stringContaining('baseline')]);
      expect(namesIn(found)).toContain('bad.ifu.yaml unknown-field');
    },
  );

  it('by a baseline that holds everything: it is counted by name', async () => {
    const cwd = folderWith({ ...faulty, 'library.ifu.yaml': libraryText });
    expect((await cli(['baseline'], { cwd })).code).toBe(0);
    const { code, out } = await cli(['check', '--fail-on', 'advice'], { cwd });
    expect(code).toBe(0);
    expect(out).toContain(
      '8 findings were kept back because the baseline holds them: stage-undeclared 7, unknown-field 1.',
    );
  });
});

function baselineWith(count: unknown): Readonly<Record<string, string>> {
  const findings = [{ fingerprint: 'unknown-field question/q-bad frobnicate', count }];
  return { '.traywright-baseline.json': JSON.stringify({ format: 'traywright-baseline', version: 1, findings }) };
}
