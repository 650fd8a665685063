import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  coverSetOf,
  coversNumber,
  parseCoverPattern,
  setCovers,
  sharedNumber,
  uncoveredNumber,
} from '../../../server/src/quantity/covers.ts';

describe('catalogue numbers covered', () => {
  const cases: readonly (readonly [readonly string[], readonly string[], string, boolean])[] = [
    [['Q-100..Q-180'], ['Q-150'], 'Q-100', true],
    [['Q-100..Q-180'], ['Q-150'], 'Q-150', false],
    [['Q-100..Q-180'], ['Q-150'], 'Q-180', true],
    [['Q-100..Q-180'], ['Q-150'], 'Q-181', false],
    [['Q-100..Q-180'], [], 'Q-99', false],
    [['Q-100..Q-180'], [], 'Q-0120', false],
    [['Q-100..180'], [], 'Q-120', true],
    [['Q-8..Q-12'], [], 'Q-9', true],
    [['Q-8..Q-12'], [], 'Q-10', true],
    [['Q-8..Q-12'], [], 'Q-09', false],
    [['45-1xx'], [], '45-123', true],
    [['45-1xx'], ['45-12x'], '45-123', false],
    [['45-1xx'], [], '45-1234', false],
    [['45-1xx-B'], [], '45-107-B', true],
    [['Q-box'], [], 'Q-box', true],
    [['Q-box'], [], 'Q-bo1', false],
    [['DW-3301', 'DW-3302'], [], 'DW-3302', true],
    [['DW-3301'], [], 'dw-3301', false],
    [['100A..110A'], [], '105A', true],
    [['100A..110A'], [], '105', false],
  ];
  it.each(cases)('%j without %j: %s is %s', (covers, excludes, number, covered) => {
    expect(coversNumber(covers, excludes, number)).toBe(covered);
  });
  it('says why an entry cannot be read', () => {
    expect(parseCoverPattern(' ')).toEqual({ fault: 'empty' });
    expect(parseCoverPattern('9'.repeat(500))).toEqual({ fault: 'too-long' });
    expect(parseCoverPattern('Q-180..Q-100')).toMatchObject({ fault: 'range-reversed' });
    expect(parseCoverPattern('A-1..B-2')).toMatchObject({ fault: 'range-unclear' });
    expect(parseCoverPattern('Q-01..Q-100')).toMatchObject({ fault: 'range-unclear' });
  });
  it('finds a number that two lists share, and one that is left out', () => {
    const asked = coverSetOf(['45-1xx'], ['45-12x']);
    expect(sharedNumber(asked, coverSetOf(['45-120..45-130'], []))).toBe('45-130');
    expect(sharedNumber(asked, coverSetOf(['45-120..45-129'], []))).toBeUndefined();
    expect(uncoveredNumber(asked, coverSetOf(['45-100..45-180'], []))).toMatch(/^45-1[89]/);
    expect(uncoveredNumber(asked, coverSetOf(['45-1xx'], []))).toBeUndefined();
  });
  it('counts as a person counts', () => {
    const range = fc.tuple(fc.nat(1200), fc.nat(300)).map(([low, more]) => [low, low + more] as const);
    fc.assert(
      fc.property(range, range, fc.nat(1600), ([a, b], [c, d], n) => {
        const set = coverSetOf([`K-${a}..K-${b}`], [`K-${c}..K-${d}`]);
        expect(setCovers(set, `K-${n}`)).toBe(a <= n && n <= b && !(c <= n && n <= d));
        const shared = sharedNumber(coverSetOf([`K-${a}..K-${b}`], []), coverSetOf([`K-${c}..K-${d}`], []));
        expect(shared !== undefined).toBe(Math.max(a, c) <= Math.min(b, d));
        expect(uncoveredNumber(set, set)).toBeUndefined();
      }),
    );
  });
});
