/**
 * quantity/: units (a closed list), quantities, bounds and intervals, and reading them out of prose.
 * It must not know YAML, schemas, kinds or rules: text and numbers in, values and problems out.
 */

/**
 * What kind of thing a number measures. One base unit each, in brackets: all comparison is done in it.
 * A level of temperature and a difference of temperatures are different dimensions: 3 K is 5.4 °F, never 37.4 °F.
 */
export type Dimension =
  | 'temperature' // [°C]
  | 'temperature-difference' // [K]
  | 'time' // [s]
  | 'pressure' // [kPa], reference kept apart
  | 'length' // [mm]; French gauge and inches are lengths
  | 'volume' // [mL]
  | 'mass' // [kg]
  | 'frequency' // [kHz]
  | 'conductivity' // [µS/cm]
  | 'hardness' // [mg/L CaCO3]
  | 'concentration' // [mg/L]
  | 'dose' // [mL/L]
  | 'bacteria' // [CFU/mL]
  | 'endotoxin' // [EU/mL]
  | 'percentage' // [%]
  | 'count' // [1]: times, cycles, uses, strokes, drops, pieces
  | 'ph' // [1], no unit
  | 'a0' // [s], written without a unit
  | 'magnification' // [x]
  | 'temperature-rate' // [K/min]
  | 'flow' // [mL/min]
  | 'energy' // [kJ]
  | 'illuminance' // [lx]
  | 'number'; // [1], a bare ratio such as dryness

/** Pressure is against vacuum or against the room; the page says which, or it is a question. */
export type PressureReference = 'absolute' | 'gauge' | 'unstated';

/** A number with its unit, as read from one piece of source text. */
export interface QuantityValue {
  readonly dimension: Dimension;
  /** In the dimension's base unit. */
  readonly value: number;
  /** The number as written, in `unit`. */
  readonly amount: number;
  /** Canonical spelling of the unit written (`°C`, `min`, `mL`, ... or '' where the dimension has none). */
  readonly unit: string;
  /** Digits written after the decimal sign: rounding of a converted pair is judged by it. */
  readonly decimals: number;
  readonly reference?: PressureReference | undefined;
}

/** Why a piece of text is not a usable quantity. `hint` says in plain words what to write instead; it never invents a number. */
export type QuantityFault =
  | { readonly fault: 'no-number' }
  | { readonly fault: 'unit-missing' }
  | { readonly fault: 'unit-unknown'; readonly unit: string; readonly suggestion?: string; readonly hint?: string }
  | { readonly fault: 'unit-of-other-kind'; readonly unit: string; readonly dimension: string }
  | { readonly fault: 'unit-ambiguous'; readonly unit: string; readonly choices: readonly string[] }
  | { readonly fault: 'range-in-one-value' }
  | { readonly fault: 'digits-not-ascii'; readonly found: string }
  | { readonly fault: 'number-form'; readonly found: string; readonly hint: string };
