/**
 * model/: what a rule file says, as entities: every value keeps its span, its path and its source text.
 * Lowering goes from a tree and a kind's shape to an entity. It must not know other files, rules or the disk.
 */
import type { Span } from '../base/span.ts';
import type { QuantityValue } from '../quantity/quantity.ts';

/** Where a node stands in its file. Paths are made on demand by `pathOf`; a path is never turned back into a place. */
export interface Place {
  readonly span: Span;
  /** The key this value stands under, when it stands under one. */
  readonly keySpan?: Span;
  /** The key, or the `id` of a list item that has one, or its index. */
  readonly key: string | number;
  readonly parent?: Place;
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

/** Plain text: a name, a quote, an id, a word of a closed list. */
export interface Text<Word extends string = string> {
  readonly node: 'text';
  readonly at: Place;
  readonly text: Word;
}

export interface Flag {
  readonly node: 'flag';
  readonly at: Place;
  readonly on: boolean;
}

/** A calendar date, or a date with a time of day. `text` is ISO 8601; comparison by `text` is chronological within one form. */
export interface DateValue {
  readonly node: 'date';
  readonly at: Place;
  readonly text: string;
}

/** A number with its unit. `problem` is set instead of a usable `value` when the text is not one (value is then NaN). */
export interface Quantity extends QuantityValue {
  readonly node: 'quantity';
  readonly at: Place;
  readonly text: string;
  readonly problem?: QuantityFault;
}

/** Why a quantity's text could not be used. */
export type QuantityFault =
  | { readonly fault: 'no-number' }
  | { readonly fault: 'unit-missing' }
  | { readonly fault: 'unit-unknown'; readonly unit: string; readonly suggestion?: string }
  | { readonly fault: 'unit-of-other-kind'; readonly unit: string; readonly dimension: string }
  | { readonly fault: 'unit-ambiguous'; readonly unit: string; readonly choices: readonly string[] }
  | { readonly fault: 'range-in-one-value' }
  | { readonly fault: 'digits-not-ascii'; readonly found: string }
  | { readonly fault: 'number-form'; readonly found: string; readonly hint: string };

/** Statement ids (`src: s4`, `src: [s4, s5]`), or a document and page written in place. */
export interface Citation {
  readonly node: 'citation';
  readonly at: Place;
  readonly statements: readonly Text[];
  readonly inline?: { readonly doc?: Text; readonly rev?: Text; readonly page?: Text; readonly text?: Text };
}

export type List<Item> = { readonly node: 'list'; readonly at: Place; readonly items: readonly Item[] };

/** A mapping with free keys, such as `statements` or `thresholds`: key text to value. */
export type Table<Value> = { readonly node: 'table'; readonly at: Place; readonly rows: ReadonlyMap<string, Row<Value>> };

export interface Row<Value> {
  readonly key: Text;
  readonly value: Value;
}

/** Base of every record the generated types describe. Fields of the schema appear as optional properties beside these two. */
export interface Rec {
  readonly node: 'record';
  readonly at: Place;
}

export type BoundWord = 'at_least' | 'at_most' | 'between' | 'exactly' | 'stated' | 'about';

/**
 * One thing an instruction demands of one parameter, with the bound word that the page uses. At most one of the bound words is the
 * rule, but a reader may have written more (`range-reversed`, `silent-field-filled` are findings, not parse errors).
 */
export interface Requirement extends Rec {
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
  readonly when?: Text;
  readonly src?: Citation;
}

export type Node = Text | Flag | DateValue | Quantity | Citation | List<Node> | Table<Node> | Rec;
