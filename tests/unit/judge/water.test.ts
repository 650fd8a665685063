import { describe, expect, test } from 'vitest';
import { judgeWater } from '../../../server/src/judge/water.ts';
import { device, setting, shown, stock } from './department.ts';

describe('water', () => {
  const judged = (quality: string, water: string) => {
    const one = device('d', `rinse: {final: ${quality}}`);
    const asked = one.rinse?.final;
    if (asked === undefined) throw new Error('nothing asked');
    return shown(judgeWater({ by: one, quality: asked, water: stock.water(water), waterName: water, setting }));
  };
  test('by value, never by the name of the grade', () => {
    expect(judged('{conductivity: {at_most: 10 uS/cm}, endotoxin: {at_most: 10 EU/mL}}', 'RO-1')).toEqual([]);
    expect(judged('{conductivity: {at_most: 10 uS/cm}, endotoxin: {at_most: 10 EU/mL}}', 'tap')).toEqual([
      'fails water-grade',
      'needs-answer water-grade',
    ]);
    expect(judged('{grade: critical}', 'RO-1')).toEqual([]);
    expect(judged('{grade: purified}', 'RO-1')).toEqual(['needs-answer water-grade']);
    expect(judged('{grade: purified}', 'tap')).toEqual(['fails water-grade']);
    expect(judged('{grade: critical}', 'nowhere')).toEqual(['needs-answer water-grade']);
  });
});
