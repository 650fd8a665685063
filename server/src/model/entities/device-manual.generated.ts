// Generated from schemas/ by `npm run generate`. Do not edit.
import type { Citation, DateValue, Flag, List, Rec, Requirement, Text } from '../node.ts';
import type { Brush } from './brush.generated.ts';
import type { CleaningStep } from './cleaning-step.generated.ts';
import type { Detergent } from './detergent.generated.ts';
import type { DisinfectionOption } from './disinfection-option.generated.ts';
import type { FinalRinse } from './final-rinse.generated.ts';
import type { Immersion } from './immersion.generated.ts';
import type { Rinse } from './rinse.generated.ts';
import type { UseStatement } from './use-statement.generated.ts';
import type { WashPhase } from './wash-phase.generated.ts';
import type { WaterQuality } from './water-quality.generated.ts';

/** Cleaning as the page orders it: all of these, any one of these, or one stage with its details. */
export interface CleaningNode extends Rec {
  /** Short name of this alternative or step. */
  readonly id?: Text;
  /** Every one of these is done, in order unless marked otherwise. "Then" and "and" on the page mean this. */
  readonly all_of?: List<CleaningNode>;
  /** One of these is followed completely. "Or" on the page means this. Never mix them. */
  readonly any_of?: List<CleaningNode>;
  /** Yes when the order does not matter. */
  readonly unordered?: Flag;
  /** Id of the alternative the page prefers. */
  readonly prefer?: Text;
  /** Another choice with which alone this is valid. */
  readonly couples?: Text;
  /** Which kind of cleaning this is. */
  readonly stage?: Text<'manual' | 'ultrasonic' | 'mechanical' | 'disinfection'>;
  /** Whether this stage is required, allowed, recommended or forbidden. */
  readonly use?: Text<'allowed' | 'required' | 'forbidden' | 'recommended' | 'silent'>;
  /** Whether hand cleaning is always done, precedes the machine, or replaces it. */
  readonly needed?: Text<'always' | 'if-visibly-soiled' | 'before-machine' | 'instead-of-machine'>;
  /** The steps in order. All of them. */
  readonly steps?: List<CleaningStep>;
  /** First contact with water. */
  readonly first_rinse?: FirstRinse;
  /** How long it stays in the solution: often both a least and a longest time. */
  readonly soak?: Requirement;
  /** Temperature of the solution. */
  readonly soak_temp?: Requirement;
  /** Detergent the page asks for. */
  readonly detergent?: Detergent;
  /** Brush the page asks for. */
  readonly brush?: Brush;
  /** How many brush strokes. */
  readonly strokes?: Requirement;
  /** How long to brush. */
  readonly brush_time?: Requirement;
  /** What is pushed through the lumens. */
  readonly flush?: Flush;
  /** How often it is opened and closed, or moved, under water. */
  readonly actuate?: Requirement;
  /** Whether it may go under liquid during this stage. */
  readonly immersion?: Immersion;
  /** Rinsing after this stage. */
  readonly rinse?: Rinse;
  /** Whether it is cleaned apart from other instruments, as for the eye. */
  readonly separate_cleaning?: UseStatement;
  /** Whether tools are for one use, or sterilized between uses. */
  readonly tools?: Text;
  /** When cleaning is finished. */
  readonly endpoint?: Text;
  /** Magnification used to judge the result. */
  readonly magnification?: Requirement;
  /** Whether a test for residual soil is made. */
  readonly residue_test?: UseStatement;
  /** Frequency of the bath. */
  readonly frequency?: Requirement;
  /** How long: often both a least and a longest time. */
  readonly time?: Requirement;
  /** Temperature of the bath. */
  readonly temp?: Requirement;
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
  /** Standard the machine must conform to, as the page names it. */
  readonly conforms_to?: List<Text>;
  /** Connector by which its channels join the rack. */
  readonly connector?: Text;
  /** Rack or insert the page asks for. */
  readonly rack?: Text;
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
  /** Hot hold: temperature and time, or A0. */
  readonly thermal?: WashPhase;
  /** Last rinse in the machine and its water. */
  readonly final_rinse?: FinalRinse;
  /** Hot-air drying in the machine. */
  readonly dry?: WashPhase;
  /** Whether the machine may dose lubricant. */
  readonly lubricant?: UseStatement;
  /** Heat dose demanded. */
  readonly a0?: Requirement;
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

/** First contact with water. Heat would fix protein. */
export interface FirstRinse extends Rec {
  /** Temperature of the water. */
  readonly temp?: Requirement;
  /** How long. */
  readonly time?: Requirement;
  /** How much water. */
  readonly volume?: Requirement;
  /** Water the page asks for. */
  readonly water?: WaterQuality;
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

/** What is pushed through a lumen: volume, time, pressure and how often. */
export interface Flush extends Rec {
  /** Yes when flushing is demanded. */
  readonly required?: Flag;
  /** Lumen that is flushed. */
  readonly lumen?: Text;
  /** Port that is flushed. */
  readonly port?: Text;
  /** Volume each time. */
  readonly volume?: Requirement;
  /** How long. */
  readonly time?: Requirement;
  /** How many times. */
  readonly times?: Requirement;
  /** Pressure of the water. */
  readonly pressure?: Requirement;
  /** Temperature of the water. */
  readonly temp?: Requirement;
  /** Size of the syringe. */
  readonly syringe?: Requirement;
  /** Water the page asks for. */
  readonly water?: WaterQuality;
  /** Direction of the flow. */
  readonly direction?: Text;
  /** Yes when it is flushed under the surface. */
  readonly submerged?: Flag;
  /** Order in which ports are flushed. */
  readonly order?: Text;
  /** When flushing is finished. */
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

/** Cleaning by hand. */
export interface ManualCleaning extends Rec {
  /** Whether cleaning by hand is required, allowed or forbidden. */
  readonly use?: Text<'allowed' | 'required' | 'forbidden' | 'recommended' | 'silent'>;
  /** Whether hand cleaning is always done, precedes the machine, or replaces it. */
  readonly needed?: Text<'always' | 'if-visibly-soiled' | 'before-machine' | 'instead-of-machine'>;
  /** The steps in order. All of them. */
  readonly steps?: List<CleaningStep>;
  /** First contact with water. */
  readonly first_rinse?: FirstRinse;
  /** How long it stays in the solution: often both a least and a longest time. */
  readonly soak?: Requirement;
  /** Temperature of the solution. */
  readonly soak_temp?: Requirement;
  /** Detergent the page asks for. */
  readonly detergent?: Detergent;
  /** Brush the page asks for. */
  readonly brush?: Brush;
  /** How many brush strokes. */
  readonly strokes?: Requirement;
  /** How long to brush. */
  readonly brush_time?: Requirement;
  /** What is pushed through the lumens. */
  readonly flush?: Flush;
  /** How often it is opened and closed, or moved, under water. */
  readonly actuate?: Requirement;
  /** Whether it may go under liquid during this stage. */
  readonly immersion?: Immersion;
  /** Rinsing after this stage. */
  readonly rinse?: Rinse;
  /** Whether it is cleaned apart from other instruments, as for the eye. */
  readonly separate_cleaning?: UseStatement;
  /** Whether tools are for one use, or sterilized between uses. */
  readonly tools?: Text;
  /** When cleaning is finished. */
  readonly endpoint?: Text;
  /** Magnification used to judge the result. */
  readonly magnification?: Requirement;
  /** Whether a test for residual soil is made. */
  readonly residue_test?: UseStatement;
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
