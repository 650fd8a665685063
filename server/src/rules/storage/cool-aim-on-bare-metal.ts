import { defineRule } from '../rule.ts';
import { stepsOf } from '../support/steps.ts';
import { bareMetal } from '../support/word-lists.ts';
import { saidIn } from '../support/wording.ts';

const message = {
  metal: (aim: string) =>
    `An infrared thermometer pointed at "${aim}" mirrors the room: on bare metal it can read far too low. Point it at the place where vapour leaves, or at a dark patch.`,
};

export const rule = defineRule({
  id: 'cool-aim-on-bare-metal',
  stage: 'storage',
  severity: 'advice',
  settledBy: 'manager',
  why: 'Bare metal gives off little infrared light, so the thermometer shows the room and the pack is handled while it is hot.',
  source: 'logic',
  kinds: ['procedure'],
  check(procedure, { report }) {
    for (const { instrument, aim, stage } of stepsOf(procedure)) {
      if (aim === undefined || instrument?.text !== 'infrared') continue;
      if (stage !== undefined && stage.text !== 'cooling' && stage.text !== 'release') continue;
      if (saidIn(aim.text, bareMetal) === undefined) continue;
      report({
        at: aim.at,
        message: message.metal(aim.text),
        related: [{ at: instrument.at, note: 'what it is measured with' }],
      });
    }
  },
  examples: {
    bad: [
      `
kind: procedure
id: cool
steps: [{stage: cooling, instrument: infrared, aim: lid-metal}]
                                                    ^^^^^^^^^ An infrared thermometer pointed at "lid-metal" mirrors the room: on bare metal it can read far too low. Point it at the place where vapour leaves, or at a dark patch.
`,
      `
kind: procedure
id: evening-cart
steps:
  - {stage: cooling, do: cool, time: 60 min}
  - {stage: release, do: aim, instrument: infrared, aim: the polished lid}
                                                         ^^^^^^^^^^^^^^^^ An infrared thermometer pointed at "the polished lid" mirrors the room: on bare metal it can read far too low. Point it at the place where vapour leaves, or at a dark patch.
`,
    ],
    good: [
      `
kind: procedure
id: cool
steps: [{stage: cooling, instrument: infrared, aim: vents}]
`,
      `
kind: procedure
id: cool
steps: [{stage: cooling, instrument: probe, aim: lid-metal}]
`,
    ],
  },
});
