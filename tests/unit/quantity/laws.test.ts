import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatQuantity } from '../../../server/src/quantity/format.ts';
import {
  compareIntervals,
  contains,
  distanceTo,
  everything,
  type Interval,
  intersect,
  isEmpty,
  isSubset,
} from '../../../server/src/quantity/interval.ts';
import { parseQuantity } from '../../../server/src/quantity/parse.ts';
import type { Dimension } from '../../../server/src/quantity/quantity.ts';
import { withinRounding } from '../../../server/src/quantity/rounding.ts';
import { unitList } from '../../../server/src/quantity/unit-list.ts';
import { convert, unitsOf } from '../../../server/src/quantity/units.ts';

const anyUnit = fc.constantFrom(...unitList);
const decimals = fc.constantFrom(0, 1, 2, 4);
const wholeNumber = fc.integer({ min: -99_999, max: 99_999 });

/** A quantity as people write it. Three decimals are left out: `1.500` is refused on purpose. */
const written = fc.tuple(anyUnit, wholeNumber, decimals).map(([unit, whole, digits]) => {
  const amount = (whole / 10 ** digits).toFixed(digits).replace(/^-(0\.?0*)$/, '$1');
  return { unit, text: unit.name === '' ? amount : `${amount} ${unit.name}` };
});

describe('laws of quantities', () => {
  it('prints what it read, and reads what it printed', () => {
    fc.assert(
      fc.property(written, ({ unit, text }) => {
        const read = parseQuantity(text, unit.dimension);
        if ('fault' in read) throw new Error(`${text}: ${JSON.stringify(read)}`);
        expect(Number.isFinite(read.value)).toBe(true);
        expect(formatQuantity(read).replace(/^\+/, '')).toBe(text);
        expect(parseQuantity(formatQuantity(read), unit.dimension)).toEqual(read);
        expect(withinRounding(read, read)).toBe(true);
      }),
    );
  });
  it('never throws and never lets a wrong number through', () => {
    const piece = fc.constantFrom(
      '-',
      '−',
      '.',
      ',',
      ' ',
      '1',
      '0',
      '9',
      '５',
      '½',
      'e',
      'x',
      ':',
      '/',
      '…',
      'min',
      '°C',
      '(',
      'to',
      '\u00a0',
      '_',
    );
    const soup = fc.oneof(
      fc.string({ maxLength: 80 }),
      fc.array(piece, { maxLength: 12 }).map((parts) => parts.join('')),
    );
    const dimension = fc.constantFrom<Dimension>('time', 'temperature', 'number', 'count', 'pressure', 'length');
    fc.assert(
      fc.property(soup, dimension, (text, asked) => {
        const read = parseQuantity(text, asked);
        if (!('fault' in read)) {
          expect(Number.isFinite(read.value)).toBe(true);
          expect(text.trim()).toMatch(/^[+-]?[0-9]+(\.[0-9]+)?/);
        }
      }),
      { numRuns: 2000 },
    );
  });
  it('converts there and back', () => {
    fc.assert(
      fc.property(anyUnit, fc.nat(), fc.double({ min: -1e5, max: 1e5, noNaN: true }), (from, pick, amount) => {
        const sharing = unitsOf(from.dimension);
        const to = sharing[pick % sharing.length] ?? from;
        const there = convert(amount, from, to) ?? Number.NaN;
        const back = convert(there, to, from) ?? Number.NaN;
        // Twelve digits are kept at each step; a zero point (273.15, 32) can cost some of them near zero.
        const size =
          Math.abs(amount) + Math.abs(from.zero) + (Math.abs(to.zero) * to.times * from.per) / to.per / from.times;
        expect(Math.abs(back - amount)).toBeLessThanOrEqual(size * 1e-10 + 1e-300);
      }),
    );
  });
  it('does not convert between kinds', () => {
    fc.assert(
      fc.property(anyUnit, anyUnit, (from, to) => {
        expect(convert(1, from, to) === undefined).toBe(from.dimension !== to.dimension);
      }),
    );
  });
});

const end = fc.oneof(
  fc.integer({ min: -20, max: 20 }),
  fc.constantFrom(Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY),
);
const interval: fc.Arbitrary<Interval> = fc.record({ low: end, high: end });
const inverse = {
  equal: 'equal',
  subset: 'superset',
  superset: 'subset',
  overlap: 'overlap',
  disjoint: 'disjoint',
} as const;

describe('laws of intervals', () => {
  it('intersects as sets do', () => {
    fc.assert(
      fc.property(interval, interval, fc.integer({ min: -25, max: 25 }), (a, b, x) => {
        expect(contains(intersect(a, b), x)).toBe(contains(a, x) && contains(b, x));
        expect(intersect(a, b)).toEqual(intersect(b, a));
        expect(intersect(a, everything)).toEqual(a);
        expect(isSubset(intersect(a, b), a)).toBe(true);
      }),
    );
  });
  it('compares both ways round', () => {
    fc.assert(
      fc.property(interval, interval, (a, b) => {
        const relation = compareIntervals(a, b);
        expect(compareIntervals(b, a)).toBe(inverse[relation]);
        if (relation === 'disjoint') expect(isEmpty(intersect(a, b))).toBe(true);
        if (relation === 'overlap') expect(isEmpty(intersect(a, b))).toBe(false);
        expect(compareIntervals(a, a)).toBe('equal');
      }),
    );
  });
  it('measures how far a number lies outside', () => {
    fc.assert(
      fc.property(interval, fc.integer({ min: -25, max: 25 }), (a, x) => {
        if (!isEmpty(a)) expect(distanceTo(a, x) === 0).toBe(contains(a, x));
      }),
    );
    expect(distanceTo({ low: 20, high: 30 }, 15)).toBe(-5);
    expect(distanceTo({ low: 20, high: 30 }, 33)).toBe(3);
  });
});
