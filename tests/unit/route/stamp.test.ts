import { describe, expect, it } from 'vitest';
import type { IsoDate } from '../../../server/src/base/brand.ts';
import { fileId } from '../../../server/src/base/brand.ts';
import { cardStamp } from '../../../server/src/route/stamp.ts';
import { demoDay, viewOf } from '../../support/routes.ts';
import { readSample } from '../../support/samples.ts';

const sample = readSample('lanternfield-corrected');
const set = 'LAP-CHOLE-B';

/** The stamp after one text is put in place of another in one file. */
function stampWith(file: string, from: string, to: string, today: IsoDate = demoDay): string | undefined {
  const id = fileId(file);
  const text = sample.get(id) ?? '';
  if (!text.includes(from)) throw new Error(`${file} does not hold ${from}`);
  return viewOf(new Map([...sample, [id, text.replace(from, to)]]), today).view.ask(cardStamp, set);
}

const setFile = `sets/${set}.ifu.yaml`;
const scissors = 'devices/duskwell-lap-scissors-takeapart.ifu.yaml';
const { view } = viewOf(sample);
const stamp = view.ask(cardStamp, set);

describe('the stamp of a card', () => {
  it('is six hexadecimal digits, another for every set, and there is none without a set', () => {
    const stamps = [...view.ids('set')].map((id) => view.ask(cardStamp, id));
    for (const one of stamps) expect(one).toMatch(/^[0-9a-f]{6}$/);
    expect(new Set(stamps).size).toBe(stamps.length);
    expect(view.ask(cardStamp, 'no-such-set')).toBeUndefined();
  });

  it.each([
    ['a comment', setFile, '# Laparoscopic', '# Any laparoscopic'],
    ['the day of weighing', setFile, 'mass_measured: 2025-02-25', 'mass_measured: 2025-02-26'],
    ['stock and use', setFile, 'in_use_month: 22', 'in_use_month: 23'],
    ['another spelling of a unit', scissors, 'volume: {at_least: 50 mL}', 'volume: {at_least: 50 ml}'],
    ['where a sentence stands', scissors, 'src: s9}', 'src: [s9]}'],
    ['a review', scissors, 'due: 2026-02-24', 'due: 2026-02-25'],
  ])('stays with %s', (_, file, from, to) => {
    expect(stampWith(file, from, to)).toBe(stamp);
  });

  it('stays on another day while the same things are in force', () => {
    expect(stampWith(setFile, '# Lap', '# Lap', '2025-03-10' as IsoDate)).toBe(stamp);
  });

  it.each([
    ['a quantity', setFile, 'qty: 4', 'qty: 3'],
    ['a test on a line', setFile, 'tests: [insulation-test]', 'tests: [insulation-test, cut-test]'],
    ['a flush', scissors, 'volume: {at_least: 50 mL}', 'volume: {at_least: 60 mL}'],
    [
      'the drying that governs',
      'packaging/P3-rigid-container.ifu.yaml',
      'at_least: 30 min, src',
      'at_least: 25 min, src',
    ],
    ['the aim of the thermometer', 'packaging/P3-rigid-container.ifu.yaml', 'cool_aim: vents', 'cool_aim: lid-metal'],
    ['the release temperature', 'site.ifu.yaml', 'release_temp: {at_most: 24 C}', 'release_temp: {at_most: 25 C}'],
    ['the cycle of the card', setFile, 'cycle: S1-pv132-4-30', 'cycle: S2-pv132-4-30'],
  ])('changes with %s', (_, file, from, to) => {
    expect(stampWith(file, from, to)).not.toBe(stamp);
  });
});
