import type { Edit } from '../../base/problem.ts';
import type { List, Node, Place, Rec } from '../../model/node.ts';
import { childrenOf } from '../../model/walk.ts';

/*
 * Edits that need no look at the text: they insert or cut inside `{...}` and `[...]`, where indentation does not matter. In block style
 * the fix is left to the writer.
 */

/** True for `{...}` and `[...]`: the first thing inside begins after the bracket. */
export function isFlow(node: Rec | List<Node>): boolean {
  const first = firstStart(node);
  return first !== undefined && first > node.at.span.start;
}

/** Adds `key: value` in front of the first field but one (so that an id stays first), or undefined in block style. */
export function insertField(record: Rec, entry: string): Edit | undefined {
  if (!isFlow(record)) return undefined;
  const starts = keyStarts(record);
  const at = starts[1];
  if (at !== undefined) return { span: { start: at, end: at }, text: `${entry}, ` };
  const end = record.at.span.end - 1;
  return { span: { start: end, end }, text: `, ${entry}` };
}

/** Leaves of `outer` only `inner`, which stands inside it; undefined unless both are in braces. */
export function keepOnly(outer: Rec, inner: Rec): readonly Edit[] | undefined {
  if (!isFlow(outer) || !isFlow(inner)) return undefined;
  return [
    { span: { start: outer.at.span.start, end: inner.at.span.start }, text: '' },
    { span: { start: inner.at.span.end, end: outer.at.span.end }, text: '' },
  ];
}

function firstStart(node: Rec | List<Node>): number | undefined {
  if (node.node === 'list') return node.items[0]?.at.span.start;
  return keyStarts(node)[0];
}

function keyStarts(record: Rec): readonly number[] {
  const starts: number[] = [];
  for (const child of childrenOf(record)) {
    const start = startOf(child.at);
    if (start !== undefined) starts.push(start);
  }
  return starts.sort((a, b) => a - b);
}

function startOf(place: Place): number | undefined {
  return place.keySpan?.start;
}
