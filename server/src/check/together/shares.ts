/**
 * Pieces of work in a row, shared out among some who work beside each other: each takes the pieces of its own share one after the other,
 * and when they are done helps whoever has most left, from the other end. So all end at about the same time, and neighbours stay with one.
 * A share is one number that all see, the place of its first piece and the place behind its last.
 */
export class Shares {
  readonly #left: Int32Array<SharedArrayBuffer>;

  constructor(memory: SharedArrayBuffer) {
    this.#left = new Int32Array(memory);
  }

  /** `pieces`: fewer than `mostPieces`. */
  static of(pieces: number, workers: number): SharedArrayBuffer {
    const memory = new SharedArrayBuffer(workers * Int32Array.BYTES_PER_ELEMENT);
    const left = new Int32Array(memory);
    for (const [worker, { first, behind }] of sharesOf(pieces, workers).entries()) left[worker] = packed(first, behind);
    return memory;
  }

  /** The next piece for this worker, which nobody else gets; undefined when none is left. */
  take(worker: number): number | undefined {
    for (;;) {
      const own = this.#takeFrom(worker, 'first');
      if (own !== undefined) return own;
      const other = this.#longest();
      if (other === undefined) return undefined;
      const piece = this.#takeFrom(other, 'last');
      if (piece !== undefined) return piece;
    }
  }

  /** How many pieces nobody has taken yet. */
  left(): number {
    return this.#left.reduce((sum, _, share) => sum + this.#lengthOf(share), 0);
  }

  #takeFrom(share: number, end: 'first' | 'last'): number | undefined {
    for (;;) {
      const before = Atomics.load(this.#left, share);
      const [first, behind] = unpacked(before);
      if (first >= behind) return undefined;
      const after = end === 'first' ? packed(first + 1, behind) : packed(first, behind - 1);
      if (Atomics.compareExchange(this.#left, share, before, after) === before)
        return end === 'first' ? first : behind - 1;
    }
  }

  #longest(): number | undefined {
    let longest: number | undefined;
    for (let share = 0; share < this.#left.length; share++) {
      const length = this.#lengthOf(share);
      if (length > 0 && (longest === undefined || length > this.#lengthOf(longest))) longest = share;
    }
    return longest;
  }

  #lengthOf(share: number): number {
    const [first, behind] = unpacked(Atomics.load(this.#left, share));
    return behind - first;
  }
}

export function workersOf(memory: SharedArrayBuffer): number {
  return memory.byteLength / Int32Array.BYTES_PER_ELEMENT;
}

/** What each of the workers begins with. */
export function sharesOf(pieces: number, workers: number): readonly { first: number; behind: number }[] {
  const startOf = (worker: number) => Math.floor((pieces * worker) / workers);
  return Array.from({ length: workers }, (_, worker) => ({ first: startOf(worker), behind: startOf(worker + 1) }));
}

export const mostPieces = 1 << 15;

function packed(first: number, behind: number): number {
  return (behind << 16) | first;
}

function unpacked(share: number): readonly [first: number, behind: number] {
  return [share & 0xffff, share >>> 16];
}
