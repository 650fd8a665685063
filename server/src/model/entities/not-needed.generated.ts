// Generated from schemas/ by `npm run generate`. Do not edit.
import type { Rec, Text } from '../node.ts';

/** A number in a quote that no field needs. */
export interface NotNeeded extends Rec {
  /** The number as it stands in the quote. */
  readonly text?: Text;
  /** Why no field needs it. */
  readonly reason?: Text;
}
