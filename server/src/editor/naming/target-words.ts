import type { LibraryView } from '../../library/view.ts';
import type { AnyEntity } from '../../model/entity.ts';
import type { Node, Text } from '../../model/node.ts';
import { rootOf } from '../../model/node.ts';
import { fieldOf } from '../../model/walk.ts';
import { formatBothUnits } from '../../quantity/format.ts';
import { modalityName } from '../../rules/support/modality-words.ts';
import type { Block } from '../writing/text-blocks.ts';
import { targetsOf } from './targets.ts';

/** A line about what an id names. Statements are left out: their quote is shown by itself. */
export function describeTarget(text: Text, entity: AnyEntity, view: LibraryView): readonly Block[] {
  if (text.refers?.includes('statement') === true) return [];
  const targets = targetsOf(text, entity, view);
  return targets.slice(0, 3).flatMap(({ node }) => [{ block: 'heading', text: nameOf(node) }, ...cycleBlocks(node)]);
}

const cycleFields: readonly (readonly [field: string, name: string])[] = [
  ['temp', 'temperature'],
  ['exposure', 'exposure'],
  ['dry', 'drying'],
];

/** What a machine does in the cycle that is named. */
function cycleBlocks(node: Node): readonly Block[] {
  if (node.node !== 'record' || node.at.parent === undefined) return [];
  const said = cycleFields.flatMap(([field, name]) => {
    const value = fieldOf(node, field);
    return value?.node === 'quantity' && value.problem === undefined ? [`${name} ${formatBothUnits(value)}`] : [];
  });
  const words = said.join(', ');
  return words === '' ? [] : [{ block: 'line', text: `${words.charAt(0).toUpperCase()}${words.slice(1)}.` }];
}

function nameOf(node: Node): string {
  const { kind, id, file } = rootOf(node.at);
  if (node.at.parent !== undefined) return `${partWords(node)} of ${kind} ${id} (${file})`;
  const words = kind === 'document' ? documentWords(node) : firstText(node, ['name', 'title']);
  return `${kind} ${id}${words === '' ? '' : `: ${words}`} (${file})`;
}

function partWords(node: Node): string {
  const name = firstText(node, ['name']);
  const modality = firstText(node, ['modality']);
  if (name !== '' || modality === '') return name || firstText(node, ['id']);
  return `${firstText(node, ['id'])}, ${modalityName(modality)},`;
}

function documentWords(node: Node): string {
  const status = firstText(node, ['status']);
  return `revision ${firstText(node, ['rev'])}${status === '' ? '' : `, ${status}`}`;
}

export function firstText(node: Node, keys: readonly string[]): string {
  for (const key of keys) {
    const found = node.node === 'record' ? fieldOf(node, key) : undefined;
    if (found?.node === 'text' || found?.node === 'quantity' || found?.node === 'date') return found.text;
  }
  return '';
}
