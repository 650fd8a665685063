// Generated from schemas/ by `npm run generate`. Do not edit.
import type { DateValue, List, Quantity, Rec, Text } from '../node.ts';
import type { Review } from './review.generated.ts';

/** A question put to a manufacturer. */
export interface Question extends Rec {
  /** Says what this file describes. It stands first in the file. */
  readonly kind?: Text<'question'>;
  /** Short name by which other files refer to this one. It stands second in the file. */
  readonly id?: Text;
  /** What the question is about. */
  readonly about?: Text;
  /** Who is asked. */
  readonly maker?: Text;
  /** Path of the value in question. */
  readonly field?: Text;
  /** Document in question. */
  readonly doc?: Text;
  /** Revision in question. */
  readonly rev?: Text;
  /** Page in question. */
  readonly page?: Quantity;
  /** The sentence in question. */
  readonly quote?: Text;
  /** The question as sent. */
  readonly text?: Text;
  /** Day on which it was sent; empty while it is a draft. */
  readonly asked_on?: DateValue;
  /** Role, never a person’s name. */
  readonly asked_by?: Text;
  /** Days on which a reminder was sent. */
  readonly reminded_on?: List<DateValue>;
  /** The response that answers it. */
  readonly answered_by?: Text;
  /** Day on which it was closed. */
  readonly closed?: DateValue;
  /** Why it was closed without an answer. */
  readonly closed_reason?: Text;
  /** Who encoded this file, who checked it, and when it is due again. */
  readonly review?: Review;
  /** Anything a reader should know. Never judged. */
  readonly notes?: List<Text>;
}
