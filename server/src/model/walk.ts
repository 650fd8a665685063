import type { Node, Rec, Requirement, Table } from './node.ts';

/** The nodes directly inside `node`, in source order of their fields. */
export function* childrenOf(node: Node): Iterable<Node> {
  switch (node.node) {
    case 'record':
      for (const value of Object.values(node)) {
        if (typeof value === 'object' && value !== null && 'node' in value) yield value as Node;
      }
      return;
    case 'list':
      yield* node.items;
      return;
    case 'table':
      for (const row of node.rows.values()) yield row.value;
      return;
    case 'citation':
      yield* node.statements;
      return;
    default:
  }
}

/** `node` and everything inside it, outermost first. */
export function* nodesIn(node: Node): Iterable<Node> {
  yield node;
  for (const child of childrenOf(node)) yield* nodesIn(child);
}

/** A record of the requirement form: what the instruction demands of one parameter. */
export function isRequirement(node: Node): node is Requirement {
  return node.node === 'record' && 'dimension' in node;
}

export function* requirementsIn(node: Node): Iterable<Requirement> {
  for (const inner of nodesIn(node)) if (isRequirement(inner)) yield inner;
}

/** The value under `key`, or undefined. */
export function rowOf<Value>(table: Table<Value> | undefined, key: string): Value | undefined {
  return table?.rows.get(key)?.value;
}

/** A field of a record by name, for walkers that serve every kind. */
export function fieldOf(record: Rec, key: string): Node | undefined {
  return key === 'node' || key === 'at' ? undefined : ((record as unknown as Record<string, Node | undefined>)[key] ?? undefined);
}
