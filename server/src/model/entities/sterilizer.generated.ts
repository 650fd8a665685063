// Generated from schemas/ by `npm run generate`. Do not edit.
import type { Citation, DateValue, Flag, List, Quantity, Rec, Table, Text } from '../node.ts';
import type { LumenLimit } from './lumen-limit.generated.ts';
import type { Review } from './review.generated.ts';
import type { Source } from './source.generated.ts';
import type { Statement } from './statement.generated.ts';
import type { UseStatement } from './use-statement.generated.ts';

/** A sterilizer of the department with the cycles it runs. */
export interface Sterilizer extends Rec {
  /** Says what this file describes. It stands first in the file. */
  readonly kind?: Text<'sterilizer'>;
  /** Short name by which other files refer to this one. It stands second in the file. */
  readonly id?: Text;
  /** Name by which the department knows it. */
  readonly name?: Text;
  /** Who makes it. */
  readonly maker?: Text;
  /** Site where it stands, where there are several. */
  readonly site?: Text;
  /** Room where it stands. */
  readonly room?: Text;
  /** Method of the machine, where it has only one. */
  readonly modality?: Text<'steam-prevac' | 'steam-gravity' | 'steam-sfpp' | 'vh2o2' | 'eo' | 'dry-heat' | 'ltsf' | 'liquid-chemical'>;
  /** Air pressure where it stands. */
  readonly atmosphere?: Quantity;
  /** The chamber of the machine. */
  readonly chamber?: Chamber;
  /** The cycles as programmed here. */
  readonly cycles?: List<SterilizerCycle>;
  /** Test of air removal in the empty chamber. */
  readonly air_removal_test?: AirRemovalTest;
  /** Latest results of the steam supply. */
  readonly steam?: SteamSupply;
  /** Day of the last qualification of the machine. */
  readonly qualified?: DateValue;
  /** Day of the last maintenance. */
  readonly maintained?: DateValue;
  /** Yes when it is not bought yet and only tried out here. */
  readonly proposed?: Flag;
  /** Day on which it was taken out of use. */
  readonly withdrawn_on?: DateValue;
  /** The documents this file is taken from. */
  readonly sources?: List<Source>;
  /** The passages of the documents that the values cite, each under a short id. */
  readonly statements?: Table<Statement>;
  /** Who encoded this file, who checked it, and when it is due again. */
  readonly review?: Review;
  /** Anything a reader should know. Never judged. */
  readonly notes?: List<Text>;
}

/** The chamber of the machine. */
export interface Chamber extends Rec {
  /** Volume of the chamber as the maker gives it. */
  readonly volume?: Text;
  /** How many shelves. */
  readonly shelves?: Quantity;
  /** Highest mass in the chamber. */
  readonly load_max?: Quantity;
}

/** One cycle of the sterilizer, as programmed here. */
export interface SterilizerCycle extends Rec {
  /** Short name by which sets and procedures refer to it. */
  readonly id?: Text;
  /** Name as the machine shows it. */
  readonly name_on_screen?: Text;
  /** Method of sterilization. */
  readonly modality?: Text<'steam-prevac' | 'steam-gravity' | 'steam-sfpp' | 'vh2o2' | 'eo' | 'dry-heat' | 'ltsf' | 'liquid-chemical'>;
  /** Whether packs are stored, or used at once. */
  readonly context?: Text<'terminal' | 'iuss'>;
  /** Setpoint of exposure. */
  readonly temp?: Quantity;
  /** How far the temperature may stray from the setpoint. */
  readonly band?: Band;
  /** Length of exposure. */
  readonly exposure?: Quantity;
  /** Number of pulses. */
  readonly pulses?: Quantity;
  /** Depth of vacuum. */
  readonly vacuum?: Quantity;
  /** Length of drying. */
  readonly dry?: Quantity;
  /** Length of the whole cycle. */
  readonly total_time?: Quantity;
  /** Humidity in the chamber. */
  readonly humidity?: Quantity;
  /** Concentration of the sterilant. */
  readonly concentration?: Quantity;
  /** Aeration after ethylene oxide. */
  readonly aeration?: CycleAeration;
  /** Highest mass in the chamber. */
  readonly load_max?: Quantity;
  /** Highest mass of one pack. */
  readonly item_mass_max?: Quantity;
  /** How many packs fit. */
  readonly positions?: Quantity;
  /** Lumens this cycle covers. */
  readonly lumens?: LumenLimit;
  /** Whether packs may be stacked. */
  readonly stacking?: UseStatement;
  /** Day of the last qualification here; empty when there is none. */
  readonly qualified?: DateValue;
  /** Day until which the qualification holds. */
  readonly qualified_until?: DateValue;
  /** Day on which the cycle was last changed. */
  readonly changed?: DateValue;
  /** Yes when this is what the department uses unless told otherwise. */
  readonly default?: Flag;
  /** Day on which the cycle was taken out of use. */
  readonly withdrawn_on?: DateValue;
  /** Pressure the log must show for this cycle. */
  readonly log_check?: LogCheck;
  /** The statement, or statements, that say this. */
  readonly src?: Citation;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}

/** How far the temperature may stray from the setpoint. */
export interface Band extends Rec {
  /** How far below. */
  readonly minus?: Quantity;
  /** How far above. */
  readonly plus?: Quantity;
}

/** Aeration after ethylene oxide. */
export interface CycleAeration extends Rec {
  /** How long. */
  readonly time?: Quantity;
  /** Temperature of the air. */
  readonly temp?: Quantity;
}

/** Pressure the log must show. */
export interface LogCheck extends Rec {
  /** Pressure in the log. */
  readonly pressure?: Quantity;
  /** Whether the pressure is gauge or absolute. */
  readonly ref?: Text<'gauge' | 'absolute'>;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}

/** Test of air removal in the empty chamber. */
export interface AirRemovalTest extends Rec {
  /** How often it is run. */
  readonly every?: Quantity;
  /** Exposure of the test. */
  readonly exposure?: Quantity;
  /** Temperature of the test. */
  readonly temp?: Quantity;
  /** What is used. */
  readonly monitor?: Text;
  /** Day of the last test. */
  readonly last?: DateValue;
  /** The statement, or statements, that say this. */
  readonly src?: Citation;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}

/** Latest results of the steam supply. */
export interface SteamSupply extends Rec {
  /** Dryness of the steam, as a ratio. */
  readonly dryness?: Quantity;
  /** Share of gas that does not condense. */
  readonly ncg?: Quantity;
  /** Superheat of the steam. */
  readonly superheat?: Quantity;
  /** Day of the measurement. */
  readonly measured?: DateValue;
  /** Words of the report, such as saturation. */
  readonly reported_as?: Text;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}
