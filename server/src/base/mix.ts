/**
 * A short stable name for a text: two 32-bit mixes as 16 hexadecimal digits. Two texts that differ have different names for every practical
 * purpose; it says whether something changed, and no secret rests on it.
 */
export function nameOfText(text: string): string {
  let a = 0x811c9dc5;
  let b = 0x1b873593;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    a = Math.imul(a ^ code, 0x01000193);
    b = Math.imul(b ^ (code + 0x9e37), 0x85ebca6b);
    b ^= b >>> 13;
  }
  a = Math.imul(a ^ (a >>> 15), 0x2c1b3c6d) ^ b;
  return `${hex(a ^ (a >>> 12))}${hex(b ^ (b >>> 16))}`;
}

function hex(value: number): string {
  return (value >>> 0).toString(16).padStart(8, '0');
}
