// Generated from schemas/ by `npm run generate`. Do not edit.
import type { DateValue, List, Rec, Text } from '../node.ts';
import type { Review } from './review.generated.ts';

/** Record that someone decided on each change of a revision, or of a machine, chemistry, packaging or procedure. */
export interface SignOff extends Rec {
  /** Says what this file describes. It stands first in the file. */
  readonly kind?: Text<'sign-off'>;
  /** Short name by which other files refer to this one. It stands second in the file. */
  readonly id?: Text;
  /** Document whose revision was decided. */
  readonly doc?: Text;
  /** File whose change was decided, where it is not a document. */
  readonly about?: Text;
  /** Revision before. */
  readonly from_rev?: Text;
  /** Revision after. */
  readonly to_rev?: Text;
  /** Content stamp of the side before. A later edit opens the record again. */
  readonly from_stamp?: Text;
  /** Content stamp of the side after. A later edit opens the record again. */
  readonly to_stamp?: Text;
  /** Every change that is not editorial, with its decision. */
  readonly changes?: List<DecidedChange>;
  /** Role, never a person’s name. */
  readonly reviewer?: Text;
  /** Role, never a person’s name. */
  readonly second_reader?: Text;
  /** Role, never a person’s name. */
  readonly manager?: Text;
  /** Role that was heard on packs already on the shelf. */
  readonly infection_prevention?: Text;
  /** Day of the signature. */
  readonly on?: DateValue;
  /** What happens to packs and sets already processed. */
  readonly shelf_stock?: Text<'use-as-processed' | 'reprocess' | 'quarantine' | 'not-affected'>;
  /** Why that was chosen. */
  readonly shelf_stock_reason?: Text;
  /** What is done until everything is changed. */
  readonly interim?: Interim;
  /** Training that goes with it. */
  readonly training?: Text;
  /** Sets whose cards were printed again. */
  readonly cards_reprinted?: List<Text>;
  /** Questions that were sent. */
  readonly questions?: List<Text>;
  /** Where the old revision is kept. */
  readonly archived?: Text;
  /** Mark of the library’s state when it was signed. */
  readonly commit?: Text;
  /** Day until which the record holds. */
  readonly expires?: DateValue;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
  /** Who encoded this file, who checked it, and when it is due again. */
  readonly review?: Review;
  /** Anything a reader should know. Never judged. */
  readonly notes?: List<Text>;
}

/** One change and what was decided about it. */
export interface DecidedChange extends Rec {
  /** Fingerprint of the change. */
  readonly fingerprint?: Text;
  /** Path of the value that changed. */
  readonly field?: Text;
  /** Kind of change. */
  readonly class?: Text<'stricter' | 'looser' | 'different' | 'new-prohibition' | 'prohibition-removed' | 'option-added' | 'option-removed' | 'step-added' | 'step-removed' | 'step-reordered' | 'scope' | 'became-silent' | 'became-stated' | 'clarification' | 'correction' | 're-citation' | 'editorial'>;
  /** What it changes in this department. */
  readonly effect?: Text<'route-breaks' | 'card-changes' | 'nothing-visible' | 'route-opens' | 'unused-only'>;
  /** What was decided. */
  readonly decision?: Text<'agree' | 'disagree' | 'ask'>;
  /** Question put to the manufacturer. */
  readonly question?: Text;
  /** What happens to packs already processed, for this change. */
  readonly shelf_stock?: Text<'use-as-processed' | 'reprocess' | 'quarantine' | 'not-affected'>;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}

/** What is done until everything is changed. */
export interface Interim extends Rec {
  /** What is done. */
  readonly measure?: Text;
  /** Day on which it ends. */
  readonly ends?: DateValue;
  /** Role, never a person’s name. */
  readonly owner?: Text;
}
