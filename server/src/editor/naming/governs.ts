import { called } from '../../library/called.ts';
import type { LibraryView } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind, rootOfEntity } from '../../model/entity.ts';
import type { Node } from '../../model/node.ts';
import { governingOfSet } from '../../route/explanation.ts';
import type { GoverningRow } from '../../route/model.ts';
import type { Block } from '../writing/text-blocks.ts';

/** A set in which this entity governs a parameter. */
export interface Governing {
  readonly set: string;
  readonly row: GoverningRow;
}

/** More sets than this are not worked through for one hover or lens: a large library answers later, not slowly. */
const mostSets = 40;

/** The sets that hold a device, or use a packaging. */
export function setsWith(entity: AnyEntity, view: LibraryView): readonly EntityOf['set'][] {
  const { kind, id } = rootOfEntity(entity);
  return kind === 'device' || kind === 'packaging' ? view.users(kind, id, 'set') : [];
}

/** Where this entity governs, over the sets that use it. */
export function governsIn(entity: AnyEntity, view: LibraryView): readonly Governing[] {
  const { kind, id } = rootOfEntity(entity);
  const who = `${kind}/${id}`;
  return setsWith(entity, view)
    .slice(0, mostSets)
    .flatMap((set) => {
      const name = rootOfEntity(set).id;
      const rows = view.ask(governingOfSet, name).filter(({ governedBy }) => governedBy.some((one) => one.who === who));
      return rows.map((row) => ({ set: name, row }));
    });
}

/** For the value under the pointer: the sets in which it is the one that decides. */
export function governsBlocks(entity: AnyEntity, chain: readonly Node[], view: LibraryView): readonly Block[] {
  if (!isOfKind(entity, 'device') && !isOfKind(entity, 'packaging')) return [];
  const { kind, id } = rootOfEntity(entity);
  const here = new Set(chain.slice(1).map(({ at }) => at.span.start));
  const lines: Block[] = [];
  for (const { set, row } of governsIn(entity, view)) {
    const isHere = row.governedBy.some((one) => one.who === `${kind}/${id}` && here.has(one.at.span.start));
    if (isHere)
      lines.push({
        block: 'line',
        text: `Governs in the set ${called('set', set, view)}: ${row.parameter} ${row.required}.`,
      });
  }
  return lines.slice(0, 8);
}
