import { waysThrough } from '../../judge/demands.ts';
import { givenOf, givenValue } from '../../judge/given.ts';
import { judgeDemand } from '../../judge/judgement.ts';
import type { Setting } from '../../judge/setting.ts';
import type { CleaningNode } from '../../model/entities/device-manual.generated.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { rootOfEntity } from '../../model/entity.ts';
import type { Place } from '../../model/node.ts';
import { defineRule } from '../rule.ts';
import { devicesOfStep } from '../support/applies.ts';
import { failsEveryWay } from '../support/cleaning-ways.ts';
import { actuating } from '../support/cleaning-words.ts';
import type { Failure } from '../support/failures.ts';
import { evidenceOf, named } from '../support/failures.ts';
import { settingFor } from '../support/judging.ts';
import { isAct, placeOf, stepsOf } from '../support/steps.ts';

type Device = EntityOf['device'];

const message = {
  missing: (devices: string, required: string) =>
    `${devices} must be opened and closed or moved ${required} while it is cleaned, and no step does it.`,
  few: (device: string, given: string, required: string) =>
    `"${device}" is opened and closed or moved ${given} while it is cleaned, and the instruction asks for ${required}.`,
};

export const rule = defineRule({
  id: 'actuation-missing',
  stage: 'cleaning',
  severity: 'warning',
  settledBy: 'manager',
  why: 'A joint that stays closed stays soiled.',
  source: 'practice',
  kinds: ['procedure'],
  check(procedure, { view, report }) {
    const byHand = stepsOf(procedure).filter((step) => step.stage?.text === 'manual' || step.stage?.text === 'rinse');
    const first = byHand[0];
    if (first === undefined) return;
    const setting = settingFor({}, view);
    const stepsFor = new Map<Device, ProcedureStep[]>();
    for (const step of byHand) {
      for (const device of devicesOfStep(step, procedure, view))
        stepsFor.set(device, [...(stepsFor.get(device) ?? []), step]);
    }
    for (const [device, steps] of stepsFor) {
      const failure = judged(device, steps, setting);
      if (failure === undefined) continue;
      const { judgement } = failure;
      const name = rootOfEntity(device).id;
      const words =
        judgement.given === ''
          ? message.missing(named([device]), judgement.required)
          : message.few(name, judgement.given, judgement.required);
      report({ at: placeIn(steps) ?? placeOf(first), message: words, ...evidenceOf([failure]) });
    }
  },
  examples: {
    bad: [
      `
=== procedures/grasper.ifu.yaml
kind: procedure
id: grasper
applies_to: [grasper]
steps: [{stage: manual, do: soak, time: 5 min}]
                            ^^^^ "grasper" must be opened and closed or moved at least 10 times while it is cleaned, and no step does it.
=== devices/grasper.ifu.yaml
kind: device
id: grasper
traits: [articulated]
manual: {actuate: {at_least: 10 times, src: s5}}
statements:
  s5: {doc: GR-1, rev: A, page: 4, quote: "Open and close the jaws at least 10 times under water."}
`,
      `
=== procedures/grasper.ifu.yaml
kind: procedure
id: grasper
applies_to: [grasper]
steps:
  - {stage: manual, do: soak, time: 5 min}
  - {stage: manual, do: flush, port: P1, time: 90 s, actuate: 10 times}
                                                              ^^^^^^^^ "grasper" is opened and closed or moved 10 times while it is cleaned, and the instruction asks for 20 times (no bound word).
=== devices/grasper.ifu.yaml
kind: device
id: grasper
traits: [articulated]
cleaning:
  all_of:
    - stage: manual
      actuate: {stated: 20 times, src: s7}
    - stage: mechanical
statements:
  s7: {doc: SK-210, rev: F, page: 6, quote: "Move the wrist through its full range 20 times while flushing."}
`,
    ],
    good: [
      `
=== procedures/grasper.ifu.yaml
kind: procedure
id: grasper
applies_to: [grasper]
steps:
  - {stage: manual, do: flush, port: P1, time: 90 s, actuate: 20 times}
=== devices/grasper.ifu.yaml
kind: device
id: grasper
manual: {actuate: {at_least: 10 times}}
`,
      `
=== procedures/case-end.ifu.yaml
kind: procedure
id: case-end
applies_to: [grasper]
steps:
  - {stage: point-of-use, do: wipe, agent: water}
=== devices/grasper.ifu.yaml
kind: device
id: grasper
manual: {actuate: {at_least: 10 times}}
`,
    ],
  },
});

/** The step that moves the item most counts; a step that names the act without a number does it as the instruction says. */
function judged(device: Device, steps: readonly ProcedureStep[], setting: Setting): Failure | undefined {
  if (steps.some((step) => step.actuate === undefined && step.times === undefined && isAct(step, actuating)))
    return undefined;
  const most = mostOf(steps);
  const given = most === undefined ? { ...givenValue(0, 'count', 'times'), words: '' } : givenOf(most);
  const judgement = failsEveryWay(waysThrough(device, 'manual', setting), (voice: CleaningNode) => {
    const requirement = voice.actuate;
    if (requirement === undefined) return [];
    return [judgeDemand({ by: device, parameter: 'cleaning-amount', requirement, src: voice.src }, { given }, setting)];
  });
  return judgement === undefined ? undefined : { device, judgement };
}

function mostOf(steps: readonly ProcedureStep[]): ProcedureStep['actuate'] {
  let most: ProcedureStep['actuate'];
  for (const step of steps) {
    const times = step.actuate ?? (isAct(step, actuating) ? step.times : undefined);
    if (times !== undefined && times.problem === undefined && times.value > (most?.value ?? -1)) most = times;
  }
  return most;
}

function placeIn(steps: readonly ProcedureStep[]): Place | undefined {
  return mostOf(steps)?.at;
}
