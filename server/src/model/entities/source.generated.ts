// Generated from schemas/ by `npm run generate`. Do not edit.
import type { Rec, Text } from '../node.ts';

/** A document this file is taken from. */
export interface Source extends Rec {
  /** Number of the document, as printed on it. */
  readonly doc?: Text;
  /** Revision of the document. */
  readonly rev?: Text;
  /** What kind of document it is. Only the manufacturer’s own instruction counts as one. */
  readonly role?: Text<'device-specific' | 'generic' | 'case-leaflet' | 'response' | 'regulator-notice' | 'catalogue' | 'website' | 'representative-email' | 'photo' | 'other-department'>;
  /** Anything a reader should know. */
  readonly note?: Text;
}
