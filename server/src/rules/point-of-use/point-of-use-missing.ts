import type { LibraryView } from '../../library/view.ts';
import type { PointOfUse } from '../../model/entities/device-point-of-use.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { devicesOf } from '../support/applies.ts';
import { isOutOfScope } from '../support/cleaning-ways.ts';
import { isCleaning, isPastCleaning, proceduresFor, stepsOf } from '../support/steps.ts';

type Device = EntityOf['device'];

const message = {
  procedure:
    'Items leave the room with their soil drying on them: no step before this one wipes, flushes or keeps them moist.',
  device:
    'Neither this instruction as encoded nor a procedure says how soil is kept from drying after use. Enter what the page says, or that it is silent.',
};

export const rule = defineRule({
  id: 'point-of-use-missing',
  stage: 'point-of-use',
  severity: 'warning',
  settledBy: 'OR',
  why: 'Soil that has dried defeats every later step.',
  source: 'standard',
  kinds: ['procedure', 'device'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'procedure')) checkProcedure(entity, context);
    else if (isOfKind(entity, 'device')) checkDevice(entity, context);
  },
  examples: {
    bad: [
      `
kind: procedure
id: case-end
steps: [{stage: transport, do: close-cart}]
                ^^^^^^^^^ Items leave the room with their soil drying on them: no step before this one wipes, flushes or keeps them moist.
`,
      `
=== procedures/clinic-return.ifu.yaml
kind: procedure
id: clinic-return
applies_to: [ringed-forceps]
steps:
  - {stage: transport, container: closed-rigid-labelled}
            ^^^^^^^^^ Items leave the room with their soil drying on them: no step before this one wipes, flushes or keeps them moist.
  - {stage: manual, do: rinse, water: tap}
=== devices/forceps.ifu.yaml
kind: device
id: ringed-forceps
traits: [hinged]
`,
      `
kind: device
id: bone-rongeur
traits: [hinged, serrated]
point_of_use:
^^^^^^^^^^^^ Neither this instruction as encoded nor a procedure says how soil is kept from drying after use. Enter what the page says, or that it is silent.
  clock_starts: end-of-use
  max_delay: {at_most: 60 min, src: s2}
statements:
  s2: {doc: QM-12, rev: A, page: 2, quote: "Start cleaning within 60 minutes after use."}
`,
    ],
    good: [
      `
kind: procedure
id: case-end
steps:
  - {stage: point-of-use, do: wipe, agent: sterile-water}
  - {stage: transport, do: close-cart}
`,
      `
=== procedures/courier.ifu.yaml
kind: procedure
id: courier
applies_to: [bone-rongeur]
steps: [{stage: transport, container: closed-rigid-labelled}]
=== procedures/case-end.ifu.yaml
kind: procedure
id: case-end
applies_to: [bone-rongeur]
steps: [{stage: point-of-use, do: keep-moist, agent: water}]
=== devices/rongeur.ifu.yaml
kind: device
id: bone-rongeur
point_of_use: {max_delay: {at_most: 60 min}}
`,
      `
kind: device
id: bone-clamp
point_of_use: {silent: true, checked: 2025-02-24}
`,
    ],
  },
});

function checkProcedure(procedure: EntityOf['procedure'], { view, report }: RuleContext): void {
  if (procedure.starts_at !== undefined && procedure.starts_at.text !== 'transport') return;
  for (const step of stepsOf(procedure)) {
    if (step.stage?.text === 'point-of-use' || isCleaning(step.stage) || isPastCleaning(step.stage)) return;
    if (step.stage?.text !== 'transport') continue;
    const devices = devicesOf(procedure, view);
    if (devices.length > 0 && devices.every((device) => isTreated(device, view))) return;
    report({ at: step.stage.at, message: message.procedure });
    return;
  }
}

/** A device whose point of use is not encoded at all lacks a whole stage, which is another finding. */
function checkDevice(device: Device, { view, report }: RuleContext): void {
  const { point_of_use } = device;
  if (point_of_use === undefined || isOutOfScope(device) || isAnswered(point_of_use) || isTreated(device, view)) return;
  report({ at: point_of_use.at, message: message.device, settledBy: 'educator' });
}

function isAnswered(stated: PointOfUse): boolean {
  const { wipe, flush_now, keep_moist, steps, silent, not_applicable, ambiguous, defers_to } = stated;
  const found = [wipe, flush_now, keep_moist, steps, not_applicable, ambiguous, defers_to];
  return silent?.on === true || found.some((one) => one !== undefined);
}

function isTreated(device: Device, view: LibraryView): boolean {
  for (const procedure of proceduresFor(device, view)) {
    if (stepsOf(procedure).some((step) => step.stage?.text === 'point-of-use')) return true;
  }
  return false;
}
