import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { agentOfStep } from '../support/agents.ts';
import { stepInWords, stepsOf } from '../support/steps.ts';
import { setApart } from '../support/word-lists.ts';
import { isMentioned } from '../support/wording.ts';

const message = {
  bath: (bath: string) => `The bath ("${bath}") is used again, and nothing says when the solution is changed.`,
  machine: 'Nothing says when the solution in this bath is changed.',
};

export const rule = defineRule({
  id: 'solution-change-missing',
  stage: 'cleaning',
  severity: 'advice',
  settledBy: 'manager',
  why: 'A used enzyme bath becomes a culture broth.',
  source: 'practice',
  kinds: ['procedure', 'ultrasonic'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'procedure')) checkProcedure(entity, context);
    else if (isOfKind(entity, 'ultrasonic')) checkMachine(entity, context);
  },
  examples: {
    bad: [
      `
kind: procedure
id: bench
steps: [{stage: manual, do: soak, chemistry: C1, bath: shared}]
                                                       ^^^^^^ The bath ("shared") is used again, and nothing says when the solution is changed.
`,
      `
=== ultrasonics/u1.ifu.yaml
kind: ultrasonic
id: U1
chemistry: C1
           ^^ Nothing says when the solution in this bath is changed.
=== chemistry/c1.ifu.yaml
kind: chemistry
id: C1
`,
    ],
    good: [
      `
kind: procedure
id: bench
steps:
  - {stage: manual, do: soak, chemistry: C1, bath: fresh}
  - {stage: manual, do: soak, chemistry: C1, bath: shared, solution_change: after each set}
`,
      `
=== ultrasonics/u1.ifu.yaml
kind: ultrasonic
id: U1
chemistry: C1
=== chemistry/c1.ifu.yaml
kind: chemistry
id: C1
solution_change: after each use
`,
    ],
  },
});

function checkProcedure(procedure: EntityOf['procedure'], { view, report }: RuleContext): void {
  for (const step of stepsOf(procedure)) {
    if (step.bath === undefined || step.solution_change !== undefined || isOnce(step.bath.text)) continue;
    if (isChangedByLabel(step, view) || (step.chemistry ?? step.agent) === undefined) continue;
    report({ at: step.bath.at, message: message.bath(step.bath.text), does: stepInWords(step) });
  }
}

function isOnce(bath: string): boolean {
  return bath === 'fresh' || isMentioned(bath, [['fresh'], ['new'], ...setApart]);
}

function isChangedByLabel(step: ProcedureStep, view: RuleContext['view']): boolean {
  return agentOfStep(step, view)?.chemistry?.solution_change !== undefined;
}

function checkMachine(bath: EntityOf['ultrasonic'], { view, report }: RuleContext): void {
  if (
    bath.chemistry === undefined ||
    bath.solution_change !== undefined ||
    bath.proposed?.on === true ||
    bath.withdrawn_on !== undefined
  )
    return;
  if (view.get('chemistry', bath.chemistry.text)?.solution_change !== undefined) return;
  report({ at: bath.chemistry.at, message: message.machine });
}
