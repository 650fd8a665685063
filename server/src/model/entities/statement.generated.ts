// Generated from schemas/ by `npm run generate`. Do not edit.
import type { List, Quantity, Rec, Text } from '../node.ts';
import type { NotNeeded } from './not-needed.generated.ts';

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
