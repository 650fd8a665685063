const SIGNATURES: readonly (readonly [name: string, bytes: readonly number[]])[] = [
  ['a gzip archive', [0x1f, 0x8b]],
  ['a zip archive or an office document', [0x50, 0x4b, 0x03, 0x04]],
  ['a PDF', [0x25, 0x50, 0x44, 0x46]],
  ['a PNG picture', [0x89, 0x50, 0x4e, 0x47]],
  ['a JPEG picture', [0xff, 0xd8, 0xff]],
  ['an old office document', [0xd0, 0xcf, 0x11, 0xe0]],
  ['text in UTF-32, which is not read here', [0xff, 0xfe, 0x00, 0x00]],
  ['text in UTF-32, which is not read here', [0x00, 0x00, 0xfe, 0xff]],
];

/** What kind of file the first bytes give away, or undefined for what may be text. */
export function fileSignature(bytes: Uint8Array): string | undefined {
  for (const [name, start] of SIGNATURES) if (start.every((byte, at) => bytes[at] === byte)) return name;
  return undefined;
}

/** `UTF-16` with its byte order, by its mark or by every other byte being zero. */
export function utf16Order(bytes: Uint8Array): string | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'UTF-16 (little end first)';
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'UTF-16 (big end first)';
  const looked = Math.min(bytes.length, 256) & ~1;
  if (looked < 4) return undefined;
  let even = 0;
  let odd = 0;
  for (let at = 0; at < looked; at++) {
    if (bytes[at] !== 0) continue;
    if (at % 2 === 0) even++;
    else odd++;
  }
  if (odd > looked / 3 && even === 0) return 'UTF-16 (little end first)';
  if (even > looked / 3 && odd === 0) return 'UTF-16 (big end first)';
  return undefined;
}
