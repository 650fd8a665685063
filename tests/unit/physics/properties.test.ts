import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  absoluteFromGaugeKPa,
  expectedGaugeKPa,
  gaugeFromAbsoluteKPa,
  standardAtmosphereKPa,
  temperatureForGaugeC,
} from '../../../server/src/physics/atmosphere.ts';
import { condensateOfLoad, flashOffG } from '../../../server/src/physics/condensate.ts';
import { infraredReadingC, surfaceFromReadingC } from '../../../server/src/physics/infrared.ts';
import {
  A0_SCALE,
  amountOf,
  F0_SCALE,
  type LethalityScale,
  lethalityOfHold,
  requiredHoldS,
} from '../../../server/src/physics/lethality.ts';
import { lethalityOfCurve } from '../../../server/src/physics/lethality-curve.ts';
import { LOAD_MATERIALS } from '../../../server/src/physics/load-materials.ts';
import {
  saturatedSteam,
  saturatedSteamAtPressure,
  saturationPressureKPa,
  saturationTemperatureC,
} from '../../../server/src/physics/steam.ts';
import { drynessForSuperheat, throttle } from '../../../server/src/physics/steam-quality.ts';
import { answerOf } from './handbook.ts';
import { clausiusClapeyron } from './steam-rows.ts';

fc.configureGlobal({
  seed: Number(process.env.PHYSICS_SEED ?? 20250301),
  numRuns: Number(process.env.PHYSICS_RUNS ?? 100),
});

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const scale = fc.constantFrom<LethalityScale>(F0_SCALE, A0_SCALE);

describe('steam', () => {
  test('saturation pressure rises with temperature', () =>
    fc.assert(
      fc.property(between(0, 373.9), between(1e-6, 0.04), (celsius, more) => {
        expect(answerOf(saturationPressureKPa(celsius + more))).toBeGreaterThan(
          answerOf(saturationPressureKPa(celsius)),
        );
      }),
    ));
  test('saturation pressure and temperature undo each other', () =>
    fc.assert(
      fc.property(between(0.001, 350), (celsius) => {
        expect(answerOf(saturationTemperatureC(answerOf(saturationPressureKPa(celsius))))).toBeCloseTo(celsius, 6);
      }),
    ));
  test('latent heat falls with temperature and stays positive', () =>
    fc.assert(
      fc.property(between(0, 349), between(0.01, 1), (celsius, more) => {
        const latent = (at: number): number => answerOf(saturatedSteam(at)).latentHeatKJPerKg;
        expect(latent(celsius + more)).toBeLessThan(latent(celsius));
        expect(latent(celsius + more)).toBeGreaterThan(0);
      }),
    ));
  test('Clausius-Clapeyron holds over the range of sterilizers within a thousandth', () =>
    fc.assert(
      fc.property(between(1, 200), (celsius) => {
        expect(Math.abs(clausiusClapeyron(celsius) - 1)).toBeLessThan(1e-3);
      }),
    ));
  test('throttling: drier steam is never colder or wetter after it, and the dryness for a superheat gives that superheat', () =>
    fc.assert(
      fc.property(between(150, 900), between(0.5, 1), between(0, 0.5), (kPa, dryness, less) => {
        const rank = (x: number): number => {
          const after = answerOf(throttle(kPa, x, 101.325));
          return after.state === 'wet' ? after.dryness - 1 : after.superheatK;
        };
        expect(rank(dryness)).toBeGreaterThanOrEqual(rank(Math.max(0, dryness - less)));
        const superheat = rank(dryness);
        if (superheat > 0) expect(answerOf(drynessForSuperheat(kPa, superheat, 101.325))).toBeCloseTo(dryness, 6);
      }),
    ));
  test('perfectly dry steam gives its own superheat back', () => {
    for (let kPa = 150; kPa < 900; kPa += 1) {
      const after = answerOf(throttle(kPa, 1, 101.325));
      const superheatK = after.state === 'superheated' ? after.superheatK : 0;
      expect(answerOf(drynessForSuperheat(kPa, superheatK, 101.325))).toBeCloseTo(1, 9);
    }
  });
  test('every finite or odd number gets an answer or a refusal, never an exception', () =>
    fc.assert(
      fc.property(fc.double(), fc.double(), fc.double(), (a, b, c) => {
        const given = [
          saturationPressureKPa(a),
          saturatedSteam(a),
          saturatedSteamAtPressure(a),
          throttle(a, b, c),
          drynessForSuperheat(a, b, c),
          expectedGaugeKPa(a, b),
          temperatureForGaugeC(a, b),
          standardAtmosphereKPa(a),
          lethalityOfHold(A0_SCALE, { temperatureC: a, holdS: b, uncertaintyK: c }),
          requiredHoldS(A0_SCALE, a, b, c),
          condensateOfLoad([{ material: 'steel', massKg: a }], {
            startTemperatureC: b,
            steamTemperatureC: c,
            dryness: 1,
          }),
          flashOffG([{ material: 'steel', massKg: a }], b, c),
          infraredReadingC(a, { emissivitySet: b, emissivityTrue: c, roomC: 22 }),
        ];
        for (const one of given) if (!one.ok) expect(one.message).not.toMatch(/NaN|Infinity|undefined/);
      }),
    ));
});

describe('atmosphere', () => {
  test('falls with altitude', () =>
    fc.assert(
      fc.property(between(-500, 10_999), between(0.01, 1), (metres, more) => {
        expect(answerOf(standardAtmosphereKPa(metres + more))).toBeLessThan(answerOf(standardAtmosphereKPa(metres)));
      }),
    ));
  test('gauge and absolute undo each other; expected gauge and temperature undo each other', () =>
    fc.assert(
      fc.property(between(60, 102), between(101, 150), (atmosphere, celsius) => {
        const gauge = answerOf(expectedGaugeKPa(celsius, atmosphere));
        expect(answerOf(temperatureForGaugeC(gauge, atmosphere))).toBeCloseTo(celsius, 6);
        const absolute = answerOf(absoluteFromGaugeKPa(gauge, atmosphere));
        expect(answerOf(gaugeFromAbsoluteKPa(absolute, atmosphere))).toBeCloseTo(gauge, 9);
      }),
    ));
});

describe('lethality', () => {
  const readings = fc
    .array(fc.record({ step: between(0.1, 60), temperatureC: between(20, 140) }), { minLength: 2, maxLength: 40 })
    .map((list) => {
      let timeS = 0;
      return list.map(({ step, temperatureC }) => {
        timeS += step;
        return { timeS, temperatureC };
      });
    });
  const settings = { uncertaintyK: 0, longestStepS: 60 };

  test('the lower bound is never above the exact amount, nor the exact amount above the hottest reading held throughout', () =>
    fc.assert(
      fc.property(scale, readings, (one, list) => {
        const { lethality, lowerBound, countedS } = answerOf(lethalityOfCurve(one, list, settings));
        expect(lowerBound.equivalentS).toBeLessThanOrEqual(lethality.equivalentS);
        const hottest = Math.max(...list.map((reading) => reading.temperatureC));
        const most = answerOf(lethalityOfHold(one, { temperatureC: hottest, holdS: countedS, uncertaintyK: 0 }));
        expect(lethality.equivalentS).toBeLessThanOrEqual(most.equivalentS * (1 + 1e-9));
      }),
    ));
  test('a curve cut in two anywhere along its lines has the same amount', () =>
    fc.assert(
      fc.property(scale, between(20, 140), between(20, 140), between(0.01, 0.99), (one, from, to, cut) => {
        const start = { timeS: 0, temperatureC: from };
        const middle = { timeS: 50 * cut, temperatureC: from + (to - from) * cut };
        const end = { timeS: 50, temperatureC: to };
        const whole = answerOf(lethalityOfCurve(one, [start, end], settings)).lethality.equivalentS;
        const parts = answerOf(lethalityOfCurve(one, [start, middle, end], settings)).lethality.equivalentS;
        expect(parts).toBeGreaterThan(whole * (1 - 1e-9) - 1e-12);
        expect(parts).toBeLessThan(whole * (1 + 1e-9) + 1e-12);
      }),
    ));
  test('taking uncertainty off never adds', () =>
    fc.assert(
      fc.property(scale, readings, between(0, 5), (one, list, uncertaintyK) => {
        const amount = (k: number): number =>
          answerOf(lethalityOfCurve(one, list, { ...settings, uncertaintyK: k })).lethality.equivalentS;
        expect(amount(uncertaintyK)).toBeLessThanOrEqual(amount(0) * (1 + 1e-12));
      }),
    ));
  test('the required hold gives the amount back', () =>
    fc.assert(
      fc.property(
        scale,
        between(1, 5000),
        between(70, 140),
        between(0, 3),
        (one, amount, temperatureC, uncertaintyK) => {
          const holdS = answerOf(requiredHoldS(one, amount, temperatureC, uncertaintyK));
          fc.pre(holdS < 1e9);
          const got = amountOf(answerOf(lethalityOfHold(one, { temperatureC, holdS, uncertaintyK })));
          expect(got / amount).toBeCloseTo(1, 9);
        },
      ),
    ));
});

describe('condensate', () => {
  const part = fc.record({
    material: fc.constantFrom(...LOAD_MATERIALS.map((row) => row.id)),
    massKg: between(0, 20),
  });
  const heating = { startTemperatureC: 21, steamTemperatureC: 134, dryness: 0.97 };

  test('the order of the parts never changes an answer', () =>
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 8 }), (parts) => {
        const forward = answerOf(condensateOfLoad(parts, heating));
        const backward = answerOf(condensateOfLoad([...parts].reverse(), heating));
        expect({ ...backward, parts: [...backward.parts].reverse() }).toEqual(forward);
        expect(answerOf(flashOffG([...parts].reverse(), 134, 10))).toBe(answerOf(flashOffG(parts, 134, 10)));
      }),
    ));
  test('the range holds the estimate, wetter steam leaves more, and adding a part never takes water away', () =>
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 8 }), part, (parts, extra) => {
        const load = answerOf(condensateOfLoad(parts, heating));
        expect(load.lowWaterG).toBeLessThanOrEqual(load.waterG);
        expect(load.highWaterG).toBeGreaterThanOrEqual(load.waterG);
        expect(answerOf(condensateOfLoad(parts, { ...heating, dryness: 0.9 })).waterG).toBeGreaterThanOrEqual(
          load.waterG,
        );
        expect(answerOf(condensateOfLoad([...parts, extra], heating)).waterG).toBeGreaterThanOrEqual(
          load.waterG * (1 - 1e-12),
        );
      }),
    ));
});

test('infrared: reading and surface undo each other, and a shiny hot surface never reads hotter than it is', () =>
  fc.assert(
    fc.property(between(23, 200), between(0.02, 0.95), (surfaceC, emissivityTrue) => {
      const aim = { emissivitySet: 0.95, emissivityTrue, roomC: 22 };
      const shown = answerOf(infraredReadingC(surfaceC, aim));
      expect(shown).toBeLessThanOrEqual(surfaceC + 1e-9);
      expect(answerOf(surfaceFromReadingC(shown, aim))).toBeCloseTo(surfaceC, 6);
    }),
  ));
