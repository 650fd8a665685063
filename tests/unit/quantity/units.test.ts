import { describe, expect, it } from 'vitest';
import { ambiguousUnits } from '../../../server/src/quantity/unclear-units.ts';
import { unitList } from '../../../server/src/quantity/unit-list.ts';
import { readUnitAt } from '../../../server/src/quantity/unit-reading.ts';
import { unitWords } from '../../../server/src/quantity/unit-words.ts';
import { findUnit, spellingsOf } from '../../../server/src/quantity/units.ts';

describe('the closed list', () => {
  it('gives each spelling one meaning within a dimension', () => {
    for (const unit of unitList) {
      for (const spelling of spellingsOf(unit)) {
        expect(findUnit(spelling, unit.dimension), `${unit.dimension} ${spelling}`).toEqual({ found: 'unit', unit });
      }
    }
  });
  it('names only units of the list in words and choices', () => {
    const names = new Set(unitList.map((unit) => unit.name));
    for (const word of unitWords) for (const name of word.units) expect(names).toContain(name);
    for (const unclear of ambiguousUnits) for (const name of unclear.choices) expect(names).toContain(name);
  });
  it('lets the dimension decide', () => {
    expect(findUnit('F', 'temperature')).toMatchObject({ unit: { name: '°F' } });
    expect(findUnit('F', 'length')).toMatchObject({ unit: { name: 'Fr' } });
    expect(findUnit('F')).toMatchObject({ found: 'ambiguous' });
    expect(findUnit('m')).toEqual({ found: 'ambiguous', choices: ['min', 'm'] });
    expect(findUnit('°C')).toMatchObject({ unit: { dimension: 'temperature' } });
    expect(findUnit('mg/L')).toMatchObject({ unit: { dimension: 'concentration' } });
    expect(findUnit('toString', 'time')).toMatchObject({ found: 'unknown' });
  });
});

describe('a unit in running text', () => {
  const readings: readonly (readonly [string, string | undefined, number])[] = [
    ['minutes at', 'min', 7],
    ['Minuten bei', 'min', 7],
    ['MIN.', 'min', 4],
    ['minimum', undefined, 0],
    ['min² and', undefined, 0],
    ['°C)', '°C', 2],
    ['ºC)', '°C', 2],
    ['Grad Celsius', '°C', 12],
    ['degrés C', '°C', 8],
    ['bar a minute', 'bar', 3],
    ['bar(g) at', 'bar(g)', 6],
    ['psig.', 'psig', 4],
    ['mL/port', 'mL', 2],
    ['mL/min', 'mL/min', 6],
    ['kgf/cm²', 'kgf/cm2', 7],
    ['% (v/v)', '% v/v', 7],
    ['%', '%', 1],
    ['CFU/100 mL', 'CFU/100 mL', 10],
    ['fois', 'times', 4],
    ['Kirschen', undefined, 0],
    ['', undefined, 0],
  ];
  it.each(readings)('%j starts with %j', (text, name, length) => {
    const reading = readUnitAt(`12 ${text}`, 3);
    expect(reading?.candidates[0]?.unit.name).toBe(name);
    expect(reading?.length ?? 0).toBe(length);
  });
  it('offers all meanings and says what is doubtful', () => {
    expect(readUnitAt('F', 0)?.candidates.map((one) => one.unit.dimension)).toEqual([
      'temperature',
      'temperature-difference',
      'length',
    ]);
    expect(readUnitAt('m', 0)?.candidates.map((one) => one.unit.name)).toEqual(['min', 'm']);
    expect(readUnitAt('in the', 0)?.doubtful).toBe(true);
    expect(readUnitAt('C', 0)?.doubtful).toBe(true);
    expect(readUnitAt('minutes', 0)?.doubtful).toBe(false);
    expect(readUnitAt('Minuten', 0)?.candidates[0]?.language).toBe('de');
  });
});
