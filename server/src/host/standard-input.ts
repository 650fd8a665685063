import { readSync } from 'node:fs';
import { decodeBytes } from '../syntax/decode.ts';
import { byteLimit } from './read-text.ts';

/** All of standard input as text, up to the size that a rule file may have. */
export function readStandardInput(): { readonly text: string } | { readonly why: string } {
  const parts: Buffer[] = [];
  let size = 0;
  for (;;) {
    const part = Buffer.allocUnsafe(65_536);
    const count = readSome(part);
    if (count === 'failed') return { why: 'Standard input cannot be read.' };
    if (count === 0) break;
    size += count;
    if (size > byteLimit) return { why: 'Standard input is longer than a rule file may be.' };
    parts.push(part.subarray(0, count));
  }
  const decoded = decodeBytes(Buffer.concat(parts));
  return 'text' in decoded ? decoded : { why: `Standard input: ${decoded.problem.message}` };
}

function readSome(into: Buffer): number | 'failed' {
  for (;;) {
    try {
      return readSync(0, into, 0, into.length, null);
    } catch (thrown) {
      const code = thrown instanceof Error && 'code' in thrown ? thrown.code : undefined;
      if (code === 'EOF') return 0;
      if (code !== 'EAGAIN') return 'failed';
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 5);
    }
  }
}
