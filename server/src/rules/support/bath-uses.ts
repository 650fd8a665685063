import { type StageDemand, waysThrough } from '../../judge/demands.ts';
import type { Judgement } from '../../judge/outcome.ts';
import type { Setting } from '../../judge/setting.ts';
import { judgeUltrasonic } from '../../judge/ultrasonic.ts';
import type { Brief, LibraryView, Query } from '../../library/view.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { rootOfEntity } from '../../model/entity.ts';
import { routeOfDeviceSomewhere, routeOfSet } from '../../route/route.ts';
import { alwaysDemanded, banOf, isOutOfScope } from './cleaning-ways.ts';
import { undescribedIn } from './department.ts';
import type { Failure } from './failures.ts';
import { settingFor, stockIn } from './judging.ts';
import { stepsOf } from './steps.ts';
import { isAbout } from './use-reports.ts';

type Device = EntityOf['device'];
type Bath = EntityOf['ultrasonic'];

/** The bath that a step means: the one it names, else the only one there is. */
export function bathOf(step: ProcedureStep, view: LibraryView): Bath | undefined {
  if (step.machine !== undefined) return view.get('ultrasonic', step.machine.text);
  const baths = bathsInService(view);
  return baths.length === 1 ? baths[0] : undefined;
}

export function bathsInService(view: LibraryView): readonly Bath[] {
  return view
    .all('ultrasonic')
    .filter(({ proposed, withdrawn_on }) => proposed?.on !== true && withdrawn_on === undefined);
}

/** One item in one bath, where its page speaks of ultrasonic cleaning and does not forbid it; every way of the page, each judged. */
export function inBath(
  device: Device,
  machine: Bath,
  step: ProcedureStep | undefined,
  view: LibraryView,
): readonly (readonly Judgement[])[] {
  if (isOutOfScope(device) || banOf(device, 'ultrasonic') !== undefined) return [];
  const setting = settingFor(machine, view);
  const stock = stockIn(view);
  return waysOf(device, setting).map((way) =>
    way.flatMap((demand) =>
      judgeUltrasonic({ device, demand, machine, stock, setting, ...(step !== undefined && { step }) }),
    ),
  );
}

/** The stage in the order of cleaning, else the section that says what holds if it is done. */
function waysOf(device: Device, setting: Setting): readonly (readonly StageDemand[])[] {
  const ways = waysThrough(device, 'ultrasonic', setting);
  const { ultrasonic } = device;
  if (ways.length > 0 || ultrasonic === undefined) return ways;
  return [[{ stage: 'ultrasonic', voices: [ultrasonic] }]];
}

/** The first judgement of an item that fails in this respect in every way. */
export function bathFailure(
  device: Device,
  ways: readonly (readonly Judgement[])[],
  wanted: (judgement: Judgement) => boolean,
): Failure | undefined {
  let first: Judgement | undefined;
  for (const way of ways) {
    const failing = way.find((one) => one.outcome === 'fails' && wanted(one));
    if (failing === undefined) return undefined;
    first ??= failing;
  }
  return first === undefined ? undefined : { device, judgement: first };
}

/** What a bath may not suit in. */
export const isValue = isAbout('ultrasonic', 'heat-limit');

/** An item that no bath in service suits, with what fails in each of them, in their order. */
export interface Unsuited {
  readonly device: Device;
  readonly inEach: readonly Failure[];
}

/** That there is none is all there is to see. */
const none: Brief<readonly Unsuited[]> = {
  inWords: (found) => (found.length === 0 ? '' : undefined),
  fromWords: () => [],
};

/** One answer for all baths: each would otherwise look at every item in every bath. */
export const suitedByNone: Query<'', readonly Unsuited[]> = {
  name: 'devices that no ultrasonic bath suits',
  work: (view) => [...view.ids('device')].flatMap((id) => view.ask(unsuited, id)),
  brief: none,
};

/** The files that claim the id of a device, as far as no bath suits them. */
export const unsuited: Query<string, readonly Unsuited[]> = {
  name: 'what fails of a device in every ultrasonic bath',
  work: (view, id) => view.claimants('device', id).flatMap((device) => unsuitedIn(device, view) ?? []),
  brief: none,
};

function unsuitedIn(device: Device, view: LibraryView): Unsuited | undefined {
  if (alwaysDemanded(device, 'ultrasonic', settingFor({}, view)) === undefined) return undefined;
  const inEach: Failure[] = [];
  for (const bath of bathsInService(view)) {
    const failure = bathFailure(device, inBath(device, bath, undefined, view), isValue);
    if (failure === undefined) return undefined;
    inEach.push(failure);
  }
  return isSetByStep(device, view) || isToldByRoute(device, view) ? undefined : { device, inEach };
}

/** Where no bath here suits it, every set that holds the item is without a route, and says so with this bath beside it. */
export function isToldByRoute(device: Device, view: LibraryView): boolean {
  const { id } = rootOfEntity(device);
  if (undescribedIn(view).length > 0) return false;
  const sets = view.users('device', id, 'set').map((set) => view.ask(routeOfSet, rootOfEntity(set).id)?.status);
  return sets.length === 0
    ? view.ask(routeOfDeviceSomewhere, id)?.status === 'none'
    : sets.every((status) => status === 'none');
}

function isSetByStep(device: Device, view: LibraryView): boolean {
  const procedures = view.users('device', rootOfEntity(device).id, 'procedure');
  return procedures.some((procedure) => stepsOf(procedure).some(({ stage }) => stage?.text === 'ultrasonic'));
}
