import { clashesOf } from './clash.ts';
import { packagingCalled } from './equipment.ts';
import type { Repair, RepairKind, RepairTrial, RouteStatus } from './model.ts';
import { repairTable } from './repair-table.ts';
import type { Derivation } from './route.ts';

const statuses: readonly RouteStatus[] = ['none', 'provisional', 'route'];

export function statusRank(status: RouteStatus): number {
  return statuses.indexOf(status);
}

export function worstStatus(found: readonly RouteStatus[]): RouteStatus {
  return statuses[Math.min(...found.map(statusRank), statuses.length - 1)] ?? 'none';
}

/** What a change does for the set: undefined when it does nothing. */
export function effectOf(before: Derivation, after: Derivation): Repair['effect'] | undefined {
  const { status } = after.route;
  if (statusRank(status) > statusRank(before.route.status)) return status === 'route' ? 'route' : 'provisional';
  if (status !== 'none' || before.route.status !== 'none') return undefined;
  return clashesOf(after).length < clashesOf(before).length ? 'part' : undefined;
}

export interface RepairWords {
  readonly words: string;
  readonly verified: readonly string[];
  readonly leaves?: readonly string[];
  readonly about: readonly string[];
}

export function repair(kind: RepairKind, effect: Repair['effect'], words: RepairWords, trial?: RepairTrial): Repair {
  return { kind, ...repairTable[kind], leaves: [], ...words, effect, ...(trial && { trial }) };
}

/** What still stands in the way after a change that settles a part. */
export function stillOpen(after: Derivation): readonly string[] {
  if (after.route.status !== 'none') return [];
  return clashesOf(after).map(({ atoms }) => atoms.map(({ words }) => words).join('; against '));
}

/** `in Kestrelow container on S1-pv132-4-30`. */
export function routeWords({ route, department }: Derivation): string {
  const { chosen } = route;
  if (chosen === undefined) return 'without sterilization';
  const pack = [
    chosen.packaging === '' ? 'unwrapped' : `in ${packagingCalled(department, chosen.packaging)}`,
    chosen.namedCase === undefined ? '' : `with ${packagingCalled(department, chosen.namedCase)}`,
  ];
  return `${pack.filter((part) => part !== '').join(' ')} on ${chosen.cycle}`;
}
