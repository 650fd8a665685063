import type { LibraryView } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { Place, Text } from '../../model/node.ts';
import { defineRule } from '../rule.ts';
import { hasTrait, traitOf } from '../support/applies.ts';
import { immediateUseOfSet, immediateUsePlace } from '../support/iuss.ts';

type Procedure = EntityOf['procedure'];
type SetFile = EntityOf['set'];

const message = {
  procedure:
    'Implants are meant here too, and no emergency path is named. Immediate use leaves no time for the biological result that an implant waits for.',
  set: 'This set holds implants and goes through immediate use, and no emergency release is named. There is no time for the biological result that an implant waits for.',
};

const implant = 'implant';

export const rule = defineRule({
  id: 'iuss-implant',
  stage: 'immediate-use',
  severity: 'error',
  settledBy: 'infection-prevention',
  why: 'An implant stays in the patient, and immediate use ends before the biological result can be known.',
  source: 'guideline',
  kinds: ['procedure', 'set'],
  check(entity: AnyEntity, { view, report }) {
    if (isOfKind(entity, 'procedure')) {
      const at = entity.emergency_path === undefined ? implantsMeant(entity, view) : undefined;
      if (at !== undefined) report({ at, message: message.procedure });
    } else if (isOfKind(entity, 'set')) {
      const at = entity.emergency_release === undefined ? implantsInside(entity, view) : undefined;
      if (at !== undefined) report({ at, message: message.set });
    }
  },
  examples: {
    bad: [
      `
kind: procedure
id: drop
context: iuss
applies_to_traits: [implant]
^^^^^^^^^^^^^^^^^ Implants are meant here too, and no emergency path is named. Immediate use leaves no time for the biological result that an implant waits for.
`,
      `
=== sets/screws.ifu.yaml
kind: set
id: screws
context: iuss
members:
  - {device: bone-screws, qty: 12}
             ^^^^^^^^^^^ This set holds implants and goes through immediate use, and no emergency release is named. There is no time for the biological result that an implant waits for.
=== devices/bone-screws.ifu.yaml
kind: device
id: bone-screws
traits: [implant]
`,
      `
=== procedures/drop.ifu.yaml
kind: procedure
id: drop
context: iuss
applies_to: [bone-screws]
             ^^^^^^^^^^^ Implants are meant here too, and no emergency path is named. Immediate use leaves no time for the biological result that an implant waits for.
=== devices/bone-screws.ifu.yaml
kind: device
id: bone-screws
traits: [implant]
`,
    ],
    good: [
      `
=== procedures/drop.ifu.yaml
kind: procedure
id: drop
context: iuss
applies_to_traits: [implant]
emergency_path: implant-emergency
=== procedures/implant-emergency.ifu.yaml
kind: procedure
id: implant-emergency
`,
      `
=== sets/screws.ifu.yaml
kind: set
id: screws
context: terminal
members:
  - {device: bone-screws, qty: 12}
=== devices/bone-screws.ifu.yaml
kind: device
id: bone-screws
traits: [implant]
`,
    ],
  },
});

/** Where a procedure for immediate use takes in implants: by trait, by name, by a set, or by meaning everything. */
function implantsMeant(procedure: Procedure, view: LibraryView): Place | undefined {
  if (immediateUsePlace(procedure, view) === undefined) return undefined;
  const {
    applies_to_traits: traits,
    applies_to: devices,
    applies_to_sets: sets,
    applies_to_all: everything,
  } = procedure;
  if (traits?.items.some(({ text }) => text === implant) === true) return traits.at;
  const device = devices?.items.find((name) => isImplant(name, view));
  if (device !== undefined) return device.at;
  const set = sets?.items.find((name) => {
    const found = view.get('set', name.text);
    return found !== undefined && placeInSet(found, view) !== undefined;
  });
  if (set !== undefined) return set.at;
  const isAll = everything?.on === true && view.all('device').some((one) => hasTrait(one, implant));
  return isAll ? everything?.at : undefined;
}

function implantsInside(set: SetFile, view: LibraryView): Place | undefined {
  return immediateUseOfSet(set, view) === undefined ? undefined : placeInSet(set, view);
}

function placeInSet(set: SetFile, view: LibraryView): Place | undefined {
  const own = traitOf(set, implant);
  if (own !== undefined) return own.at;
  const line = set.members?.items.find(({ device }) => device !== undefined && isImplant(device, view));
  return line?.device?.at;
}

function isImplant(name: Text, view: LibraryView): boolean {
  const device = view.get('device', name.text);
  return device !== undefined && hasTrait(device, implant);
}
