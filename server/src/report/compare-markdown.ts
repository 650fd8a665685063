import type { RevisionReview } from '../revision/review.ts';
import { type Block, markdownOfBlocks } from './blocks.ts';
import { lostBlocks, noticeBlocks, revisionBlocks, togetherBlocks } from './compare-page.ts';
import {
  type CompareHead,
  classWords,
  compareCautions,
  countWords,
  decisionOf,
  decisionWords,
  effectOf,
  placeWords,
  valueWords,
} from './compare-words.ts';

/** Rows shown in a comment on a pull request; the rest are counted. */
export const mostRows = 20;

/** A short page for a pull request: worst first, capped, never silent on what it leaves out. */
export function compareMarkdown(review: RevisionReview, head: CompareHead): string {
  const shown = review.changes.slice(0, mostRows);
  const more = review.changes.length - shown.length;
  const blocks: Block[] = [
    { is: 'heading', level: 2, text: `${countWords(review)}` },
    { is: 'text', text: `${head.old} compared with ${head.now}. ${head.department}` },
    ...revisionBlocks(review),
    ...lostBlocks(review),
    ...togetherBlocks(review),
  ];
  if (shown.length > 0) {
    const rows = shown.map((change) => [
      effectOf(change),
      classWords[change.class],
      placeWords(change),
      short(valueWords(change)),
      short(change.here?.words ?? ''),
      decisionWords[decisionOf(review, change)],
    ]);
    blocks.push({ is: 'table', head: ['Effect here', 'Class', 'Where', 'Old -> new', 'Sets', 'Decision'], rows });
  }
  if (more > 0)
    blocks.push({
      is: 'text',
      text: `${more} more ${more === 1 ? 'change is' : 'changes are'} not shown; none weighs more than the last one above.`,
    });
  const { undecided } = review.signOffs;
  if (undecided > 0)
    blocks.push({ is: 'text', text: `${undecided} of ${review.changes.length} changes wait for a decision.` });
  blocks.push(
    ...noticeBlocks(review, head),
    ...compareCautions.slice(0, 2).map((text) => ({ is: 'faint', text }) as const),
  );
  return markdownOfBlocks(blocks);
}

function short(words: string): string {
  return words.length > 160 ? `${words.slice(0, 160)}…` : words;
}
