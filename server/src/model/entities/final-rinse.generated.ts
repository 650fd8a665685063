// Generated from schemas/ by `npm run generate`. Do not edit.
import type { Citation, DateValue, Flag, Rec, Requirement, Text } from '../node.ts';

/** The last water, which dries on the device. */
export interface FinalRinse extends Rec {
  /** Name of the grade the page asks for. */
  readonly grade?: Text<'utility' | 'softened' | 'purified' | 'critical' | 'sterile'>;
  /** Electrical conductivity demanded. */
  readonly conductivity?: Requirement;
  /** Hardness demanded. */
  readonly hardness?: Requirement;
  /** Chloride demanded. */
  readonly chloride?: Requirement;
  /** Silicate demanded. */
  readonly silicate?: Requirement;
  /** pH demanded of the water. */
  readonly ph?: Requirement;
  /** Bacterial count demanded. */
  readonly bacteria?: Requirement;
  /** Endotoxin demanded. */
  readonly endotoxin?: Requirement;
  /** Temperature of the water. */
  readonly temp?: Requirement;
  /** How long. */
  readonly time?: Requirement;
  /** How many times. */
  readonly times?: Requirement;
  /** How much water, per port where there are ports. */
  readonly volume?: Requirement;
  /** Flow-through, running, basin or spray. */
  readonly mode?: Text<'flow-through' | 'running' | 'basin' | 'spray'>;
  /** Yes when the water is changed each time. */
  readonly fresh?: Flag;
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
