import type { LibraryView } from '../../library/view.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import { defineRule } from '../rule.ts';
import { rinsing, soaking } from '../support/cleaning-words.ts';
import { isAct, placeOf, stepInWords, stepsOf } from '../support/steps.ts';

const message = {
  missing: (next: string) => `Items are still wet here: nothing dries them between the last water and ${next}.`,
};

export const rule = defineRule({
  id: 'drying-missing',
  stage: 'rinsing',
  severity: 'error',
  settledBy: 'manager',
  why: 'Water that is packed with the item wets the pack, thins the agent and stops low-temperature cycles.',
  source: 'standard',
  kinds: ['procedure'],
  check(procedure, { view, report }) {
    let wet: ProcedureStep | undefined;
    for (const step of stepsOf(procedure)) {
      if (dries(step, view)) wet = undefined;
      else if (wets(step)) wet = step;
      else if (wet !== undefined && packs.has(step.stage?.text ?? '')) {
        report({
          at: placeOf(step),
          message: message.missing(step.stage?.text ?? ''),
          does: stepInWords(wet),
          related: [{ at: placeOf(wet), note: 'last water' }],
        });
        return;
      }
    }
  },
  examples: {
    bad: [
      `
kind: procedure
id: eye
steps: [{do: final-rinse}, {stage: packaging}, {stage: steam}]
                                   ^^^^^^^^^ Items are still wet here: nothing dries them between the last water and packaging.
`,
      `
=== procedures/quick.ifu.yaml
kind: procedure
id: quick
steps:
  - {stage: manual, do: soak, chemistry: C1, dose: 4 mL/L}
  - {stage: manual, do: rinse, water: tap}
  - {stage: inspection, do: visual}
  - {stage: loading, do: load, cycle: S1-4}
                         ^^^^ Items are still wet here: nothing dries them between the last water and loading.
=== sterilizers/s1.ifu.yaml
kind: sterilizer
id: S1
cycles: [{id: S1-4}]
`,
    ],
    good: [
      `
kind: procedure
id: eye
steps:
  - {stage: rinse, do: final-rinse}
  - {stage: drying, do: dry, endpoint: no visible moisture}
  - {stage: packaging, do: pack}
`,
      `
=== procedures/machine.ifu.yaml
kind: procedure
id: machine
steps:
  - {stage: manual, do: rinse}
  - {stage: mechanical, do: wash, cycle: W1-std}
  - {stage: packaging, do: pack}
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles: [{id: W1-std, phases: [{phase: wash, temp: 60 C}, {phase: dry, temp: 95 C, time: 15 min}]}]
`,
      `
kind: procedure
id: sink
steps: [{stage: manual, do: rinse, water: tap}]
`,
    ],
  },
});

const packs: ReadonlySet<string> = new Set(['packaging', 'loading', 'steam', 'low-temperature', 'sterilization']);
const wetStages: ReadonlySet<string> = new Set(['rinse', 'mechanical', 'ultrasonic', 'disinfection']);

function wets(step: ProcedureStep): boolean {
  const stage = step.stage?.text;
  if (wetStages.has(stage ?? '')) return true;
  const isWash = stage === undefined || stage === 'manual';
  return (
    isWash && (isAct(step, rinsing) || isAct(step, soaking) || step.water !== undefined || step.chemistry !== undefined)
  );
}

/** A drying stage, or a washer cycle that ends with hot air. */
function dries(step: ProcedureStep, view: LibraryView): boolean {
  if (step.stage?.text === 'drying') return true;
  const washing = step.cycle === undefined ? undefined : view.washerCycle(step.cycle.text);
  return washing?.cycle.phases?.items.some((phase) => phase.phase?.text === 'dry') === true;
}
