/** Numbers that look random and are the same in every run: a 32-bit mixing generator (mulberry32). */
export class Seeded {
  #state: number;

  constructor(seed: number) {
    this.#state = seed >>> 0;
  }

  /** At least 0, below 1. */
  next(): number {
    this.#state = (this.#state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(this.#state ^ (this.#state >>> 15), this.#state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  }

  /** A whole number from 0 to `limit` - 1. */
  below(limit: number): number {
    return Math.floor(this.next() * limit);
  }

  pick<Item>(items: readonly Item[]): Item {
    const item = items[this.below(items.length)];
    if (item === undefined) throw new Error('nothing to pick from');
    return item;
  }

  /** The same items in another order. */
  shuffled<Item>(items: readonly Item[]): readonly Item[] {
    const left = [...items];
    const taken: Item[] = [];
    while (left.length > 0) taken.push(...left.splice(this.below(left.length), 1));
    return taken;
  }
}
