import type { LibraryView, SterilizerCycle } from '../../library/view.ts';
import type { SterilizationOption } from '../../model/entities/device-sterilization.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Citation, Quantity, Requirement } from '../../model/node.ts';
import type { SterilizationFit } from '../../route/model.ts';
import type { Demand } from './limits-of.ts';
import { demandOf } from './limits-of.ts';

/** A number of a cycle that every member and the packaging have a say in. */
export type CycleField = 'temp' | 'exposure' | 'dry';

export const cycleFields: readonly CycleField[] = ['temp', 'exposure', 'dry'];

export const fieldTitles: Readonly<Record<CycleField, string>> = {
  temp: 'temperature',
  exposure: 'exposure',
  dry: 'drying',
};

/** What one member, or the packaging, demands of one number of the cycle. */
export interface CycleDemand {
  /** `device/pale-forceps`, `packaging/P3`. */
  readonly who: string;
  readonly by: EntityOf['device'] | EntityOf['packaging'];
  readonly requirement: Requirement;
  readonly src: Citation | undefined;
  readonly demand: Demand;
}

/** All demands on one number, from the options that a fit rests on and from its packaging. */
export function demandsOn(field: CycleField, fit: SterilizationFit, view: LibraryView): readonly CycleDemand[] {
  const demands: CycleDemand[] = [];
  for (const { device: id, option: name } of fit.members) {
    const device = view.get('device', id);
    const option = device?.sterilization?.any_of?.items.find((one) => one.id?.text === name);
    if (device !== undefined && option !== undefined) add(demands, `device/${id}`, device, option[field], option);
  }
  const packaging = view.get('packaging', fit.packaging);
  const modality = view.sterilizerCycle(fit.cycle)?.cycle.modality?.text;
  if (packaging === undefined) return demands;
  const who = `packaging/${fit.packaging}`;
  if (field === 'dry') add(demands, who, packaging, packaging.dry, packaging);
  for (const covered of packaging.validated?.items ?? []) {
    if (covered.modality?.text === modality) add(demands, who, packaging, covered[field], covered);
  }
  return demands;
}

function add(
  demands: CycleDemand[],
  who: string,
  by: CycleDemand['by'],
  requirement: Requirement | undefined,
  around: { readonly src?: Citation } | SterilizationOption,
): void {
  const demand = demandOf(requirement);
  if (requirement === undefined || demand === undefined) return;
  demands.push({ who, by, requirement, demand, src: requirement.src ?? around.src });
}

/** The number of a cycle, where it can be read. */
export function numberOf(cycle: SterilizerCycle | undefined, field: CycleField): Quantity | undefined {
  const quantity = cycle?.[field];
  return quantity?.problem === undefined ? quantity : undefined;
}
