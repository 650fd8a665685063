// Generated from schemas/ by `npm run generate`. Do not edit.
import type { DateValue, Flag, List, Quantity, Rec, Requirement, Table, Text } from '../node.ts';
import type { Review } from './review.generated.ts';

/** A hospital: its height, its limits with their sources, and its policies. */
export interface Site extends Rec {
  /** Says what this file describes. It stands first in the file. */
  readonly kind?: Text<'site'>;
  /** Short name by which other files refer to this one. It stands second in the file. */
  readonly id?: Text;
  /** Name of the site. */
  readonly name?: Text;
  /** Decides where water boils and what gauges show. */
  readonly altitude?: Quantity;
  /** Usual air pressure, where it was measured. */
  readonly atmosphere?: Quantity;
  /** Units used on screens and cards. */
  readonly units?: Units;
  /** Which words are used for verification and validation. */
  readonly vocabulary?: Text<'us' | 'iso'>;
  /** Market whose documents hold here. */
  readonly jurisdiction?: Text;
  /** Language of the department, as a two-letter code. */
  readonly language?: Text;
  /** Numbers the department has adopted, each with its source. */
  readonly thresholds?: Table<Threshold>;
  /** Between which numbers the department takes a value for plausible, each with its source. A number outside is looked at again. */
  readonly plausible?: Table<Threshold>;
  /** How the department judges what instructions leave open. */
  readonly policies?: Policies;
  /** How often things are reviewed or tested, each with its source. */
  readonly review_periods?: Table<Threshold>;
  /** What each grade must be like, each with its source. */
  readonly water_grades?: Table<WaterGradeLimits>;
  /** Worst time from the end of use to the start of cleaning, by place. */
  readonly transport_times?: Table<Quantity>;
  /** Rooms with their temperature. */
  readonly rooms?: Table<Room>;
  /** Topics for which a procedure must exist. */
  readonly required_procedures?: List<Text>;
  /** Procedures in force here, where not all of them are. */
  readonly procedures?: List<Text>;
  /** Topics every person in a role must have been taught. */
  readonly required_topics?: List<RequiredTopic>;
  /** Where indicators go by type of packaging, with the source that chose it. */
  readonly indicator_places?: List<IndicatorDecision>;
  /** Where the thermometer is pointed by type of packaging, with the source that chose it. */
  readonly cool_aims?: List<CoolAimDecision>;
  /** Pairs of material and agent that harm though pH fits. */
  readonly material_conflicts?: List<MaterialConflict>;
  /** Whom to call, as roles. */
  readonly contacts?: List<ContactRole>;
  /** Who encoded this file, who checked it, and when it is due again. */
  readonly review?: Review;
  /** Anything a reader should know. Never judged. */
  readonly notes?: List<Text>;
}

/** Units used on screens and cards. */
export interface Units extends Rec {
  /** Unit of temperature. */
  readonly temp?: Text<'C' | 'F'>;
  /** Unit of pressure. */
  readonly pressure?: Text;
  /** Whether gauges show gauge or absolute pressure. */
  readonly pressure_reference?: Text<'gauge' | 'absolute'>;
  /** Unit of mass. */
  readonly mass?: Text;
}

/** A number the department has adopted, with the document, edition and clause it comes from. */
export interface Threshold extends Rec {
  /** Smallest value accepted. */
  readonly at_least?: Quantity;
  /** Largest value accepted. */
  readonly at_most?: Quantity;
  /** Lowest and highest value accepted. */
  readonly between?: List<Quantity>;
  /** The one value accepted. */
  readonly exactly?: Quantity;
  /** Document, edition and clause, or the policy of the department. */
  readonly src?: Text;
  /** Edition or year of the source. */
  readonly edition?: Text;
  /** Clause or page of the source. */
  readonly clause?: Text;
  /** Day on which the department adopted it. */
  readonly adopted_on?: DateValue;
  /** Anything a reader should know. */
  readonly note?: Text;
}

/** How the department judges what instructions leave open. */
export interface Policies extends Rec {
  /** How an exposure without a bound word is judged. */
  readonly stated_exposure?: Text<'treat-as-exact' | 'treat-as-minimum' | 'setpoint' | 'needs-answer'>;
  /** How a temperature without a bound word is judged. */
  readonly stated_temp?: Text<'treat-as-exact' | 'treat-as-minimum' | 'setpoint' | 'needs-answer'>;
  /** How a drying time without a bound word is judged. */
  readonly stated_dry?: Text<'treat-as-exact' | 'treat-as-minimum' | 'setpoint' | 'needs-answer'>;
  /** How other times without a bound word are judged. */
  readonly stated_time?: Text<'treat-as-exact' | 'treat-as-minimum' | 'setpoint' | 'needs-answer'>;
  /** How a volume without a bound word is judged. */
  readonly stated_volume?: Text<'treat-as-exact' | 'treat-as-minimum' | 'setpoint' | 'needs-answer'>;
  /** How a count without a bound word is judged. */
  readonly stated_count?: Text<'treat-as-exact' | 'treat-as-minimum' | 'setpoint' | 'needs-answer'>;
  /** Temperature at which packs may be handled. */
  readonly release_temp?: Requirement;
  /** Document, edition and clause. */
  readonly release_temp_src?: Text;
  /** Time packs cool before they are handled. */
  readonly cool_time?: Requirement;
  /** Time needed between arrival and surgery. */
  readonly loaner_lead?: Quantity;
  /** How long packs may be stored. */
  readonly shelf_life?: Text;
  /** Longest time a pack may be stored. */
  readonly shelf_life_max?: Quantity;
  /** Yes when the department accepts A0 in place of a stated time and temperature of disinfection. */
  readonly accept_a0?: Flag;
  /** Document, edition and clause. */
  readonly accept_a0_src?: Text;
  /** Yes when national rules make the prion cycle the ordinary one. */
  readonly tse_routine?: Flag;
  /** Document, edition and clause. */
  readonly tse_routine_src?: Text;
  /** Yes when a new revision needs a sign-off before it is in force. */
  readonly sign_off_required?: Flag;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}

/** What the department demands of one grade of water. */
export interface WaterGradeLimits extends Rec {
  /** Name of the grade the page asks for. */
  readonly grade?: Text<'utility' | 'softened' | 'purified' | 'critical' | 'sterile'>;
  /** Electrical conductivity demanded. */
  readonly conductivity?: Requirement;
  /** Hardness demanded. */
  readonly hardness?: Requirement;
  /** Chloride demanded. */
  readonly chloride?: Requirement;
  /** Silicate demanded. */
  readonly silicate?: Requirement;
  /** pH demanded of the water. */
  readonly ph?: Requirement;
  /** Bacterial count demanded. */
  readonly bacteria?: Requirement;
  /** Endotoxin demanded. */
  readonly endotoxin?: Requirement;
  /** Document, edition and clause. */
  readonly src?: Text;
  /** Edition or year of the source. */
  readonly edition?: Text;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}

/** A room of the department. */
export interface Room extends Rec {
  /** Name of the room. */
  readonly name?: Text;
  /** Temperature kept or recorded. */
  readonly temp?: Requirement;
  /** Humidity kept or recorded. */
  readonly humidity?: Requirement;
  /** Stages done there. */
  readonly stages?: List<Text<'point-of-use' | 'transport' | 'receipt' | 'quarantine' | 'disassembly' | 'manual' | 'ultrasonic' | 'mechanical' | 'rinse' | 'disinfection' | 'drying' | 'inspection' | 'lubrication' | 'assembly' | 'packaging' | 'loading' | 'steam' | 'low-temperature' | 'sterilization' | 'aeration' | 'cooling' | 'release' | 'storage' | 'use'>>;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}

/** A topic every person in a role must have been taught. */
export interface RequiredTopic extends Rec {
  /** The topic. */
  readonly topic?: Text;
  /** Roles that need it. */
  readonly roles?: List<Text>;
  /** How often it is repeated. */
  readonly every?: Quantity;
  /** Document, edition and clause. */
  readonly src?: Text;
}

/** Where the department places indicators in one type of packaging, and on whose word. */
export interface IndicatorDecision extends Rec {
  /** Type the decision is for. */
  readonly packaging_type?: Text<'wrap' | 'pouch' | 'rigid-container' | 'case' | 'iuss-container' | 'open-pan'>;
  /** Where indicators go. */
  readonly places?: List<Text>;
  /** Document, edition and clause. */
  readonly src?: Text;
}

/** Where the department points the thermometer on one type of packaging, and on whose word. */
export interface CoolAimDecision extends Rec {
  /** Type the decision is for. */
  readonly packaging_type?: Text<'wrap' | 'pouch' | 'rigid-container' | 'case' | 'iuss-container' | 'open-pan'>;
  /** Where the thermometer is pointed. */
  readonly aim?: Text;
  /** Document, edition and clause. */
  readonly src?: Text;
}

/** A pair of material and agent that harms though pH fits. */
export interface MaterialConflict extends Rec {
  /** Material that is harmed. */
  readonly material?: Text;
  /** Ingredient or class of agent that harms it. */
  readonly agent?: Text;
  /** What happens. */
  readonly reason?: Text;
  /** Document, edition and clause. */
  readonly src?: Text;
}

/** Whom to call, as a role. */
export interface ContactRole extends Rec {
  /** Role to call. */
  readonly role?: Text;
  /** Extension of the role. */
  readonly phone?: Text;
  /** What to call about. */
  readonly for?: Text;
}
