import type { Edit } from '../base/problem.ts';
import type { ListTree, MapEntry, MapTree, Tree } from '../syntax/tree.ts';

/** Takes one entry out of a map; undefined where it shares its line with something else. */
export function cutEntry(text: string, map: MapTree, entry: MapEntry): Edit | undefined {
  const starts = map.entries.map(({ key }) => key.span.start);
  const ends = map.entries.map(({ value }) => value.span.end);
  return cut(text, map, starts, ends, map.entries.indexOf(entry), entry.key.span.start);
}

/** Takes one item out of a list. */
export function cutItem(text: string, list: ListTree, index: number): Edit | undefined {
  const starts = list.items.map(({ span }) => span.start);
  const ends = list.items.map(({ span }) => span.end);
  const dash = text.lastIndexOf('-', (starts[index] ?? 0) - 1);
  return cut(text, list, starts, ends, index, dash);
}

function cut(
  text: string,
  around: Tree,
  starts: readonly number[],
  ends: readonly number[],
  index: number,
  lineMark: number,
): Edit | undefined {
  const [start, end] = [starts[index], ends[index]];
  if (start === undefined || end === undefined) return undefined;
  if (text[around.span.start] !== '{' && text[around.span.start] !== '[') return cutLines(text, lineMark, end);
  const next = starts[index + 1];
  if (next !== undefined) return { span: { start, end: next }, text: '' };
  return { span: { start: index === 0 ? start : (ends[index - 1] ?? start), end }, text: '' };
}

/** Whole lines only: what else stands on them would go too. */
function cutLines(text: string, mark: number, end: number): Edit | undefined {
  const start = text.lastIndexOf('\n', mark - 1) + 1;
  if (text.slice(start, mark).trim() !== '') return undefined;
  if (text[end - 1] === '\n') return { span: { start, end }, text: '' };
  const next = text.indexOf('\n', end);
  return { span: { start, end: next < 0 ? text.length : next + 1 }, text: '' };
}
