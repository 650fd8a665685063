import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import { defineRule } from '../rule.ts';
import { closedWords, leakProofWords, markedWords, openWords } from '../support/cleaning-words.ts';
import { listed } from '../support/lists.ts';
import { isCleaning, isPastCleaning, placeOf, stepInWords, stepsOf } from '../support/steps.ts';
import { isMentioned, saidIn } from '../support/wording.ts';

const message = {
  none: 'This step takes used items through the building and names no container. It must be closed, keep liquid in, and be marked.',
  lacking: (container: string, what: string) =>
    `As far as it is described, the container "${container}" is not ${what}.`,
};

export const rule = defineRule({
  id: 'transport-not-contained',
  stage: 'point-of-use',
  severity: 'error',
  settledBy: 'OR',
  why: 'What drips or pricks on the way harms people who have nothing to do with it.',
  source: 'standard',
  kinds: ['procedure'],
  check(procedure, { report }) {
    if (procedure.starts_at !== undefined && isPastCleaning(procedure.starts_at)) return;
    for (const step of stepsOf(procedure)) {
      if (isCleaning(step.stage) || isPastCleaning(step.stage)) return;
      if (step.stage?.text !== 'transport') continue;
      if (step.container === undefined) {
        report({ at: placeOf(step), message: message.none, does: stepInWords(step) });
        continue;
      }
      const lacking = lackingIn(step, step.container.text);
      if (lacking.length > 0)
        report({
          at: step.container.at,
          message: message.lacking(step.container.text, listed(lacking)),
          does: stepInWords(step),
        });
    }
  },
  examples: {
    bad: [
      `
kind: procedure
id: clinic-return
steps: [{stage: transport, container: open-tray}]
                                      ^^^^^^^^^ As far as it is described, the container "open-tray" is not closed, leak-proof and marked.
`,
      `
kind: procedure
id: case-end
steps:
  - {stage: point-of-use, do: wipe, agent: water}
  - {stage: transport, do: push the cart to the department}
                           ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ This step takes used items through the building and names no container. It must be closed, keep liquid in, and be marked.
`,
      `
kind: procedure
id: night-return
steps:
  - {stage: point-of-use, do: keep-moist, agent: gel}
  - {stage: transport, container: closed rigid box}
                                  ^^^^^^^^^^^^^^^^ As far as it is described, the container "closed rigid box" is not marked.
`,
    ],
    good: [
      `
kind: procedure
id: clinic-return
steps:
  - {stage: transport, container: closed-rigid-labelled, label: biohazard}
`,
      `
kind: procedure
id: case-end
steps:
  - {stage: transport, container: lidded leak-proof bin, label: biohazard}
`,
      `
kind: procedure
id: ward-delivery
starts_at: storage
steps:
  - {stage: storage, do: take from the shelf}
  - {stage: transport, do: bring to the ward}
`,
    ],
  },
});

/** What is not said of the container: it may be so all the same, and then a word is missing. */
function lackingIn(step: ProcedureStep, container: string): readonly string[] {
  const text = [container, step.do?.text, step.note?.text].filter((part) => part !== undefined).join('. ');
  const lacking: string[] = [];
  if (saidIn(container, openWords) !== undefined || saidIn(text, closedWords) === undefined) lacking.push('closed');
  if (saidIn(text, leakProofWords) === undefined) lacking.push('leak-proof');
  if (step.label === undefined && !isMentioned(text, markedWords)) lacking.push('marked');
  return lacking;
}
