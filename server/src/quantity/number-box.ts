/**
 * A set of texts of one length: at each place the characters from `low` to `high`. Places that are not free have the same character in
 * both; free places are digits. `{low: '45-100', high: '45-199'}` is 45-100 to 45-199.
 */
export interface Box {
  readonly low: string;
  readonly high: string;
}

/** More parts than any real list of exclusions makes; beyond it the rest is left in (a number too many is reported, none is lost). */
const mostBoxes = 4000;

export function holds(box: Box, text: string): boolean {
  if (text.length !== box.low.length) return false;
  for (let i = 0; i < text.length; i++) {
    const character = text.charAt(i);
    if (character < box.low.charAt(i) || character > box.high.charAt(i)) return false;
  }
  return true;
}

export function intersectBoxes(a: Box, b: Box): Box | undefined {
  if (a.low.length !== b.low.length) return undefined;
  let low = '';
  let high = '';
  for (let i = 0; i < a.low.length; i++) {
    const from = Math.max(a.low.charCodeAt(i), b.low.charCodeAt(i));
    const to = Math.min(a.high.charCodeAt(i), b.high.charCodeAt(i));
    if (from > to) return undefined;
    low += String.fromCharCode(from);
    high += String.fromCharCode(to);
  }
  return { low, high };
}

/** What is left of `boxes` when all of `taken` is taken out. */
export function subtractAll(boxes: readonly Box[], taken: readonly Box[]): readonly Box[] {
  let left = boxes;
  for (const one of taken) {
    if (left.length > mostBoxes) return left;
    left = left.flatMap((box) => subtract(box, one));
  }
  return left;
}

function subtract(box: Box, taken: Box): Box[] {
  const common = intersectBoxes(box, taken);
  if (common === undefined) return [box];
  const left: Box[] = [];
  for (let i = 0; i < box.low.length; i++) {
    const headLow = common.low.slice(0, i);
    const headHigh = common.high.slice(0, i);
    const add = (from: string, to: string): void => {
      left.push({ low: headLow + from + box.low.slice(i + 1), high: headHigh + to + box.high.slice(i + 1) });
    };
    if (box.low.charAt(i) < common.low.charAt(i)) add(box.low.charAt(i), neighbour(common.low.charAt(i), -1));
    if (common.high.charAt(i) < box.high.charAt(i)) add(neighbour(common.high.charAt(i), 1), box.high.charAt(i));
  }
  return left;
}

function neighbour(digit: string, step: -1 | 1): string {
  return String.fromCharCode(digit.charCodeAt(0) + step);
}

/** All numbers from `low` to `high`: digits of one length, `low` not above `high`. At most two boxes a digit. */
export function boxesOfRange(low: string, high: string): Box[] {
  const at = firstDifference(low, high);
  if (at === low.length) return [{ low, high }];
  const zeros = '0'.repeat(low.length - at - 1);
  const nines = '9'.repeat(low.length - at - 1);
  const head = low.slice(0, at);
  let first = low.charAt(at);
  let last = high.charAt(at);
  const boxes: Box[] = [];
  if (low.slice(at + 1) !== zeros) {
    boxes.push(...boxesOfRange(low, head + first + nines));
    first = neighbour(first, 1);
  }
  const upper: Box[] = [];
  if (high.slice(at + 1) !== nines) {
    upper.push(...boxesOfRange(head + last + zeros, high));
    last = neighbour(last, -1);
  }
  if (first <= last) boxes.push({ low: head + first + zeros, high: head + last + nines });
  return [...boxes, ...upper];
}

function firstDifference(a: string, b: string): number {
  let at = 0;
  while (at < a.length && a.charAt(at) === b.charAt(at)) at++;
  return at;
}
