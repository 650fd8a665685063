import type { StageWord } from '../../quantity/prose/meaning.ts';
import type { Dimension } from '../../quantity/quantity.ts';

/**
 * Where a number of a quote may belong: a table that an educator can read. It only proposes places; the bound word and the rest are the
 * reader's. A home counts when a stage or a word of its group is in the sentence; where it has `near`, one of these beginnings of words must stand beside the number.
 */
export interface Group {
  /** Keys from the top of the file; `[]` stands for a new item of the list. */
  readonly path: string;
  readonly stages: readonly StageWord[];
  /** Beginnings of words, in English, German and French. */
  readonly words: readonly string[];
  /** Stages whose sentences are not about this group, whatever their words. */
  readonly unlessStage?: readonly StageWord[];
  /** Only in sentences that name this stage as well, or stand under a heading that does. */
  readonly besideStage?: StageWord;
  /** Only where its stage is named after that one. */
  readonly follows?: true;
  /** Only in sentences that begin so: it is surer than any word then. */
  readonly begins?: RegExp;
  /** Not in sentences that say so. */
  readonly unlessSaid?: RegExp;
  /** Not under headings that say so. */
  readonly unlessAbove?: RegExp;
  /** What a new step of a list does. */
  readonly does?: string;
  /** Stages that this one item of a list is about, where the sentence has several items. */
  readonly named?: readonly StageWord[];
  readonly fields: readonly Home[];
}

export interface Home {
  /** A key, or two with a dot between: a group inside an item. */
  readonly field: string;
  readonly dimension: Dimension;
  readonly near: readonly string[];
  /** Words that count behind the number only: `a 2 mm brush`. */
  readonly behind?: readonly string[];
  /** Only where the sentence has a number of this kind as well. */
  readonly beside?: Dimension;
  /** Not where the sentence has a number of this kind as well. */
  readonly unlessAlso?: Dimension;
  /** Only where the sentence has no other number of this kind. */
  readonly only?: true;
  /** Its word may stand before a number of another kind. */
  readonly reaches?: true;
  /** Only in sentences that name one of these stages. */
  readonly ofStage?: readonly StageWord[];
  /** What is counted, where the page prints a bare number. */
  readonly counted?: string;
}

/** For numbers that the sentence has for something without a field: they are told to the reader. */
export const elsewhere = '';
