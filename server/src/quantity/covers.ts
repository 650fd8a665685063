import { type Box, boxesOfRange, holds, intersectBoxes, subtractAll } from './number-box.ts';
import { isDigit } from './number-form.ts';

/**
 * Catalogue numbers that a document or entity covers. An entry is one number (`DW-3301`), a range of one running number
 * (`Q-100..Q-180`), or a number whose last digits are free (`45-1xx`). Texts count as written: case and inner spaces matter.
 */

export type CoverFault =
  | { readonly fault: 'empty' }
  | { readonly fault: 'too-long' }
  /** The two ends must be alike but for one running number. */
  | { readonly fault: 'range-unclear'; readonly from: string; readonly to: string }
  | { readonly fault: 'range-reversed'; readonly from: string; readonly to: string };

/** Exactly the numbers covered, exclusions already taken out. */
export type CoverSet = readonly Box[];

const longestPattern = 128;

/** Reads one entry of a `covers` or `excludes` list. */
export function parseCoverPattern(written: string): CoverSet | CoverFault {
  if (written.length > longestPattern) return { fault: 'too-long' };
  const text = written.normalize('NFC').replace('…', '..').trim();
  if (text === '') return { fault: 'empty' };
  const dots = text.indexOf('..');
  if (dots > 0) {
    const to = text.slice(text.startsWith('...', dots) ? dots + 3 : dots + 2);
    return parseRange(text.slice(0, dots).trim(), to.trim());
  }
  return [boxOfPattern(text)];
}

/** The set that two lists describe. Entries that cannot be read are left out: `parseCoverPattern` tells the writer about each. */
export function coverSetOf(covers: readonly string[], excludes: readonly string[]): CoverSet {
  return subtractAll(readList(covers), readList(excludes));
}

export function coversNumber(covers: readonly string[], excludes: readonly string[], number: string): boolean {
  return setCovers(coverSetOf(covers, excludes), number);
}

export function setCovers(set: CoverSet, number: string): boolean {
  const text = number.normalize('NFC').trim();
  return set.some((box) => holds(box, text));
}

/** A number that both sets cover, as an example for a message; undefined when they share none. */
export function sharedNumber(a: CoverSet, b: CoverSet): string | undefined {
  for (const one of a) {
    for (const other of b) {
      const common = intersectBoxes(one, other);
      if (common !== undefined) return common.low;
    }
  }
  return undefined;
}

/** A number that `asked` covers and `given` does not, as an example for a message; undefined when `given` covers all of them. */
export function uncoveredNumber(asked: CoverSet, given: CoverSet): string | undefined {
  return subtractAll(asked, given)[0]?.low;
}

function readList(entries: readonly string[]): Box[] {
  const boxes: Box[] = [];
  for (const entry of entries) {
    const parsed = parseCoverPattern(entry);
    if (!('fault' in parsed)) boxes.push(...parsed);
  }
  return boxes;
}

/** A run of `x` stands for digits when a digit or `-` stands before it and nothing or `-` after it: `45-1xx`, `45-1xx-B`, not `Q-box`. */
function boxOfPattern(text: string): Box {
  let low = '';
  let high = '';
  let at = 0;
  while (at < text.length) {
    const run = runOfX(text, at);
    low += run > 0 ? '0'.repeat(run) : text.charAt(at);
    high += run > 0 ? '9'.repeat(run) : text.charAt(at);
    at += Math.max(run, 1);
  }
  return { low, high };
}

function runOfX(text: string, from: number): number {
  let end = from;
  while (text.charAt(end) === 'x') end++;
  const before = text.charAt(from - 1);
  const after = text.charAt(end);
  const free = (before === '-' || isDigit(before)) && (after === '' || after === '-');
  return free ? end - from : 0;
}

/** `Q-100..Q-180`, and short `Q-100..180`. Ends of unequal length count without zeros in front: `Q-8..Q-12`. */
function parseRange(from: string, to: string): CoverSet | CoverFault {
  const first = runsOf(from);
  const last = first.at(-1) ?? '';
  const short = isAllDigits(to) && isAllDigits(last) && first.length > 1;
  const second = short ? [...first.slice(0, -1), to] : runsOf(to);
  const differing = first.findIndex((run, i) => run !== second[i]);
  if (first.length !== second.length) return { fault: 'range-unclear', from, to };
  if (differing === -1) return [{ low: from, high: from }];
  const low = first[differing] ?? '';
  const high = second[differing] ?? '';
  const tail = first.slice(differing + 1).join('');
  const alike = tail === second.slice(differing + 1).join('') && isAllDigits(low) && isAllDigits(high);
  if (!alike || (low.length !== high.length && low.length > 1 && low.startsWith('0')))
    return { fault: 'range-unclear', from, to };
  if (low.length > high.length || (low.length === high.length && low > high))
    return { fault: 'range-reversed', from, to };
  const head = first.slice(0, differing).join('');
  return digitsBetween(low, high).map((box) => ({ low: head + box.low + tail, high: head + box.high + tail }));
}

function digitsBetween(low: string, high: string): Box[] {
  const boxes: Box[] = [];
  for (let width = low.length; width <= high.length; width++) {
    const start = width === low.length ? low : `1${'0'.repeat(width - 1)}`;
    const end = width === high.length ? high : '9'.repeat(width);
    boxes.push(...boxesOfRange(start, end));
  }
  return boxes;
}

/** Runs of digits and runs of anything else, in order. */
function runsOf(text: string): string[] {
  return text.match(/[0-9]+|[^0-9]+/g) ?? [];
}

function isAllDigits(text: string): boolean {
  return text !== '' && [...text].every(isDigit);
}
