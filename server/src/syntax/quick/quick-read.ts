import { isOddSpace, isUnseen } from '../characters.ts';
import type { ReadLimits } from '../limits.ts';
import type { MapTree } from '../tree.ts';
import { readLines } from './lines.ts';
import { ENDED, Scan } from './scan.ts';

/**
 * syntax/quick/: reads what nearly every rule file is made of: keys and dashes one below the other, brackets that close on their line,
 * text on one line with and without quotes, text blocks, comments. It only ever accepts: the tree of a text in which nothing can be wrong,
 * the same that `readThoroughly` makes of it by way of `yaml`, or undefined at the first sign of anything else. It reports and repairs
 * nothing, and looks at each character a fixed number of times.
 */
export function readQuickly(text: string, limits: ReadLimits): MapTree | undefined {
  if (text.length > limits.fileLength || hasUnusual(text)) return undefined;
  const scan = new Scan(text, limits);
  scan.toContent();
  const tree = readLines(scan);
  return tree?.node === 'map' && scan.column === ENDED ? tree : undefined;
}

/** Whatever `mend` would look at: tabs, lone carriage returns, control characters, what cannot be seen or only looks like another. */
export function hasUnusual(text: string): boolean {
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if ((code >= 32 && code < 127) || code === 10) continue;
    if (code === 13 ? text.charCodeAt(at + 1) !== 10 : isUnusual(code)) return true;
  }
  return false;
}

function isUnusual(code: number): boolean {
  if (code < 161 || code === 0xff1a || (code >= 0xd800 && code < 0xe000)) return true;
  return isUnseen(code) || isOddSpace(code);
}
