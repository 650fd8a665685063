import { createHash } from 'node:crypto';
import { realpathSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { KeptFile } from '../library/kept-file.ts';
import { keptFileLimits } from '../library/kept-file.ts';
import { staysInside } from './library-paths.ts';
import type { PdfPages } from './pdf/pdf-pages.ts';
import type { PdfReader } from './pdf/pdf-reader.ts';
import type { PdfTexts } from './pdf-texts.ts';
import { readBytes } from './read-text.ts';

/**
 * Opens a PDF of the library at `root` (absolute, links resolved) and waits for its text, where `texts` does not hold it from an earlier
 * time. What can't be read is a value.
 */
export function keptFileAt(root: string, path: string, reader: PdfReader, texts?: PdfTexts): KeptFile {
  const opened = open(root, path);
  if ('state' in opened) return opened;
  return known(opened, texts) ?? found(opened, reader.readNow(opened.bytes), texts);
}

/** The same for a server, which has other things to do meanwhile. */
export async function readKeptFile(root: string, path: string, reader: PdfReader, texts?: PdfTexts): Promise<KeptFile> {
  const opened = open(root, path);
  if ('state' in opened) return opened;
  return known(opened, texts) ?? found(opened, await reader.read(opened.bytes), texts);
}

/** What can be told of a PDF without reading its text: its digest, or that it can't be opened. */
export function keptFileDigest(root: string, path: string): string {
  const opened = open(root, path);
  return 'state' in opened ? opened.state : opened.sha256;
}

/** The bytes of such a file; undefined for what can't be opened. */
export function keptFileBytes(root: string, path: string): Uint8Array | undefined {
  const opened = open(root, path);
  return 'state' in opened ? undefined : opened.bytes;
}

interface Opened {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly sha256: string;
}

const missing: KeptFile = { state: 'missing' };

/** A link, a pipe, a device and a way out of the library are as if nothing were there, wherever they lead. */
function open(root: string, path: string): Opened | KeptFile {
  if (!staysInside(path) || !isOwnFolder(dirname(join(root, path)))) return missing;
  const read = readBytes(join(root, path), keptFileLimits.bytes);
  if ('bytes' in read) {
    // A copy in a buffer of its own: it is handed to another thread.
    const bytes = new Uint8Array(read.bytes);
    return { bytes, sha256: createHash('sha256').update(bytes).digest('hex') };
  }
  if (read.refused === 'gone' || read.refused === 'not-ordinary') return missing;
  return { state: 'unread', why: read.refused };
}

/** False when a part of the way is a link. */
function isOwnFolder(folder: string): boolean {
  try {
    return realpathSync.native(folder) === folder;
  } catch {
    return false;
  }
}

function known({ sha256 }: Opened, texts: PdfTexts | undefined): KeptFile | undefined {
  const pages = texts?.pagesOf(sha256);
  return pages === undefined ? undefined : { state: 'read', sha256, pages };
}

function found({ sha256 }: Opened, read: PdfPages, texts: PdfTexts | undefined): KeptFile {
  if ('why' in read) return { state: 'unread', sha256, why: read.why };
  texts?.keep(sha256, read.pages);
  return { state: 'read', sha256, pages: read.pages };
}
