import type {
  LostPassage,
  Review,
  ReviewQuote,
  ReviewRow,
  ReviewSide,
  ReviewTotal,
} from '../../server/src/panel/review.ts';
import { either, type Is, isCount, isText, listOf, maybe, recordOf, word } from './forms.ts';

/** What a person decides about a change, and the form of every message between client and page. Nothing here knows what the texts mean. */
export type Decision = 'agree' | 'disagree' | 'ask';
/** What a person has done about a change: a decision, or a look where none is needed. */
export type Given = Decision | 'looked';

const isTexts = listOf(isText);
const isSide = recordOf<ReviewSide>({
  words: isText,
  quotes: listOf(recordOf<ReviewQuote>({ text: isText, from: isText })),
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

/**
 * What the client says to the page. `given`: what was decided, one for each change, empty where nothing was. `waits`: why the texts as they
 * are now can't be compared, so that an earlier state is on show; else empty.
 */
export type ToReviewPage =
  | {
      readonly is: 'review';
      readonly number: number;
      readonly about: string;
      readonly review: Review;
      readonly given: readonly (Given | '')[];
      readonly waits: string;
    }
  | { readonly is: 'nothing'; readonly text: string };

export const isToReviewPage: Is<ToReviewPage> = either(
  recordOf<Extract<ToReviewPage, { is: 'review' }>>({
    is: word('review'),
    number: isCount,
    about: isText,
    review: isReview,
    given: listOf(word('agree', 'disagree', 'ask', 'looked', '')),
    waits: isText,
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
