import { type Answer, answer, outOfRange, type RangeCheck, type RangeReason, refuse } from './physics.ts';

/*
 * F0 and A0: how much a heat process counts for, as time at a reference temperature. They check typing and explain a cycle; being
 * equal in F0 or A0 never permits one cycle in place of another.
 */

/** What an amount of lethality is counted against. It travels with every result: the amounts of two scales never compare. */
export interface LethalityScale {
  readonly name: 'F0' | 'A0';
  readonly referenceTemperatureC: number;
  /** Rise of temperature that makes the effect ten times as fast. */
  readonly zK: number;
  /** Colder than this counts nothing. */
  readonly lowestCountedC?: number;
  /** Unit in which the trade quotes the amount. */
  readonly unit: 'min' | 's';
}

/** A lethality with everything that is needed to read it. `equivalentS` is seconds at the scale's reference temperature. */
export interface Lethality {
  readonly scale: LethalityScale;
  readonly equivalentS: number;
  /** Already taken off every temperature before counting. */
  readonly uncertaintyK: number;
}

/** A steady temperature. `uncertaintyK` is the measuring uncertainty to take off first; 0 for a figure on paper. */
export interface Hold {
  readonly temperatureC: number;
  readonly holdS: number;
  readonly uncertaintyK: number;
}

export type HoldReason = RangeReason | 'too-cold-to-count';

/** A0: seconds at 80 °C, z = 10 K (ISO 15883-1 annex, via excerpt); only 65 °C and above counts (EFHSS question 473). */
export const A0_SCALE: LethalityScale = {
  name: 'A0',
  referenceTemperatureC: 80,
  zK: 10,
  lowestCountedC: 65,
  unit: 's',
};

/** F0 at its usual reference, 121.1 °C; 121.0 and 121.111 °C are also in circulation and differ by up to 2.6 %. */
export const F0_SCALE: LethalityScale = f0Scale(121.1);

/** F0: minutes at `referenceTemperatureC`, z = 10 K. */
export function f0Scale(referenceTemperatureC: number): LethalityScale {
  return { name: 'F0', referenceTemperatureC, zK: 10, unit: 'min' };
}

/** The amount as the trade quotes it: F0 in minutes, A0 in seconds. */
export function amountOf(lethality: Lethality): number {
  return lethality.scale.unit === 'min' ? lethality.equivalentS / 60 : lethality.equivalentS;
}

/** Seconds at the reference temperature that one second at `temperatureC` is worth: 10^((T - Tref)/z), 0 below the lowest counted. */
export function lethalRate(scale: LethalityScale, temperatureC: number): Answer<number, RangeReason> {
  return outOfRange(scaleCheck(scale), temperatureCheck(temperatureC)) ?? answer(bareRate(scale, temperatureC));
}

/** Lethality of a steady temperature. */
export function lethalityOfHold(scale: LethalityScale, hold: Hold): Answer<Lethality, RangeReason> {
  const { temperatureC, holdS, uncertaintyK } = hold;
  const bad = outOfRange(
    scaleCheck(scale),
    temperatureCheck(temperatureC),
    timeCheck(holdS),
    uncertaintyCheck(uncertaintyK),
  );
  const equivalentS = holdS * bareRate(scale, temperatureC - uncertaintyK);
  return bad ?? answer({ scale, equivalentS, uncertaintyK });
}

/** Seconds to hold at `temperatureC` (less `uncertaintyK`) for `amount`, which is in the scale's unit: F0 minutes, A0 seconds. */
export function requiredHoldS(
  scale: LethalityScale,
  amount: number,
  temperatureC: number,
  uncertaintyK: number,
): Answer<number, HoldReason> {
  const bad = outOfRange(
    scaleCheck(scale),
    temperatureCheck(temperatureC),
    timeCheck(amount),
    uncertaintyCheck(uncertaintyK),
  );
  if (bad) return bad;
  const rate = bareRate(scale, temperatureC - uncertaintyK);
  if (rate === 0)
    return refuse('too-cold-to-count', `Below ${scale.lowestCountedC} °C nothing counts towards ${scale.name}.`);
  return answer((amount * (scale.unit === 'min' ? 60 : 1)) / rate);
}

/**
 * F0 minutes that bring `startCount` spores to an expected `endCount`, with `dValueMin` minutes at the reference for each tenfold
 * drop: D x (log10 start - log10 end). First-order kinetics.
 */
export function f0ForSpores(dValueMin: number, startCount: number, endCount: number): Answer<number, RangeReason> {
  const bad = outOfRange(
    { name: 'D value', value: dValueMin, low: 0, high: 1e6, unit: ' min' },
    { name: 'spores at the start', value: startCount, low: 1e-300, high: 1e300, unit: '' },
    { name: 'spores at the end', value: endCount, low: 1e-300, high: startCount, unit: '' },
  );
  return bad ?? answer(dValueMin * (Math.log10(startCount) - Math.log10(endCount)));
}

/** The rate without a range check, for sums over many readings. `temperatureC` must already be within `READABLE_C`. */
export function bareRate(scale: LethalityScale, temperatureC: number): number {
  if (scale.lowestCountedC !== undefined && temperatureC < scale.lowestCountedC) return 0;
  return 10 ** ((temperatureC - scale.referenceTemperatureC) / scale.zK);
}

/** Readings outside this are a fault of the thermometer or of typing. */
export const READABLE_C = { low: -100, high: 400 };

function temperatureCheck(value: number): RangeCheck {
  return { name: 'temperature', value, unit: ' °C', ...READABLE_C };
}

function timeCheck(value: number): RangeCheck {
  return { name: 'time', value, low: 0, high: 1e9, unit: ' s' };
}

export function uncertaintyCheck(value: number): RangeCheck {
  return { name: 'measuring uncertainty', value, low: 0, high: 20, unit: ' K' };
}

export function scaleCheck(scale: LethalityScale): RangeCheck {
  return { name: 'reference temperature', value: scale.referenceTemperatureC, unit: ' °C', ...READABLE_C };
}
