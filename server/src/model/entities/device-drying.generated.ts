// Generated from schemas/ by `npm run generate`. Do not edit.
import type { Citation, DateValue, Flag, List, Rec, Requirement, Text } from '../node.ts';
import type { UseStatement } from './use-statement.generated.ts';

/** Drying after the last rinse. */
export interface Drying extends Rec {
  /** Whether drying is required. */
  readonly use?: Text<'allowed' | 'required' | 'forbidden' | 'recommended' | 'silent'>;
  /** Methods the page accepts. Any one of them. */
  readonly method?: List<Text>;
  /** Temperature of the air or cabinet. */
  readonly temp?: Requirement;
  /** How long. */
  readonly time?: Requirement;
  /** Compressed air and its limits. */
  readonly air?: Air;
  /** Whether channels are dried separately. */
  readonly lumens?: UseStatement;
  /** Whether alcohol may be used to dry. */
  readonly alcohol?: UseStatement;
  /** When it is dry. */
  readonly endpoint?: Text;
  /** Yes when the page says it must be dry before packing or sterilizing. */
  readonly wet_forbidden?: Flag;
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

/** Compressed air used for drying. */
export interface Air extends Rec {
  /** Pressure of the air. */
  readonly pressure?: Requirement;
  /** Grade of the air. */
  readonly grade?: Text;
  /** How long. */
  readonly time?: Requirement;
  /** The statement, or statements, that say this. */
  readonly src?: Citation;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}
