import {
  closeSync,
  fsyncSync,
  lstatSync,
  openSync,
  readdirSync,
  realpathSync,
  renameSync,
  rmSync,
  writeSync,
} from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { staysInside } from './library-paths.ts';

export type Written = { readonly written: string } | { readonly why: string };

/**
 * Replaces or creates the file at a path below `root` (absolute, links resolved) so that it holds either the old text or the new, never
 * half of one: the text goes to a new file beside it, which then takes its name. Refuses links and paths that leave the root. `written`
 * is the absolute path. Keeps the mode of a file that exists; `newMode` is that of a new one.
 */
export function writeAtomically(root: string, path: string, text: string | Uint8Array, newMode = 0o644): Written {
  if (!staysInside(path)) return { why: `"${path}" lies outside the library, so nothing was written.` };
  const target = join(root, path);
  try {
    const folder = dirname(target);
    if (realpathSync.native(folder) !== folder)
      return { why: `"${path}" is reached through a link, so nothing was written.` };
    const old = lstatSync(target, { throwIfNoEntry: false });
    if (old !== undefined && !old.isFile())
      return { why: `"${path}" is not an ordinary file, so nothing was written.` };
    replace(target, text, old?.mode ?? newMode);
    clearUnfinished(folder);
    return { written: target };
  } catch (thrown) {
    const code = thrown instanceof Error && 'code' in thrown ? ` (${thrown.code})` : '';
    return { why: `"${path}" could not be written${code}; what was there before is unchanged.` };
  }
}

function replace(target: string, text: string | Uint8Array, mode: number): void {
  const beside = join(dirname(target), unfinishedName(basename(target)));
  const handle = openSync(beside, 'wx', mode & 0o777);
  try {
    try {
      writeAll(handle, typeof text === 'string' ? Buffer.from(text, 'utf8') : Buffer.from(text));
      fsyncSync(handle);
    } finally {
      closeSync(handle);
    }
    renameSync(beside, target);
  } catch (thrown) {
    rmSync(beside, { force: true });
    throw thrown;
  }
}

/** Beside the target and hidden, so that nobody takes it for finished. */
export function unfinishedName(name: string): string {
  return `.${name.slice(0, 100)}.${crypto.randomUUID()}.tmp`;
}

const unfinished = /^\..{1,200}\.[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[0-9a-f]{4}-[0-9a-f]{12}\.tmp$/;
const anHour = 3_600_000;
const cleared = new Set<string>();

/** Takes away what runs that were ended by force left in the folder, once a run. What is younger may belong to somebody who still writes. */
function clearUnfinished(folder: string): void {
  if (cleared.has(folder)) return;
  cleared.add(folder);
  try {
    for (const name of readdirSync(folder)) if (unfinished.test(name)) removeOld(join(folder, name));
  } catch {
    // What can't be seen or taken away stays: it does no harm.
  }
}

function removeOld(path: string): void {
  const old = lstatSync(path, { throwIfNoEntry: false });
  if (old?.isFile() === true && Date.now() - old.mtimeMs > anHour) rmSync(path, { force: true });
}

function writeAll(handle: number, bytes: Buffer): void {
  for (let at = 0; at < bytes.length; ) at += writeSync(handle, bytes, at);
}
