import type { Span } from '../../base/span.ts';
import type { Shape } from '../../schema/shape.ts';
import type { MapTree, Tree } from '../../syntax/tree.ts';

/** One line of a file's outline. */
export interface OutlineItem {
  readonly name: string;
  /** The value when it is short. */
  readonly detail: string;
  readonly of: 'group' | 'list' | 'value';
  readonly whole: Span;
  readonly nameAt: Span;
  readonly inside: readonly OutlineItem[];
}

/** Deeper levels are numbers and citations: of no use in an outline. */
const deepest = 4;

/** The outline of a file in the trade's words: titles of the schema, ids of list items. */
export function outlineOf(tree: MapTree, shape: Shape | undefined): readonly OutlineItem[] {
  return itemsOf(tree, shape, 1);
}

function itemsOf(tree: Tree, shape: Shape | undefined, depth: number): readonly OutlineItem[] {
  if (depth > deepest) return [];
  if (tree.node === 'list') return listItems(tree.items, shape?.form === 'list' ? shape.item : undefined, depth);
  if (tree.node !== 'map') return [];
  return tree.entries.map(({ key, value }) => {
    const field = shape?.form === 'record' ? shape.fields.get(key.text) : undefined;
    const inner = shape?.form === 'table' ? shape.value : field?.shape;
    return {
      name: (field?.title ?? '') === '' ? key.text || '(no name)' : (field?.title ?? key.text),
      detail: shortValue(value, inner),
      of: value.node === 'map' ? 'group' : value.node === 'list' ? 'list' : 'value',
      whole: { start: key.span.start, end: Math.max(key.span.end, value.span.end) },
      nameAt: key.span,
      inside: itemsOf(value, inner, depth + 1),
    } satisfies OutlineItem;
  });
}

/** Only items that are groups of fields: a list of plain words is shown by its own line. */
function listItems(items: readonly Tree[], shape: Shape | undefined, depth: number): readonly OutlineItem[] {
  const found: OutlineItem[] = [];
  for (const [index, item] of items.entries()) {
    if (item.node !== 'map') continue;
    const named = nameEntry(item);
    found.push({
      name: named?.text ?? `${index + 1}`,
      detail: '',
      of: 'group',
      whole: item.span,
      nameAt: named?.span ?? { start: item.span.start, end: item.span.start },
      inside: itemsOf(item, shape, depth + 1),
    });
  }
  return found;
}

function nameEntry(item: MapTree): { readonly text: string; readonly span: Span } | undefined {
  for (const key of ['id', 'device', 'do', 'phase', 'stage', 'what']) {
    const value = item.entries.find((entry) => entry.key.text === key)?.value;
    if (value?.node === 'scalar' && value.text !== '') return { text: shorten(value.text), span: value.span };
  }
  return undefined;
}

function shortValue(value: Tree, shape: Shape | undefined): string {
  if (value.node === 'scalar') return shorten(value.text);
  if (value.node !== 'map' || value.entries.length > 3) return '';
  const [first] = value.entries;
  if (first === undefined) return '';
  const title = (shape?.form === 'record' ? shape.fields.get(first.key.text)?.title : undefined) || first.key.text;
  const words = wordsOf(first.value);
  return words === undefined ? '' : shorten(words === 'true' ? title : `${title} ${words}`);
}

/** A single word or number, or both ends of a range. */
function wordsOf(value: Tree): string | undefined {
  if (value.node === 'scalar') return value.text;
  const ends = value.node === 'list' && value.items.length === 2 ? value.items.map(wordsOf) : [];
  return ends.length === 2 && ends.every((end) => end !== undefined) ? ends.join(' - ') : undefined;
}

function shorten(text: string): string {
  const line = text.replace(/\s/g, ' ');
  return line.length > 60 ? `${line.slice(0, 57)}…` : line;
}
