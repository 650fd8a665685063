import type { Site } from './rule-files.ts';

/** A number as written with the unit behind it, if any. */
export interface Written {
  readonly number: string;
  readonly rest: string;
}

/** The number of a value such as `4 min`; undefined of anything else, of dates, ids and plain names. */
export function writtenNumber({ value }: Site): Written | undefined {
  if (value.node !== 'scalar') return undefined;
  const [, number, rest] = /^(\d{1,6}(?:\.\d{1,4})?)( ?[A-Za-z°%µ/][^\d]{0,12})?$/.exec(value.text) ?? [];
  return number === undefined ? undefined : { number, rest: rest ?? '' };
}

/** A digit beside it on the keyboard, in the first place that stays a number of the same length. */
export function digitSlips(number: string): readonly string[] {
  const slips: string[] = [];
  for (const [index, digit] of [...number].entries()) {
    if (digit === '.') continue;
    for (const other of [Number(digit) - 1, Number(digit) + 1]) {
      if (other < 0 || other > 9 || (index === 0 && other === 0)) continue;
      slips.push(`${number.slice(0, index)}${other}${number.slice(index + 1)}`);
    }
  }
  return slips;
}

export function transpositions(number: string): readonly string[] {
  const swapped: string[] = [];
  for (let index = 0; index + 1 < number.length; index++) {
    const [a = '', b = ''] = number.slice(index, index + 2);
    if (a === b || a === '.' || b === '.' || (index === 0 && b === '0')) continue;
    swapped.push(`${number.slice(0, index)}${b}${a}${number.slice(index + 2)}`);
  }
  return swapped;
}

export function decimalSlips(number: string): readonly string[] {
  if (number.includes('.')) return [number.replace('.', '').replace(/^0+(?=\d)/, '')];
  return number.length > 1 && !number.startsWith('0')
    ? [`${number.slice(0, -1)}.${number.slice(-1)}`, `${number}0`]
    : [`${number}0`];
}

/** Units that people take for one another: the same sort of quantity, another size. */
const mistaken: Readonly<Record<string, readonly string[]>> = {
  s: ['min'],
  min: ['s', 'h'],
  h: ['min', 'd'],
  d: ['h'],
  C: ['F', 'K'],
  K: ['C'],
  mL: ['L'],
  L: ['mL'],
  'mL/L': ['L/L'],
  mm: ['cm'],
  cm: ['mm'],
  m: ['mm'],
  bar: ['kPa', 'psi'],
  kPa: ['bar', 'MPa'],
  kHz: ['Hz', 'MHz'],
  kg: ['g', 'lb'],
  g: ['kg'],
  'uS/cm': ['mS/cm'],
};

export function otherUnits({ rest }: Written): readonly string[] {
  return mistaken[rest.trim()] ?? [];
}
