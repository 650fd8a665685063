import { type StageDemand, waysThrough } from '../../judge/demands.ts';
import type { Judgement } from '../../judge/outcome.ts';
import { judgeWash } from '../../judge/washing.ts';
import type { LibraryView, Query } from '../../library/view.ts';
import type { WasherCycle } from '../../model/entities/washer.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind, rootOfEntity } from '../../model/entity.ts';
import type { Text } from '../../model/node.ts';
import { devicesOfStep, membersOf } from './applies.ts';
import { banOf, isOutOfScope } from './cleaning-ways.ts';
import type { Failure } from './failures.ts';
import { settingFor, stockIn } from './judging.ts';
import { stepsOf } from './steps.ts';

type Device = EntityOf['device'];
type Washer = EntityOf['washer'];

/** One washer cycle that a card or a step names, with the items it is to wash. */
export interface WasherUse {
  /** The name of the cycle, where it can be changed. */
  readonly name: Text;
  readonly machine: Washer;
  readonly cycle: WasherCycle;
  readonly devices: readonly Device[];
}

/** Washer cycles that a set's card names, or that steps of a procedure name for certain devices. */
export function washerUses(entity: AnyEntity, view: LibraryView): readonly WasherUse[] {
  const { id } = rootOfEntity(entity);
  if (isOfKind(entity, 'set')) return view.ask(usesOfSet, id);
  return isOfKind(entity, 'procedure') ? view.ask(usesOfProcedure, id) : [];
}

const usesOfSet: Query<string, readonly WasherUse[]> = {
  name: 'washer cycles on the card of a set',
  work(view, id) {
    const set = view.get('set', id);
    if (set === undefined) return [];
    const names = [set.washer_cycle, ...(set.routes?.items.map((route) => route.washer_cycle) ?? [])];
    return names.flatMap((name) => useOf(name, membersOf(set, view), view));
  },
};

const usesOfProcedure: Query<string, readonly WasherUse[]> = {
  name: 'washer cycles that a procedure names',
  work(view, id) {
    const procedure = view.get('procedure', id);
    if (procedure === undefined || procedure.when !== undefined) return [];
    return stepsOf(procedure).flatMap((step) =>
      step.when === undefined && step.cycle !== undefined
        ? useOf(step.cycle, devicesOfStep(step, procedure, view), view)
        : [],
    );
  },
};

function useOf(name: Text | undefined, devices: readonly Device[], view: LibraryView): readonly WasherUse[] {
  const washing = name === undefined ? undefined : view.washerCycle(name.text);
  if (name === undefined || washing === undefined) return [];
  return [{ name, ...washing, devices: devices.filter((device) => machineWays(device, view).length > 0) }];
}

/**
 * The ways of cleaning that lead through a machine. None for items that their page does not send there: they are no load of a washer,
 * and that they can't go there is another finding.
 */
export function machineWays(device: Device, view: LibraryView): readonly (readonly StageDemand[])[] {
  return view.ask(waysThroughMachine, rootOfEntity(device).id);
}

export const waysThroughMachine: Query<string, readonly (readonly StageDemand[])[]> = {
  name: 'ways of cleaning a device that lead through a washer',
  work(view, id) {
    const device = view.get('device', id);
    if (device === undefined || isOutOfScope(device) || banOf(device, 'mechanical') !== undefined) return [];
    return waysThrough(device, 'mechanical', settingFor({}, view));
  },
};

/** The items whose page this cycle does not follow in this respect, whichever way through a machine is taken. */
export function washFailures(
  cycle: string,
  devices: readonly Device[],
  wanted: (judgement: Judgement) => boolean,
  view: LibraryView,
): readonly Failure[] {
  return devices.flatMap((device) => allWashFailures(cycle, device, wanted, view).slice(0, 1));
}

/** Every judgement on one item that fails, by the first way; nothing where some way does without failing. */
export function allWashFailures(
  cycle: string,
  device: Device,
  wanted: (judgement: Judgement) => boolean,
  view: LibraryView,
): readonly Failure[] {
  const ways = view.ask(washed, `${cycle}\n${rootOfEntity(device).id}`);
  return failingInEach(ways, wanted).map((judgement) => ({ device, judgement }));
}

/** `ways`: what fails in each. */
export function failingInEach(
  ways: Iterable<readonly Judgement[]>,
  wanted: (judgement: Judgement) => boolean,
): readonly Judgement[] {
  let first: readonly Judgement[] | undefined;
  for (const way of ways) {
    const failing = way.filter(wanted);
    if (failing.length === 0) return [];
    first ??= failing;
  }
  return first ?? [];
}

/** One cycle with one device: what fails in each way of cleaning that goes through a machine. */
const washed: Query<string, readonly (readonly Judgement[])[]> = {
  name: 'what fails of a device in a washer cycle',
  work(view, argument) {
    const [cycleId = '', deviceId = ''] = argument.split('\n');
    const washing = view.washerCycle(cycleId);
    const device = view.get('device', deviceId);
    if (washing === undefined || device === undefined) return [];
    const question = { device, ...washing, stock: stockIn(view), setting: settingFor(washing.machine, view) };
    return machineWays(device, view).map((way) =>
      way.flatMap((demand) => judgeWash({ ...question, demand }).filter(({ outcome }) => outcome === 'fails')),
    );
  },
};

export function isInService({ proposed, withdrawn_on }: Pick<Washer, 'proposed' | 'withdrawn_on'>): boolean {
  return proposed?.on !== true && withdrawn_on === undefined;
}

/** Items that cards and procedures send into one of these cycles. */
export function sentTo(cycles: readonly WasherCycle[], view: LibraryView): ReadonlySet<Device> {
  const devices = new Set<Device>();
  for (const { id } of cycles) {
    if (id === undefined) continue;
    const users = [...view.users('washer-cycle', id.text, 'set'), ...view.users('washer-cycle', id.text, 'procedure')];
    for (const use of users.flatMap((user) => washerUses(user, view)))
      if (use.name.text === id.text) for (const device of use.devices) devices.add(device);
  }
  return devices;
}
