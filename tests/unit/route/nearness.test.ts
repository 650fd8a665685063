import { describe, expect, it } from 'vitest';
import { compareNearness, type Nearness, outermost } from '../../../server/src/route/nearness.ts';

describe('nearness', () => {
  it('counts kinds before numbers, numbers before their size', () => {
    const near = (kinds: number, numbers: number, size: number): Nearness => ({ kinds, numbers, size });
    const sorted = [near(1, 0, 0), near(0, 2, 0.1), near(0, 1, 0.9), near(0, 1, 0.2), near(0, 0, 0)];
    expect(sorted.toSorted(compareNearness)).toEqual(sorted.toReversed());
  });

  it('measures between the outermost finite numbers', () => {
    expect(outermost([{ low: 30, high: Number.POSITIVE_INFINITY }, undefined, { low: 20, high: 20 }])).toEqual({
      low: 20,
      high: 30,
    });
    expect(outermost([{ low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY }])).toBeUndefined();
  });
});
