import type { LibraryView, Query } from '../library/view.ts';
import type { EntityOf } from '../model/entities.generated.ts';
import { optionOf } from './candidates.ts';
import { cardOf } from './card.ts';
import { cleaningFits } from './cleaning.ts';
import { type Department, departmentOf, idOf } from './equipment.ts';
import type { MemberRoute, RouteOption, RouteStatus, SetRoute, SterilizationFit } from './model.ts';
import { asking, failing, rankOf } from './ranks.ts';
import { fitOf, type Sterilizing, sterilizingOf } from './sterilizing.ts';
import { type Subject, subjectOfDevice, subjectOfSet } from './subject.ts';
import type { Cell } from './table.ts';
import { washingTogether } from './washing.ts';

/** The route of a set by its id; undefined when no file holds the set. */
export const routeOfSet: Query<string, SetRoute | undefined> = {
  name: 'route-of-set',
  work: (view, id) => {
    const set = view.get('set', id);
    return set === undefined ? undefined : deriveSet(view, set).route;
  },
};

/** The route of one device family alone, as if it were a set of one piece in any packaging of the department. */
export const routeOfDevice: Query<string, SetRoute | undefined> = {
  name: 'route-of-device',
  work: (view, id) => {
    const device = view.get('device', id);
    if (device === undefined) return undefined;
    return derive(subjectOfDevice(view, device), view.ask(departmentOf, '')).route;
  },
};

/**
 * The route of one device family alone in the first department, in order of sites, that can process it; over all that there is where none
 * can. Whoever only asks whether it can be processed asks this: not every department is looked at, nor is one changed by the next.
 */
export const routeOfDeviceSomewhere: Query<string, SetRoute | undefined> = {
  name: 'route-of-device-somewhere',
  work: (view, id) => {
    const device = view.get('device', id);
    if (device === undefined) return undefined;
    const sites = [...view.ids('site')].sort();
    const subject = subjectOfDevice(view, device);
    for (const site of sites.length > 1 ? sites : []) {
      const { route } = derive(subject, view.ask(departmentOf, site));
      if (route.status !== 'none') return route;
    }
    return view.ask(routeOfDevice, id);
  },
};

/** A route with what it was derived from, for explanations. */
export interface Derivation {
  readonly subject: Subject;
  readonly department: Department;
  readonly sterilizing: Sterilizing;
  readonly route: SetRoute;
}

export function deriveSet(view: LibraryView, set: EntityOf['set']): Derivation {
  const subject = subjectOfSet(view, set);
  return derive(subject, view.ask(departmentOf, subject.site ?? ''), set);
}

/** Pure: everything follows from the subject and the department. */
export function derive(subject: Subject, department: Department, set?: EntityOf['set']): Derivation {
  const sterilizing = sterilizingOf(subject, department);
  const members = subject.members.map((member) => memberRoute(member, department));
  const [best] = sterilizing.feasible;
  const chosen = best === undefined ? undefined : fitOf(subject, sterilizing, best, department);
  const asPacked = asPackedOf(subject, sterilizing, department, set?.cycle?.text);
  const change = packagingChange(subject, chosen);
  const route: SetRoute = {
    of: subject.of,
    id: subject.id,
    at: subject.at,
    status: statusOf(sterilizing, members),
    members,
    ...(chosen && { chosen }),
    alternatives: sterilizing.feasible.slice(1).flatMap((cell) => namesOf(cell, department)),
    failing: sterilizing.nearest.flatMap((cell) => fitOf(subject, sterilizing, cell, department) ?? []),
    ...(asPacked && { asPacked }),
    ...(change && { packagingChange: change }),
    card: cardOf(set, asPacked, members, sterilizing, department),
    washing: washingTogether(members),
    machines: machinesFor(best, sterilizing, department),
  };
  return { subject, department, sterilizing, route };
}

function memberRoute(
  { id, name, quantity, at, unknown, device }: Subject['members'][number],
  department: Department,
): MemberRoute {
  const [cleaning, ...otherCleaning] = device === undefined ? [] : cleaningFits(device, quantity, department);
  return { device: id, name, quantity, at, unknown, ...(cleaning && { cleaning }), otherCleaning };
}

/** `none` when anything fails for all there is; `provisional` when anything is open or not known. */
function statusOf({ needed, feasible }: Sterilizing, members: readonly MemberRoute[]): RouteStatus {
  const cleaning = Math.max(0, ...members.map((member) => rankOf(member.cleaning?.outcome ?? 'meets')));
  const best = needed ? feasible[0] : undefined;
  if (cleaning === failing || (needed && best === undefined)) return 'none';
  const open = cleaning === asking || best?.rank === asking;
  return open || members.some(({ unknown }) => unknown.length > 0) || members.length === 0 ? 'provisional' : 'route';
}

/** The set's own packaging with the cycle of its card, else with the cycle that comes nearest; failing or not. */
function asPackedOf(
  subject: Subject,
  sterilizing: Sterilizing,
  department: Department,
  card?: string,
): SterilizationFit | undefined {
  const cells = sterilizing.needed ? sterilizing.table.asFiled : [];
  const onCard = cells.find(({ cycle }) => department.sterilizing[cycle]?.id === card);
  const [nearest] = onCard === undefined ? cells.toSorted((a, b) => a.rank - b.rank || a.failures - b.failures) : [];
  const cell = onCard ?? nearest;
  return cell === undefined ? undefined : fitOf(subject, sterilizing, cell, department);
}

function namesOf({ packing, cycle, rank }: Cell, department: Department): readonly RouteOption[] {
  const means = department.sterilizing[cycle];
  return means === undefined ? [] : [optionOf(packing, means, rank)];
}

function packagingChange(subject: Subject, chosen: SterilizationFit | undefined): SetRoute['packagingChange'] {
  const from = nameOf(subject.packaging?.text, subject.namedCase?.text);
  const to = chosen === undefined ? '' : nameOf(chosen.packaging, chosen.namedCase);
  return subject.packaging === undefined || chosen === undefined || from === to ? undefined : { from, to };
}

function nameOf(packaging: string | undefined, namedCase: string | undefined): string {
  return namedCase === undefined ? (packaging ?? '') : `${packaging ?? ''} with ${namedCase}`;
}

/** Machines that can do it in the same packaging with nothing more left open. */
function machinesFor(best: Cell | undefined, { feasible }: Sterilizing, department: Department): readonly string[] {
  const machines = new Set<string>();
  for (const { packing, rank, cycle } of feasible) {
    const means = department.sterilizing[cycle];
    if (means !== undefined && packing === best?.packing && (rank <= best.rank || rank < asking))
      machines.add(idOf(means.machine));
  }
  return [...machines].sort();
}
