// Generated from schemas/ by `npm run generate`. Do not edit.
import type { DateValue, List, Rec, Text } from '../node.ts';
import type { Review } from './review.generated.ts';

/** A finding the department accepts for a time, with the reason and who carries the risk. */
export interface Waiver extends Rec {
  /** Says what this file describes. It stands first in the file. */
  readonly kind?: Text<'waiver'>;
  /** Short name by which other files refer to this one. It stands second in the file. */
  readonly id?: Text;
  /** Name of the finding that is accepted. */
  readonly rule?: Text;
  /** What it is accepted for: ids, or all. */
  readonly scope?: List<Text>;
  /** Path of the value it is limited to. */
  readonly field?: Text;
  /** Fingerprint of the one finding it is for. */
  readonly fingerprint?: Text;
  /** Why it is accepted. */
  readonly reason?: Text;
  /** Role, never a person’s name. */
  readonly owner?: Text;
  /** Role, never a person’s name. */
  readonly approved_by?: Text;
  /** Day on which it was granted. */
  readonly on?: DateValue;
  /** Day on which it ends. It must have one. */
  readonly expires?: DateValue;
  /** What is done meanwhile. */
  readonly measure?: Text;
  /** Question that would settle it. */
  readonly question?: Text;
  /** Who encoded this file, who checked it, and when it is due again. */
  readonly review?: Review;
  /** Anything a reader should know. Never judged. */
  readonly notes?: List<Text>;
}
