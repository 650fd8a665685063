import type { LibraryView } from '../../library/view.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { rootOfEntity } from '../../model/entity.ts';
import type { List, Text } from '../../model/node.ts';

type Device = EntityOf['device'];
type Procedure = EntityOf['procedure'];

/** Devices that a procedure names itself or by its sets. One that is for everything names none. */
export function devicesOf(procedure: Procedure, view: LibraryView): readonly Device[] {
  return view.once(namedDevices, procedure);
}

function namedDevices(procedure: Procedure, view: LibraryView): readonly Device[] {
  const devices = new Map<string, Device>();
  add(procedure.applies_to, devices, view);
  for (const name of procedure.applies_to_sets?.items ?? []) {
    const set = view.get('set', name.text);
    if (set !== undefined) for (const device of membersOf(set, view)) devices.set(rootOfEntity(device).id, device);
  }
  return [...devices.values()];
}

/** Devices that one step is for: those it names, else those of its procedure. */
export function devicesOfStep(step: ProcedureStep, procedure: Procedure, view: LibraryView): readonly Device[] {
  return step.applies_to === undefined ? devicesOf(procedure, view) : view.once(listedDevices, step.applies_to);
}

function listedDevices(names: List<Text>, view: LibraryView): readonly Device[] {
  const devices = new Map<string, Device>();
  add(names, devices, view);
  return [...devices.values()];
}

/** The device files of a set's members, each once. */
export function membersOf(set: EntityOf['set'], view: LibraryView): readonly Device[] {
  return view.once(memberDevices, set);
}

function memberDevices(set: EntityOf['set'], view: LibraryView): readonly Device[] {
  const devices = new Map<string, Device>();
  for (const member of set.members?.items ?? []) {
    const device = member.device === undefined ? undefined : view.get('device', member.device.text);
    if (device !== undefined) devices.set(rootOfEntity(device).id, device);
  }
  return [...devices.values()];
}

/**
 * Devices that a procedure is for, those meant by "everything" or by a trait included. This reads every device file: ask it only of
 * procedures where it matters.
 */
export function allDevicesOf(procedure: Procedure, view: LibraryView): readonly Device[] {
  if (procedure.applies_to_all?.on === true) return view.all('device');
  const traits = procedure.applies_to_traits?.items.map((trait) => trait.text) ?? [];
  const named = devicesOf(procedure, view);
  if (traits.length === 0) return named;
  return [
    ...named,
    ...view
      .all('device')
      .filter((device) => traits.some((trait) => hasTrait(device, trait)) && !named.includes(device)),
  ];
}

export function hasTrait(entity: { readonly traits?: List<Text> }, trait: string): boolean {
  return traitOf(entity, trait) !== undefined;
}

export function traitOf(entity: { readonly traits?: List<Text> }, trait: string): Text | undefined {
  return entity.traits?.items.find((item) => item.text === trait);
}

function add(names: List<Text> | undefined, devices: Map<string, Device>, view: LibraryView): void {
  for (const name of names?.items ?? []) {
    const device = view.get('device', name.text);
    if (device !== undefined) devices.set(name.text, device);
  }
}
