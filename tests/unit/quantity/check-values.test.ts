import { describe, expect, it } from 'vitest';
import { formatInterval } from '../../../server/src/quantity/format.ts';
import { gs1Field } from '../../../server/src/quantity/identifiers/gs1-fields.ts';
import { readGs1Udi } from '../../../server/src/quantity/identifiers/gs1-udi.ts';
import { gs1CheckDigit, readGtin } from '../../../server/src/quantity/identifiers/gtin.ts';
import { readHibc } from '../../../server/src/quantity/identifiers/hibc.ts';
import { hibcCheckCharacter } from '../../../server/src/quantity/identifiers/hibc-check.ts';
import { contains, type Interval } from '../../../server/src/quantity/interval.ts';
import { needleOutsideDiameter } from '../../../server/src/quantity/needle-gauge.ts';
import { isFault, parseQuantity } from '../../../server/src/quantity/parse.ts';
import type { Dimension } from '../../../server/src/quantity/quantity.ts';
import { findUnit, fromBase, unitsOf } from '../../../server/src/quantity/units.ts';
import { allowedDeviation, type CheckValue, checkValues } from './check-value-rows.ts';

type Check = (row: CheckValue, before: CheckValue | undefined) => void;

/** Reads the input as a quantity of the dimension and prints it in the unit of the answer. */
function converts(dimension: Dimension): Check {
  return (row) => {
    const read = parseQuantity(row.inputs, dimension);
    const target = findUnit(row.unit.replace(' interval', ''), dimension);
    if (isFault(read) || target.found !== 'unit') throw new Error(`not read: ${JSON.stringify({ read, target })}`);
    expect(Math.abs(fromBase(read.value, target.unit) - Number(row.expected))).toBeLessThanOrEqual(
      allowedDeviation(row),
    );
  };
}

const hardness = unitsOf('hardness')[0];

function hardnessClass(row: CheckValue): Interval {
  const [low = '', high] = row.expected.replace('>', '').split('-');
  return { low: Number(low), high: high === undefined ? Number.POSITIVE_INFINITY : Number(high) };
}

/** A published class is an interval that joins the class before it and reads back as printed. */
const checkHardnessClass: Check = (row, before) => {
  const own = hardnessClass(row);
  if (before?.quantity === row.quantity) expect(hardnessClass(before).high).toBe(own.low);
  expect(contains(own, own.low + 1)).toBe(true);
  expect(contains(own, own.low - 1)).toBe(false);
  if (hardness === undefined) throw new Error('hardness has no unit');
  const printed = row.expected.startsWith('>') ? row.expected.replace('>', 'at least ') : row.expected;
  expect(formatInterval(own, hardness)).toBe(`${printed} ${row.unit}`);
};

const sampleYear = 2017; // year of the quoted sample's document

const checks: Readonly<Record<string, Check>> = {
  bar: converts('pressure'),
  psi: converts('pressure'),
  'inch of mercury (0 degC conventional)': converts('pressure'),
  mmHg: converts('pressure'),
  'kgf/cm2': converts('pressure'),
  'Fahrenheit to Celsius (absolute)': converts('temperature'),
  'Celsius to Fahrenheit (absolute)': converts('temperature'),
  'temperature INTERVAL': converts('temperature-difference'),
  'temperature INTERVAL (trap: seen printed as 59)': converts('temperature-rate'),
  'French gauge to mm': converts('length'),
  'needle gauge outer diameter': (row) => {
    const diameter = needleOutsideDiameter(Number.parseInt(row.inputs, 10)) ?? Number.NaN;
    expect(Math.abs(diameter - Number(row.expected))).toBeLessThanOrEqual(allowedDeviation(row));
    expect(parseQuantity(row.inputs, 'length')).toMatchObject({
      fault: 'unit-unknown',
      hint: expect.stringContaining('needle gauge'),
    });
  },
  'grain per US gallon': converts('hardness'),
  'degree Clark': converts('hardness'),
  'hardness molar': converts('hardness'),
  'USGS hardness class': checkHardnessClass,
  'GS1 mod-10 check digit': (row) => expect(gs1CheckDigit(row.inputs)).toBe(Number(row.expected)),
  'GS1 bad check digit must be rejected': (row) =>
    expect(readGtin(row.inputs)).toMatchObject({ fault: 'check-character' }),
  'GS1 UDI sample parses to DI': (row) =>
    expect(readGs1Udi(row.inputs, sampleYear)).toMatchObject({ di: row.expected }),
  'GS1 UDI sample parses to expiry': (row, before) =>
    expect(readGs1Udi(before?.inputs ?? '', sampleYear)).toMatchObject({ expires: { date: row.expected } }),
  'HIBC mod-43 check character': (row) => {
    expect(hibcCheckCharacter(row.inputs)).toBe(row.expected);
    expect(readHibc(row.inputs + row.expected, sampleYear)).toMatchObject({ agency: 'HIBCC' });
  },
  'HIBC string in the FDA/HL7 sample ends in C but mod-43 gives': (row) => {
    expect(hibcCheckCharacter(row.inputs)).toBe(row.expected);
    expect(readHibc(`${row.inputs}C`, sampleYear)).toMatchObject({ fault: 'check-character', expected: row.expected });
  },
  'GS1 data field length without the AI': (row) => {
    const field = gs1Field(row.inputs.slice(1, -1));
    expect(field?.longest).toBe(Number(row.expected.replace('<=', '')));
    expect(field?.shortest).toBe(row.expected.startsWith('<=') ? 1 : field?.longest);
  },
};

describe.each(['UNIT-', 'ID-'])('every published check value of %s', (family) => {
  const rows = checkValues(family);
  it('finds rows', () => expect(rows.length).toBeGreaterThan(10));
  for (const [index, row] of rows.entries()) {
    it(`${row.id} ${row.quantity}: ${row.inputs} [${row.source}]`, () => {
      const check = checks[row.quantity];
      if (check === undefined) throw new Error(`no check for “${row.quantity}”`);
      check(row, rows[index - 1]);
    });
  }
});
