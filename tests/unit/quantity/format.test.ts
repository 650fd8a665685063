import { describe, expect, it } from 'vitest';
import { type Bound, intervalOf } from '../../../server/src/quantity/bound.ts';
import {
  formatBothUnits,
  formatBound,
  formatIn,
  formatInterval,
  shortNumber,
} from '../../../server/src/quantity/format.ts';
import { everything } from '../../../server/src/quantity/interval.ts';
import { parseQuantity } from '../../../server/src/quantity/parse.ts';
import type { Dimension, QuantityValue } from '../../../server/src/quantity/quantity.ts';
import { withinRounding } from '../../../server/src/quantity/rounding.ts';
import type { Unit } from '../../../server/src/quantity/unit-list.ts';
import { findUnit } from '../../../server/src/quantity/units.ts';

function read(text: string, dimension: Dimension): QuantityValue {
  const result = parseQuantity(text, dimension);
  if ('fault' in result) throw new Error(`${text}: ${JSON.stringify(result)}`);
  return result;
}

function unit(text: string, dimension: Dimension): Unit {
  const finding = findUnit(text, dimension);
  if (finding.found !== 'unit') throw new Error(text);
  return finding.unit;
}

const minutes = unit('min', 'time');

describe('quantities in words', () => {
  const both: readonly (readonly [string, Dimension, string])[] = [
    ['132 C', 'temperature', '132 °C (270 °F)'],
    ['270 F', 'temperature', '270 °F (132.2 °C)'],
    ['3 K', 'temperature-difference', '3 K (5.4 °F)'],
    ['27 psig', 'pressure', '27 psig (186 kPa(g))'],
    ['3 bar', 'pressure', '3 bar (44 psi)'],
    ['11.3 kg', 'mass', '11.3 kg (24.9 lb)'],
    ['9 Fr', 'length', '9 Fr (3.0 mm)'],
    ['4 min', 'time', '4 min'],
    ['7.0', 'ph', '7.0'],
  ];
  it.each(both)('%s of %s', (text, dimension, words) => expect(formatBothUnits(read(text, dimension))).toBe(words));

  const bounds: readonly (readonly [Bound, string, string])[] = [
    [{ bound: 'at_least', low: 240 }, 'at least 4 min', 'at least 4 min'],
    [{ bound: 'at_most', high: 240 }, 'at most 4 min', 'at most 4 min'],
    [{ bound: 'between', low: 1200, high: 1800 }, '20-30 min', '20-30 min'],
    [{ bound: 'between', low: 1800, high: 1200 }, '30-20 min', 'none'],
    [{ bound: 'exactly', value: 240 }, 'exactly 4 min', '4 min'],
    [{ bound: 'stated', value: 210 }, '3.5 min (no bound word)', '3.5 min'],
    [{ bound: 'about', value: 1800 }, 'about 30 min', 'any'],
  ];
  it.each(bounds)('%j', (bound, words, allowed) => {
    expect(formatBound(bound, minutes)).toBe(words);
    expect(formatInterval(intervalOf(bound), minutes)).toBe(allowed);
  });
  it('keeps signs apart from ranges', () => {
    expect(formatInterval({ low: -5, high: 5 }, unit('C', 'temperature'))).toBe('-5 to 5 °C');
    expect(formatInterval(everything, minutes)).toBe('any');
    expect(formatIn(-0.001, unit('C', 'temperature'), 1)).toBe('0.0 °C');
  });
  it('rounds as on paper', () => {
    expect([2.675, 1.005, 0.0123, 0.1, -0.001, 0, 29.999, 5e-7].map(shortNumber)).toEqual([
      '2.68',
      '1.01',
      '0.012',
      '0.1',
      '-0.001',
      '0',
      '30',
      '0.0000005',
    ]);
  });
});

describe('two written values of one quantity', () => {
  const pairs: readonly (readonly [string, string, Dimension, boolean])[] = [
    ['270 F', '132 C', 'temperature', true],
    ['273 F', '134 C', 'temperature', true],
    ['270 F', '134 C', 'temperature', false],
    ['340 F', '170 C', 'temperature', false],
    ['3 °C', '37.4 °F', 'temperature-difference', false],
    ['3 °C', '5.4 °F', 'temperature-difference', true],
    ['3 °C', '5 °F', 'temperature-difference', true],
    ['15 °C/min', '27 °F/min', 'temperature-rate', true],
    ['15 °C/min', '59 °F/min', 'temperature-rate', false],
    ['25 lb', '11 kg', 'mass', true],
    ['25 lb', '10 kg', 'mass', false],
    ['1 h', '60 min', 'time', true],
    ['1 h', '90 min', 'time', false],
    ['3 times', '4 times', 'count', false],
    ['3 bar', '43.5 psi', 'pressure', true],
  ];
  it.each(pairs)('%s and %s of %s: %s', (a, b, dimension, agree) => {
    expect(withinRounding(read(a, dimension), read(b, dimension))).toBe(agree);
    expect(withinRounding(read(b, dimension), read(a, dimension))).toBe(agree);
  });
});
