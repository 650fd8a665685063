// Generated from schemas/ by `npm run generate`. Do not edit.
import type { Citation, DateValue, Flag, Rec, Requirement, Text } from '../node.ts';

/** Cooling after the cycle. */
export interface Cooling extends Rec {
  /** How long it cools. */
  readonly time?: Requirement;
  /** Temperature at which it may be touched. */
  readonly temp?: Requirement;
  /** How it cools. */
  readonly method?: Text;
  /** Where the temperature is measured. */
  readonly aim?: Text;
  /** What it may stand on. */
  readonly surface?: Text;
  /** What it must cool before, such as connecting power. */
  readonly before?: Text;
  /** Yes when it must not be cooled with water or cold air. */
  readonly no_quench?: Flag;
  /** Yes when fans are forbidden. */
  readonly no_fan?: Flag;
  /** Yes when hot packs must not be touched. */
  readonly no_touch?: Flag;
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
