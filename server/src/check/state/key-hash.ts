import type { IndexKey } from '../../library/keys.ts';
import type { Rows } from './rows.ts';

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

/** Numbers of keys, asked for far more often than held. */
export class HashSet {
  readonly #hashes = new Set<number>();
  readonly #glance = new Uint8Array(1 << 16);

  get size(): number {
    return this.#hashes.size;
  }

  add(hash: number): void {
    this.#hashes.add(hash);
    this.#glance[hash & 0xffff] = 1;
  }

  /** Whether any number of one list is among these. The list is read where it lies: tens of thousands are looked through again and again. */
  hasAnyOf({ ends, values }: Rows<Uint32Array>, index: number): boolean {
    const end = ends[index] ?? 0;
    for (let at = index === 0 ? 0 : (ends[index - 1] ?? 0); at < end; at++) {
      const hash = values[at] ?? 0;
      if (this.#glance[hash & 0xffff] === 1 && this.#hashes.has(hash)) return true;
    }
    return false;
  }
}
