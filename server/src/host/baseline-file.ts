import { join } from 'node:path';
import {
  type Baseline,
  baselineFileName,
  baselineText,
  readBaseline,
  type WrittenBaseline,
} from '../check/baseline.ts';
import { type Written, writeAtomically } from './atomic-write.ts';
import { readBytes } from './read-text.ts';

export type FoundBaseline =
  | { readonly found: 'none' }
  | ({ readonly found: 'baseline' } & WrittenBaseline)
  | { readonly found: 'unreadable'; readonly why: string };

const mostBytes = 64_000_000;

/** The baseline beside the library's own file, if there is one. `root` is absolute. */
export function baselineIn(root: string): FoundBaseline {
  const read = readBytes(join(root, baselineFileName), mostBytes);
  if ('refused' in read) {
    return read.refused === 'gone' ? { found: 'none' } : { found: 'unreadable', why: refusals[read.refused] };
  }
  const reading = readBaseline(new TextDecoder('utf-8').decode(read.bytes));
  return 'why' in reading ? { found: 'unreadable', why: reading.why } : { found: 'baseline', ...reading };
}

const refusals = {
  'not-ordinary': 'it is not an ordinary file',
  'too-large': 'it is too large',
  unreadable: 'it cannot be opened',
} as const;

export function writeBaseline(root: string, baseline: Baseline): Written {
  return writeAtomically(root, baselineFileName, baselineText(baseline));
}
