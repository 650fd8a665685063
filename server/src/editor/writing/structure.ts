import { LineIndex } from '../../base/line-index.ts';
import type { Span } from '../../base/span.ts';
import { contains } from '../../base/span.ts';
import type { MapTree, Tree } from '../../syntax/tree.ts';

/** Lines, zero-based, from the one that stays to the last one that is hidden. */
export interface Fold {
  readonly from: number;
  readonly to: number;
  readonly of: 'group' | 'comment';
}

/** Every group and list over several lines, and every run of comment lines. */
export function foldsOf(text: string, tree: MapTree): readonly Fold[] {
  const lines = new LineIndex(text);
  const folds: Fold[] = [...commentFolds(text)];
  const add = (start: number, whole: Span): void => {
    const from = lines.position(start).line;
    const to = lines.position(lastWritten(text, whole)).line;
    if (to > from) folds.push({ from, to, of: 'group' });
  };
  walk(tree, add);
  return folds;
}

function walk(tree: Tree, add: (start: number, whole: Span) => void): void {
  if (tree.node === 'map') {
    for (const { key, value } of tree.entries) {
      if (value.node !== 'empty') add(key.span.start, value.span);
      walk(value, add);
    }
  } else if (tree.node === 'list') {
    for (const item of tree.items) {
      if (item.node !== 'empty') add(item.span.start, item.span);
      walk(item, add);
    }
  }
}

/** Spans of groups reach to the start of what follows: the last character that is no white space ends the fold. */
function lastWritten(text: string, { start, end }: Span): number {
  let at = end;
  while (at > start && ' \t\r\n'.includes(text[at - 1] ?? '')) at--;
  return Math.max(start, at - 1);
}

function commentFolds(text: string): readonly Fold[] {
  const folds: Fold[] = [];
  let from = -1;
  const lines = text.split('\n');
  for (const [at, line] of [...lines, ''].entries()) {
    const isComment = line.trimStart().startsWith('#');
    if (isComment && from < 0) from = at;
    else if (!isComment && from >= 0) {
      if (at - 1 > from) folds.push({ from, to: at - 1, of: 'comment' });
      from = -1;
    }
  }
  return folds;
}

/** Ranges around `offset`, innermost first: the word, its value, its line of the map, the group, ... to the whole file. */
export function selectionsAt(tree: MapTree, offset: number): readonly Span[] {
  const found: Span[] = [tree.span];
  let inner: Tree | undefined = tree;
  while (inner !== undefined) inner = stepIn(inner, offset, found);
  const grown: Span[] = [];
  for (const span of found.toReversed()) {
    const last = grown[grown.length - 1];
    if (last === undefined || (contains(span, last) && !contains(last, span))) grown.push(span);
  }
  return grown;
}

function stepIn(tree: Tree, offset: number, found: Span[]): Tree | undefined {
  const holds = ({ start, end }: Span): boolean => start <= offset && offset <= end;
  if (tree.node === 'list') {
    const item = tree.items.find(({ span }) => holds(span));
    if (item !== undefined) found.push(item.span);
    return item;
  }
  if (tree.node !== 'map') return undefined;
  for (const { key, value } of tree.entries) {
    const whole = { start: key.span.start, end: Math.max(key.span.end, value.span.end) };
    if (!holds(whole)) continue;
    found.push(whole);
    if (holds(key.span)) {
      found.push(key.span);
      return undefined;
    }
    if (!holds(value.span)) return undefined;
    found.push(value.span);
    return value;
  }
  return undefined;
}
