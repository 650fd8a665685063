import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { Engine } from '../../../server/src/check/engine.ts';
import { clashesOfSet } from '../../../server/src/route/explanation.ts';
import { routeOfSet } from '../../../server/src/route/route.ts';
import { defineRule } from '../../../server/src/rules/rule.ts';
import { demoDay } from '../../support/routes.ts';
import { readSample } from '../../support/samples.ts';

/** Stands for any rule on transcription: it finds a fault where a device's own note says so. */
const suspicion = defineRule({
  id: 'suspicion',
  stage: 'source',
  severity: 'error',
  settledBy: 'educator',
  why: 'A test.',
  source: 'logic',
  kinds: ['device'],
  check(device, { report }) {
    for (const note of device.notes?.items ?? [])
      if (note.text === 'mistyped') report({ at: note.at, message: 'It is mistyped.' });
  },
  examples: { bad: [], good: [] },
});

function engineOf(): Engine {
  const engine = new Engine({ rules: [suspicion], today: demoDay });
  for (const [file, text] of readSample('lanternfield')) engine.set(file, text);
  return engine;
}

const forceps = fileId('devices/quillmark-ringed-forceps.ifu.yaml');

function statusIn(engine: Engine, id: string): string | undefined {
  return engine.view().ask(routeOfSet, id)?.status;
}

describe('members that cannot be trusted', () => {
  it('make a route provisional, and say why, until the fault is gone', () => {
    const engine = engineOf();
    const text = engine.library.record(forceps)?.text ?? '';
    expect(statusIn(engine, 'MINOR-A')).toBe('route');
    engine.set(forceps, `${text}notes: [mistyped]\n`);
    const route = engine.view().ask(routeOfSet, 'MINOR-A');
    expect(route?.status).toBe('provisional');
    expect(route?.members[0]?.unknown.map(({ because, words }) => `${because}: ${words}`)).toEqual([
      'untrusted: It is mistyped.',
    ]);
    engine.set(forceps, text);
    expect(statusIn(engine, 'MINOR-A')).toBe('route');
  });

  it('do not hide a clash', () => {
    const engine = engineOf();
    const clamp = fileId('devices/pellamont-bone-clamp.ifu.yaml');
    engine.set(clamp, `${engine.library.record(clamp)?.text ?? ''}notes: [mistyped]\n`);
    expect(statusIn(engine, 'ORTHO-E')).toBe('none');
    expect(engine.view().ask(clashesOfSet, 'ORTHO-E')).toHaveLength(1);
  });

  it('are no longer suspected where the library’s settings hold the finding back with a reason', () => {
    const engine = engineOf();
    engine.set(forceps, `${engine.library.record(forceps)?.text ?? ''}notes: [mistyped]\n`);
    const settings = fileId('library.ifu.yaml');
    const text = engine.library.record(settings)?.text ?? '';
    engine.set(settings, `${text}rules:\n  suspicion: {severity: ignored, reason: a test}\n`);
    expect(statusIn(engine, 'MINOR-A')).toBe('route');
  });
});

describe('members that cannot be judged', () => {
  it('leave the route provisional: no file, no instruction on file, a line that names nothing', () => {
    const engine = engineOf();
    const set = fileId('sets/MINOR-A.ifu.yaml');
    const text = engine.library.record(set)?.text ?? '';
    const withLine = (line: string) => text.replace('members:\n', `members:\n  - ${line}\n`);
    engine.set(set, withLine('{device: unheard-of, qty: 1}'));
    expect(engine.view().ask(routeOfSet, 'MINOR-A')?.members[0]?.unknown[0]?.because).toBe('no-file');
    expect(statusIn(engine, 'MINOR-A')).toBe('provisional');
    engine.set(set, withLine('{text: odd retractor, qty: 1}'));
    expect(engine.view().ask(routeOfSet, 'MINOR-A')?.members[0]?.unknown[0]?.because).toBe('unmapped');
    engine.set(set, text);
    engine.delete(fileId('documents/QM-10-B.ifu.yaml'));
    expect(engine.view().ask(routeOfSet, 'MINOR-A')?.members[0]?.unknown[0]?.because).toBe('no-document');
  });
});

describe('a route kept up to date', () => {
  it('follows changes of machines, packaging and chemistry', () => {
    const engine = engineOf();
    const edit = (path: string, from: string, to: string) => {
      const file = fileId(path);
      engine.set(file, (engine.library.record(file)?.text ?? '').replace(from, to));
    };
    expect(engine.view().ask(routeOfSet, 'MINOR-A')?.chosen?.cycle).toBe('S1-pv132-4-30');
    edit('sterilizers/S1.ifu.yaml', ', default: true', '');
    expect(engine.view().ask(routeOfSet, 'MINOR-A')?.chosen?.cycle).toBe('S2-gr121-30-30');
    edit('packaging/P2-wrap-heavy.ifu.yaml', 'mass_max: 11.3 kg', 'mass_max: 5.5 kg');
    expect(engine.view().ask(routeOfSet, 'MINOR-A')?.chosen?.packaging).toBe('P3-rigid-container');
    edit('packaging/P3-rigid-container.ifu.yaml', 'mass_max: 11.3 kg', 'mass_max: 5.5 kg');
    expect(statusIn(engine, 'MINOR-A')).toBe('none');
    edit('chemistry/C1.ifu.yaml', 'dose: 4 mL/L', 'discontinued_on: 2025-01-01\ndose: 4 mL/L');
    expect(engine.view().ask(routeOfSet, 'ORTHO-E')?.members[0]?.cleaning?.outcome).toBe('fails');
  });
});
