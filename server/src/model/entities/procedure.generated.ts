// Generated from schemas/ by `npm run generate`. Do not edit.
import type { Citation, Flag, List, Quantity, Rec, Table, Text } from '../node.ts';
import type { Review } from './review.generated.ts';
import type { Statement } from './statement.generated.ts';

/** A procedure of the department: whom it is for and its steps in order. */
export interface Procedure extends Rec {
  /** Says what this file describes. It stands first in the file. */
  readonly kind?: Text<'procedure'>;
  /** Short name by which other files refer to this one. It stands second in the file. */
  readonly id?: Text;
  /** Name of the procedure. */
  readonly name?: Text;
  /** What it is about, as the site names it. */
  readonly topics?: List<Text>;
  /** Devices it is for. */
  readonly applies_to?: List<Text>;
  /** Yes when it is for every device. */
  readonly applies_to_all?: Flag;
  /** Traits of the devices it is for. */
  readonly applies_to_traits?: List<Text<'lumen' | 'hinged' | 'ratchet' | 'spring' | 'cannulated' | 'multi-part' | 'stopcock' | 'valve' | 'powered' | 'battery' | 'insulated' | 'cable' | 'electronic' | 'optic' | 'fibre-light' | 'camera' | 'intraocular' | 'implant' | 'implant-trial' | 'instrument-case' | 'articulated' | 'serrated' | 'sharp' | 'delicate' | 'porous' | 'textile' | 'single-use' | 'single-patient' | 'flexible-endoscope' | 'loaner' | 'reusable-container'>>;
  /** Sets it is for. */
  readonly applies_to_sets?: List<Text>;
  /** Situations it is for. */
  readonly scope?: List<Text>;
  /** Places from which items come, as the site names them. */
  readonly places?: List<Text>;
  /** Whether it is for stored packs or for immediate use. */
  readonly context?: Text<'terminal' | 'iuss'>;
  /** The situation in which it is followed. */
  readonly when?: Text;
  /** Stage at which items enter. */
  readonly starts_at?: Text<'point-of-use' | 'transport' | 'receipt' | 'quarantine' | 'disassembly' | 'manual' | 'ultrasonic' | 'mechanical' | 'rinse' | 'disinfection' | 'drying' | 'inspection' | 'lubrication' | 'assembly' | 'packaging' | 'loading' | 'steam' | 'low-temperature' | 'sterilization' | 'aeration' | 'cooling' | 'release' | 'storage' | 'use'>;
  /** Packaging or container used throughout. */
  readonly packaging?: Text;
  /** The steps in order. */
  readonly steps?: List<ProcedureStep>;
  /** Fields that instructions leave to the department and this procedure answers. */
  readonly answers?: List<Text>;
  /** Sentences that appeal to an authority. */
  readonly claims?: List<Claim>;
  /** Documents it rests on. */
  readonly sources?: List<Authority>;
  /** The passages of the documents that the values cite, each under a short id. */
  readonly statements?: Table<Statement>;
  /** Values it sets in place of those of the instructions. */
  readonly overrides?: Override;
  /** How differences from the instructions are justified. */
  readonly justification?: Text;
  /** Why it exists. */
  readonly reason?: Text;
  /** Reasons for which it may be used. */
  readonly reasons?: List<Text>;
  /** What is written down each time. */
  readonly record?: List<Text>;
  /** Classification of tissues it uses, with its source. */
  readonly tissue_risk?: Text;
  /** Procedure for release in a documented emergency. */
  readonly emergency_path?: Text;
  /** Anything a reader should know. */
  readonly note?: Text;
  /** Role that owns it. */
  readonly owner?: Text;
  /** Role that put it in force. */
  readonly approver?: Text;
  /** Roles to call. */
  readonly contacts?: List<Text>;
  /** Who encoded this file, who checked it, and when it is due again. */
  readonly review?: Review;
  /** Anything a reader should know. Never judged. */
  readonly notes?: List<Text>;
}

/** One step of the procedure. */
export interface ProcedureStep extends Rec {
  /** Short name of the step. */
  readonly id?: Text;
  /** Stage of the work. */
  readonly stage?: Text<'point-of-use' | 'transport' | 'receipt' | 'quarantine' | 'disassembly' | 'manual' | 'ultrasonic' | 'mechanical' | 'rinse' | 'disinfection' | 'drying' | 'inspection' | 'lubrication' | 'assembly' | 'packaging' | 'loading' | 'steam' | 'low-temperature' | 'sterilization' | 'aeration' | 'cooling' | 'release' | 'storage' | 'use'>;
  /** What is done. */
  readonly do?: Text;
  /** What it is done with, when it is not one of the department’s chemistries. */
  readonly agent?: Text;
  /** Chemistry of the department that is used. */
  readonly chemistry?: Text;
  /** How much goes into the water. */
  readonly dose?: Quantity;
  /** How it is measured. */
  readonly dosing_aid?: Text;
  /** Whether the solution is shared or fresh. */
  readonly bath?: Text;
  /** When the solution is changed. */
  readonly solution_change?: Text;
  /** Brush, syringe, gun or other tool. */
  readonly tool?: Text;
  /** Brush that is used. */
  readonly brush?: StockBrush;
  /** Lumen it is done to. */
  readonly lumen?: Text;
  /** Port through which it is done. */
  readonly port?: Text;
  /** Yes when it is done to every port. */
  readonly per_port?: Flag;
  /** Volume each time. */
  readonly volume?: Quantity;
  /** How long. */
  readonly time?: Quantity;
  /** How many times. */
  readonly times?: Quantity;
  /** Temperature of water, solution or air. */
  readonly temp?: Quantity;
  /** Pressure of the water. */
  readonly pressure?: Quantity;
  /** Compressed air that is used. */
  readonly air?: StepAir;
  /** How often it is opened and closed, or moved. */
  readonly actuate?: Quantity;
  /** Place of the step among its kind. */
  readonly order?: Text;
  /** Water point that is used. */
  readonly water?: Text;
  /** Flow-through, running, basin or spray. */
  readonly mode?: Text<'flow-through' | 'running' | 'basin' | 'spray'>;
  /** How far it reaches. */
  readonly extent?: Text;
  /** When the step is finished. */
  readonly endpoint?: Text;
  /** Container that is used. */
  readonly container?: Text;
  /** Label that is put on. */
  readonly label?: Text;
  /** Packaging that is used. */
  readonly packaging?: Text;
  /** Devices this step is for, where not for all in the procedure. */
  readonly applies_to?: List<Text>;
  /** Yes when the step is for every item. */
  readonly applies_to_all?: Flag;
  /** Packagings this step is for. */
  readonly applies_to_packaging?: List<Text>;
  /** Yes when the step is for every packaging. */
  readonly applies_to_all_packaging?: Flag;
  /** Where the indicator is put. */
  readonly indicator?: Text;
  /** How many indicators go into a set. */
  readonly indicators_per_set?: Quantity;
  /** Which indicator is used. */
  readonly monitor?: Text;
  /** Where the thermometer is pointed. */
  readonly aim?: Text;
  /** What it is measured with. */
  readonly instrument?: Text;
  /** What packs stand on. */
  readonly surface?: Text;
  /** After how long packs are touched. */
  readonly handle_at?: Quantity;
  /** How it is done. */
  readonly method?: Text;
  /** Temperature at which packs may be handled. */
  readonly release_temp?: Quantity;
  /** true when moisture is looked for; false when it is let pass. */
  readonly check_dry?: Flag;
  /** Cycle of the washer or sterilizer. */
  readonly cycle?: Text;
  /** Machine that is used. */
  readonly machine?: Text;
  /** Length of exposure. */
  readonly exposure?: Quantity;
  /** Length of drying. */
  readonly dry?: Quantity;
  /** Frequency of the bath. */
  readonly frequency?: Quantity;
  /** How long a fresh bath is degassed. */
  readonly degas?: Quantity;
  /** Yes when the machine is tested before use. */
  readonly function_test?: Flag;
  /** Yes when channels are connected to a port. */
  readonly irrigated?: Flag;
  /** Tests that are done. */
  readonly tests?: List<Text>;
  /** Magnification used. */
  readonly magnification?: Quantity;
  /** The situation in which the step is done. */
  readonly when?: Text;
  /** Role that does or decides it. */
  readonly who?: Text;
  /** Yes when the step fills a silence of the instruction and is the department’s own. */
  readonly own?: Flag;
  /** Anything a reader should know. */
  readonly note?: Text;
  /** Reason a technician can understand. */
  readonly why?: Text;
  /** Statement, or document and page, behind the step. */
  readonly src?: Citation;
}

/** A brush the department stocks. */
export interface StockBrush extends Rec {
  /** Bristle diameter. */
  readonly diameter?: Quantity;
  /** Reach of the brush. */
  readonly length?: Quantity;
  /** Material of the bristles. */
  readonly material?: Text;
}

/** Compressed air that is used. */
export interface StepAir extends Rec {
  /** Pressure of the air. */
  readonly pressure?: Quantity;
  /** Grade of the air. */
  readonly grade?: Text;
}

/** A sentence that appeals to an authority. */
export interface Claim extends Rec {
  /** The sentence. */
  readonly text?: Text;
  /** Document, edition and clause. */
  readonly src?: Citation;
}

/** A document the procedure rests on. */
export interface Authority extends Rec {
  /** Short name of the source. */
  readonly id?: Text;
  /** Number or title of the document. */
  readonly doc?: Text;
  /** Edition or revision. */
  readonly edition?: Text;
  /** Clause or page. */
  readonly clause?: Text;
  /** What kind of document it is. */
  readonly type?: Text<'instruction' | 'guideline' | 'directive' | 'standard' | 'policy'>;
  /** What it says, briefly. */
  readonly text?: Text;
}

/** Values the procedure sets for its whole scope in place of those of the instructions. */
export interface Override extends Rec {
  /** Temperature of exposure. */
  readonly temp?: Quantity;
  /** Length of exposure. */
  readonly exposure?: Quantity;
  /** Length of drying. */
  readonly dry?: Quantity;
  /** Length of cooling. */
  readonly cool?: Quantity;
  /** Length of the soak. */
  readonly soak?: Quantity;
  /** Length of flushing. */
  readonly flush_time?: Quantity;
  /** Volume of flushing. */
  readonly flush_volume?: Quantity;
  /** Length of ultrasonic cleaning. */
  readonly ultrasonic_time?: Quantity;
  /** Temperature of the wash. */
  readonly wash_temp?: Quantity;
  /** Length of aeration. */
  readonly aeration?: Quantity;
  /** Longest delay before cleaning. */
  readonly max_delay?: Quantity;
  /** Number of uses. */
  readonly uses?: Quantity;
}
