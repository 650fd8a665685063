import type { IndexKey } from './keys.ts';

const none: ReadonlySet<never> = new Set();

/**
 * When a reader is noted under all that it read: at once where keys change while somebody waits, or not before somebody asks where most
 * likely nobody will.
 */
export type WhenNoted = 'at-once' | 'when-asked';

/**
 * Who read which keys. What a reader reads the next time is compared with what it read before: of the thousands of keys that some read,
 * an edit changes few.
 */
export class Readers<Reader> {
  readonly #readers = new Map<IndexKey, Set<Reader>>();
  readonly #reads = new Map<Reader, readonly IndexKey[]>();
  /** Those that are not among `#readers` yet. */
  readonly #waiting = new Set<Reader>();
  readonly #noted: WhenNoted;

  constructor(noted: WhenNoted) {
    this.#noted = noted;
  }

  of(key: IndexKey): Iterable<Reader> {
    for (const reader of this.#waiting) for (const read of this.#reads.get(reader) ?? []) this.#add(read, reader);
    this.#waiting.clear();
    return this.#readers.get(key) ?? none;
  }

  /** What it read takes the place of what it read before. */
  put(reader: Reader, reads: readonly IndexKey[]): void {
    const before = this.#reads.get(reader);
    this.#reads.set(reader, reads);
    if (before === undefined && this.#noted === 'when-asked') this.#waiting.add(reader);
    if (this.#waiting.has(reader)) return;
    const was = new Set(before);
    for (const key of reads) if (!was.delete(key)) this.#add(key, reader);
    for (const key of was) this.#remove(key, reader);
  }

  forget(reader: Reader): void {
    if (!this.#waiting.delete(reader)) for (const key of this.#reads.get(reader) ?? []) this.#remove(key, reader);
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
