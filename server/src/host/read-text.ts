import { closeSync, constants, fstatSync, openSync, readSync } from 'node:fs';

/** Four bytes for each character that the reader would take: anything longer is refused by its size alone. */
export const byteLimit = 4_000_000;

export type Bytes =
  | { readonly bytes: Uint8Array }
  | { readonly refused: 'not-ordinary' | 'too-large' | 'unreadable' | 'gone' };

const openFlags = constants.O_RDONLY | (constants.O_NOFOLLOW ?? 0) | (constants.O_NONBLOCK ?? 0);

/** Reads an ordinary file up to `limit` bytes. A link is not followed, a pipe not waited for, a device not read. Never throws. */
export function readBytes(path: string, limit: number = byteLimit): Bytes {
  let handle: number;
  try {
    handle = openSync(path, openFlags);
  } catch (thrown) {
    return { refused: refusalOf(thrown) };
  }
  try {
    const stats = fstatSync(handle);
    if (!stats.isFile()) return { refused: 'not-ordinary' };
    if (stats.size > limit) return { refused: 'too-large' };
    return readAll(handle, stats.size, limit);
  } catch (thrown) {
    return { refused: refusalOf(thrown) };
  } finally {
    closeSync(handle);
  }
}

const compared = Buffer.from(new ArrayBuffer(1 << 17));

/**
 * Whether the file has these bytes, and no more. Only for what a listing found to be an ordinary file: nothing else is asked about it, since
 * what it holds is all that is compared. Never throws.
 */
export function holdsBytes(path: string, bytes: Uint8Array, from: number, to: number): boolean {
  const length = to - from;
  // One byte more, so that a file that goes on is seen.
  const room = length < compared.length ? compared : Buffer.allocUnsafeSlow(length + 1);
  try {
    const handle = openSync(path, openFlags);
    try {
      if (readSync(handle, room, 0, length + 1, null) !== length) return false;
      return room.compare(bytes, from, to, 0, length) === 0;
    } finally {
      closeSync(handle);
    }
  } catch {
    return false;
  }
}

/** One byte more than the file had when it was opened, so that a file that grows meanwhile is seen. */
function readAll(handle: number, size: number, limit: number): Bytes {
  let buffer = roomFor(size + 1);
  let filled = 0;
  for (;;) {
    const count = readSync(handle, buffer, filled, buffer.length - filled, null);
    filled += count;
    // More was asked for than the file had: nothing more is there to come.
    if (count === 0 || (count === size && filled === size)) return { bytes: taken(buffer, filled) };
    if (filled > limit) return { refused: 'too-large' };
    if (filled === buffer.length) buffer = Buffer.concat([buffer], Math.min(limit + 1, buffer.length * 2));
  }
}

/** Rule files are small and come in thousands: they share pieces of memory. Never one piece for a file that is large itself. */
const sharedLength = 1 << 19;
let shared = Buffer.alloc(0);

function roomFor(length: number): Buffer {
  if (length > sharedLength / 8) return Buffer.allocUnsafeSlow(length);
  if (shared.length < length) shared = Buffer.allocUnsafeSlow(sharedLength);
  return shared.subarray(0, length);
}

/** What was read is no longer free. */
function taken(buffer: Buffer, filled: number): Uint8Array {
  if (buffer.buffer === shared.buffer) shared = shared.subarray(filled);
  return buffer.subarray(0, filled);
}

function refusalOf(thrown: unknown): 'not-ordinary' | 'unreadable' | 'gone' {
  const code = thrown instanceof Error && 'code' in thrown ? thrown.code : undefined;
  if (code === 'ENOENT') return 'gone';
  return code === 'ELOOP' || code === 'EMLINK' || code === 'ENXIO' ? 'not-ordinary' : 'unreadable';
}

const longestWritten = 512_000_000;

/** True for an ordinary file that holds exactly this. */
export function holdsAlready(path: string, text: string | Uint8Array): boolean {
  const old = readBytes(path, longestWritten);
  return 'bytes' in old && Buffer.from(text).equals(old.bytes);
}
