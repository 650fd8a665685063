import type { ReviewedChange, RevisionReview } from './review.ts';
import { needsDecision } from './sign-off.ts';

/** A sign-off file that is yet to be completed. */
export interface SignOffDraft {
  readonly id: string;
  /** `device/pale-scissors`. */
  readonly entity: string;
  readonly text: string;
}

/** What a person has chosen about a change. */
export const givenDecisions = ['agree', 'disagree', 'ask'] as const;

export type GivenDecision = (typeof givenDecisions)[number];

/** What is known when a record is written. */
export interface DraftInput {
  /** By fingerprint, as a person gave them: only these changes are written, with their decision. */
  readonly decisions: ReadonlyMap<string, GivenDecision>;
  isTaken(id: string): boolean;
}

/** One record for each file with a change that a person must decide. A choice that nobody has made is left empty: none is made by a machine. */
export function signOffDrafts(review: RevisionReview, given?: DraftInput): readonly SignOffDraft[] {
  const drafts: SignOffDraft[] = [];
  const ids = new Set<string>();
  for (const { entity, before, after } of review.stamps) {
    const changes = review.changes.filter(
      (change) =>
        change.entity === entity &&
        needsDecision(change) &&
        (given === undefined || given.decisions.has(change.fingerprint)),
    );
    if (changes.length === 0) continue;
    const draft = draftOf(review, entity, changes, { before, after }, { given, ids });
    ids.add(draft.id);
    drafts.push(draft);
  }
  return drafts;
}

interface Drafting {
  readonly given: DraftInput | undefined;
  /** Of the drafts before this one. */
  readonly ids: ReadonlySet<string>;
}

/** A name of its own: the wished one, else with the lowest number that makes it one. */
function freeId(wished: string, { given, ids }: Drafting): string {
  const isTaken = (id: string) => ids.has(id) || given?.isTaken(id) === true;
  let id = wished;
  for (let number = 2; isTaken(id); number++) id = `${wished}-${number}`;
  return id;
}

function draftOf(
  review: RevisionReview,
  entity: string,
  changes: readonly ReviewedChange[],
  stamps: { readonly before: string; readonly after: string },
  drafting: Drafting,
): SignOffDraft {
  const about = entity.slice(entity.indexOf('/') + 1);
  const revision = review.revisions.find(({ doc }) => changes.some((change) => citesDocument(change, doc)));
  const wished = `SO-${revision === undefined ? about : `${revision.doc}-${revision.to}`}`;
  const id = freeId(wished.replace(/[^A-Za-z0-9._-]/g, '-').slice(0, 60), drafting);
  const lines = [
    '# Decision on a change. Every line that ends in a colon is to be completed; the comment beside it says with what.',
    'kind: sign-off',
    `id: ${id}`,
    ...(revision === undefined ? [] : [`doc: ${quoted(revision.doc)}`]),
    `about: ${quoted(about)}`,
    ...(revision === undefined ? [] : [`from_rev: ${quoted(revision.from)}`, `to_rev: ${quoted(revision.to)}`]),
    ...(stamps.before === '' ? [] : [`from_stamp: "${stamps.before}"`]),
    ...(stamps.after === '' ? [] : [`to_stamp: "${stamps.after}"`]),
    'changes:',
    ...changes.flatMap((change) => changeLines(change, drafting.given?.decisions.get(change.fingerprint))),
    'reviewer:             # role, such as educator-1',
    'second_reader:        # another role, such as educator-2',
    'manager:              # role of whoever signs',
    'on:                   # day of the signature, such as 2025-03-03',
    'shelf_stock:          # use-as-processed, reprocess, quarantine or not-affected',
    'shelf_stock_reason:   # why',
    '# interim: {measure: what is done until everything is changed, ends: 2025-06-30, owner: manager}',
    '# training: id of the training that goes with it',
    'archived:             # where the old revision is kept',
  ];
  return { id, entity, text: `${lines.join('\n')}\n` };
}

function changeLines(change: ReviewedChange, decision: GivenDecision | undefined): readonly string[] {
  const { before, after, here, impact } = change;
  const [old, now] = [before?.words ?? 'nothing', after?.words ?? 'nothing'];
  const choice = impact?.shelfChoice === 'needed';
  return [
    `  # ${comment(`${change.path || 'the file'}: ${old} -> ${now}`)}`,
    ...(here === undefined ? [] : [`  # ${comment(`here: ${here.words}`)}`]),
    `  - fingerprint: "${change.fingerprint}"`,
    `    field: ${quoted(change.path)}`,
    `    class: ${change.class}`,
    ...(here === undefined ? [] : [`    effect: ${here.effect}`]),
    decision === undefined ? '    decision:           # agree, disagree or ask' : `    decision: ${decision}`,
    ...(choice
      ? ['    shelf_stock:        # use-as-processed, reprocess, quarantine or not-affected']
      : ['    shelf_stock: not-affected']),
  ];
}

function citesDocument({ before, after }: ReviewedChange, doc: string): boolean {
  return [...(before?.says ?? []), ...(after?.says ?? [])].some((saying) => saying.doc === doc);
}

/** Words of files never end a comment or start a line of their own. */
function comment(text: string): string {
  return text.replace(/[\p{Cc}\u2028\u2029]+/gu, ' ').slice(0, 300);
}

function quoted(text: string): string {
  return `"${text.replace(/[\p{Cc}\u2028\u2029]+/gu, ' ').replace(/["\\]/g, '\\$&')}"`;
}
