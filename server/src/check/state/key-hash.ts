import type { IndexKey } from '../../library/keys.ts';

/**
 * A key as a number of 32 bits. Two keys may share one: whoever compares numbers in place of keys finds too much now and then, never too
 * little.
 */
export function hashOf(key: IndexKey): number {
  let hash = 0x811c9dc5;
  for (let at = 0; at < key.length; at++) hash = Math.imul(hash ^ key.charCodeAt(at), 0x01000193);
  return hash >>> 0;
}

/** The numbers of many keys, each worked out once. */
export class KeyHashes {
  readonly #known = new Map<IndexKey, number>();

  of(keys: Iterable<IndexKey>): readonly number[] {
    const hashes: number[] = [];
    for (const key of keys) hashes.push(this.one(key));
    return hashes;
  }

  one(key: IndexKey): number {
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    const made = hashOf(key);
    this.#known.set(key, made);
    return made;
  }
}
