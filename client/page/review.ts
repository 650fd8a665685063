import { either, type Is, isCount, isText, listOf, maybe, recordOf, word } from './forms.ts';

/**
 * The review of a revision as the page draws it, and the form of every message between the two. The server's own model is
 * server/src/report/review-sheet.ts; a test holds the two together. Nothing here knows what the texts mean.
 */
export type ReviewMark = 'breaks' | 'changes' | 'opens' | 'quiet' | 'unknown';
export type Decision = 'agree' | 'disagree' | 'ask';
/** What a person has done about a change: a decision, or a look where none is needed. */
export type Given = Decision | 'looked';

export interface Review {
  readonly old: string;
  readonly now: string;
  readonly counts: string;
  readonly head: readonly string[];
  readonly lost: readonly LostPassage[];
  readonly together: readonly string[];
  readonly changes: readonly ReviewRow[];
  readonly totals: readonly ReviewTotal[];
  readonly notices: readonly string[];
  readonly cautions: readonly string[];
}

export interface LostPassage {
  readonly quote: string;
  readonly from: string;
  readonly see: readonly string[];
}

export interface ReviewRow {
  readonly fingerprint: string;
  readonly title: string;
  readonly where: string;
  readonly mark: ReviewMark;
  readonly effect: string;
  readonly effectWords: string;
  readonly because: string;
  readonly action: string;
  readonly needs: 'decide' | 'look' | 'settled';
  readonly state: string;
  readonly old: ReviewSide;
  readonly now: ReviewSide;
  readonly reach: readonly string[];
}

export interface ReviewSide {
  readonly words: string;
  readonly quotes: readonly Quote[];
  readonly place?: number;
}

export interface Quote {
  readonly text: string;
  readonly from: string;
}

export interface ReviewTotal {
  readonly label: string;
  readonly ids: readonly string[];
}

const isTexts = listOf(isText);
const isSide = recordOf<ReviewSide>({
  words: isText,
  quotes: listOf(recordOf<Quote>({ text: isText, from: isText })),
  place: maybe(isCount),
});
const isRow = recordOf<ReviewRow>({
  fingerprint: isText,
  title: isText,
  where: isText,
  mark: word('breaks', 'changes', 'opens', 'quiet', 'unknown'),
  effect: isText,
  effectWords: isText,
  because: isText,
  action: isText,
  needs: word('decide', 'look', 'settled'),
  state: isText,
  old: isSide,
  now: isSide,
  reach: isTexts,
});

export const isReview: Is<Review> = recordOf<Review>({
  old: isText,
  now: isText,
  counts: isText,
  head: isTexts,
  lost: listOf(recordOf<LostPassage>({ quote: isText, from: isText, see: isTexts })),
  together: isTexts,
  changes: listOf(isRow),
  totals: listOf(recordOf<ReviewTotal>({ label: isText, ids: isTexts })),
  notices: isTexts,
  cautions: isTexts,
});

/** What the client says to the page. `given`: what was decided, one for each change, empty where nothing was. */
export type ToReviewPage =
  | {
      readonly is: 'review';
      readonly number: number;
      readonly about: string;
      readonly review: Review;
      readonly given: readonly (Given | '')[];
    }
  | { readonly is: 'nothing'; readonly text: string };

export const isToReviewPage: Is<ToReviewPage> = either(
  recordOf<Extract<ToReviewPage, { is: 'review' }>>({
    is: word('review'),
    number: isCount,
    about: isText,
    review: isReview,
    given: listOf(word('agree', 'disagree', 'ask', 'looked', '')),
  }),
  recordOf<Extract<ToReviewPage, { is: 'nothing' }>>({ is: word('nothing'), text: isText }),
);

/** What the page says: it is there; a place is asked for; this was decided about a change; look again; write the record. */
export type FromReviewPage =
  | { readonly is: 'ready' }
  | { readonly is: 'go'; readonly number: number; readonly place: number }
  | { readonly is: 'give'; readonly number: number; readonly change: number; readonly given: Given | '' }
  | { readonly is: 'again' | 'write'; readonly number: number };

export const isFromReviewPage: Is<FromReviewPage> = either(
  either(
    recordOf<Extract<FromReviewPage, { is: 'ready' }>>({ is: word('ready') }),
    recordOf<Extract<FromReviewPage, { is: 'go' }>>({ is: word('go'), number: isCount, place: isCount }),
  ),
  either(
    recordOf<Extract<FromReviewPage, { is: 'give' }>>({
      is: word('give'),
      number: isCount,
      change: isCount,
      given: word('agree', 'disagree', 'ask', 'looked', ''),
    }),
    recordOf<Extract<FromReviewPage, { is: 'again' | 'write' }>>({ is: word('again', 'write'), number: isCount }),
  ),
);

/** What is still to be done: changes that nobody has looked at, and among them those that need a decision. */
export function leftIn(
  { changes }: Review,
  given: readonly (Given | '')[],
): { readonly unseen: number; readonly undecided: number } {
  let [unseen, undecided] = [0, 0];
  for (const [index, { needs }] of changes.entries()) {
    if (needs === 'settled' || (given[index] ?? '') !== '') continue;
    unseen++;
    if (needs === 'decide') undecided++;
  }
  return { unseen, undecided };
}
