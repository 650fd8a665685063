import { describe, expect, it } from 'vitest';
import { rankedBy } from '../../../client/src/typed-words.ts';

const rows = [
  { label: 'Nothing to encode here', description: 'then the reason' },
  { label: 'Sterilization: Drying time', description: 'after the cycle' },
  { label: 'Drying: Time', description: 'how long it dries' },
  { label: 'Storage: Time', description: 'how long it keeps after drying' },
];

describe('rows that go with typed words', () => {
  it.each([
    ['', [0, 1, 2, 3]],
    ['dry', [2, 1, 3]],
    ['time drying', [2, 1, 3]],
    ['STORAGE', [3]],
    ['ing ti', [1, 2, 3]],
    ['xylophone', []],
  ])('"%s"', (typed, order) => {
    expect(rankedBy(typed, rows)).toEqual(order.map((at) => rows[at]));
  });
});
