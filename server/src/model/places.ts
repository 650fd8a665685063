import type { Span } from '../base/span.ts';
import { span } from '../base/span.ts';
import type { MapTree, ScalarTree, Tree } from '../syntax/tree.ts';
import type { Place, Root } from './node.ts';

/**
 * Places as a library keeps them by the million: numbers, from which ranges are made when asked for. A library of ten thousand files
 * is mostly places.
 */
class CompactPlace implements Place {
  readonly #start: number;
  readonly #end: number;
  readonly #keyStart: number;
  readonly #keyEnd: number;
  readonly key: string | number;
  readonly parent: Place;

  constructor(at: Span, keyAt: Span | undefined, key: string | number, parent: Place) {
    this.#start = at.start;
    this.#end = at.end;
    this.#keyStart = keyAt === undefined ? none : keyAt.start;
    this.#keyEnd = keyAt === undefined ? none : keyAt.end;
    this.key = key;
    this.parent = parent;
  }

  get span(): Span {
    return span(this.#start, this.#end);
  }

  get keySpan(): Span | undefined {
    return this.#keyStart === none ? undefined : span(this.#keyStart, this.#keyEnd);
  }
}

const none = -1;

/** A short value is underlined whole. */
class ScalarPlace extends CompactPlace {
  get focus(): Span {
    return this.span;
  }
}

/** The place of a whole file. */
export function placeOfFile(tree: MapTree, root: Root): Place {
  return { span: tree.span, focus: focusOfTree(tree), key: '', root };
}

/** The place of a value that stands under a key. `name`: the key's text, one string for all files where the schema has one. */
export function placeUnder(key: ScalarTree, value: Tree, name: string, parent: Place): Place {
  return value.node === 'scalar'
    ? new ScalarPlace(value.span, key.span, name, parent)
    : new CompactPlace(value.span, key.span, name, parent);
}

/** The place of a text itself, such as the key of a table's row or one of several cited statements. */
export function placeOfScalar(scalar: ScalarTree, key: string | number, parent: Place): Place {
  return new ScalarPlace(scalar.span, undefined, key, parent);
}

/** The place of an item of a list. */
export function placeOfItem(item: Tree, index: number, parent: Place): Place {
  if (item.node !== 'map') return new ScalarPlace(item.span, undefined, index, parent);
  const id = idOf(item);
  const key = id === undefined ? index : `[${id.text}]`;
  return { span: item.span, focus: id?.span ?? item.entries[0]?.key.span ?? item.span, key, parent };
}

/** A scalar whole; of a map its `id`, or its first key. */
function focusOfTree(tree: MapTree): Span {
  return idOf(tree)?.span ?? tree.entries[0]?.key.span ?? tree.span;
}

/** Items are known by their `id` where they have one, so that a path outlives reordering. */
function idOf({ entries }: MapTree): ScalarTree | undefined {
  for (const { key, value } of entries) {
    if (key.text === 'id') return value.node === 'scalar' ? value : undefined;
  }
  return undefined;
}
