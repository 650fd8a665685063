import { describe, expect, it } from 'vitest';
import { changeClasses } from '../../../server/src/revision/change.ts';
import { changeNames, comparedTexts } from '../../support/revisions.ts';
import { device, dry, grid, option, passages } from './grid-rows.ts';

describe('each kind of change, and its mirror', () => {
  it.each(grid)('$what', ({ old, now, there, back }) => {
    expect(changeNames(comparedTexts(device(old), device(now)))).toEqual(there);
    expect(changeNames(comparedTexts(device(now), device(old)))).toEqual(back);
  });
});

describe('each kind of change of a passage, and its mirror', () => {
  it.each(passages)('$what', ({ old, now, there, back }) => {
    expect(changeNames(comparedTexts(old, now))).toEqual(there);
    expect(changeNames(comparedTexts(now, old))).toEqual(back);
  });

  it('no class of change is without one', () => {
    const classOf = (name: string) => name.slice(0, name.indexOf(' '));
    const rows = [...grid, ...passages];
    const told = new Set(rows.flatMap(({ there, back }) => [...there, ...back].map(classOf)));
    expect(changeClasses.filter((type) => !told.has(type))).toEqual([]);
  });
});

describe('passages', () => {
  const names = (old: string, now: string) => changeNames(comparedTexts(old, now));

  it('a page number is a re-citation, however many passages moved', () => {
    const quotes = { s2: 'Pull the insert.', s3: 'Rinse well.' };
    expect(names(device('', quotes, 4), device('', quotes, 5))).toEqual(['re-citation statements']);
  });

  it('ids and order of passages mean nothing', () => {
    const body = (id: string) => `lubrication: {required: true, src: ${id}}`;
    const [first, second] = ['Lubricate the hinge before packing.', 'Rinse for one minute.'];
    expect(names(device(body('s2'), { s2: first, s3: second }), device(body('s9'), { s7: second, s9: first }))).toEqual(
      [],
    );
  });

  it.each([
    ['a number', 'Rinse for 2 minutes.', 'Rinse for 3 minutes.', 'different'],
    ['a negation', 'Use an ultrasonic bath.', 'Do not use an ultrasonic bath.', 'different'],
    ['a bound word', 'Rinse for at least 2 minutes.', 'Rinse for at most 2 minutes.', 'different'],
    [
      'an and/or',
      'Clean manually and in a washer-disinfector.',
      'Clean manually or in a washer-disinfector.',
      'different',
    ],
    ['a unit', 'Rinse for 2 minutes.', 'Rinse for 120 seconds.', 'correction'],
  ])('%s that changed in a quote is never wording only', (_, old, now, type) => {
    expect(names(device('', { s2: old }), device('', { s2: now }))).toEqual([`${type} statements.s2`]);
    expect(names(device('', { s2: now }), device('', { s2: old }))).toEqual([`${type} statements.s2`]);
  });

  it('a number that the changed values do not account for is told besides', () => {
    const quote = (dry: number, exposure: number) =>
      `Pre-vacuum steam, ${exposure} minutes, dry at least ${dry} minutes.`;
    const body = (dry: number) => option(`dry: {at_least: ${dry} min}, exposure: {stated: 4 min}, src: s2`);
    expect(names(device(body(20), { s2: quote(20, 4) }), device(body(30), { s2: quote(30, 4) }))).toEqual([
      `stricter ${dry}`,
    ]);
    expect(names(device(body(20), { s2: quote(20, 4) }), device(body(30), { s2: quote(30, 8) }))).toEqual([
      'different statements.s2',
      `stricter ${dry}`,
    ]);
  });

  it('a passage that is gone is told, whether or not a value went with it', () => {
    const quotes = { s2: 'Test the insulation before each use.' };
    const alone = comparedTexts(device('', quotes), device(''));
    expect(changeNames(alone)).toEqual(['became-silent statements.s2']);
    expect(alone.lost.map(({ id, reportedBy }) => [id, reportedBy])).toEqual([['s2', [alone.changes[0]?.fingerprint]]]);
    const withValue = comparedTexts(
      device('lubrication: {required: true, src: s2}', quotes),
      device('lubrication: {silent: true}'),
    );
    expect(changeNames(withValue)).toEqual(['became-silent lubrication']);
    expect(withValue.lost).toHaveLength(1);
  });
});

describe('what means nothing', () => {
  it.each([
    ['another unit', option('dry: {at_least: 20 min}'), option('dry: {at_least: 1200 s}')],
    ['the other scale', 'limits: {temp: {at_most: 132 C}}', 'limits: {temp: {at_most: 270 F}}'],
    ['two bounds for a range', 'limits: {ph: {between: [6, 9]}}', 'limits: {ph: {at_least: 6, at_most: 9}}'],
    [
      'the order of options',
      `${option('dry: {at_least: 20 min}')}\n    - {id: gr, modality: steam-gravity}`,
      'sterilization:\n  any_of:\n    - {id: gr, modality: steam-gravity}\n    - {id: pv, context: terminal, modality: steam-prevac, dry: {at_least: 20 min}}',
    ],
    ['layout', 'limits: {ph: {between: [6, 9]}}', 'limits:\n  ph:\n    between:\n      - 6\n      - 9.0'],
    ['the order of words', 'traits: [hinged, lumen]', 'traits: [lumen, hinged]'],
    [
      'a prohibition in the other scale',
      'not:\n  - {what: temp-above, value: 140 C}',
      'not:\n  - {what: temp-above, value: 284 F}',
    ],
  ])('%s', (_, old, now) => {
    expect(changeNames(comparedTexts(device(old), device(now)))).toEqual([]);
  });
});

describe('names', () => {
  it('an option with another id is a renaming, not one lost and one gained', () => {
    const now = option('dry: {at_least: 20 min}').replace('id: pv', 'id: pv132');
    expect(changeNames(comparedTexts(device(option('dry: {at_least: 20 min}')), device(now)))).toEqual([
      'editorial sterilization.any_of[pv132].id',
    ]);
  });

  it('fingerprints outlive layout and unit spelling, and tell values apart', () => {
    const of = (old: string, now: string) =>
      comparedTexts(device(option(old)), device(option(now))).changes[0]?.fingerprint;
    const first = of('dry: {at_least: 20 min}', 'dry: {at_least: 30 min}');
    expect(of('dry: {at_least: 1200 s}', 'dry: {at_least: 1800 s}')).toBe(first);
    expect(of('dry: {at_least: 20 min}', 'dry: {at_least: 31 min}')).not.toBe(first);
  });
});
