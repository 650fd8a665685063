import { waysThrough } from '../../judge/demands.ts';
import { givenOf } from '../../judge/given.ts';
import { factOf, judgeDemand } from '../../judge/judgement.ts';
import type { Judgement } from '../../judge/outcome.ts';
import type { Setting } from '../../judge/setting.ts';
import type { CleaningNode } from '../../model/entities/device-manual.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Quantity } from '../../model/node.ts';
import { formatQuantity } from '../../quantity/format.ts';
import { defineRule } from '../rule.ts';
import { failsEveryWay } from '../support/cleaning-ways.ts';
import { soaking } from '../support/cleaning-words.ts';
import type { Failure } from '../support/failures.ts';
import { evidenceOf, whoAsks } from '../support/failures.ts';
import { settingFor } from '../support/judging.ts';
import { isAct, reachOf, stepInWords, stepsOf } from '../support/steps.ts';

const message = {
  outside: (time: string, who: string) => `A soak of ${time} is outside what the instruction allows for ${who}.`,
};

export const rule = defineRule({
  id: 'soak-outside-limits',
  stage: 'cleaning',
  severity: 'error',
  settledBy: 'manager',
  why: 'Too short a soak loosens nothing, and too long a soak swells seals and pits metal.',
  source: 'logic',
  kinds: ['procedure'],
  check(procedure, { view, report }) {
    for (const step of stepsOf(procedure)) {
      const { time } = step;
      if (time === undefined || step.stage?.text === 'ultrasonic' || !isAct(step, soaking)) continue;
      const setting = settingFor({}, view);
      const failures: Failure[] = [];
      for (const device of reachOf(step, procedure, view)) {
        const judgement = outside(device, time, setting);
        if (judgement !== undefined) failures.push({ device, judgement });
      }
      if (failures.length === 0) continue;
      report({
        at: time.at,
        message: message.outside(formatQuantity(time), whoAsks(failures)),
        does: stepInWords(step),
        ...evidenceOf(failures),
      });
    }
  },
  examples: {
    bad: [
      `
=== procedures/infections.ifu.yaml
kind: procedure
id: infections
applies_to: [scissors]
steps: [{stage: manual, do: soak, chemistry: C1, time: 60 min}]
                                                       ^^^^^^ A soak of 60 min is outside what the instruction allows for "scissors" (1-15 min).
=== devices/scissors.ifu.yaml
kind: device
id: scissors
manual: {soak: {between: [1 min, 15 min], src: s2}}
statements:
  s2: {doc: SC-3, rev: A, page: 4, quote: "Soak for 1 to 15 minutes."}
`,
      `
=== procedures/bench.ifu.yaml
kind: procedure
id: bench
applies_to: [rongeur, scissors]
steps:
  - {stage: manual, do: soak in detergent, time: 5 min}
                                                 ^^^^^ A soak of 5 min is outside what the instruction allows for "rongeur" (at least 10 min).
=== devices/rongeur.ifu.yaml
kind: device
id: rongeur
cleaning:
  all_of:
    - stage: manual
      soak: {at_least: 10 min, src: s1}
    - stage: mechanical
statements:
  s1: {doc: RO-7, rev: B, page: 3, quote: "Soak for at least 10 minutes."}
=== devices/scissors.ifu.yaml
kind: device
id: scissors
manual: {soak: {between: [1 min, 15 min]}}
`,
    ],
    good: [
      `
=== procedures/bench.ifu.yaml
kind: procedure
id: bench
applies_to: [scissors]
steps: [{stage: manual, do: soak, chemistry: C1, time: 5 min}]
=== devices/scissors.ifu.yaml
kind: device
id: scissors
manual: {soak: {between: [1 min, 15 min]}}
`,
      `
=== procedures/bench.ifu.yaml
kind: procedure
id: bench
applies_to: [forceps]
steps: [{stage: manual, do: soak, chemistry: C1, time: 30 min}]
=== devices/forceps.ifu.yaml
kind: device
id: forceps
manual: {soak: {silent: true, checked: 2025-02-24}}
`,
    ],
  },
});

function outside(device: EntityOf['device'], time: Quantity, setting: Setting): Judgement | undefined {
  return failsEveryWay(waysThrough(device, 'manual', setting), (voice: CleaningNode) => {
    const requirement = voice.soak;
    if (requirement === undefined) return [];
    return [
      judgeDemand({ by: device, parameter: 'soak', requirement, src: voice.src }, factOf(time, givenOf(time)), setting),
    ];
  });
}
