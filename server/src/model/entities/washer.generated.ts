// Generated from schemas/ by `npm run generate`. Do not edit.
import type { DateValue, Flag, List, Quantity, Rec, Table, Text } from '../node.ts';
import type { Review } from './review.generated.ts';
import type { Source } from './source.generated.ts';
import type { Statement } from './statement.generated.ts';

/** A washer-disinfector of the department with the cycles it runs. */
export interface Washer extends Rec {
  /** Says what this file describes. It stands first in the file. */
  readonly kind?: Text<'washer'>;
  /** Short name by which other files refer to this one. It stands second in the file. */
  readonly id?: Text;
  /** Name by which the department knows it. */
  readonly name?: Text;
  /** Who makes it. */
  readonly maker?: Text;
  /** Site where it stands, where there are several. */
  readonly site?: Text;
  /** Standards its maker claims. */
  readonly conforms_to?: List<Text>;
  /** Everything the machine doses, in every cycle. */
  readonly doses?: List<Text>;
  /** The rack with its ports. */
  readonly rack?: Rack;
  /** The cycles as programmed here. */
  readonly cycles?: List<WasherCycle>;
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

/** The rack with its ports. */
export interface Rack extends Rec {
  /** One word for each port. */
  readonly ports?: List<Text>;
  /** How many levels. */
  readonly levels?: Quantity;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}

/** One cycle of the washer, as programmed here. */
export interface WasherCycle extends Rec {
  /** Short name by which sets and procedures refer to it. */
  readonly id?: Text;
  /** Name as the machine shows it. */
  readonly name_on_screen?: Text;
  /** Everything the machine doses in this cycle. */
  readonly doses?: List<Text>;
  /** Water point that feeds the last rinse. */
  readonly final_water?: Text;
  /** The phases in order. */
  readonly phases?: List<MachinePhase>;
  /** A0 as the machine’s papers give it. */
  readonly a0?: Quantity;
  /** How far temperatures may stray, in every phase. */
  readonly band?: WashBand;
  /** Rack of this cycle, where it has its own. */
  readonly rack?: Rack;
  /** Day of the last test of cleaning performance; empty when there is none. */
  readonly last_cleaning_test?: DateValue;
  /** Day of the last qualification. */
  readonly qualified?: DateValue;
  /** Length of the whole cycle. */
  readonly total_time?: Quantity;
  /** Day on which the cycle was last changed. */
  readonly changed?: DateValue;
  /** Yes when this is what the department uses unless told otherwise. */
  readonly default?: Flag;
  /** Day on which the cycle was taken out of use. */
  readonly withdrawn_on?: DateValue;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}

/** One phase of the cycle as programmed here. */
export interface MachinePhase extends Rec {
  /** Which phase it is. */
  readonly phase?: Text<'prewash' | 'enzyme-wash' | 'wash' | 'neutralise' | 'rinse' | 'thermal' | 'final-rinse' | 'lubricate' | 'dry'>;
  /** Setpoint of the phase. */
  readonly temp?: Quantity;
  /** Length of the phase. */
  readonly time?: Quantity;
  /** What is dosed in this phase. */
  readonly chemistry?: Text;
  /** How much is dosed. */
  readonly dose?: Quantity;
  /** Water of the phase. */
  readonly water?: Text;
  /** How far the temperature may stray. */
  readonly band?: WashBand;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}

/** How far the temperature may stray from the setpoint. */
export interface WashBand extends Rec {
  /** How far below. */
  readonly minus?: Quantity;
  /** How far above. */
  readonly plus?: Quantity;
}
