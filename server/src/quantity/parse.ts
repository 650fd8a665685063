import { isAscii } from '../base/ascii.ts';
import { type NumberReading, readNumber } from './number-form.ts';
import type { Dimension, QuantityFault, QuantityValue } from './quantity.ts';
import type { Unit } from './unit-list.ts';
import { findUnit, spellingsOf, toBase, unitsOf } from './units.ts';

/** No quantity is longer. Anything longer is prose, and is refused before it is looked at. */
const longestQuantity = 64;

/**
 * Reads `132 °C`, `4 min`, `7.2` (a pH): ASCII digits, `.` for decimals, an optional sign, then a unit of the dimension. Strict on purpose:
 * everything that two readers could read as two numbers is a fault with a hint, never a guess. The value is always a finite number.
 */
export function parseQuantity(text: string, dimension: Dimension): QuantityValue | QuantityFault {
  const trimmed = text.trim();
  if (trimmed === '') return { fault: 'no-number' };
  if (trimmed.length > longestQuantity) {
    return {
      fault: 'number-form',
      found: `${trimmed.slice(0, 20)}…`,
      hint: 'write one number and its unit here, nothing else',
    };
  }
  const number = readNumber(trimmed);
  if ('fault' in number) return number;
  return withUnit(number, trimmed.slice(number.end).trim(), dimension);
}

export function isFault(result: QuantityValue | QuantityFault): result is QuantityFault {
  return 'fault' in result;
}

function withUnit(number: NumberReading, unitText: string, dimension: Dimension): QuantityValue | QuantityFault {
  if (unitText === '' && !isUnitless(dimension)) return { fault: 'unit-missing' };
  const finding = findUnit(unitText, dimension);
  switch (finding.found) {
    case 'unit':
      return asValue(number, finding.unit);
    case 'ambiguous':
      return { fault: 'unit-ambiguous', unit: unitText, choices: finding.choices };
    case 'other-kind':
      return { fault: 'unit-of-other-kind', unit: unitText, dimension: finding.dimension };
    case 'refused':
      return { fault: 'unit-unknown', unit: unitText, hint: finding.hint };
    case 'unknown':
      if (startsAsRange(unitText) || holdsSecondNumber(unitText)) return { fault: 'range-in-one-value' };
      if (finding.suggestion === undefined) return { fault: 'unit-unknown', unit: unitText };
      return { fault: 'unit-unknown', unit: unitText, suggestion: finding.suggestion };
  }
}

function isUnitless(dimension: Dimension): boolean {
  return unitsOf(dimension).some((unit) => unit.name === '');
}

function asValue(number: NumberReading, unit: Unit): QuantityValue {
  const { amount, decimals } = number;
  const value = { dimension: unit.dimension, value: toBase(amount, unit), amount, unit: unit.name, decimals };
  return unit.reference === undefined ? value : { ...value, reference: unit.reference };
}

const rangeSign = /^(?:-|–|—|−|‐|‑|~|\.\.\.?|…|to\b|bis\b|à|und\b|and\b|or\b)\s?\S?/;

function startsAsRange(unitText: string): boolean {
  return rangeSign.test(unitText);
}

/** `min - 5 min`, `°C to 135 °C`, `min (18 min for prion)`: a second number after a unit, not the `100` of `CFU/100 mL`. */
function holdsSecondNumber(unitText: string): boolean {
  return /[\s(–—…-]\d/.test(unitText);
}

/**
 * The same quantity in our spelling, when `text` (which reads as `value`) has characters or spaces that only look right: `134 ºC`, `134℃`,
 * a no-break space, no space at all. Undefined when the text is fine. Plain keyboard spellings (`132 C`, `4 uS/cm`) are fine.
 */
export function tidySpelling(text: string, value: QuantityValue): string | undefined {
  const number = readNumber(text.trim());
  if ('fault' in number || value.unit === '') return undefined;
  const unitText = text.trim().slice(number.end);
  const unit = unitsOf(value.dimension).find((one) => one.name === value.unit);
  const plain = (unit === undefined ? [] : spellingsOf(unit)).filter((one) => one === value.unit || isAscii(one));
  const spaced = unitText.startsWith(' ') && plain.includes(unitText.slice(1));
  const glued = ['%', '"', '×', 'x'].includes(unitText);
  return text === text.trim() && (spaced || glued) ? undefined : `${number.written} ${value.unit}`;
}
