import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { AnyEntity } from '../../../server/src/model/entity.ts';
import {
  type Change,
  type ChangeClass,
  changeClasses,
  type EntityComparison,
} from '../../../server/src/revision/change.ts';
import { compareEntities } from '../../../server/src/revision/compare.ts';
import { comparedTexts } from '../../support/revisions.ts';
import { readSample } from '../../support/samples.ts';
import { edited, inSeconds, type LeafEdit, leafEdits, readEntity, reordered } from './edits.ts';

/** Files of every kind that is compared; what they hold between them is nearly every form of value. */
const files = [
  'devices/duskwell-lap-scissors-takeapart',
  'devices/skerrow-wristed-grasper',
  'packaging/P3-rigid-container',
  'washers/W1',
  'sterilizers/S2',
  'chemistry/C2',
  'procedures/PR24-takeapart-scissors',
  'water/RO-1',
];

const samples = [...readSample('lanternfield-corrected')]
  .filter(([file]) => files.includes(file.replace('.ifu.yaml', '')))
  .map(([file, text]) => ({ file, text, entity: readEntity(text), edits: leafEdits(text) }));

/** What the same difference may be called from the other side. */
const mirrors: Readonly<Record<ChangeClass, readonly ChangeClass[]>> = {
  'new-prohibition': ['prohibition-removed'],
  'prohibition-removed': ['new-prohibition'],
  stricter: ['looser', 'clarification', 'correction'],
  looser: ['stricter', 'correction'],
  different: ['different', 'clarification', 'correction'],
  'became-silent': ['became-stated'],
  'became-stated': ['became-silent'],
  'option-added': ['option-removed'],
  'option-removed': ['option-added'],
  'step-added': ['step-removed'],
  'step-removed': ['step-added'],
  'step-reordered': ['step-reordered'],
  scope: ['scope'],
  clarification: ['stricter', 'different'],
  correction: ['stricter', 'looser', 'different', 'correction'],
  're-citation': ['re-citation'],
  editorial: ['editorial'],
};

function compared(old: AnyEntity, now: AnyEntity) {
  return compareEntities(old, now, undefined);
}

/** `before|after` paths, so that the two directions can be held against each other. */
function ends({ before, after }: Change): readonly [string, string] {
  return [`${before?.path ?? ''} ${before?.words ?? ''}`, `${after?.path ?? ''} ${after?.words ?? ''}`];
}

function expectMirrored(old: AnyEntity, now: AnyEntity): EntityComparison {
  const [there, back] = [compared(old, now), compared(now, old)];
  expect(back.changes).toHaveLength(there.changes.length);
  expect([...back.recordKeeping].sort()).toEqual([...there.recordKeeping].sort());
  const left = [...back.changes];
  for (const change of there.changes) {
    const [before, after] = ends(change);
    const at = left.findIndex(
      (other) => ends(other)[0] === after && ends(other)[1] === before && mirrors[change.class].includes(other.class),
    );
    expect(
      at,
      `${change.class} ${change.path} has no mirror among ${left.map((one) => `${one.class} ${one.path}`).join(', ')}`,
    ).toBeGreaterThanOrEqual(0);
    left.splice(at, 1);
  }
  return there;
}

describe('laws of comparison', () => {
  it('nothing differs from itself, in any layout, order or unit', () => {
    for (const { file, text, entity } of samples) {
      fc.assert(
        fc.property(fc.array(fc.nat(50), { minLength: 5, maxLength: 20 }), (order) => {
          const { changes, lost, recordKeeping } = compared(entity, readEntity(inSeconds(reordered(text, order))));
          expect([file, changes, lost, recordKeeping]).toEqual([file, [], [], []]);
        }),
        { numRuns: 5 },
      );
    }
  });

  it('every edit of one field is told once, and backwards as its mirror', () => {
    let seen = 0;
    for (const { text, entity, edits } of samples) {
      for (const edit of edits) {
        const { changes, recordKeeping } = expectMirrored(entity, readEntity(edited(text, [edit])));
        const told = [...changes.map((change) => `${change.class} ${change.path}`), ...recordKeeping];
        expect(told, `${edit.sort} ${edit.path}`).toHaveLength(1);
        expectClass(edit, changes[0]);
        seen++;
      }
    }
    expect(seen).toBeGreaterThan(300);
  }, 60_000);

  it('several edits at once: each direction mirrors the other', () => {
    const file = fc.constantFrom(...samples.filter(({ edits }) => edits.length > 3));
    const chosen = file.chain(({ text, entity, edits }) =>
      fc.record({
        text: fc.constant(text),
        entity: fc.constant(entity),
        edits: fc.uniqueArray(fc.constantFrom(...edits), {
          minLength: 2,
          maxLength: 6,
          selector: ({ start }) => start,
        }),
      }),
    );
    fc.assert(
      fc.property(chosen, ({ text, entity, edits }) => {
        expectMirrored(entity, readEntity(edited(text, edits)));
      }),
      { numRuns: 60 },
    );
  });

  it('classes that the file of decisions knows are the classes there are', () => {
    expect(Object.keys(mirrors).sort()).toEqual([...changeClasses].sort());
  });
});

function expectClass({ sort, path }: LeafEdit, change: Change | undefined): void {
  const where = `${sort} ${path}`;
  if (sort === 'quote-words') expect(change?.class, where).toBe('editorial');
  if (sort === 'quote-number') expect(change?.class, where).not.toBe('editorial');
  if (sort === 'amount' && !path.endsWith('.page')) expect(change?.class, where).not.toBe('editorial');
}

/** A demand with its bound word, and the values that satisfy it, worked out apart from the code under test. */
interface Demand {
  readonly text: string;
  satisfies(value: number): boolean;
}

const amount = fc.integer({ min: 1, max: 50 });

const demand: fc.Arbitrary<Demand> = fc.oneof(
  amount.map((least) => ({ text: `{at_least: ${least} min}`, satisfies: (value: number) => value >= least })),
  amount.map((most) => ({ text: `{at_most: ${most} min}`, satisfies: (value: number) => value <= most })),
  amount.map((only) => ({ text: `{exactly: ${only} min}`, satisfies: (value: number) => value === only })),
  fc.tuple(amount, amount).map(([a, b]) => {
    const [low, high] = [Math.min(a, b), Math.max(a, b)];
    return {
      text: `{between: [${low} min, ${high} min]}`,
      satisfies: (value: number) => value >= low && value <= high,
    };
  }),
  fc.tuple(amount, amount).map(([a, b]) => {
    const [low, high] = [Math.min(a, b), Math.max(a, b)];
    return {
      text: `{at_least: ${low * 60} s, at_most: ${high} min}`,
      satisfies: (value: number) => value >= low && value <= high,
    };
  }),
);

/** Half minutes: between any two different bounds lies one. */
const settings = Array.from({ length: 241 }, (_, at) => at / 2);

function classBySets(old: Demand, now: Demand): ChangeClass | undefined {
  const [before, after] = [settings.filter((one) => old.satisfies(one)), settings.filter((one) => now.satisfies(one))];
  const [within, around] = [after.every((one) => old.satisfies(one)), before.every((one) => now.satisfies(one))];
  if (within && around) return undefined;
  if (within) return 'stricter';
  return around ? 'looser' : 'different';
}

const places: readonly (readonly [string, (text: string) => string])[] = [
  [
    'sterilization.any_of[pv].exposure',
    (text) => `sterilization: {any_of: [{id: pv, modality: steam-prevac, exposure: ${text}}]}`,
  ],
  [
    'sterilization.any_of[pv].dry',
    (text) => `sterilization: {any_of: [{id: pv, modality: steam-prevac, dry: ${text}}]}`,
  ],
  ['point_of_use.max_delay', (text) => `point_of_use: {max_delay: ${text}}`],
  ['cleaning.soak', (text) => `cleaning: {stage: manual, soak: ${text}}`],
  ['cleaning.time', (text) => `cleaning: {stage: ultrasonic, time: ${text}}`],
];

describe('a demand against the sets of settings that satisfy it', () => {
  it.each(places)('%s', (path, file) => {
    fc.assert(
      fc.property(demand, demand, (old, now) => {
        const text = (one: Demand) => `kind: device\nid: pale-forceps\n${file(one.text)}\n`;
        const { changes } = comparedTexts(text(old), text(now));
        const wanted = classBySets(old, now);
        expect(changes.map((change) => [change.class, change.path])).toEqual(
          wanted === undefined ? [] : [[wanted, path]],
        );
      }),
      { numRuns: 150 },
    );
  });
});
