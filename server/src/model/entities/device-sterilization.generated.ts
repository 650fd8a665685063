// Generated from schemas/ by `npm run generate`. Do not edit.
import type { Citation, DateValue, Flag, List, Rec, Requirement, Text } from '../node.ts';
import type { Configuration } from './configuration.generated.ts';
import type { LumenLimit } from './lumen-limit.generated.ts';
import type { PackagingStatement } from './packaging-statement.generated.ts';

/** The complete cycles the page gives. Any one of them is followed completely. */
export interface Sterilization extends Rec {
  /** Whether sterilization is required, allowed or forbidden. */
  readonly use?: Text<'allowed' | 'required' | 'forbidden' | 'recommended' | 'silent'>;
  /** The complete options. Never mix them. */
  readonly any_of?: List<SterilizationOption>;
  /** Id of the option the page prefers. */
  readonly prefer?: Text;
  /** Heat limit in any cycle. */
  readonly max_temp?: Requirement;
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

/** One complete cycle the page gives. Its values are never mixed with those of another option. */
export interface SterilizationOption extends Rec {
  /** Short name of the option. */
  readonly id?: Text;
  /** Method of sterilization. One never stands in for another. */
  readonly modality?: Text<'steam-prevac' | 'steam-gravity' | 'steam-sfpp' | 'vh2o2' | 'eo' | 'dry-heat' | 'ltsf' | 'liquid-chemical'>;
  /** Whether the option is for stored packs or for immediate use. */
  readonly context?: Text<'terminal' | 'iuss'>;
  /** Temperature of exposure. */
  readonly temp?: Requirement;
  /** Length of exposure, not of the whole cycle. */
  readonly exposure?: Requirement;
  /** Length of the whole cycle, where the page gives it. */
  readonly total_time?: Requirement;
  /** Number of vacuum or pressure pulses. */
  readonly pulses?: Requirement;
  /** Depth of vacuum. */
  readonly vacuum?: Requirement;
  /** Length of the drying phase. */
  readonly dry?: Requirement;
  /** Humidity in the chamber. */
  readonly humidity?: Requirement;
  /** Concentration of the sterilant. */
  readonly concentration?: Requirement;
  /** Aeration after ethylene oxide. */
  readonly aeration?: Aeration;
  /** Named sterilizer and named cycle, as the maker lists them. */
  readonly listed?: List<Text>;
  /** Packaging of this option. */
  readonly packaging?: PackagingStatement;
  /** Lumens this option covers. */
  readonly lumens?: LumenLimit;
  /** How the load may look. */
  readonly load?: Load;
  /** Pressure the page prints beside the temperature. */
  readonly pressure?: Requirement;
  /** Yes when the pressure is not a demand. */
  readonly pressure_informational?: Flag;
  /** How many such cycles the device stands. */
  readonly max_exposures?: Requirement;
  /** Heat limit in this option. */
  readonly max_temp?: Requirement;
  /** How the device must be. All of these. */
  readonly configuration?: List<Configuration>;
  /** Markets for which the page gives this cycle, where it gives others for others. */
  readonly market?: List<Text>;
  /** Another choice with which alone this option is valid. */
  readonly couples?: Text;
  /** Which of the alternatives in the document this is. */
  readonly alt?: Text;
  /** Yes for half cycles and test figures. Such an option is never run. */
  readonly evidence?: Flag;
  /** What the page says the cycle achieves. */
  readonly claims?: List<Text>;
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

/** Aeration after ethylene oxide. */
export interface Aeration extends Rec {
  /** How long. */
  readonly time?: Requirement;
  /** Temperature of the air. */
  readonly temp?: Requirement;
  /** Where and how. */
  readonly method?: Text;
  /** The statement, or statements, that say this. */
  readonly src?: Citation;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}

/** How the load may look. */
export interface Load extends Rec {
  /** Mass in the chamber. */
  readonly mass?: Requirement;
  /** How many sets a shelf may hold. */
  readonly sets_per_shelf?: Requirement;
  /** Where it may stand. */
  readonly position?: Text;
  /** Yes when nothing may lie on it. */
  readonly no_stack?: Flag;
  /** How many such items a load may hold. */
  readonly items?: Requirement;
  /** The statement, or statements, that say this. */
  readonly src?: Citation;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}
