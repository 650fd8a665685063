import { nameOfText } from '../../base/mix.ts';

/** Draws that are the same for the same seed, on every computer. Nothing secret rests on them. */
export class Random {
  #state: number;

  constructor(seed: string) {
    this.#state = Number.parseInt(nameOfText(seed).slice(0, 8), 16);
  }

  /** From 0 to below 1 (mulberry32). */
  next(): number {
    this.#state = (this.#state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(this.#state ^ (this.#state >>> 15), 1 | this.#state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  }

  shuffled<Item>(items: readonly Item[]): readonly Item[] {
    const mixed = [...items];
    for (let index = mixed.length - 1; index > 0; index--) {
      const other = Math.floor(this.next() * (index + 1));
      const [a, b] = [mixed[index], mixed[other]];
      if (a !== undefined && b !== undefined) [mixed[index], mixed[other]] = [b, a];
    }
    return mixed;
  }
}
