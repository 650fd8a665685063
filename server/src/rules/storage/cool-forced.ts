import type { EntityOf } from '../../model/entities.generated.ts';
import type { Saying } from '../../model/saying.ts';
import { sayingsOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';
import { devicesOfStep } from '../support/applies.ts';
import { quotesOf } from '../support/failures.ts';
import { stepsOf } from '../support/steps.ts';
import { forcedCooling } from '../support/word-lists.ts';
import { saidIn } from '../support/wording.ts';

const message = {
  forced: (words: string) =>
    `Hot packs are cooled by force (“${words}”). Moving or cold air makes vapour condense and blows dust; cold water or a cold room cracks cement and seals.`,
};

export const rule = defineRule({
  id: 'cool-forced',
  stage: 'storage',
  severity: 'warning',
  settledBy: 'manager',
  why: 'Forced cooling makes vapour condense inside the pack and shocks optics and power tools.',
  source: 'practice',
  kinds: ['procedure'],
  check(procedure, { view, report }) {
    for (const step of stepsOf(procedure)) {
      if (step.stage?.text !== 'cooling') continue;
      for (const text of [step.method, step.do, step.note]) {
        const words = text === undefined ? undefined : saidIn(text.text, forcedCooling);
        if (text === undefined || words === undefined) continue;
        const says = quotesOf(devicesOfStep(step, procedure, view).map(coolingWords));
        report({ at: text.at, message: message.forced(words), says });
        break;
      }
    }
  },
  examples: {
    bad: [
      `
kind: procedure
id: cool
steps: [{stage: cooling, method: fan}]
                                 ^^^ Hot packs are cooled by force (“fan”). Moving or cold air makes vapour condense and blows dust; cold water or a cold room cracks cement and seals.
`,
      `
=== procedures/scopes.ifu.yaml
kind: procedure
id: scopes
applies_to: [rigid-telescope]
steps:
  - {stage: cooling, do: cool under cold water, time: 2 min}
                         ^^^^^^^^^^^^^^^^^^^^^ Hot packs are cooled by force (“cold water”). Moving or cold air makes vapour condense and blows dust; cold water or a cold room cracks cement and seals.
=== devices/rigid-telescope.ifu.yaml
kind: device
id: rigid-telescope
cooling: {no_quench: true, src: s8}
statements:
  s8: {doc: RT-4, rev: C, page: 9, quote: "Let the telescope cool in air. Do not quench."}
`,
    ],
    good: [
      `
kind: procedure
id: cool
steps: [{stage: cooling, method: room-air, note: no fan and no open window}]
`,
      `
kind: procedure
id: rinse
steps: [{stage: rinse, do: rinse, note: under cold water}]
`,
    ],
  },
});

/** What a page says about cooling, where it says anything. */
function coolingWords(device: EntityOf['device']): readonly Saying[] {
  return sayingsOf(device, device.cooling?.src);
}
