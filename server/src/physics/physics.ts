/**
 * physics/: what steam, water, heat and air do, as pure functions of plain numbers whose unit stands in their name.
 * It explains and checks typing; it never grants permission for anything. It must not know rule files, kinds, sites,
 * limits of the trade, dates or places: numbers in, numbers and reasons out. A number it cannot work with gives a refusal with
 * a reason; nothing here throws for a bad value.
 */

/** Why no number was given. `message` is a plain sentence for the reader; `reason` is for the caller to choose by. */
export interface Refusal<Reason extends string> {
  readonly ok: false;
  readonly reason: Reason;
  readonly message: string;
}

/** Either the value, or a refusal with one of a closed list of reasons. */
export type Answer<Value, Reason extends string> = { readonly ok: true; readonly value: Value } | Refusal<Reason>;

/** The refusals that any number can meet. */
export type RangeReason = 'not-a-number' | 'below-range' | 'above-range';

export function answer<Value>(value: Value): { readonly ok: true; readonly value: Value } {
  return { ok: true, value };
}

export function refuse<Reason extends string>(reason: Reason, message: string): Refusal<Reason> {
  return { ok: false, reason, message };
}

/** A number that must lie from `low` to `high`, both counted in. `name` and `unit` are for the sentence only. */
export interface RangeCheck {
  readonly name: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly unit: string;
}

/** The first check that does not hold, as a refusal; undefined when all hold. */
export function outOfRange(...checks: readonly RangeCheck[]): Refusal<RangeReason> | undefined {
  for (const { name, value, low, high, unit } of checks) {
    if (!Number.isFinite(value)) return refuse('not-a-number', `${name} is not a number that can be calculated with.`);
    const shown = `${name} ${shortNumber(value)}${unit}`;
    if (value < low)
      return refuse('below-range', `${shown} is below ${shortNumber(low)}${unit}, where this calculation begins.`);
    if (value > high)
      return refuse('above-range', `${shown} is above ${shortNumber(high)}${unit}, where this calculation ends.`);
  }
  return undefined;
}

/** At most six significant digits, without a tail of zeros. */
export function shortNumber(value: number): string {
  return String(Number(value.toPrecision(6)));
}

/** 0 °C in kelvin, exact by definition. */
export const ZERO_CELSIUS_K = 273.15;
