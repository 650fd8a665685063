import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { atomsIn, type Formula, holdsWith, isSmallest, smallestClash } from '../../../server/src/route/formula.ts';

const { formula } = fc.letrec<{ formula: Formula }>((tie) => ({
  formula: fc.oneof(
    { maxDepth: 4, depthSize: 'small' },
    fc.record({
      is: fc.constant('free-of' as const),
      atoms: fc.array(fc.constantFrom('a', 'b', 'c', 'd', 'e'), { maxLength: 3 }),
    }),
    fc.record({ is: fc.constant('all' as const), parts: fc.array(tie('formula'), { maxLength: 4 }) }),
    fc.record({ is: fc.constant('any' as const), parts: fc.array(tie('formula'), { minLength: 1, maxLength: 4 }) }),
  ),
}));

describe('the smallest clash of a formula', () => {
  it('is a clash, and none of its elements can be spared', () => {
    fc.assert(
      fc.property(formula, (one) => {
        const atoms = [...atomsIn(one)].sort();
        const clash = smallestClash(one, atoms);
        if (clash === undefined) expect(holdsWith(one, new Set(atoms))).toBe(true);
        else expect(isSmallest(one, clash)).toBe(true);
      }),
      { seed: 3, numRuns: 500 },
    );
  });

  it('keeps what stands first where either would do', () => {
    const either: Formula = { is: 'free-of', atoms: ['page', 'policy'] };
    expect(smallestClash(either, ['page', 'policy'])).toEqual(['page']);
    expect(smallestClash(either, ['policy', 'page'])).toEqual(['policy']);
    expect(smallestClash({ is: 'any', parts: [] }, [])).toEqual([]);
  });
});
