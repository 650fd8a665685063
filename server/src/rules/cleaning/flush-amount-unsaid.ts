import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { rootOfEntity } from '../../model/entity.ts';
import { sayingsOf } from '../../model/saying.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { devicesOfStep } from '../support/applies.ts';
import type { FlushDemand } from '../support/flushes.ts';
import { flushesOf } from '../support/flushes.ts';
import { demandInWords, demandOf } from '../support/limits-of.ts';
import { placeOf, stepInWords, stepsOf } from '../support/steps.ts';

type Device = EntityOf['device'];

const message = {
  unsaid: (amount: string, device: string, wanted: string) =>
    `This step gives no ${amount} for the flush of "${device}", and the instruction does: ${wanted}.`,
};

export const rule = defineRule({
  id: 'flush-amount-unsaid',
  stage: 'cleaning',
  severity: 'warning',
  settledBy: 'manager',
  why: 'Who is told to flush, and not how much, flushes until it looks clear.',
  source: 'logic',
  kinds: ['procedure'],
  check(procedure, context) {
    const byDevice = new Map<Device, ProcedureStep[]>();
    for (const step of stepsOf(procedure)) {
      if (step.do?.text !== 'flush' || step.stage?.text === 'point-of-use') continue;
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
steps: [{stage: manual, do: flush, times: 3 times}]
                            ^^^^^ This step gives no volume for the flush of "tube", and the instruction does: at least 50 mL.
=== devices/tube.ifu.yaml
kind: device
id: tube
lumens: [{id: bore}]
cleaning:
  all_of:
    - stage: manual
      steps: [{do: flush, lumen: bore, volume: {at_least: 50 mL}, times: {exactly: 3 times}, src: s4}]
statements:
  s4: {doc: TU-1, rev: A, page: 3, quote: "Flush with at least 50 mL, 3 times."}
`,
      `
=== procedures/grasper.ifu.yaml
kind: procedure
id: grasper
applies_to: [grasper]
steps:
  - {stage: manual, do: flush, port: P1, time: 90 s}
  - {stage: manual, do: flush, port: P2, pressure: 2 bar}
                        ^^^^^ This step gives no time for the flush of "grasper", and the instruction does: at least 90 s.
=== devices/grasper.ifu.yaml
kind: device
id: grasper
lumens: [{id: P1}, {id: P2}]
cleaning:
  all_of:
    - stage: manual
      steps:
        - {do: flush, port: P1, time: {at_least: 90 s}, src: s1}
        - {do: flush, port: P2, time: {at_least: 90 s}, src: s1}
`,
    ],
    good: [
      `
=== procedures/tube.ifu.yaml
kind: procedure
id: tube
applies_to: [tube]
steps:
  - {stage: point-of-use, do: flush}
  - {stage: manual, do: flush, volume: 60 mL, times: 3 times}
=== devices/tube.ifu.yaml
kind: device
id: tube
cleaning:
  all_of: [{stage: manual, steps: [{do: flush, volume: {at_least: 50 mL}, src: s4}]}]
`,
      `
=== procedures/tube.ifu.yaml
kind: procedure
id: tube
applies_to: [tube]
steps: [{stage: manual, do: flush}]
=== devices/tube.ifu.yaml
kind: device
id: tube
cleaning:
  any_of:
    - {id: volume, stage: manual, steps: [{do: flush, volume: {at_least: 50 mL}}]}
    - {id: pressure, stage: manual, steps: [{do: flush, pressure: {at_least: 2 bar}}]}
`,
    ],
  },
});

const amounts = ['volume', 'time'] as const;

function checkDevice(device: Device, steps: readonly ProcedureStep[], { report }: RuleContext): void {
  const told = new Set<ProcedureStep>();
  for (const demand of flushesOf(device)) {
    if (demand.isAlternative) continue;
    const own = stepsFor(demand, steps);
    const [step] = own;
    const missing = amounts.find((amount) => isAsked(demand, amount) && own.every((one) => one[amount] === undefined));
    if (step === undefined || missing === undefined || told.has(step)) continue;
    told.add(step);
    const wanted = demand[missing];
    report({
      at: placeOf(step),
      message: message.unsaid(
        missing,
        rootOfEntity(device).id,
        wanted === undefined ? '' : (demandInWords(wanted) ?? ''),
      ),
      says: sayingsOf(device, demand.src),
      does: stepInWords(step),
      related: [{ at: demand.at, note: 'what the instruction asks for' }],
    });
  }
}

function isAsked(demand: FlushDemand, amount: (typeof amounts)[number]): boolean {
  return demandOf(demand[amount])?.lowest !== undefined;
}

function stepsFor(demand: FlushDemand, steps: readonly ProcedureStep[]): readonly ProcedureStep[] {
  return steps.filter((step) => {
    const port = step.lumen ?? step.port;
    return demand.port === undefined || port === undefined || port.text === demand.port.text;
  });
}
