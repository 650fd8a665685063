import { assertNever } from '../base/assert.ts';
import type { Bound } from './bound.ts';
import { type Interval, isEmpty } from './interval.ts';
import type { Dimension, QuantityValue } from './quantity.ts';
import type { Unit } from './unit-list.ts';
import { fromBase, unitsOf } from './units.ts';

/** `132 °C`, `0.5 mL`: the number with the digits it was written with, in our spelling of its unit. Reads back as the same value. */
export function formatQuantity(quantity: QuantityValue): string {
  return joinUnit(fixed(quantity.amount, quantity.decimals), quantity.unit);
}

/** A base-unit value in `unit`. Without `decimals`: as many as it needs, two at most (two significant digits below 0.1). */
export function formatIn(value: number, unit: Unit, decimals?: number): string {
  return joinUnit(numberIn(value, unit, decimals), unit.name);
}

/** `at least 4 min`, `at most 140 °C`, `20-30 min`, `4 min`, `any`, `none`. */
export function formatInterval(interval: Interval, unit: Unit, decimals?: number): string {
  if (isEmpty(interval)) return 'none';
  const { low, high } = interval;
  if (low === Number.NEGATIVE_INFINITY && high === Number.POSITIVE_INFINITY) return 'any';
  if (high === Number.POSITIVE_INFINITY) return `at least ${formatIn(low, unit, decimals)}`;
  if (low === Number.NEGATIVE_INFINITY) return `at most ${formatIn(high, unit, decimals)}`;
  return low === high ? formatIn(low, unit, decimals) : formatRange(low, high, unit, decimals);
}

/** A bound in words, with the word the page uses: a bare number says so. */
export function formatBound(bound: Bound, unit: Unit, decimals?: number): string {
  switch (bound.bound) {
    case 'at_least':
      return `at least ${formatIn(bound.low, unit, decimals)}`;
    case 'at_most':
      return `at most ${formatIn(bound.high, unit, decimals)}`;
    case 'between':
      return formatRange(bound.low, bound.high, unit, decimals);
    case 'exactly':
      return `exactly ${formatIn(bound.value, unit, decimals)}`;
    case 'stated':
      return `${formatIn(bound.value, unit, decimals)} (no bound word)`;
    case 'about':
      return `about ${formatIn(bound.value, unit, decimals)}`;
    default:
      return assertNever(bound);
  }
}

function formatRange(low: number, high: number, unit: Unit, decimals?: number): string {
  const from = numberIn(low, unit, decimals);
  const to = numberIn(high, unit, decimals);
  return joinUnit(from.startsWith('-') || to.startsWith('-') ? `${from} to ${to}` : `${from}-${to}`, unit.name);
}

/** `132 °C (270 °F)`, `27 psig (186 kPa(g))`, `3 K (5.4 °F)`: as written, then in the other customary unit when there is one. */
export function formatBothUnits(quantity: QuantityValue): string {
  const written = unitsOf(quantity.dimension).find((unit) => unit.name === quantity.unit);
  const other = written === undefined ? undefined : otherUnit(written);
  if (written === undefined || other === undefined) return formatQuantity(quantity);
  const decimals = decimalsAfter(written, other, quantity.decimals);
  return `${formatQuantity(quantity)} (${formatIn(quantity.value, other, decimals)})`;
}

/** Units that readers of both customs want side by side. A unit with no row here is shown alone. */
const pairs: ReadonlyMap<Dimension, readonly (readonly [string, string])[]> = new Map([
  ['temperature', [['°C', '°F']]],
  ['temperature-difference', [['K', '°F']]],
  ['temperature-rate', [['K/min', '°F/min']]],
  [
    'pressure',
    [
      ['kPa', 'psi'],
      ['kPa(g)', 'psig'],
      ['kPa(a)', 'psia'],
      ['bar', 'psi'],
      ['bar(g)', 'psig'],
      ['bar(a)', 'psia'],
    ],
  ],
  [
    'mass',
    [
      ['kg', 'lb'],
      ['g', 'oz'],
    ],
  ],
  [
    'length',
    [
      ['mm', 'in'],
      ['cm', 'in'],
      ['mm', 'Fr'],
      ['m', 'ft'],
    ],
  ],
  [
    'volume',
    [
      ['mL', 'US fl oz'],
      ['L', 'US gal'],
    ],
  ],
  ['hardness', [['mg/L CaCO3', 'gpg']]],
  ['dose', [['mL/L', 'US fl oz/gal']]],
]);

/** The customary partner of a unit: °F for °C, psi for kPa (same reference), and back. */
export function otherUnit(unit: Unit): Unit | undefined {
  const metric =
    unit.name.startsWith('°C') && unit.dimension !== 'temperature' ? unit.name.replace('°C', 'K') : unit.name;
  for (const [one, two] of pairs.get(unit.dimension) ?? []) {
    if (one !== metric && two !== metric) continue;
    const name = one === metric ? two : one;
    return unitsOf(unit.dimension).find((candidate) => candidate.name === name);
  }
  return undefined;
}

/** Digits that keep the written precision in another unit. Differences and rates keep one more: 3 K is 5.4 °F, not 5. */
function decimalsAfter(from: Unit, to: Unit, decimals: number): number {
  const step = ((from.times / from.per) * to.per) / to.times / 10 ** decimals;
  const kept = Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
  return from.dimension === 'temperature-difference' || from.dimension === 'temperature-rate' ? kept + 1 : kept;
}

function numberIn(value: number, unit: Unit, decimals?: number): string {
  const amount = fromBase(value, unit);
  return decimals === undefined ? shortNumber(amount) : fixed(amount, decimals);
}

/** Two decimals at most, no zeros at the end; below 0.1 two significant digits. */
export function shortNumber(amount: number): string {
  if (Math.abs(amount) >= 0.1 || amount === 0) return trimmed(fixed(amount, 2));
  return trimmed(fixed(amount, Math.min(20, 1 - Math.floor(Math.log10(Math.abs(amount))))));
}

/** Halves round away from zero as on paper, although 2.675 is a little less in binary. Never `-0`. */
function fixed(amount: number, decimals: number): string {
  const text = (amount + Math.sign(amount) * Math.abs(amount) * 1e-13).toFixed(decimals);
  return Number(text) === 0 ? text.replace('-', '') : text;
}

function trimmed(text: string): string {
  return text.includes('.') ? text.replace(/0+$/, '').replace(/\.$/, '') : text;
}

function joinUnit(number: string, unit: string): string {
  return unit === '' ? number : `${number} ${unit}`;
}
