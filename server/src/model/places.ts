import type { Span } from '../base/span.ts';
import { span } from '../base/span.ts';
import type { MapTree, ScalarTree, Tree } from '../syntax/tree.ts';
import type { Place, Root } from './node.ts';

/**
 * Where a value stands, as a library keeps it by the million: two numbers, from which ranges are made when asked for. A library of ten
 * thousand files is mostly places.
 */
export abstract class Standing implements Place {
  readonly #start: number;
  readonly #lengths: Lengths;
  readonly key: string | number;
  readonly parent: Place;

  /** `key`: the key's text, or the place in a list. */
  constructor(at: Span, keyAt: Span | undefined, key: string | number, parent: Place) {
    this.#start = at.start;
    this.#lengths = lengthsOf(at, keyAt);
    this.key = key;
    this.parent = parent;
  }

  get span(): Span {
    const lengths = this.#lengths;
    if (typeof lengths !== 'number') return lengths.span;
    return span(this.#start, this.#start + (lengths >> (keyBits + gapBits)));
  }

  get keySpan(): Span | undefined {
    const lengths = this.#lengths;
    if (typeof lengths !== 'number') return lengths.keySpan;
    const length = lengths & mostKey;
    if (length === noKey) return undefined;
    const end = this.#start - ((lengths >> keyBits) & mostGap);
    return span(end - length, end);
  }
}

/** Of an ordinary value one number: how long it is, how far behind its key it stands, how long the key is. Of any other the ranges. */
type Lengths = number | { readonly span: Span; readonly keySpan: Span | undefined };

/** Together with the length of the value 30 bits, which every build of the engine keeps without an object of its own. */
const keyBits = 6;
const gapBits = 6;
const mostKey = (1 << keyBits) - 1;
const mostGap = (1 << gapBits) - 1;
const mostLength = (1 << (30 - keyBits - gapBits)) - 1;
/** No key is this long: one that is has its ranges kept. */
const noKey = mostKey;

function lengthsOf(at: Span, keyAt: Span | undefined): Lengths {
  const length = at.end - at.start;
  const key = keyAt === undefined ? noKey : keyAt.end - keyAt.start;
  const gap = keyAt === undefined ? 0 : at.start - keyAt.end;
  const isOrdinary = length <= mostLength && gap >= 0 && gap <= mostGap && (keyAt === undefined || key < noKey);
  return isOrdinary ? (length << (keyBits + gapBits)) | (gap << keyBits) | key : { span: at, keySpan: keyAt };
}

/** Where a record, a list or a table stands under its key. */
class PlaceOfMany extends Standing {}

/** Where an item of a list stands that has a name or fields of its own. */
class PlaceOfItem extends Standing {
  readonly #focusStart: number;
  readonly #focusEnd: number;

  constructor(at: Span, focus: Span, key: string | number, parent: Place) {
    super(at, undefined, key, parent);
    this.#focusStart = focus.start;
    this.#focusEnd = focus.end;
  }

  get focus(): Span {
    return span(this.#focusStart, this.#focusEnd);
  }
}

/** A value of a file before it is read: under which key, of what. */
export interface Spot {
  /** Where the key stands; undefined for an item of a list. */
  readonly keyAt: Span | undefined;
  /** The key's text, one string for all files where the schema has one; of an item its place in the list. */
  readonly key: string | number;
  readonly parent: Place;
}

/** The place of a whole file. */
export function placeOfFile(tree: MapTree, root: Root): Place {
  return { span: tree.span, focus: focusOfTree(tree), key: '', root };
}

/** The place of what is no scalar. */
export function placeAt(tree: Tree, { keyAt, key, parent }: Spot): Place {
  if (typeof key === 'string' || tree.node !== 'map') return new PlaceOfMany(tree.span, keyAt, key, parent);
  const id = idOf(tree);
  const name = id === undefined ? key : `[${id.text}]`;
  return new PlaceOfItem(tree.span, id?.span ?? tree.entries[0]?.key.span ?? tree.span, name, parent);
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
