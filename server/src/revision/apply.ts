import type { Node, Rec, Text } from '../model/node.ts';
import type { Edit } from './change.ts';

/** The entity with one change made; everything else stays the very same object. */
export function withEdit<Entity extends Rec>(entity: Entity, edit: Edit): Entity {
  return replaced(entity, edit) as Entity;
}

function replaced(node: Node, edit: Edit): Node {
  if (node === edit.owner) return editedOwner(node, edit);
  switch (node.node) {
    case 'record':
      return replacedRecord(node, edit);
    case 'list': {
      const items = node.items.map((item) => replaced(item, edit));
      return items.some((item, at) => item !== node.items[at]) ? { ...node, items } : node;
    }
    case 'table': {
      const rows = new Map(node.rows);
      let changed = false;
      for (const [key, row] of node.rows) {
        const value = replaced(row.value, edit);
        changed ||= value !== row.value;
        rows.set(key, { ...row, value });
      }
      return changed ? { ...node, rows } : node;
    }
    default:
      return node;
  }
}

function replacedRecord(record: Rec, edit: Edit): Rec {
  let copy: Record<string, unknown> | undefined;
  for (const [key, value] of Object.entries(record)) {
    if (!isNode(key, value)) continue;
    const other = replaced(value, edit);
    if (other === value) continue;
    copy ??= { ...record };
    copy[key] = other;
  }
  return (copy ?? record) as Rec;
}

function editedOwner(owner: Node, edit: Edit): Node {
  if (edit.is === 'list') return owner.node === 'list' ? { ...owner, items: edit.items } : owner;
  if (edit.is === 'row') {
    if (owner.node !== 'table') return owner;
    const rows = new Map(owner.rows);
    if (edit.row === undefined) rows.delete(edit.key);
    else rows.set(edit.key, edit.row);
    return { ...owner, rows };
  }
  const copy: Record<string, unknown> = { ...owner };
  if (edit.node === undefined) delete copy[edit.key];
  else copy[edit.key] = edit.node;
  return copy as unknown as Node;
}

/** The entity with every mention of one thing of this kind replaced by another. Texts that only look alike stay. */
export function renamed<Entity extends Node>(entity: Entity, kind: string, from: string, to: string): Entity {
  return rename(entity, kind, from, to) as Entity;
}

function renamedText({ node, at, refers, open }: Text, to: string): Text {
  return { node, at, text: to, ...(refers && { refers }), ...(open && { open }) };
}

function rename(node: Node, kind: string, from: string, to: string): Node {
  switch (node.node) {
    case 'text':
      return node.text === from && node.refers?.includes(kind) === true ? renamedText(node, to) : node;
    case 'record': {
      const copy: Record<string, unknown> = { ...node };
      for (const [key, value] of Object.entries(node))
        if (isNode(key, value)) copy[key] = rename(value, kind, from, to);
      return copy as unknown as Rec;
    }
    case 'list':
      return { ...node, items: node.items.map((item) => rename(item, kind, from, to)) };
    case 'table': {
      const rows = [...node.rows].map(
        ([key, row]) => [key, { ...row, value: rename(row.value, kind, from, to) }] as const,
      );
      return { ...node, rows: new Map(rows) };
    }
    default:
      return node;
  }
}

function isNode(key: string, value: unknown): value is Node {
  return key !== 'at' && typeof value === 'object' && value !== null && 'node' in value;
}
