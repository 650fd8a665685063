import { Remembered } from '../../base/remembered.ts';
import type { AnyEntity } from '../../model/entity.ts';
import type { Citation, Node, Quantity, Rec, Requirement, Text } from '../../model/node.ts';
import { childrenOf, fieldOf, isRequirement } from '../../model/walk.ts';

/** A requirement with the citation that speaks for it: its own, else that of the nearest thing around it. */
export interface CitedRequirement {
  readonly requirement: Requirement;
  readonly src: Citation | undefined;
}

/** The id of something else. */
export type Reference = Text & { readonly refers: readonly string[] };

/** All that is inside an entity, by what it is; each list in the order of the file, what is around before what is inside. */
export interface EntityParts {
  readonly records: readonly Rec[];
  readonly requirements: readonly CitedRequirement[];
  readonly quantities: readonly Quantity[];
  readonly citations: readonly Citation[];
  readonly references: readonly Reference[];
}

type Gathered = { readonly [List in keyof EntityParts]: EntityParts[List][number][] };

/** Found in one walk that many rules share, since entities never change. Rules come to an entity together, so few are remembered. */
export function partsOf(entity: AnyEntity): EntityParts {
  return sorted.of(entity);
}

const sorted = new Remembered(64, (entity: AnyEntity): EntityParts => {
  const found: Gathered = { records: [], requirements: [], quantities: [], citations: [], references: [] };
  collect(entity, undefined, found);
  return found;
});

function collect(node: Node, around: Citation | undefined, found: Gathered): void {
  switch (node.node) {
    case 'text':
      if (isReference(node)) found.references.push(node);
      return;
    case 'quantity':
      found.quantities.push(node);
      return;
    case 'citation':
      found.citations.push(node);
      break;
    case 'record':
      found.records.push(node);
      break;
    default:
  }
  const own = node.node === 'record' ? fieldOf(node, 'src') : undefined;
  const src = own?.node === 'citation' ? own : around;
  if (isRequirement(node)) found.requirements.push({ requirement: node, src });
  for (const child of childrenOf(node)) collect(child, src, found);
}

function isReference(text: Text): text is Reference {
  return text.refers !== undefined;
}
