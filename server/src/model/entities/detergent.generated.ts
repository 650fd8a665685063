// Generated from schemas/ by `npm run generate`. Do not edit.
import type { Citation, DateValue, Flag, List, Rec, Requirement, Text } from '../node.ts';

/** What the page asks of the detergent. */
export interface Detergent extends Rec {
  /** Classes the page accepts. Any one of them. */
  readonly class?: List<Text<'neutral' | 'enzymatic' | 'neutral-enzymatic' | 'mild-alkaline' | 'alkaline' | 'strong-alkaline' | 'acid' | 'neutraliser' | 'lubricant' | 'rinse-aid' | 'rust-remover' | 'disinfectant' | 'alcohol' | 'keep-moist' | 'mild' | 'low-foaming'>>;
  /** pH of the solution in use, unless stated otherwise. */
  readonly ph?: Requirement;
  /** Dose the page asks for. */
  readonly dose?: Requirement;
  /** Temperature of the solution. */
  readonly temp?: Requirement;
  /** Yes when the page asks for low foam. */
  readonly low_foaming?: Flag;
  /** Products the page names. */
  readonly named?: List<Text>;
  /** Ingredients it must not contain. */
  readonly without?: List<Text>;
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
