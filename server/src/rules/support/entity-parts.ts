import type { AnyEntity } from '../../model/entity.ts';
import type { Citation, Node, Requirement } from '../../model/node.ts';
import { childrenOf, fieldOf, isRequirement } from '../../model/walk.ts';

/** A requirement with the citation that speaks for it: its own, else that of the nearest thing around it. */
export interface CitedRequirement {
  readonly requirement: Requirement;
  readonly src: Citation | undefined;
}

export interface EntityParts {
  readonly requirements: readonly CitedRequirement[];
  readonly citations: readonly Citation[];
}

const known = new WeakMap<AnyEntity, EntityParts>();

/** All requirements and citations of an entity in the order of the file: found in one walk that many rules share, since entities never change. */
export function partsOf(entity: AnyEntity): EntityParts {
  const parts = known.get(entity);
  if (parts !== undefined) return parts;
  const found = { requirements: [] as CitedRequirement[], citations: [] as Citation[] };
  collect(entity, undefined, found);
  known.set(entity, found);
  return found;
}

function collect(
  node: Node,
  around: Citation | undefined,
  found: { requirements: CitedRequirement[]; citations: Citation[] },
): void {
  if (node.node === 'citation') found.citations.push(node);
  const own = node.node === 'record' ? fieldOf(node, 'src') : undefined;
  const src = own?.node === 'citation' ? own : around;
  if (isRequirement(node)) found.requirements.push({ requirement: node, src });
  if (node.node === 'record' || node.node === 'list' || node.node === 'table') {
    for (const child of childrenOf(node)) collect(child, src, found);
  }
}
