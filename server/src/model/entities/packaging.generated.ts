// Generated from schemas/ by `npm run generate`. Do not edit.
import type { Citation, DateValue, Flag, List, Quantity, Rec, Requirement, Table, Text } from '../node.ts';
import type { LumenLimit } from './lumen-limit.generated.ts';
import type { Review } from './review.generated.ts';
import type { Source } from './source.generated.ts';
import type { Statement } from './statement.generated.ts';
import type { UseStatement } from './use-statement.generated.ts';

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
  /** Site that uses it, where there are several and not all do. */
  readonly site?: Text;
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
