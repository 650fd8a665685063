// Generated from schemas/ by `npm run generate`. Do not edit.
import type { DateValue, List, Quantity, Rec, Table, Text } from '../node.ts';

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

/** How one finding is treated. */
export interface RuleSetting extends Rec {
  /** How heavy the finding weighs. */
  readonly severity?: Text<'error' | 'warning' | 'advice' | 'ignored'>;
  /** Why it differs from the usual. */
  readonly reason?: Text;
}
