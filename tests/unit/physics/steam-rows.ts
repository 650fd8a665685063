import { expectedGaugeKPa, temperatureForGaugeC } from '../../../server/src/physics/atmosphere.ts';
import {
  pressurizedWater,
  saturatedSteam,
  saturatedSteamAtPressure,
  saturationPressureKPa,
  saturationTemperatureC,
  superheatedSteam,
} from '../../../server/src/physics/steam.ts';
import {
  calorimetricDryness,
  drynessForSuperheat,
  splitByDryness,
  throttle,
  wetSteamEnthalpyKJPerKg,
} from '../../../server/src/physics/steam-quality.ts';
import { answerOf, type CheckRow, celsiusFromFahrenheit, input, inUnitOf, KPA_PER_PSI } from './handbook.ts';

/** How each quantity of the steam and dryness families is computed. */
export const STEAM_ROWS: Readonly<Record<string, (row: CheckRow) => number>> = {
  'saturation pressure (region 4 forward)': psat,
  'saturation temperature (region 4 backward)': (row) =>
    answerOf(saturationTemperatureC(input(row, 'p') * 1000)) + 273.15,
  'region 1 specific enthalpy': (row) => waterOf(row).enthalpyKJPerKg,
  'region 1 specific volume': (row) => waterOf(row).volumeM3PerKg,
  'region 2 specific enthalpy': (row) => steamOf(row).enthalpyKJPerKg,
  'region 2 specific volume': (row) => steamOf(row).volumeM3PerKg,
  'psat at temperature': psat,
  'psat, older textbook saturated-water table (independent of IF97)': psat,
  'latent heat hfg = hg - hf': (row) => saturated(row).latentHeatKJPerKg,
  'hf saturated liquid (region 1 at psat)': (row) => saturated(row).liquidEnthalpyKJPerKg,
  'hf, older textbook saturated-water table': (row) => saturated(row).liquidEnthalpyKJPerKg,
  'hg saturated vapour (region 2 at psat)': (row) => saturated(row).vapourEnthalpyKJPerKg,
  'vg saturated vapour (region 2 at psat)': (row) => saturated(row).vapourVolumeM3PerKg,
  'Clausius-Clapeyron consistency T*(vg-vf)*dpsat/dT divided by (hg-hf)': (row) => clausiusClapeyron(temperatureC(row)),
  'hfg at 1 atm': (row) => answerOf(saturatedSteamAtPressure(input(row, 'p'))).latentHeatKJPerKg,
  'gauge pressure for saturated steam (rounded rule table)': (row) =>
    inUnitOf(row, answerOf(expectedGaugeKPa(temperatureC(row), 101.325))),
  'Tsat at gauge pressure (sea level)': (row) =>
    answerOf(temperatureForGaugeC(input(row, 'p') * 100, input(row, 'patm'))),
  'Tsat from gauge pressure': (row) =>
    answerOf(temperatureForGaugeC(Number.parseFloat(row.inputs) * KPA_PER_PSI, input(row, 'patm'))),
  'Tsat if the number is GAUGE': (row) =>
    answerOf(temperatureForGaugeC(Number.parseFloat(row.inputs) * 100, input(row, 'patm'))),
  'Tsat if the number is ABSOLUTE': (row) => answerOf(saturationTemperatureC(Number.parseFloat(row.inputs) * 100)),
  'dryness split, vapour part': (row) => answerOf(splitByDryness(input(row, 'm'), input(row, 'x'))).vapour,
  'dryness split, liquid part': (row) => answerOf(splitByDryness(input(row, 'm'), input(row, 'x'))).water,
  'wet-steam enthalpy h = hf + x*hfg': (row) => answerOf(wetSteamEnthalpyKJPerKg(temperatureC(row), input(row, 'x'))),
  'calorimetric dryness value D': dryness,
  'superheat after throttling to 101.325 kPa (constant enthalpy)': (row) => {
    const after = answerOf(throttle(input(row, 'p1'), input(row, 'x'), 101.325));
    return after.state === 'superheated' ? after.superheatK : Number.NaN;
  },
  'dryness that gives exactly 25 K superheat when throttled from supply to 1 atm': (row) =>
    answerOf(drynessForSuperheat(input(row, 'p1'), 25, 101.325)),
};

/** T (vg - vf) dp/dT over (hg - hf), the slope taken from the saturation line over a thousandth of a kelvin either way. */
export function clausiusClapeyron(celsius: number): number {
  const step = 1e-3;
  const slope =
    (answerOf(saturationPressureKPa(celsius + step)) - answerOf(saturationPressureKPa(celsius - step))) / (2 * step);
  const steam = answerOf(saturatedSteam(celsius));
  const volume = steam.vapourVolumeM3PerKg - steam.liquidVolumeM3PerKg;
  return ((celsius + 273.15) * volume * slope) / steam.latentHeatKJPerKg;
}

function psat(row: CheckRow): number {
  return inUnitOf(row, answerOf(saturationPressureKPa(temperatureC(row))));
}

function saturated(row: CheckRow) {
  return answerOf(saturatedSteam(temperatureC(row)));
}

function waterOf(row: CheckRow) {
  return answerOf(pressurizedWater(input(row, 'p') * 1000, temperatureC(row)));
}

function steamOf(row: CheckRow) {
  return answerOf(superheatedSteam(input(row, 'p') * 1000, temperatureC(row)));
}

function temperatureC(row: CheckRow): number {
  const value = input(row, 'T');
  const part = row.inputs.split(';').find((text) => text.startsWith('T=')) ?? '';
  if (part.endsWith(' K')) return value - 273.15;
  return part.endsWith('degF') ? celsiusFromFahrenheit(value) : value;
}

function dryness(row: CheckRow): number {
  const reading = {
    startTemperatureC: input(row, 'T0'),
    endTemperatureC: input(row, 'T1'),
    steamTemperatureC: input(row, 'Ts'),
    waterKg: input(row, 'Mw'),
    condensateKg: input(row, 'Mc'),
    apparatusKJPerK: input(row, 'C_app'),
  };
  const byTable = answerOf(calorimetricDryness({ ...reading, latentHeatKJPerKg: input(row, 'L') }));
  const byEquations = answerOf(calorimetricDryness(reading));
  return Math.abs(byTable - byEquations) < 1e-4 ? byTable : Number.NaN;
}
