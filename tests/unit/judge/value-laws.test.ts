import fc from 'fast-check';
import { expect, test } from 'vitest';
import { numberRows } from '../../../server/src/judge/directions.ts';
import { type Given, givenOf } from '../../../server/src/judge/given.ts';
import { type Outcome, outcomes, type Parameter, worse, worstOf } from '../../../server/src/judge/outcome.ts';
import { judgeValue } from '../../../server/src/judge/value.ts';
import type { Requirement } from '../../../server/src/model/node.ts';
import { quantity, requirement } from '../../support/requirements.ts';

const parameters: readonly Parameter[] = numberRows.map((row) => row.parameter);
const seed = { seed: 20250303, numRuns: 2000 };

/** A note is a remark on something that is met: only met, asked and failed are compared. */
function rank(outcome: Outcome): number {
  return Math.max(1, outcomes.indexOf(outcome));
}

function judge(parameter: Parameter, demanded: Requirement, given: Given | undefined): Outcome {
  return judgeValue({ parameter, requirement: demanded, given, policies: undefined }).outcome;
}

const minutes = fc.integer({ min: 1, max: 120 });
const ends = fc.tuple(minutes, minutes).map(([a, b]) => ({ low: Math.min(a, b), high: Math.max(a, b) }));

function givenMinutes({ low, high }: { low: number; high: number }): Given {
  return { low: low * 60, high: high * 60, words: `${low}-${high} min` };
}

function bounds(kind: number, { low, high }: { low: number; high: number }) {
  if (kind === 0) return { at_least: `${low} min` };
  return kind === 1 ? { at_most: `${high} min` } : { between: [`${low} min`, `${high} min`] as const };
}

test('a tighter requirement never has a better outcome', () => {
  const cases = fc.record({
    parameter: fc.constantFrom(...parameters),
    kind: fc.nat(2),
    wide: ends,
    by: fc.tuple(fc.nat(20), fc.nat(20)),
    ours: ends,
  });
  fc.assert(
    fc.property(cases, ({ parameter, kind, wide, by, ours }) => {
      const tight = { low: wide.low + by[0], high: wide.high - by[1] };
      fc.pre(tight.low <= tight.high && tight.high > 0);
      const before = judge(parameter, requirement('time', bounds(kind, wide)), givenMinutes(ours));
      const after = judge(parameter, requirement('time', bounds(kind, tight)), givenMinutes(ours));
      expect(rank(after)).toBeGreaterThanOrEqual(rank(before));
    }),
    seed,
  );
});

test('a second bound word never improves the outcome', () => {
  const cases = fc.record({ parameter: fc.constantFrom(...parameters), low: minutes, high: minutes, ours: ends });
  fc.assert(
    fc.property(cases, ({ parameter, low, high, ours }) => {
      const one = judge(parameter, requirement('time', { at_least: `${low} min` }), givenMinutes(ours));
      const both = judge(
        parameter,
        requirement('time', { at_least: `${low} min`, at_most: `${high} min` }),
        givenMinutes(ours),
      );
      expect(rank(both)).toBeGreaterThanOrEqual(rank(one));
    }),
    seed,
  );
});

test('a wider spread of ours never has a better outcome', () => {
  const cases = fc.record({
    parameter: fc.constantFrom(...parameters),
    kind: fc.nat(2),
    page: ends,
    ours: ends,
    by: fc.nat(30),
  });
  fc.assert(
    fc.property(cases, ({ parameter, kind, page, ours, by }) => {
      const demanded = requirement('time', bounds(kind, page));
      const narrow = judge(parameter, demanded, givenMinutes(ours));
      const wide = judge(parameter, demanded, givenMinutes({ low: Math.max(0, ours.low - by), high: ours.high + by }));
      expect(rank(wide)).toBeGreaterThanOrEqual(rank(narrow));
    }),
    seed,
  );
});

const spellings = {
  time: (m: number) => [`${m} min`, `${m * 60} s`, `${m} minutes`],
  temperature: (c: number) => [`${c} C`, `${c} °C`, `${(c * 9) / 5 + 32} F`],
  mass: (kg: number) => [`${kg} kg`, `${kg * 1000} g`],
} as const;

test('the spelling of a unit never changes an outcome', () => {
  const cases = fc.record({
    dimension: fc.constantFrom('time', 'temperature', 'mass'),
    parameter: fc.constantFrom(...parameters),
    kind: fc.nat(2),
    page: ends,
    ours: minutes,
  });
  fc.assert(
    fc.property(cases, ({ dimension, parameter, kind, page, ours }) => {
      const written = spellings[dimension];
      const found = new Set<Outcome>();
      for (const [index] of written(1).entries()) {
        const end = (value: number) => written(value)[index] ?? '';
        const words =
          kind === 0
            ? { at_least: end(page.low) }
            : kind === 1
              ? { stated: end(page.low) }
              : { between: [end(page.low), end(page.high)] as const };
        for (const spelled of written(ours))
          found.add(judge(parameter, requirement(dimension, words), givenOf(quantity(spelled, dimension))));
      }
      expect(found.size).toBe(1);
    }),
    seed,
  );
});

test('outcomes combine to the worst one, in any order', () => {
  const list = fc.array(fc.constantFrom(...outcomes).map((outcome) => ({ outcome })));
  fc.assert(
    fc.property(list, (all) => {
      const worst = worstOf(all);
      expect(worstOf(all.toReversed())).toBe(worst);
      for (const { outcome } of all) expect(worse(worst, outcome)).toBe(worst);
      expect(all.length === 0 ? worst === 'meets' : all.some(({ outcome }) => outcome === worst)).toBe(true);
    }),
    seed,
  );
});
