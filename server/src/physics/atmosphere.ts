import { type Answer, answer, outOfRange, type RangeCheck, type RangeReason, refuse } from './physics.ts';
import { saturationPressureKPa, saturationTemperatureC } from './steam.ts';

/*
 * The air around the department: its pressure by altitude, where water boils in it, and what a gauge that is zero in it shows.
 * A sterilizer that works on temperature or on absolute pressure is not affected by altitude; its gauge is.
 */

export type GaugeReason = RangeReason | 'below-vacuum';

/** Saturation temperatures for one pressure whose reference is not stated. */
export interface BothReadings {
  /** °C if the number is absolute; undefined when the steam equations do not reach it. */
  readonly ifAbsoluteC: number | undefined;
  /** °C if the number is above the atmosphere given; undefined likewise. */
  readonly ifGaugeC: number | undefined;
}

/**
 * Mean air pressure (kPa) at `altitudeM` metres above sea level, -500 to 11,000 m.
 * U.S. Standard Atmosphere 1976, lowest layer: p = 101325 (1 - 0.0065 h / 288.15)^5.255876. Weather moves it by a few kPa.
 */
export function standardAtmosphereKPa(altitudeM: number): Answer<number, RangeReason> {
  const bad = outOfRange({ name: 'altitude', value: altitudeM, low: -500, high: 11_000, unit: ' m' });
  return bad ?? answer(101.325 * (1 - (0.0065 * altitudeM) / 288.15) ** 5.255876);
}

/** Where water boils (°C) in the standard atmosphere at `altitudeM`. */
export function boilingPointAtAltitudeC(altitudeM: number): Answer<number, RangeReason> {
  const atmosphere = standardAtmosphereKPa(altitudeM);
  return atmosphere.ok ? saturationTemperatureC(atmosphere.value) : atmosphere;
}

/** Absolute pressure for a gauge reading; a vacuum gauge reading is negative. */
export function absoluteFromGaugeKPa(gaugeKPa: number, atmosphereKPa: number): Answer<number, GaugeReason> {
  const bad = outOfRange(atmosphereCheck(atmosphereKPa), pressureCheck(gaugeKPa, -200));
  if (bad) return bad;
  const absolute = gaugeKPa + atmosphereKPa;
  return absolute < 0 ? refuse('below-vacuum', 'No gauge here can read lower than a full vacuum.') : answer(absolute);
}

/** What a gauge that is zero in `atmosphereKPa` shows for an absolute pressure. */
export function gaugeFromAbsoluteKPa(absoluteKPa: number, atmosphereKPa: number): Answer<number, RangeReason> {
  const bad = outOfRange(atmosphereCheck(atmosphereKPa), pressureCheck(absoluteKPa, 0));
  return bad ?? answer(absoluteKPa - atmosphereKPa);
}

/** Gauge reading (kPa) to expect with saturated steam at `temperatureC` in `atmosphereKPa`. */
export function expectedGaugeKPa(temperatureC: number, atmosphereKPa: number): Answer<number, RangeReason> {
  const steam = saturationPressureKPa(temperatureC);
  return steam.ok ? gaugeFromAbsoluteKPa(steam.value, atmosphereKPa) : steam;
}

/** Temperature (°C) that saturated steam really has when the gauge shows `gaugeKPa` in `atmosphereKPa`. */
export function temperatureForGaugeC(gaugeKPa: number, atmosphereKPa: number): Answer<number, GaugeReason> {
  const absolute = absoluteFromGaugeKPa(gaugeKPa, atmosphereKPa);
  return absolute.ok ? saturationTemperatureC(absolute.value) : absolute;
}

/** Both meanings of a pressure that does not say whether it is absolute or gauge. */
export function readBothWays(pressureKPa: number, atmosphereKPa: number): BothReadings {
  const absolute = saturationTemperatureC(pressureKPa);
  const gauge = temperatureForGaugeC(pressureKPa, atmosphereKPa);
  return { ifAbsoluteC: absolute.ok ? absolute.value : undefined, ifGaugeC: gauge.ok ? gauge.value : undefined };
}

function atmosphereCheck(value: number): RangeCheck {
  return { name: 'air pressure', value, low: 20, high: 120, unit: ' kPa' };
}

function pressureCheck(value: number, low: number): RangeCheck {
  return { name: 'pressure', value, low, high: 100_000, unit: ' kPa' };
}
