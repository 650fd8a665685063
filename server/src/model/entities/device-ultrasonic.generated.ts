// Generated from schemas/ by `npm run generate`. Do not edit.
import type { Citation, DateValue, Flag, Rec, Requirement, Text } from '../node.ts';
import type { Detergent } from './detergent.generated.ts';
import type { Rinse } from './rinse.generated.ts';

/** Cleaning in an ultrasonic bath. */
export interface UltrasonicCleaning extends Rec {
  /** Whether ultrasonic cleaning is allowed, required or forbidden. */
  readonly use?: Text<'allowed' | 'required' | 'forbidden' | 'recommended' | 'silent'>;
  /** Frequency of the bath. */
  readonly frequency?: Requirement;
  /** How long: often both a least and a longest time. */
  readonly time?: Requirement;
  /** Temperature of the bath. */
  readonly temp?: Requirement;
  /** Detergent the page asks for. */
  readonly detergent?: Detergent;
  /** How long a fresh bath is degassed. */
  readonly degas?: Requirement;
  /** Yes when channels must be connected to an irrigating port. */
  readonly irrigated?: Flag;
  /** How it lies in the bath. */
  readonly orientation?: Text;
  /** Yes when different metals must not share the bath. */
  readonly single_metal?: Flag;
  /** Yes when the bath must be fresh for it. */
  readonly fresh_bath?: Flag;
  /** Rinsing after this stage. */
  readonly rinse?: Rinse;
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
