import { GAS_CONSTANT, REGION_1, REGION_2_IDEAL, REGION_2_RESIDUAL, REGION_4, type Term } from './if97-coefficients.ts';

/*
 * The bare equations of IAPWS R7-97(2012), in the release's own units: MPa, K, kJ/kg, m³/kg. No range is checked here; steam.ts
 * does that and speaks °C and kPa. Nothing else should import this file.
 */

/** Enthalpy kJ/kg and volume m³/kg at one state. */
export interface EnthalpyAndVolume {
  readonly enthalpy: number;
  readonly volume: number;
}

/** Saturation pressure in MPa at `temperatureK` (Eq. 30; 273.15 to 647.096 K). */
export function saturationPressureMPa(temperatureK: number): number {
  const n = REGION_4;
  const q = temperatureK + n.n9 / (temperatureK - n.n10);
  const a = q * q + n.n1 * q + n.n2;
  const b = n.n3 * q * q + n.n4 * q + n.n5;
  const c = n.n6 * q * q + n.n7 * q + n.n8;
  return ((2 * c) / (-b + Math.sqrt(b * b - 4 * a * c))) ** 4;
}

/** Saturation temperature in K at `pressureMPa` (Eq. 31; 611.213 Pa to 22.064 MPa). */
export function saturationTemperatureK(pressureMPa: number): number {
  const n = REGION_4;
  const beta = pressureMPa ** 0.25;
  const e = beta * beta + n.n3 * beta + n.n6;
  const f = n.n1 * beta * beta + n.n4 * beta + n.n7;
  const g = n.n2 * beta * beta + n.n5 * beta + n.n8;
  const d = (2 * g) / (-f - Math.sqrt(f * f - 4 * e * g));
  const sum = n.n10 + d;
  return (sum - Math.sqrt(sum * sum - 4 * (n.n9 + n.n10 * d))) / 2;
}

/** Water below or at saturation (region 1, Eq. 7). */
export function waterState(pressureMPa: number, temperatureK: number): EnthalpyAndVolume {
  const pi = pressureMPa / 16.53;
  const tau = 1386 / temperatureK;
  let byTau = 0;
  let byPi = 0;
  for (const { I, J, n } of REGION_1) {
    byTau += n * J * (7.1 - pi) ** I * (tau - 1.222) ** (J - 1);
    byPi -= n * I * (7.1 - pi) ** (I - 1) * (tau - 1.222) ** J;
  }
  return {
    enthalpy: GAS_CONSTANT * temperatureK * tau * byTau,
    volume: (GAS_CONSTANT * temperatureK * pi * byPi) / (pressureMPa * 1000),
  };
}

/** Steam at or above saturation (region 2, Eq. 15). */
export function steamState(pressureMPa: number, temperatureK: number): EnthalpyAndVolume {
  const pi = pressureMPa;
  const tau = 540 / temperatureK;
  const ideal = sumOf(REGION_2_IDEAL, ({ J, n }) => n * J * tau ** (J - 1));
  const residualByTau = sumOf(REGION_2_RESIDUAL, ({ I, J, n }) => n * J * pi ** I * (tau - 0.5) ** (J - 1));
  const residualByPi = sumOf(REGION_2_RESIDUAL, ({ I, J, n }) => n * I * pi ** (I - 1) * (tau - 0.5) ** J);
  return {
    enthalpy: GAS_CONSTANT * temperatureK * tau * (ideal + residualByTau),
    volume: (GAS_CONSTANT * temperatureK * pi * (1 / pi + residualByPi)) / (pressureMPa * 1000),
  };
}

/**
 * Where region 2 ends above 350 °C, in MPa at `temperatureK` (623.15 to 863.15 K; the release's boundary equation, its three
 * coefficients from memory: a test checks that it meets the saturation line at 623.15 K).
 */
export function steamBoundaryMPa(temperatureK: number): number {
  return 348.05185628969 - 1.1671859879975 * temperatureK + 0.0010192970039326 * temperatureK * temperatureK;
}

function sumOf(terms: readonly Term[], one: (term: Term) => number): number {
  let sum = 0;
  for (const term of terms) sum += one(term);
  return sum;
}
