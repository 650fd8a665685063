import { defineRule } from '../rule.ts';
import { immediateUsePlace } from '../support/iuss.ts';
import { stepsOf } from '../support/steps.ts';

const message = {
  stored:
    'This stores what went through immediate use. Immediate use is for this patient, now: what is not used at once goes back to cleaning.',
};

export const rule = defineRule({
  id: 'iuss-stored',
  stage: 'immediate-use',
  severity: 'error',
  settledBy: 'manager',
  why: 'Nothing shows that an item from immediate use stays as it was for longer than the way to the field.',
  source: 'guideline',
  kinds: ['procedure'],
  check(procedure, { view, report }) {
    const use = immediateUsePlace(procedure, view);
    if (use === undefined) return;
    let cycle = false;
    for (const step of stepsOf(procedure)) {
      if (cycle && step.stage?.text === 'storage') {
        report({ at: step.stage.at, message: message.stored, related: [{ at: use, note: 'for immediate use' }] });
        return;
      }
      cycle ||= sterilizing.has(step.stage?.text ?? '');
    }
  },
  examples: {
    bad: [
      `
kind: procedure
id: drop
context: iuss
steps: [{stage: steam}, {stage: storage}]
                                ^^^^^^^ This stores what went through immediate use. Immediate use is for this patient, now: what is not used at once goes back to cleaning.
`,
      `
=== procedures/spare-drill.ifu.yaml
kind: procedure
id: spare-drill
steps:
  - {stage: steam, cycle: quick-132}
  - {stage: cooling, do: cool}
  - {stage: storage, do: keep in the theatre cupboard}
            ^^^^^^^ This stores what went through immediate use. Immediate use is for this patient, now: what is not used at once goes back to cleaning.
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: quick-132, modality: steam-prevac, context: iuss}
`,
    ],
    good: [
      `
kind: procedure
id: drop
context: iuss
steps: [{stage: steam}, {stage: use, do: hand over in the closed container}]
`,
      `
kind: procedure
id: evening
context: terminal
steps: [{stage: steam}, {stage: cooling}, {stage: storage}]
`,
    ],
  },
});

const sterilizing: ReadonlySet<string> = new Set(['steam', 'sterilization', 'low-temperature']);
