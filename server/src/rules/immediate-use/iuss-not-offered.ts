import type { LibraryView } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind, rootOfEntity } from '../../model/entity.ts';
import type { Place } from '../../model/node.ts';
import type { Saying } from '../../model/saying.ts';
import { sayingsOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';
import { allDevicesOf, membersOf } from '../support/applies.ts';
import { deviceName, deviceNames } from '../support/device-names.ts';
import { immediateUseOfSet, immediateUsePlace, offersImmediateUse } from '../support/iuss.ts';
import { listed } from '../support/lists.ts';

type Device = EntityOf['device'];

const message = {
  one: (device: string) =>
    `The instruction for "${device}" offers no immediate-use cycle, and silence is no permission.`,
  many: (devices: string, lacking: number, all: number) =>
    `Of the ${all} devices meant here, ${lacking} have no immediate-use cycle in their instruction: ${devices}. Silence is no permission.`,
  everything: 'This is for every device, but only an instruction that offers immediate use allows it.',
  does: (place: string) => `${place} sends them through an immediate-use cycle.`,
};

export const rule = defineRule({
  id: 'iuss-not-offered',
  stage: 'immediate-use',
  severity: 'error',
  settledBy: 'manager',
  why: 'An immediate-use cycle that the instruction does not offer was never shown to work on the device.',
  source: 'guideline',
  kinds: ['procedure', 'set'],
  check(entity: AnyEntity, { view, report }) {
    const meant = isOfKind(entity, 'procedure')
      ? meantByProcedure(entity, view)
      : isOfKind(entity, 'set')
        ? meantBySet(entity, view)
        : undefined;
    if (meant === undefined) return;
    const lacking = meant.devices.filter((device) => !offersImmediateUse(device));
    if (lacking.length === 0 && (meant.devices.length > 0 || !meant.isEverything)) return;
    report({
      at: meant.placeOf(lacking),
      message: wording(lacking, meant),
      says: lacking.flatMap(prohibition).slice(0, 3),
      does: message.does(rootOfEntity(entity).id),
      related: lacking.slice(0, 12).map((device) => ({
        at: (device.sterilization ?? device).at,
        note: `what "${deviceName(device)}" offers`,
      })),
    });
  },
  examples: {
    bad: [
      `
=== procedures/drop.ifu.yaml
kind: procedure
id: drop
applies_to: [power-drill]
             ^^^^^^^^^^^ The instruction for "power-drill" offers no immediate-use cycle, and silence is no permission.
context: iuss
=== devices/drill.ifu.yaml
kind: device
id: power-drill
sterilization: {any_of: [{id: t, modality: steam-prevac, context: terminal}]}
`,
      `
=== procedures/drop.ifu.yaml
kind: procedure
id: drop
applies_to_all: true
                ^^^^ Of the 3 devices meant here, 2 have no immediate-use cycle in their instruction: bone-clamp and power-drill. Silence is no permission.
context: iuss
=== devices/a.ifu.yaml
kind: device
id: bone-clamp
=== devices/b.ifu.yaml
kind: device
id: power-drill
not: [{what: iuss, src: s1}]
sterilization: {any_of: [{id: t, modality: steam-prevac, context: iuss}]}
statements:
  s1: {doc: PD-1, rev: A, page: 2, quote: "Not for immediate use."}
=== devices/c.ifu.yaml
kind: device
id: ringed-forceps
sterilization: {any_of: [{id: i, modality: steam-prevac, context: iuss}]}
`,
      `
=== sets/tray.ifu.yaml
kind: set
id: spare-tray
members: [{device: bone-clamp, qty: 1}]
cycle: urgent
       ^^^^^^ The instruction for "bone-clamp" offers no immediate-use cycle, and silence is no permission.
=== sterilizers/s2.ifu.yaml
kind: sterilizer
id: S2
cycles: [{id: urgent, modality: steam-prevac, context: iuss}]
=== devices/a.ifu.yaml
kind: device
id: bone-clamp
`,
    ],
    good: [
      `
=== procedures/drop.ifu.yaml
kind: procedure
id: drop
applies_to: [power-handpiece]
context: iuss
=== devices/handpiece.ifu.yaml
kind: device
id: power-handpiece
sterilization: {any_of: [{id: t, context: terminal}, {id: i, context: iuss}]}
`,
      `
=== procedures/late.ifu.yaml
kind: procedure
id: late-sets
applies_to: [bone-clamp]
context: terminal
=== devices/a.ifu.yaml
kind: device
id: bone-clamp
`,
    ],
  },
});

interface Meant {
  readonly devices: readonly Device[];
  readonly isEverything: boolean;
  placeOf(lacking: readonly Device[]): Place;
}

function meantByProcedure(procedure: EntityOf['procedure'], view: LibraryView): Meant | undefined {
  const use = immediateUsePlace(procedure, view);
  if (use === undefined) return undefined;
  const { applies_to: named, applies_to_all: all } = procedure;
  return {
    devices: allDevicesOf(procedure, view),
    isEverything: all?.on === true,
    placeOf(lacking) {
      if (all?.on === true) return all.at;
      const single =
        lacking.length === 1
          ? named?.items.find((name) => name.text === rootOfEntity(lacking[0] ?? procedure).id)
          : undefined;
      return single?.at ?? named?.at ?? procedure.applies_to_sets?.at ?? use;
    },
  };
}

function meantBySet(set: EntityOf['set'], view: LibraryView): Meant | undefined {
  const use = immediateUseOfSet(set, view);
  return use === undefined ? undefined : { devices: membersOf(set, view), isEverything: false, placeOf: () => use };
}

function wording(lacking: readonly Device[], { devices }: Meant): string {
  const ids = deviceNames(lacking);
  if (ids.length === 0) return message.everything;
  return ids.length === 1 ? message.one(ids[0] ?? '') : message.many(listed(ids), ids.length, devices.length);
}

function prohibition(device: Device): readonly Saying[] {
  return (device.not?.items ?? [])
    .filter((one) => one.what?.text === 'iuss')
    .flatMap((one) => sayingsOf(device, one.src));
}
