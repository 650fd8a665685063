import type { Quantity, Requirement } from '../model/node.ts';
import { intervalOf } from '../quantity/bound.ts';
import { formatIn, formatQuantity } from '../quantity/format.ts';
import { intersectAll, isEmpty } from '../quantity/interval.ts';
import type { Dimension } from '../quantity/quantity.ts';
import { boundsOf, boundUnit } from './bounds.ts';
import { unitNamed } from './unit-named.ts';

/** What the department's choice gives: from `low` to `high` in the base unit of the dimension, and how to say it. */
export interface Given {
  readonly low: number;
  readonly high: number;
  readonly words: string;
  /** The amount as written, when it is one. */
  readonly written?: Quantity;
}

const givens = new WeakMap<Quantity, Given>();

/** One amount of a machine, set or step. Undefined when there is none, or when its text is not a usable amount. */
export function givenOf(quantity: Quantity | undefined): Given | undefined {
  if (quantity === undefined || quantity.problem !== undefined) return undefined;
  const known = givens.get(quantity);
  if (known !== undefined) return known;
  const given = { low: quantity.value, high: quantity.value, words: formatQuantity(quantity), written: quantity };
  givens.set(quantity, given);
  return given;
}

/** A value worked out from others, in the base unit of the dimension. */
export function givenValue(value: number, dimension: Dimension, unit?: string): Given {
  return { low: value, high: value, words: formatIn(value, unitNamed(dimension, unit)) };
}

const labels = new WeakMap<Requirement, { readonly given: Given | undefined }>();

/** What a label promises, such as the pH in use of a detergent: every value it allows must fit. Undefined when it leaves an end open. */
export function givenByLabel(label: Requirement | undefined): Given | undefined {
  if (label === undefined) return undefined;
  let known = labels.get(label);
  if (known === undefined) {
    known = { given: readLabel(label) };
    labels.set(label, known);
  }
  return known.given;
}

/** An "approximately" on a label still names the value that must fit. */
function readLabel(label: Requirement): Given | undefined {
  const bounds = boundsOf(label);
  if (bounds.length === 0) return undefined;
  const { low, high } = intersectAll(
    bounds.map((bound) =>
      bound.bound === 'about' ? intervalOf({ bound: 'stated', value: bound.value }) : intervalOf(bound),
    ),
  );
  if (isEmpty({ low, high }) || !Number.isFinite(low) || !Number.isFinite(high)) return undefined;
  const unit = boundUnit(label);
  const ends = low === high ? [low] : [low, high];
  return { low, high, words: ends.map((end) => formatIn(end, unit)).join(' to ') };
}
