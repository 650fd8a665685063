// Generated from schemas/ by `npm run generate`. Do not edit.
import type { Citation, DateValue, Flag, Rec, Requirement, Text } from '../node.ts';
import type { Brush } from './brush.generated.ts';
import type { Detergent } from './detergent.generated.ts';
import type { WaterQuality } from './water-quality.generated.ts';

/** One step done by hand: with what, where, how long, how often, until when. */
export interface CleaningStep extends Rec {
  /** Short name of the step. */
  readonly id?: Text;
  /** What is done. */
  readonly do?: Text;
  /** Lumen it is done to. */
  readonly lumen?: Text;
  /** Port through which it is done. */
  readonly port?: Text;
  /** What it is done with. */
  readonly agent?: Text;
  /** Detergent the page asks for. */
  readonly detergent?: Detergent;
  /** Brush, syringe or gun. */
  readonly tool?: Text;
  /** Brush the page asks for. */
  readonly brush?: Brush;
  /** Volume each time. */
  readonly volume?: Requirement;
  /** How long. */
  readonly time?: Requirement;
  /** How many times. */
  readonly times?: Requirement;
  /** Temperature of the water or solution. */
  readonly temp?: Requirement;
  /** Pressure of water or air. */
  readonly pressure?: Requirement;
  /** Water the page asks for. */
  readonly water?: WaterQuality;
  /** Flow-through, running, basin or spray. */
  readonly mode?: Text<'flow-through' | 'running' | 'basin' | 'spray'>;
  /** Direction of the flow. */
  readonly direction?: Text;
  /** Yes when it is done under the surface. */
  readonly submerged?: Flag;
  /** Place of the step among its kind. */
  readonly order?: Text;
  /** How far it reaches. */
  readonly extent?: Text;
  /** When the step is finished. */
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
