import { requirementWords } from '../judge/bounds.ts';
import { fieldAt, keysOf } from '../model/content.ts';
import type { Node, Rec } from '../model/node.ts';
import { isRequirement } from '../model/walk.ts';
import { formatQuantity } from '../quantity/format.ts';
import { recordKeepingFields } from './fields.ts';

const longest = 240;

/** What a part of a file says, short enough for one cell of a table. */
export function meaningWords(node: Node): string {
  const words = wordsOf(node);
  return words.length > longest ? `${words.slice(0, longest)}…` : words;
}

function wordsOf(node: Node): string {
  switch (node.node) {
    case 'text':
    case 'date':
      return node.text;
    case 'flag':
      return node.on ? 'yes' : 'no';
    case 'quantity':
      return node.problem === undefined ? formatQuantity(node) : node.text;
    case 'citation':
      return node.statements.map(({ text }) => text).join(', ');
    case 'list':
      return node.items.length === 0 ? 'none' : node.items.map(wordsOf).join(', ');
    case 'table':
      return [...node.rows].map(([key, { value }]) => `${key} ${wordsOf(value)}`).join(', ');
    case 'record':
      return isRequirement(node) ? demandWords(node) : recordWords(node);
  }
}

function demandWords(requirement: Parameters<typeof requirementWords>[0]): string {
  const strength = requirement.strength === undefined ? '' : ` (${requirement.strength.text})`;
  const when = requirement.when === undefined ? '' : `, only when ${requirement.when.text}`;
  return `${requirementWords(requirement)}${strength}${when}`;
}

function recordWords(record: Rec): string {
  const parts: string[] = [];
  for (const key of keysOf(record)) {
    const field = fieldAt(record, key);
    if (field === undefined || key === 'src' || recordKeepingFields.has(key)) continue;
    if (key === 'silent') parts.push('the document is silent');
    else
      parts.push(key === 'id' || key === 'what' || key === 'do' ? wordsOf(field) : `${spoken(key)} ${wordsOf(field)}`);
  }
  return parts.join(', ');
}

/** `each_use` as people say it. */
export function spoken(key: string): string {
  return key.replaceAll('_', ' ');
}
