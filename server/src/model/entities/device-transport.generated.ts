// Generated from schemas/ by `npm run generate`. Do not edit.
import type { Citation, DateValue, Flag, Rec, Requirement, Text } from '../node.ts';

/** How the device travels to the department. */
export interface Transport extends Rec {
  /** Container the page asks for. */
  readonly container?: Text;
  /** Label the page asks for. */
  readonly label?: Text;
  /** Yes when it must stay upright. */
  readonly upright?: Flag;
  /** Yes when nothing may lie on it. */
  readonly no_stacking?: Flag;
  /** Cap or cover to fit before travel. */
  readonly cap?: Text;
  /** Longest time on the way. */
  readonly max_time?: Requirement;
  /** Temperature on the way. */
  readonly temp?: Requirement;
  /** Humidity on the way. */
  readonly humidity?: Requirement;
  /** Yes when a reader looked and the document says nothing here. Silence neither permits nor forbids. */
  readonly silent?: Flag;
  /** Day on which a reader looked for this in the document. */
  readonly checked?: DateValue;
  /** What the page says when nobody could do it the same way twice. */
  readonly ambiguous?: Text;
  /** Id of the question put to the manufacturer about this. */
  readonly ask?: Text;
  /** Why this does not apply to the item. */
  readonly not_applicable?: Text;
  /** Whom the page leaves this to: the department, the detergent maker or a standard. */
  readonly defers_to?: Text<'department' | 'chemistry' | 'standard'>;
  /** The standard named by the page, with its edition. */
  readonly edition?: Text;
  /** The words of the page, where they help a reader. */
  readonly as_written?: Text;
  /** Whether the page says must, should or may. */
  readonly strength?: Text<'must' | 'should' | 'may'>;
  /** The situation in which this applies. Without it, it always applies. */
  readonly when?: Text;
  /** The statement, or statements, that say this. */
  readonly src?: Citation;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}
