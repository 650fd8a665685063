import type { AnyEntity } from '../model/entity.ts';
import { isOfKind, rootOfEntity } from '../model/entity.ts';
import type { Node, Text } from '../model/node.ts';
import { eachNode } from '../model/walk.ts';
import type { Kind } from '../schema/kinds.ts';
import { isKind } from '../schema/kinds.ts';
import type { IndexKey } from './keys.ts';
import { answersKey, catalogueKey, documentKey, entityKey, forManyKey, kindKey, usersKey } from './keys.ts';

/** Every key under which readers can come upon this entity. */
export function exportsOf(entity: AnyEntity): readonly IndexKey[] {
  const { kind, id } = rootOfEntity(entity);
  const keys = new Set<IndexKey>([entityKey(kind, id), kindKey(kind)]);
  // Not by `nodesIn`, whose memory of an entity would outlive one that is read and let go.
  eachNode(entity, (node) => addUses(node, keys));
  if (isOfKind(entity, 'document') && entity.doc !== undefined) keys.add(documentKey(entity.doc.text));
  if (isOfKind(entity, 'device')) for (const number of entity.covers?.items ?? []) keys.add(catalogueKey(number.text));
  for (const cycle of isOfKind(entity, 'sterilizer') ? (entity.cycles?.items ?? []) : [])
    addCycle('cycle', cycle.id, keys);
  for (const cycle of isOfKind(entity, 'washer') ? (entity.cycles?.items ?? []) : [])
    addCycle('washer-cycle', cycle.id, keys);
  if (isOfKind(entity, 'procedure') && (entity.applies_to_all?.on === true || entity.applies_to_traits !== undefined))
    keys.add(forManyKey());
  if (isOfKind(entity, 'response') && entity.about !== undefined) keys.add(answersKey(entity.about.text));
  if (isOfKind(entity, 'waiver')) addWaived(entity.fingerprint, keys);
  // A set would take four times the room, ten thousand times.
  return [...keys];
}

function addCycle(kind: 'cycle' | 'washer-cycle', id: Text | undefined, keys: Set<IndexKey>): void {
  if (id !== undefined) keys.add(entityKey(kind, id.text));
}

/** A fingerprint begins with the name of the finding. */
function addWaived(fingerprint: Text | undefined, keys: Set<IndexKey>): void {
  const [rule] = fingerprint?.text.trim().split(' ') ?? [];
  if (rule !== undefined) keys.add(usersKey('rule', rule));
}

function addUses(node: Node, keys: Set<IndexKey>): void {
  if (node.node !== 'text' || node.refers === undefined) return;
  for (const kind of node.refers) if (isKind(kind) || isListed(kind)) keys.add(usersKey(kind, node.text));
}

/** What is named though it is no file of its own. */
function isListed(sort: string): boolean {
  return sort === 'cycle' || sort === 'washer-cycle' || sort === 'document-number' || sort === 'rule';
}

export function exportsOfUnreadable(kind: Kind, id: string): readonly IndexKey[] {
  return [entityKey(kind, id), kindKey(kind)];
}
