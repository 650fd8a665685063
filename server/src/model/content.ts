import { nameOfText } from '../base/mix.ts';
import type { Node, Quantity, Rec } from './node.ts';
import { childrenOf } from './walk.ts';

/**
 * What a node says, as one text: the same for any layout, key order, unit spelling or unit of the same dimension. Comments and places have
 * no part in it. Lists keep their order: whether order has a meaning is for the reader of the list to know.
 */
export function contentOf(node: Node): string {
  return contentWithout(node, nothing);
}

/** The same, as if the fields of these names were not there, however deep. */
export function contentWithout(node: Node, leftOut: ReadonlySet<string>): string {
  switch (node.node) {
    case 'text':
    case 'date':
      return JSON.stringify(tidy(node.text));
    case 'flag':
      return String(node.on);
    case 'quantity':
      return quantityContent(node);
    case 'citation':
      return citationContent(node);
    case 'list':
      return `[${node.items.map((item) => contentWithout(item, leftOut)).join(',')}]`;
    case 'table':
      return `{${[...node.rows]
        .map(([key, { value }]) => `${JSON.stringify(key)}:${contentWithout(value, leftOut)}`)
        .sort()
        .join(',')}}`;
    case 'record':
      return `{${keysOf(node)
        .filter((key) => !leftOut.has(key))
        .map((key) => `${key}:${contentWithout(fieldAt(node, key) as Node, leftOut)}`)
        .sort()
        .join(',')}}`;
  }
}

const nothing: ReadonlySet<string> = new Set();

/** The stamp of an entity's content: each edit of a value, a quote or a note changes it; layout and comments do not. */
export function stampOf(entity: Rec): string {
  return nameOfText(contentOf(entity));
}

/** Names of the fields that a record has, in the order of its file. */
export function keysOf(record: Rec): readonly string[] {
  const keys: string[] = [];
  for (const key of Object.keys(record)) if (fieldAt(record, key) !== undefined) keys.push(key);
  return keys;
}

export function fieldAt(record: Rec, key: string): Node | undefined {
  const value = (record as unknown as Record<string, unknown>)[key];
  return typeof value === 'object' && value !== null && 'node' in value ? (value as Node) : undefined;
}

/** Spaces and accents as stored say nothing. */
export function tidy(text: string): string {
  return text.normalize('NFC').replace(/\s+/g, ' ').trim();
}

/** Converted numbers differ in the last digits of their binary form. */
function quantityContent({ problem, text, dimension, value, reference }: Quantity): string {
  if (problem !== undefined) return JSON.stringify(tidy(text));
  return `${Number(value.toPrecision(9))} ${dimension}${reference === undefined ? '' : ` ${reference}`}`;
}

function citationContent(node: Extract<Node, { node: 'citation' }>): string {
  const inline = Object.entries(node.inline ?? {}).map(([key, part]) => `${key}:${JSON.stringify(part?.text ?? '')}`);
  return `(${[...childrenOf(node).map(contentOf).sort(), ...inline.sort()].join(',')})`;
}
