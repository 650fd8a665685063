// Generated from schemas/ by `npm run generate`. Do not edit.
import type { Citation, DateValue, Flag, List, Quantity, Rec, Requirement, Table, Text } from './node.ts';

/** How one finding is treated. */
export interface RuleSetting extends Rec {
  /** How heavy the finding weighs. */
  readonly severity?: Text<'error' | 'warning' | 'advice' | 'ignored'>;
  /** Why it differs from the usual. */
  readonly reason?: Text;
}

/** The folder of rule files: its site and how findings are treated. */
export interface Library extends Rec {
  /** Says what this file describes. It stands first in the file. */
  readonly kind?: Text<'library'>;
  /** Short name by which other files refer to this one. It stands second in the file. */
  readonly id?: Text;
  /** Name of the library. */
  readonly name?: Text;
  /** Site whose limits and policies hold. */
  readonly site?: Text;
  /** All sites, where there are several. */
  readonly sites?: List<Text>;
  /** Language of messages and papers, as a two-letter code. */
  readonly language?: Text;
  /** Day as which the library is checked, for a sample or an archived state. Leave it out in a library that is in use: then today counts. */
  readonly as_of?: DateValue;
  /** How single findings are treated, by name. */
  readonly rules?: Table<RuleSetting>;
  /** How long a question may stay unanswered. */
  readonly question_age?: Quantity;
  /** Folders that are not read. */
  readonly generated?: List<Text>;
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

/** Who encoded this file, who checked it, and when it is due again. Roles, never names. */
export interface Review extends Rec {
  /** Role id of the person who typed it. */
  readonly encoded_by?: Text;
  /** Role id of the person who checked it; never the same. */
  readonly approved_by?: Text;
  /** Role id of the person who compared quotes and fields. */
  readonly second_reader?: Text;
  /** Day of the review. */
  readonly on?: DateValue;
  /** Day by which it must be reviewed again. */
  readonly due?: DateValue;
  /** Anything a reader should know. */
  readonly note?: Text;
}

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

/** Someone responsible for an affected set or procedure has read the change. */
export interface ImpactAck extends Rec {
  /** What is affected. */
  readonly what?: Text;
  /** Role id of the person. */
  readonly by?: Text;
  /** Day of the acknowledgement. */
  readonly on?: DateValue;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}

/** One revision of a document, as issued. */
export interface Document extends Rec {
  /** Says what this file describes. It stands first in the file. */
  readonly kind?: Text<'document'>;
  /** Short name by which other files refer to this one. It stands second in the file. */
  readonly id?: Text;
  /** Number printed on the document. */
  readonly doc?: Text;
  /** Revision printed on the document. */
  readonly rev?: Text;
  /** Title of the document. */
  readonly title?: Text;
  /** Who issued it. */
  readonly maker?: Text;
  /** What kind of document it is. */
  readonly type?: Text<'instruction' | 'generic-manual' | 'case-leaflet' | 'packaging-instruction' | 'machine-instruction' | 'chemistry-label' | 'standard' | 'guideline' | 'policy' | 'notice' | 'other'>;
  /** Whether this revision is in force here. */
  readonly status?: Text<'current' | 'superseded' | 'withdrawn' | 'draft'>;
  /** Day printed on the document. */
  readonly issued?: DateValue;
  /** Day from which it holds. */
  readonly effective?: DateValue;
  /** Day on which it reached the department. */
  readonly received?: DateValue;
  /** Day on which it stopped to hold. */
  readonly withdrawn_on?: DateValue;
  /** Revision it replaces. */
  readonly supersedes?: Text;
  /** Markets it is for. */
  readonly market?: List<Text>;
  /** Languages it is written in, as two-letter codes. */
  readonly lang?: List<Text>;
  /** How it writes decimals. */
  readonly decimal_mark?: Text<'point' | 'comma'>;
  /** Catalogue numbers and ranges it is for. */
  readonly covers?: List<Text>;
  /** Catalogue numbers it excludes. */
  readonly excludes?: List<Text>;
  /** First serial or lot number. */
  readonly serial_from?: Text;
  /** Last serial or lot number. */
  readonly serial_to?: Text;
  /** How many pages it has. */
  readonly pages?: Quantity;
  /** The PDF kept in the library. */
  readonly file?: Text;
  /** Checksum of the PDF. */
  readonly checksum?: Text;
  /** Reason the maker gives for this revision. */
  readonly change_reason?: Text;
  /** Most serious kind of change against the revision before. */
  readonly diff_class?: Text<'stricter' | 'looser' | 'different' | 'new-prohibition' | 'prohibition-removed' | 'option-added' | 'option-removed' | 'step-added' | 'step-removed' | 'step-reordered' | 'scope' | 'became-silent' | 'became-stated' | 'clarification' | 'correction' | 're-citation' | 'editorial'>;
  /** Day on which this revision was accepted here. */
  readonly approved?: DateValue;
  /** Who has acknowledged the change for each affected set and procedure. */
  readonly impact_ack?: List<ImpactAck>;
  /** Record of the decision on this revision. */
  readonly sign_off?: Text;
  /** Training that goes with the change. */
  readonly training?: Text;
  /** Who encoded this file, who checked it, and when it is due again. */
  readonly review?: Review;
  /** Anything a reader should know. Never judged. */
  readonly notes?: List<Text>;
}

/** A part of the device that comes off or is replaced. */
export interface Part extends Rec {
  /** Short name of the part. */
  readonly id?: Text;
  /** Name of the part. */
  readonly name?: Text;
  /** Yes when it is taken off for cleaning. */
  readonly detachable?: Flag;
  /** Yes when the part is used once, such as a seal or filter. */
  readonly single_use?: Flag;
  /** How often this part may be used. */
  readonly uses?: Requirement;
  /** What the part is made of. */
  readonly material?: Text;
  /** The statement, or statements, that say this. */
  readonly src?: Citation;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}

/** A channel of the device. Every brush, flush and sterilant limit hangs on its bore and length. */
export interface Lumen extends Rec {
  /** Short name of the lumen or port. */
  readonly id?: Text;
  /** Name of the lumen as the page gives it. */
  readonly name?: Text;
  /** Inner diameter, or the French gauge as written. */
  readonly bore?: Quantity;
  /** Length of the channel. */
  readonly length?: Quantity;
  /** Whether the channel is open at both ends, at one, or blind. */
  readonly ends?: Text<'open-both' | 'open-one' | 'blind'>;
  /** How many branches it has. */
  readonly branches?: Quantity;
  /** Yes when a valve sits in it. */
  readonly valve?: Flag;
  /** Yes when a stopcock sits in it. */
  readonly stopcock?: Flag;
  /** Name or type of the port through which it is flushed. */
  readonly port?: Text;
  /** Thread or connector of the port. */
  readonly thread?: Text;
  /** What the wall is made of. */
  readonly material?: Text;
  /** The statement, or statements, that say this. */
  readonly src?: Citation;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}

/** Limits that hold at every stage: heat, pH, number of uses, age, pressure. */
export interface Limits extends Rec {
  /** Heat limit at every stage, washer drying and cabinets included. */
  readonly temp?: Requirement;
  /** pH of any solution that touches the device, in use unless stated. */
  readonly ph?: Requirement;
  /** How many uses or cycles until the end of life. */
  readonly uses?: Requirement;
  /** How long after first use or manufacture it may be used. */
  readonly age?: Requirement;
  /** Pressure limit of any water or air put into it. */
  readonly pressure?: Requirement;
  /** Mass limit, such as that of a loaded case. */
  readonly mass?: Requirement;
  /** Humidity limit. */
  readonly humidity?: Requirement;
  /** End of life in words, such as until inspection fails. */
  readonly until?: Text;
  /** Who counts the uses, and for which part. */
  readonly counted_by?: Text;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}

/** A document this file is taken from. */
export interface Source extends Rec {
  /** Number of the document, as printed on it. */
  readonly doc?: Text;
  /** Revision of the document. */
  readonly rev?: Text;
  /** What kind of document it is. Only the manufacturer’s own instruction counts as one. */
  readonly role?: Text<'device-specific' | 'generic' | 'case-leaflet' | 'response' | 'regulator-notice' | 'catalogue' | 'website' | 'representative-email' | 'photo' | 'other-department'>;
  /** Anything a reader should know. */
  readonly note?: Text;
}

/** A number in a quote that no field needs. */
export interface NotNeeded extends Rec {
  /** The number as it stands in the quote. */
  readonly text?: Text;
  /** Why no field needs it. */
  readonly reason?: Text;
}

/** One short passage of a document, quoted word for word, with the place where it stands. */
export interface Statement extends Rec {
  /** Number of the document, as printed on it. */
  readonly doc?: Text;
  /** Revision of the document, as printed on it. */
  readonly rev?: Text;
  /** Page on which the passage stands. */
  readonly page?: Quantity;
  /** Section or heading of the passage. */
  readonly section?: Text;
  /** Number of the figure or table. */
  readonly figure?: Text;
  /** The passage, word for word and short. For a picture: [pictogram: what it shows]. */
  readonly quote?: Text;
  /** Language of the passage, as a two-letter code. */
  readonly lang?: Text;
  /** Which of the alternatives in the document this passage belongs to. */
  readonly alt?: Text;
  /** The situation the passage speaks of. */
  readonly when?: Text;
  /** A person looked and says whether "min" means minutes or minimum. */
  readonly read_as?: Text<'minutes' | 'minimum'>;
  /** A person looked at a doubtful number and says how it is read. */
  readonly number_read_as?: Text;
  /** Numbers in the quote that no field uses, each with the reason. */
  readonly not_needed?: List<NotNeeded>;
  /** What is wrong on the page itself, such as a wrongly converted unit. */
  readonly as_written_error?: Text;
  /** Role id of the person who compared the quote with the page. */
  readonly second_reader?: Text;
  /** How the meaning of the picture was confirmed in words. */
  readonly pictogram_confirmed?: Text;
  /** Anything a reader should know. */
  readonly note?: Text;
}

/** A value for which the page of this device replaces the general manual. Both places are kept. */
export interface Overridden extends Rec {
  /** Path of the value in this file. */
  readonly field?: Text;
  /** Where the general manual says it. */
  readonly generic?: Citation;
  /** Where the page of this device says it. */
  readonly specific?: Citation;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}

/** What the page says about one thing: allowed, required, recommended, forbidden or silent. */
export interface UseStatement extends Rec {
  /** Whether the page allows, demands, recommends or forbids it, or is silent. */
  readonly use?: Text<'allowed' | 'required' | 'forbidden' | 'recommended' | 'silent'>;
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

/** How soil is kept from drying. */
export interface KeepMoist extends Rec {
  /** Whether keeping moist is required, allowed or forbidden. */
  readonly use?: Text<'allowed' | 'required' | 'forbidden' | 'recommended' | 'silent'>;
  /** Agents that may be used. Any one of them. */
  readonly agents?: List<Text>;
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

/** Something the page says never to do. It survives merging and no procedure can lift it. */
export interface Prohibition extends Rec {
  /** The method, agent or act that is forbidden. */
  readonly what?: Text;
  /** The number that goes with it, with its unit. */
  readonly value?: Text;
  /** The situation in which this applies. Without it, it always applies. */
  readonly when?: Text;
  /** The words of the page, where they help a reader. */
  readonly as_written?: Text;
  /** Whether the page says must, should or may. */
  readonly strength?: Text<'must' | 'should' | 'may'>;
  /** The statement, or statements, that say this. */
  readonly src?: Citation;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}

/** What the page says to do when the delay was exceeded. */
export interface DelayAction extends Rec {
  /** What is done. */
  readonly do?: Text;
  /** How long. */
  readonly time?: Requirement;
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

/** Brush the page asks for: thick enough for the bore and longer than the lumen. */
export interface Brush extends Rec {
  /** Yes when brushing is demanded. */
  readonly required?: Flag;
  /** Lumen that is brushed. */
  readonly lumen?: Text;
  /** Bristle diameter. */
  readonly diameter?: Requirement;
  /** Reach of the brush. */
  readonly length?: Requirement;
  /** Material of the bristles. */
  readonly material?: Text;
  /** Yes when a soft brush is demanded. */
  readonly soft?: Flag;
  /** How many strokes. */
  readonly strokes?: Requirement;
  /** How long. */
  readonly time?: Requirement;
  /** When brushing is finished. */
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

/** What the water must be like, parameter by parameter. */
export interface WaterQuality extends Rec {
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
  /** The statement that asks for it. */
  readonly src?: Citation;
  /** Anything a reader should know. */
  readonly note?: Text;
}

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

/** What to do where the device was used, before it travels. */
export interface PointOfUse extends Rec {
  /** Whether gross soil is wiped off at once. */
  readonly wipe?: UseStatement;
  /** Volume pushed through each lumen at the point of use. */
  readonly flush_now?: Requirement;
  /** How soil is kept from drying. */
  readonly keep_moist?: KeepMoist;
  /** Agents that must not touch it, such as saline. */
  readonly avoid?: List<Prohibition>;
  /** Longest time until cleaning begins. */
  readonly max_delay?: Requirement;
  /** Moment from which the delay is counted. */
  readonly clock_starts?: Text<'end-of-use' | 'end-of-procedure' | 'unstated'>;
  /** What the page says to do then. Any one of these. */
  readonly on_delay_exceeded?: List<DelayAction>;
  /** What is kept apart from what. */
  readonly separate?: Text;
  /** What is taken off or capped, in order. */
  readonly disconnect?: List<Text>;
  /** The steps in order. */
  readonly steps?: List<CleaningStep>;
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

/** How the device travels to the department. */
export interface Transport extends Rec {
  /** Container the page asks for. */
  readonly container?: Text;
  /** Label the page asks for. */
  readonly label?: Text;
  /** Yes when it must stay upright. */
  readonly upright?: Flag;
  /** Yes when nothing may lie on it. */
  readonly no_stacking?: Flag;
  /** Cap or cover to fit before travel. */
  readonly cap?: Text;
  /** Longest time on the way. */
  readonly max_time?: Requirement;
  /** Temperature on the way. */
  readonly temp?: Requirement;
  /** Humidity on the way. */
  readonly humidity?: Requirement;
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

/** What to do when the device arrives: new, borrowed or repaired. */
export interface Receipt extends Rec {
  /** State in which the maker delivers it. */
  readonly arrives?: Text<'non-sterile' | 'sterile'>;
  /** Whether it is cleaned before its first use. */
  readonly initial_cleaning?: UseStatement;
  /** What is done before the first use. */
  readonly initial_steps?: List<CleaningStep>;
  /** Time needed between arrival and use. */
  readonly lead_time?: Requirement;
  /** Yes when contents are counted on arrival. */
  readonly count?: Flag;
  /** Yes when it is weighed on arrival. */
  readonly weigh?: Flag;
  /** How implants are counted and refilled. */
  readonly implant_inventory?: Text;
  /** Certificate that must come with a repaired or borrowed item. */
  readonly certificate?: Text;
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

/** One step of taking apart or putting together. */
export interface DisassemblyStep extends Rec {
  /** What is done. */
  readonly do?: Text;
  /** Part that is taken off. */
  readonly part?: Text;
  /** Tool that is needed. */
  readonly tool?: Text;
  /** The statement, or statements, that say this. */
  readonly src?: Citation;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}

/** Whether the device is together (true) or apart (false) at each stage. */
export interface AssembledFor extends Rec {
  /** true when it is cleaned assembled, false when apart. */
  readonly cleaning?: Flag;
  /** true when it is packed assembled, false when apart. */
  readonly packaging?: Flag;
  /** true when it is sterilized assembled, false when apart. */
  readonly sterilization?: Flag;
  /** The statement, or statements, that say this. */
  readonly src?: Citation;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}

/** How the device is taken apart and when it is put together again. */
export interface Disassembly extends Rec {
  /** The steps in order. */
  readonly steps?: List<DisassemblyStep>;
  /** Parts that must stay together. */
  readonly keep_together?: Text;
  /** Parts that must not be taken apart. */
  readonly leave_together?: List<Text>;
  /** Jaws, valves and stopcocks to open. */
  readonly open?: List<Text>;
  /** Whether it is together or apart at each stage. */
  readonly assembled_for?: AssembledFor;
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

/** Whether the device may go under liquid, and how far. */
export interface Immersion extends Rec {
  /** Whether immersion is allowed, required or forbidden. */
  readonly use?: Text<'allowed' | 'required' | 'forbidden' | 'recommended' | 'silent'>;
  /** How much of the device may go under. */
  readonly extent?: Text<'full' | 'tip-only' | 'part'>;
  /** How deep it may go. */
  readonly depth?: Requirement;
  /** Parts that must stay dry. */
  readonly keep_dry?: List<Text>;
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

/** The last water, which dries on the device. */
export interface FinalRinse extends Rec {
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
  /** Temperature of the water. */
  readonly temp?: Requirement;
  /** How long. */
  readonly time?: Requirement;
  /** How many times. */
  readonly times?: Requirement;
  /** How much water, per port where there are ports. */
  readonly volume?: Requirement;
  /** Flow-through, running, basin or spray. */
  readonly mode?: Text<'flow-through' | 'running' | 'basin' | 'spray'>;
  /** Yes when the water is changed each time. */
  readonly fresh?: Flag;
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

/** Rinsing after cleaning or disinfection. */
export interface Rinse extends Rec {
  /** Whether rinsing is required. */
  readonly use?: Text<'allowed' | 'required' | 'forbidden' | 'recommended' | 'silent'>;
  /** How long. */
  readonly time?: Requirement;
  /** How many times. */
  readonly times?: Requirement;
  /** Temperature of the water. */
  readonly temp?: Requirement;
  /** How much water. */
  readonly volume?: Requirement;
  /** Water the page asks for. */
  readonly water?: WaterQuality;
  /** Flow-through, running, basin or spray. */
  readonly mode?: Text<'flow-through' | 'running' | 'basin' | 'spray'>;
  /** The last rinse and its water. */
  readonly final?: FinalRinse;
  /** When rinsing is finished. */
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

/** What the page asks of one phase of the washer cycle. */
export interface WashPhase extends Rec {
  /** Whether the phase is required, allowed or forbidden. */
  readonly use?: Text<'allowed' | 'required' | 'forbidden' | 'recommended' | 'silent'>;
  /** Temperature of the phase. */
  readonly temp?: Requirement;
  /** Length of the phase. */
  readonly time?: Requirement;
  /** pH of the solution in use. */
  readonly ph?: Requirement;
  /** Heat dose of the phase. */
  readonly a0?: Requirement;
  /** Dose of the agent. */
  readonly dose?: Requirement;
  /** Detergent of the phase. */
  readonly detergent?: Detergent;
  /** Agent of the phase. */
  readonly agent?: Text;
  /** Water of the phase. */
  readonly water?: WaterQuality;
  /** Choice with which this phase is needed. */
  readonly couples?: Text;
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

/** One complete pair of temperature and time. */
export interface DisinfectionOption extends Rec {
  /** Short name of the alternative. */
  readonly id?: Text;
  /** Temperature of the hold. */
  readonly temp?: Requirement;
  /** Length of the hold. */
  readonly time?: Requirement;
  /** Heat dose of the hold. */
  readonly a0?: Requirement;
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

/** Cleaning in an ultrasonic bath. */
export interface UltrasonicCleaning extends Rec {
  /** Whether ultrasonic cleaning is allowed, required or forbidden. */
  readonly use?: Text<'allowed' | 'required' | 'forbidden' | 'recommended' | 'silent'>;
  /** Frequency of the bath. */
  readonly frequency?: Requirement;
  /** How long: often both a least and a longest time. */
  readonly time?: Requirement;
  /** Temperature of the bath. */
  readonly temp?: Requirement;
  /** Detergent the page asks for. */
  readonly detergent?: Detergent;
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
  /** Rinsing after this stage. */
  readonly rinse?: Rinse;
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

/** Washing in a washer-disinfector. */
export interface MechanicalWashing extends Rec {
  /** Whether washing in a machine is allowed, required or forbidden. */
  readonly use?: Text<'allowed' | 'required' | 'forbidden' | 'recommended' | 'silent'>;
  /** Standard the machine must conform to, as the page names it. */
  readonly conforms_to?: List<Text>;
  /** Connector by which its channels join the rack. */
  readonly connector?: Text;
  /** Rack or insert the page asks for. */
  readonly rack?: Text;
  /** How it lies in the rack. */
  readonly orientation?: Text;
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
  /** Rinsing after this stage. */
  readonly rinse?: Rinse;
  /** Hot hold: temperature and time, or A0. */
  readonly thermal?: WashPhase;
  /** Last rinse in the machine and its water. */
  readonly final_rinse?: FinalRinse;
  /** Hot-air drying in the machine. */
  readonly dry?: WashPhase;
  /** Detergent the page asks for. */
  readonly detergent?: Detergent;
  /** Whether the machine may dose lubricant. */
  readonly lubricant?: UseStatement;
  /** When cleaning is finished. */
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

/** Thermal or chemical disinfection. */
export interface Disinfection extends Rec {
  /** Whether disinfection is allowed, required or forbidden. */
  readonly use?: Text<'allowed' | 'required' | 'forbidden' | 'recommended' | 'silent'>;
  /** Heat dose demanded. */
  readonly a0?: Requirement;
  /** Temperature of the bath. */
  readonly temp?: Requirement;
  /** How long: often both a least and a longest time. */
  readonly time?: Requirement;
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
  /** Rinsing after this stage. */
  readonly rinse?: Rinse;
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

/** A test the page asks for. */
export interface Test extends Rec {
  /** Yes when the test is demanded. */
  readonly required?: Flag;
  /** How much of the item is tested. */
  readonly extent?: Text;
  /** Yes when it is done before each use. */
  readonly each_use?: Flag;
  /** What it is tested on, such as the medium of a cut test. */
  readonly medium?: Text;
  /** Value or setting of the test, with its unit. */
  readonly value?: Text;
  /** When the item passes. */
  readonly criteria?: Text;
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

/** Looking at and testing the device before packing. */
export interface Inspection extends Rec {
  /** Yes when it is looked at each time. */
  readonly visual?: Flag;
  /** Light at the bench. */
  readonly lighting?: Requirement;
  /** Magnification used. */
  readonly magnification?: Requirement;
  /** What to look for. */
  readonly criteria?: List<Text>;
  /** Findings that take it out of use. */
  readonly reject_if?: List<Text>;
  /** What is done with a rejected item. */
  readonly action?: Text<'repair' | 'discard' | 're-clean'>;
  /** Electrical test of the insulation. */
  readonly insulation_test?: Test;
  /** Electrical test of the conductor. */
  readonly continuity_test?: Test;
  /** Test for leaks. */
  readonly leak_test?: Test;
  /** Test of movement and function. */
  readonly function_test?: Test;
  /** Test of light transmission. */
  readonly light_test?: Test;
  /** Test of the edge on a stated medium. */
  readonly cut_test?: Test;
  /** Test of torque. */
  readonly torque_test?: Test;
  /** Test of the battery. */
  readonly battery_test?: Test;
  /** Looking into the channel, such as with a borescope. */
  readonly lumen_inspection?: Test;
  /** Test for residual soil. */
  readonly residue_test?: Test;
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

/** Whether and with what the device is lubricated. */
export interface Lubrication extends Rec {
  /** Whether lubrication is required, allowed or forbidden. */
  readonly use?: Text<'allowed' | 'required' | 'forbidden' | 'recommended' | 'silent'>;
  /** Yes when lubrication is demanded. */
  readonly required?: Flag;
  /** Lubricants the page accepts; "none" when it accepts none. */
  readonly allowed?: List<Text>;
  /** Lubricant the page names. */
  readonly agent?: Text;
  /** How many drops. */
  readonly drops?: Requirement;
  /** Where it is applied. */
  readonly where?: Text;
  /** How long it runs afterwards. */
  readonly run?: Requirement;
  /** Yes when it is done before packing. */
  readonly before_packaging?: Flag;
  /** Yes when the excess is wiped off. */
  readonly remove_excess?: Flag;
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

/** How the device must be when packed or sterilized: open, apart, turned. */
export interface Configuration extends Rec {
  /** What the page asks for. */
  readonly what?: Text;
  /** The situation in which this applies. Without it, it always applies. */
  readonly when?: Text;
  /** The statement, or statements, that say this. */
  readonly src?: Citation;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}

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

/** Which lumens are covered: the bore, the length, and how many in a load. */
export interface LumenLimit extends Rec {
  /** Bore of the lumen that is covered. */
  readonly bore?: Requirement;
  /** Length of the lumen that is covered. */
  readonly length?: Requirement;
  /** Material of the lumen the limit is for. */
  readonly material?: Text;
  /** Whether the limit is for open or closed ends. */
  readonly ends?: Text;
  /** How many such lumens one load may hold. */
  readonly count?: Requirement;
  /** Further limits, one a material. */
  readonly by_material?: List<LumenLimit>;
  /** The statement that gives the limits. */
  readonly src?: Citation;
  /** Anything a reader should know. */
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

/** Cooling after the cycle. */
export interface Cooling extends Rec {
  /** How long it cools. */
  readonly time?: Requirement;
  /** Temperature at which it may be touched. */
  readonly temp?: Requirement;
  /** How it cools. */
  readonly method?: Text;
  /** Where the temperature is measured. */
  readonly aim?: Text;
  /** What it may stand on. */
  readonly surface?: Text;
  /** What it must cool before, such as connecting power. */
  readonly before?: Text;
  /** Yes when it must not be cooled with water or cold air. */
  readonly no_quench?: Flag;
  /** Yes when fans are forbidden. */
  readonly no_fan?: Flag;
  /** Yes when hot packs must not be touched. */
  readonly no_touch?: Flag;
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

/** Storage of the packed device. */
export interface Storage extends Rec {
  /** How long it may be stored. */
  readonly time?: Requirement;
  /** Temperature of the store. */
  readonly temp?: Requirement;
  /** Humidity of the store. */
  readonly humidity?: Requirement;
  /** Yes when the page says shelf life depends on events, not on time. */
  readonly event_related?: Flag;
  /** Yes when nothing may lie on it. */
  readonly no_stack?: Flag;
  /** Where and how it is stored. */
  readonly place?: Text;
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

/** A device family with everything its manufacturer’s instruction demands, each demand with the sentence behind it. */
export interface Device extends Rec {
  /** Says what this file describes. It stands first in the file. */
  readonly kind?: Text<'device'>;
  /** Short name by which other files refer to this one. It stands second in the file. */
  readonly id?: Text;
  /** Name by which the department knows it. */
  readonly name?: Text;
  /** Who makes it. */
  readonly maker?: Text;
  /** Catalogue numbers and ranges this file is for. */
  readonly covers?: List<Text>;
  /** Catalogue numbers that are excluded. */
  readonly excludes?: List<Text>;
  /** Identifiers printed as barcodes, such as GS1 or HIBC. */
  readonly identifiers?: List<Text>;
  /** First serial or lot number this file is for. */
  readonly applies_from?: Text;
  /** Last serial or lot number this file is for. */
  readonly applies_to?: Text;
  /** Markets for which this holds. */
  readonly market?: List<Text>;
  /** Language of the instruction. */
  readonly lang?: Text;
  /** Where it touches the patient. It decides the least end-state. */
  readonly class?: Text<'critical' | 'semi-critical' | 'non-critical'>;
  /** Features that decide which steps are needed. */
  readonly traits?: List<Text<'lumen' | 'hinged' | 'ratchet' | 'spring' | 'cannulated' | 'multi-part' | 'stopcock' | 'valve' | 'powered' | 'battery' | 'insulated' | 'cable' | 'electronic' | 'optic' | 'fibre-light' | 'camera' | 'intraocular' | 'implant' | 'implant-trial' | 'instrument-case' | 'articulated' | 'serrated' | 'sharp' | 'delicate' | 'porous' | 'textile' | 'single-use' | 'single-patient' | 'flexible-endoscope' | 'loaner' | 'reusable-container'>>;
  /** What it is made of. Drives chemistry and condensate. */
  readonly materials?: List<Text>;
  /** Parts that come off or are replaced. */
  readonly parts?: List<Part>;
  /** Channels with bore and length. */
  readonly lumens?: List<Lumen>;
  /** Mass of one piece. */
  readonly mass?: Quantity;
  /** Length, width and height. */
  readonly dims?: List<Quantity>;
  /** Limits that hold at every stage. */
  readonly limits?: Limits;
  /** The documents this file is taken from. */
  readonly sources?: List<Source>;
  /** The passages of the documents that the values cite, each under a short id. */
  readonly statements?: Table<Statement>;
  /** Document from which everything not said here is taken. */
  readonly inherits?: Text;
  /** Values for which this page replaces the general manual. */
  readonly overrides?: List<Overridden>;
  /** What to do where the device was used, before it travels. */
  readonly point_of_use?: PointOfUse;
  /** How the device travels to the department. */
  readonly transport?: Transport;
  /** What to do when it arrives: new, borrowed or repaired. */
  readonly receipt?: Receipt;
  /** How it is taken apart. */
  readonly disassembly?: Disassembly;
  /** The stages of cleaning: which are all done, and which are a choice. */
  readonly cleaning?: CleaningNode;
  /** Details of cleaning by hand. */
  readonly manual?: ManualCleaning;
  /** Details of ultrasonic cleaning. */
  readonly ultrasonic?: UltrasonicCleaning;
  /** Details of washing in a machine. */
  readonly mechanical?: MechanicalWashing;
  /** Rinsing, and the water of the last rinse. */
  readonly rinse?: Rinse;
  /** Thermal or chemical disinfection. */
  readonly disinfection?: Disinfection;
  /** Drying after the last rinse. */
  readonly drying?: Drying;
  /** Whether it may go under liquid at any stage. */
  readonly immersion?: Immersion;
  /** Looking and testing before packing. */
  readonly inspection?: Inspection;
  /** Whether and with what it is lubricated. */
  readonly lubrication?: Lubrication;
  /** Packaging for every sterilization option. */
  readonly packaging?: PackagingStatement;
  /** How it must be when packed or sterilized, in every option. */
  readonly configuration?: List<Configuration>;
  /** The complete cycles the page gives. */
  readonly sterilization?: Sterilization;
  /** Cooling after the cycle. */
  readonly cooling?: Cooling;
  /** Storage of the packed device. */
  readonly storage?: Storage;
  /** What the page says never to do. */
  readonly not?: List<Prohibition>;
  /** What the page says for suspected prion disease. Never routine. */
  readonly tse_note?: Text;
  /** End of life in words, such as until inspection fails. */
  readonly reuse?: Text;
  /** What the page says on disposal. */
  readonly disposal?: Text;
  /** Where the maker answers questions: a department, never a person. */
  readonly contact?: Text;
  /** How many pieces the department has. */
  readonly stock?: Quantity;
  /** Who encoded this file, who checked it, and when it is due again. */
  readonly review?: Review;
  /** Anything a reader should know. Never judged. */
  readonly notes?: List<Text>;
}

/** A written answer of a manufacturer to a question. */
export interface Response extends Rec {
  /** Says what this file describes. It stands first in the file. */
  readonly kind?: Text<'response'>;
  /** Short name by which other files refer to this one. It stands second in the file. */
  readonly id?: Text;
  /** Day of the answer. */
  readonly date?: DateValue;
  /** Role of the sender. */
  readonly from?: Text;
  /** Who answers. */
  readonly maker?: Text;
  /** What the answer is about. */
  readonly about?: Text;
  /** Path of the value it settles. */
  readonly field?: Text;
  /** Number of the document it speaks of. */
  readonly doc?: Text;
  /** Revision it speaks of. */
  readonly rev?: Text;
  /** Page it speaks of. */
  readonly page?: Quantity;
  /** Questions it answers. */
  readonly answers?: List<Text>;
  /** What it permits, in its own words. */
  readonly permits?: Text;
  /** What it denies, in its own words. */
  readonly denies?: Text;
  /** The deciding sentence, word for word. */
  readonly quote?: Text;
  /** Whether it may be relied on. */
  readonly status?: Text<'unverified' | 'verified' | 'withdrawn'>;
  /** Yes when it is signed. */
  readonly signed?: Flag;
  /** Day until which it holds. */
  readonly expires?: DateValue;
  /** Markets it holds for. */
  readonly market?: List<Text>;
  /** First serial or lot number. */
  readonly serial_from?: Text;
  /** Last serial or lot number. */
  readonly serial_to?: Text;
  /** The letter kept in the library. */
  readonly file?: Text;
  /** Reference number of the letter. */
  readonly reference?: Text;
  /** The passages of the documents that the values cite, each under a short id. */
  readonly statements?: Table<Statement>;
  /** Who encoded this file, who checked it, and when it is due again. */
  readonly review?: Review;
  /** Anything a reader should know. Never judged. */
  readonly notes?: List<Text>;
}

/** A question put to a manufacturer. */
export interface Question extends Rec {
  /** Says what this file describes. It stands first in the file. */
  readonly kind?: Text<'question'>;
  /** Short name by which other files refer to this one. It stands second in the file. */
  readonly id?: Text;
  /** What the question is about. */
  readonly about?: Text;
  /** Who is asked. */
  readonly maker?: Text;
  /** Path of the value in question. */
  readonly field?: Text;
  /** Document in question. */
  readonly doc?: Text;
  /** Revision in question. */
  readonly rev?: Text;
  /** Page in question. */
  readonly page?: Quantity;
  /** The sentence in question. */
  readonly quote?: Text;
  /** The question as sent. */
  readonly text?: Text;
  /** Day on which it was sent; empty while it is a draft. */
  readonly asked_on?: DateValue;
  /** Role, never a person’s name. */
  readonly asked_by?: Text;
  /** Days on which a reminder was sent. */
  readonly reminded_on?: List<DateValue>;
  /** The response that answers it. */
  readonly answered_by?: Text;
  /** Day on which it was closed. */
  readonly closed?: DateValue;
  /** Why it was closed without an answer. */
  readonly closed_reason?: Text;
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

/** How far the temperature may stray from the setpoint. */
export interface WashBand extends Rec {
  /** How far below. */
  readonly minus?: Quantity;
  /** How far above. */
  readonly plus?: Quantity;
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

/** An ultrasonic bath of the department. */
export interface Ultrasonic extends Rec {
  /** Says what this file describes. It stands first in the file. */
  readonly kind?: Text<'ultrasonic'>;
  /** Short name by which other files refer to this one. It stands second in the file. */
  readonly id?: Text;
  /** Name by which the department knows it. */
  readonly name?: Text;
  /** Who makes it. */
  readonly maker?: Text;
  /** Site where it stands, where there are several. */
  readonly site?: Text;
  /** Frequency of the bath. */
  readonly frequency?: Quantity;
  /** Temperature of the bath. */
  readonly temp?: Quantity;
  /** Yes when it is heated. */
  readonly heated?: Flag;
  /** Length of its program. */
  readonly program?: Quantity;
  /** Longest time that can be set. */
  readonly time_max?: Quantity;
  /** Length of its degassing program. */
  readonly degas?: Quantity;
  /** How many channels it can irrigate. */
  readonly irrigated_ports?: Quantity;
  /** Kind of each irrigated port. */
  readonly ports?: List<Text>;
  /** What is dosed. */
  readonly chemistry?: Text;
  /** Water that fills it. */
  readonly water?: Text;
  /** Day of the last function test. */
  readonly last_test?: DateValue;
  /** When the solution is changed. */
  readonly solution_change?: Text;
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

/** A detergent, neutraliser, lubricant or other agent the department uses. */
export interface Chemistry extends Rec {
  /** Says what this file describes. It stands first in the file. */
  readonly kind?: Text<'chemistry'>;
  /** Short name by which other files refer to this one. It stands second in the file. */
  readonly id?: Text;
  /** Name by which the department knows it. */
  readonly name?: Text;
  /** Who makes it. */
  readonly maker?: Text;
  /** What kind of product it is. */
  readonly class?: Text<'neutral' | 'enzymatic' | 'neutral-enzymatic' | 'mild-alkaline' | 'alkaline' | 'strong-alkaline' | 'acid' | 'neutraliser' | 'lubricant' | 'rinse-aid' | 'rust-remover' | 'disinfectant' | 'alcohol' | 'keep-moist' | 'mild' | 'low-foaming'>;
  /** pH of the diluted solution. */
  readonly ph_in_use?: Requirement;
  /** pH of the product in the drum. */
  readonly ph_concentrate?: Requirement;
  /** pH where the label does not say whether in use or concentrate. */
  readonly ph?: Quantity;
  /** Temperatures at which it works. */
  readonly temp?: Requirement;
  /** How long it must, or may, act. */
  readonly time?: Requirement;
  /** Dose of the label. */
  readonly dose?: Quantity;
  /** Doses the label accepts. */
  readonly dose_range?: Requirement;
  /** How it is measured at the sink. */
  readonly dosing_aid?: Text;
  /** Methods on the label. Anything not listed is not covered. */
  readonly methods?: List<Text<'manual' | 'ultrasonic' | 'mechanical' | 'disinfection' | 'point-of-use' | 'lubrication'>>;
  /** How much it foams. */
  readonly foam?: Text<'low' | 'high'>;
  /** Yes when it contains enzymes. */
  readonly enzymatic?: Flag;
  /** Ingredients that matter for materials. */
  readonly ingredients?: List<Text>;
  /** Step that must go with it. */
  readonly couples?: Text;
  /** Whether it must be rinsed off. */
  readonly rinse?: UseStatement;
  /** When the solution is changed. */
  readonly solution_change?: Text;
  /** Day from which it can no longer be bought. */
  readonly discontinued_on?: DateValue;
  /** Product the maker offers instead. */
  readonly replaced_by?: Text;
  /** Materials the label names as suitable. */
  readonly suitable_materials?: List<Text>;
  /** Materials the label names as unsuitable. */
  readonly unsuitable_materials?: List<Text>;
  /** Yes when it is not bought yet and only tried out here. */
  readonly proposed?: Flag;
  /** The statement behind what this file says as a whole. */
  readonly src?: Citation;
  /** The documents this file is taken from. */
  readonly sources?: List<Source>;
  /** The passages of the documents that the values cite, each under a short id. */
  readonly statements?: Table<Statement>;
  /** Who encoded this file, who checked it, and when it is due again. */
  readonly review?: Review;
  /** Anything a reader should know. Never judged. */
  readonly notes?: List<Text>;
}

/** A point from which water is drawn, with its last results. */
export interface Water extends Rec {
  /** Says what this file describes. It stands first in the file. */
  readonly kind?: Text<'water'>;
  /** Short name by which other files refer to this one. It stands second in the file. */
  readonly id?: Text;
  /** Name by which the department knows it. */
  readonly name?: Text;
  /** Site where it is, where there are several. */
  readonly site?: Text;
  /** Grade it is meant to give. A grade is a measurement, not a label on a tap. */
  readonly grade?: Text<'utility' | 'softened' | 'purified' | 'critical' | 'sterile'>;
  /** Last result. */
  readonly conductivity?: Quantity;
  /** Last result. */
  readonly hardness?: Quantity;
  /** Last result. */
  readonly chloride?: Quantity;
  /** Last result. */
  readonly silicate?: Quantity;
  /** Last result. */
  readonly ph?: Quantity;
  /** Last result. */
  readonly bacteria?: Quantity;
  /** Last result. */
  readonly endotoxin?: Quantity;
  /** Temperature at the point. */
  readonly temp?: Quantity;
  /** Pressure at the point. */
  readonly pressure?: Quantity;
  /** Day of the last results; empty when there are none. */
  readonly last_result?: DateValue;
  /** Where the report is kept. */
  readonly report?: Text;
  /** Day on which it was taken out of use. */
  readonly withdrawn_on?: DateValue;
  /** Who encoded this file, who checked it, and when it is due again. */
  readonly review?: Review;
  /** Anything a reader should know. Never judged. */
  readonly notes?: List<Text>;
}

/** One kind of cycle for which the maker of the packaging gives instructions. */
export interface Validated extends Rec {
  /** Method of sterilization. */
  readonly modality?: Text<'steam-prevac' | 'steam-gravity' | 'steam-sfpp' | 'vh2o2' | 'eo' | 'dry-heat' | 'ltsf' | 'liquid-chemical'>;
  /** Whether packs are stored, or used at once. */
  readonly context?: Text<'terminal' | 'iuss'>;
  /** Temperatures covered. */
  readonly temp?: Requirement;
  /** Exposure covered. */
  readonly exposure?: Requirement;
  /** Drying demanded in this packaging. */
  readonly dry?: Requirement;
  /** Named sterilizers and cycles. */
  readonly listed?: List<Text>;
  /** Lumens covered in this kind of cycle. */
  readonly lumens?: LumenLimit;
  /** Mass covered in this kind of cycle. */
  readonly mass?: Requirement;
  /** Filters for this kind of cycle. */
  readonly filter?: List<Text>;
  /** Container bottom for this kind of cycle. */
  readonly bottom?: Text;
  /** Valve for this kind of cycle. */
  readonly valve?: Text;
  /** Position in the chamber. */
  readonly position?: Text;
  /** The situation in which this applies. Without it, it always applies. */
  readonly when?: Text;
  /** The statement, or statements, that say this. */
  readonly src?: Citation;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}

/** Heat and pH limits of the packaging itself. */
export interface PackLimits extends Rec {
  /** Heat limit at every stage. */
  readonly temp?: Requirement;
  /** pH of any solution that touches it. */
  readonly ph?: Requirement;
  /** The statement, or statements, that say this. */
  readonly src?: Citation;
}

/** Something the page says never to do. */
export interface PackNever extends Rec {
  /** The method, agent or act that is forbidden. */
  readonly what?: Text;
  /** The number that goes with it, with its unit. */
  readonly value?: Text;
  /** The situation in which this applies. Without it, it always applies. */
  readonly when?: Text;
  /** The statement, or statements, that say this. */
  readonly src?: Citation;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}

/** A wrap, pouch, container or case with its own instruction. */
export interface Packaging extends Rec {
  /** Says what this file describes. It stands first in the file. */
  readonly kind?: Text<'packaging'>;
  /** Short name by which other files refer to this one. It stands second in the file. */
  readonly id?: Text;
  /** Name by which the department knows it. */
  readonly name?: Text;
  /** Who makes it. */
  readonly maker?: Text;
  /** What kind of packaging it is. */
  readonly type?: Text<'wrap' | 'pouch' | 'rigid-container' | 'case' | 'iuss-container' | 'open-pan'>;
  /** What it is made of. */
  readonly materials?: List<Text>;
  /** Yes when it contains cellulose, which absorbs peroxide. */
  readonly cellulosic?: Flag;
  /** Every kind of cycle its maker gives instructions for. Anything not listed is not covered. */
  readonly validated?: List<Validated>;
  /** Lumens covered inside, in every kind of cycle. */
  readonly lumens?: LumenLimit;
  /** Drying demanded in every kind of cycle. */
  readonly dry?: Requirement;
  /** Kinds of device its maker covers. */
  readonly covers_classes?: List<Text>;
  /** Highest mass of the packed set. */
  readonly mass_max?: Quantity;
  /** Whether the mass counts the packaging. */
  readonly mass_of?: Text<'gross' | 'net' | 'unstated'>;
  /** Where the highest mass is written. */
  readonly mass_src?: Citation;
  /** Mass of the empty packaging. */
  readonly mass?: Quantity;
  /** How many levels it may hold. */
  readonly levels_max?: Quantity;
  /** Filters that fit. */
  readonly filter?: List<Text>;
  /** Mats, liners and brackets its maker accepts. */
  readonly accessories?: List<Text>;
  /** Mats, liners and brackets its maker forbids. */
  readonly not_accessories?: List<Text>;
  /** Whether one may be put inside another. */
  readonly double?: UseStatement;
  /** Whether it may lie inside a tray or container. */
  readonly inside_set?: UseStatement;
  /** Whether packs may be stacked. */
  readonly stacking?: UseStatement;
  /** Where the internal indicator goes: the places hardest to reach. */
  readonly indicator_places?: List<Text>;
  /** Where the indicator places are written. */
  readonly indicator_src?: Citation;
  /** Where the thermometer is pointed when cooling. */
  readonly cool_aim?: Text;
  /** Where the aim is written. */
  readonly cool_aim_src?: Citation;
  /** How long a pack may be stored. */
  readonly storage?: Requirement;
  /** Yes when its maker says shelf life depends on events. */
  readonly event_related?: Flag;
  /** How often it may be used. */
  readonly uses?: Requirement;
  /** Heat and pH limits of the packaging itself. */
  readonly limits?: PackLimits;
  /** Day from which it can no longer be bought. */
  readonly discontinued_on?: DateValue;
  /** What the page says never to do. */
  readonly not?: List<PackNever>;
  /** The statement behind what this file says as a whole. */
  readonly src?: Citation;
  /** The documents this file is taken from. */
  readonly sources?: List<Source>;
  /** The passages of the documents that the values cite, each under a short id. */
  readonly statements?: Table<Statement>;
  /** Who encoded this file, who checked it, and when it is due again. */
  readonly review?: Review;
  /** Anything a reader should know. Never judged. */
  readonly notes?: List<Text>;
}

/** Cycle printed on the label. */
export interface StatedCycle extends Rec {
  /** Temperature on the label. */
  readonly temp?: Quantity;
  /** Time on the label. */
  readonly time?: Quantity;
  /** Concentration on the label. */
  readonly concentration?: Quantity;
  /** The statement, or statements, that say this. */
  readonly src?: Citation;
}

/** An indicator or challenge device, with the cycles it is labelled for. */
export interface Monitor extends Rec {
  /** Says what this file describes. It stands first in the file. */
  readonly kind?: Text<'monitor'>;
  /** Short name by which other files refer to this one. It stands second in the file. */
  readonly id?: Text;
  /** Name by which the department knows it. */
  readonly name?: Text;
  /** Who makes it. */
  readonly maker?: Text;
  /** 1 to 6 as printed on it, or biological. */
  readonly type?: Text<'1' | '2' | '3' | '4' | '5' | '6' | 'biological'>;
  /** Method it is made for. */
  readonly modality?: Text<'steam' | 'steam-prevac' | 'steam-gravity' | 'steam-sfpp' | 'vh2o2' | 'eo' | 'dry-heat' | 'ltsf' | 'liquid-chemical'>;
  /** Cycle printed on the label. */
  readonly stated?: StatedCycle;
  /** Other cycles printed on the label. */
  readonly stated_values?: List<StatedCycle>;
  /** What it is used for. */
  readonly use?: Text;
  /** Yes when it comes in its own challenge device. */
  readonly pcd?: Flag;
  /** How long until a biological result. */
  readonly result_time?: Quantity;
  /** Day from which it can no longer be bought. */
  readonly discontinued_on?: DateValue;
  /** The documents this file is taken from. */
  readonly sources?: List<Source>;
  /** The passages of the documents that the values cite, each under a short id. */
  readonly statements?: Table<Statement>;
  /** Who encoded this file, who checked it, and when it is due again. */
  readonly review?: Review;
  /** Anything a reader should know. Never judged. */
  readonly notes?: List<Text>;
}

/** One line of the count sheet: a device and how many. */
export interface Member extends Rec {
  /** Device family of this line. */
  readonly device?: Text;
  /** How many pieces. */
  readonly qty?: Quantity;
  /** The line of the count sheet, where no device is named yet. */
  readonly text?: Text;
  /** Catalogue number of the piece. */
  readonly catalogue?: Text;
  /** Level it lies on, counted from the bottom. */
  readonly level?: Quantity;
  /** Basket it is cleaned in, when apart from the rest. */
  readonly basket?: Text;
  /** What the card tells the technician about it. */
  readonly instructions?: List<Text>;
  /** Tests done at each use. */
  readonly tests?: List<Text>;
  /** How its uses are counted. */
  readonly uses_counter?: Text;
  /** Mass of one piece. */
  readonly mass?: Quantity;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}

/** A pouch, wrap or box inside the set. */
export interface Inner extends Rec {
  /** Packaging of the inner pack. */
  readonly packaging?: Text;
  /** What it holds. */
  readonly items?: List<Text>;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}

/** A washer, sterilizer and cycles by which the set is processed. */
export interface Route extends Rec {
  /** Washer used. */
  readonly washer?: Text;
  /** Cycle of the washer. */
  readonly washer_cycle?: Text;
  /** Bath used. */
  readonly ultrasonic?: Text;
  /** Sterilizer used. */
  readonly sterilizer?: Text;
  /** Cycle of the sterilizer. */
  readonly cycle?: Text;
  /** Packaging used. */
  readonly packaging?: Text;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}

/** Which of the possible routes was chosen, and why. */
export interface RouteChoice extends Rec {
  /** Cycle that was chosen. */
  readonly cycle?: Text;
  /** Washer cycle that was chosen. */
  readonly washer_cycle?: Text;
  /** Packaging that was chosen. */
  readonly packaging?: Text;
  /** Why it was chosen. */
  readonly reason?: Text;
  /** Role id of the person. */
  readonly by?: Text;
  /** Day of the choice. */
  readonly on?: DateValue;
}

/** Record that this set, packed this way, was tested in this cycle. */
export interface ProductTest extends Rec {
  /** Day of the test. */
  readonly on?: DateValue;
  /** Packaging that was tested. */
  readonly packaging?: Text;
  /** Cycle that was tested. */
  readonly cycle?: Text;
  /** Machine that was used. */
  readonly sterilizer?: Text;
  /** How many loads were run. */
  readonly loads?: Quantity;
  /** Where the record is kept. */
  readonly record?: Text;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}

/** What the card on the bench carries. */
export interface Card extends Rec {
  /** Day of printing. */
  readonly printed?: DateValue;
  /** Content stamp printed on the card. */
  readonly stamp?: Text;
  /** Cycle printed on the card. */
  readonly cycle?: Text;
  /** Washer cycle printed on the card. */
  readonly washer_cycle?: Text;
  /** Temperature printed on the card. */
  readonly temp?: Quantity;
  /** Exposure printed on the card. */
  readonly exposure?: Quantity;
  /** Drying printed on the card. */
  readonly dry?: Quantity;
  /** Other lines printed on the card. */
  readonly shows?: List<Text>;
  /** Where copies hang. */
  readonly copies?: List<Text>;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}

/** An instrument set: what is in it, how it is packed, and which cycles its card names. */
export interface Set extends Rec {
  /** Says what this file describes. It stands first in the file. */
  readonly kind?: Text<'set'>;
  /** Short name by which other files refer to this one. It stands second in the file. */
  readonly id?: Text;
  /** Name by which the department knows it. */
  readonly name?: Text;
  /** Site that processes it, where there are several. */
  readonly site?: Text;
  /** Role or service that owns it. */
  readonly owner?: Text;
  /** The lines of the count sheet. */
  readonly members?: List<Member>;
  /** Case or basket that holds the contents. */
  readonly case?: Text;
  /** Packaging of the set. */
  readonly packaging?: Text;
  /** Yes when packed twice, as in two pouches. */
  readonly double?: Flag;
  /** Filter fitted to the container. */
  readonly filter?: Text;
  /** Kind of container bottom. */
  readonly bottom?: Text;
  /** Kind of valve fitted. */
  readonly valve?: Text;
  /** Mats, towels, guards and brackets in the set. */
  readonly accessories?: List<Text>;
  /** Paper, labels and other things in the set. */
  readonly contents?: List<Text>;
  /** Packs inside the set. */
  readonly inner?: List<Inner>;
  /** How many levels or trays. */
  readonly levels?: Quantity;
  /** Measured mass with packaging. */
  readonly mass?: Quantity;
  /** Day on which it was weighed. */
  readonly mass_measured?: DateValue;
  /** Mass of each material in the set. */
  readonly masses?: Table<Quantity>;
  /** Day of the last change of contents. */
  readonly changed?: DateValue;
  /** Day of the last change of packaging. */
  readonly packaging_changed?: DateValue;
  /** Yes when it has not been processed here before. */
  readonly new?: Flag;
  /** Cycle that the card names. */
  readonly cycle?: Text;
  /** Washer cycle that the card names. */
  readonly washer_cycle?: Text;
  /** Whether contents share an ultrasonic bath. */
  readonly sonicate?: Text<'together' | 'apart' | 'never'>;
  /** Whether the pack is stored, or used at once. */
  readonly context?: Text<'terminal' | 'iuss'>;
  /** Routes by which the department can process it. */
  readonly routes?: List<Route>;
  /** Which route was chosen, and why. */
  readonly route_choice?: RouteChoice;
  /** How many internal indicators are placed. */
  readonly indicators?: Quantity;
  /** Indicator that is placed inside. */
  readonly indicator?: Text;
  /** Where indicators are placed. */
  readonly indicator_places?: List<Text>;
  /** Indicator on the outside of the pack. */
  readonly external_indicator?: Text;
  /** Text of the label on the pack. */
  readonly label?: Text;
  /** Where the pack stands in the chamber. */
  readonly shelf_position?: Text;
  /** Rack and ports used in the washer. */
  readonly rack?: Text;
  /** Biological challenge run with the load. */
  readonly biological?: Text;
  /** On what the load is released. */
  readonly release?: Text;
  /** Procedure for release before the biological result. */
  readonly emergency_release?: Text;
  /** Record that this set was tested packed this way in this cycle. */
  readonly product_test?: ProductTest;
  /** Yes when it is lent by a supplier. */
  readonly loaner?: Flag;
  /** When it arrived. */
  readonly received?: DateValue;
  /** When surgery needs it. */
  readonly needed?: DateValue;
  /** Features of the set as a whole. */
  readonly traits?: List<Text<'lumen' | 'hinged' | 'ratchet' | 'spring' | 'cannulated' | 'multi-part' | 'stopcock' | 'valve' | 'powered' | 'battery' | 'insulated' | 'cable' | 'electronic' | 'optic' | 'fibre-light' | 'camera' | 'intraocular' | 'implant' | 'implant-trial' | 'instrument-case' | 'articulated' | 'serrated' | 'sharp' | 'delicate' | 'porous' | 'textile' | 'single-use' | 'single-patient' | 'flexible-endoscope' | 'loaner' | 'reusable-container'>>;
  /** How urgent it is. */
  readonly priority?: Text;
  /** How uses of its members are counted. */
  readonly uses_counter?: Text;
  /** How often it is used in a month. */
  readonly in_use_month?: Quantity;
  /** How many such sets there are. */
  readonly stock?: Quantity;
  /** Set for which this is a spare. */
  readonly spare_of?: Text;
  /** What the card on the bench carries. */
  readonly card?: Card;
  /** Photograph kept in the library. */
  readonly photo?: Text;
  /** Who encoded this file, who checked it, and when it is due again. */
  readonly review?: Review;
  /** Anything a reader should know. Never judged. */
  readonly notes?: List<Text>;
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

/** What the poster shows for one packaging. */
export interface ByPackaging extends Rec {
  /** Which packaging. */
  readonly packaging?: Text;
  /** What it says. */
  readonly text?: Text;
  /** Where the thermometer is pointed. */
  readonly aim?: Text;
  /** Where the indicators go. */
  readonly indicator_places?: List<Text>;
}

/** A wall poster: one claim, its exceptions and its sources. */
export interface Poster extends Rec {
  /** Says what this file describes. It stands first in the file. */
  readonly kind?: Text<'poster'>;
  /** Short name by which other files refer to this one. It stands second in the file. */
  readonly id?: Text;
  /** Title of the poster. */
  readonly title?: Text;
  /** The sentence in large type. */
  readonly text?: Text;
  /** The one claim it makes. */
  readonly claim?: Text;
  /** What it is about. */
  readonly topic?: Text;
  /** What the claim does not hold for. */
  readonly exceptions?: List<Text>;
  /** How the exceptions are worded on the poster. */
  readonly exceptions_text?: Text;
  /** One line and drawing for each packaging. */
  readonly by_packaging?: List<ByPackaging>;
  /** Documents named on the poster. */
  readonly sources?: List<Text>;
  /** Template it is made from. */
  readonly template?: Text;
  /** Parts the template prints. */
  readonly includes?: List<Text>;
  /** Cautions printed on it. */
  readonly cautions?: List<Text>;
  /** Day of printing. */
  readonly printed?: DateValue;
  /** Content stamp printed on it. */
  readonly stamp?: Text;
  /** Where it hangs. */
  readonly places?: List<Text>;
  /** Who encoded this file, who checked it, and when it is due again. */
  readonly review?: Review;
  /** Anything a reader should know. Never judged. */
  readonly notes?: List<Text>;
}

/** A role that must know it. Counts only, never names. */
export interface Readers extends Rec {
  /** Role, never a person’s name. */
  readonly role?: Text;
  /** Day by which all must be done. */
  readonly due?: DateValue;
  /** How many are done. */
  readonly done?: Quantity;
  /** How many there are. */
  readonly of?: Quantity;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}

/** A change or topic that people must know. */
export interface Training extends Rec {
  /** Says what this file describes. It stands first in the file. */
  readonly kind?: Text<'training'>;
  /** Short name by which other files refer to this one. It stands second in the file. */
  readonly id?: Text;
  /** What it is about. */
  readonly topic?: Text;
  /** The change in one or two sentences. */
  readonly change?: Text;
  /** Reason a technician can understand. */
  readonly why?: Text;
  /** Files the change touches. */
  readonly about?: List<Text>;
  /** Document that changed. */
  readonly doc?: Text;
  /** Revision that brought the change. */
  readonly rev?: Text;
  /** Roles with the day due and how many are done. */
  readonly readers?: List<Readers>;
  /** What is used to teach it. */
  readonly material?: Text;
  /** Questions that go with it. */
  readonly quiz?: List<Text>;
  /** Day on which it began. */
  readonly on?: DateValue;
  /** Day on which everyone had been reached. */
  readonly closed?: DateValue;
  /** Who encoded this file, who checked it, and when it is due again. */
  readonly review?: Review;
  /** Anything a reader should know. Never judged. */
  readonly notes?: List<Text>;
}

/** A question for teaching, tied to the value it asks for. */
export interface Quiz extends Rec {
  /** Says what this file describes. It stands first in the file. */
  readonly kind?: Text<'quiz'>;
  /** Short name by which other files refer to this one. It stands second in the file. */
  readonly id?: Text;
  /** The question as printed. */
  readonly text?: Text;
  /** What kind of question it is. */
  readonly template?: Text<'value' | 'who-governs' | 'may-i' | 'spot-the-error' | 'where' | 'sequence' | 'bound-words' | 'stop-point' | 'calculation'>;
  /** Set, device or procedure it is about. */
  readonly about?: Text;
  /** Path of the value that is the answer. */
  readonly path?: Text;
  /** The right answer. */
  readonly key?: Text;
  /** How far a worked-out number may be off. */
  readonly tolerance?: Text;
  /** Lowest and highest value that is also right. */
  readonly range?: List<Text>;
  /** Answers offered that are wrong. */
  readonly distractors?: List<Text>;
  /** Reason printed with the key. */
  readonly why?: Text;
  /** Document, revision and page printed with the key. */
  readonly src?: Text;
  /** Stage of the work it is about. */
  readonly stage?: Text<'point-of-use' | 'transport' | 'receipt' | 'quarantine' | 'disassembly' | 'manual' | 'ultrasonic' | 'mechanical' | 'rinse' | 'disinfection' | 'drying' | 'inspection' | 'lubrication' | 'assembly' | 'packaging' | 'loading' | 'steam' | 'low-temperature' | 'sterilization' | 'aeration' | 'cooling' | 'release' | 'storage' | 'use'>;
  /** Roles it is for. */
  readonly audience?: List<Text>;
  /** How many facts must be joined. */
  readonly difficulty?: Quantity;
  /** Content stamp of the value when the question was made. */
  readonly stamp?: Text;
  /** Day on which it was made. */
  readonly made_on?: DateValue;
  /** Who encoded this file, who checked it, and when it is due again. */
  readonly review?: Review;
  /** Anything a reader should know. Never judged. */
  readonly notes?: List<Text>;
}

/** A finding the department accepts for a time, with the reason and who carries the risk. */
export interface Waiver extends Rec {
  /** Says what this file describes. It stands first in the file. */
  readonly kind?: Text<'waiver'>;
  /** Short name by which other files refer to this one. It stands second in the file. */
  readonly id?: Text;
  /** Name of the finding that is accepted. */
  readonly rule?: Text;
  /** What it is accepted for: ids, or all. */
  readonly scope?: List<Text>;
  /** Path of the value it is limited to. */
  readonly field?: Text;
  /** Fingerprint of the one finding it is for. */
  readonly fingerprint?: Text;
  /** Why it is accepted. */
  readonly reason?: Text;
  /** Role, never a person’s name. */
  readonly owner?: Text;
  /** Role, never a person’s name. */
  readonly approved_by?: Text;
  /** Day on which it was granted. */
  readonly on?: DateValue;
  /** Day on which it ends. It must have one. */
  readonly expires?: DateValue;
  /** What is done meanwhile. */
  readonly measure?: Text;
  /** Question that would settle it. */
  readonly question?: Text;
  /** Who encoded this file, who checked it, and when it is due again. */
  readonly review?: Review;
  /** Anything a reader should know. Never judged. */
  readonly notes?: List<Text>;
}

/** One change and what was decided about it. */
export interface DecidedChange extends Rec {
  /** Fingerprint of the change. */
  readonly fingerprint?: Text;
  /** Path of the value that changed. */
  readonly field?: Text;
  /** Kind of change. */
  readonly class?: Text<'stricter' | 'looser' | 'different' | 'new-prohibition' | 'prohibition-removed' | 'option-added' | 'option-removed' | 'step-added' | 'step-removed' | 'step-reordered' | 'scope' | 'became-silent' | 'became-stated' | 'clarification' | 'correction' | 're-citation' | 'editorial'>;
  /** What it changes in this department. */
  readonly effect?: Text<'route-breaks' | 'card-changes' | 'nothing-visible' | 'route-opens' | 'unused-only'>;
  /** What was decided. */
  readonly decision?: Text<'agree' | 'disagree' | 'ask'>;
  /** Question put to the manufacturer. */
  readonly question?: Text;
  /** What happens to packs already processed, for this change. */
  readonly shelf_stock?: Text<'use-as-processed' | 'reprocess' | 'quarantine' | 'not-affected'>;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}

/** What is done until everything is changed. */
export interface Interim extends Rec {
  /** What is done. */
  readonly measure?: Text;
  /** Day on which it ends. */
  readonly ends?: DateValue;
  /** Role, never a person’s name. */
  readonly owner?: Text;
}

/** Record that someone decided on each change of a revision, or of a machine, chemistry, packaging or procedure. */
export interface SignOff extends Rec {
  /** Says what this file describes. It stands first in the file. */
  readonly kind?: Text<'sign-off'>;
  /** Short name by which other files refer to this one. It stands second in the file. */
  readonly id?: Text;
  /** Document whose revision was decided. */
  readonly doc?: Text;
  /** File whose change was decided, where it is not a document. */
  readonly about?: Text;
  /** Revision before. */
  readonly from_rev?: Text;
  /** Revision after. */
  readonly to_rev?: Text;
  /** Content stamp of the side before. A later edit opens the record again. */
  readonly from_stamp?: Text;
  /** Content stamp of the side after. A later edit opens the record again. */
  readonly to_stamp?: Text;
  /** Every change that is not editorial, with its decision. */
  readonly changes?: List<DecidedChange>;
  /** Role, never a person’s name. */
  readonly reviewer?: Text;
  /** Role, never a person’s name. */
  readonly second_reader?: Text;
  /** Role, never a person’s name. */
  readonly manager?: Text;
  /** Role that was heard on packs already on the shelf. */
  readonly infection_prevention?: Text;
  /** Day of the signature. */
  readonly on?: DateValue;
  /** What happens to packs and sets already processed. */
  readonly shelf_stock?: Text<'use-as-processed' | 'reprocess' | 'quarantine' | 'not-affected'>;
  /** Why that was chosen. */
  readonly shelf_stock_reason?: Text;
  /** What is done until everything is changed. */
  readonly interim?: Interim;
  /** Training that goes with it. */
  readonly training?: Text;
  /** Sets whose cards were printed again. */
  readonly cards_reprinted?: List<Text>;
  /** Questions that were sent. */
  readonly questions?: List<Text>;
  /** Where the old revision is kept. */
  readonly archived?: Text;
  /** Mark of the library’s state when it was signed. */
  readonly commit?: Text;
  /** Day until which the record holds. */
  readonly expires?: DateValue;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
  /** Who encoded this file, who checked it, and when it is due again. */
  readonly review?: Review;
  /** Anything a reader should know. Never judged. */
  readonly notes?: List<Text>;
}

/** Kind of rule file to the type of its entity. */
export interface EntityOf {
  readonly 'library': Library;
  readonly 'site': Site;
  readonly 'document': Document;
  readonly 'device': Device;
  readonly 'response': Response;
  readonly 'question': Question;
  readonly 'washer': Washer;
  readonly 'ultrasonic': Ultrasonic;
  readonly 'sterilizer': Sterilizer;
  readonly 'chemistry': Chemistry;
  readonly 'water': Water;
  readonly 'packaging': Packaging;
  readonly 'monitor': Monitor;
  readonly 'set': Set;
  readonly 'procedure': Procedure;
  readonly 'poster': Poster;
  readonly 'training': Training;
  readonly 'quiz': Quiz;
  readonly 'waiver': Waiver;
  readonly 'sign-off': SignOff;
}
