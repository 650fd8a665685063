import type { Node } from '../model/node.ts';
import { childrenOf } from '../model/walk.ts';

/** A node and everything inside it, outermost first; for parts of an entity. */
export function nodesUnder(node: Node): readonly Node[] {
  const found: Node[] = [node];
  for (const child of childrenOf(node)) found.push(...nodesUnder(child));
  return found;
}
