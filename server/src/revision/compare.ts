import { nameOfText } from '../base/mix.ts';
import { contentOf, fieldAt } from '../model/content.ts';
import type { Policies } from '../model/entities/site.generated.ts';
import { rootOfEntity } from '../model/entity.ts';
import type { Node, Rec } from '../model/node.ts';
import type { Quoting, Saying } from '../model/saying.ts';
import { sayingOf, sayingsOf } from '../model/saying.ts';
import { textAt } from './align.ts';
import {
  type Change,
  type ChangeClass,
  changeClasses,
  defaultActions,
  type Edit,
  type EntityComparison,
  type LostStatement,
  type Side,
} from './change.ts';
import { hasWrongPair } from './guard.ts';
import { citing, comparePassages } from './passages.ts';
import { compareRecords } from './records.ts';
import { alignStatements } from './statements.ts';
import { citationIn, type Draft, fieldSpot, joined, Walk } from './walk.ts';
import { meaningWords } from './words.ts';

type Entity = Rec & Quoting;

/** All that differs between two states of one entity, worst class first. `policies`: how the site counts bare numbers. */
export function compareEntities(old: Entity, now: Entity, policies: Policies | undefined): EntityComparison {
  const statements = alignStatements(old, now);
  const walk = new Walk(statements, policies, languageOf(now));
  const top = { beforePath: '', afterPath: '', put: (node: Node | undefined) => fieldEdit(old, '', node) };
  compareRecords(walk, old, now, top);
  compareSources(walk, old, now);
  comparePassages(walk);
  const changes = walk.drafts.map((draft) => changeOf(draft, old, now));
  const name = entityName(now);
  return {
    entity: name,
    before: old,
    after: now,
    changes: withoutTwins(changes).sort(byClass),
    lost: statements.removed.map(({ id, statement }) =>
      lostOf(walk, changes, name, id, sayingOf(statement, statement.at)),
    ),
    recordKeeping: walk.recordKeeping,
  };
}

export function entityName(entity: Rec): string {
  const { kind, id } = rootOfEntity(entity);
  return `${kind}/${id}`;
}

function languageOf(entity: Rec): string | undefined {
  const field = fieldAt(entity, 'lang');
  const text = field?.node === 'list' ? field.items[0] : field;
  return text?.node === 'text' ? text.text : undefined;
}

/** Another revision of the same document is what is compared; another document is another citation. */
function compareSources(walk: Walk, old: Entity, now: Entity): void {
  const [before, after] = [fieldAt(old, 'sources'), fieldAt(now, 'sources')];
  const top = { beforePath: '', afterPath: '', put: (node: Node | undefined) => fieldEdit(old, 'sources', node) };
  const docs = (node: Node | undefined) => sourceWords(node, ['doc', 'role']);
  const revisions = (node: Node | undefined) => sourceWords(node, ['doc', 'rev']);
  if (docs(before) !== docs(after))
    walk.report(
      { class: 're-citation', because: 'taken from another document' },
      fieldSpot(top, old, 'sources', before, after),
      before,
      after,
    );
  else if (revisions(before) !== revisions(after)) walk.recordKeeping.push('sources.rev');
}

function sourceWords(node: Node | undefined, keys: readonly string[]): string {
  const items = node?.node === 'list' ? node.items : [];
  const words = items.map((item) =>
    item.node === 'record' ? keys.map((key) => textAt(item, key) ?? '').join(' ') : meaningWords(item),
  );
  return words.sort().join('|');
}

function fieldEdit(owner: Rec, key: string, node: Node | undefined): Edit {
  return { is: 'field', owner, key, node };
}

function changeOf(draft: Draft, old: Entity, now: Entity): Change {
  const before = sideOf(draft, 'before', old);
  const after = sideOf(draft, 'after', now);
  const type = correctedClass(draft.class, before, after);
  const entity = entityName(now);
  const path = (after ?? before)?.path ?? draft.afterPath;
  const said = [draft.before, draft.after].map((node) => (node === undefined ? '' : contentOf(node)));
  const moved = draft.moved === undefined ? said : [draft.words?.before ?? '', draft.words?.after ?? ''];
  const because =
    type === 'correction' && draft.class !== type ? 'the page no longer prints two units that differ' : draft.because;
  return {
    fingerprint: nameOfText([entity, draft.beforePath, draft.afterPath, ...moved].join('\n')),
    entity,
    path,
    class: type,
    action: defaultActions[type],
    ...(because !== undefined && { because }),
    ...(before && { before }),
    ...(after && { after }),
    ...(draft.edit && isDerivable(type) && { edit: draft.edit }),
  };
}

/** Wording and citations are read by nothing that is derived. */
function isDerivable(type: ChangeClass): boolean {
  return type !== 'editorial' && type !== 're-citation';
}

function sideOf(draft: Draft, side: 'before' | 'after', entity: Entity): Side | undefined {
  const node = draft[side];
  if (node === undefined) return undefined;
  const near = side === 'before' ? draft.beforeSrc : draft.afterSrc;
  // A passage cited by the section around it does not say that this value is silent.
  const src = isSilent(node) ? citationIn(node) : near;
  const isPassage = node.node === 'record' && 'quote' in node;
  const own = isPassage ? [sayingOf(node as Parameters<typeof sayingOf>[0], node.at)] : sayingsOf(entity, src);
  const words = draft.words?.[side] ?? (isPassage ? `“${own[0]?.quote ?? ''}”` : meaningWords(node));
  return { path: side === 'before' ? draft.beforePath : draft.afterPath, at: node.at, words, says: own };
}

function isSilent(node: Node): boolean {
  const silent = node.node === 'record' ? fieldAt(node, 'silent') : undefined;
  return silent?.node === 'flag' && silent.on;
}

/** The page printed one value in two units that did not agree, and now they do. */
function correctedClass(type: ChangeClass, before: Side | undefined, after: Side | undefined): ChangeClass {
  if (type !== 'stricter' && type !== 'looser' && type !== 'different') return type;
  if (before === undefined || after === undefined) return type;
  const wrong = (side: Side) => side.says.some(({ quote }) => quote !== '' && hasWrongPair(quote));
  return wrong(before) && !wrong(after) ? 'correction' : type;
}

/** Every lost passage is reported by some change: by those of values that cited it, else by one of its own. */
function lostOf(walk: Walk, changes: readonly Change[], entity: string, id: string, saying: Saying): LostStatement {
  const drafts = new Set(citing(walk, walk.drafts, id, 'before'));
  const own = joined('statements', id);
  const reportedBy = walk.drafts.flatMap((draft, at) => {
    const change = drafts.has(draft) || draft.beforePath === own ? changes[at] : undefined;
    return change === undefined || change.class === 're-citation' ? [] : [change.fingerprint];
  });
  return { entity, id, saying, reportedBy };
}

/** Two changes of one name would be signed as one. */
function withoutTwins(changes: readonly Change[]): Change[] {
  const count = new Map<string, number>();
  return changes.map((change) => {
    const times = (count.get(change.fingerprint) ?? 0) + 1;
    count.set(change.fingerprint, times);
    return times === 1 ? change : { ...change, fingerprint: nameOfText(`${change.fingerprint} ${times}`) };
  });
}

export function byClass(a: Change, b: Change): number {
  return (
    changeClasses.indexOf(a.class) - changeClasses.indexOf(b.class) ||
    compareText(a.entity, b.entity) ||
    compareText(a.path, b.path)
  );
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
