import type { GivenAnswer } from '../../library/view.ts';
import type { KeyHashes } from './key-hash.ts';
import type { BriefAnswer, KnownAnswers } from './library-state.ts';
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
  const fresh = [...given].map((one) => ({ ...one, hash: hashes.one(one.key), row: hashes.of(one.reads) }));
  const asked = new Set(fresh.map(({ hash }) => hash));
  const held = new Set<string>();
  const keys: number[] = [];
  const reads = new RowsWriter(Uint32Array);
  const brief: BriefAnswer[] = [];
  const briefBefore = new Map(before.brief.map((one) => [one[0], one]));
  for (let place = 0; place < before.keys.length; place++) {
    if (reached.has(place)) continue;
    const key = before.keys[place] ?? 0;
    const row = before.reads.row(place);
    const words = briefBefore.get(place);
    if (asked.has(key)) held.add(nameOf(key, row));
    if (words !== undefined) brief.push([keys.length, words[1], words[2], words[3]]);
    keys.push(key);
    reads.add(row);
  }
  for (const { hash, row, query, argument, words } of fresh) {
    if (held.has(nameOf(hash, row))) continue;
    if (words !== undefined) brief.push([keys.length, query, argument, words]);
    keys.push(hash);
    reads.add(row);
  }
  return { keys: Uint32Array.from(keys), reads: reads.done(), brief };
}

function nameOf(key: number, reads: ArrayLike<number>): string {
  return `${key}:${Array.prototype.join.call(reads, ',')}`;
}
