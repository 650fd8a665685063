// Generated from schemas/ by `npm run generate`. Do not edit.
import type { DateValue, List, Quantity, Rec, Text } from '../node.ts';
import type { Review } from './review.generated.ts';

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
