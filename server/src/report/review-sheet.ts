import type { Place } from '../model/node.ts';
import type { Review, ReviewMark, ReviewRow, ReviewSide, ReviewTotal } from '../panel/review.ts';
import type { Side } from '../revision/change.ts';
import type { ReviewedChange, RevisionReview } from '../revision/review.ts';
import type { DecisionState } from '../revision/sign-off.ts';
import { impactWords, revisionBlocks, togetherWords, untaughtWords } from './compare-page.ts';
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

/** Where a side stands, in the order in which the sheet numbers places. */
export interface ReviewPlace {
  readonly side: 'old' | 'now';
  readonly entity: string;
  readonly at: Place;
}

export interface NumberedReview {
  readonly sheet: Review;
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
  const all = (key: 'cards' | 'roles' | 'training' | 'questions') =>
    [...new Set(changes.flatMap(({ impact }) => impact?.[key] ?? []))].sort();
  const held = routes.filter(({ effect }) => effect === 'route-breaks').map(({ of }) => of.replace(/^set\//, ''));
  return [
    { label: 'Sets on hold', ids: held },
    { label: 'Cards to print again', ids: all('cards') },
    { label: 'Roles to train', ids: all('roles') },
    { label: 'Training records to look at', ids: all('training') },
    { label: 'Open questions it touches', ids: all('questions') },
  ];
}

function noticesOf(review: RevisionReview, { notices }: CompareHead): readonly string[] {
  const { recordKeeping, signOffs } = review;
  return [
    ...notices,
    ...untaughtWords(review),
    ...signOffs.unused.map(
      ({ record, field }) => `${record} decides on ${field || 'a change'}, which this comparison does not have.`,
    ),
    ...signOffs.lacking.map((words) => `Sign-off ${words}.`),
    ...(recordKeeping > 0
      ? [`In ${recordKeeping} ${recordKeeping === 1 ? 'place' : 'places'} only the record of reading differs.`]
      : []),
  ];
}
