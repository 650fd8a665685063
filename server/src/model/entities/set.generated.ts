// Generated from schemas/ by `npm run generate`. Do not edit.
import type { DateValue, Flag, List, Quantity, Rec, Table, Text } from '../node.ts';
import type { Review } from './review.generated.ts';

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
