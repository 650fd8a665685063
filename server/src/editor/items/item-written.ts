import type { Edit } from '../../base/problem.ts';
import type { Span } from '../../base/span.ts';
import type { RecordShape } from '../../schema/shape.ts';
import { fileForm, insertItem } from '../../syntax/edits.ts';
import { columnOf } from '../../syntax/repairs.ts';
import type { ListTree, MapTree, Tree } from '../../syntax/tree.ts';
import { besideAll } from '../reading/quote-other-way.ts';
import { insertFields } from '../writing/insert-fields.ts';
import { lineEndAt } from '../writing/writing-scan.ts';
import type { ItemList } from './item-lists.ts';

/** A value before it is laid out. `text` is YAML as it is. */
export type Written =
  | { readonly is: 'text'; readonly text: string }
  | { readonly is: 'map'; readonly entries: readonly WrittenEntry[] }
  | { readonly is: 'list'; readonly items: readonly Written[] };

export type WrittenEntry = readonly [key: string, value: Written];

/** On one line. */
export function onOneLine(written: Written): string {
  switch (written.is) {
    case 'text':
      return written.text;
    case 'map':
      return `{${written.entries.map(([key, value]) => `${key}: ${onOneLine(value)}`).join(', ')}}`;
    case 'list':
      return `[${written.items.map(onOneLine).join(', ')}]`;
  }
}

/** A field a line; a list of groups inside gets a line for each of them. */
function onLines(written: Written, step: number): readonly string[] {
  if (written.is !== 'map') return [onOneLine(written)];
  return written.entries.flatMap(([key, value]) =>
    isListOfGroups(value)
      ? [`${key}:`, ...value.items.map((item) => `${' '.repeat(step)}- ${onOneLine(item)}`)]
      : [`${key}: ${onOneLine(value)}`],
  );
}

function isListOfGroups(value: Written): value is Extract<Written, { is: 'list' }> {
  return value.is === 'list' && value.items.some(({ is }) => is === 'map');
}

/** Ways of cleaning of which one is enough. */
export const otherWays = 'cleaning.any_of';

/** Where the items go in, laid out as their neighbours are: behind the item of that number, else at the end. */
export function itemEdits(
  text: string,
  root: MapTree,
  kind: RecordShape,
  list: ItemList,
  items: readonly Written[],
  behind: number | undefined,
): readonly Edit[] {
  const { step } = fileForm(text);
  const known = list.tree?.items ?? [];
  const all = items.map((written) => linesLike(known, text, written, step));
  if (list.tree !== undefined) {
    const empty = known.find(({ node }) => node === 'empty');
    if (empty !== undefined) return [inEmptyItem(text, empty, all)];
    return insertedBehind(text, list.tree, all, known.at(behind ?? -1));
  }
  if (list.key !== undefined && list.path.length > 1) return [behindKey(text, list.key, all, step)];
  const way = list.path.join('.') === otherWays ? besideAll(text, root, { value: '', lines: all.flat() }) : undefined;
  if (way !== undefined) return [way];
  const path = `${list.path.join('.')}[]`;
  const fields = items.map((written, at) => ({ path, value: onOneLine(written), lines: all[at] ?? [] }));
  return insertFields(text, root, kind, fields).edits;
}

/** One edit: items that come in at one place stand in their order. */
function insertedBehind(
  text: string,
  list: ListTree,
  all: readonly (readonly string[])[],
  behind: Tree | undefined,
): readonly Edit[] {
  const isFlow = text[list.span.start] === '[';
  const each = isFlow ? [[all.map((lines) => lines.join(' ')).join(', ')]] : all;
  const edits = each.flatMap((lines) => insertItem(text, list, lines, behind) ?? []);
  const [first] = edits;
  return first === undefined ? [] : [{ span: first.span, text: edits.map((edit) => edit.text).join('') }];
}

const longestLine = 160;

/** As the first neighbour is laid out; without one, on one line as long as that can be read. */
function linesLike(items: readonly Tree[], text: string, written: Written, step: number): readonly string[] {
  const line = onOneLine(written);
  const neighbour = items.find(({ node }) => node === 'map');
  const isInLines =
    neighbour === undefined
      ? line.length > longestLine ||
        (written.is === 'map' && written.entries.some(([, value]) => isListOfGroups(value)))
      : text[neighbour.span.start] !== '{';
  return isInLines ? onLines(written, step) : [line];
}

/** A dash that waits already. */
function inEmptyItem(text: string, { span }: Tree, all: readonly (readonly string[])[]): Edit {
  const start = text.lastIndexOf('\n', span.start - 1) + 1;
  const column = text.indexOf('-', start) - start;
  return { span: { start, end: lineEndAt(text, span.start) }, text: itemLines(text, all, column) };
}

/** A key that waits for its list; a remark behind it gives way. */
function behindKey(text: string, key: Span, all: readonly (readonly string[])[], step: number): Edit {
  const { lineEnd } = fileForm(text);
  const column = columnOf(text, key.start) + step;
  const span = { start: key.end, end: lineEndAt(text, key.end) };
  return { span, text: `:${lineEnd}${itemLines(text, all, column)}` };
}

function itemLines(text: string, all: readonly (readonly string[])[], column: number): string {
  const indent = ' '.repeat(column);
  const lines = all.flatMap((item) => item.map((line, at) => `${indent}${at === 0 ? '- ' : '  '}${line}`));
  return lines.join(fileForm(text).lineEnd);
}
