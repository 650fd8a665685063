import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { Text } from '../../model/node.ts';
import { defineRule } from '../rule.ts';
import { evidenceOf, whoAsks } from '../support/failures.ts';
import { settingFor } from '../support/judging.ts';
import { isAbove } from '../support/limits-of.ts';
import { contradictionOf, ownTitles, setByStep } from '../support/own-values.ts';
import { shown } from '../support/shown.ts';
import { reachOf, stepInWords, stepsOf } from '../support/steps.ts';
import { caution } from '../support/word-lists.ts';
import { saidIn } from '../support/wording.ts';

const message = {
  more: (words: string, value: string, who: string) =>
    `“${words}”: more is not safer here. ${value} is above what the page allows for ${who}.`,
};

export const rule = defineRule({
  id: 'stricter-not-safer',
  stage: 'governance',
  severity: 'warning',
  settledBy: 'educator',
  why: 'Some limits have an upper end, and whoever goes beyond it out of caution damages the device.',
  source: 'practice',
  kinds: ['procedure'],
  check(procedure, { view, report }) {
    for (const step of stepsOf(procedure)) {
      const said = cautionIn(step);
      const values = said === undefined ? [] : setByStep(step);
      for (const value of values) {
        const setting = settingFor({}, view);
        const above = reachOf(step, procedure, view).flatMap((device) => {
          const broken = contradictionOf(value, device, setting);
          return broken !== undefined && isAbove(value.quantity, broken.requirement) ? [broken] : [];
        });
        if (said === undefined || above.length === 0) continue;
        const title = ownTitles[value.field];
        const words = `${title.charAt(0).toUpperCase()}${title.slice(1)} ${shown(value.quantity)}`;
        report({
          at: said.text.at,
          message: message.more(said.words, words, whoAsks(above)),
          does: stepInWords(step),
          ...evidenceOf(above),
        });
        break;
      }
    }
  },
  examples: {
    bad: [
      `
=== procedures/p.ifu.yaml
kind: procedure
id: p
applies_to: [scissors]
steps: [{stage: manual, do: soak, time: 40 min, note: double the soak to be safe}]
                                                      ^^^^^^^^^^^^^^^^^^^^^^^^^^ “to be safe”: more is not safer here. A soak of 40 min is above what the page allows for "scissors" (at most 20 min).
=== devices/scissors.ifu.yaml
kind: device
id: scissors
manual: {soak: {at_most: 20 min, src: s2}}
statements:
  s2: {doc: SC-3, rev: A, page: 4, quote: "Soak for at most 20 minutes."}
`,
      `
=== procedures/eye.ifu.yaml
kind: procedure
id: eye
applies_to: [tip]
steps:
  - {stage: steam, do: sterilize, exposure: 30 min, why: "longer, just in case"}
                                                         ^^^^^^^^^^^^^^^^^^^^^^ “just in case”: more is not safer here. An exposure of 30 min is above what the page allows for "tip" (3-18 min).
=== devices/tip.ifu.yaml
kind: device
id: tip
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, context: terminal, exposure: {between: [3 min, 18 min], src: s1}}
statements:
  s1: {doc: TI-1, rev: A, page: 2, quote: "134 °C, 3 to 18 minutes."}
`,
    ],
    good: [
      `
=== procedures/p.ifu.yaml
kind: procedure
id: p
applies_to: [scissors]
steps: [{stage: manual, do: soak, time: 15 min, note: a little longer to be safe}]
=== devices/scissors.ifu.yaml
kind: device
id: scissors
manual: {soak: {at_most: 20 min}}
`,
      `
=== procedures/p.ifu.yaml
kind: procedure
id: p
applies_to: [scissors]
steps: [{stage: manual, do: soak, time: 40 min, note: until the next shift}]
=== devices/scissors.ifu.yaml
kind: device
id: scissors
manual: {soak: {at_most: 20 min}}
`,
    ],
  },
});

function cautionIn(step: ProcedureStep): { readonly text: Text; readonly words: string } | undefined {
  for (const text of [step.note, step.why, step.do]) {
    const words = text === undefined ? undefined : saidIn(text.text, caution);
    if (text !== undefined && words !== undefined) return { text, words };
  }
  return undefined;
}
