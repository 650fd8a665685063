// Generated from schemas/ by `npm run generate`. Do not edit.
import type { Citation, DateValue, Flag, List, Rec, Requirement, Text } from '../node.ts';

/** Looking at and testing the device before packing. */
export interface Inspection extends Rec {
  /** Yes when it is looked at each time. */
  readonly visual?: Flag;
  /** Light at the bench. */
  readonly lighting?: Requirement;
  /** Magnification used. */
  readonly magnification?: Requirement;
  /** What to look for. */
  readonly criteria?: List<Text>;
  /** Findings that take it out of use. */
  readonly reject_if?: List<Text>;
  /** What is done with a rejected item. */
  readonly action?: Text<'repair' | 'discard' | 're-clean'>;
  /** Electrical test of the insulation. */
  readonly insulation_test?: Test;
  /** Electrical test of the conductor. */
  readonly continuity_test?: Test;
  /** Test for leaks. */
  readonly leak_test?: Test;
  /** Test of movement and function. */
  readonly function_test?: Test;
  /** Test of light transmission. */
  readonly light_test?: Test;
  /** Test of the edge on a stated medium. */
  readonly cut_test?: Test;
  /** Test of torque. */
  readonly torque_test?: Test;
  /** Test of the battery. */
  readonly battery_test?: Test;
  /** Looking into the channel, such as with a borescope. */
  readonly lumen_inspection?: Test;
  /** Test for residual soil. */
  readonly residue_test?: Test;
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

/** A test the page asks for. */
export interface Test extends Rec {
  /** Yes when the test is demanded. */
  readonly required?: Flag;
  /** How much of the item is tested. */
  readonly extent?: Text;
  /** Yes when it is done before each use. */
  readonly each_use?: Flag;
  /** What it is tested on, such as the medium of a cut test. */
  readonly medium?: Text;
  /** Value or setting of the test, with its unit. */
  readonly value?: Text;
  /** When the item passes. */
  readonly criteria?: Text;
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
