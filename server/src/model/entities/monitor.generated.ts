// Generated from schemas/ by `npm run generate`. Do not edit.
import type { Citation, DateValue, Flag, List, Quantity, Rec, Table, Text } from '../node.ts';
import type { Review } from './review.generated.ts';
import type { Source } from './source.generated.ts';
import type { Statement } from './statement.generated.ts';

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
