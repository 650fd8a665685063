import { describe, expect, it } from 'vitest';
import { allRules } from '../../../server/src/rules/all.generated.ts';
import { runExample } from '../../support/examples.ts';

describe.each(allRules.map((rule) => [rule.id, rule] as const))('%s', (_, rule) => {
  it('has at least two bad and two good examples', () => {
    expect(rule.examples.bad.length).toBeGreaterThanOrEqual(2);
    expect(rule.examples.good.length).toBeGreaterThanOrEqual(2);
  });

  it.each(rule.examples.bad.map((text, index) => [index + 1, text] as const))(
    'finds exactly what is marked in bad example %i',
    (_number, text) => {
      const { problems, expected, found } = runExample(rule, text);
      expect(problems).toEqual([]);
      expect(expected.length).toBeGreaterThan(0);
      expect(found).toEqual(expected);
    },
  );

  it.each(rule.examples.good.map((text, index) => [index + 1, text] as const))(
    'finds nothing in good example %i',
    (_number, text) => {
      const { problems, expected, found } = runExample(rule, text);
      expect(problems).toEqual([]);
      expect(expected).toEqual([]);
      expect(found).toEqual([]);
    },
  );
});
