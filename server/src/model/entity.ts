import type { Kind } from '../schema/kinds.ts';
import type { EntityOf } from './entities.generated.ts';
import type { Rec, Root } from './node.ts';
import { rootOf } from './node.ts';

/** Any rule file's entity. */
export type AnyEntity = EntityOf[Kind];

export function rootOfEntity(entity: Rec): Root {
  return rootOf(entity.at);
}

/** Narrows an entity to the kind that its file declares. */
export function isOfKind<K extends Kind>(entity: AnyEntity, kind: K): entity is EntityOf[K] & AnyEntity {
  return rootOfEntity(entity).kind === kind;
}

/** `device "pale-forceps"`: how an entity is named in a sentence. */
export function nameOf(entity: Rec): string {
  const { kind, id } = rootOfEntity(entity);
  return `${kind} "${id}"`;
}
