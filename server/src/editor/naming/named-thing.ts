import type { FileId } from '../../base/brand.ts';
import type { Span } from '../../base/span.ts';
import type { Library } from '../../library/library.ts';
import type { LibraryView } from '../../library/view.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { rootOfEntity } from '../../model/entity.ts';
import type { Node, Text } from '../../model/node.ts';
import { rootOf } from '../../model/node.ts';
import { fieldOf, nodesIn } from '../../model/walk.ts';
import type { Kind } from '../../schema/kinds.ts';
import { isKind, kinds } from '../../schema/kinds.ts';
import { nodesAt } from './locate.ts';
import { targetsOf } from './targets.ts';

/** Something that has an id: an entity, a cycle, a statement, a lumen, ... `sort` is what references to it call it. */
export interface NamedThing {
  readonly sort: string;
  readonly id: string;
  /** The entity it is, or lies in. */
  readonly entity: AnyEntity;
  /** Where its id is given. */
  readonly at: Span;
}

/** A place where an id stands. */
export interface IdPlace {
  readonly file: FileId;
  readonly span: Span;
}

/** What is named at `offset`: the thing whose id stands there, be it where it is given or where it is used. */
export function namedThingAt(entity: AnyEntity, offset: number, view: LibraryView): NamedThing | undefined {
  const own = ownIdAt(entity, offset);
  if (own !== undefined) return own;
  const chain = nodesAt(entity, offset);
  const text = chain[chain.length - 1];
  if (text?.node !== 'text' || text.refers === undefined) return undefined;
  const { span } = text.at;
  if (offset < span.start || offset > span.end) return undefined;
  const [target] = targetsOf(text, entity, view);
  return target === undefined ? undefined : thingOf(target.node, text, view);
}

function thingOf(node: Node, text: Text, view: LibraryView): NamedThing | undefined {
  const { kind, id } = rootOf(node.at);
  const entity = node.at.parent === undefined ? (node as AnyEntity) : view.get(kind, id);
  if (entity === undefined) return undefined;
  const offset = idSpanOf(node)?.start;
  return offset === undefined ? undefined : (ownIdAt(entity, offset) ?? sortless(text, entity, node));
}

function sortless(text: Text, entity: AnyEntity, node: Node): NamedThing | undefined {
  const [sort] = text.refers ?? [];
  const at = idSpanOf(node);
  return sort === undefined || at === undefined ? undefined : { sort, id: text.text, entity, at };
}

function idSpanOf(node: Node): Span | undefined {
  const id = node.node === 'record' ? fieldOf(node, 'id') : undefined;
  return id?.at.span ?? node.at.keySpan;
}

/** The thing whose id is given at `offset`. */
function ownIdAt(entity: AnyEntity, offset: number): NamedThing | undefined {
  const root = rootOfEntity(entity);
  const holds = ({ start, end }: Span): boolean => start <= offset && offset <= end;
  const ownId = fieldOf(entity, 'id');
  if (ownId?.node === 'text' && holds(ownId.at.span))
    return { sort: root.kind, id: ownId.text, entity, at: ownId.at.span };
  const statements = fieldOf(entity, 'statements');
  if (statements?.node === 'table') {
    for (const [id, { key }] of statements.rows) {
      if (holds(key.at.span)) return { sort: 'statement', id, entity, at: key.at.span };
    }
  }
  return partIdAt(entity, root.kind, offset);
}

function partIdAt(entity: AnyEntity, kind: Kind, offset: number): NamedThing | undefined {
  const chain = nodesAt(entity, offset);
  const text = chain[chain.length - 1];
  if (text?.node !== 'text' || text.at.key !== 'id' || text.refers !== undefined) return undefined;
  const topField = String(chain[1]?.at.key ?? '');
  const sort = partSort(kind, topField);
  return sort === undefined ? undefined : { sort, id: text.text, entity, at: text.at.span };
}

/** What references call things with an id inside a file, by the kind of file and the field that they stand under. */
function partSort(kind: Kind, field: string): string | undefined {
  if (field === 'cycles') return kind === 'washer' ? 'washer-cycle' : kind === 'sterilizer' ? 'cycle' : undefined;
  const sorts: Readonly<Record<string, string>> = {
    lumens: 'lumen',
    parts: 'part',
    sterilization: 'option',
    cleaning: 'cleaning-node',
  };
  return sorts[field];
}

/** Sorts of things that other files may name. */
export function isShared(sort: string): boolean {
  return isKind(sort) || sort === 'cycle' || sort === 'washer-cycle';
}

/** Every place that names the thing, in the order of files; the place where its id is given is not among them. */
export function usesOf(thing: NamedThing, library: Library, view: LibraryView): readonly IdPlace[] {
  const places: IdPlace[] = [];
  for (const entity of entitiesThatMayName(thing, library, view)) {
    const { file } = rootOfEntity(entity);
    for (const node of nodesIn(entity)) {
      for (const text of textsIn(node)) {
        const isOwn = entity === thing.entity && text.at.span.start === thing.at.start;
        if (!isOwn && names(text, thing, view)) places.push({ file, span: text.at.span });
      }
    }
  }
  return places;
}

function textsIn(node: Node): readonly Text[] {
  return node.node === 'text' ? [node] : [];
}

function entitiesThatMayName(
  { sort, id, entity }: NamedThing,
  library: Library,
  view: LibraryView,
): readonly AnyEntity[] {
  if (!isShared(sort)) return [entity];
  const found = new Set<AnyEntity>();
  const shared = sort as Kind | 'cycle' | 'washer-cycle';
  for (const kind of kinds) for (const user of view.users(shared, id, kind)) found.add(user as AnyEntity);
  return library.files().flatMap((file) => {
    const user = library.record(file)?.entity;
    return user !== undefined && found.has(user) ? [user] : [];
  });
}

/** A reference that may name several sorts means the first of them that exists. */
function names(text: Text, { sort, id }: NamedThing, view: LibraryView): boolean {
  if (text.text !== id || text.refers === undefined) return false;
  const refers = text.refers.includes('any') ? kinds : text.refers;
  if (!refers.includes(sort)) return false;
  const earlier = refers.slice(0, refers.indexOf(sort));
  return earlier.every((kind) => !isKind(kind) || !view.exists(kind, id));
}
