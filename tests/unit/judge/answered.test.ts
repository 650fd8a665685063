import { describe, expect, test } from 'vitest';
import { routineSetting } from '../../../server/src/judge/setting.ts';
import { judgeSterilization, optionsOf } from '../../../server/src/judge/sterilization.ts';
import { entityOf } from '../../support/entities.ts';
import { cycleOf, device, site, sterilized, today } from './department.ts';

describe('a written answer of the maker', () => {
  const torn = device(
    'd',
    `sterilization: {any_of: [{id: o, modality: steam-prevac, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {conflict: [{at_least: 20 min, doc: A-1}, {at_least: 40 min, doc: r-7}]}}]}`,
  );
  const judged = (response: string) => {
    const answer = entityOf('response', 'r-7', `about: d\n${response}`);
    return sterilized(torn, 'S1-pv132-4-30', undefined, 0, { setting: routineSetting(today, site, () => [answer]) });
  };
  test('settles a conflict when its side cites it, and only when it may be relied on', () => {
    expect(sterilized(torn, 'S1-pv132-4-30')).toEqual(['needs-answer steam-dry']);
    expect(judged('status: verified\nsigned: true')).toEqual(['fails steam-dry']);
    expect(judged('status: unverified')).toEqual(['needs-answer steam-dry']);
    expect(judged('status: verified\nexpires: 2025-01-01')).toEqual(['needs-answer steam-dry']);
    expect(judged('status: withdrawn')).toEqual(['needs-answer steam-dry']);
  });
  test('to an ambiguous value must still be entered: then the educator settles it', () => {
    const unclear = device(
      'd',
      'sterilization: {any_of: [{id: o, modality: steam-prevac, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {ambiguous: "dry well", ask: q14}}]}',
    );
    const [option] = optionsOf(unclear);
    if (option === undefined) throw new Error('no option');
    const dry = (response: string) => {
      const answer = entityOf('response', 'r-8', `about: d\n${response}`);
      const all = judgeSterilization({
        device: unclear,
        option,
        ...cycleOf('S1-pv132-4-30'),
        setting: routineSetting(today, site, () => [answer]),
      });
      return all.find((one) => one.parameter === 'steam-dry');
    };
    expect(dry('status: verified\nanswers: [q14]')).toMatchObject({ outcome: 'needs-answer', settledBy: 'educator' });
    expect(dry('status: verified\nfield: "sterilization.any_of[o].dry"')).toMatchObject({
      outcome: 'needs-answer',
      settledBy: 'educator',
    });
    expect(dry('status: unverified\nanswers: [q14]')).toMatchObject({
      outcome: 'needs-answer',
      settledBy: 'manufacturer',
    });
  });
});
