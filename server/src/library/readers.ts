import type { IndexKey } from './keys.ts';

const none: ReadonlySet<never> = new Set();

/**
 * Who read which keys. What a reader reads the next time is compared with what it read before: of the thousands of keys that some read,
 * an edit changes few.
 */
export class Readers<Reader> {
  readonly #readers = new Map<IndexKey, Set<Reader>>();
  readonly #reads = new Map<Reader, ReadonlySet<IndexKey>>();

  of(key: IndexKey): Iterable<Reader> {
    return this.#readers.get(key) ?? none;
  }

  /** What it read takes the place of what it read before. */
  put(reader: Reader, reads: ReadonlySet<IndexKey>): void {
    const before = this.#reads.get(reader) ?? none;
    this.#reads.set(reader, reads);
    for (const key of before) if (!reads.has(key)) this.#remove(key, reader);
    for (const key of reads) if (!before.has(key)) this.#add(key, reader);
  }

  forget(reader: Reader): void {
    for (const key of this.#reads.get(reader) ?? none) this.#remove(key, reader);
    this.#reads.delete(reader);
  }

  #add(key: IndexKey, reader: Reader): void {
    const readers = this.#readers.get(key);
    if (readers === undefined) this.#readers.set(key, new Set([reader]));
    else readers.add(reader);
  }

  #remove(key: IndexKey, reader: Reader): void {
    const readers = this.#readers.get(key);
    readers?.delete(reader);
    if (readers?.size === 0) this.#readers.delete(key);
  }
}
