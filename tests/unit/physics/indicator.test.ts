import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { indicatorGeometry } from '../../../server/src/physics/indicator-places.ts';
import {
  FACES,
  type Face,
  type SterilePackage,
  type Vent,
  ventInCentre,
} from '../../../server/src/physics/package-entries.ts';
import { statedOrComputed } from '../../../server/src/physics/stated-or-computed.ts';
import { answerOf, reasonOf } from './handbook.ts';

fc.configureGlobal({
  seed: Number(process.env.PHYSICS_SEED ?? 20250301),
  numRuns: Number(process.env.PHYSICS_RUNS ?? 100),
});

const SIZE = { lengthMm: 580, widthMm: 280, heightMm: 150 };

function wrapped(levels: number, size = SIZE): SterilePackage {
  return { size, levels, porousFaces: FACES, vents: [] };
}

function container(levels: number, vents: readonly Vent[], size = SIZE): SterilePackage {
  return { size, levels, porousFaces: [], vents };
}

const LID_AND_BOTTOM = [ventInCentre(SIZE, 'top', 60), ventInCentre(SIZE, 'bottom', 60)];

describe('computed places', () => {
  test('porous wrap on all faces: the centre of each level', () => {
    const found = answerOf(indicatorGeometry(wrapped(3)));
    expect(found.name).toBe('geometric-centre-per-level');
    expect(found.levels.map((level) => level.places)).toEqual([
      [{ xMm: 290, yMm: 140, zMm: 25 }],
      [{ xMm: 290, yMm: 140, zMm: 75 }],
      [{ xMm: 290, yMm: 140, zMm: 125 }],
    ]);
    expect(found.levels.map((level) => level.distanceMm)).toEqual([25, 75, 25]);
  });
  test('container with vents in the middle of lid and bottom: two opposed corners of each level', () => {
    const found = answerOf(indicatorGeometry(container(2, LID_AND_BOTTOM)));
    expect(found.name).toBe('two-opposed-corners-per-level');
    for (const level of found.levels) {
      expect(level.places.map(({ xMm, yMm }) => [xMm, yMm])).toEqual([
        [0, 0],
        [580, 280],
      ]);
      expect(level.equallyFar.map(({ xMm, yMm }) => [xMm, yMm])).toEqual([
        [0, 280],
        [580, 0],
      ]);
    }
    // Level 1 at 37.5 mm: across to the bottom, and beside it as far as the corner from the edge of the vent.
    expect(found.levels[0]?.distanceMm).toBeCloseTo(Math.hypot(37.5, Math.hypot(290, 140) - 60), 2);
  });
  test('a filter over the whole lid alone, or a pouch with one porous side: anywhere inside', () => {
    for (const face of ['top', 'bottom'] as const) {
      const pouch = { size: { lengthMm: 300, widthMm: 150, heightMm: 20 }, levels: 1, porousFaces: [face], vents: [] };
      const found = answerOf(indicatorGeometry(pouch));
      expect(found.name).toBe('inside-visible');
      expect(found.levels[0]?.extent).toBe('whole-level');
    }
  });
  test('a vent in one end: both corners of the other end', () => {
    const found = answerOf(indicatorGeometry(container(1, [ventInCentre(SIZE, 'left', 30)])));
    expect(found.name).toBe('two-corners-of-one-side-per-level');
    expect(found.levels[0]?.places.map(({ xMm }) => xMm)).toEqual([580, 580]);
  });
  test('a vent in one corner of the lid: the opposite corner', () => {
    const vent = { face: 'top', centre: { xMm: 40, yMm: 40, zMm: 150 }, radiusMm: 30 } as const;
    const found = answerOf(indicatorGeometry(container(1, [vent])));
    expect(found.name).toBe('one-corner-per-level');
    expect(found.levels[0]?.places).toEqual([{ xMm: 580, yMm: 280, zMm: 75 }]);
  });
  test('vents in all four corners of the lid: the middle', () => {
    const vents = [0, 580].flatMap((xMm) =>
      [0, 280].map((yMm) => ({ face: 'top' as const, centre: { xMm, yMm, zMm: 150 }, radiusMm: 0 })),
    );
    expect(answerOf(indicatorGeometry(container(1, vents))).name).toBe('geometric-centre-per-level');
  });
  test('ends alone porous: the middle stands for the line across, and says so', () => {
    const pack = { ...wrapped(1), porousFaces: ['left', 'right'] as const };
    const level = answerOf(indicatorGeometry(pack)).levels[0];
    expect(level?.places).toEqual([{ xMm: 290, yMm: 140, zMm: 75 }]);
    expect(level?.extent).toBe('part-of-level');
  });
});

describe('properties', () => {
  const side = fc.integer({ min: 60, max: 700 });
  const size = fc.record({ lengthMm: side, widthMm: side, heightMm: fc.integer({ min: 10, max: 300 }) });
  const options = { numRuns: Number(process.env.PHYSICS_RUNS ?? 25) };

  test('any wrapped box gives the centre, any lid-and-bottom container two opposed corners', () =>
    fc.assert(
      fc.property(size, fc.integer({ min: 1, max: 3 }), (box, levels) => {
        expect(answerOf(indicatorGeometry(wrapped(levels, box))).name).toBe('geometric-centre-per-level');
        const vents = (['top', 'bottom'] as const).map((face) => ventInCentre(box, face, 20));
        expect(answerOf(indicatorGeometry(container(levels, vents, box))).name).toBe('two-opposed-corners-per-level');
      }),
      options,
    ));
  test('no place of a random sample is farther than the answer, and the order of the vents does not matter', () =>
    fc.assert(
      fc.property(
        size,
        fc.array(fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })), {
          minLength: 1,
          maxLength: 5,
        }),
        fc.array(fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })), {
          minLength: 50,
          maxLength: 50,
        }),
        (box, holes, samples) => {
          const vents = holes.map(([x, y]) => ({
            face: 'top' as const,
            centre: { xMm: x * box.lengthMm, yMm: y * box.widthMm, zMm: box.heightMm },
            radiusMm: 10,
          }));
          const found = answerOf(indicatorGeometry(container(1, vents, box)));
          expect(answerOf(indicatorGeometry(container(1, [...vents].reverse(), box)))).toEqual(found);
          const farthest = found.levels[0]?.distanceMm ?? 0;
          for (const [x, y] of samples) {
            const away = vents.map(({ centre }) => {
              const beside = Math.hypot(x * box.lengthMm - centre.xMm, y * box.widthMm - centre.yMm);
              return Math.hypot(box.heightMm / 2, Math.max(0, beside - 10));
            });
            expect(Math.min(...away)).toBeLessThanOrEqual(farthest + 0.3);
          }
        },
      ),
      options,
    ));
});

describe('refusals', () => {
  test.each<[SterilePackage, string]>([
    [{ ...wrapped(1), porousFaces: [] }, 'no-entry'],
    [wrapped(0), 'below-range'],
    [wrapped(1.5), 'not-a-number'],
    [wrapped(1, { ...SIZE, lengthMm: Number.NaN }), 'not-a-number'],
    [container(1, [{ face: 'top', centre: { xMm: 1, yMm: 1, zMm: 1 }, radiusMm: 1 }]), 'vent-not-on-face'],
    [container(1, [{ face: 'top', centre: { xMm: -1, yMm: 1, zMm: 150 }, radiusMm: 1 }]), 'vent-not-on-face'],
    [
      container(
        1,
        Array.from({ length: 101 }, () => ventInCentre(SIZE, 'top', 1)),
      ),
      'too-many-vents',
    ],
  ])('%#', (pack, reason) => expect(reasonOf(indicatorGeometry(pack))).toBe(reason));
});

describe('stated or computed', () => {
  const geometry = indicatorGeometry(wrapped(1));
  const corners = ['two-opposed-corners-per-level'];
  const centre = ['geometric-centre-per-level'];
  test('a statement wins, agreeing or not', () => {
    const agreeing = statedOrComputed([{ owner: 'packaging', places: centre }], geometry);
    expect(agreeing).toMatchObject({ won: 'stated', owners: ['packaging'], agreesWithGeometry: true });
    const other = statedOrComputed([{ owner: 'device', places: corners }], geometry);
    expect(other).toMatchObject({ won: 'stated', places: corners, agreesWithGeometry: false });
    expect(other.why).toContain("the device's document");
  });
  test('two statements that differ are not ranked', () => {
    const stated = [
      { owner: 'packaging', places: centre },
      { owner: 'device', places: corners },
    ] as const;
    expect(statedOrComputed(stated, geometry).won).toBe('statements-differ');
  });
  test('in silence geometry counts, and without geometry nothing does', () => {
    expect(statedOrComputed([{ owner: 'device', places: [] }], geometry)).toMatchObject({
      won: 'computed',
      places: centre,
    });
    const unknown = indicatorGeometry({ ...wrapped(1), porousFaces: [] as readonly Face[] });
    expect(statedOrComputed([], unknown).won).toBe('nothing');
  });
});
