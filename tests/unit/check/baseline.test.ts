import { describe, expect, it } from 'vitest';
import {
  BaselineFilter,
  baselineOf,
  baselineText,
  readBaseline,
  shrunk,
  sizeOf,
} from '../../../server/src/check/baseline.ts';
import type { Finding } from '../../../server/src/check/finding.ts';

function finding(rule: string, path = 'steps[0]'): Finding {
  return { rule, entity: 'procedure/p', path, message: 'x' } as Finding;
}

const three = baselineOf([finding('step-without-why'), finding('step-without-why'), finding('cool-forced')], []);
const none = new Map<string, number>();

describe('a baseline', () => {
  it('is written sorted, with counts, and read back the same', () => {
    const text = baselineText(three);
    expect(text).toBe(`{
  "format": "traywright-baseline",
  "version": 1,
  "findings": [
    {"fingerprint":"cool-forced procedure/p steps[0]","count":1},
    {"fingerprint":"step-without-why procedure/p steps[0]","count":2}
  ],
  "alsoFound": []
}
`);
    const lines = new Map([
      ['cool-forced procedure/p steps[0]', 5],
      ['step-without-why procedure/p steps[0]', 6],
    ]);
    expect(readBaseline(text)).toEqual({ baseline: three, lines });
    const both = baselineOf([finding('modality-prohibited')], [finding('card-stale'), finding('card-stale')]);
    expect([both.counts.size, both.alsoFound.size]).toEqual([0, 2]);
    expect(readBaseline(baselineText(both))).toMatchObject({ baseline: both });
  });

  it('never holds what nobody may hide', () => {
    const all = ['modality-prohibited', 'waiver-unused', 'setting-unknown', 'internal', 'iuss-not-offered'];
    const found = all.map((rule) => finding(rule));
    expect(sizeOf(baselineOf(found, []))).toBe(0);
    const counts = new Map([['modality-prohibited procedure/p steps[0]', 9]]);
    const forged = new BaselineFilter({ counts, alsoFound: none });
    expect(forged.holdsBack(finding('modality-prohibited'))).toBe(false);
  });

  it('holds back as many as it counted, and no more', () => {
    const filter = new BaselineFilter(three);
    const hits = [1, 2, 3].map(() => filter.holdsBack(finding('step-without-why')));
    expect(hits).toEqual([true, true, false]);
    expect(filter.holdsBack(finding('step-without-why', 'steps[1]'))).toBe(false);
    expect(filter.settled()).toBe(1);
  });

  it('tells what was there and is not held back from what is new, and what is absent', () => {
    const old = baselineOf([finding('modality-prohibited'), finding('cool-forced')], [finding('card-stale')]);
    const filter = new BaselineFilter(old);
    expect(filter.holdsBack(finding('modality-prohibited'))).toBe(false);
    const known = [1, 2].map(() => filter.knows(finding('modality-prohibited')));
    expect(known).toEqual([true, false]);
    expect(filter.absent()).toEqual(['card-stale procedure/p steps[0]', 'cool-forced procedure/p steps[0]']);
    expect(filter.settled()).toBe(1);
  });

  it('only gets smaller', () => {
    const now = baselineOf([finding('step-without-why'), finding('cool-touch-or-cold-surface')], []);
    const both = baselineOf([finding('step-without-why')], []);
    expect(shrunk(three, now)).toEqual(both);
    expect(shrunk(now, three)).toEqual(both);
  });

  it('still knows what was held back and is covered by a waiver since', () => {
    const now = baselineOf([finding('step-without-why'), finding('modality-prohibited')], [finding('cool-forced')]);
    const expected = baselineOf([finding('step-without-why')], [finding('cool-forced')]);
    expect(shrunk(three, now)).toEqual(expected);
  });

  it.each([
    ['{', 'it is not JSON'],
    ['[]', 'it is not a baseline of this version'],
    ['{"format":"traywright-baseline","version":2,"findings":[]}', 'it is not a baseline of this version'],
    ['{"format":"traywright-baseline","version":1,"findings":[{"fingerprint":"a"}]}', 'entry 1 has another form'],
    [
      '{"format":"traywright-baseline","version":1,"findings":[{"fingerprint":"a","count":-1}]}',
      'entry 1 has a count that cannot be',
    ],
    [
      '{"format":"traywright-baseline","version":1,"findings":[{"fingerprint":"a","count":1},{"fingerprint":"a","count":1}]}',
      'entry 2 stands there twice',
    ],
    ['{"format":"traywright-baseline","version":1,"findings":[],"alsoFound":{}}', 'its second list has another form'],
    [
      '{"format":"traywright-baseline","version":1,"findings":[],"alsoFound":[{"fingerprint":"a","count":0}]}',
      'entry 1 of its second list has a count that cannot be',
    ],
  ])('refuses %s', (text, why) => {
    expect(readBaseline(text)).toEqual({ why });
  });
});
