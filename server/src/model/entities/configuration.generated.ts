// Generated from schemas/ by `npm run generate`. Do not edit.
import type { Citation, Rec, Text } from '../node.ts';

/** How the device must be when packed or sterilized: open, apart, turned. */
export interface Configuration extends Rec {
  /** What the page asks for. */
  readonly what?: Text;
  /** The situation in which this applies. Without it, it always applies. */
  readonly when?: Text;
  /** The statement, or statements, that say this. */
  readonly src?: Citation;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}
