import type { Edit } from '../../base/problem.ts';
import type { SentenceChoice, Told } from '../../panel/sentences.ts';

/**
 * Part `words`: what people read in the editor, wherever it is asked or shown. Knows no file and no library.
 */

/** A choice with what it changes. */
export interface WalkChoice extends SentenceChoice {
  readonly edits: readonly Edit[];
}

/** What is asked, and what can be answered. */
export interface Question {
  readonly asks: string;
  readonly choices: readonly WalkChoice[];
}

export const caution = 'Compare with the page: the maker’s document is the instruction, this only an index.';

export function asking(label: string, told: Told, detail = ''): WalkChoice {
  return { label, detail, does: 'ask', told, edits: [] };
}

export function leaveOpen(): WalkChoice {
  return {
    label: 'Leave it open',
    detail: 'it stays a finding until somebody has dealt with it',
    does: 'open',
    edits: [],
  };
}

export const ends: readonly WalkChoice[] = [
  { label: 'Stop here', detail: 'the rest stays as it is', does: 'stop', edits: [] },
];
