// Generated from schemas/ by `npm run generate`. Do not edit.
import type { Citation, DateValue, Flag, List, Rec, Requirement, Text } from '../node.ts';
import type { DisinfectionOption } from './disinfection-option.generated.ts';
import type { Rinse } from './rinse.generated.ts';

/** Thermal or chemical disinfection. */
export interface Disinfection extends Rec {
  /** Whether disinfection is allowed, required or forbidden. */
  readonly use?: Text<'allowed' | 'required' | 'forbidden' | 'recommended' | 'silent'>;
  /** Heat dose demanded. */
  readonly a0?: Requirement;
  /** Temperature of the bath. */
  readonly temp?: Requirement;
  /** How long: often both a least and a longest time. */
  readonly time?: Requirement;
  /** Complete pairs of temperature and time. Any one of them. */
  readonly options?: List<DisinfectionOption>;
  /** Disinfectant the page names. */
  readonly agent?: Text;
  /** Concentration of the disinfectant. */
  readonly concentration?: Requirement;
  /** How many rinses follow. */
  readonly rinse_count?: Requirement;
  /** Yes when the page says it does not replace sterilization. */
  readonly not_a_substitute?: Flag;
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
