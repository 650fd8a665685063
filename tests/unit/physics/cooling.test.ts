import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type CoolingQuestion,
  minimumWithEstimate,
  temperatureAfterC,
  waitToRelease,
} from '../../../server/src/physics/cooling.ts';
import { twoReadings } from './cooling-rows.ts';
import { answerOf, reasonOf } from './handbook.ts';

fc.configureGlobal({
  seed: Number(process.env.PHYSICS_SEED ?? 20250301),
  numRuns: Number(process.env.PHYSICS_RUNS ?? 100),
});

const FIRST = twoReadings(60, 45, 20, 21, 24);

function readingsOf(roomC: number, rate: number, times: readonly number[]) {
  return times.map((timeMin) => ({ timeMin, temperatureC: temperatureAfterC(57, roomC, rate, timeMin) }));
}

describe('fit', () => {
  test('many readings on one curve give back its rate and the time to the release temperature', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 25, noNaN: true }),
        fc.double({ min: 0.005, max: 0.08, noNaN: true }),
        fc.double({ min: 1, max: 8, noNaN: true }),
        (roomC, rate, above) => {
          const readings = readingsOf(roomC, rate, [0, 4, 9, 15, 20]);
          const room = { kind: 'measured', temperatureC: roomC, uncertaintyK: 0 } as const;
          const wait = answerOf(waitToRelease({ readings, room, releaseC: roomC + above, readingUncertaintyK: 0 }));
          expect(wait.ratePerMin).toBeCloseTo(rate, 9);
          const expected = Math.max(0, Math.log((57 - roomC) / above) / rate - 20);
          expect(wait.waitMin).toBeCloseTo(expected, 5);
          expect(wait.earliestMin).toBeCloseTo(expected, 5);
          expect(wait.latestMin).toBeCloseTo(expected, 5);
        },
      ),
    ));
  test('the interval holds every wait that readings within their uncertainty could give', () =>
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -0.5, max: 0.5, noNaN: true }), { minLength: 4, maxLength: 4 }),
        fc.double({ min: -0.3, max: 0.3, noNaN: true }),
        (errors, roomError) => {
          const readings = readingsOf(21, 0.024, [0, 10, 20, 30]);
          const room = { kind: 'measured', temperatureC: 21, uncertaintyK: 0.3 } as const;
          const wide = answerOf(waitToRelease({ readings, room, releaseC: 24, readingUncertaintyK: 0.5 }));
          const off = readings.map((one, index) => ({ ...one, temperatureC: one.temperatureC + (errors[index] ?? 0) }));
          const exactRoom = { kind: 'measured', temperatureC: 21 + roomError, uncertaintyK: 0 } as const;
          const one = answerOf(waitToRelease({ readings: off, room: exactRoom, releaseC: 24, readingUncertaintyK: 0 }));
          expect(one.waitMin).toBeGreaterThanOrEqual(wide.earliestMin - 1e-6);
          expect(one.waitMin).toBeLessThanOrEqual((wide.latestMin ?? Number.POSITIVE_INFINITY) + 1e-6);
        },
      ),
    ));
  test('a load already at the release temperature waits 0', () =>
    expect(answerOf(waitToRelease({ ...FIRST, releaseC: 50 })).waitMin).toBe(0));
});

describe('unknown room', () => {
  const question: CoolingQuestion = {
    readings: readingsOf(21, 0.024, [0, 20, 40]),
    room: { kind: 'unknown' },
    releaseC: 24,
    readingUncertaintyK: 0,
  };
  test('three equal steps give room and rate back', () => {
    const wait = answerOf(waitToRelease(question));
    expect(wait.roomC).toBeCloseTo(21, 6);
    expect(wait.ratePerMin).toBeCloseTo(0.024, 6);
  });
  test('half a kelvin of uncertainty leaves the end open when the room may be as warm as the release temperature', () => {
    const wait = answerOf(waitToRelease({ ...question, readingUncertaintyK: 0.5 }));
    expect(wait.earliestMin).toBeLessThan(wait.waitMin);
    expect(wait.latestMin).toBeUndefined();
    expect(minimumWithEstimate(30, 40, wait).measureAgain).toBe(true);
  });
  test.each([
    [readingsOf(21, 0.024, [0, 20, 45]), 24, 'needs-three-equal-steps'],
    [readingsOf(21, 0.024, [0, 20]), 24, 'needs-three-equal-steps'],
    [readingsOf(21, 0.024, [0, 20, 40]), 20, 'release-not-above-room'],
    [[60, 50, 40].map((temperatureC, index) => ({ timeMin: index, temperatureC })), 24, 'room-not-found'],
    [[60, 50, 55].map((temperatureC, index) => ({ timeMin: index, temperatureC })), 24, 'not-cooling'],
  ])('refuses %j to %d °C: %s', (readings, releaseC, reason) =>
    expect(reasonOf(waitToRelease({ ...question, readings, releaseC }))).toBe(reason),
  );
});

describe('refusals with a measured room', () => {
  test.each([
    [{ readings: FIRST.readings.slice(0, 1) }, 'too-few-readings'],
    [{ readings: [...FIRST.readings].reverse() }, 'times-not-in-order'],
    [{ releaseC: Number.NaN }, 'not-a-number'],
    [{ readingUncertaintyK: -1 }, 'below-range'],
    [{ readings: twoReadings(60, 21.3, 20, 21, 24).readings, readingUncertaintyK: 0.5 }, 'reading-not-above-room'],
  ])('%j: %s', (change, reason) => expect(reasonOf(waitToRelease({ ...FIRST, ...change }))).toBe(reason));
});

test('an estimate may lengthen the stated minimum, never shorten it', () =>
  fc.assert(
    fc.property(fc.nat(180), fc.nat(180), fc.nat(180), (stated, elapsed, wait) => {
      const estimate = { waitMin: wait, earliestMin: wait, latestMin: wait, roomC: 21, ratePerMin: 0.02 };
      const kept = minimumWithEstimate(stated, elapsed, estimate);
      expect(kept.minimumMin).toBe(Math.max(stated, elapsed + wait));
      expect(kept.decidedBy).toBe(elapsed + wait > stated ? 'estimate' : 'stated');
    }),
  ));
