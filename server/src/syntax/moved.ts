import type { Problem } from '../base/problem.ts';
import { type Span, span } from '../base/span.ts';
import type { ScalarTree, Tree } from './tree.ts';

/** Where an offset of the text that was read lies in the text that was meant. */
export type Offset = (at: number) => number;

/** The same problem with all its places moved. */
export function movedProblem(problem: Problem, offset: Offset): Problem {
  const { fixes, related } = problem;
  return {
    ...problem,
    span: movedSpan(problem.span, offset),
    ...(related !== undefined && { related: movedAll(related, offset) }),
    ...(fixes !== undefined && { fixes: fixes.map((fix) => ({ ...fix, edits: movedAll(fix.edits, offset) })) }),
  };
}

export function movedTree(tree: Tree, offset: Offset): Tree {
  const at = movedSpan(tree.span, offset);
  if (tree.node === 'scalar' || tree.node === 'empty') return { ...tree, span: at };
  if (tree.node === 'list') return { ...tree, span: at, items: tree.items.map((item) => movedTree(item, offset)) };
  const entries = tree.entries.map(({ key, value }) => ({
    key: movedScalar(key, offset),
    value: movedTree(value, offset),
  }));
  return { ...tree, span: at, entries };
}

function movedScalar(scalar: ScalarTree, offset: Offset): ScalarTree {
  return { ...scalar, span: movedSpan(scalar.span, offset) };
}

function movedAll<Placed extends { readonly span: Span }>(placed: readonly Placed[], offset: Offset): Placed[] {
  return placed.map((one) => ({ ...one, span: movedSpan(one.span, offset) }));
}

function movedSpan({ start, end }: Span, offset: Offset): Span {
  return span(offset(start), offset(end));
}
