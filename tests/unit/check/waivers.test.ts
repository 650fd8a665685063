import { describe, expect, it } from 'vitest';
import type { FileId, IsoDate } from '../../../server/src/base/brand.ts';
import { fileId } from '../../../server/src/base/brand.ts';
import { Engine } from '../../../server/src/check/engine.ts';
import { allRules } from '../../../server/src/rules/all.generated.ts';
import { testDay } from '../../support/examples.ts';

const sets = fileId('sets/eye.ifu.yaml');
const waivers = fileId('waivers/w1.ifu.yaml');

/** A set of unknown weight: one finding of the rule on steps, and one on a prohibition. */
const procedure = `
kind: procedure
id: bench
context: iuss
applies_to: [hook]
steps:
  - {stage: manual, do: brush}
  - {stage: steam, do: sterilize, why: it is the cycle of the page}
record: [item, patient-link, reason, cycle, operator, indicator]
`;
const device = 'kind: device\nid: hook\n';

function engineWith(waiver: string, today: IsoDate = testDay): Engine {
  const engine = new Engine({ rules: allRules, today });
  engine.set(fileId('procedures/bench.ifu.yaml'), procedure);
  engine.set(fileId('devices/hook.ifu.yaml'), device);
  engine.set(waivers, waiver);
  return engine;
}

const bench = fileId('procedures/bench.ifu.yaml');

function rulesIn(engine: Engine, file: FileId): readonly string[] {
  return engine.findings(file).map(({ rule }) => rule);
}

const complete = 'reason: the text is being rewritten\nowner: manager\nexpires: 2025-12-31\n';
const stepWaiver = `kind: waiver\nid: w1\nrule: step-without-why\nscope: [bench]\n${complete}`;

describe('a waiver in force', () => {
  it('keeps its finding back and counts it', () => {
    const engine = engineWith(stepWaiver);
    expect(rulesIn(engine, bench)).not.toContain('step-without-why');
    expect(engine.waived(bench).map(({ rule }) => rule)).toEqual(['step-without-why']);
    expect(engine.heldBack(bench)).toEqual([]);
    expect(rulesIn(engine, waivers)).toEqual([]);
  });

  it.each([
    ['every file', stepWaiver.replace('scope: [bench]\n', '')],
    ['every file, in words', stepWaiver.replace('[bench]', '[all]')],
    ['the value alone', `${stepWaiver}field: "steps[0]"\n`],
    [
      'a fingerprint',
      stepWaiver.replace(
        'rule: step-without-why\nscope: [bench]',
        'fingerprint: "step-without-why procedure/bench steps[0]"',
      ),
    ],
  ])('can name %s', (_, waiver) => {
    const engine = engineWith(waiver);
    expect(engine.waived(bench)).toHaveLength(1);
    expect(rulesIn(engine, waivers)).toEqual([]);
  });

  it('covers no other value and no other file', () => {
    for (const waiver of [`${stepWaiver}field: "steps[1]"\n`, stepWaiver.replace('[bench]', '[other]')]) {
      const engine = engineWith(waiver);
      expect(rulesIn(engine, bench)).toContain('step-without-why');
      expect(rulesIn(engine, waivers)).toEqual(['waiver-unused']);
    }
  });
});

describe('a waiver that does not hold', () => {
  it.each([
    ['has ended', stepWaiver.replace('2025-12-31', '2025-03-02'), ['waiver-invalid']],
    ['gives no reason', stepWaiver.replace('reason: the text is being rewritten\n', ''), ['waiver-invalid']],
    ['is for a prohibition', stepWaiver.replace('step-without-why', 'iuss-not-offered'), ['waiver-invalid']],
    ['is for nothing that exists', stepWaiver.replace('without-why', 'without-reason'), ['waiver-unknown-rule']],
    ['is for how a file is written', stepWaiver.replace('step-without-why', 'unknown-field'), ['waiver-refused']],
  ])('%s: the finding is shown', (_, waiver, expected) => {
    const engine = engineWith(waiver);
    expect(rulesIn(engine, bench)).toEqual(expect.arrayContaining(['step-without-why', 'iuss-not-offered']));
    expect(engine.waived(bench)).toEqual([]);
    expect(rulesIn(engine, waivers)).toEqual(expected);
  });

  it('holds through its last day', () => {
    const waiver = stepWaiver.replace('2025-12-31', '2025-03-03');
    expect(engineWith(waiver).waived(bench)).toHaveLength(1);
    expect(engineWith(waiver, '2025-03-04' as IsoDate).waived(bench)).toHaveLength(0);
  });

  it('is unused as far as it names what needs it no more', () => {
    const engine = engineWith(stepWaiver.replace('[bench]', '[bench, gone]'));
    const [finding] = engine.findings(waivers);
    expect(finding).toMatchObject({ rule: 'waiver-unused', severity: 'warning' });
    expect(finding?.message).toContain('"gone"');
  });
});

describe('a waiver beside edits', () => {
  it('is judged again when its finding goes and comes back', () => {
    const engine = engineWith(stepWaiver);
    expect(rulesIn(engine, waivers)).toEqual([]);
    const affected = engine.set(bench, procedure.replace('do: brush', 'do: brush, why: soil holds on'));
    expect(affected).toContain(waivers);
    expect(rulesIn(engine, waivers)).toEqual(['waiver-unused']);
    engine.set(bench, procedure);
    expect(rulesIn(engine, waivers)).toEqual([]);
  });

  it('lets its finding come back when it goes', () => {
    const engine = engineWith(stepWaiver);
    expect(rulesIn(engine, bench)).not.toContain('step-without-why');
    expect(engine.delete(waivers)).toContain(bench);
    expect(rulesIn(engine, bench)).toContain('step-without-why');
  });

  it('touches no file without such a finding', () => {
    const engine = engineWith(stepWaiver);
    engine.set(sets, 'kind: set\nid: eye\n');
    engine.findings(sets);
    expect(engine.set(waivers, `${stepWaiver}measure: none\n`)).not.toContain(sets);
  });
});
