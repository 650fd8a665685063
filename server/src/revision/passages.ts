import { contentOf, fieldAt, keysOf } from '../model/content.ts';
import type { Rec } from '../model/node.ts';
import { isRequirement } from '../model/walk.ts';
import { recordKeepingFields } from './fields.ts';
import { near, numbersIn, type QuotedNumber, wordingDifference } from './guard.ts';
import { nodesUnder } from './nodes.ts';
import { wordingVerdict } from './records.ts';
import { type NamedStatement, quoteOf } from './statements.ts';
import type { Draft, Walk } from './walk.ts';

/** Found changes of a class that can account for a changed passage. */
const substantive = (draft: Draft) => draft.class !== 'editorial' && draft.class !== 're-citation';

/** What the passages themselves say anew, and no changed value accounts for. */
export function comparePassages(walk: Walk): void {
  const found = walk.drafts.filter(substantive);
  for (const { id, statement } of walk.statements.removed) {
    if (citing(walk, found, id, 'before').length > 0) continue;
    report(
      walk,
      { class: 'became-silent', because: 'the passage is gone and no encoded value follows' },
      id,
      statement,
      undefined,
    );
  }
  for (const [old, now] of walk.statements.pairs) comparePair(walk, found, old, now);
  for (const { id, statement } of walk.statements.added) {
    if (citing(walk, found, `+${id}`, 'after').length > 0 || isCitedByMove(walk, `+${id}`)) continue;
    report(
      walk,
      { class: 'became-stated', because: 'the passage is new and no encoded value follows' },
      id,
      undefined,
      statement,
    );
  }
  reportMoves(walk);
}

/** Changes whose own citation, on that side, names the passage. */
export function citing(walk: Walk, drafts: readonly Draft[], id: string, side: 'before' | 'after'): readonly Draft[] {
  return drafts.filter(({ beforeSrc, afterSrc, before, after }) => {
    const [src, node] = side === 'before' ? [beforeSrc, before] : [afterSrc, after];
    const cited = side === 'before' ? walk.statements.citedBefore : walk.statements.citedAfter;
    if (cited(src).has(id)) return true;
    return node !== undefined && nodesUnder(node).some((one) => one.node === 'citation' && cited(one).has(id));
  });
}

function isCitedByMove(walk: Walk, id: string): boolean {
  return (
    citing(
      walk,
      walk.drafts.filter((draft) => draft.class === 're-citation'),
      id,
      'after',
    ).length > 0
  );
}

function comparePair(walk: Walk, found: readonly Draft[], old: NamedStatement, now: NamedStatement): void {
  const [was, is] = [quoteOf(old.statement), quoteOf(now.statement)];
  if (was !== is) {
    const behind = [...citing(walk, found, old.id, 'before'), ...citing(walk, found, old.id, 'after')];
    const verdict = wordingVerdict(was, is, walk.language);
    const isExplained =
      behind.length > 0 && (verdict.class === 'editorial' || explains(behind, was, is, walk.language));
    if (!isExplained) report(walk, leftOver(verdict), old.id, old.statement, now.statement);
  }
  compareMarks(walk, old, now);
}

function leftOver(verdict: Pick<Draft, 'class' | 'because'>): Pick<Draft, 'class' | 'because'> {
  if (verdict.class === 'editorial') return verdict;
  return { ...verdict, because: `${verdict.because ?? ''}, and no encoded value follows` };
}

/** Does every number that came or went stand in one of the changed values? A negation or join is explained by any changed value. */
function explains(behind: readonly Draft[], was: string, is: string, language: string | undefined): boolean {
  const { gone, come } = wordingDifference(was, is, language);
  const [before, after] = [valuesOf(behind, 'before'), valuesOf(behind, 'after')];
  return gone.every((number) => stands(number, before)) && come.every((number) => stands(number, after));
}

function stands({ value }: QuotedNumber, values: readonly number[]): boolean {
  return values.some((one) => near(one, value) || Math.abs(one - value) <= 0.008 * Math.abs(value));
}

function valuesOf(drafts: readonly Draft[], side: 'before' | 'after'): readonly number[] {
  const values: number[] = [];
  for (const draft of drafts) {
    const node = draft[side];
    for (const one of node === undefined ? [] : nodesUnder(node)) {
      if (one.node === 'quantity') values.push(one.value, one.amount);
      else if (one.node === 'text') values.push(...numbersIn(one.text));
      else if (one.node === 'record' && isRequirement(one) && one.tol !== undefined) values.push(one.tol.value);
    }
  }
  return values;
}

/** Fields of a passage beside its words and its place. */
const placeFields: ReadonlySet<string> = new Set(['page', 'section', 'figure', 'doc', 'rev', 'quote']);

function compareMarks(walk: Walk, old: NamedStatement, now: NamedStatement): void {
  for (const key of new Set([...keysOf(old.statement), ...keysOf(now.statement)])) {
    if (placeFields.has(key)) continue;
    const [before, after] = [fieldAt(old.statement, key), fieldAt(now.statement, key)];
    if (before !== undefined && after !== undefined && contentOf(before) === contentOf(after)) continue;
    const path = `statements.${now.id}.${key}`;
    if (recordKeepingFields.has(key)) walk.recordKeeping.push(path);
    else {
      const verdict = { class: key === 'when' || key === 'alt' ? 'different' : 'editorial' } as const;
      walk.drafts.push({ ...verdict, before, after, beforePath: `statements.${old.id}.${key}`, afterPath: path });
    }
  }
}

function report(
  walk: Walk,
  verdict: Pick<Draft, 'class' | 'because'>,
  id: string,
  before: Rec | undefined,
  after: Rec | undefined,
): void {
  const path = `statements.${id}`;
  walk.drafts.push({ ...verdict, before, after, beforePath: path, afterPath: path });
}

/** Passages that say the same on another page are one change: pages are renumbered together. */
function reportMoves(walk: Walk): void {
  const moved = walk.statements.pairs.filter(([old, now]) => placeOf(old) !== placeOf(now));
  if (moved.length > 0) {
    const ids = moved.map(([old]) => old.id);
    const say = (side: 0 | 1) =>
      moved.map((pair) => `${pair[side].id} ${placeWords(pair[side], pair[1 - side] ?? pair[side])}`).join('; ');
    const [first] = moved;
    walk.drafts.push({
      class: 're-citation',
      because: `${moved.length === 1 ? 'a passage stands' : `${moved.length} passages stand`} in another place`,
      beforePath: 'statements',
      afterPath: 'statements',
      before: first?.[0].statement,
      after: first?.[1].statement,
      words: { before: say(0), after: say(1) },
      moved: ids,
    });
  }
  if (walk.statements.pairs.some(([old, now]) => old.statement.rev?.text !== now.statement.rev?.text))
    walk.recordKeeping.push('statements.rev');
}

function placeOf({ statement }: NamedStatement): string {
  return [statement.doc?.text, statement.page?.text, statement.section?.text, statement.figure?.text].join('|');
}

/** Only what differs is said: a page number mostly, another section or document now and then. */
function placeWords({ statement }: NamedStatement, other: NamedStatement): string {
  const [ours, theirs] = [placesOf(statement), placesOf(other.statement)];
  return ours.filter((part, at) => part !== theirs[at] && part !== '').join(', ');
}

function placesOf({ doc, page, section, figure }: NamedStatement['statement']): readonly string[] {
  return [doc?.text ?? '', page === undefined ? '' : `p. ${page.text}`, section?.text ?? '', figure?.text ?? ''];
}
