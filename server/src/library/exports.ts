import type { AnyEntity } from '../model/entity.ts';
import { isOfKind, rootOfEntity } from '../model/entity.ts';
import type { Node } from '../model/node.ts';
import { nodesIn } from '../model/walk.ts';
import type { Kind } from '../schema/kinds.ts';
import { isKind } from '../schema/kinds.ts';
import type { IndexKey } from './keys.ts';
import { catalogueKey, documentKey, entityKey, kindKey, usersKey } from './keys.ts';

/** Every key under which readers can come upon this entity. */
export function exportsOf(entity: AnyEntity): ReadonlySet<IndexKey> {
  const { kind, id } = rootOfEntity(entity);
  const keys = new Set<IndexKey>([entityKey(kind, id), kindKey(kind)]);
  for (const node of nodesIn(entity)) addUses(node, keys);
  if (isOfKind(entity, 'document') && entity.doc !== undefined) keys.add(documentKey(entity.doc.text));
  if (isOfKind(entity, 'device')) for (const number of entity.covers?.items ?? []) keys.add(catalogueKey(number.text));
  return keys;
}

function addUses(node: Node, keys: Set<IndexKey>): void {
  if (node.node !== 'text' || node.refers === undefined) return;
  for (const kind of node.refers) if (isKind(kind)) keys.add(usersKey(kind, node.text));
}

export function exportsOfUnreadable(kind: Kind, id: string): ReadonlySet<IndexKey> {
  return new Set([entityKey(kind, id), kindKey(kind)]);
}
