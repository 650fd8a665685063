import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { rootOfEntity } from '../../model/entity.ts';
import { sayingsOf } from '../../model/saying.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { devicesOfStep } from '../support/applies.ts';
import { demandOf } from '../support/limits-of.ts';
import { shown } from '../support/shown.ts';
import { placeOf, stepInWords, stepsOf } from '../support/steps.ts';

type Device = EntityOf['device'];

const message = {
  short: (device: string, given: string, wanted: string) =>
    `"${device}" is looked at under ${given} here, and the instruction asks for ${wanted} or more.`,
  unsaid: (device: string, wanted: string) =>
    `The instruction asks to look at "${device}" under ${wanted} or more, and this step gives no magnification.`,
};

export const rule = defineRule({
  id: 'magnification-short',
  stage: 'inspection',
  severity: 'error',
  settledBy: 'manager',
  why: 'Residue and cracks that the maker looks for are not seen by eye alone.',
  source: 'logic',
  kinds: ['procedure'],
  check(procedure, context) {
    const byDevice = new Map<Device, ProcedureStep[]>();
    for (const step of stepsOf(procedure)) {
      if (step.stage?.text !== 'inspection') continue;
      for (const device of devicesOfStep(step, procedure, context.view))
        byDevice.set(device, [...(byDevice.get(device) ?? []), step]);
    }
    for (const [device, steps] of byDevice) checkDevice(device, steps, context);
  },
  examples: {
    bad: [
      `
=== procedures/tube.ifu.yaml
kind: procedure
id: tube
applies_to: [tube]
steps: [{stage: inspection, do: visual, magnification: 2x}]
                                                       ^^ "tube" is looked at under 2 × here, and the instruction asks for 5 × or more.
=== devices/tube.ifu.yaml
kind: device
id: tube
inspection: {visual: true, magnification: {at_least: 5x}, src: s1}
statements:
  s1: {doc: TU-1, rev: A, page: 9, quote: "Inspect at a magnification of at least 5x."}
`,
      `
=== procedures/tips.ifu.yaml
kind: procedure
id: tips
applies_to: [eye-tip]
steps:
  - {stage: drying, do: dry}
  - {stage: inspection, do: visual}
                            ^^^^^^ The instruction asks to look at "eye-tip" under 20 × or more, and this step gives no magnification.
=== devices/tip.ifu.yaml
kind: device
id: eye-tip
inspection: {criteria: [burrs], magnification: {at_least: 20x}, src: s1}
`,
    ],
    good: [
      `
=== procedures/tube.ifu.yaml
kind: procedure
id: tube
applies_to: [tube]
steps:
  - {stage: inspection, do: function, tests: [function-test]}
  - {stage: inspection, do: visual, magnification: 8x}
=== devices/tube.ifu.yaml
kind: device
id: tube
inspection: {visual: true, magnification: {at_least: 5x}, src: s1}
`,
      `
=== procedures/case.ifu.yaml
kind: procedure
id: case
applies_to: [case]
steps: [{stage: inspection, do: visual}]
=== devices/case.ifu.yaml
kind: device
id: case
inspection: {visual: true}
`,
    ],
  },
});

/** One step that looks closely enough is enough. */
function checkDevice(device: Device, steps: readonly ProcedureStep[], { report }: RuleContext): void {
  const wanted = device.inspection?.magnification;
  const lowest = demandOf(wanted)?.lowest;
  if (wanted === undefined || lowest === undefined) return;
  const given = steps.filter(({ magnification }) => magnification !== undefined);
  if (given.some(({ magnification }) => magnification?.problem !== undefined)) return;
  if (given.some(({ magnification }) => (magnification?.value ?? 0) >= lowest.value)) return;
  const step = given[0] ?? steps[0];
  if (step === undefined) return;
  const { id } = rootOfEntity(device);
  report({
    at: step.magnification?.at ?? placeOf(step),
    message:
      step.magnification === undefined
        ? message.unsaid(id, shown(lowest))
        : message.short(id, shown(step.magnification), shown(lowest)),
    says: sayingsOf(device, wanted.src ?? device.inspection?.src),
    does: stepInWords(step),
    related: [{ at: wanted.at, note: 'what the instruction asks for' }],
  });
}
