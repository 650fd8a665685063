import { realpathSync } from 'node:fs';
import { basename, dirname } from 'node:path';
import { type Written, writeAtomically } from './atomic-write.ts';
import { isRuleFileName } from './library-paths.ts';

/** Writes a report to a file at an absolute path, whole or not at all. Never over a rule file; the folder has to be there. */
export function writeOutputFile(path: string, text: string): Written {
  const name = basename(path);
  if (isRuleFileName(name)) return { why: `"${name}" would be a rule file, so no report was written over it.` };
  try {
    return writeAtomically(realpathSync.native(dirname(path)), name, text);
  } catch {
    return { why: `"${name}" was not written: there is no folder "${dirname(path)}".` };
  }
}
