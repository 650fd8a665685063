import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { entityKey } from '../../../server/src/library/keys.ts';
import { Readers } from '../../../server/src/library/readers.ts';

const names = ['a', 'b', 'c', 'd'];
const keys = names.map((name) => entityKey('device', name));
const keySet = fc.subarray(keys).map((some) => new Set(some));
const step = fc.oneof(
  fc.record({ does: fc.constant('put' as const), reader: fc.constantFrom(...names), reads: keySet }),
  fc.record({ does: fc.constant('forget' as const), reader: fc.constantFrom(...names) }),
  fc.record({ does: fc.constant('ask' as const), key: fc.constantFrom(...keys) }),
);

describe('who read which keys', () => {
  it('is told alike whether it was noted at once or when asked', () => {
    fc.assert(
      fc.property(fc.array(step, { maxLength: 40 }), (steps) => {
        const both = [new Readers<string>('at-once'), new Readers<string>('when-asked')];
        const plain = new Map<string, ReadonlySet<string>>();
        for (const one of steps) {
          if (one.does === 'put') {
            for (const readers of both) readers.put(one.reader, [...one.reads]);
            plain.set(one.reader, one.reads);
          } else if (one.does === 'forget') {
            for (const readers of both) readers.forget(one.reader);
            plain.delete(one.reader);
          } else {
            const expected = [...plain].filter(([, reads]) => reads.has(one.key)).map(([reader]) => reader);
            for (const readers of both) expect([...readers.of(one.key)].sort()).toEqual(expected.sort());
          }
        }
      }),
      { numRuns: 2_000, seed: 20250303 },
    );
  });
});
