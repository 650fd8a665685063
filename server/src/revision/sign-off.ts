import type { IsoDate } from '../base/brand.ts';
import { stampOf } from '../model/content.ts';
import type { DecidedChange } from '../model/entities/sign-off.generated.ts';
import type { EntityOf } from '../model/entities.generated.ts';
import { rootOfEntity } from '../model/entity.ts';
import { missingIn } from '../rules/support/sign-offs.ts';
import type { Change, EntityComparison } from './change.ts';

type SignOff = EntityOf['sign-off'];

/**
 * `agreed`: taken over. `disputed`: somebody holds the class or effect for wrong. `asked`: waits for the maker. `reopened`: decided, but one
 * of the two sides was edited since. `expired`: the record's day is past. `open`: nobody has decided. `none-needed`: wording only.
 */
export type DecisionState = 'agreed' | 'disputed' | 'asked' | 'reopened' | 'expired' | 'open' | 'none-needed';

export interface Decision {
  readonly fingerprint: string;
  readonly state: DecisionState;
  /** Id of the sign-off file. */
  readonly record?: string;
}

/** A decision on file that meets no change of this comparison. */
export interface UnusedDecision {
  readonly record: string;
  readonly fingerprint: string;
  readonly field: string;
}

export interface SignOffCheck {
  /** One for each change, in the order of the changes. */
  readonly decisions: readonly Decision[];
  /** Changes that still need a person: open, reopened, expired or disputed. */
  readonly undecided: number;
  readonly unused: readonly UnusedDecision[];
  /** What records that count here still lack: `SO-1: no second reader`. */
  readonly lacking: readonly string[];
}

/** Holds the changes of a comparison against the records on file. */
export function checkSignOffs(
  changes: readonly Change[],
  entities: readonly EntityComparison[],
  records: readonly SignOff[],
  today: IsoDate,
): SignOffCheck {
  const found = new Map<string, { record: SignOff; decided: DecidedChange }>();
  for (const record of records)
    for (const decided of record.changes?.items ?? [])
      if (decided.fingerprint !== undefined) found.set(decided.fingerprint.text, { record, decided });
  const decisions = changes.map((change): Decision => {
    if (!needsDecision(change)) return { fingerprint: change.fingerprint, state: 'none-needed' };
    const known = found.get(change.fingerprint);
    if (known === undefined) return { fingerprint: change.fingerprint, state: 'open' };
    const state = stateOf(known.record, known.decided, entities, today);
    return { fingerprint: change.fingerprint, state, record: rootOfEntity(known.record).id };
  });
  const here = records.filter((record) => isAbout(record, entities));
  return {
    decisions,
    undecided: decisions.filter(({ state }) => state !== 'none-needed' && state !== 'agreed' && state !== 'asked')
      .length,
    unused: here.flatMap((record) => unusedIn(record, changes)),
    lacking: here.flatMap((record) => missingIn(record).map((what) => `${rootOfEntity(record).id}: ${what}`)),
  };
}

/** Wording and moved pages are taken over by themselves; everything else is a person's to decide. */
export function needsDecision({ class: type }: Pick<Change, 'class'>): boolean {
  return type !== 'editorial' && type !== 're-citation';
}

function stateOf(
  record: SignOff,
  decided: DecidedChange,
  entities: readonly EntityComparison[],
  today: IsoDate,
): DecisionState {
  if (isReopened(record, entities)) return 'reopened';
  if (record.expires !== undefined && record.expires.text < today) return 'expired';
  switch (decided.decision?.text) {
    case 'agree':
      return missingIn(record).length === 0 ? 'agreed' : 'open';
    case 'disagree':
      return 'disputed';
    case 'ask':
      return 'asked';
    default:
      return 'open';
  }
}

/** The record names the content it was made for; any later edit of either side opens it again. */
function isReopened(record: SignOff, entities: readonly EntityComparison[]): boolean {
  const about = entities.find((one) => isFor(record, one));
  if (about === undefined) return false;
  const differs = (stamp: string | undefined, entity: EntityComparison['before']) =>
    stamp !== undefined && entity !== undefined && stamp !== stampOf(entity);
  return differs(record.from_stamp?.text, about.before) || differs(record.to_stamp?.text, about.after);
}

function isFor(record: SignOff, { before, after }: EntityComparison): boolean {
  const ids = [before, after].flatMap((entity) => (entity === undefined ? [] : [rootOfEntity(entity).id as string]));
  return record.about !== undefined && ids.includes(record.about.text);
}

function isAbout(record: SignOff, entities: readonly EntityComparison[]): boolean {
  return entities.some((one) => isFor(record, one) && revisionsFit(record, one));
}

/** A record on an earlier revision of the same device is history, not a decision left over. */
function revisionsFit(record: SignOff, { after }: EntityComparison): boolean {
  if (record.to_rev === undefined || after === undefined || !('sources' in after)) return true;
  const sources = after.sources as
    | { items?: readonly { doc?: { text: string }; rev?: { text: string } }[] }
    | undefined;
  const cited = (sources?.items ?? []).find(({ doc }) => doc?.text === record.doc?.text);
  return cited?.rev === undefined || cited.rev.text === record.to_rev.text;
}

function unusedIn(record: SignOff, changes: readonly Change[]): readonly UnusedDecision[] {
  const present = new Set(changes.map(({ fingerprint }) => fingerprint));
  const unused: UnusedDecision[] = [];
  for (const { fingerprint, field } of record.changes?.items ?? []) {
    if (fingerprint === undefined || present.has(fingerprint.text)) continue;
    unused.push({ record: rootOfEntity(record).id, fingerprint: fingerprint.text, field: field?.text ?? '' });
  }
  return unused;
}
