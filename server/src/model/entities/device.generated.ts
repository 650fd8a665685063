// Generated from schemas/ by `npm run generate`. Do not edit.
import type { Citation, Flag, List, Quantity, Rec, Requirement, Table, Text } from '../node.ts';
import type { CleaningNode, ManualCleaning } from './device-manual.generated.ts';
import type { Configuration } from './configuration.generated.ts';
import type { Cooling } from './device-cooling.generated.ts';
import type { Disassembly } from './device-disassembly.generated.ts';
import type { Disinfection } from './device-disinfection.generated.ts';
import type { Drying } from './device-drying.generated.ts';
import type { Immersion } from './immersion.generated.ts';
import type { Inspection } from './device-inspection.generated.ts';
import type { Lubrication } from './device-lubrication.generated.ts';
import type { MechanicalWashing } from './device-mechanical.generated.ts';
import type { PackagingStatement } from './packaging-statement.generated.ts';
import type { PointOfUse } from './device-point-of-use.generated.ts';
import type { Prohibition } from './prohibition.generated.ts';
import type { Receipt } from './device-receipt.generated.ts';
import type { Review } from './review.generated.ts';
import type { Rinse } from './rinse.generated.ts';
import type { Source } from './source.generated.ts';
import type { Statement } from './statement.generated.ts';
import type { Sterilization } from './device-sterilization.generated.ts';
import type { Storage } from './device-storage.generated.ts';
import type { Transport } from './device-transport.generated.ts';
import type { UltrasonicCleaning } from './device-ultrasonic.generated.ts';

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
  /** What ends its use, in words, such as until inspection fails. */
  readonly until?: Text;
  /** Who counts the uses, and for which part. */
  readonly counted_by?: Text;
  /** Anything a reader should know. It is never judged. */
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
