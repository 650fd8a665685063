import type { Problem } from '../base/problem.ts';
import { span } from '../base/span.ts';
import { characterName } from './characters.ts';
import { fileSignature, utf16Order } from './encodings.ts';

export type Decoded = { readonly text: string } | { readonly problem: Problem };

const decoder = new TextDecoder('utf-8', { fatal: true });

/**
 * The text of a file's bytes, one leading byte order mark stripped. Only UTF-8 without control characters is accepted: text guessed
 * from another encoding would put wrong letters and signs in front of the reader. The problem names what was found.
 */
export function decodeBytes(bytes: Uint8Array): Decoded {
  const signature = fileSignature(bytes);
  if (signature !== undefined) return refuse(`This is ${signature}, not a text file.`);
  const order = utf16Order(bytes);
  if (order !== undefined) return refuse(`This file is stored as ${order}. Save it again as UTF-8.`);
  const control = controlByteAt(bytes);
  if (control >= 0) {
    const name = characterName(bytes[control] ?? 0);
    return refuse(
      `Line ${lineOf(bytes, control)} holds a control character, the ${name}, so the file may be damaged. Delete it or restore the file.`,
    );
  }
  try {
    return { text: decoder.decode(bytes) };
  } catch {
    return refuse(invalidMessage(bytes));
  }
}

function refuse(message: string): Decoded {
  return { problem: { rule: 'not-readable', message, span: span(0, 0), severity: 'error' } };
}

/** Tab, line feed and carriage return are the only control bytes that text has. -1 when there are no others. */
function controlByteAt(bytes: Uint8Array): number {
  for (let at = 0; at < bytes.length; at++) {
    const byte = bytes[at] ?? 0;
    if (byte < 32 ? byte !== 9 && byte !== 10 && byte !== 13 : byte === 127) return at;
  }
  return -1;
}

function lineOf(bytes: Uint8Array, end: number): number {
  let line = 1;
  for (let at = 0; at < end; at++) if (bytes[at] === 10) line++;
  return line;
}

function invalidMessage(bytes: Uint8Array): string {
  const at = invalidByteAt(bytes);
  const byte = bytes[at] ?? 0;
  const line = lineOf(bytes, at);
  const code = `0x${byte.toString(16).toUpperCase()}`;
  const sign = byte >= 0xa0 ? ` (there it would be ${String.fromCharCode(byte)})` : '';
  return `Line ${line} holds the byte ${code}, which is not UTF-8; the file seems to be stored as Latin-1 or Windows-1252${sign}. Save it again as UTF-8.`;
}

/** Offset of the first byte that is not part of a well-formed UTF-8 sequence. */
function invalidByteAt(bytes: Uint8Array): number {
  let at = 0;
  while (at < bytes.length) {
    const length = sequenceLength(bytes, at);
    if (length === 0) return at;
    at += length;
  }
  return Math.max(0, bytes.length - 1);
}

function sequenceLength(bytes: Uint8Array, at: number): number {
  const first = bytes[at] ?? 0;
  if (first < 0x80) return 1;
  const length = first >= 0xf0 ? 4 : first >= 0xe0 ? 3 : 2;
  if (first < 0xc2 || first > 0xf4) return 0;
  for (let next = 1; next < length; next++) if (((bytes[at + next] ?? 0) & 0xc0) !== 0x80) return 0;
  try {
    decoder.decode(bytes.subarray(at, at + length));
    return length;
  } catch {
    return 0;
  }
}
