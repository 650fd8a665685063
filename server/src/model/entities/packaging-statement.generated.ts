// Generated from schemas/ by `npm run generate`. Do not edit.
import type { Citation, DateValue, Flag, List, Rec, Requirement, Text } from '../node.ts';
import type { Configuration } from './configuration.generated.ts';

/** Packaging the page speaks of, and what its words mean. */
export interface PackagingStatement extends Rec {
  /** Whether the page tells how it was tested, restricts the choice, or asks for a property. */
  readonly relation?: Text<'validated_with' | 'restricted_to' | 'requires_class'>;
  /** Packagings the page names. Any one of them. */
  readonly allowed?: List<Text>;
  /** How it must be when packed. All of these. */
  readonly configuration?: List<Configuration>;
  /** Mass of the packed set. */
  readonly max_mass?: Requirement;
  /** Whether the mass counts the packaging. */
  readonly mass_of?: Text<'gross' | 'net' | 'unstated'>;
  /** Yes when nothing may lie on it. */
  readonly no_stack?: Flag;
  /** Yes when cloth liners are forbidden. */
  readonly no_textile_liner?: Flag;
  /** Yes when silicone mats are forbidden. */
  readonly no_silicone_mat?: Flag;
  /** Mats, guards and brackets the page accepts. */
  readonly accessories?: List<Text>;
  /** How many layers of wrap. */
  readonly layers?: Requirement;
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
