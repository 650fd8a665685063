import type { Agent } from '../../judge/agents.ts';
import { isDetergent } from '../../judge/agents.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import { formatQuantity } from '../../quantity/format.ts';
import type { Report } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { agentOfStep, methodOf } from '../support/agents.ts';
import { insertField } from '../support/flow-edits.ts';
import { stepInWords, stepsOf } from '../support/steps.ts';

const message = {
  missing: (agent: string) => `This step does not say how much ${agent} goes into the water, nor what measures it.`,
  label: (dose: string) => `the label says ${dose}`,
  fix: (dose: string) => `Enter the dose of the label, ${dose}`,
};

export const rule = defineRule({
  id: 'detergent-dose-missing',
  stage: 'cleaning',
  severity: 'error',
  settledBy: 'manager',
  why: 'A glug is not a concentration.',
  source: 'standard',
  fix: 'Enters the dose that the label of the detergent gives.',
  kinds: ['procedure'],
  check(procedure, { view, report }) {
    for (const step of stepsOf(procedure)) {
      const agent = step.chemistry === undefined ? undefined : agentOfStep(step, view);
      if (agent !== undefined && needsDose(step, agent)) report(missing(step, agent));
    }
  },
  examples: {
    bad: [
      `
kind: procedure
id: bench
steps: [{stage: manual, do: soak, chemistry: C1, time: 5 min}]
                                             ^^ This step does not say how much C1 goes into the water, nor what measures it.
`,
      `
=== procedures/bench.ifu.yaml
kind: procedure
id: bench
steps:
  - {stage: manual, do: rinse, order: first, water: tap}
  - {stage: ultrasonic, do: sonicate, chemistry: C1, time: 10 min}
                                                 ^^ This step does not say how much C1 goes into the water, nor what measures it.
=== chemistry/c1.ifu.yaml
kind: chemistry
id: C1
class: neutral-enzymatic
dose: 4 mL/L
`,
    ],
    good: [
      `
kind: procedure
id: bench
steps: [{stage: manual, do: soak, chemistry: C1, dose: 4 mL/L, time: 5 min}]
`,
      `
=== procedures/bench.ifu.yaml
kind: procedure
id: bench
steps:
  - {stage: manual, do: soak, chemistry: C1, time: 5 min}
  - {stage: mechanical, do: wash, chemistry: C2}
  - {stage: lubrication, do: lubricate, chemistry: milk}
=== chemistry/c1.ifu.yaml
kind: chemistry
id: C1
class: neutral-enzymatic
dosing_aid: sink pump
`,
    ],
  },
});

/** A machine doses by itself; lubricants, alcohol and the like are used as they come. An agent without a file may be a concentrate. */
function needsDose(step: ProcedureStep, agent: Agent): boolean {
  const method = methodOf(step.stage);
  if (method === undefined || method === 'mechanical' || step.dose !== undefined || step.dosing_aid !== undefined)
    return false;
  const { chemistry } = agent;
  return (
    chemistry === undefined ||
    (chemistry.dosing_aid === undefined &&
      (isDetergent(agent) || chemistry.class === undefined || chemistry.class.text === 'disinfectant'))
  );
}

function missing(step: ProcedureStep, { word, chemistry }: Agent): Report {
  const dose = chemistry?.dose?.problem === undefined ? chemistry?.dose : undefined;
  const report: Report = { at: word.at, message: message.missing(word.text), does: stepInWords(step) };
  if (dose === undefined) return report;
  const edit = insertField(step, `dose: ${dose.text}`);
  return {
    ...report,
    related: [{ at: dose.at, note: message.label(formatQuantity(dose)) }],
    fixes: edit === undefined ? [] : [{ title: message.fix(formatQuantity(dose)), edits: [edit] }],
  };
}
