// Generated from schemas/ by `npm run generate`. Do not edit.
import type { DateValue, List, Rec, Text } from '../node.ts';
import type { Review } from './review.generated.ts';

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
