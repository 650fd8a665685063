import { describe, expect, it } from 'vitest';
import { reviewOf } from '../../../server/src/revision/review.ts';
import { substitutionOf } from '../../../server/src/revision/substitution.ts';
import { Trials } from '../../../server/src/revision/trials.ts';
import { fileEntity, sampleEntities, sampleLibrary } from '../../support/revisions.ts';
import { demoDay } from '../../support/routes.ts';
import { readSample } from '../../support/samples.ts';

const name = 'lanternfield-corrected';

function textOf(path: string): string {
  return readSample(name).get(`${path}.ifu.yaml` as never) ?? '';
}

/** The corrected department with these files changed. */
function withFiles(...texts: readonly string[]) {
  return reviewOf({
    before: sampleEntities(name),
    after: texts.map((text, at) => fileEntity(text, `changed-${at}`)),
    extent: 'part',
    library: sampleLibrary(name),
    today: demoDay,
  });
}

describe('the department changes', () => {
  it('a shorter drying breaks the sets on that cycle and no other', () => {
    const text = textOf('sterilizers/S1');
    const review = withFiles(text.replace(/(id: S1-pv132-4-30,.*?dry: )30 min/, '$120 min'));
    expect(review.changes).toMatchObject([
      { class: 'different', path: 'cycles[S1-pv132-4-30].dry', here: { effect: 'route-breaks' } },
    ]);
    const broken = review.routes.filter(({ effect }) => effect === 'route-breaks').map(({ of }) => of);
    expect(broken).toContain('set/LAP-CHOLE-B');
    expect(broken).not.toContain('set/KNEE-C');
    expect(review.changes[0]?.impact?.cards).toEqual(expect.arrayContaining(['LAP-CHOLE-B']));
  });

  it('a reformulated detergent: who loses the wash, by pH', () => {
    const review = withFiles(textOf('chemistry/C2').replace(/ph_in_use: .*/, 'ph_in_use: {between: [11.0, 11.6]}'));
    const [change] = review.changes;
    expect(change).toMatchObject({ class: 'different', path: 'ph_in_use', here: { effect: 'route-breaks' } });
    expect(change?.here?.words).toContain('pH');
  });

  it('a machine that is bought: no route breaks, and sets that hung on one machine are told', () => {
    const text = textOf('sterilizers/S3')
      .replace(/\bS3\b/g, 'S4')
      .replace(/\bS3-/g, 'S4-');
    const review = withFiles(text);
    expect(review.changes).toMatchObject([{ class: 'option-added', entity: 'sterilizer/S4' }]);
    expect(review.routes.some(({ effect }) => effect === 'route-breaks')).toBe(false);
  });

  it('a machine that goes leaves sets on one machine, or on none', () => {
    const review = reviewOf({
      before: sampleEntities(name),
      after: sampleEntities(name).filter((entity) => entity.id?.text !== 'S1'),
      extent: 'whole',
      library: sampleLibrary(name),
      today: demoDay,
    });
    expect(review.changes).toMatchObject([
      { class: 'option-removed', entity: 'sterilizer/S1', here: { effect: 'route-breaks' } },
    ]);
    expect(review.machines.length).toBeGreaterThan(0);
    for (const { after } of review.machines) expect(after).not.toContain('S1');
  });

  it('a procedure’s step more is told, and no route rests on it', () => {
    const text = textOf('procedures/PR8-one-cycle');
    const review = withFiles(
      text.replace('steps:\n', 'steps:\n  - {stage: loading, do: count, why: one set a shelf}\n'),
    );
    expect(review.changes).toMatchObject([{ class: 'step-added', here: { effect: 'nothing-visible' } }]);
  });
});

describe('one thing in place of another', () => {
  const trials = new Trials(sampleLibrary(name), demoDay);

  it('a detergent: a matrix by device family and washer cycle', () => {
    const answer = substitutionOf({ kind: 'chemistry', from: 'C2', to: 'C4' }, trials);
    const row = answer?.families.find(
      ({ of, where }) => of === 'device/duskwell-lap-scissors-takeapart' && where === 'W1-std',
    );
    expect(row).toMatchObject({ before: 'ok', after: 'no', words: expect.stringContaining('pH') });
    expect(row?.words).toContain('discontinued 2025-02-28');
    expect(answer?.cards).toContain('LAP-CHOLE-B');
  });

  it('a fleet of containers: every set in them, and the cards to print again', () => {
    const answer = substitutionOf({ kind: 'packaging', from: 'P3-rigid-container', to: 'P1-wrap-light' }, trials);
    expect(answer?.sets).toMatchObject([
      { of: 'set/LAP-CHOLE-B', before: 'ok', after: 'no', words: expect.stringContaining('5 kg') },
    ]);
    expect(answer?.cards).toEqual(['LAP-CHOLE-B']);
  });

  it('leaves the library as it was', () => {
    const before = sampleLibrary(name);
    const used = new Trials(before, demoDay);
    const first = substitutionOf({ kind: 'packaging', from: 'P3-rigid-container', to: 'P2-wrap-heavy' }, used);
    expect(substitutionOf({ kind: 'packaging', from: 'P3-rigid-container', to: 'P2-wrap-heavy' }, used)).toEqual(first);
    expect(used.view().get('packaging', 'P3-rigid-container')).toBeDefined();
  });

  it('both must be there', () => {
    expect(substitutionOf({ kind: 'packaging', from: 'P3-rigid-container', to: 'P99' }, trials)).toBeUndefined();
  });
});
