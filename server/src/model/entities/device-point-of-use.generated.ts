// Generated from schemas/ by `npm run generate`. Do not edit.
import type { Citation, DateValue, Flag, List, Rec, Requirement, Text } from '../node.ts';
import type { CleaningStep } from './cleaning-step.generated.ts';
import type { Prohibition } from './prohibition.generated.ts';
import type { UseStatement } from './use-statement.generated.ts';

/** What to do where the device was used, before it travels. */
export interface PointOfUse extends Rec {
  /** Whether gross soil is wiped off at once. */
  readonly wipe?: UseStatement;
  /** Volume pushed through each lumen at the point of use. */
  readonly flush_now?: Requirement;
  /** How soil is kept from drying. */
  readonly keep_moist?: KeepMoist;
  /** Agents that must not touch it, such as saline. */
  readonly avoid?: List<Prohibition>;
  /** Longest time until cleaning begins. */
  readonly max_delay?: Requirement;
  /** Moment from which the delay is counted. */
  readonly clock_starts?: Text<'end-of-use' | 'end-of-procedure' | 'unstated'>;
  /** What the page says to do then. Any one of these. */
  readonly on_delay_exceeded?: List<DelayAction>;
  /** What is kept apart from what. */
  readonly separate?: Text;
  /** What is taken off or capped, in order. */
  readonly disconnect?: List<Text>;
  /** The steps in order. */
  readonly steps?: List<CleaningStep>;
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

/** How soil is kept from drying. */
export interface KeepMoist extends Rec {
  /** Whether keeping moist is required, allowed or forbidden. */
  readonly use?: Text<'allowed' | 'required' | 'forbidden' | 'recommended' | 'silent'>;
  /** Agents that may be used. Any one of them. */
  readonly agents?: List<Text>;
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

/** What the page says to do when the delay was exceeded. */
export interface DelayAction extends Rec {
  /** What is done. */
  readonly do?: Text;
  /** How long. */
  readonly time?: Requirement;
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
