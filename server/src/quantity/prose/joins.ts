import { span } from '../../base/span.ts';
import type { ReadingText } from './draft.ts';
import type { Hit } from './lexicon.ts';
import type { JoinKind } from './meaning.ts';
import type { Join, StageMention } from './prose.ts';

/** Stages and methods named, in order. */
export function readStages(text: ReadingText): StageMention[] {
  const stages: StageMention[] = [];
  for (const hit of text.hits) {
    if (hit.meaning.role !== 'stage') continue;
    stages.push({ stage: hit.meaning.stage, span: spanOf(text, hit) });
  }
  return stages;
}

/** How each stage is joined to the next other stage of the text. Stages with no join word between them give none. */
export function readJoins(text: ReadingText): Join[] {
  const joins: Join[] = [];
  let before: Hit | undefined;
  let opening: Hit | undefined;
  let between: Hit[] = [];
  for (const hit of text.hits) {
    if (hit.meaning.role === 'join') between.push(hit);
    if (hit.meaning.role !== 'stage') continue;
    if (before === undefined) opening = between[0];
    else if (before.meaning.role === 'stage' && before.meaning.stage === hit.meaning.stage) {
      before = hit;
      continue;
    } else addJoin(text, joins, before, hit, between, opening);
    before = hit;
    between = [];
  }
  addClosing(text, joins, between);
  return joins;
}

function addJoin(
  text: ReadingText,
  joins: Join[],
  before: Hit,
  after: Hit,
  between: readonly Hit[],
  opening: Hit | undefined,
): void {
  const word = strongest(between) ?? (joins.length === 0 ? opening : undefined);
  if (word?.meaning.role !== 'join' || before.meaning.role !== 'stage' || after.meaning.role !== 'stage') return;
  joins.push({
    join: combined(between, word.meaning.join),
    span: spanOf(text, word),
    before: { stage: before.meaning.stage, span: spanOf(text, before) },
    after: { stage: after.meaning.stage, span: spanOf(text, after) },
  });
}

/** "Or" decides over "and" (`and alternatively`), a sequence word over "and" (`and then`). */
function strongest(between: readonly Hit[]): Hit | undefined {
  return find(between, 'and/or') ?? find(between, 'or') ?? find(between, 'then') ?? find(between, 'and');
}

function find(hits: readonly Hit[], join: JoinKind): Hit | undefined {
  return hits.find((hit) => hit.meaning.role === 'join' && hit.meaning.join === join);
}

/** A sequence word and an "or" between the same two stages leave open which holds. */
function combined(between: readonly Hit[], join: JoinKind): JoinKind {
  return join === 'or' && find(between, 'then') !== undefined ? 'and/or' : join;
}

/** `Clean manually. A washer may be used instead.`: the word stands behind the second stage. */
function addClosing(text: ReadingText, joins: Join[], after: readonly Hit[]): void {
  const word = find(after, 'or');
  const stages = text.hits.filter((hit) => hit.meaning.role === 'stage');
  const second = stages.at(-1);
  const first = stages.at(-2);
  if (word?.meaning.role !== 'join' || first?.meaning.role !== 'stage' || second?.meaning.role !== 'stage') return;
  if (
    first.meaning.stage === second.meaning.stage ||
    joins.some((join) => join.after.span.start === text.tokens[second.first]?.start)
  )
    return;
  joins.push({
    join: 'or',
    span: spanOf(text, word),
    before: { stage: first.meaning.stage, span: spanOf(text, first) },
    after: { stage: second.meaning.stage, span: spanOf(text, second) },
  });
}

function spanOf(text: ReadingText, hit: Hit): { readonly start: number; readonly end: number } {
  return span(text.tokens[hit.first]?.start ?? 0, text.tokens[hit.last]?.end ?? 0);
}
