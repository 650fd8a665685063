import { lstatSync } from 'node:fs';
import { join } from 'node:path';
import { keptFileDigest } from './kept-files.ts';

/** What is read for one answer, in bytes: about half a second. */
const mostBytes = 200_000_000;

/** By path, size and time of the last change, so that whoever asks again while a cursor moves gets it at once. */
const known = new Map<string, string>();
const mostKnown = 5_000;

/** SHA-256 of files of the library at `root`, in their order, until enough is read. What can't be read is left out. */
export function keptFileDigests(root: string, paths: readonly string[]): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  let bytes = 0;
  for (const path of paths) {
    const state = stateOf(join(root, path));
    if (state === undefined) continue;
    let digest = known.get(state.key);
    if (digest === undefined) {
      bytes += state.size;
      if (bytes > mostBytes) break;
      digest = keptFileDigest(root, path);
      if (known.size >= mostKnown) known.clear();
      known.set(state.key, digest);
    }
    found.set(path, digest);
  }
  return found;
}

function stateOf(path: string): { readonly key: string; readonly size: number } | undefined {
  try {
    const { size, mtimeMs } = lstatSync(path);
    return { key: `${path}\0${size}\0${mtimeMs}`, size };
  } catch {
    return undefined;
  }
}
