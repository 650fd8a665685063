import { lstatSync, realpathSync } from 'node:fs';
import { join } from 'node:path';
import { type Written, writeAtomically } from './atomic-write.ts';

/** Writes a file that does not exist yet into a folder that does. What somebody has written is never replaced. */
export function writeNew(folder: string, name: string, text: string | Uint8Array): Written {
  try {
    const root = realpathSync.native(folder);
    if (lstatSync(join(root, name), { throwIfNoEntry: false }) !== undefined)
      return { why: `"${name}" exists already, and what is in it stays. Choose another name.` };
    return writeAtomically(root, name, text);
  } catch {
    return { why: `"${name}" could not be written: there is no such folder.` };
  }
}
