// Generated from schemas/ by `npm run generate`. Do not edit.
import type { DateValue, Rec, Text } from '../node.ts';

/** Who encoded this file, who checked it, and when it is due again. Roles, never names. */
export interface Review extends Rec {
  /** Role id of the person who typed it. */
  readonly encoded_by?: Text;
  /** Role id of the person who checked it; never the same. */
  readonly approved_by?: Text;
  /** Role id of the person who compared quotes and fields. */
  readonly second_reader?: Text;
  /** Day of the review. */
  readonly on?: DateValue;
  /** Day by which it must be reviewed again. */
  readonly due?: DateValue;
  /** Anything a reader should know. */
  readonly note?: Text;
}
