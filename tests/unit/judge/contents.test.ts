import { describe, expect, test } from 'vitest';
import { acceptedInterval } from '../../../server/src/judge/accepted.ts';
import { type Contents, judgeContents, judgeDeviceContents } from '../../../server/src/judge/contents.ts';
import { lumensOf } from '../../../server/src/judge/lumens.ts';
import { optionsOf } from '../../../server/src/judge/sterilization.ts';
import type { EntityOf } from '../../../server/src/model/entities.generated.ts';
import { entityOf } from '../../support/entities.ts';
import { nowhere, quantity, requirement } from '../../support/requirements.ts';
import { cycleOf, device, packagings, setting, shown, site } from './department.ts';

const { P1, P3, P4, P5 } = packagings;
const word = (text: string) => ({ node: 'text', at: nowhere, text }) as const;
const empty: Contents = { lumens: [], accessories: [], others: [], inner: [], at: nowhere };

function packed(packaging: EntityOf['packaging'], cycleId: string, contents: Partial<Contents>): readonly string[] {
  return shown(
    judgeContents({
      packaging,
      contents: { ...empty, mass: quantity('0.4 kg', 'mass'), ...contents },
      ...cycleOf(cycleId),
      setting,
    }),
  );
}

describe('mass', () => {
  const mass = (text: string) => ({ mass: quantity(text, 'mass') });
  test('the smallest limit binds: packaging, site', () => {
    expect(packed(P1, 'S1-pv132-4-20', mass('4.9 kg'))).toEqual([]);
    expect(packed(P1, 'S1-pv132-4-20', mass('5.6 kg'))).toEqual(['fails mass']);
    expect(packed(P3, 'S1-pv132-4-30', mass('11.9 kg'))).toEqual(['fails mass', 'fails mass']);
    expect(packed(P3, 'S1-pv132-4-30', mass('26 lb'))).toEqual(['fails mass', 'fails mass']);
  });
  test('not weighed is a question', () => {
    expect(packed(P1, 'S1-pv132-4-20', { mass: undefined })).toEqual(['needs-answer mass', 'needs-answer mass']);
  });
  test('the load of a peroxide cycle', () => {
    expect(packed(P5, 'S3:lumen', mass('6.1 kg'))).toEqual(['fails load', 'fails mass']);
  });
  test('a limit on the contents alone takes the packaging off, where its mass is known', () => {
    const net = (own: string) =>
      entityOf(
        'packaging',
        'PN',
        `type: rigid-container\nvalidated: [{modality: steam-prevac}]\nmass_max: 8 kg\nmass_of: net${own}`,
      );
    expect(packed(net('\nmass: 3 kg'), 'S1-pv132-4-20', mass('10 kg'))).toEqual([]);
    expect(packed(net('\nmass: 1 kg'), 'S1-pv132-4-20', mass('10 kg'))).toEqual(['fails mass']);
    expect(packed(net(''), 'S1-pv132-4-20', mass('10 kg'))).toEqual(['needs-answer mass']);
  });
  test('what the device states binds too', () => {
    const heavy = device('case', 'packaging: {relation: requires_class, max_mass: {at_most: 17 lb}}');
    expect(shown(judgeDeviceContents(heavy, optionsOf(heavy)[0], { ...empty, ...mass('8 kg') }, setting))).toEqual([
      'fails mass',
    ]);
    expect(shown(judgeDeviceContents(heavy, undefined, { ...empty, ...mass('7 kg') }, setting))).toEqual([]);
  });
});

test('lumens outside what the container covers', () => {
  const needle = device('tip', 'lumens: [{id: needle, bore: 0.9 mm, length: 40 mm}]');
  const shaft = device('grasper', 'lumens: [{id: shaft, bore: 5 mm, length: 420 mm}]');
  const tube = device('tube', 'lumens: [{id: l, bore: 3 mm, length: 180 mm}]');
  expect(packed(P3, 'S1-pv132-4-30', { lumens: lumensOf(needle, 2) })).toEqual(['fails lumen']);
  expect(packed(P3, 'S1-pv132-4-30', { lumens: lumensOf(shaft, 3) })).toEqual(['fails lumen']);
  expect(packed(P3, 'S1-pv132-4-30', { lumens: lumensOf(tube, 1) })).toEqual([]);
});

test('lumen limits by material', () => {
  const limit =
    '{by_material: [{material: stainless, bore: {at_least: 1 mm}}, {material: polymer, bore: {at_least: 2 mm}}]}';
  const container = entityOf(
    'packaging',
    'PM',
    `type: rigid-container\nvalidated: [{modality: steam-prevac, lumens: ${limit}}]`,
  );
  const lumen = (text: string) =>
    packed(container, 'S1-pv132-4-20', { lumens: lumensOf(device('d', `lumens: [{id: l, ${text}}]`), 1) });
  expect(lumen('bore: 1.5 mm, material: stainless')).toEqual([]);
  expect(lumen('bore: 1.5 mm, material: polymer')).toEqual(['fails lumen']);
  expect(lumen('bore: 1.5 mm')).toEqual(['needs-answer lumen']);
  expect(lumen('bore: 2.5 mm')).toEqual([]);
  expect(lumen('bore: 0.5 mm')).toEqual(['fails lumen']);
  expect(lumen('bore: 2.5 mm, material: glass')).toEqual(['needs-answer lumen']);
});

test('accessories: named, not named, forbidden', () => {
  const container = entityOf(
    'packaging',
    'PA',
    'type: rigid-container\nvalidated: [{modality: steam-prevac}]\naccessories: [bracket]\nnot_accessories: [towel]',
  );
  const with_ = (text: string) => packed(container, 'S1-pv132-4-20', { accessories: [word(text)] });
  expect(with_('bracket')).toEqual([]);
  expect(with_('silicone-mat')).toEqual(['needs-answer accessory']);
  expect(with_('towel')).toEqual(['fails accessory']);
  const noMat = device('d', 'packaging: {relation: requires_class, no_silicone_mat: true, no_textile_liner: true}');
  const judged = judgeDeviceContents(
    noMat,
    undefined,
    { ...empty, accessories: [word('silicone-mat'), word('towel')] },
    setting,
  );
  expect(shown(judged)).toEqual(['fails accessory', 'fails accessory']);
});

test('paper and cotton in peroxide, wherever they are (contradiction pattern 6)', () => {
  expect(packed(P4, 'S3:surface', {})).toContain('fails cellulose');
  expect(packed(P5, 'S3:surface', { others: [word('paper-count-sheet')] })).toEqual(['fails cellulose']);
  expect(packed(P5, 'S3:surface', { filter: word('cellulose') })).toEqual(['fails cellulose']);
  expect(packed(P5, 'S3:surface', { others: [word('polyolefin-label')] })).toEqual([]);
  expect(packed(P1, 'S1-pv132-4-20', { others: [word('paper-count-sheet')] })).toEqual([]);
});

test('filters and bottoms that are not for this kind of cycle', () => {
  const container = entityOf(
    'packaging',
    'PF',
    'type: rigid-container\nvalidated: [{modality: vh2o2, filter: [polyolefin]}, {modality: steam-gravity, bottom: perforated}]',
  );
  expect(packed(container, 'S3:surface', { filter: word('polyolefin') })).toEqual([]);
  expect(packed(container, 'S3:surface', { filter: word('paper') })).toEqual(['fails cellulose', 'fails filter']);
  expect(packed(container, 'S2-gr121-30-30', { bottom: word('solid') })).toEqual(['fails filter']);
  expect(packed(container, 'S2-gr121-30-30', {})).toEqual(['needs-answer filter']);
});

test('a pouch inside a set only where its maker says so (contradiction pattern 8)', () => {
  expect(packed(P1, 'S1-pv132-4-20', { inner: [P4] })).toEqual(['needs-answer packaging']);
  const inside = entityOf('packaging', 'PI', 'type: pouch\ninside_set: {use: allowed}');
  expect(packed(P1, 'S1-pv132-4-20', { inner: [inside] })).toEqual([]);
  const never = entityOf('packaging', 'PJ', 'type: pouch\ninside_set: {use: forbidden}');
  expect(packed(P1, 'S1-pv132-4-20', { inner: [never] })).toEqual(['fails packaging']);
});

test('packed twice only where the packaging states it', () => {
  expect(packed(P4, 'S1-pv132-4-20', { packedTwice: nowhere })).toEqual(['needs-answer packaging']);
});

test('what a governing table shows of a demand', () => {
  const time = (bounds: Parameters<typeof requirement>[1]) =>
    acceptedInterval('steam-dry', requirement('time', bounds), site.policies);
  expect(time({ at_least: '30 min' })).toEqual({ low: 1800, high: Number.POSITIVE_INFINITY });
  expect(time({ stated: '30 min' })).toEqual({ low: 1800, high: Number.POSITIVE_INFINITY });
  expect(time({ about: '30 min' })).toEqual({ low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY });
  expect(acceptedInterval('exposure', requirement('time', { stated: '4 min' }), site.policies)).toEqual({
    low: 240,
    high: 240,
  });
  expect(acceptedInterval('mass', requirement('mass', { stated: '10 kg' }), undefined)).toEqual({
    low: Number.NEGATIVE_INFINITY,
    high: 10,
  });
});
