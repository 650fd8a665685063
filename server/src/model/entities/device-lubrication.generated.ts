// Generated from schemas/ by `npm run generate`. Do not edit.
import type { Citation, DateValue, Flag, List, Rec, Requirement, Text } from '../node.ts';

/** Whether and with what the device is lubricated. */
export interface Lubrication extends Rec {
  /** Whether lubrication is required, allowed or forbidden. */
  readonly use?: Text<'allowed' | 'required' | 'forbidden' | 'recommended' | 'silent'>;
  /** Yes when lubrication is demanded. */
  readonly required?: Flag;
  /** Lubricants the page accepts; "none" when it accepts none. */
  readonly allowed?: List<Text>;
  /** Lubricant the page names. */
  readonly agent?: Text;
  /** How many drops. */
  readonly drops?: Requirement;
  /** Where it is applied. */
  readonly where?: Text;
  /** How long it runs afterwards. */
  readonly run?: Requirement;
  /** Yes when it is done before packing. */
  readonly before_packaging?: Flag;
  /** Yes when the excess is wiped off. */
  readonly remove_excess?: Flag;
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
