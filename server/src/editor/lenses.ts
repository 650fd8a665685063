import type { Span } from '../base/span.ts';
import { counted } from '../base/words.ts';
import type { LibraryView } from '../library/view.ts';
import type { AnyEntity } from '../model/entity.ts';
import { isOfKind, rootOfEntity } from '../model/entity.ts';
import type { Node } from '../model/node.ts';
import { childrenOf, fieldOf, isRequirement } from '../model/walk.ts';
import { listed } from '../rules/support/lists.ts';
import { governsIn, setsWith } from './naming/governs.ts';

/** One line above a file's first line. */
export interface Lens {
  readonly at: Span;
  readonly text: string;
  /** Set when it leads to the places that name the entity. */
  readonly leadsToUses?: true;
}

/** Of a device or packaging: `in 6 sets · governs dry in 2 · 1 open question · 8 of 10 values cited`. */
export function lensesOf(entity: AnyEntity, view: LibraryView): readonly Lens[] {
  const at = entity.id?.at.span ?? { start: 0, end: 0 };
  if (!isOfKind(entity, 'device') && !isOfKind(entity, 'packaging')) return [];
  const sets = setsWith(entity, view).length;
  const parts = [...governsWords(entity, view), questionWords(entity, view), citedWords(entity)].filter(
    (part) => part !== '',
  );
  const inSets: Lens = { at, text: sets === 0 ? 'in no set' : `in ${counted(sets, 'set')}`, leadsToUses: true };
  return [inSets, ...(parts.length === 0 ? [] : [{ at, text: parts.join(' · ') }])];
}

function governsWords(entity: AnyEntity, view: LibraryView): readonly string[] {
  const sets = new Map<string, Set<string>>();
  for (const { set, row } of governsIn(entity, view))
    sets.set(row.parameter, (sets.get(row.parameter) ?? new Set()).add(set));
  const byCount = new Map<number, string[]>();
  for (const [parameter, { size }] of sets) byCount.set(size, [...(byCount.get(size) ?? []), parameter.toLowerCase()]);
  return [...byCount]
    .sort(([a], [b]) => b - a)
    .slice(0, 2)
    .map(([count, parameters]) => `governs ${listed(parameters, 4)} in ${count}`);
}

function questionWords(entity: AnyEntity, view: LibraryView): string {
  const { kind, id } = rootOfEntity(entity);
  if (kind !== 'device' && kind !== 'packaging') return '';
  const open = view
    .users(kind, id, 'question')
    .filter((question) => question.answered_by === undefined && question.closed === undefined);
  return open.length === 0 ? '' : counted(open.length, 'open question');
}

/** Values that say what a page says, and how many of them say where. */
function citedWords(entity: AnyEntity): string {
  const count = { all: 0, cited: 0 };
  countValues(entity, 'uncited', count);
  return count.all === 0 ? '' : `${count.cited} of ${counted(count.all, 'value')} cited`;
}

function countValues(node: Node, around: 'cited' | 'uncited', count: { all: number; cited: number }): void {
  const own = node.node === 'record' && fieldOf(node, 'src') !== undefined ? 'cited' : around;
  if (isRequirement(node)) {
    if (node.silent?.on === true || node.not_applicable !== undefined) return;
    count.all++;
    if (own === 'cited') count.cited++;
    return;
  }
  for (const child of childrenOf(node)) countValues(child, own, count);
}
