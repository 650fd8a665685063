import { steamState } from './if97.ts';
import {
  type Answer,
  answer,
  outOfRange,
  type RangeCheck,
  type RangeReason,
  refuse,
  ZERO_CELSIUS_K,
} from './physics.ts';
import { type SaturatedSteam, saturatedSteam, saturatedSteamAtPressure } from './steam.ts';

/*
 * How dry steam is, and what that does. Dryness is the vapour's share of the mass, 0 to 1: 0.97 means 97 parts vapour and 3 parts water.
 */

/** What steam becomes when it expands through an opening without giving up heat. */
export type ThrottledSteam =
  | { readonly state: 'superheated'; readonly temperatureC: number; readonly superheatK: number }
  | { readonly state: 'wet'; readonly temperatureC: number; readonly dryness: number };

export type ThrottleReason = RangeReason | 'not-an-expansion' | 'never-that-hot';

/** What the calorimeter of a steam dryness test gave. Masses are of water in the flask before, and of steam condensed into it. */
export interface CalorimeterReading {
  readonly startTemperatureC: number;
  readonly endTemperatureC: number;
  readonly steamTemperatureC: number;
  readonly waterKg: number;
  readonly condensateKg: number;
  /** Heat the flask and fittings take up for each kelvin. */
  readonly apparatusKJPerK: number;
  /** Latent heat at the steam temperature, when the test's own table is to be used; else the steam equations give it. */
  readonly latentHeatKJPerKg?: number;
}

/** Heat capacity of liquid water used by the test's formula, kJ/(kg K). */
const WATER_KJ_PER_KG_K = 4.18;
const HIGHEST_STEAM_K = 1073.15;

/** `mass` of wet steam parted into vapour and water, in the unit of `mass`. */
export function splitByDryness(mass: number, dryness: number): Answer<{ vapour: number; water: number }, RangeReason> {
  const bad = outOfRange({ name: 'mass', value: mass, low: 0, high: 1e9, unit: '' }, drynessCheck(dryness));
  return bad ?? answer({ vapour: mass * dryness, water: mass - mass * dryness });
}

/** Enthalpy (kJ/kg) of steam at `temperatureC` that is `dryness` vapour: liquid + dryness x latent. */
export function wetSteamEnthalpyKJPerKg(temperatureC: number, dryness: number): Answer<number, RangeReason> {
  const bad = outOfRange(drynessCheck(dryness));
  if (bad) return bad;
  const steam = saturatedSteam(temperatureC);
  return steam.ok ? answer(wetEnthalpy(steam.value, dryness)) : steam;
}

/** State after expansion from saturated steam at `fromKPa` to `toKPa` (both absolute) at constant enthalpy. */
export function throttle(fromKPa: number, dryness: number, toKPa: number): Answer<ThrottledSteam, ThrottleReason> {
  const bad = outOfRange(drynessCheck(dryness));
  if (bad) return bad;
  const ends = expansion(fromKPa, toKPa);
  if (!ends.ok) return ends;
  const { supply, after } = ends.value;
  const enthalpy = wetEnthalpy(supply, dryness);
  if (enthalpy <= after.vapourEnthalpyKJPerKg) {
    const left = (enthalpy - after.liquidEnthalpyKJPerKg) / after.latentHeatKJPerKg;
    return answer({ state: 'wet', temperatureC: after.temperatureC, dryness: left });
  }
  const temperatureC = temperatureOfSteamC(toKPa, enthalpy, after.temperatureC);
  return answer({ state: 'superheated', temperatureC, superheatK: temperatureC - after.temperatureC });
}

/** Dryness of the supply at `fromKPa` that gives exactly `superheatK` after expansion to `toKPa` (both absolute). */
export function drynessForSuperheat(
  fromKPa: number,
  superheatK: number,
  toKPa: number,
): Answer<number, ThrottleReason> {
  const bad = outOfRange({ name: 'superheat', value: superheatK, low: 0, high: 300, unit: ' K' });
  if (bad) return bad;
  const ends = expansion(fromKPa, toKPa);
  if (!ends.ok) return ends;
  const { supply, after } = ends.value;
  const wanted = steamState(toKPa / 1000, after.temperatureC + superheatK + ZERO_CELSIUS_K).enthalpy;
  const dryness = (wanted - supply.liquidEnthalpyKJPerKg) / supply.latentHeatKJPerKg;
  if (dryness > 1 + 1e-9)
    return refuse('never-that-hot', 'Even perfectly dry steam from this supply does not become that hot.');
  return answer(Math.min(1, dryness));
}

/**
 * Dryness value of a calorimetric steam test: D = (T1 - T0)(4.18 Mw + C) / (L Mc) - 4.18 (Ts - T1) / L.
 * Form of HTM 2010 Part 3 (from memory), re-derived from the heat balance. May come out above 1 when a reading is wrong.
 */
export function calorimetricDryness(reading: CalorimeterReading): Answer<number, RangeReason> {
  const { startTemperatureC, endTemperatureC, steamTemperatureC, waterKg, condensateKg, apparatusKJPerK } = reading;
  const bad = outOfRange(
    { name: 'start temperature', value: startTemperatureC, low: 0, high: 100, unit: ' °C' },
    { name: 'end temperature', value: endTemperatureC, low: startTemperatureC, high: 100, unit: ' °C' },
    { name: 'steam temperature', value: steamTemperatureC, low: endTemperatureC, high: 350, unit: ' °C' },
    { name: 'water in the flask', value: waterKg, low: 1e-6, high: 1e6, unit: ' kg' },
    { name: 'condensed steam', value: condensateKg, low: 1e-6, high: 1e6, unit: ' kg' },
    { name: 'heat taken up by the flask', value: apparatusKJPerK, low: 0, high: 1e6, unit: ' kJ/K' },
  );
  if (bad) return bad;
  const latent = latentHeat(reading);
  if (!latent.ok) return latent;
  const gained = (endTemperatureC - startTemperatureC) * (WATER_KJ_PER_KG_K * waterKg + apparatusKJPerK);
  const cooledWater = WATER_KJ_PER_KG_K * (steamTemperatureC - endTemperatureC);
  return answer(gained / (latent.value * condensateKg) - cooledWater / latent.value);
}

function latentHeat(reading: CalorimeterReading): Answer<number, RangeReason> {
  const own = reading.latentHeatKJPerKg;
  if (own !== undefined)
    return outOfRange({ name: 'latent heat', value: own, low: 1, high: 3000, unit: ' kJ/kg' }) ?? answer(own);
  const steam = saturatedSteam(reading.steamTemperatureC);
  return steam.ok ? answer(steam.value.latentHeatKJPerKg) : steam;
}

function expansion(
  fromKPa: number,
  toKPa: number,
): Answer<{ supply: SaturatedSteam; after: SaturatedSteam }, ThrottleReason> {
  const supply = saturatedSteamAtPressure(fromKPa);
  if (!supply.ok) return supply;
  const after = saturatedSteamAtPressure(toKPa);
  if (!after.ok) return after;
  if (toKPa > fromKPa)
    return refuse('not-an-expansion', 'The steam expands only to a pressure below that of its supply.');
  return answer({ supply: supply.value, after: after.value });
}

/** Steam's temperature by its enthalpy: it rises steadily with temperature at one pressure, so halving finds it. */
function temperatureOfSteamC(pressureKPa: number, enthalpy: number, saturationC: number): number {
  let low = saturationC + ZERO_CELSIUS_K;
  let high = HIGHEST_STEAM_K;
  for (let halving = 0; halving < 60; halving++) {
    const middle = (low + high) / 2;
    if (steamState(pressureKPa / 1000, middle).enthalpy < enthalpy) low = middle;
    else high = middle;
  }
  return (low + high) / 2 - ZERO_CELSIUS_K;
}

function wetEnthalpy(steam: SaturatedSteam, dryness: number): number {
  return steam.liquidEnthalpyKJPerKg + dryness * steam.latentHeatKJPerKg;
}

function drynessCheck(dryness: number): RangeCheck {
  return { name: 'dryness', value: dryness, low: 0, high: 1, unit: '' };
}
