import type { Markup } from '../markup.ts';
import type { Line } from '../piece.ts';
import type { PosterId } from '../words/poster-words.ts';

/** One wall poster: one claim, its drawings or table, its exceptions and its sources. */
export interface Poster {
  readonly id: PosterId;
  readonly title: string;
  readonly claim: string;
  readonly figures: readonly { readonly drawing: Markup; readonly caption: Line }[];
  readonly table?: { readonly head: readonly string[]; readonly rows: readonly (readonly Line[])[] };
  /** A path: a question, and what to do when the answer is no. */
  readonly path: readonly { readonly ask: string; readonly else: string }[];
  readonly lines: readonly Line[];
  /** The one thing that must be seen from across the room. */
  readonly loud?: Line;
  readonly exceptions: readonly Line[];
  readonly sources: readonly Line[];
  readonly cautions: readonly string[];
  readonly notes: readonly Line[];
}

/** What each poster brings of its own; the rest is the same for all. */
export type PosterBody = Partial<Omit<Poster, 'id' | 'title' | 'claim' | 'notes'>>;
