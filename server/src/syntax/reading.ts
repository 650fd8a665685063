import type { CST } from 'yaml';
import type { Problem } from '../base/problem.ts';
import type { Span } from '../base/span.ts';
import type { ReadLimits } from './limits.ts';
import type { ProblemSink } from './problem-sink.ts';
import type { MapEntry, ScalarTree, Tree } from './tree.ts';

/** What is read from one file. */
export interface ReadResult {
  /** As much as could be read; undefined when there is nothing at all. Spans are offsets into the text given. */
  readonly tree: Tree | undefined;
  /** In order of place. One for each root cause. */
  readonly problems: readonly Problem[];
  /** True when the file as a whole is no map of keys, so that nothing further can be said about its content. */
  readonly unreadable: boolean;
}

/** What composing one file shares: the text, the limits, where problems go, and how to go one level deeper. */
export interface Reading {
  /** The text that tokens point into: the source with single characters mended, same length. */
  readonly text: string;
  /** The text as written. */
  readonly source: string;
  readonly limits: ReadLimits;
  readonly sink: ProblemSink;
  /** Ranges whose inside is text over several lines; tabs there are content. */
  readonly textRanges: Span[];
  /** Places where names for pieces of text are given (`&name`) and used (`*name`). */
  readonly anchors: { readonly name: string; readonly span: Span }[];
  readonly aliases: { readonly name: string; readonly span: Span }[];
  /** Single characters that made the rest unreadable; the file is read again with each of them blanked. */
  readonly blanks: Blank[];
  keysLeft: number;
  depth: number;
  /** Builds the tree of one token, within the depth limit. */
  readonly compose: (token: CST.Token, within: Within) => Tree;
}

/** A character to blank before reading again, and the problem that says so. */
export interface Blank {
  readonly at: number;
  readonly report: (sink: ProblemSink) => void;
}

/** Where a value stands. */
export interface Within {
  /** Column of the keys or dashes around it; -1 at the top of the file. */
  readonly indent: number;
  readonly flow: 'block' | 'flow';
  /** The value starts on the line of its key, on a line of its own, or after a dash. */
  readonly begins: 'after-key' | 'own-line' | 'after-dash' | 'in-brackets' | 'top';
}

/** One map being put together. */
export interface MapWork {
  readonly reading: Reading;
  readonly map: CST.BlockMap;
  readonly entries: MapEntry[];
  /** Entries that were read as part of a value but belong after it. */
  readonly siblings: MapEntry[];
  readonly register: { readonly add: (key: ScalarTree) => void };
}

/** End of a token that is one piece of source. */
export function endOf(token: { readonly offset: number; readonly source: string }): number {
  return token.offset + token.source.length;
}
