import { describe, expect, test } from 'vitest';
import { givenByLabel, givenOf } from '../../../server/src/judge/given.ts';
import type { Parameter } from '../../../server/src/judge/outcome.ts';
import { judgeValue } from '../../../server/src/judge/value.ts';
import type { Policies } from '../../../server/src/model/entities/site.generated.ts';
import type { Requirement } from '../../../server/src/model/node.ts';
import type { Dimension } from '../../../server/src/quantity/quantity.ts';
import { entityOf } from '../../support/entities.ts';
import { nowhere, quantity, requirement } from '../../support/requirements.ts';

function policies(text: string): Policies | undefined {
  return entityOf('site', 's', `policies: {${text}}`).policies;
}

function outcome(parameter: Parameter, demanded: Requirement, ours: string, policy = ''): string {
  const given = givenOf(quantity(ours, demanded.dimension));
  return judgeValue({ parameter, requirement: demanded, given, policies: policy === '' ? undefined : policies(policy) })
    .outcome;
}

type Row = readonly [string, Parameter, Dimension, Parameters<typeof requirement>[1], string, string, string?];

/** Every row of the expert's parameter table that is a number, in both directions. */
const rows: readonly Row[] = [
  ['steam temperature, bare, same', 'steam-temperature', 'temperature', { stated: '132 C' }, '132 C', 'meets'],
  [
    'steam temperature, bare, 132 against 134',
    'steam-temperature',
    'temperature',
    { stated: '132 C' },
    '134 C',
    'needs-answer',
  ],
  [
    'steam temperature, bare, hotter, whatever the policy',
    'steam-temperature',
    'temperature',
    { stated: '132 C' },
    '134 C',
    'needs-answer',
    'stated_temp: treat-as-minimum',
  ],
  [
    'steam temperature, inside a range',
    'steam-temperature',
    'temperature',
    { between: ['132 C', '135 C'] },
    '134 C',
    'meets',
  ],
  [
    'steam temperature, above a range',
    'steam-temperature',
    'temperature',
    { between: ['132 C', '135 C'] },
    '137 C',
    'fails',
  ],
  [
    'steam temperature, at least, hotter',
    'steam-temperature',
    'temperature',
    { at_least: '132 C' },
    '134 C',
    'meets-with-note',
  ],
  ['steam temperature, lower', 'steam-temperature', 'temperature', { at_least: '132 C' }, '121 C', 'fails'],
  ['steam temperature, bare, lower', 'steam-temperature', 'temperature', { stated: '134 C' }, '132 C', 'fails'],
  ['heat limit, over', 'heat-limit', 'temperature', { at_most: '137 C' }, '138 C', 'fails'],
  ['heat limit, under', 'heat-limit', 'temperature', { at_most: '140 C' }, '135 C', 'meets'],
  ['exposure, at least, same', 'exposure', 'time', { at_least: '4 min' }, '4 min', 'meets'],
  ['exposure, at least, twice', 'exposure', 'time', { at_least: '4 min' }, '8 min', 'meets'],
  ['exposure, at least, more than twice', 'exposure', 'time', { at_least: '4 min' }, '10 min', 'meets-with-note'],
  ['exposure, at least, shorter', 'exposure', 'time', { at_least: '4 min' }, '3 min', 'fails'],
  [
    'exposure, bare, longer, exact',
    'exposure',
    'time',
    { stated: '4 min' },
    '10 min',
    'needs-answer',
    'stated_exposure: treat-as-exact',
  ],
  [
    'exposure, bare, longer, minimum',
    'exposure',
    'time',
    { stated: '4 min' },
    '10 min',
    'meets-with-note',
    'stated_exposure: treat-as-minimum',
  ],
  ['exposure, bare, longer, no policy', 'exposure', 'time', { stated: '4 min' }, '10 min', 'needs-answer'],
  [
    'exposure, bare, shorter',
    'exposure',
    'time',
    { stated: '4 min' },
    '3 min',
    'fails',
    'stated_exposure: treat-as-minimum',
  ],
  [
    'exposure, bare, same, every one is asked about',
    'exposure',
    'time',
    { stated: '4 min' },
    '4 min',
    'needs-answer',
    'stated_exposure: needs-answer',
  ],
  ['exposure, between, above', 'exposure', 'time', { between: ['3 min', '18 min'] }, '20 min', 'fails'],
  ['exposure, between, inside', 'exposure', 'time', { between: ['3 min', '18 min'] }, '10 min', 'meets'],
  ['exposure, between, below', 'exposure', 'time', { between: ['3 min', '18 min'] }, '2 min', 'fails'],
  ['exposure, exactly, above', 'exposure', 'time', { exactly: '4 min' }, '5 min', 'fails'],
  ['exposure, exactly, below', 'exposure', 'time', { exactly: '4 min' }, '3 min', 'fails'],
  ['dry, at least, longer', 'steam-dry', 'time', { at_least: '20 min' }, '60 min', 'meets'],
  ['dry, at least, shorter', 'steam-dry', 'time', { at_least: '30 min' }, '20 min', 'fails'],
  [
    'dry, bare, longer, minimum',
    'steam-dry',
    'time',
    { stated: '20 min' },
    '30 min',
    'meets',
    'stated_dry: treat-as-minimum',
  ],
  ['dry, bare, longer, no policy', 'steam-dry', 'time', { stated: '20 min' }, '30 min', 'needs-answer'],
  ['dry of the packaging, shorter', 'packaging-dry', 'time', { at_least: '30 min' }, '20 min', 'fails'],
  ['dry of the packaging, longer', 'packaging-dry', 'time', { at_least: '30 min' }, '50 min', 'meets'],
  ['cool-down, longer', 'cool-down', 'time', { stated: '30 min' }, '60 min', 'meets'],
  ['cool-down, shorter', 'cool-down', 'time', { at_least: '30 min' }, '10 min', 'fails'],
  ['wash temperature, in range', 'wash-temperature', 'temperature', { between: ['55 C', '65 C'] }, '60 C', 'meets'],
  ['wash temperature, below', 'wash-temperature', 'temperature', { between: ['55 C', '65 C'] }, '50 C', 'fails'],
  ['wash temperature, above', 'wash-temperature', 'temperature', { between: ['55 C', '65 C'] }, '70 C', 'fails'],
  ['first rinse, cold', 'first-rinse-temperature', 'temperature', { at_most: '45 C' }, '20 C', 'meets'],
  ['first rinse, hot', 'first-rinse-temperature', 'temperature', { at_most: '45 C' }, '60 C', 'fails'],
  ['flush volume, more', 'cleaning-amount', 'volume', { at_least: '50 mL' }, '60 mL', 'meets'],
  ['flush volume, less', 'cleaning-amount', 'volume', { at_least: '50 mL' }, '40 mL', 'fails'],
  [
    'flush volume, over the stated most',
    'cleaning-amount',
    'volume',
    { at_least: '50 mL', at_most: '80 mL' },
    '90 mL',
    'fails',
  ],
  ['air pressure, over', 'pressure', 'pressure', { at_most: '1.4 bar' }, '4 bar', 'fails'],
  ['flush pressure, under', 'pressure', 'pressure', { between: ['2 bar', '3 bar'] }, '1 bar', 'fails'],
  ['soak, over the most', 'soak', 'time', { between: ['1 min', '15 min'] }, '60 min', 'fails'],
  ['soak, no most stated', 'soak', 'time', { at_least: '1 min' }, '60 min', 'meets-with-note'],
  ['soak, shorter', 'soak', 'time', { at_least: '5 min' }, '1 min', 'fails'],
  ['ultrasonic, over the most', 'ultrasonic', 'time', { at_most: '10 min' }, '15 min', 'fails'],
  ['ultrasonic, no most stated', 'ultrasonic', 'time', { at_least: '3 min' }, '15 min', 'meets-with-note'],
  ['ultrasonic, another frequency', 'ultrasonic', 'frequency', { between: ['35 kHz', '45 kHz'] }, '132 kHz', 'fails'],
  ['A0, more', 'thermal-disinfection', 'a0', { at_least: '600' }, '3000', 'meets'],
  ['A0, less', 'thermal-disinfection', 'a0', { at_least: '600' }, '190', 'fails'],
  ['thermal, longer than the bare time', 'thermal-disinfection', 'time', { stated: '1 min' }, '5 min', 'meets'],
  ['water, purer', 'water-grade', 'conductivity', { at_most: '10 uS/cm' }, '4 uS/cm', 'meets'],
  ['water, less pure', 'water-grade', 'conductivity', { at_most: '10 uS/cm' }, '310 uS/cm', 'fails'],
  ['gas, another value', 'ethylene-oxide', 'temperature', { stated: '55 C' }, '60 C', 'fails'],
  ['gas, in range', 'ethylene-oxide', 'temperature', { between: ['50 C', '60 C'] }, '55 C', 'meets'],
  ['aeration, longer', 'aeration', 'time', { stated: '12 h' }, '24 h', 'meets'],
  ['aeration, shorter', 'aeration', 'time', { at_least: '12 h' }, '8 h', 'fails'],
  ['aeration, hotter than stated', 'aeration-temperature', 'temperature', { stated: '55 C' }, '60 C', 'fails'],
  ['mass, over', 'mass', 'mass', { at_most: '11.3 kg' }, '11.9 kg', 'fails'],
  ['mass, under', 'mass', 'mass', { at_most: '11.3 kg' }, '8.9 kg', 'meets'],
  ['uses, over', 'use-count', 'count', { at_most: '18 uses' }, '19 uses', 'fails'],
  ['uses, at the limit', 'use-count', 'count', { at_most: '18 uses' }, '18 uses', 'meets'],
];

for (const [name, parameter, dimension, bounds, ours, expected, policy] of rows) {
  test(name, () => expect(outcome(parameter, requirement(dimension, bounds), ours, policy)).toBe(expected));
}

describe('pH as used must lie inside, both ends', () => {
  const label = (low: string, high: string) => givenByLabel(requirement('ph', { between: [low, high] }));
  test.each([
    ['10.2', '10.6', 'meets'],
    ['6.8', '7.4', 'fails'],
    ['11.8', '12.2', 'fails'],
    ['7', '10.8', 'meets'],
  ])('%s-%s', (low, high, expected) => {
    const question = {
      requirement: requirement('ph', { between: ['7', '10.8'] }),
      given: label(low, high),
      policies: undefined,
    };
    expect(judgeValue({ parameter: 'ph', ...question }).outcome).toBe(expected);
  });
});

describe('words that are no number', () => {
  const judge = (rest: Partial<Requirement>, parameter: Parameter = 'steam-dry', more = {}) =>
    judgeValue({
      parameter,
      requirement: requirement('time', {}, rest),
      given: givenOf(quantity('20 min', 'time')),
      policies: undefined,
      ...more,
    });
  const on = { node: 'flag', at: nowhere, on: true } as const;
  const word = <W extends string>(text: W) => ({ node: 'text', at: nowhere, text }) as const;

  test('silence on drying needs an answer, silence on a soak is noted; neither is ever met by itself', () => {
    expect(judge({ silent: on }).outcome).toBe('needs-answer');
    expect(judge({ silent: on }, 'soak').outcome).toBe('meets-with-note');
  });
  test('what is ambiguous names the open question', () => {
    const answer = judge({ ambiguous: word('dry well'), ask: word('q14') });
    expect(answer).toMatchObject({ outcome: 'needs-answer', settledBy: 'manufacturer' });
    expect(answer.because).toContain('q14');
  });
  test('about is never a limit', () => {
    const about = (ours: string) =>
      judgeValue({
        parameter: 'steam-dry',
        requirement: requirement('time', { about: '30 min' }),
        given: givenOf(quantity(ours, 'time')),
        policies: undefined,
      }).outcome;
    expect([about('10 min'), about('30 min'), about('60 min')]).toEqual([
      'needs-answer',
      'meets-with-note',
      'meets-with-note',
    ]);
  });
  test('two documents that differ: nobody chooses, unless both refuse ours or the maker has settled it', () => {
    const sides = (...texts: string[]) =>
      ({ node: 'list', at: nowhere, items: texts.map((text) => requirement('time', { at_least: text })) }) as const;
    expect(judge({ conflict: sides('10 min', '30 min') }).outcome).toBe('needs-answer');
    expect(judge({ conflict: sides('30 min', '40 min') }).outcome).toBe('fails');
    expect(
      judge({ conflict: sides('10 min', '30 min') }, 'steam-dry', {
        settled: requirement('time', { at_least: '10 min' }),
      }).outcome,
    ).toBe('meets');
  });
  test('the specific page wins over the general one for the same field', () => {
    const answer = judgeValue({
      parameter: 'steam-dry',
      requirement: requirement(
        'time',
        { at_least: '40 min' },
        { specific: requirement('time', { at_least: '20 min' }) },
      ),
      given: givenOf(quantity('20 min', 'time')),
      policies: undefined,
    });
    expect(answer.outcome).toBe('meets');
  });
  test('several bound words on one requirement bind together', () => {
    const both = requirement('time', { at_least: '4 min', at_most: '8 min' });
    expect(['3 min', '6 min', '10 min'].map((ours) => outcome('exposure', both, ours))).toEqual([
      'fails',
      'meets',
      'fails',
    ]);
  });
  test('a suggestion never fails', () => {
    expect(
      outcome('steam-dry', requirement('time', { at_least: '30 min' }, { strength: word('should') }), '20 min'),
    ).toBe('needs-answer');
    expect(outcome('steam-dry', requirement('time', { at_least: '30 min' }, { strength: word('may') }), '20 min')).toBe(
      'meets-with-note',
    );
  });
  test('a condition that does not hold demands nothing', () => {
    const only = requirement('time', { at_least: '18 min' }, { when: word('prion-suspected') });
    expect(outcome('exposure', only, '4 min')).toBe('meets');
    expect(
      judgeValue({
        parameter: 'exposure',
        requirement: only,
        given: givenOf(quantity('4 min', 'time')),
        policies: undefined,
        situations: new Set(['prion-suspected']),
      }).outcome,
    ).toBe('fails');
  });
  test('a value that is missing on our side, or cannot be read, is a question', () => {
    expect(
      judgeValue({
        parameter: 'exposure',
        requirement: requirement('time', { at_least: '4 min' }),
        given: undefined,
        policies: undefined,
      }).outcome,
    ).toBe('needs-answer');
    const nothing = { dimension: 'time', value: Number.NaN, amount: Number.NaN, unit: '', decimals: 0 } as const;
    const problem = { fault: 'no-number' } as const;
    const unreadable = { node: 'quantity', at: nowhere, text: '4 min', ...nothing, problem } as const;
    expect(
      judgeValue({
        parameter: 'exposure',
        requirement: requirement('time', {}, { at_least: unreadable }),
        given: givenOf(quantity('4 min', 'time')),
        policies: undefined,
      }).outcome,
    ).toBe('needs-answer');
    expect(outcome('exposure', requirement('time', { between: ['18 min', '3 min'] }), '4 min')).toBe('needs-answer');
  });
});

describe('a page that prints both scales is one cycle', () => {
  test.each([
    ['270 F', '132 C', 'meets'],
    ['273 F', '134 C', 'meets'],
    ['250 F', '121 C', 'meets'],
    ['275 F', '135 C', 'meets'],
    ['270 F', '131.5 C', 'fails'],
    ['270 F', '131 C', 'fails'],
    ['270 F', '134 C', 'needs-answer'],
  ])('%s against %s', (page, ours, expected) => {
    expect(outcome('steam-temperature', requirement('temperature', { stated: page }), ours)).toBe(expected);
  });
});

test('the gap is given in numbers, in the unit of the page', () => {
  const gap = (parameter: Parameter, demanded: Requirement, ours: string) =>
    judgeValue({
      parameter,
      requirement: demanded,
      given: givenOf(quantity(ours, demanded.dimension)),
      policies: undefined,
    }).gap;
  expect(gap('steam-dry', requirement('time', { at_least: '50 min' }), '30 min')).toBe('20 min short');
  expect(gap('steam-temperature', requirement('temperature', { stated: '132 C' }), '134 C')).toBe('2 K too high');
  expect(gap('mass', requirement('mass', { at_most: '11.3 kg' }), '11.9 kg')).toBe('0.6 kg over');
  expect(gap('steam-dry', requirement('time', { at_least: '20 min' }), '30 min')).toBeUndefined();
});
