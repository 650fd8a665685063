import type { Span } from '../base/span.ts';

/**
 * syntax/: text to a plain tree with spans, within limits, and edits by range. The only importer of `yaml`.
 * It must not know any schema, kind, unit or other file.
 */

/** What one YAML document is to us: maps, lists, scalars and gaps. No anchors, aliases, tags or merge keys survive. */
export type Tree = MapTree | ListTree | ScalarTree | EmptyTree;

export interface MapTree {
  readonly node: 'map';
  readonly span: Span;
  /** In source order. Duplicate keys stay in the list (a problem is reported); readers take the first. */
  readonly entries: readonly MapEntry[];
}

export interface MapEntry {
  readonly key: ScalarTree;
  readonly value: Tree;
}

export interface ListTree {
  readonly node: 'list';
  readonly span: Span;
  readonly items: readonly Tree[];
}

/** Quoting style decides whether other YAML readers could take the text for a number, a date or a truth value. */
export type ScalarStyle = 'plain' | 'single-quoted' | 'double-quoted' | 'block';

export interface ScalarTree {
  readonly node: 'scalar';
  /** Covers the quotes too, when there are any. */
  readonly span: Span;
  /** The characters meant: escapes and folding resolved, never turned into a number, date or truth value. */
  readonly text: string;
  readonly style: ScalarStyle;
}

/** A key or list dash with nothing after it. The span is the empty place where a value would stand. */
export interface EmptyTree {
  readonly node: 'empty';
  readonly span: Span;
}
