import { Remembered } from '../base/remembered.ts';
import {
  type EnthalpyAndVolume,
  saturationPressureMPa,
  saturationTemperatureK,
  steamBoundaryMPa,
  steamState,
  waterState,
} from './if97.ts';
import { type Answer, answer, outOfRange, type RangeReason, refuse, ZERO_CELSIUS_K } from './physics.ts';

/*
 * Water and steam by IAPWS R7-97(2012), regions 1, 2 and 4, in °C and kPa absolute. Enthalpies in kJ/kg, volumes in m³/kg.
 */

/** Ends of the saturation line: triple point side and critical point. */
const SATURATION_C = { low: 0, high: 373.946 };
const SATURATION_KPA = { low: 0.611213, high: 22064 };
/** Above this the two sides of the saturation line leave regions 1 and 2. */
const HIGHEST_PROPERTIES_C = 350;

/** Both sides of the saturation line at one temperature. */
export interface SaturatedSteam {
  readonly temperatureC: number;
  /** Absolute. */
  readonly pressureKPa: number;
  readonly liquidEnthalpyKJPerKg: number;
  readonly vapourEnthalpyKJPerKg: number;
  /** Heat given up by each kilogram of dry steam that turns to water: vapour minus liquid enthalpy. */
  readonly latentHeatKJPerKg: number;
  readonly liquidVolumeM3PerKg: number;
  readonly vapourVolumeM3PerKg: number;
}

/** One state that is not on the saturation line. */
export interface SteamState {
  readonly enthalpyKJPerKg: number;
  readonly volumeM3PerKg: number;
}

export type StateReason = RangeReason | 'would-be-steam' | 'would-be-water';

/** Pressure (kPa absolute) at which water boils at `temperatureC`, 0 to 373.946 °C. */
export function saturationPressureKPa(temperatureC: number): Answer<number, RangeReason> {
  const bad = outOfRange({ name: 'steam temperature', value: temperatureC, unit: ' °C', ...SATURATION_C });
  return bad ?? answer(saturationPressureMPa(temperatureC + ZERO_CELSIUS_K) * 1000);
}

/** Temperature (°C) at which water boils under `pressureKPa` absolute, 0.611213 to 22,064 kPa. */
export function saturationTemperatureC(pressureKPa: number): Answer<number, RangeReason> {
  const bad = outOfRange({ name: 'absolute pressure', value: pressureKPa, unit: ' kPa', ...SATURATION_KPA });
  return bad ?? answer(saturationTemperatureK(pressureKPa / 1000) - ZERO_CELSIUS_K);
}

/** Properties of saturated water and steam at `temperatureC`, 0 to 350 °C. */
export function saturatedSteam(temperatureC: number): Answer<SaturatedSteam, RangeReason> {
  return saturated.of(temperatureC);
}

/** The same few temperatures of cycles are asked for with every set. */
const saturated = new Remembered(1_000, saturatedAt);

function saturatedAt(temperatureC: number): Answer<SaturatedSteam, RangeReason> {
  const bad = outOfRange({
    name: 'steam temperature',
    value: temperatureC,
    low: SATURATION_C.low,
    high: HIGHEST_PROPERTIES_C,
    unit: ' °C',
  });
  if (bad) return bad;
  const temperatureK = temperatureC + ZERO_CELSIUS_K;
  const pressureMPa = saturationPressureMPa(temperatureK);
  const liquid = waterState(pressureMPa, temperatureK);
  const vapour = steamState(pressureMPa, temperatureK);
  return answer({
    temperatureC,
    pressureKPa: pressureMPa * 1000,
    liquidEnthalpyKJPerKg: liquid.enthalpy,
    vapourEnthalpyKJPerKg: vapour.enthalpy,
    latentHeatKJPerKg: vapour.enthalpy - liquid.enthalpy,
    liquidVolumeM3PerKg: liquid.volume,
    vapourVolumeM3PerKg: vapour.volume,
  });
}

/** The same, by pressure (kPa absolute) instead of temperature; 0.611213 kPa to the saturation pressure at 350 °C. */
export function saturatedSteamAtPressure(pressureKPa: number): Answer<SaturatedSteam, RangeReason> {
  const temperature = saturationTemperatureC(pressureKPa);
  // The two saturation equations meet within a billionth of a degree: a hair below 0 °C is 0 °C.
  return temperature.ok ? saturatedSteam(Math.max(0, temperature.value)) : temperature;
}

/** Liquid water under pressure (region 1): 0 to 350 °C, from saturation to 100 MPa. */
export function pressurizedWater(pressureKPa: number, temperatureC: number): Answer<SteamState, StateReason> {
  const bad = outOfRange(
    { name: 'water temperature', value: temperatureC, low: 0, high: HIGHEST_PROPERTIES_C, unit: ' °C' },
    { name: 'absolute pressure', value: pressureKPa, low: SATURATION_KPA.low, high: 100_000, unit: ' kPa' },
  );
  if (bad) return bad;
  const temperatureK = temperatureC + ZERO_CELSIUS_K;
  if (pressureKPa < saturationPressureMPa(temperatureK) * 1000)
    return refuse('would-be-steam', 'At this temperature and pressure there is steam, not water.');
  return answer(namedState(waterState(pressureKPa / 1000, temperatureK)));
}

/** Steam hotter than saturation, or at it (region 2): 0 to 800 °C, up to the pressure at which it would be water. */
export function superheatedSteam(pressureKPa: number, temperatureC: number): Answer<SteamState, StateReason> {
  const bad = outOfRange(
    { name: 'steam temperature', value: temperatureC, low: 0, high: 800, unit: ' °C' },
    { name: 'absolute pressure', value: pressureKPa, low: 1e-6, high: 100_000, unit: ' kPa' },
  );
  if (bad) return bad;
  const temperatureK = temperatureC + ZERO_CELSIUS_K;
  if (pressureKPa > highestSteamPressureMPa(temperatureK) * 1000)
    return refuse('would-be-water', 'At this temperature and pressure there is water or dense fluid, not steam.');
  return answer(namedState(steamState(pressureKPa / 1000, temperatureK)));
}

function highestSteamPressureMPa(temperatureK: number): number {
  if (temperatureK <= 623.15) return saturationPressureMPa(temperatureK);
  return temperatureK <= 863.15 ? steamBoundaryMPa(temperatureK) : 100;
}

function namedState({ enthalpy, volume }: EnthalpyAndVolume): SteamState {
  return { enthalpyKJPerKg: enthalpy, volumeM3PerKg: volume };
}
