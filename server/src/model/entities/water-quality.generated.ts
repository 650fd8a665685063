// Generated from schemas/ by `npm run generate`. Do not edit.
import type { Citation, Rec, Requirement, Text } from '../node.ts';

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
