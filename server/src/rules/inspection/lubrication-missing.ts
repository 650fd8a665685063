import type { LibraryView } from '../../library/view.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { sayingsOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';
import { devicesOf, devicesOfStep } from '../support/applies.ts';
import { lubricating } from '../support/cleaning-words.ts';
import { deviceName } from '../support/device-names.ts';
import { named, quotesOf } from '../support/failures.ts';
import { isAct, placeOf, proceduresFor, stepsOf } from '../support/steps.ts';

type Device = EntityOf['device'];
type Procedure = EntityOf['procedure'];

const message = {
  missing: (devices: string) => `${devices} must be lubricated before packing, and no step here does it.`,
};

export const rule = defineRule({
  id: 'lubrication-missing',
  stage: 'inspection',
  severity: 'warning',
  settledBy: 'manager',
  why: 'A dry drive or hinge seizes during the operation.',
  source: 'practice',
  kinds: ['procedure'],
  check(procedure, { view, report }) {
    const packing = stepsOf(procedure).find((step) => packs.has(step.stage?.text ?? ''));
    if (packing === undefined) return;
    const done = new Set(
      stepsOf(procedure)
        .filter(lubricates)
        .flatMap((step) => devicesOfStep(step, procedure, view)),
    );
    const missed = devicesOf(procedure, view).filter(
      (device) => isDemanded(device) && !done.has(device) && !isDoneElsewhere(device, procedure, view),
    );
    if (missed.length === 0) return;
    report({
      at: placeOf(packing),
      message: message.missing(named(missed)),
      says: quotesOf(missed.map((device) => sayingsOf(device, device.lubrication?.src))),
      related: missed.map((device) => ({
        at: device.lubrication?.at ?? device.at,
        note: `what the instruction of "${deviceName(device)}" asks for`,
      })),
    });
  },
  examples: {
    bad: [
      `
=== procedures/power.ifu.yaml
kind: procedure
id: power
applies_to: [handpiece]
steps: [{stage: inspection}, {stage: packaging}]
                                     ^^^^^^^^^ "handpiece" must be lubricated before packing, and no step here does it.
=== devices/handpiece.ifu.yaml
kind: device
id: handpiece
lubrication: {required: true, agent: maker-oil, src: s9}
statements:
  s9: {doc: TW-204, rev: C, page: 7, quote: "Apply 3 drops of oil before packaging."}
`,
      `
=== procedures/bench.ifu.yaml
kind: procedure
id: bench
applies_to: [handpiece, drill]
steps:
  - {stage: lubrication, do: lubricate, agent: maker-oil, applies_to: [drill]}
  - {stage: packaging, do: pack}
                           ^^^^ "handpiece" must be lubricated before packing, and no step here does it.
=== devices/handpiece.ifu.yaml
kind: device
id: handpiece
lubrication: {use: required, agent: maker-oil}
=== devices/drill.ifu.yaml
kind: device
id: drill
lubrication: {required: true, agent: maker-oil}
`,
    ],
    good: [
      `
=== procedures/power.ifu.yaml
kind: procedure
id: power
applies_to: [handpiece]
steps:
  - {stage: inspection, do: visual}
  - {stage: lubrication, do: lubricate, agent: maker-oil}
  - {stage: packaging, do: pack}
=== devices/handpiece.ifu.yaml
kind: device
id: handpiece
lubrication: {required: true, agent: maker-oil}
`,
      `
=== procedures/case-end.ifu.yaml
kind: procedure
id: case-end
applies_to: [handpiece, forceps]
steps: [{stage: point-of-use, do: wipe}]
=== devices/handpiece.ifu.yaml
kind: device
id: handpiece
lubrication: {required: true, agent: maker-oil}
=== devices/forceps.ifu.yaml
kind: device
id: forceps
lubrication: {use: allowed, allowed: [water-soluble]}
`,
    ],
  },
});

const packs: ReadonlySet<string> = new Set(['packaging', 'loading', 'steam', 'low-temperature', 'sterilization']);

function lubricates(step: ProcedureStep): boolean {
  return step.stage?.text === 'lubrication' || isAct(step, lubricating);
}

function isDemanded({ lubrication }: Device): boolean {
  if (lubrication === undefined || lubrication.strength?.text === 'should' || lubrication.strength?.text === 'may')
    return false;
  return lubrication.required?.on === true || lubrication.use?.text === 'required';
}

function isDoneElsewhere(device: Device, here: Procedure, view: LibraryView): boolean {
  for (const procedure of proceduresFor(device, view))
    if (procedure !== here && stepsOf(procedure).some(lubricates)) return true;
  return false;
}
