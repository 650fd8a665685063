import { columnOf, lineStartOf } from '../../syntax/repairs.ts';
import type { ListTree } from '../../syntax/tree.ts';

/** The lines of a list with dashes; undefined for one between brackets or without an item. */
export function linesOfList(
  text: string,
  list: ListTree,
): { lines: readonly string[]; column: number; end: number } | undefined {
  const { start } = list.span;
  if (text[start] !== '-' || list.items.length === 0) return undefined;
  const from = lineStartOf(text, start);
  const block = text.slice(from, list.span.end).trimEnd();
  return { lines: block.split(/\r?\n/), column: columnOf(text, start), end: from + block.length };
}
