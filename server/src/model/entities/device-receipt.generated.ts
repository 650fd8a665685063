// Generated from schemas/ by `npm run generate`. Do not edit.
import type { Citation, DateValue, Flag, List, Rec, Requirement, Text } from '../node.ts';
import type { CleaningStep } from './cleaning-step.generated.ts';
import type { UseStatement } from './use-statement.generated.ts';

/** What to do when the device arrives: new, borrowed or repaired. */
export interface Receipt extends Rec {
  /** State in which the maker delivers it. */
  readonly arrives?: Text<'non-sterile' | 'sterile'>;
  /** Whether it is cleaned before its first use. */
  readonly initial_cleaning?: UseStatement;
  /** What is done before the first use. */
  readonly initial_steps?: List<CleaningStep>;
  /** Time needed between arrival and use. */
  readonly lead_time?: Requirement;
  /** Yes when contents are counted on arrival. */
  readonly count?: Flag;
  /** Yes when it is weighed on arrival. */
  readonly weigh?: Flag;
  /** How implants are counted and refilled. */
  readonly implant_inventory?: Text;
  /** Certificate that must come with a repaired or borrowed item. */
  readonly certificate?: Text;
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
