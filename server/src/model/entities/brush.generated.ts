// Generated from schemas/ by `npm run generate`. Do not edit.
import type { Citation, DateValue, Flag, Rec, Requirement, Text } from '../node.ts';

/** Brush the page asks for: thick enough for the bore and longer than the lumen. */
export interface Brush extends Rec {
  /** Yes when brushing is demanded. */
  readonly required?: Flag;
  /** Lumen that is brushed. */
  readonly lumen?: Text;
  /** Bristle diameter. */
  readonly diameter?: Requirement;
  /** Reach of the brush. */
  readonly length?: Requirement;
  /** Material of the bristles. */
  readonly material?: Text;
  /** Yes when a soft brush is demanded. */
  readonly soft?: Flag;
  /** How many strokes. */
  readonly strokes?: Requirement;
  /** How long. */
  readonly time?: Requirement;
  /** When brushing is finished. */
  readonly endpoint?: Text;
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
