import { focusOf } from '../check/finding.ts';
import { rootOf } from '../model/node.ts';
import type { Side } from '../revision/change.ts';
import type { ReviewedChange, RevisionReview } from '../revision/review.ts';
import { type CompareHead, compareCautions, decisionOf } from './compare-words.ts';
import { jsonText } from './json.ts';
import type { Placer } from './model.ts';

/** Where places of either side are found. */
export interface ComparePlacers {
  readonly before: Placer;
  readonly after: Placer;
}

/** A comparison as JSON, version 1. Fields are only ever added within a version. Lines and columns count from 1. The same input gives the same bytes. */
export function compareJson(review: RevisionReview, head: CompareHead, placers: ComparePlacers): string {
  const { changes, lost, signOffs, counts, effects, routes, machines, revisions, recordKeeping, stamps } = review;
  return `${jsonText({
    format: 'traywright-compare',
    version: 1,
    old: head.old,
    new: head.now,
    counts,
    effects,
    revisions,
    lost: lost.map(({ entity, id, saying, reportedBy }) => ({
      entity,
      statement: id,
      ...plainSaying(saying),
      reportedBy,
    })),
    changes: changes.map((change) => plainChange(review, change, placers)),
    routes: routes.map(({ of, effect, words }) => ({ of, effect, words })),
    machines,
    recordKeeping,
    signOffs: { undecided: signOffs.undecided, unused: signOffs.unused, lacking: signOffs.lacking },
    stamps,
    notices: head.notices,
    cautions: compareCautions,
  })}\n`;
}

function plainChange(review: RevisionReview, change: ReviewedChange, placers: ComparePlacers): unknown {
  const { here, impact, edit: _edit, before, after, because, ...rest } = change;
  return {
    ...rest,
    because: because ?? null,
    effect: here?.effect ?? null,
    effectWords: here?.words ?? null,
    before: before === undefined ? null : plainSide(before, placers.before),
    after: after === undefined ? null : plainSide(after, placers.after),
    on: here?.on ?? [],
    governors: here?.governors ?? [],
    impact: impact ?? null,
    decision: decisionOf(review, change),
  };
}

function plainSide({ path, at, words, says }: Side, placer: Placer): unknown {
  const { file } = rootOf(at);
  const { start } = placer.place(file, focusOf(at));
  return { field: path, words, file, line: start.line + 1, column: start.character + 1, says: says.map(plainSaying) };
}

function plainSaying({ quote, doc, rev, page }: Side['says'][number]) {
  return { quote, doc, rev, page };
}
