import { describe, expect, it } from 'vitest';
import { nearWords } from '../../../server/src/editor/field-likelihood.ts';
import { readQuote } from '../../../server/src/quantity/prose/read-quote.ts';

describe('the words of a field in the order of what a sentence names', () => {
  const agents = new Map([
    ['oil', 'Oil.'],
    ['silicone-spray', 'Silicone spray.'],
    ['paraffin', 'Paraffin oil.'],
  ]);

  it.each([
    ['Spray the joint with silicone.', 'silicone-spray', 1],
    ['Apply a silicone-free lubricant.', 'oil', 0],
    ['Use an agent free of silicone.', 'oil', 0],
    ['Silikonfreies Öl verwenden, ohne Silicone.', 'oil', 0],
  ])('%s', (quote, first, named) => {
    const near = nearWords(agents, readQuote(quote));
    expect(near.words[0]).toBe(first);
    expect(near.named).toBe(named);
  });
});
