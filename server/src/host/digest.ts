import { createHash } from 'node:crypto';
import { closeSync, openSync, readFileSync, readSync } from 'node:fs';

/** SHA-256 of a file that is part of the program; undefined when it isn't there. */
export function programDigest(path: string): string | undefined {
  try {
    return createHash('sha256').update(readFileSync(path)).digest('hex');
  } catch {
    return undefined;
  }
}

/**
 * The name of the build of the program at `path`, which stands in its first characters, with what runs it. Undefined for a program that
 * was not built: what it gives today says nothing about what it gives tomorrow.
 */
export function buildName(path: string): string | undefined {
  const head = Buffer.alloc(36);
  try {
    const handle = openSync(path, 'r');
    try {
      readSync(handle, head, 0, head.length, 0);
    } finally {
      closeSync(handle);
    }
  } catch {
    return undefined;
  }
  const name = /^\/\*([0-9a-f]{32})\*\/$/.exec(head.toString('latin1'))?.[1];
  return name === undefined
    ? undefined
    : `${name} ${process.platform} ${process.arch} ${JSON.stringify(process.versions)}`;
}
