import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { cli } from '../support/cli.ts';

const samples = new URL('../../samples', import.meta.url).pathname;
const day = ['--today', '2025-03-03'];
const scratch = mkdtempSync(join(tmpdir(), 'traywright-'));

afterAll(() => rmSync(scratch, { recursive: true }));

function at(...words: readonly string[]) {
  return cli([...words, ...day], { cwd: samples });
}

describe('route', () => {
  it('shows the smallest clash, the ways out and the cautions', async () => {
    const { code, out } = await at('route', 'ORTHO-E', '--library', 'lanternfield');
    expect(code).toBe(1);
    expect(out).toContain('Set ORTHO-E has no route');
    expect(out).toContain('(1) Suction tube: forbids it (no gravity steam) (QM-31, rev E, p. 7).');
    expect(out).toContain('(2) Bone clamp: offers only gravity steam (PM-9, rev A, p. 2).');
    expect(out).toContain('Take Bone clamp out of the set');
    expect(out).toContain('"Consistent with the encoded instruction" is the strongest statement made here');
  });

  it('shows who governs, and judges a device alone', async () => {
    const { code, out } = await at('route', 'MINOR-A', 'quillmark-ringed-forceps', '--library', 'lanternfield');
    expect(code).toBe(0);
    expect(out).toMatch(
      /Drying time +at least 20 min +quillmark-ringed-forceps \(QM-10, rev B, p. 6\) +30 min +10 min/,
    );
    expect(out).toContain('Derived: in P2-wrap-heavy on S1-pv132-4-30 (S1).');
    expect(out).toContain('Device quillmark-ringed-forceps has a route');
  });

  it('gives the same as data, with places', async () => {
    const { out } = await at('route', 'EYE-D', '--library', 'lanternfield', '--format', 'json');
    const json = JSON.parse(out);
    expect(json).toMatchObject({ format: 'traywright-route', version: 1 });
    expect(json.answers[0].route).toMatchObject({
      id: 'EYE-D',
      status: 'provisional',
      chosen: { packaging: 'P1-wrap-light', cycle: 'S2-pv134-4-30' },
    });
    expect(json.answers[0].route.at).toEqual({ file: 'sets/EYE-D.ifu.yaml', field: 'id', line: 3, column: 5 });
    expect(json.cautions.length).toBeGreaterThan(2);
    expect((await at('route', 'EYE-D', '--library', 'lanternfield', '--format', 'json')).out).toBe(out);
  });

  it('helps with a name that is not there', async () => {
    const { code, err } = await at('route', 'EYE-B', '--library', 'lanternfield');
    expect(code).toBe(2);
    expect(err).toContain('Did you mean "EYE-D"?');
    expect((await at('route')).code).toBe(2);
    expect((await at('route', 'EYE-D', '--library', 'nowhere')).code).toBe(4);
    expect((await at('route', 'EYE-D', '--library', '.')).err).toContain('several libraries');
  });
});

describe('routes and questions', () => {
  it('counts what has a route', async () => {
    const { code, out } = await at('routes', 'lanternfield');
    expect(code).toBe(1);
    expect(out).toContain('6 sets: 1 with a route, 1 provisional, 4 without.');
    const { out: json } = await at('routes', 'lanternfield', '--format', 'json');
    expect(JSON.parse(json).sets.map(({ id, status }: { id: string; status: string }) => `${id} ${status}`)).toEqual([
      'EYE-D provisional',
      'KNEE-C none',
      'LAP-CHOLE-B none',
      'MINOR-A route',
      'ORTHO-E none',
      'ROBOT-F none',
    ]);
  });

  it('writes letters as Markdown that rule files cannot break', async () => {
    const { code, out } = await at('questions', 'lanternfield', '--format', 'markdown');
    expect(code).toBe(0);
    expect(out).toContain('## Quillmark: frees EYE-D');
    expect(out).toContain('Pre-vacuum steam: 270 °F (132 °C)');
  });
});

describe('whatif', () => {
  it('adds a cycle, leaves something out, and touches no file', async () => {
    const before = readFileSync(join(samples, 'lanternfield/sterilizers/S1.ifu.yaml'), 'utf8');
    const file = join(scratch, 'cycle.yaml');
    writeFileSync(
      file,
      'kind: sterilizer\nid: S1\ncycles:\n  - {id: S1-pv132-4-40, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 40 min, load_max: 90 kg, qualified: 2025-03-01}\n',
    );
    const { code, out } = await at(
      'whatif',
      'lanternfield',
      '--add-cycle',
      file,
      '--without',
      'member/LAP-CHOLE-B/cassivane-camera-head',
    );
    expect(code).toBe(0);
    expect(out).toMatch(/Sets gained\n\n {2}- set\/LAP-CHOLE-B/);
    expect(out).toMatch(/set\/KNEE-C: settled: Aluminium instrument case: drying time at least 40 min/);
    expect(readFileSync(join(samples, 'lanternfield/sterilizers/S1.ifu.yaml'), 'utf8')).toBe(before);
    expect(readdirSync(scratch)).toEqual(['cycle.yaml']);
  });

  it('says what it cannot do', async () => {
    expect((await at('whatif', 'lanternfield')).code).toBe(2);
    const { code, err } = await at('whatif', 'lanternfield', '--with', 'nothing.yaml', '--without', 'washer/W9');
    expect(code).toBe(2);
    expect(err).toContain('"nothing.yaml" cannot be read as text.');
    expect(err).toContain('There is no "washer/W9" to leave out.');
    expect((await cli(['whatif', 'lanternfield', '--with'], { cwd: samples })).err).toContain(
      '--with needs a value: FILE.',
    );
  });
});
