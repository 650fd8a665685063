// Generated from schemas/ by `npm run generate`. Do not edit.
import type { DateValue, List, Quantity, Rec, Text } from '../node.ts';
import type { Review } from './review.generated.ts';

/** One revision of a document, as issued. */
export interface Document extends Rec {
  /** Says what this file describes. It stands first in the file. */
  readonly kind?: Text<'document'>;
  /** Short name by which other files refer to this one. It stands second in the file. */
  readonly id?: Text;
  /** Number printed on the document. */
  readonly doc?: Text;
  /** Revision printed on the document. */
  readonly rev?: Text;
  /** Title of the document. */
  readonly title?: Text;
  /** Who issued it. */
  readonly maker?: Text;
  /** What kind of document it is. */
  readonly type?: Text<'instruction' | 'generic-manual' | 'case-leaflet' | 'packaging-instruction' | 'machine-instruction' | 'chemistry-label' | 'standard' | 'guideline' | 'policy' | 'notice' | 'other'>;
  /** Whether this revision is in force here. */
  readonly status?: Text<'current' | 'superseded' | 'withdrawn' | 'draft'>;
  /** Day printed on the document, or its month where no day is printed. */
  readonly issued?: DateValue;
  /** Day from which it holds. */
  readonly effective?: DateValue;
  /** Day on which it reached the department. */
  readonly received?: DateValue;
  /** Day on which it stopped to hold. */
  readonly withdrawn_on?: DateValue;
  /** Revision it replaces. */
  readonly supersedes?: Text;
  /** Markets it is for. */
  readonly market?: List<Text>;
  /** Languages it is written in, as two-letter codes. */
  readonly lang?: List<Text>;
  /** How it writes decimals. */
  readonly decimal_mark?: Text<'point' | 'comma'>;
  /** Catalogue numbers and ranges it is for. */
  readonly covers?: List<Text>;
  /** Catalogue numbers it excludes. */
  readonly excludes?: List<Text>;
  /** First serial or lot number. */
  readonly serial_from?: Text;
  /** Last serial or lot number. */
  readonly serial_to?: Text;
  /** How many pages it has. */
  readonly pages?: Quantity;
  /** The PDF kept in the library. */
  readonly file?: Text;
  /** Checksum of the PDF. */
  readonly checksum?: Text;
  /** Reason the maker gives for this revision. */
  readonly change_reason?: Text;
  /** Most serious kind of change against the revision before. */
  readonly diff_class?: Text<'stricter' | 'looser' | 'different' | 'new-prohibition' | 'prohibition-removed' | 'option-added' | 'option-removed' | 'step-added' | 'step-removed' | 'step-reordered' | 'scope' | 'became-silent' | 'became-stated' | 'clarification' | 'correction' | 're-citation' | 'editorial'>;
  /** Day on which this revision was accepted here. */
  readonly approved?: DateValue;
  /** Who has acknowledged the change for each affected set and procedure. */
  readonly impact_ack?: List<ImpactAck>;
  /** Record of the decision on this revision. */
  readonly sign_off?: Text;
  /** Training that goes with the change. */
  readonly training?: Text;
  /** Who encoded this file, who checked it, and when it is due again. */
  readonly review?: Review;
  /** Anything a reader should know. Never judged. */
  readonly notes?: List<Text>;
}

/** Someone responsible for an affected set or procedure has read the change. */
export interface ImpactAck extends Rec {
  /** What is affected. */
  readonly what?: Text;
  /** Role id of the person. */
  readonly by?: Text;
  /** Day of the acknowledgement. */
  readonly on?: DateValue;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}
