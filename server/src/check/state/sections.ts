/** Pieces of bytes as one, each beginning at a multiple of four so that numbers can be read where they lie. */
export function packed(sections: readonly Uint8Array[]): Uint8Array {
  const head = Uint32Array.of(sections.length, ...sections.map((section) => section.length));
  const whole = new Uint8Array(head.byteLength + sections.reduce((sum, { length }) => sum + aligned(length), 0));
  whole.set(bytesOf(head));
  let at = head.byteLength;
  for (const section of sections) {
    whole.set(section, at);
    at += aligned(section.length);
  }
  return whole;
}

/** The pieces again, without copying. Undefined for anything that `packed` did not make of as many pieces. */
export function unpacked(whole: Uint8Array, count: number): readonly Uint8Array[] | undefined {
  const headLength = 4 * (count + 1);
  if (whole.byteOffset % 4 !== 0 || whole.length < headLength) return undefined;
  const [counted, ...lengths] = new Uint32Array(whole.buffer, whole.byteOffset, count + 1);
  if (counted !== count) return undefined;
  const sections: Uint8Array[] = [];
  let at = headLength;
  for (const length of lengths) {
    sections.push(whole.subarray(at, at + length));
    at += aligned(length);
  }
  return at === whole.length ? sections : undefined;
}

function aligned(length: number): number {
  return Math.ceil(length / 4) * 4;
}

export function bytesOf(numbers: Uint32Array): Uint8Array {
  return new Uint8Array(numbers.buffer, numbers.byteOffset, numbers.byteLength);
}

/** The same memory as numbers of 32 bits, in the order of bytes that this machine has. */
export function numbersOf(bytes: Uint8Array | undefined): Uint32Array {
  if (bytes === undefined || bytes.length % 4 !== 0) throw new RangeError('not a list of numbers');
  return new Uint32Array(bytes.buffer, bytes.byteOffset, bytes.length / 4);
}
