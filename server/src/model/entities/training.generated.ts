// Generated from schemas/ by `npm run generate`. Do not edit.
import type { DateValue, List, Quantity, Rec, Text } from '../node.ts';
import type { Review } from './review.generated.ts';

/** A change or topic that people must know. */
export interface Training extends Rec {
  /** Says what this file describes. It stands first in the file. */
  readonly kind?: Text<'training'>;
  /** Short name by which other files refer to this one. It stands second in the file. */
  readonly id?: Text;
  /** What it is about. */
  readonly topic?: Text;
  /** The change in one or two sentences. */
  readonly change?: Text;
  /** Reason a technician can understand. */
  readonly why?: Text;
  /** Files the change touches. */
  readonly about?: List<Text>;
  /** Document that changed. */
  readonly doc?: Text;
  /** Revision that brought the change. */
  readonly rev?: Text;
  /** Roles with the day due and how many are done. */
  readonly readers?: List<Readers>;
  /** What is used to teach it. */
  readonly material?: Text;
  /** Questions that go with it. */
  readonly quiz?: List<Text>;
  /** Day on which it began. */
  readonly on?: DateValue;
  /** Day on which everyone had been reached. */
  readonly closed?: DateValue;
  /** Who encoded this file, who checked it, and when it is due again. */
  readonly review?: Review;
  /** Anything a reader should know. Never judged. */
  readonly notes?: List<Text>;
}

/** A role that must know it. Counts only, never names. */
export interface Readers extends Rec {
  /** Role, never a person’s name. */
  readonly role?: Text;
  /** Day by which all must be done. */
  readonly due?: DateValue;
  /** How many are done. */
  readonly done?: Quantity;
  /** How many there are. */
  readonly of?: Quantity;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}
