import { describe, expect, test } from 'vitest';
import { A0_SCALE, amountOf, F0_SCALE } from '../../../server/src/physics/lethality.ts';
import { lethalityOfCurve, type Reading } from '../../../server/src/physics/lethality-curve.ts';
import { answerOf, reasonOf } from './handbook.ts';

const SETTINGS = { uncertaintyK: 0, longestStepS: 60 };

function at80(...times: number[]): Reading[] {
  return times.map((timeS) => ({ timeS, temperatureC: 80 }));
}

function counted(readings: readonly Reading[]) {
  const { lethality, countedS, notCounted } = answerOf(lethalityOfCurve(A0_SCALE, readings, SETTINGS));
  // At 80 °C a second counts for a second.
  expect(amountOf(lethality)).toBeCloseTo(countedS, 9);
  return { countedS, notCounted: notCounted.map(({ fromIndex, reason }) => `${fromIndex} ${reason}`) };
}

describe('gaps and disorder', () => {
  test('a steady log counts in full', () => expect(counted(at80(0, 30, 60))).toEqual({ countedS: 60, notCounted: [] }));
  test('a gap counts nothing and is reported', () =>
    expect(counted(at80(0, 30, 300, 330))).toEqual({ countedS: 60, notCounted: ['1 gap'] }));
  test('a reading earlier than one before it counts nothing, to it or from it', () =>
    expect(counted(at80(0, 10, 20, 15, 30, 40))).toEqual({
      countedS: 30,
      notCounted: ['2 out-of-order', '3 out-of-order'],
    }));
  test('a clock set back counts nothing until it passes the latest time again', () =>
    expect(counted(at80(0, 10, 20, 0, 10, 20, 30, 40))).toEqual({
      countedS: 30,
      notCounted: ['2 out-of-order', '3 out-of-order', '4 out-of-order', '5 out-of-order'],
    }));
  test('the same time twice counts nothing', () =>
    expect(counted(at80(0, 10, 10, 20))).toEqual({ countedS: 10, notCounted: ['1 out-of-order', '2 out-of-order'] }));
  test('readings that are no numbers count nothing on either side', () => {
    const readings = at80(0, 10, 20, 30, 40);
    const spoiled = readings.map((one, index) => (index === 2 ? { ...one, temperatureC: Number.NaN } : one));
    expect(counted(spoiled)).toEqual({ countedS: 20, notCounted: ['1 unreadable', '2 unreadable'] });
    expect(counted([{ timeS: Number.NaN, temperatureC: 80 }, ...readings]).notCounted).toEqual(['0 unreadable']);
  });
  test('one reading is no curve', () =>
    expect(reasonOf(lethalityOfCurve(A0_SCALE, at80(0), SETTINGS))).toBe('too-few-readings'));
});

describe('what travels with the result', () => {
  test('the reference temperature and the uncertainty taken off', () => {
    const { lethality, lowerBound } = answerOf(
      lethalityOfCurve(F0_SCALE, at80(0, 30), { ...SETTINGS, uncertaintyK: 0.5 }),
    );
    for (const one of [lethality, lowerBound]) {
      expect(one.scale.referenceTemperatureC).toBe(121.1);
      expect(one.uncertaintyK).toBe(0.5);
    }
  });
  test('uncertainty can take a reading below the A0 floor', () => {
    const readings = [0, 30].map((timeS) => ({ timeS, temperatureC: 65.2 }));
    expect(answerOf(lethalityOfCurve(A0_SCALE, readings, SETTINGS)).lethality.equivalentS).toBeGreaterThan(0);
    const careful = lethalityOfCurve(A0_SCALE, readings, { ...SETTINGS, uncertaintyK: 0.5 });
    expect(answerOf(careful).lethality.equivalentS).toBe(0);
  });
});
