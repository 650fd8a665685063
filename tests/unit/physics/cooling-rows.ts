import { expect } from 'vitest';
import {
  type CoolingQuestion,
  type CoolingWait,
  minimumWithEstimate,
  temperatureAfterC,
  waitToRelease,
} from '../../../server/src/physics/cooling.ts';
import { surfaceEmissivity } from '../../../server/src/physics/emissivities.ts';
import { infraredReadingC, surfaceFromReadingC } from '../../../server/src/physics/infrared.ts';
import { answerOf, type CheckRow, celsiusFromFahrenheit, expectWithin, input, reasonOf } from './handbook.ts';

/** How each quantity of the cooling family is computed; `undefined` when the handler has made all its checks itself. */
export const COOLING_ROWS: Readonly<Record<string, (row: CheckRow) => number | undefined>> = {
  'minimum cooling time': neverShortened,
  'cooling time that may be needed': neverShortened,
  'room temperature band to cool to': (row) => {
    for (const end of row.expected.split('-')) coolsTo(celsiusFromFahrenheit(Number(end)));
    return undefined;
  },
  'sterile storage maximum temperature': (row) => {
    coolsTo(celsiusFromFahrenheit(Number(row.expected)));
    return undefined;
  },
  'Newton cooling constant k = ln((T1-Ta)/(T2-Ta))/dt': (row) => {
    const question = twoReadings(input(row, 'T1'), input(row, 'T2'), input(row, 'dt'), input(row, 'Ta'), 24);
    return answerOf(waitToRelease(question)).ratePerMin;
  },
  'time from second reading to target': (row) =>
    answerOf(waitToRelease({ ...FIRST_CASE, releaseC: input(row, 'target') })).waitMin,
  'time from second reading to target (Fahrenheit)': (row) => {
    const celsius = (key: string): number => celsiusFromFahrenheit(input(row, key));
    const question = twoReadings(celsius('T1'), celsius('T2'), input(row, 'dt'), celsius('Ta'), celsius('target'));
    return answerOf(waitToRelease(question)).waitMin;
  },
  'ambient from three equally spaced readings (T1*T3-T2^2)/(T1+T3-2*T2)': (row) => {
    const readings = ['T1', 'T2', 'T3'].map((key, index) => ({ timeMin: index * 20, temperatureC: input(row, key) }));
    const question: CoolingQuestion = { readings, room: { kind: 'unknown' }, releaseC: 24, readingUncertaintyK: 0 };
    return answerOf(waitToRelease(question)).roomC;
  },
  'answer range if each reading is wrong by 0.5 K': (row) => {
    const wait = answerOf(waitToRelease({ ...FIRST_CASE, readingUncertaintyK: 0.5 }));
    const [low = '', high = ''] = row.expected.split('-');
    expectWithin({ ...row, expected: low }, wait.earliestMin);
    expectWithin({ ...row, expected: high }, wait.latestMin ?? Number.NaN);
    return undefined;
  },
  'must refuse': () => {
    expect(reasonOf(waitToRelease({ ...FIRST_CASE, releaseC: 21 }))).toBe('release-not-above-room');
    expect(reasonOf(waitToRelease(twoReadings(45, 45, 20, 21, 24)))).toBe('not-cooling');
    expect(reasonOf(waitToRelease(twoReadings(45, 60, 20, 21, 24)))).toBe('not-cooling');
    expect(reasonOf(waitToRelease(twoReadings(60, 21, 20, 21, 24)))).toBe('reading-not-above-room');
    return undefined;
  },
  'reading of an IR thermometer set to 0.95': (row) => {
    const aim = { emissivitySet: 0.95, emissivityTrue: input(row, 'emissivity'), roomC: input(row, 'room') };
    const shown = answerOf(infraredReadingC(input(row, 'true'), aim));
    expect(answerOf(surfaceFromReadingC(shown, aim))).toBeCloseTo(input(row, 'true'), 9);
    return shown;
  },
  'infrared emissivity': (row) => {
    const surface = surfaceEmissivity(SURFACES[row.inputs] ?? row.inputs);
    for (const end of row.expected.split('-').map(Number)) {
      expect(surface?.low).toBeLessThanOrEqual(end);
      expect(surface?.high).toBeGreaterThanOrEqual(end);
    }
    return undefined;
  },
};

/** Rows that are a site's limit and nothing to compute here. */
export const NO_EQUATION: readonly string[] = ['sterile storage maximum relative humidity'];

const FIRST_CASE = twoReadings(60, 45, 20, 21, 24);

export function twoReadings(t1: number, t2: number, dt: number, roomC: number, releaseC: number): CoolingQuestion {
  const readings = [
    { timeMin: 0, temperatureC: t1 },
    { timeMin: dt, temperatureC: t2 },
  ];
  return {
    readings,
    room: { kind: 'measured', temperatureC: roomC, uncertaintyK: 0 },
    releaseC,
    readingUncertaintyK: 0,
  };
}

/** The stated minimum stays when the estimate is shorter, and gives way when it is longer. */
function neverShortened(row: CheckRow): number {
  const wait = (latestMin: number): CoolingWait => ({
    waitMin: 1,
    earliestMin: 0,
    latestMin,
    roomC: 21,
    ratePerMin: 0.02,
  });
  const stated = Number(row.expected);
  expect(minimumWithEstimate(stated, 5, wait(stated)).decidedBy).toBe('estimate');
  expect(minimumWithEstimate(stated, 5, wait(stated)).minimumMin).toBe(stated + 5);
  return minimumWithEstimate(stated, 5, wait(2)).minimumMin;
}

/** A load in a cooler room gets there, and is there at the time given. */
function coolsTo(releaseC: number): void {
  const wait = answerOf(waitToRelease(twoReadings(57, 40, 15, 17, releaseC)));
  expect(temperatureAfterC(40, wait.roomC, wait.ratePerMin, wait.waitMin)).toBeCloseTo(releaseC, 9);
}

const SURFACES: Readonly<Record<string, string>> = {
  'polished stainless steel': 'stainless-polished',
  'stainless steel sheet untreated': 'stainless-sheet',
  'stainless steel': 'stainless',
  'aluminium polished sheet': 'aluminium-bright',
  'aluminium anodized light grey dull': 'aluminium-anodized-dull',
  'aluminium anodized chromic acid': 'aluminium-anodized-chromic',
  'chrome 40 degC': 'chrome',
};
