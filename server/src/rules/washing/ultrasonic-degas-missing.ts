import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { defineRule } from '../rule.ts';
import { bathOf } from '../support/bath-uses.ts';
import { listed } from '../support/lists.ts';
import { placeOf, stepInWords, stepsOf } from '../support/steps.ts';

type Bath = EntityOf['ultrasonic'];

const message = {
  missing: (what: string) =>
    `Nothing is said about ${what}. Gas in fresh water swallows the sound, and a weak bath looks like a strong one.`,
  degas: 'driving the gas out of the fresh bath',
  test: 'the daily test that the bath works',
};

export const rule = defineRule({
  id: 'ultrasonic-degas-missing',
  stage: 'washing',
  severity: 'advice',
  settledBy: 'manager',
  why: 'Dissolved gas takes up the energy that should clean.',
  source: 'practice',
  kinds: ['procedure'],
  check(procedure, { view, report }) {
    for (const step of stepsOf(procedure)) {
      if (step.stage?.text !== 'ultrasonic') continue;
      const missing = missingIn(step, bathOf(step, view));
      if (missing.length > 0)
        report({ at: placeOf(step), message: message.missing(listed(missing)), does: stepInWords(step) });
    }
  },
  examples: {
    bad: [
      `
kind: procedure
id: us
steps: [{stage: ultrasonic, do: sonicate, time: 5 min}]
                                ^^^^^^^^ Nothing is said about driving the gas out of the fresh bath and the daily test that the bath works. Gas in fresh water swallows the sound, and a weak bath looks like a strong one.
`,
      `
=== procedures/us.ifu.yaml
kind: procedure
id: us
steps:
  - {stage: manual, do: rinse}
  - {stage: ultrasonic, do: sonicate, machine: U1, bath: fresh, time: 5 min}
                            ^^^^^^^^ Nothing is said about the daily test that the bath works. Gas in fresh water swallows the sound, and a weak bath looks like a strong one.
=== ultrasonics/u1.ifu.yaml
kind: ultrasonic
id: U1
degas: 10 min
`,
    ],
    good: [
      `
kind: procedure
id: us
steps: [{stage: ultrasonic, do: sonicate, time: 5 min, degas: 10 min, function_test: true}]
`,
      `
=== procedures/us.ifu.yaml
kind: procedure
id: us
steps: [{stage: ultrasonic, do: sonicate, machine: U1, time: 5 min, function_test: true}]
=== ultrasonics/u1.ifu.yaml
kind: ultrasonic
id: U1
degas: 10 min
`,
    ],
  },
});

/** The bath may degas by itself. */
function missingIn({ degas, function_test: tested }: ProcedureStep, bath: Bath | undefined): readonly string[] {
  const missing: string[] = [];
  if (degas === undefined && bath?.degas === undefined) missing.push(message.degas);
  if (tested?.on !== true) missing.push(message.test);
  return missing;
}
