import type { Place } from '../model/node.ts';
import type { Side } from '../revision/change.ts';
import type { ReviewedChange, RevisionReview } from '../revision/review.ts';
import type { DecisionState } from '../revision/sign-off.ts';
import { impactWords, revisionBlocks, togetherWords } from './compare-page.ts';
import {
  actionWords,
  type CompareHead,
  citation,
  classWords,
  compareCautions,
  countWords,
  decisionOf,
  decisionWords,
  effectOf,
} from './compare-words.ts';

/** How much a change weighs here. Each has a sign and a word of its own on the page. */
export type ReviewMark = 'breaks' | 'changes' | 'opens' | 'quiet' | 'unknown';

/** A comparison for a view in which a person decides: plain words throughout, places as numbers. */
export interface ReviewSheet {
  readonly old: string;
  readonly now: string;
  readonly counts: string;
  /** Document, revisions, dates, the maker's reason; for which department effects were derived. */
  readonly head: readonly string[];
  readonly lost: readonly LostPassage[];
  readonly together: readonly string[];
  readonly changes: readonly ReviewRow[];
  /** What follows from all of it: cards to print, sets on hold. */
  readonly totals: readonly ReviewTotal[];
  readonly notices: readonly string[];
  readonly cautions: readonly string[];
}

export interface LostPassage {
  readonly quote: string;
  readonly from: string;
  /** Fingerprints of the changes that tell of it. */
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
  /** `decide`: a person must; `look`: wording only, to be looked at; `settled`: on record already. */
  readonly needs: 'decide' | 'look' | 'settled';
  readonly state: string;
  readonly old: ReviewSide;
  readonly now: ReviewSide;
  readonly reach: readonly string[];
}

export interface ReviewSide {
  /** Empty where nothing stands there. */
  readonly words: string;
  readonly quotes: readonly { readonly text: string; readonly from: string }[];
  /** In the list of places. */
  readonly place?: number;
}

export interface ReviewTotal {
  readonly label: string;
  readonly ids: readonly string[];
}

/** Where a side stands, in the order in which the sheet numbers places. */
export interface ReviewPlace {
  readonly side: 'old' | 'now';
  readonly entity: string;
  readonly at: Place;
}

export interface NumberedReview {
  readonly sheet: ReviewSheet;
  readonly places: readonly ReviewPlace[];
}

/** The same facts as text, JSON, Markdown and the page to print: nothing is worked out here. */
export function reviewSheet(review: RevisionReview, head: CompareHead): NumberedReview {
  const places: ReviewPlace[] = [];
  const sheet = {
    old: head.old,
    now: head.now,
    counts: countWords(review),
    head: [...revisionBlocks(review).flatMap((block) => (block.is === 'text' ? [block.text] : [])), head.department],
    lost: review.lost.map(({ saying, entity, reportedBy }) => ({
      quote: saying.quote,
      from: `${citation(saying)}; ${entity.replace('/', ' ')}`,
      see: reportedBy,
    })),
    together: togetherWords(review),
    changes: review.changes.map((change) => rowOf(review, change, places)),
    totals: totalsOf(review),
    notices: noticesOf(review, head),
    cautions: compareCautions,
  };
  return { sheet, places };
}

function rowOf(review: RevisionReview, change: ReviewedChange, places: ReviewPlace[]): ReviewRow {
  const { fingerprint, entity, path, here, because, impact } = change;
  const state = decisionOf(review, change);
  return {
    fingerprint,
    title: classWords[change.class],
    where: path === '' ? entity.replace('/', ' ') : `${path} in ${entity.replace('/', ' ')}`,
    mark: markOf(change),
    effect: effectOf(change),
    effectWords: here?.words ?? '',
    because: because ?? '',
    action: actionWords[change.action],
    needs: needsOf(state),
    state: decisionWords[state],
    old: sideOf(change.before, 'old', entity, places),
    now: sideOf(change.after, 'now', entity, places),
    reach: [
      ...(here?.governors ?? []).map(({ set, words }) => `Who governs in ${set.replace(/^set\//, '')}: ${words}`),
      ...(impact === undefined ? [] : impactWords(impact)),
    ],
  };
}

function needsOf(state: DecisionState): ReviewRow['needs'] {
  if (state === 'none-needed') return 'look';
  return state === 'agreed' || state === 'asked' ? 'settled' : 'decide';
}

function markOf({ here }: ReviewedChange): ReviewMark {
  switch (here?.effect) {
    case undefined:
      return 'unknown';
    case 'route-breaks':
      return 'breaks';
    case 'card-changes':
      return 'changes';
    case 'route-opens':
      return 'opens';
    default:
      return 'quiet';
  }
}

function sideOf(side: Side | undefined, which: ReviewPlace['side'], entity: string, places: ReviewPlace[]): ReviewSide {
  if (side === undefined) return { words: '', quotes: [] };
  const quotes = side.says
    .filter(({ quote }) => quote !== '')
    .map((saying) => ({ text: saying.quote, from: citation(saying) }));
  const place = places.push({ side: which, entity, at: side.at }) - 1;
  return { words: side.words, quotes, place };
}

function totalsOf({ changes, routes }: RevisionReview): readonly ReviewTotal[] {
  const all = (key: 'cards' | 'training' | 'questions') =>
    [...new Set(changes.flatMap(({ impact }) => impact?.[key] ?? []))].sort();
  const held = routes.filter(({ effect }) => effect === 'route-breaks').map(({ of }) => of.replace(/^set\//, ''));
  return [
    { label: 'Sets on hold', ids: held },
    { label: 'Cards to print again', ids: all('cards') },
    { label: 'Training to look at', ids: all('training') },
    { label: 'Open questions it touches', ids: all('questions') },
  ];
}

function noticesOf({ recordKeeping, signOffs }: RevisionReview, { notices }: CompareHead): readonly string[] {
  return [
    ...notices,
    ...signOffs.unused.map(
      ({ record, field }) => `${record} decides on ${field || 'a change'}, which this comparison does not have.`,
    ),
    ...signOffs.lacking.map((words) => `Sign-off ${words}.`),
    ...(recordKeeping > 0
      ? [`In ${recordKeeping} ${recordKeeping === 1 ? 'place' : 'places'} only the record of reading differs.`]
      : []),
  ];
}
