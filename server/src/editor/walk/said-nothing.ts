import type { Edit } from '../../base/problem.ts';
import type { FileRecord } from '../../library/file-record.ts';
import type { Shape } from '../../schema/shape.ts';
import { shapeOf } from '../../schema/shapes.ts';
import type { MapTree, Tree } from '../../syntax/tree.ts';
import { lineEndAt } from '../writing/writing-scan.ts';

/**
 * On a line that is still to be written, where its field may be silent: that a reader looked and the document says nothing about it, with the
 * day. It is neither a permission nor a prohibition.
 */
export function saidNothing(
  { text, kind }: FileRecord,
  root: MapTree,
  offset: number,
  today: string,
): readonly Edit[] | undefined {
  const open = kind === undefined ? undefined : openFieldAt(root, shapeOf(kind), text, offset);
  if (open === undefined) return undefined;
  const span = { start: open, end: lineEndAt(text, open) };
  return [{ span, text: ` {silent: true, checked: ${today}}` }];
}

/** Behind the colon of the empty field whose line this is, where nothing but a remark follows. */
function openFieldAt(tree: Tree, shape: Shape, text: string, offset: number): number | undefined {
  if (tree.node === 'list' && shape.form === 'list') {
    const item = tree.items.find(({ span }) => span.start <= offset && offset <= lineEndAt(text, span.end));
    return item === undefined ? undefined : openFieldAt(item, shape.item, text, offset);
  }
  if (tree.node !== 'map' || shape.form !== 'record') return undefined;
  for (const { key, value } of tree.entries) {
    const field = shape.fields.get(key.text);
    const lineEnd = lineEndAt(text, Math.max(key.span.end, value.node === 'empty' ? key.span.end : value.span.end));
    if (field === undefined || offset < key.span.start || offset > lineEnd) continue;
    if (value.node !== 'empty') return openFieldAt(value, field.shape, text, offset);
    const colon = text.indexOf(':', key.span.end);
    const isAlone = /^\s*(?:#.*)?$/.test(text.slice(colon + 1, lineEnd));
    return colon >= 0 && colon < lineEnd && isAlone && maySayNothing(field.shape) ? colon + 1 : undefined;
  }
  return undefined;
}

function maySayNothing(shape: Shape): boolean {
  return shape.form === 'record' && shape.fields.has('silent') && shape.fields.has('checked');
}
