// Generated from schemas/ by `npm run generate`. Do not edit.
import type { DateValue, Flag, List, Quantity, Rec, Table, Text } from '../node.ts';
import type { Review } from './review.generated.ts';
import type { Statement } from './statement.generated.ts';

/** A written answer of a manufacturer to a question. */
export interface Response extends Rec {
  /** Says what this file describes. It stands first in the file. */
  readonly kind?: Text<'response'>;
  /** Short name by which other files refer to this one. It stands second in the file. */
  readonly id?: Text;
  /** Day of the answer. */
  readonly date?: DateValue;
  /** Role of the sender. */
  readonly from?: Text;
  /** Who answers. */
  readonly maker?: Text;
  /** What the answer is about. */
  readonly about?: Text;
  /** Path of the value it settles. */
  readonly field?: Text;
  /** Number of the document it speaks of. */
  readonly doc?: Text;
  /** Revision it speaks of. */
  readonly rev?: Text;
  /** Page it speaks of. */
  readonly page?: Quantity;
  /** Questions it answers. */
  readonly answers?: List<Text>;
  /** What it permits, in its own words. */
  readonly permits?: Text;
  /** What it denies, in its own words. */
  readonly denies?: Text;
  /** The deciding sentence, word for word. */
  readonly quote?: Text;
  /** Whether it may be relied on. */
  readonly status?: Text<'unverified' | 'verified' | 'withdrawn'>;
  /** Yes when it is signed. */
  readonly signed?: Flag;
  /** Day until which it holds. */
  readonly expires?: DateValue;
  /** Markets it holds for. */
  readonly market?: List<Text>;
  /** First serial or lot number. */
  readonly serial_from?: Text;
  /** Last serial or lot number. */
  readonly serial_to?: Text;
  /** The letter kept in the library. */
  readonly file?: Text;
  /** Reference number of the letter. */
  readonly reference?: Text;
  /** The passages of the documents that the values cite, each under a short id. */
  readonly statements?: Table<Statement>;
  /** Who encoded this file, who checked it, and when it is due again. */
  readonly review?: Review;
  /** Anything a reader should know. Never judged. */
  readonly notes?: List<Text>;
}
