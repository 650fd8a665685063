import { describe, expect, it } from 'vitest';
import { columnsIn } from '../../../server/src/quantity/prose/column-titles.ts';

function said(line: string, known?: 'known as a head'): readonly string[] | undefined {
  return columnsIn(line, known)?.map(({ title, bound, isBoundOrUnit, units }) =>
    [title, bound, isBoundOrUnit ? '?' : '', units[0]?.name].filter((part) => (part ?? '') !== '').join(' '),
  );
}

describe('the head of a table says what its columns measure, and their bounds', () => {
  it.each([
    ['Cycle Temperature Exposure Minimum dry time', ['name', 'temp', 'exposure', 'dry at_least']],
    ['Stage | Temp. (max.) | Time (min.) | Water', ['name', 'temp at_most', 'time at_least ? min', 'other']],
    ['Étape | Température | Durée minimale', ['name', 'temp', 'time at_least']],
    ['Schritt | Temperatur [°C] | Mindestzeit', ['name', 'temp °C', 'time at_least']],
    ['Phase | Temperature | Remarks and chemicals', ['name', 'temp', 'other']],
    ['Type of cycle | Exposure time | Exposure temperature', ['name', 'exposure', 'temp']],
    ['Dry time', undefined],
    ['Wash at 55 °C for 10 min', undefined],
  ])('%s', (line, columns) => {
    expect(said(line)).toEqual(columns);
  });

  it('of a line that is known as a head, other words stand between its titles', () => {
    expect(said('Phase Min. time Temperature Water grade', 'known as a head')).toEqual([
      ...['name', 'time at_least', 'temp'],
      'other',
    ]);
    expect(said('Phase Min. time Temperature Water grade')).toBeUndefined();
  });
});
