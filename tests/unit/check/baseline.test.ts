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

const three = baselineOf([finding('step-without-why'), finding('step-without-why'), finding('cool-forced')]);

describe('a baseline', () => {
  it('is written sorted, with counts, and read back the same', () => {
    const text = baselineText(three);
    expect(text).toBe(`{
  "format": "traywright-baseline",
  "version": 1,
  "findings": [
    {"fingerprint":"cool-forced procedure/p steps[0]","count":1},
    {"fingerprint":"step-without-why procedure/p steps[0]","count":2}
  ]
}
`);
    expect(readBaseline(text)).toEqual({ baseline: three });
    expect(readBaseline(baselineText({ counts: new Map() }))).toEqual({ baseline: { counts: new Map() } });
  });

  it('never holds what nobody may hide', () => {
    const all = ['modality-prohibited', 'waiver-unused', 'setting-unknown', 'internal', 'iuss-not-offered'];
    expect(sizeOf(baselineOf(all.map((rule) => finding(rule))))).toBe(0);
    const forged = new BaselineFilter({ counts: new Map([['modality-prohibited procedure/p steps[0]', 9]]) });
    expect(forged.holdsBack(finding('modality-prohibited'))).toBe(false);
  });

  it('holds back as many as it counted, and no more', () => {
    const filter = new BaselineFilter(three);
    const hits = [1, 2, 3].map(() => filter.holdsBack(finding('step-without-why')));
    expect(hits).toEqual([true, true, false]);
    expect(filter.holdsBack(finding('step-without-why', 'steps[1]'))).toBe(false);
    expect(filter.settled()).toBe(1);
  });

  it('only gets smaller', () => {
    const now = baselineOf([finding('step-without-why'), finding('cool-touch-or-cold-surface')]);
    expect(shrunk(three, now)).toEqual(baselineOf([finding('step-without-why')]));
    expect(shrunk(now, three)).toEqual(baselineOf([finding('step-without-why')]));
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
  ])('refuses %s', (text, why) => {
    expect(readBaseline(text)).toEqual({ why });
  });
});
