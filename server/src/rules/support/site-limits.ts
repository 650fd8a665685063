import type { LibraryView } from '../../library/view.ts';
import type { Threshold } from '../../model/entities/site.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Place, Quantity, Text } from '../../model/node.ts';
import { rowOf } from '../../model/walk.ts';
import { formatIn, formatQuantity } from '../../quantity/format.ts';
import type { Unit } from '../../quantity/unit-list.ts';
import { unitsOf } from '../../quantity/units.ts';

export type Site = EntityOf['site'];

/** The department an entity belongs to: the one it names, else the first. */
export function siteOf(entity: { readonly site?: Text }, view: LibraryView): Site | undefined {
  return (entity.site === undefined ? undefined : view.get('site', entity.site.text)) ?? view.site();
}

/** One number that the department has adopted. */
export interface SiteLimit {
  /** In the base unit of its dimension. */
  readonly value: number;
  readonly quantity: Quantity;
  readonly at: Place;
  /** `facility policy P-12`; empty when the site names none. */
  readonly source: string;
}

/** The adopted number under this name, whichever bound word it stands under; undefined when there is none that can be read. */
export function siteLimit(site: Site | undefined, name: string): SiteLimit | undefined {
  return limitIn(rowOf(site?.thresholds, name));
}

/** How often the department repeats something, in seconds. */
export function sitePeriod(site: Site | undefined, name: string): SiteLimit | undefined {
  return limitIn(rowOf(site?.review_periods, name));
}

function limitIn(threshold: Threshold | undefined): SiteLimit | undefined {
  const quantity = threshold?.at_most ?? threshold?.at_least ?? threshold?.exactly;
  if (threshold === undefined || quantity === undefined || quantity.problem !== undefined) return undefined;
  return { value: quantity.value, quantity, at: threshold.at, source: threshold.src?.text ?? '' };
}

/** ` (policy P-12)`, or nothing. */
export function bySource(limit: { readonly source: string }): string {
  return limit.source === '' ? '' : ` (${limit.source})`;
}

/** A base-unit value in the unit and with the digits of `like`. */
export function likeQuantity(value: number, like: Quantity, decimals?: number): string {
  const unit = unitOf(like);
  return unit === undefined ? formatQuantity(like) : formatIn(value, unit, decimals);
}

export function unitOf(quantity: Quantity): Unit | undefined {
  return unitsOf(quantity.dimension).find((unit) => unit.name === quantity.unit);
}
