import type { Node, Quantity, Rec, Requirement } from '../../model/node.ts';
import { childrenOf, fieldOf, isRequirement, nodesIn } from '../../model/walk.ts';

/** Parts of a file that say nothing of a maker's instruction. */
const notDemands: ReadonlySet<string> = new Set(['statements', 'sources', 'review', 'notes', 'overrides']);
const useWords: ReadonlySet<string> = new Set(['allowed', 'required', 'recommended', 'forbidden']);

/**
 * Records that demand, allow or forbid something and cite nothing, nor does anything around them or inside them: the outermost of each,
 * since one citation there would serve all of it.
 */
export function uncitedDemands(entity: Rec): readonly Rec[] {
  const found: Rec[] = [];
  if (fieldOf(entity, 'src') !== undefined) return found;
  for (const child of childrenOf(entity)) if (!notDemands.has(String(child.at.key))) collect(child, found);
  return found;
}

function collect(node: Node, found: Rec[]): void {
  if (node.node === 'record') {
    if (isCited(node)) return;
    if (isDemand(node) && !citesInside(node)) {
      found.push(node);
      return;
    }
  }
  for (const child of childrenOf(node)) collect(child, found);
}

function isCited(record: Rec): boolean {
  return fieldOf(record, 'src') !== undefined || (isRequirement(record) && record.doc !== undefined);
}

function citesInside(record: Rec): boolean {
  return nodesIn(record).some((node) => node.node === 'citation' || (node.node === 'record' && isCited(node)));
}

function isDemand(record: Rec): boolean {
  if (isRequirement(record)) return amountsIn(record).length > 0 || record.ambiguous !== undefined;
  const use = fieldOf(record, 'use');
  if (use?.node === 'text') return useWords.has(use.text);
  if (isMeasured(record)) return true;
  return isProhibition(record) || fieldOf(record, 'modality') !== undefined || fieldOf(record, 'stage') !== undefined;
}

function isProhibition(record: Rec): boolean {
  const list = record.at.parent?.key;
  return list === 'not' || list === 'avoid';
}

/** A bore with its size: whether a brush or a cycle fits hangs on it. */
function isMeasured(record: Rec): boolean {
  const isLumen = record.at.parent?.key === 'lumens';
  return isLumen && (fieldOf(record, 'bore') !== undefined || fieldOf(record, 'length') !== undefined);
}

/** The numbers of a requirement that can be read, whichever bound word they stand under. */
export function amountsIn(requirement: Requirement): readonly Quantity[] {
  const { at_least, at_most, exactly, stated, about, between } = requirement;
  const all = [at_least, at_most, exactly, stated, about, ...(between?.items ?? [])];
  return all.filter((one) => one !== undefined);
}
