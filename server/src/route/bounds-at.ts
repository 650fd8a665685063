import { boundsOf, boundUnit } from '../judge/bounds.ts';
import type { Judgement } from '../judge/outcome.ts';
import { bareReading } from '../judge/policies.ts';
import type { Setting } from '../judge/setting.ts';
import { unitNamed } from '../judge/unit-named.ts';
import { isHighestIfBare } from '../judge/value.ts';
import type { Node, Place } from '../model/node.ts';
import { isRequirement, nodesIn } from '../model/walk.ts';
import type { Bound } from '../quantity/bound.ts';
import { intervalOf } from '../quantity/bound.ts';
import type { Interval } from '../quantity/interval.ts';
import { everything, intersectAll } from '../quantity/interval.ts';
import type { Unit } from '../quantity/unit-list.ts';

/** What a demand allows, in the base unit, and the unit to say it in. */
export interface Allowed {
  readonly interval: Interval;
  readonly unit: Unit;
}

const indexes = new WeakMap<Node, Map<Place, Node>>();

/** What the demand of a judgement allows, found at its place in the entity of whoever demands it. Undefined where it is no number. */
export function allowedBy(judgement: Judgement, entity: Node, setting: Setting): Allowed | undefined {
  const node = indexOf(entity).get(judgement.demandAt);
  if (node === undefined) return undefined;
  if (node.node === 'quantity') {
    const interval = { low: Number.NEGATIVE_INFINITY, high: node.value };
    return node.problem === undefined ? { interval, unit: unitNamed(node.dimension, node.unit) } : undefined;
  }
  if (node.node !== 'record') return undefined;
  if (!isRequirement(node)) return fromThreshold(node);
  const meant = node.specific ?? node;
  const bounds = boundsOf(meant).map((bound) => intervalFor(bound, judgement, setting, meant.dimension));
  return bounds.length === 0 ? undefined : { interval: intersectAll(bounds), unit: boundUnit(meant) };
}

/** A limit of the site has the form of a requirement, without its kind of number. */
function fromThreshold(node: Node): Allowed | undefined {
  const fields = node as { at_most?: Node; at_least?: Node };
  const [high, low] = [fields.at_most, fields.at_least];
  const quantity = high ?? low;
  if (quantity?.node !== 'quantity') return undefined;
  const interval = {
    low: low?.node === 'quantity' ? low.value : Number.NEGATIVE_INFINITY,
    high: high?.node === 'quantity' ? high.value : Number.POSITIVE_INFINITY,
  };
  return { interval, unit: unitNamed(quantity.dimension, quantity.unit) };
}

/** A bare number counts as the site says, and as the most where it is a limit; "approximately" is no limit. */
function intervalFor(
  bound: Bound,
  { parameter }: Judgement,
  setting: Setting,
  dimension: Parameters<typeof bareReading>[2],
): Interval {
  if (bound.bound === 'about') return everything;
  if (bound.bound === 'stated' && isHighestIfBare(parameter))
    return { low: Number.NEGATIVE_INFINITY, high: bound.value };
  if (bound.bound === 'stated' && bareReading(setting.site?.policies, parameter, dimension) === 'treat-as-minimum') {
    return { low: bound.value, high: Number.POSITIVE_INFINITY };
  }
  return intervalOf(bound);
}

function indexOf(entity: Node): ReadonlyMap<Place, Node> {
  const known = indexes.get(entity);
  if (known !== undefined) return known;
  const index = new Map<Place, Node>();
  for (const node of nodesIn(entity)) index.set(node.at, node);
  indexes.set(entity, index);
  return index;
}
