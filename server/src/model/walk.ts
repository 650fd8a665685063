import { Remembered } from '../base/remembered.ts';
import type { Node, Rec, Requirement, Table } from './node.ts';

/** The nodes directly inside `node`, in source order of their fields. */
export function childrenOf(node: Node): readonly Node[] {
  switch (node.node) {
    case 'record':
      return valuesOf(node);
    case 'list':
      return node.items;
    case 'table':
      return Array.from(node.rows.values(), (row) => row.value);
    case 'citation':
      return node.statements;
    default:
      return none;
  }
}

const none: readonly Node[] = [];

function valuesOf(record: Rec): readonly Node[] {
  const values: Node[] = [];
  for (const key in record) {
    if (key === 'node' || key === 'at') continue;
    const value: unknown = (record as unknown as Record<string, unknown>)[key];
    if (typeof value === 'object' && value !== null && 'node' in value) values.push(value as Node);
  }
  return values;
}

/** Shows `node` and everything inside it, outermost first. */
export function eachNode(node: Node, see: (one: Node) => void): void {
  see(node);
  for (const child of childrenOf(node)) eachNode(child, see);
}

/** `node` and everything inside it, outermost first. */
export function nodesIn(node: Node): readonly Node[] {
  return node.at.parent === undefined ? walked.of(node) : walk(node);
}

/**
 * Of whole entities: they never change, so that the walk that many readers share is made once. Readers come to an entity together, so few
 * are remembered.
 */
const walked = new Remembered(64, walk);

function walk(node: Node): readonly Node[] {
  const found: Node[] = [];
  eachNode(node, (one) => found.push(one));
  return found;
}

/** A record of the requirement form: what the instruction demands of one parameter. */
export function isRequirement(node: Node): node is Requirement {
  return node.node === 'record' && 'dimension' in node;
}

export function requirementsIn(node: Node): readonly Requirement[] {
  return nodesIn(node).filter(isRequirement);
}

/** The value under `key`, or undefined. */
export function rowOf<Value>(table: Table<Value> | undefined, key: string): Value | undefined {
  return table?.rows.get(key)?.value;
}

/** Whether the file holds the field, be it in a form that can't be read. */
export function isWritten(record: Rec, key: string): boolean {
  return fieldOf(record, key) !== undefined || record.unread?.includes(key) === true;
}

/** A field of a record by name, for walkers that serve every kind. */
export function fieldOf(record: Rec, key: string): Node | undefined {
  if (key === 'node' || key === 'at' || key === 'unread' || !Object.hasOwn(record, key)) return undefined;
  return (record as unknown as Record<string, Node | undefined>)[key] ?? undefined;
}
