import { createHash } from 'node:crypto';
import { closeSync, openSync, readFileSync, readSync } from 'node:fs';
import type { OpenedFile } from './library-files.ts';

/** How long a mark is, in bytes. */
const markLength = 32;

/**
 * What tells the content of each file from any other, one mark after the other. A file that was not simply opened is marked by another
 * measure, with all that is to say about it, so that no content can pass for it.
 */
export function marksOf(files: readonly OpenedFile[]): Uint8Array {
  const marks = Buffer.alloc(files.length * markLength);
  for (const [at, { problems, content }] of files.entries()) {
    const isPlain = problems.length === 0 && content !== undefined && 'bytes' in content;
    marks.set(isPlain ? sha256(content.bytes) : oddMark(problems, content), at * markLength);
  }
  return marks;
}

function sha256(bytes: Uint8Array): Buffer {
  return createHash('sha256').update(bytes).digest();
}

function oddMark(problems: OpenedFile['problems'], content: OpenedFile['content']): Buffer {
  const isRead = content !== undefined && 'bytes' in content;
  const hash = createHash('sha512').update(JSON.stringify([problems, isRead ? 'read' : (content?.refused ?? '')]));
  if (isRead) hash.update(content.bytes);
  return hash.digest().subarray(0, markLength);
}

/** One name for all these words. 64 small hexadecimal digits. */
export function digestOf(words: readonly string[]): string {
  return createHash('sha256').update(JSON.stringify(words)).digest('hex');
}

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
