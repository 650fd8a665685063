import { nameOfText } from '../base/mix.ts';
import { contentOf, fieldAt } from '../model/content.ts';
import type { Policies } from '../model/entities/site.generated.ts';
import type { AnyEntity } from '../model/entity.ts';
import { rootOfEntity } from '../model/entity.ts';
import type { Kind } from '../schema/kinds.ts';
import { type Alignment, align, textAt } from './align.ts';
import { type Change, type ChangeClass, defaultActions, type EntityComparison } from './change.ts';
import { compareEntities, entityName } from './compare.ts';
import { meaningWords } from './words.ts';

/** Kinds that are compared. The rest (sign-offs, waivers, questions, training, quizzes) record what people do about a change. */
const compared: ReadonlySet<Kind> = new Set<Kind>([
  'device',
  'packaging',
  'chemistry',
  'washer',
  'ultrasonic',
  'sterilizer',
  'water',
  'monitor',
  'procedure',
  'set',
  'site',
  'document',
  'response',
]);

/** A revision of a document that arrived, beside the one it takes the place of: the head of a comparison. */
export interface RevisionPair {
  readonly doc: string;
  readonly from: string;
  readonly to: string;
  readonly title: string;
  readonly issued: string;
  readonly effective: string;
  /** Why the maker changed it, when the page says so. */
  readonly reason: string;
}

export interface LibraryComparison {
  readonly entities: readonly EntityComparison[];
  readonly revisions: readonly RevisionPair[];
}

/**
 * `whole`: what is missing on the new side is gone. `part`: the new side holds only what it changes. `pair`: one file on each side, whatever
 * they are called.
 */
export type Extent = 'whole' | 'part' | 'pair';

/** Two states of a library. Files are paired by kind and id; what is left, by likeness, so that a renamed file is no file lost. */
export function compareLibraries(
  old: readonly AnyEntity[],
  now: readonly AnyEntity[],
  extent: Extent,
  policies: Policies | undefined,
): LibraryComparison {
  const isCompared = (entity: AnyEntity) => compared.has(rootOfEntity(entity).kind);
  const { pairs, removed, added } =
    extent === 'pair'
      ? pairOf(old, now)
      : align(old.filter(isCompared), now.filter(isCompared), [entityName, revisionOf], (a, b) =>
          extent === 'whole' || coversSame(a, b) ? likeness(a, b) : 0,
        );
  const entities: EntityComparison[] = [];
  for (const [before, after] of pairs) {
    const comparison = compareEntities(before, after, policies);
    if (comparison.changes.length + comparison.lost.length + comparison.recordKeeping.length > 0)
      entities.push(comparison);
  }
  const gone = extent === 'whole' ? removed : [];
  for (const entity of gone) if (!isDocument(entity)) entities.push(wholeFile(entity, 'removed'));
  for (const entity of added) if (!isDocument(entity)) entities.push(wholeFile(entity, 'added'));
  return {
    entities,
    revisions: revisionPairs([...old, ...now]).filter(({ doc, to }) => added.some((one) => isRevision(one, doc, to))),
  };
}

function pairOf(old: readonly AnyEntity[], now: readonly AnyEntity[]): Alignment<AnyEntity> {
  const [[before], [after]] = [old, now];
  return { pairs: before !== undefined && after !== undefined ? [[before, after]] : [], removed: [], added: [] };
}

function isDocument(entity: AnyEntity): boolean {
  return rootOfEntity(entity).kind === 'document';
}

/** Documents are one file a revision: never paired with another revision. */
function revisionOf(entity: AnyEntity): string | undefined {
  return isDocument(entity) ? `${textAt(entity, 'doc') ?? ''} ${textAt(entity, 'rev') ?? ''}` : undefined;
}

function isRevision(entity: AnyEntity, doc: string, rev: string): boolean {
  return isDocument(entity) && textAt(entity, 'doc') === doc && textAt(entity, 'rev') === rev;
}

/** In a part, what is not on the new side is still there: only the same catalogue numbers make a file of another id the same family. */
function coversSame(a: AnyEntity, b: AnyEntity): boolean {
  const [covers, covered] = [fieldAt(a, 'covers'), fieldAt(b, 'covers')];
  return covers !== undefined && covered !== undefined && contentOf(covers) === contentOf(covered);
}

/** The same kind and the same catalogue numbers, or most fields with equal content. */
function likeness(a: AnyEntity, b: AnyEntity): number {
  if (rootOfEntity(a).kind !== rootOfEntity(b).kind || isDocument(a)) return 0;
  if (coversSame(a, b)) return 1;
  const keys = new Set([...Object.keys(a), ...Object.keys(b)].filter((key) => fieldAt(a, key) ?? fieldAt(b, key)));
  let same = 0;
  for (const key of keys) {
    const [one, other] = [fieldAt(a, key), fieldAt(b, key)];
    if (one !== undefined && other !== undefined && contentOf(one) === contentOf(other)) same++;
  }
  return same / Math.max(1, keys.size);
}

const ways: ReadonlySet<Kind> = new Set<Kind>([
  'packaging',
  'chemistry',
  'washer',
  'ultrasonic',
  'sterilizer',
  'water',
]);

function wholeFile(entity: AnyEntity, what: 'added' | 'removed'): EntityComparison {
  const { kind } = rootOfEntity(entity);
  const name = entityName(entity);
  const type: ChangeClass = ways.has(kind) ? (what === 'added' ? 'option-added' : 'option-removed') : 'scope';
  const side = { path: '', at: entity.at, words: nameWords(entity), says: [] };
  const change: Change = {
    fingerprint: nameOfText(`${name}\n${what}\n${contentOf(entity)}`),
    entity: name,
    path: '',
    class: type,
    action: defaultActions[type],
    because: what === 'added' ? 'a file that was not there' : 'the file is gone',
    ...(what === 'added' ? { after: side } : { before: side }),
  };
  return {
    entity: name,
    ...(what === 'added' ? { after: entity } : { before: entity }),
    changes: [change],
    lost: [],
    recordKeeping: [],
  };
}

function nameWords(entity: AnyEntity): string {
  const name = fieldAt(entity, 'name');
  return name === undefined ? entityName(entity) : meaningWords(name);
}

function revisionPairs(entities: readonly AnyEntity[]): readonly RevisionPair[] {
  const pairs: RevisionPair[] = [];
  const said = (entity: AnyEntity, key: string) => {
    const node = fieldAt(entity, key);
    return node === undefined ? '' : meaningWords(node);
  };
  for (const entity of entities) {
    if (!isDocument(entity) || said(entity, 'supersedes') === '') continue;
    pairs.push({
      doc: said(entity, 'doc'),
      from: said(entity, 'supersedes'),
      to: said(entity, 'rev'),
      title: said(entity, 'title'),
      issued: said(entity, 'issued'),
      effective: said(entity, 'effective'),
      reason: said(entity, 'change_reason'),
    });
  }
  return pairs;
}
