import type { GivenAnswer } from '../../library/view.ts';
import type { KeyHashes } from './key-hash.ts';
import type { KnownAnswers } from './library-state.ts';
import { RowsWriter } from './rows.ts';

/**
 * The answers that still hold, and those given now. Two answers may share the number of their key, so one of before is never taken to be
 * the one given now unless it rests on the very same.
 */
export function nextAnswers(
  before: KnownAnswers,
  reached: ReadonlySet<number>,
  given: Iterable<GivenAnswer>,
  hashes: KeyHashes,
): KnownAnswers {
  const fresh = [...given].map(({ key, reads }) => ({ key: hashes.one(key), reads: hashes.of(reads) }));
  const asked = new Set(fresh.map(({ key }) => key));
  const held = new Set<string>();
  const keys: number[] = [];
  const reads = new RowsWriter(Uint32Array);
  for (let place = 0; place < before.keys.length; place++) {
    if (reached.has(place)) continue;
    const key = before.keys[place] ?? 0;
    const row = before.reads.row(place);
    if (asked.has(key)) held.add(nameOf(key, row));
    keys.push(key);
    reads.add(row);
  }
  for (const { key, reads: row } of fresh) {
    if (held.has(nameOf(key, row))) continue;
    keys.push(key);
    reads.add(row);
  }
  return { keys: Uint32Array.from(keys), reads: reads.done() };
}

function nameOf(key: number, reads: ArrayLike<number>): string {
  return `${key}:${Array.prototype.join.call(reads, ',')}`;
}
