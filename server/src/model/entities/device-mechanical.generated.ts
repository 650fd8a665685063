// Generated from schemas/ by `npm run generate`. Do not edit.
import type { Citation, DateValue, Flag, List, Rec, Text } from '../node.ts';
import type { Detergent } from './detergent.generated.ts';
import type { FinalRinse } from './final-rinse.generated.ts';
import type { Rinse } from './rinse.generated.ts';
import type { UseStatement } from './use-statement.generated.ts';
import type { WashPhase } from './wash-phase.generated.ts';

/** Washing in a washer-disinfector. */
export interface MechanicalWashing extends Rec {
  /** Whether washing in a machine is allowed, required or forbidden. */
  readonly use?: Text<'allowed' | 'required' | 'forbidden' | 'recommended' | 'silent'>;
  /** Standard the machine must conform to, as the page names it. */
  readonly conforms_to?: List<Text>;
  /** Connector by which its channels join the rack. */
  readonly connector?: Text;
  /** Rack or insert the page asks for. */
  readonly rack?: Text;
  /** How it lies in the rack. */
  readonly orientation?: Text;
  /** The phases the cycle must have, in order. */
  readonly phases?: List<Text<'prewash' | 'enzyme-wash' | 'wash' | 'neutralise' | 'rinse' | 'thermal' | 'final-rinse' | 'lubricate' | 'dry'>>;
  /** First cold rinse. */
  readonly prewash?: WashPhase;
  /** Wash with enzymes. */
  readonly enzyme_wash?: WashPhase;
  /** Main wash: temperature, time and pH. */
  readonly wash?: WashPhase;
  /** Neutralising after an alkaline wash. */
  readonly neutralise?: WashPhase;
  /** Rinsing after this stage. */
  readonly rinse?: Rinse;
  /** Hot hold: temperature and time, or A0. */
  readonly thermal?: WashPhase;
  /** Last rinse in the machine and its water. */
  readonly final_rinse?: FinalRinse;
  /** Hot-air drying in the machine. */
  readonly dry?: WashPhase;
  /** Detergent the page asks for. */
  readonly detergent?: Detergent;
  /** Whether the machine may dose lubricant. */
  readonly lubricant?: UseStatement;
  /** When cleaning is finished. */
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
