import type { FileId } from '../../base/brand.ts';
import type { KnownAnswers } from '../state/known-answers.ts';

/** What others found out who judge a part of the same library beside us. */
export interface Elsewhere {
  /** What was found in the file, in the form in which it is kept; undefined for one that nobody else judged. */
  found(file: FileId): Uint8Array | undefined;
  /** Numbers of the keys that the findings of such a file rest on. */
  reads(file: FileId): Uint32Array | undefined;
  answers(): readonly KnownAnswers[];
}

export const nobodyElse: Elsewhere = { found: () => undefined, reads: () => undefined, answers: () => [] };
