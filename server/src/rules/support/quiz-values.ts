import type { LibraryView } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import type { Node } from '../../model/node.ts';
import { pathOf } from '../../model/node.ts';
import { isRequirement, nodesIn } from '../../model/walk.ts';
import { isFault, parseQuantity } from '../../quantity/parse.ts';
import type { Dimension, QuantityValue } from '../../quantity/quantity.ts';
import { isKind } from '../../schema/kinds.ts';
import type { Demand } from './limits-of.ts';
import { demandOf } from './limits-of.ts';

/** What the path of a question leads to. */
export type Asked =
  | { readonly found: 'value'; readonly entity: AnyEntity; readonly node: Node }
  | { readonly found: 'no-file'; readonly kind: string; readonly id: string }
  | { readonly found: 'no-value'; readonly entity: AnyEntity };

/** `device.scissors.sterilization.any_of[pv132].dry`: kind, id, then the field. Undefined for a question that asks for no value. */
export function askedBy(quiz: EntityOf['quiz'], view: LibraryView): Asked | undefined {
  const [kind = '', id = '', ...rest] = quiz.path?.text.split('.') ?? [];
  if (quiz.path === undefined) return undefined;
  const entity = isKind(kind) ? view.get(kind, id) : undefined;
  if (entity === undefined) return { found: 'no-file', kind, id };
  const path = rest.join('.');
  const node = nodesIn(entity).find((one) => pathOf(one.at) === path);
  return node === undefined || path === '' ? { found: 'no-value', entity } : { found: 'value', entity, node };
}

/** The numbers that satisfy it; undefined where it is no number. */
export function allowedBy(node: Node): (Demand & { readonly dimension: Dimension }) | undefined {
  if (node.node === 'quantity') {
    if (node.problem !== undefined) return undefined;
    return { low: node.value, high: node.value, lowest: node, highest: node, dimension: node.dimension };
  }
  if (!isRequirement(node)) return undefined;
  const demand = demandOf(node);
  return demand === undefined ? undefined : { ...demand, dimension: node.dimension };
}

/** An answer as a number of this dimension. */
export function answerOf(text: string, dimension: Dimension): QuantityValue | undefined {
  const read = parseQuantity(text, dimension);
  return isFault(read) ? undefined : read;
}

/** Texts of answers are the same whatever their case and spaces. */
export function isSameText(a: string, b: string): boolean {
  return a.trim().toLowerCase() === b.trim().toLowerCase();
}
