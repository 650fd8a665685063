import { readdirSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { meantOf, outcomesOf } from '../../support/meant.ts';

/**
 * Instructions of invented makers, each in the manner of another author, with what a person means by each sentence. Whoever presses nothing
 * but Enter gets these fields, no more and no fewer than the data say.
 */

const pages = readdirSync(path.join(import.meta.dirname, 'instructions')).filter((name) => name.startsWith('meant-'));

describe.each(pages)('%s', (name) => {
  const outcomes = outcomesOf(meantOf(name));

  it('each sentence becomes what it means, but for what the data tell', () => {
    const told = outcomes.map(({ words, toldMissing, toldExtra }) => ({
      words,
      missing: toldMissing,
      extra: toldExtra,
    }));
    expect(outcomes.map(({ words, missing, extra }) => ({ words, missing, extra }))).toEqual(told);
  });

  it('nearly nothing is proposed that nobody meant', () => {
    const wrong = outcomes.filter(({ verdict }) => verdict === 'wrong');
    expect(wrong.length / outcomes.length).toBeLessThanOrEqual(mostWrong);
  });
});

const mostWrong = 0.03;
