import { span } from '../../base/span.ts';
import type { ReadLimits } from '../limits.ts';
import { movedProblem, movedTree } from '../moved.ts';
import type { ReadResult } from '../reading.ts';
import type { MapEntry, MapTree, Tree } from '../tree.ts';
import type { Block, Piece } from './pieces.ts';
import { blockBelow, piecesOf } from './pieces.ts';
import { hasUnusual } from './quick-read.ts';
import { Scan } from './scan.ts';

type Thorough = (text: string, limits: ReadLimits) => ReadResult;

/** A block of keys of which some in a row are to be read thoroughly. */
interface Level {
  /** What the quick reader read above and below those. */
  readonly before: readonly MapEntry[];
  readonly after: readonly MapEntry[];
  /**
   * How many of the neighbours on each side are among what is read thoroughly. Below two: what is wrong can show in how the line after the
   * next is taken.
   */
  readonly above: 0 | 1;
  below: 0 | 1 | 2;
}

interface Part {
  readonly start: number;
  readonly end: number;
}

/** The lines to be read thoroughly, and the levels they stand in, outermost first. */
interface Cut {
  readonly levels: readonly Level[];
  /** Parts of the text, in order. All but the last are the lines of the keys around the last. */
  readonly parts: readonly Part[];
  /** Those of them that could not be read quickly. */
  readonly damaged: Part;
}

/**
 * Reads a text that is ordinary but for some lines, as nearly every text is while somebody writes it: those lines and their neighbours
 * thoroughly, by themselves, the others quickly. Undefined where the two can't be put together: when the neighbours were not read alike both
 * ways, or not without a problem, what is wrong reaches further than it seems.
 */
export function readAround(text: string, limits: ReadLimits, thorough: Thorough): ReadResult | undefined {
  // With fewer characters than keys are allowed, no limit of the file as a whole can be reached.
  if (text.length > limits.keys || text.length > limits.fileLength || hasUnusual(text)) return undefined;
  const cut = cutIn(text, limits);
  if (cut === undefined || cut.parts.every(({ start, end }) => end - start === text.length)) return undefined;
  const read = thorough(textOf(cut.parts, text), limits);
  if (read.tree === undefined) return undefined;
  const offset = offsetsIn(cut.parts);
  const tree = joined(movedTree(read.tree, offset), cut.levels);
  const problems = read.problems.map((problem) => movedProblem(problem, offset));
  const { start, end } = cut.damaged;
  if (tree === undefined || problems.some(({ span: at }) => at.start < start || end <= at.start)) return undefined;
  return { tree, problems, unreadable: false };
}

/** A quote that is not closed where it should be is closed by the next one, however far away, or by none: that there is one is told. */
function textOf(parts: readonly Part[], text: string): string {
  const rest = text.slice(parts.at(-1)?.end);
  const quotes = `${/(?<!\\)"/.test(rest) ? '"' : ''}${/(?<!')'(?!')/.test(rest) ? "'" : ''}`;
  const lines = parts.map(({ start, end }) => text.slice(start, end)).join('');
  return quotes === '' ? lines : `${lines}# ${quotes}`;
}

function cutIn(text: string, limits: ReadLimits): Cut | undefined {
  const levels: Level[] = [];
  const heads: Part[] = [];
  let end = text.length;
  for (let block = topBlock(text); ; ) {
    const pieces = piecesOf(text, block, limits);
    const first = pieces.findIndex(({ entry }) => entry === undefined);
    const last = pieces.findLastIndex(({ entry }) => entry === undefined);
    // What is wrong with the first line of a file decides what the file is taken for.
    if (first < 0 || (first === 0 && heads.length === 0)) return undefined;
    const startOf = (index: number): number => pieces[index]?.start ?? block.end;
    const [before, after] = [entriesOf(pieces.slice(0, first)), entriesOf(pieces.slice(last + 1))];
    // The line after the next would be one of an outer block.
    if (after.length === 1 && levels.some((outer) => outer.after.length > 0)) return undefined;
    if (after.length > 0) {
      end = startOf(last + 3);
      // The neighbours below are those of the innermost level that has any.
      for (const level of levels) level.below = 0;
    }
    const below = after.length > 1 ? 2 : after.length > 0 ? 1 : 0;
    const inner = first === last ? blockBelow(text, startOf(first), block, startOf(last + 1)) : undefined;
    if (inner === undefined) {
      levels.push({ before, after, above: first > 0 ? 1 : 0, below });
      const start = startOf(Math.max(0, first - 1));
      return { levels, parts: [...heads, { start, end }], damaged: { start: startOf(first), end: startOf(last + 1) } };
    }
    levels.push({ before, after, above: 0, below });
    heads.push({ start: startOf(first), end: inner.start });
    block = inner;
  }
}

function topBlock(text: string): Block {
  const scan = new Scan(text);
  scan.toContent();
  return { start: scan.at - Math.max(0, scan.column), end: text.length, column: 0, depth: 0 };
}

function entriesOf(pieces: readonly Piece[]): readonly MapEntry[] {
  return pieces.flatMap(({ entry }) => entry ?? []);
}

/** Where an offset of the parts, one behind the other, lies in the text. */
function offsetsIn(parts: readonly Part[]): (at: number) => number {
  return (at) => {
    let left = at;
    for (const { start, end } of parts.slice(0, -1)) {
      if (left < end - start) return start + left;
      left -= end - start;
    }
    return (parts.at(-1)?.start ?? 0) + left;
  };
}

/** The map with what was read quickly put around what was read thoroughly. */
function joined(read: Tree, [level, ...inner]: readonly Level[]): MapTree | undefined {
  if (read.node !== 'map' || level === undefined) return undefined;
  const { before, after, above, below } = level;
  const belowFrom = read.entries.length - below;
  const isAlike =
    isSame(read.entries.slice(0, above), before.slice(before.length - above)) &&
    isSame(read.entries.slice(belowFrom), after.slice(0, below));
  if (!isAlike || belowFrom < above) return undefined;
  const middle = read.entries.slice(above, belowFrom);
  const within = inner.length === 0 ? middle : withinHead(middle, inner);
  if (within === undefined) return undefined;
  const entries = [...before, ...within, ...after];
  if (new Set(entries.map(({ key }) => key.text.normalize('NFC').toLowerCase())).size < entries.length)
    return undefined;
  const start = before[0]?.key.span.start ?? read.span.start;
  return { node: 'map', span: span(start, Math.max(start, entries.at(-1)?.value.span.end ?? start)), entries };
}

function withinHead(entries: readonly MapEntry[], levels: readonly Level[]): readonly MapEntry[] | undefined {
  const [head] = entries;
  const value = head === undefined || entries.length > 1 ? undefined : joined(head.value, levels);
  return head === undefined || value === undefined ? undefined : [{ key: head.key, value }];
}

function isSame(some: readonly MapEntry[], others: readonly MapEntry[]): boolean {
  return JSON.stringify(some) === JSON.stringify(others);
}
