// Generated from schemas/ by `npm run generate`. Do not edit.
import type { DateValue, Flag, List, Quantity, Rec, Table, Text } from '../node.ts';
import type { Review } from './review.generated.ts';
import type { Source } from './source.generated.ts';
import type { Statement } from './statement.generated.ts';

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
