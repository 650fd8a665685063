import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gs1CheckDigit, readGtin } from '../../../server/src/quantity/identifiers/gtin.ts';
import { hibcCheckCharacter } from '../../../server/src/quantity/identifiers/hibc-check.ts';
import { dateOf, dateOfDayInYear, fullYear } from '../../../server/src/quantity/identifiers/identifier-date.ts';
import { readUdi } from '../../../server/src/quantity/identifiers/udi.ts';

// Samples: FDA UDI formats v1.3 and the HIBC examples of tests/handbook/check-values.csv.
const whole = {
  agency: 'GS1',
  di: '51022222233336',
  lot: 'A213B1',
  serial: '1234',
  made: { date: '2014-12-31', dayGiven: true },
  expires: { date: '2015-07-07', dayGiven: true },
};

describe('device identifiers', () => {
  it.each([
    '(01)51022222233336(11)141231(17)150707(10)A213B1(21)1234',
    ' (01) 51022222233336 (11)141231 (17)150707 (10)A213B1 (21)1234',
    '0151022222233336111412311715070710A213B1\u001d211234',
    ']d20151022222233336111412311715070710A213B1<GS>211234',
    '<FNC1>0151022222233336111412311715070710A213B1<FNC1>211234',
  ])('reads GS1 %s', (text) => expect(readUdi(text, 2025)).toMatchObject(whole));

  it('reads HIBC primary and secondary codes', () => {
    expect(readUdi('+A123BJC5D6E71G', 2025)).toEqual({
      agency: 'HIBCC',
      di: '+A123BJC5D6E71',
      primary: { labeler: 'A123', product: 'BJC5D6E7', unitOfMeasure: 1 },
    });
    const joined = '+A123ABCDEFGHI1234567891/$$420020216LOT123456789012345/SXYZ456789012345678/16D20130202$';
    expect(readUdi(joined, 2025)).toMatchObject({
      lot: 'LOT123456789012345',
      serial: 'XYZ456789012345678',
      expires: { date: '2020-02-02' },
      made: { date: '2013-02-02' },
    });
    expect(readUdi('*+A123BJC5D6E71/$$52001510X3C*', 2025)).toMatchObject({
      lot: '10X3',
      expires: { date: '2020-01-15' },
    });
  });

  const secondaries: readonly (readonly [string, object])[] = [
    ['$$0926LOT1', { lot: 'LOT1', expires: { date: '2026-09-30', dayGiven: false } }],
    ['$$2091526LOT1', { lot: 'LOT1', expires: { date: '2026-09-15', dayGiven: true } }],
    ['$$3260915LOT1', { expires: { date: '2026-09-15' } }],
    ['$$6260010512LOT1', { expires: { date: '2026-01-01' }, lot: '12LOT1' }],
    ['$$7LOT1', { lot: 'LOT1' }],
    ['$$8240926LOT1', { quantity: 24, lot: 'LOT1', expires: { date: '2026-09-30' } }],
    ['$$+7SER1', { serial: 'SER1' }],
    ['$+SER1', { serial: 'SER1' }],
    ['$LOT1', { lot: 'LOT1' }],
    ['26032LOT1', { lot: 'LOT1', expires: { date: '2026-02-01' } }],
  ];
  it.each(secondaries)('reads the secondary code %s alone', (text, expected) => {
    const data = `+${text}G`;
    expect(readUdi(data + (hibcCheckCharacter(data) ?? ''), 2025)).toMatchObject({
      agency: 'HIBCC',
      link: 'G',
      ...expected,
    });
  });

  it('recognises ICCBBA', () => {
    // FDA sample, quoted; layout from memory.
    const sample = '=/A9999XYZ100T0944=,000025=A99971312345600=>014032=}013032&,1000000000000XYZ123';
    expect(readUdi(sample, 2025)).toMatchObject({ agency: 'ICCBBA', di: 'A9999XYZ100T0944' });
  });

  const bad: readonly (readonly [string, object])[] = [
    ['', { fault: 'empty' }],
    ['hello', { fault: 'agency-unknown' }],
    ['(01)51022222233335', { fault: 'check-character', expected: '6' }],
    ['(01)5102222223333', { fault: 'length', field: '(01)' }],
    ['(01)51022222233336(17)150231', { fault: 'date-impossible', field: '(17)' }],
    ['(01)51022222233336(77)1', { fault: 'field-unknown' }],
    ['(01)51022222233336(10)', { fault: 'length', field: '(10)' }],
    ['(01)51022222233336(10)a(10)b', { fault: 'field-twice' }],
    ['(01)51022222233336(10)aéb', { fault: 'character' }],
    ['(10)A213B1', { fault: 'device-identifier-missing' }],
    ['(01', { fault: 'field-unknown' }],
    ['+A123BJC5D6E71H', { fault: 'check-character', expected: 'G' }],
    ['+a123bjc5d6e71g', { fault: 'character', found: 'a' }],
    [`(01)${'1'.repeat(5000)}`, { fault: 'too-long' }],
    ['=/A9999', { fault: 'length' }],
  ];
  it.each(bad)('refuses %s', (text, fault) => expect(readUdi(text, 2025)).toMatchObject(fault));

  it('reads day 00 as the end of the month', () => {
    expect(readUdi('(01)51022222233336(17)240200', 2025)).toMatchObject({
      expires: { date: '2024-02-29', dayGiven: false },
    });
    expect(dateOf(2023, 2, 0)).toEqual({ date: '2023-02-28', dayGiven: false });
    expect(dateOfDayInYear(2024, 366)).toEqual({ date: '2024-12-31', dayGiven: true });
    expect(dateOfDayInYear(2023, 366)).toBeUndefined();
    expect([fullYear(99, 2025), fullYear(75, 2025), fullYear(76, 2025), fullYear(10, 2075)]).toEqual([
      1999, 2075, 1976, 2110,
    ]);
  });
  it('pads a short GTIN', () => {
    expect(readGtin('1234')).toMatchObject({ fault: 'length' });
    expect(readGtin(' 50123456789 00'.replace(' 00', '00'))).toEqual({ gtin: '05012345678900' });
    expect(readGtin('50123456789OO')).toMatchObject({ fault: 'character', found: 'O' });
  });
  it('notices any one wrong digit', () => {
    fc.assert(
      fc.property(
        fc.array(fc.nat(9), { minLength: 13, maxLength: 13 }),
        fc.nat(13),
        fc.integer({ min: 1, max: 9 }),
        (data, at, more) => {
          const digits = [...data, gs1CheckDigit(data.join('')) ?? 0];
          expect(readGtin(digits.join(''))).toEqual({ gtin: digits.join('') });
          digits[at] = ((digits[at] ?? 0) + more) % 10;
          expect(readGtin(digits.join(''))).toMatchObject({ fault: 'check-character' });
        },
      ),
    );
  });
  it('never throws', () => {
    const parts = fc.constantFrom(
      '(',
      ')',
      '01',
      '17',
      '10',
      '+',
      '$$',
      '/',
      '=',
      '\u001d',
      'A1',
      '0',
      '99',
      '*',
      '<GS>',
      ']C1',
    );
    const soup = fc.oneof(
      fc.string({ maxLength: 60 }),
      fc.array(parts, { maxLength: 20 }).map((list) => list.join('')),
    );
    fc.assert(
      fc.property(soup, (text) => {
        expect(readUdi(text, 2025)).toBeTypeOf('object');
      }),
      { numRuns: 1000 },
    );
  });
});
