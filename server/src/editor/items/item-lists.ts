import type { Span } from '../../base/span.ts';
import type { Field, ListShape, RecordShape, Shape } from '../../schema/shape.ts';
import type { ListTree, MapTree, Tree } from '../../syntax/tree.ts';
import { valueUnder } from '../../syntax/value-under.ts';

/** A list of a file to which something can be added. */
export interface ItemList {
  /** Keys that lead to it from the top; of an item of a list its number from 0. */
  readonly path: readonly string[];
  readonly field: Field;
  readonly shape: ListShape;
  /** Undefined where the list has not begun. */
  readonly tree: ListTree | undefined;
  /** Of its key, where that is written. */
  readonly key: Span | undefined;
  /** From its key to its end; empty where nothing of it is written. */
  readonly span: Span;
}

/** All lists of a file: those that are written, then those of the schema whose items have fields and that are not. */
export function listsIn(root: MapTree, shape: RecordShape): readonly ItemList[] {
  const written = writtenLists(root, shape);
  const known = new Set(written.map(({ path }) => path.join('.')));
  const absent = absentLists(shape, [], 2).filter(({ path }) => !known.has(path.join('.')));
  return [...written, ...absent];
}

/** Those that are written, in the order of the file. */
export function writtenLists(root: MapTree, shape: RecordShape): readonly ItemList[] {
  const written: ItemList[] = [];
  collect(root, shape, [], written);
  return written;
}

/** A list by the path that it was given out with; one inside an item may not have begun. */
export function listAt(root: MapTree, shape: RecordShape, path: string): ItemList | undefined {
  return listsIn(root, shape).find((list) => list.path.join('.') === path) ?? absentAt(root, shape, path.split('.'));
}

function absentAt(root: MapTree, kind: RecordShape, path: readonly string[]): ItemList | undefined {
  let tree: Tree | undefined = root;
  let shape: Shape = kind;
  let field: Field | undefined;
  for (const key of path) {
    if (shape.form === 'list') {
      tree = tree?.node === 'list' && /^\d{1,6}$/.test(key) ? tree.items[Number(key)] : undefined;
      if (tree === undefined) return undefined;
      shape = shape.item;
      continue;
    }
    field = shape.form === 'record' ? shape.fields.get(key) : undefined;
    if (field === undefined) return undefined;
    tree = tree?.node === 'map' ? valueUnder(tree, key) : undefined;
    shape = field.shape;
  }
  if (field === undefined || shape.form !== 'list' || tree !== undefined) return undefined;
  return { path, field, shape, tree: undefined, key: undefined, span: { start: 0, end: 0 } };
}

/** The written lists around a place of the text, innermost first. The line of the key counts, and so do empty lines at the end. */
export function listsAround(root: MapTree, shape: RecordShape, text: string, offset: number): readonly ItemList[] {
  return writtenLists(root, shape)
    .filter(({ span }) => span.start <= offset && offset <= endOfLines(text, span.end))
    .toSorted((a, b) => b.path.length - a.path.length);
}

/** The item around a place, or the one that ends before it; undefined behind the last one. */
export function itemBefore({ tree }: ItemList, offset: number): number | undefined {
  const items = tree?.items ?? [];
  const at = items.findLastIndex(({ span }) => span.start <= offset);
  return at < 0 || at === items.length - 1 ? undefined : at;
}

function collect(tree: Tree, shape: Shape | undefined, path: readonly string[], found: ItemList[]): void {
  if (tree.node === 'list' && shape?.form === 'list') {
    for (const [at, item] of tree.items.entries()) collect(item, shape.item, [...path, String(at)], found);
    return;
  }
  if (tree.node !== 'map') return;
  for (const { key, value } of tree.entries) {
    const here = [...path, key.text];
    if (shape?.form === 'table') collect(value, shape.value, here, found);
    const field = shape?.form === 'record' ? shape.fields.get(key.text) : undefined;
    if (field === undefined) continue;
    if (field.shape.form === 'list' && isAskedFor(field.shape) && (value.node === 'list' || value.node === 'empty')) {
      const list = value.node === 'list' ? value : undefined;
      const span = { start: key.span.start, end: Math.max(key.span.end, value.span.end) };
      found.push({ path: here, field, shape: field.shape, tree: list, key: key.span, span });
    }
    collect(value, field.shape, here, found);
  }
}

/** The ends of a range, and statements of pages that disagree, are parts of one value. */
function isAskedFor({ item }: ListShape): boolean {
  return item.form !== 'quantity' && !(item.form === 'record' && item.dimension !== undefined);
}

function absentLists({ fields }: RecordShape, path: readonly string[], depth: number): readonly ItemList[] {
  return [...fields.values()].flatMap((field) => {
    const { shape, key } = field;
    const here = [...path, key];
    if (shape.form === 'list' && shape.item.form === 'record' && isAskedFor(shape))
      return [{ path: here, field, shape, tree: undefined, key: undefined, span: { start: 0, end: 0 } }];
    const goesOn = shape.form === 'record' && shape.dimension === undefined && depth > 1;
    return goesOn ? absentLists(shape, here, depth - 1) : [];
  });
}

function endOfLines(text: string, from: number): number {
  let end = text.indexOf('\n', from);
  for (;;) {
    if (end < 0) return text.length;
    const next = text.indexOf('\n', end + 1);
    const line = text.slice(end + 1, next < 0 ? text.length : next);
    if (line.trim() !== '') return end;
    end = next;
  }
}
