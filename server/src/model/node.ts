/**
 * model/: what a rule file says, as entities: every value keeps its span, its path and its source text.
 * Lowering goes from a tree and a kind's shape to an entity. It must not know other files, rules or the disk.
 */
import { invariant } from '../base/assert.ts';
import type { EntityId, FileId } from '../base/brand.ts';
import type { Span } from '../base/span.ts';
import type { Dimension, QuantityFault, QuantityValue } from '../quantity/quantity.ts';
import type { Kind } from '../schema/kinds.ts';

/** Where a node stands in its file. Paths are made on demand by `pathOf`; a path is never turned back into a place. */
export interface Place {
  readonly span: Span;
  /** The key this value stands under, when it stands under one. */
  readonly keySpan?: Span | undefined;
  /** The range to underline for the whole value: set on short values and on list items that have an id. Else the key is underlined. */
  readonly focus?: Span;
  /** The key, or the `id` of a list item that has one, or its index. */
  readonly key: string | number;
  /** Undefined for the root of a file only. */
  readonly parent?: Place;
  /** Set on the root of a file only: which file, and whose entity. */
  readonly root?: Root;
}

export interface Root {
  readonly file: FileId;
  readonly kind: Kind;
  readonly id: EntityId;
}

/** The file and entity that a place belongs to. */
export function rootOf(place: Place): Root {
  let at = place;
  while (at.parent !== undefined) at = at.parent;
  invariant(at.root !== undefined, 'every place hangs on a root');
  return at.root;
}

/** Field path such as `sterilization.any_of[pv132].exposure`. Stable against reordering where items have ids. */
export function pathOf(place: Place): string {
  if (place.parent === undefined) return '';
  const before = pathOf(place.parent);
  if (typeof place.key === 'number' || place.key.startsWith('[')) {
    return `${before}${typeof place.key === 'number' ? `[${place.key}]` : place.key}`;
  }
  return before === '' ? place.key : `${before}.${place.key}`;
}

/**
 * Base of a value that is one scalar. It may be its own place, which a copy by `{ ...value }` is not: such a copy names its place, or types
 * don't fit.
 */
export abstract class Leaf {
  abstract get at(): Place;
}

/** The same for an amount: a copy of its numbers names each of them. */
export abstract class QuantityLeaf extends Leaf {
  abstract get dimension(): Dimension;
  abstract get value(): number;
  abstract get amount(): number;
  abstract get unit(): string;
  abstract get decimals(): number;
}

/** Plain text: a name, a quote, an id, a word of a closed list. */
export interface Text<Word extends string = string> extends Leaf {
  readonly node: 'text';
  readonly text: Word;
  /** Set when the file writes it with escapes, folded lines or doubled quotes: an offset into `text` is then no offset into the file. */
  readonly rewritten?: true;
  /** Set when this text is the id of something else: the kinds it may name (`device`, `statement`, ...). */
  readonly refers?: readonly string[];
  /** Set when a word that names nothing in the library is fine too. */
  readonly open?: true;
}

export interface Flag extends Leaf {
  readonly node: 'flag';
  readonly on: boolean;
}

/** A calendar date, or a date with a time of day. `text` is ISO 8601; comparison by `text` is chronological within one form. */
export interface DateValue extends Leaf {
  readonly node: 'date';
  readonly text: string;
}

/** A number with its unit. `problem` is set instead of a usable `value` when the text is not one (value is then NaN). */
export interface Quantity extends QuantityValue, QuantityLeaf {
  readonly node: 'quantity';
  readonly text: string;
  readonly problem?: QuantityFault | undefined;
}

/** Statement ids (`src: s4`, `src: [s4, s5]`), or a document and page written in place. */
export interface Citation {
  readonly node: 'citation';
  readonly at: Place;
  readonly statements: readonly Text[];
  readonly inline?: { readonly doc?: Text; readonly rev?: Text; readonly page?: Text; readonly text?: Text };
}

export interface List<Item> {
  readonly node: 'list';
  readonly at: Place;
  readonly items: readonly Item[];
}

/** A mapping with free keys, such as `statements` or `thresholds`: key text to value. */
export interface Table<Value> {
  readonly node: 'table';
  readonly at: Place;
  readonly rows: ReadonlyMap<string, Row<Value>>;
}

export interface Row<Value> {
  readonly key: Text;
  readonly value: Value;
}

/** Base of every record the generated types describe. Fields of the schema appear as optional properties beside these two. */
export interface Rec {
  readonly node: 'record';
  readonly at: Place;
  /** Fields that the file has in a form that can't be read. schema/ says so; that they are absent would be an echo. */
  readonly unread?: readonly string[];
}

export type BoundWord = 'at_least' | 'at_most' | 'between' | 'exactly' | 'stated' | 'about';

/**
 * One thing an instruction demands of one parameter, with the bound word that the page uses. At most one of the bound words is the
 * rule, but a reader may have written more (`range-reversed`, `silent-field-filled` are findings, not parse errors).
 */
export interface Requirement extends Rec {
  /** What the bound words measure. */
  readonly dimension: Dimension;
  readonly at_least?: Quantity;
  readonly at_most?: Quantity;
  readonly between?: List<Quantity>;
  readonly exactly?: Quantity;
  /** Number given with NO bound word; the site's policy says how it is judged. */
  readonly stated?: Quantity;
  /** "approximately": never a limit. */
  readonly about?: Quantity;
  /** The reader looked; the document says nothing. Neither permission nor prohibition. */
  readonly silent?: Flag;
  readonly checked?: DateValue;
  /** What the page says when it cannot be executed as written. */
  readonly ambiguous?: Text;
  /** Id of the open question to the manufacturer. */
  readonly ask?: Text;
  readonly not_applicable?: Text;
  readonly as_written?: Text;
  readonly read_as?: Text<'minutes' | 'minimum'>;
  /** Tolerance as a difference. */
  readonly tol?: Quantity;
  /** pH basis. */
  readonly of?: Text<'in-use' | 'concentrate'>;
  readonly strength?: Text<'must' | 'should' | 'may'>;
  readonly defers_to?: Text<'department' | 'chemistry' | 'standard'>;
  readonly edition?: Text;
  /** The same field as two current documents state it. */
  readonly conflict?: List<Requirement>;
  /** The device-specific statement that overrides a generic one. */
  readonly specific?: Requirement;
  /** Number of the document that says this, where no statement is cited. */
  readonly doc?: Text;
  readonly when?: Text;
  /** Why it is written this way, where a reader may wonder. */
  readonly reason?: Text;
  readonly src?: Citation;
}

export type Node = Text | Flag | DateValue | Quantity | Citation | List<Node> | Table<Node> | Rec;
