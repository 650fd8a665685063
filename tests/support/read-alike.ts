import { expect } from 'vitest';
import { defaultLimits, type ReadLimits } from '../../server/src/syntax/limits.ts';
import { readQuickly } from '../../server/src/syntax/quick/quick-read.ts';
import { readThoroughly } from '../../server/src/syntax/read.ts';

/** Whether the quick reader takes the text. What it takes, `yaml` must read alike and without a problem. */
export function takenAlike(text: string, limits: ReadLimits = defaultLimits): boolean {
  const tree = readQuickly(text, limits);
  if (tree === undefined) return false;
  expect({ text, ...readThoroughly(text, limits) }).toEqual({ text, tree, problems: [], unreadable: false });
  return true;
}
