import type { Markup } from './markup.ts';
import type { Line } from './piece.ts';

/** A page or letter as parts in reading order: one layout for everything that is read rather than worked from. */
export type Part =
  | { readonly is: 'heading'; readonly level: 1 | 2 | 3; readonly line: Line; readonly anchor?: string }
  /** Links to headings of the same page, with the sheet where each is, once that is known. */
  | { readonly is: 'contents'; readonly items: readonly ContentsItem[] }
  /** The answer itself: large and framed. */
  | { readonly is: 'verdict'; readonly line: Line; readonly under: readonly Line[] }
  | { readonly is: 'text'; readonly line: Line }
  | { readonly is: 'small'; readonly line: Line }
  | { readonly is: 'list'; readonly items: readonly Line[] }
  /** Answers to choose from: each begins with its own box to tick. */
  | { readonly is: 'choices'; readonly items: readonly Line[] }
  /** What the page is not: small, side by side, at the foot. */
  | { readonly is: 'cautions'; readonly items: readonly Line[] }
  | { readonly is: 'numbered'; readonly items: readonly Line[] }
  | {
      readonly is: 'table';
      readonly head: readonly string[];
      readonly rows: readonly (readonly Line[])[];
      /** Columns that hold a few words or a number never break inside them. */
      readonly narrow?: readonly number[];
    }
  | { readonly is: 'quote'; readonly quote: Line; readonly citation: Line }
  | { readonly is: 'figure'; readonly drawing: Markup; readonly caption: Line }
  /** Something to be written on the paper by hand. */
  | { readonly is: 'blank'; readonly label: string }
  | { readonly is: 'new-page' };

export interface ContentsItem {
  readonly line: Line;
  readonly anchor: string;
  readonly sheet?: number | undefined;
}
