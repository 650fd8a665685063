// Generated from schemas/ by `npm run generate`. Do not edit.
import type { Citation, List, Rec, Requirement, Text } from '../node.ts';

/** Which lumens are covered: the bore, the length, and how many in a load. */
export interface LumenLimit extends Rec {
  /** Bore of the lumen that is covered. */
  readonly bore?: Requirement;
  /** Length of the lumen that is covered. */
  readonly length?: Requirement;
  /** Material of the lumen the limit is for. */
  readonly material?: Text;
  /** Whether the limit is for open or closed ends. */
  readonly ends?: Text;
  /** How many such lumens one load may hold. */
  readonly count?: Requirement;
  /** Further limits, one a material. */
  readonly by_material?: List<LumenLimit>;
  /** The statement that gives the limits. */
  readonly src?: Citation;
  /** Anything a reader should know. */
  readonly note?: Text;
}
