import { saysOf } from '../../judge/judgement.ts';
import type { LibraryView } from '../../library/view.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import { defineRule } from '../rule.ts';
import { agentOfStep } from '../support/agents.ts';
import { rinsing } from '../support/cleaning-words.ts';
import { isAct, isPastCleaning, placeOf, stepInWords, stepsOf } from '../support/steps.ts';

const message = {
  missing: (agent: string, next: string) =>
    `${agent} is not rinsed off: the next stage is ${next}. Add a rinse before it.`,
};

export const rule = defineRule({
  id: 'rinse-after-chemistry-missing',
  stage: 'cleaning',
  severity: 'error',
  settledBy: 'manager',
  why: 'What stays of a detergent stains the instrument and inflames tissue.',
  source: 'standard',
  kinds: ['procedure'],
  check(procedure, { view, report }) {
    let pending: ProcedureStep | undefined;
    for (const step of stepsOf(procedure)) {
      if (pending !== undefined && isPastCleaning(step.stage)) {
        const agent = agentOfStep(pending, view);
        const chemistry = agent?.chemistry;
        report({
          at: agent?.word.at ?? placeOf(pending),
          message: message.missing(agent?.word.text ?? '', step.stage?.text ?? ''),
          does: stepInWords(pending),
          says: chemistry === undefined ? [] : saysOf(chemistry, chemistry.rinse?.src),
          related: [{ at: placeOf(step), note: 'next stage' }],
        });
        pending = undefined;
      }
      if (isRinse(step)) pending = undefined;
      else if (leavesResidue(step, view)) pending = step;
    }
  },
  examples: {
    bad: [
      `
kind: procedure
id: bench
steps: [{stage: manual, do: soak, chemistry: C1}, {stage: drying}]
                                             ^^ C1 is not rinsed off: the next stage is drying. Add a rinse before it.
`,
      `
=== procedures/bath.ifu.yaml
kind: procedure
id: bath
steps:
  - {stage: manual, do: rinse, order: first, water: tap}
  - {stage: ultrasonic, do: sonicate, chemistry: C1, time: 10 min}
                                                 ^^ C1 is not rinsed off: the next stage is inspection. Add a rinse before it.
  - {stage: inspection, do: visual}
  - {stage: packaging, do: pack}
=== chemistry/c1.ifu.yaml
kind: chemistry
id: C1
class: neutral-enzymatic
rinse: {use: required, src: s3}
statements:
  s3: {doc: SM-C1, rev: "2", page: 1, quote: "Rinse after use."}
`,
    ],
    good: [
      `
kind: procedure
id: bench
steps:
  - {stage: manual, do: soak, chemistry: C1}
  - {stage: manual, do: rinse, water: tap}
  - {stage: drying, do: dry}
`,
      `
=== procedures/care.ifu.yaml
kind: procedure
id: care
steps:
  - {stage: manual, do: soak, chemistry: C1}
  - {stage: mechanical, do: wash}
  - {stage: lubrication, do: lubricate, chemistry: milk}
  - {stage: packaging, do: pack}
=== chemistry/milk.ifu.yaml
kind: chemistry
id: milk
class: lubricant
`,
    ],
  },
});

/** A machine rinses by itself, and a flush is a rinse from inside. */
function isRinse(step: ProcedureStep): boolean {
  if (step.stage?.text === 'mechanical' || step.stage?.text === 'rinse') return true;
  return step.chemistry === undefined && isAct(step, rinsing);
}

/** Agents that are meant to stay, or to evaporate. */
const staying: ReadonlySet<string> = new Set(['lubricant', 'alcohol', 'rinse-aid', 'keep-moist']);
const stages: ReadonlySet<string> = new Set(['manual', 'ultrasonic', 'disinfection']);

function leavesResidue(step: ProcedureStep, view: LibraryView): boolean {
  if (step.chemistry === undefined || !stages.has(step.stage?.text ?? '')) return false;
  const chemistry = view.get('chemistry', step.chemistry.text);
  return !staying.has(chemistry?.class?.text ?? '') && chemistry?.rinse?.use?.text !== 'forbidden';
}
