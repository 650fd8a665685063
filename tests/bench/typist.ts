import type { Seeded } from './seeded.ts';

/** One change of a text as an editor sends it: from `from` on, `removed` characters give way to `typed`. */
export interface Key {
  readonly from: number;
  readonly removed: number;
  readonly typed: string;
}

/** A person at one file: puts in a digit and takes it back, adds words to a quote, writes a new statement letter by letter. */
export class Typist {
  readonly #seeded: Seeded;
  #text: string;

  constructor(text: string, seeded: Seeded) {
    this.#text = text;
    this.#seeded = seeded;
  }

  get text(): string {
    return this.#text;
  }

  /** The text is the first one again after each of the three. */
  *keys(): Generator<Key, never> {
    for (;;) {
      yield* this.#otherDigit();
      yield* this.#wordsInQuote();
      yield* this.#newStatement();
    }
  }

  /** One change by itself, for who knows where. */
  put(from: number, removed: number, typed: string): Key {
    this.#text = this.#text.slice(0, from) + typed + this.#text.slice(from + removed);
    return { from, removed, typed };
  }

  /** Where one of these places of the text ends; undefined when it has none. */
  placeAfter(pattern: RegExp): number | undefined {
    const found = [...this.#text.matchAll(pattern)];
    if (found.length === 0) return undefined;
    const { index, 0: words } = this.#seeded.pick(found);
    return index + words.length;
  }

  *#otherDigit(): Generator<Key> {
    const end = this.placeAfter(/^ .*: "?\d/gm);
    if (end === undefined) return;
    const right = this.#text.charAt(end - 1);
    for (const digit of [String(this.#seeded.below(10)), right]) {
      yield this.put(end - 1, 1, '');
      yield this.put(end - 1, 0, digit);
    }
  }

  *#wordsInQuote(): Generator<Key> {
    const end = this.placeAfter(/quote: "[^"\n]*(?="$)/gm);
    if (end !== undefined) yield* this.#thereAndBack(end, [...' at once']);
  }

  *#newStatement(): Generator<Key> {
    const end = this.placeAfter(/^statements:/gm);
    const line = '{doc: X-1, rev: A, page: 12, quote: "Keep dry for 10 min."}';
    if (end !== undefined) yield* this.#thereAndBack(end, ['\n  ', ...'s99:', ' ', ...line]);
  }

  *#thereAndBack(from: number, pieces: readonly string[]): Generator<Key> {
    let end = from;
    for (const piece of pieces) {
      yield this.put(end, 0, piece);
      end += piece.length;
    }
    yield this.put(from, end - from, '');
  }
}
