type Numbers = Uint8Array | Uint32Array;

/** Lists of numbers, one after the other in one piece of memory. */
export class Rows<N extends Numbers> {
  /** Where each list ends. */
  readonly ends: Uint32Array;
  readonly values: N;

  constructor(ends: Uint32Array, values: N) {
    this.ends = ends;
    this.values = values;
  }

  get count(): number {
    return this.ends.length;
  }

  /** A view of one list; empty where there is none. */
  row(index: number): N {
    return this.values.subarray(this.#endOf(index - 1), this.#endOf(index)) as N;
  }

  /** Where the list begins. */
  from(index: number): number {
    return this.#endOf(index - 1);
  }

  /** Where the next list begins. */
  to(index: number): number {
    return this.#endOf(index);
  }

  /** Tells of each list that holds the number, once for each time. */
  eachWith(number: number, tell: (index: number) => void): void {
    for (let at = this.values.indexOf(number); at >= 0; at = this.values.indexOf(number, at + 1)) {
      let index = 0;
      while ((this.ends[index] ?? 0) <= at) index++;
      tell(index);
    }
  }

  /** False for what no writer made. */
  isWhole(): boolean {
    let before = 0;
    for (const end of this.ends) {
      if (end < before) return false;
      before = end;
    }
    return before === this.values.length;
  }

  #endOf(index: number): number {
    return this.ends[index] ?? 0;
  }
}

/** Writes lists one after the other. */
export class RowsWriter<N extends Numbers> {
  readonly #make: new (
    length: number,
  ) => N;
  readonly #ends: number[] = [];
  readonly #parts: ArrayLike<number>[] = [];
  #length = 0;

  constructor(make: new (length: number) => N) {
    this.#make = make;
  }

  add(row: ArrayLike<number>): void {
    this.#length += row.length;
    this.#ends.push(this.#length);
    if (row.length > 0) this.#parts.push(row);
  }

  done(): Rows<N> {
    const values = new this.#make(this.#length);
    let at = 0;
    for (const part of this.#parts) {
      values.set(part, at);
      at += part.length;
    }
    return new Rows(Uint32Array.from(this.#ends), values);
  }
}
