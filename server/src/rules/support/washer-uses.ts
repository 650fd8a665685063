import type { Judgement } from '../../judge/outcome.ts';
import { judgeWash } from '../../judge/washing.ts';
import type { LibraryView, Query } from '../../library/view.ts';
import type { EntityOf, WasherCycle } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind, rootOfEntity } from '../../model/entity.ts';
import type { Text } from '../../model/node.ts';
import { devicesOfStep, membersOf } from './applies.ts';
import { banOf, isOutOfScope, waysThrough } from './cleaning-ways.ts';
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
  if (isOfKind(entity, 'set')) {
    const names = [entity.washer_cycle, ...(entity.routes?.items.map((route) => route.washer_cycle) ?? [])];
    return names.flatMap((name) => useOf(name, membersOf(entity, view), view));
  }
  if (!isOfKind(entity, 'procedure') || entity.when !== undefined) return [];
  return stepsOf(entity).flatMap((step) =>
    step.when === undefined ? useOf(step.cycle, devicesOfStep(step, entity, view), view) : [],
  );
}

function useOf(name: Text | undefined, devices: readonly Device[], view: LibraryView): readonly WasherUse[] {
  const washing = name === undefined ? undefined : view.washerCycle(name.text);
  if (name === undefined || washing === undefined) return [];
  return [{ name, ...washing, devices: devices.filter((device) => goesThroughMachine(device, view)) }];
}

/** Items that their page does not send through a machine are no load of it: that they can't go there is another finding. */
function goesThroughMachine(device: Device, view: LibraryView): boolean {
  if (isOutOfScope(device) || banOf(device, 'mechanical') !== undefined) return false;
  return waysThrough(device, 'mechanical', settingFor({}, view)).length > 0;
}

/** Every item that its page sends through a machine: a washer takes whatever its rack takes. */
export const washedByMachine: Query<'', readonly Device[]> = {
  name: 'devices whose instruction sends them through a washer',
  work: (view) => view.all('device').filter((device) => goesThroughMachine(device, view)),
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
  let first: readonly Judgement[] | undefined;
  for (const way of view.ask(washed, `${cycle}\n${rootOfEntity(device).id}`)) {
    const failing = way.filter((one) => one.outcome === 'fails' && wanted(one));
    if (failing.length === 0) return [];
    first ??= failing;
  }
  return (first ?? []).map((judgement) => ({ device, judgement }));
}

/** One cycle with one device, by each way of cleaning that goes through a machine. */
const washed: Query<string, readonly (readonly Judgement[])[]> = {
  name: 'a device in a washer cycle, judged',
  work(view, argument) {
    const [cycleId = '', deviceId = ''] = argument.split('\n');
    const washing = view.washerCycle(cycleId);
    const device = view.get('device', deviceId);
    if (washing === undefined || device === undefined) return [];
    const setting = settingFor(washing.machine, view);
    const stock = stockIn(view);
    return waysThrough(device, 'mechanical', setting).map((way) =>
      way.flatMap((demand) => judgeWash({ device, demand, ...washing, stock, setting })),
    );
  },
};

export function isInService({ proposed, withdrawn_on }: Pick<Washer, 'proposed' | 'withdrawn_on'>): boolean {
  return proposed?.on !== true && withdrawn_on === undefined;
}

/**
 * Items that no cycle of the machine suits in this respect, each with the judgement of the first cycle. Those that a card or a procedure
 * sends into it are told there.
 */
export function unfitForMachine(
  machine: Washer,
  wanted: (judgement: Judgement) => boolean,
  view: LibraryView,
): readonly (Failure & { readonly cycle: WasherCycle })[] {
  const cycles = isInService(machine)
    ? (machine.cycles?.items ?? []).filter((cycle) => cycle.withdrawn_on === undefined)
    : [];
  const [first] = cycles;
  if (first?.id === undefined) return [];
  let left = view.ask(washedByMachine, '').filter((device) => !isSentTo(cycles, device, view));
  let found: readonly Failure[] = [];
  for (const cycle of [...cycles].reverse()) {
    found = washFailures(cycle.id?.text ?? '', left, wanted, view);
    left = found.map(({ device }) => device);
  }
  return found.map((failure) => ({ ...failure, cycle: first }));
}

function isSentTo(cycles: readonly WasherCycle[], device: Device, view: LibraryView): boolean {
  return cycles.some(({ id }) => {
    if (id === undefined) return false;
    const sets = view.users('washer-cycle', id.text, 'set');
    const procedures = view.users('washer-cycle', id.text, 'procedure');
    return [...sets, ...procedures].some((user) =>
      washerUses(user, view).some((use) => use.name.text === id.text && use.devices.includes(device)),
    );
  });
}
