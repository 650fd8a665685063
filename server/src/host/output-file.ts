import { realpathSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { baselineFileName } from '../check/baseline.ts';
import { type Written, writeAtomically } from './atomic-write.ts';
import { isNearRuleFileName, isRuleFileName } from './library-paths.ts';
import { holdsAlready } from './read-text.ts';

/** Writes a report to a file at an absolute path, whole or not at all. Never over a rule file or a baseline; the folder has to be there. */
export function writeOutputFile(path: string, text: string): Written {
  const name = basename(path);
  if (isRuleFileName(name) || isNearRuleFileName(name))
    return { why: `"${name}" would be a rule file, so no report was written over it.` };
  if (name === baselineFileName) return { why: `"${name}" is the baseline, so no report was written over it.` };
  try {
    const folder = realpathSync.native(dirname(path));
    const target = join(folder, name);
    // The same again is not written: what watches the folder would be called for nothing.
    return holdsAlready(target, text) ? { written: target } : writeAtomically(folder, name, text);
  } catch {
    return { why: `"${name}" was not written: there is no folder "${dirname(path)}".` };
  }
}
