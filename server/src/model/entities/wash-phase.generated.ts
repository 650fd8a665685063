// Generated from schemas/ by `npm run generate`. Do not edit.
import type { Citation, DateValue, Flag, Rec, Requirement, Text } from '../node.ts';
import type { Detergent } from './detergent.generated.ts';
import type { WaterQuality } from './water-quality.generated.ts';

/** What the page asks of one phase of the washer cycle. */
export interface WashPhase extends Rec {
  /** Whether the phase is required, allowed or forbidden. */
  readonly use?: Text<'allowed' | 'required' | 'forbidden' | 'recommended' | 'silent'>;
  /** Temperature of the phase. */
  readonly temp?: Requirement;
  /** Length of the phase. */
  readonly time?: Requirement;
  /** pH of the solution in use. */
  readonly ph?: Requirement;
  /** Heat dose of the phase. */
  readonly a0?: Requirement;
  /** Dose of the agent. */
  readonly dose?: Requirement;
  /** Detergent of the phase. */
  readonly detergent?: Detergent;
  /** Agent of the phase. */
  readonly agent?: Text;
  /** Water of the phase. */
  readonly water?: WaterQuality;
  /** Choice with which this phase is needed. */
  readonly couples?: Text;
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
