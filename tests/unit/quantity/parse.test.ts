import { describe, expect, it } from 'vitest';
import { parseQuantity, tidySpelling } from '../../../server/src/quantity/parse.ts';
import type { Dimension, QuantityFault } from '../../../server/src/quantity/quantity.ts';

const values: readonly (readonly [string, Dimension, object])[] = [
  ['132 C', 'temperature', { value: 132, unit: '°C', amount: 132, decimals: 0 }],
  ['269.6 °F', 'temperature', { value: 132, unit: '°F', amount: 269.6, decimals: 1 }],
  ['405.15 K', 'temperature', { value: 132 }],
  ['3 °C', 'temperature-difference', { value: 3, unit: '°C' }],
  ['5.4 F', 'temperature-difference', { value: 3 }],
  ['-5 °C', 'temperature', { value: -5 }],
  ['+5 K', 'temperature-difference', { value: 5 }],
  ['4 min', 'time', { value: 240, unit: 'min' }],
  ['4min', 'time', { value: 240 }],
  ['4 Minutes', 'time', { value: 240 }],
  ['90 d', 'time', { value: 7_776_000 }],
  ['0.25 h', 'time', { value: 900, decimals: 2 }],
  ['3 bar', 'pressure', { value: 300, reference: 'unstated' }],
  ['2 bar g', 'pressure', { value: 200, unit: 'bar(g)', reference: 'gauge' }],
  ['2 bar abs', 'pressure', { value: 200, unit: 'bar(a)', reference: 'absolute' }],
  ['14.7 psia', 'pressure', { unit: 'psia', reference: 'absolute' }],
  ['9 Fr', 'length', { value: 3 }],
  ['9 F', 'length', { value: 3, unit: 'Fr' }],
  ['0.5"', 'length', { value: 12.7, unit: 'in' }],
  ['1610 m', 'length', { value: 1_610_000 }],
  ['5 μm', 'length', { value: 0.005, unit: 'µm' }],
  ['50 cc', 'volume', { value: 50, unit: 'mL' }],
  ['4 uS/cm', 'conductivity', { value: 4, unit: 'µS/cm' }],
  ['10 mg/L', 'hardness', { value: 10, unit: 'mg/L CaCO3' }],
  ['10 ppm', 'concentration', { value: 10, unit: 'mg/L' }],
  ['10 cfu/100 mL', 'bacteria', { value: 0.1 }],
  ['0.5 % v/v', 'dose', { value: 5 }],
  ['3 times', 'count', { value: 3, unit: 'times' }],
  ['100 cycles', 'count', { value: 100, unit: 'cycles' }],
  ['3 ×', 'count', { unit: 'times' }],
  ['7.2', 'ph', { value: 7.2, unit: '', decimals: 1 }],
  ['3000', 'a0', { value: 3000 }],
  ['0.97', 'number', { value: 0.97 }],
  ['0.125 in', 'length', { decimals: 3 }],
];

const faults: readonly (readonly [string, Dimension, QuantityFault['fault']])[] = [
  ['', 'time', 'no-number'],
  ['minutes', 'time', 'no-number'],
  ['5', 'time', 'unit-missing'],
  ['5', 'count', 'unit-missing'],
  ['5 minuts', 'time', 'unit-unknown'],
  ['5 Minuten', 'time', 'unit-unknown'],
  ['5 furlongs', 'length', 'unit-unknown'],
  ['18 G', 'length', 'unit-unknown'],
  ['18 MΩ·cm', 'conductivity', 'unit-unknown'],
  ['5 min', 'temperature', 'unit-of-other-kind'],
  ['5 s', 'a0', 'unit-of-other-kind'],
  ['5 m', 'time', 'unit-ambiguous'],
  ['134°', 'temperature', 'unit-ambiguous'],
  ['1 gal', 'volume', 'unit-ambiguous'],
  ['1 %', 'dose', 'unit-ambiguous'],
  // separators and decimal comma
  ['1_000 mL', 'volume', 'number-form'],
  ['1__0 mL', 'volume', 'number-form'],
  ['0_7 mL', 'volume', 'number-form'],
  ['1,5 min', 'time', 'number-form'],
  ['1,500 mL', 'volume', 'number-form'],
  ['1.500 mL', 'volume', 'number-form'],
  ["1'500 mL", 'volume', 'number-form'],
  ['1 500 mL', 'volume', 'number-form'],
  ['1\u00a0500 mL', 'volume', 'number-form'],
  ['1\u202f500 mL', 'volume', 'number-form'],
  // never valid
  ['.inf', 'number', 'number-form'],
  ['-.inf', 'number', 'number-form'],
  ['.NaN', 'number', 'number-form'],
  ['NaN', 'number', 'number-form'],
  ['-0', 'number', 'number-form'],
  ['-0.0 K', 'temperature-difference', 'number-form'],
  ['1.', 'number', 'number-form'],
  ['.5 mL', 'volume', 'number-form'],
  ['007 min', 'time', 'number-form'],
  ['0x1F', 'count', 'number-form'],
  ['0o17', 'count', 'number-form'],
  ['0b101', 'count', 'number-form'],
  ['12e03 mL', 'volume', 'number-form'],
  ['1e3 mL', 'volume', 'number-form'],
  ['5E2', 'a0', 'number-form'],
  ['9007199254740993', 'number', 'number-form'],
  ['12:30', 'time', 'number-form'],
  ['1/2 h', 'time', 'number-form'],
  ['10^3 mL', 'volume', 'number-form'],
  // signs that are not minus
  ['\u22125 °C', 'temperature', 'number-form'],
  ['\u20135 °C', 'temperature', 'number-form'],
  // ranges
  ['3-5 min', 'time', 'range-in-one-value'],
  ['3 – 5 min', 'time', 'range-in-one-value'],
  ['3…5 min', 'time', 'range-in-one-value'],
  ['3 to 5 min', 'time', 'range-in-one-value'],
  ['3..5 min', 'time', 'range-in-one-value'],
  ['3 min to 5 min', 'time', 'range-in-one-value'],
  ['132 °C - 135 °C', 'temperature', 'range-in-one-value'],
  ['between 3 and 5 min', 'time', 'range-in-one-value'],
  // other scripts
  ['１２ min', 'time', 'digits-not-ascii'],
  ['٣ min', 'time', 'digits-not-ascii'],
  ['½ h', 'time', 'digits-not-ascii'],
  ['1½ h', 'time', 'digits-not-ascii'],
  ['1 ½ h', 'time', 'digits-not-ascii'],
  ['10² mm', 'length', 'digits-not-ascii'],
  // bound words
  ['min 4 min', 'time', 'number-form'],
  ['≤ 5 min', 'time', 'number-form'],
  ['±3 K', 'temperature-difference', 'number-form'],
  ['pH 7', 'ph', 'number-form'],
  ['9'.repeat(70), 'number', 'number-form'],
];

describe('a quantity', () => {
  it.each(values)('reads %j as %s', (text, dimension, expected) => {
    expect(parseQuantity(text, dimension)).toMatchObject({ dimension, ...expected });
  });
  it.each(faults)('refuses %j as %s: %s', (text, dimension, fault) => {
    expect(parseQuantity(text, dimension)).toMatchObject({ fault });
  });
  it('suggests the unit that was meant', () => {
    expect(parseQuantity('5 minuts', 'time')).toEqual({ fault: 'unit-unknown', unit: 'minuts', suggestion: 'min' });
    expect(parseQuantity('5 Minuten', 'time')).toEqual({ fault: 'unit-unknown', unit: 'Minuten', suggestion: 'min' });
  });
  it('gives every form fault a hint', () => {
    for (const [text, dimension] of faults) {
      const read = parseQuantity(text, dimension);
      if ('fault' in read && read.fault === 'number-form') expect(read.hint.length).toBeGreaterThan(5);
    }
  });
});

describe('[S25] one spelling', () => {
  const cases: readonly (readonly [string, Dimension, string | undefined])[] = [
    ['134 °C', 'temperature', undefined],
    ['134 C', 'temperature', undefined],
    ['4 uS/cm', 'conductivity', undefined],
    ['5%', 'percentage', undefined],
    ['7.2', 'ph', undefined],
    ['5 % ', 'percentage', '5 %'],
    ['134 ℃', 'temperature', '134 °C'],
    ['134 ºC', 'temperature', '134 °C'],
    ['134°C', 'temperature', '134 °C'],
    ['134\u00a0°C', 'temperature', '134 °C'],
    ['134.0  °C', 'temperature', '134.0 °C'],
  ];
  it.each(cases)('%j of %s becomes %j', (text, dimension, tidy) => {
    const read = parseQuantity(text, dimension);
    if ('fault' in read) throw new Error(JSON.stringify(read));
    expect(tidySpelling(text, read)).toBe(tidy);
  });
});
