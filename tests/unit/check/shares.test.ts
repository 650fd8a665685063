import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { neighbours } from '../../../server/src/check/together/neighbours.ts';
import { Shares } from '../../../server/src/check/together/shares.ts';
import type { IndexKey } from '../../../server/src/library/keys.ts';

describe('shares of work', () => {
  it('give each piece to one worker, whoever asks how often', () => {
    fc.assert(
      fc.property(
        fc.nat(300),
        fc.integer({ min: 1, max: 8 }),
        fc.infiniteStream(fc.nat(7)),
        (pieces, workers, asking) => {
          const shares = new Shares(Shares.of(pieces, workers));
          const taken: number[] = [];
          for (const worker of asking) {
            expect(shares.left()).toBe(pieces - taken.length);
            const piece = shares.take(worker % workers);
            if (piece === undefined) break;
            taken.push(piece);
          }
          expect(taken.sort((a, b) => a - b)).toEqual(Array.from({ length: pieces }, (_, piece) => piece));
        },
      ),
    );
  });

  it('leave neighbours with one worker, until one has nothing left and takes from the end of the longest', () => {
    const shares = new Shares(Shares.of(12, 3));
    expect([0, 1, 2, 0, 1].map((worker) => shares.take(worker))).toEqual([0, 4, 8, 1, 5]);
    expect([0, 0].map((worker) => shares.take(worker))).toEqual([2, 3]);
    expect([0, 0, 0].map((worker) => shares.take(worker))).toEqual([11, 7, 10]);
  });
});

describe('neighbours', () => {
  const named = (...keys: string[]) => ({ exports: keys as IndexKey[] });

  it('are files that name each other, before those that only have a kind in common', () => {
    const records = [
      named('entity:device/a', 'kind:device'),
      named('entity:device/b', 'kind:device'),
      named('entity:set/s', 'kind:set', 'users:device/b'),
      undefined,
      named('entity:set/t', 'kind:set', 'users:device/a'),
      named('entity:document/d', 'document:D-1', 'kind:document'),
      named('entity:document/e', 'kind:document', 'users:document-number/D-1'),
    ];
    expect(neighbours(records)).toEqual([0, 4, 1, 2, 3, 5, 6]);
  });

  it('hold every place once', () => {
    const keys = fc.uniqueArray(fc.constantFrom('kind:set', 'entity:set/a', 'users:set/a', 'users:set/b', 'about:c'));
    fc.assert(
      fc.property(fc.array(fc.option(keys, { nil: undefined }), { maxLength: 40 }), (records) => {
        const order = neighbours(records.map((one) => (one === undefined ? undefined : named(...one))));
        expect([...order].sort((a, b) => a - b)).toEqual(records.map((_, place) => place));
      }),
    );
  });
});
