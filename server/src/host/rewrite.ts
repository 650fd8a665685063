import { join } from 'node:path';
import { decodeBytes } from '../syntax/decode.ts';
import { writeAtomically } from './atomic-write.ts';
import { staysInside } from './library-paths.ts';
import { readBytes } from './read-text.ts';

/** A new text for a file of a library, and the text that it was made from. */
export interface Rewrite {
  /** Below the library's root, `/` between parts, as the disk spells it. */
  readonly path: string;
  readonly before: string;
  readonly after: string;
}

export type Rewritten = { readonly written: number } | { readonly why: string };

/**
 * Writes all of them or none: nothing where one file is no longer what it was when its new text was made; and where one cannot be written,
 * those before it get their old bytes back. A mark of the encoding at the beginning of a file stays.
 */
export function rewriteAll(root: string, rewrites: readonly Rewrite[]): Rewritten {
  const old = new Map<string, Uint8Array>();
  for (const { path, before } of rewrites) {
    const bytes = staysInside(path) ? readBytes(join(root, path)) : undefined;
    const decoded = bytes !== undefined && 'bytes' in bytes ? decodeBytes(bytes.bytes) : undefined;
    if (bytes === undefined || !('bytes' in bytes) || decoded === undefined || !('text' in decoded))
      return { why: `"${path}" can no longer be read, so nothing was written.` };
    if (decoded.text !== before) return { why: `"${path}" has changed meanwhile, so nothing was written. Try again.` };
    old.set(path, Uint8Array.from(bytes.bytes));
  }
  const done: string[] = [];
  for (const { path, after } of rewrites) {
    const bytes = old.get(path) ?? new Uint8Array();
    const written = writeAtomically(root, path, `${markOf(bytes)}${after}`);
    if ('why' in written) {
      for (const earlier of done) writeAtomically(root, earlier, old.get(earlier) ?? '');
      return { why: `${written.why} No other file was changed either.` };
    }
    done.push(path);
  }
  return { written: done.length };
}

function markOf(bytes: Uint8Array): string {
  return bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? '\ufeff' : '';
}
