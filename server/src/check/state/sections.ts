/** How many numbers of 32 bits the head has for each piece: its length and two sums. */
const perPiece = 3;

/**
 * Pieces of bytes as one, each beginning at a multiple of eight so that numbers can be read where they lie. The head has sums of each piece
 * and of itself, by which a damaged one is known. What comes out is to be written one after the other.
 */
export function packed(sections: readonly Uint8Array[]): readonly Uint8Array[] {
  const head = new Uint32Array(headLengthOf(sections.length) / 4);
  head[0] = sections.length;
  for (const [place, section] of sections.entries())
    head.set([section.length, ...sumsOf(section)], 2 + place * perPiece);
  head[1] = headSumOf(head);
  const parts = sections.flatMap((section) => [section, new Uint8Array(aligned(section.length) - section.length)]);
  return [bytesOf(head), ...parts].filter(({ length }) => length > 0);
}

/** The pieces again, without copying; each is looked at as a whole only when somebody asks whether it is. */
export class Sections {
  readonly #whole: Uint8Array;
  readonly #head: Uint32Array;
  readonly #begins: readonly number[];

  private constructor(whole: Uint8Array, head: Uint32Array, begins: readonly number[]) {
    this.#whole = whole;
    this.#head = head;
    this.#begins = begins;
  }

  /** Undefined for anything that `packed` did not make of as many pieces. */
  static in(whole: Uint8Array, count: number): Sections | undefined {
    const headLength = headLengthOf(count);
    if (whole.byteOffset % 8 !== 0 || whole.length < headLength) return undefined;
    const head = new Uint32Array(whole.buffer, whole.byteOffset, headLength / 4);
    if (head[0] !== count || head[1] !== headSumOf(head)) return undefined;
    const begins = [headLength];
    for (let place = 0; place < count; place++)
      begins.push((begins[place] ?? 0) + aligned(head[2 + place * perPiece] ?? 0));
    return begins[count] === whole.length ? new Sections(whole, head, begins) : undefined;
  }

  /** What no other has, but for one in 2^64. */
  get name(): string {
    return sumsOf(bytesOf(this.#head)).join(' ');
  }

  piece(place: number): Uint8Array {
    const begin = this.#begins[place] ?? 0;
    return this.#whole.subarray(begin, begin + (this.#head[2 + place * perPiece] ?? 0));
  }

  numbers(place: number): Uint32Array {
    return numbersOf(this.piece(place));
  }

  /** Whether none of these pieces is damaged. */
  areWhole(places: readonly number[]): boolean {
    return places.every((place) => {
      const [one, other] = sumsOf(this.piece(place));
      const at = 2 + place * perPiece;
      return this.#head[at + 1] === one && this.#head[at + 2] === other;
    });
  }
}

function headLengthOf(count: number): number {
  return aligned(4 * (2 + count * perPiece));
}

function headSumOf(head: Uint32Array): number {
  return sumsOf(bytesOf(head.subarray(2)))[0];
}

/** Any other content has other sums, but for one in 2^64: against damage, not against somebody who means it. */
function sumsOf(bytes: Uint8Array): readonly [number, number] {
  const words = wordsOf(bytes);
  let one = bytes.length;
  let other = 0x9e3779b9;
  for (let at = 0; at < words.length; at++) {
    const word = words[at] ?? 0;
    one = Math.imul(one ^ word, 0x01000193);
    other = Math.imul(other + word, 0x85ebca6b) ^ (one >>> 15);
  }
  return [one >>> 0, other >>> 0];
}

/** The bytes four by four, the last ones filled up with noughts. */
function wordsOf(bytes: Uint8Array): Uint32Array {
  if (bytes.byteOffset % 4 === 0 && bytes.length % 4 === 0) return numbersOf(bytes);
  const whole = new Uint8Array(aligned(bytes.length));
  whole.set(bytes);
  return numbersOf(whole);
}

function aligned(length: number): number {
  return Math.ceil(length / 8) * 8;
}

export function bytesOf(numbers: Uint32Array | Int32Array | Float64Array): Uint8Array {
  return new Uint8Array(numbers.buffer, numbers.byteOffset, numbers.byteLength);
}

/** The same memory as numbers of 32 bits, in the order of bytes that this machine has. */
export function numbersOf(bytes: Uint8Array): Uint32Array {
  if (bytes.length % 4 !== 0) throw new RangeError('not a list of numbers');
  return new Uint32Array(bytes.buffer, bytes.byteOffset, bytes.length / 4);
}
