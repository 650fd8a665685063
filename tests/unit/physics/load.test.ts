import { describe, expect, test } from 'vitest';
import { condensateOfLoad } from '../../../server/src/physics/condensate.ts';
import { dryAdvice, waterOnCurveG } from '../../../server/src/physics/dry-advice.ts';
import { SURFACE_EMISSIVITIES } from '../../../server/src/physics/emissivities.ts';
import { isUncertain, LOAD_MATERIALS } from '../../../server/src/physics/load-materials.ts';
import { answerOf, reasonOf } from './handbook.ts';

const HEATING = { startTemperatureC: 22, steamTemperatureC: 132, dryness: 1 };
const KNEE = [
  { material: 'steel', massKg: 9.2 },
  { material: 'aluminium', massKg: 2.4 },
  { material: 'polymer', massKg: 0.3 },
];

describe('condensate', () => {
  test('10 kg of steel makes about 0.26 kg of water, 10 kg of aluminium 0.47 kg (134 °C)', () => {
    const grams = (material: string): number => {
      const heating = { startTemperatureC: 21, steamTemperatureC: 134, dryness: 1 };
      return answerOf(condensateOfLoad([{ material, massKg: 10 }], heating)).waterG;
    };
    expect(Math.round(grams('steel') / 10) / 100).toBe(0.26);
    expect(Math.round(grams('aluminium') / 10) / 100).toBe(0.47);
  });
  test('uncertain and unknown materials are named, not hidden', () => {
    const load = answerOf(condensateOfLoad([...KNEE, { material: 'bone', massKg: 1 }], HEATING));
    expect(load.uncertainMaterials).toEqual(['polymer', 'steel']);
    expect(load.unknownParts).toEqual([{ material: 'bone', massKg: 1 }]);
    expect(load.massKg).toBeCloseTo(11.9, 9);
    expect(load.lowWaterG).toBeLessThan(load.waterG);
    expect(load.highWaterG).toBeGreaterThan(load.waterG);
  });
  test.each([
    [[], HEATING, 'no-known-material'],
    [[{ material: 'bone', massKg: 1 }], HEATING, 'no-known-material'],
    [KNEE, { ...HEATING, startTemperatureC: 140 }, 'not-heated'],
    [KNEE, { ...HEATING, dryness: 0 }, 'below-range'],
    [KNEE, { ...HEATING, dryness: 1.01 }, 'above-range'],
    [[{ material: 'steel', massKg: -1 }], HEATING, 'below-range'],
    [[{ material: 'steel', massKg: Number.NaN }], HEATING, 'not-a-number'],
    [KNEE, { ...HEATING, steamTemperatureC: 400 }, 'above-range'],
  ])('refuses %j %j: %s', (parts, heating, reason) => expect(reasonOf(condensateOfLoad(parts, heating))).toBe(reason));
  test('every material from memory is marked uncertain and names its source', () => {
    for (const row of LOAD_MATERIALS) {
      expect(row.source).not.toBe('');
      expect(row.lowKJPerKgK).toBeLessThanOrEqual(row.heatKJPerKgK);
      expect(row.highKJPerKgK).toBeGreaterThanOrEqual(row.heatKJPerKgK);
      if (row.tag === 'memory') expect(isUncertain(row)).toBe(true);
    }
  });
  test('every emissivity names its source and lies from 0 to 1', () => {
    for (const row of SURFACE_EMISSIVITIES) {
      expect(row.source).not.toBe('');
      expect(row.low).toBeGreaterThan(0);
      expect(row.high).toBeLessThanOrEqual(1);
      expect(row.low).toBeLessThanOrEqual(row.high);
    }
  });
});

describe('advice on dry time', () => {
  const question = { parts: KNEE, heating: HEATING, vacuumKPa: 10, dryMin: 20, siteCurve: [] };
  const curve = [
    { dryMin: 30, waterG: 450 },
    { dryMin: 10, waterG: 150 },
  ];
  test('gives figures and never a pass or a fail', () => {
    const advice = answerOf(dryAdvice(question));
    expect(advice.kind).toBe('advice');
    expect(advice.leftToDrainG).toBeCloseTo(advice.waterG - advice.flashOffG, 9);
    expect(advice.aluminiumShare).toBeGreaterThan(0.25);
    expect(advice.siteCurve).toBe('no-curve');
    expect(Object.keys(advice)).not.toContain('pass');
  });
  test('lies above or within the site curve, and nothing is guessed beyond its ends', () => {
    const place = (dryMin: number, siteCurve = curve) =>
      answerOf(dryAdvice({ ...question, dryMin, siteCurve })).siteCurve;
    expect(waterOnCurveG(curve, 20)).toBe(300);
    expect(place(20)).toBe('above');
    expect(place(30)).toBe('within');
    expect(place(31)).toBe('dry-time-outside-curve');
    expect(place(Number.NaN)).toBe('dry-time-outside-curve');
    expect(place(20, [{ dryMin: Number.NaN, waterG: 1 }])).toBe('dry-time-outside-curve');
  });
});
