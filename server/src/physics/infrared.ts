import {
  type Answer,
  answer,
  outOfRange,
  type RangeCheck,
  type RangeReason,
  refuse,
  ZERO_CELSIUS_K,
} from './physics.ts';

/*
 * What an infrared thermometer shows on a surface that is not as black as it assumes: part of what it sees is the room, mirrored.
 * Grey body, T to the fourth power in kelvin; the instrument's window of wavelengths is not modelled.
 */

/** `set` is what the thermometer assumes, `true` what the surface has; both above 0, up to 1. */
export interface InfraredAim {
  readonly emissivitySet: number;
  readonly emissivityTrue: number;
  readonly roomC: number;
}

export type InfraredReason = RangeReason | 'no-such-temperature';

/** What the thermometer shows (°C) on a surface that is truly at `surfaceC`. */
export function infraredReadingC(surfaceC: number, aim: InfraredAim): Answer<number, InfraredReason> {
  return exchange(surfaceC, aim, aim.emissivityTrue / aim.emissivitySet);
}

/** True temperature (°C) of a surface on which the thermometer shows `readingC`. */
export function surfaceFromReadingC(readingC: number, aim: InfraredAim): Answer<number, InfraredReason> {
  return exchange(readingC, aim, aim.emissivitySet / aim.emissivityTrue);
}

function exchange(temperatureC: number, aim: InfraredAim, factor: number): Answer<number, InfraredReason> {
  const bad = outOfRange(
    celsius('temperature', temperatureC),
    celsius('room temperature', aim.roomC),
    emissivity('emissivity set on the thermometer', aim.emissivitySet),
    emissivity('emissivity of the surface', aim.emissivityTrue),
  );
  if (bad) return bad;
  const room4 = (aim.roomC + ZERO_CELSIUS_K) ** 4;
  const fourth = factor * ((temperatureC + ZERO_CELSIUS_K) ** 4 - room4) + room4;
  if (fourth <= 0) return refuse('no-such-temperature', 'No surface in this room would give that reading.');
  return answer(fourth ** 0.25 - ZERO_CELSIUS_K);
}

function celsius(name: string, value: number): RangeCheck {
  return { name, value, low: -ZERO_CELSIUS_K, high: 1000, unit: ' °C' };
}

function emissivity(name: string, value: number): RangeCheck {
  return { name, value, low: 0.01, high: 1, unit: '' };
}
