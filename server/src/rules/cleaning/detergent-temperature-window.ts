import type { Agent } from '../../judge/agents.ts';
import { isDetergent, judgeWindow } from '../../judge/agents.ts';
import { givenOf } from '../../judge/given.ts';
import type { Setting } from '../../judge/setting.ts';
import type { MachinePhase } from '../../model/entities/washer.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { Quantity } from '../../model/node.ts';
import { formatQuantity } from '../../quantity/format.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { agentNamed, agentOfStep, agentsOfCycle } from '../support/agents.ts';
import { settingFor } from '../support/judging.ts';
import { stepInWords, stepsOf } from '../support/steps.ts';

const message = {
  outside: (temp: string, agent: string, window: string) =>
    `${temp} is outside the temperature at which ${agent} works (${window}).`,
};

export const rule = defineRule({
  id: 'detergent-temperature-window',
  stage: 'cleaning',
  severity: 'error',
  settledBy: 'manager',
  why: 'Enzymes idle when cold and die when hot, and other detergents foam or lose their force.',
  source: 'logic',
  kinds: ['procedure', 'washer', 'ultrasonic'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'procedure')) checkProcedure(entity, context);
    else if (isOfKind(entity, 'washer')) checkWasher(entity, context);
    else if (isOfKind(entity, 'ultrasonic')) checkBath(entity, context);
  },
  examples: {
    bad: [
      `
=== procedures/bench.ifu.yaml
kind: procedure
id: bench
steps: [{stage: manual, do: soak, chemistry: C1, temp: 60 C}]
                                                       ^^^^ 60 °C is outside the temperature at which C1 works (20-45 °C).
=== chemistry/c1.ifu.yaml
kind: chemistry
id: C1
temp: {between: [20 C, 45 C], src: s2}
statements:
  s2: {doc: SM-C1, rev: "2", page: 1, quote: "Use between 20 °C and 45 °C."}
`,
      `
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles:
  - id: W1-gentle
    doses: [C2, milk]
    phases: [{phase: prewash, temp: 20 C}, {phase: wash, temp: 45 C, time: 8 min}]
                                                               ^^^^ 45 °C is outside the temperature at which C2 works (50-70 °C).
=== chemistry/c2.ifu.yaml
kind: chemistry
id: C2
class: mild-alkaline
temp: {between: [50 C, 70 C]}
=== chemistry/milk.ifu.yaml
kind: chemistry
id: milk
class: lubricant
`,
      `
=== ultrasonics/u1.ifu.yaml
kind: ultrasonic
id: U1
temp: 50 C
      ^^^^ 50 °C is outside the temperature at which C1 works (at most 43 °C).
chemistry: C1
=== chemistry/c1.ifu.yaml
kind: chemistry
id: C1
temp: {at_most: 43 C}
`,
    ],
    good: [
      `
=== procedures/bench.ifu.yaml
kind: procedure
id: bench
steps:
  - {stage: manual, do: soak, chemistry: C1, temp: 35 C}
  - {stage: manual, do: rinse, water: tap, temp: 60 C}
=== chemistry/c1.ifu.yaml
kind: chemistry
id: C1
temp: {between: [20 C, 45 C]}
`,
      `
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles:
  - id: W1-std
    doses: [C2]
    phases: [{phase: prewash, temp: 20 C}, {phase: wash, temp: 60 C}, {phase: thermal, temp: 90 C}]
=== chemistry/c2.ifu.yaml
kind: chemistry
id: C2
class: mild-alkaline
temp: {between: [50 C, 70 C]}
`,
    ],
  },
});

function checkProcedure(procedure: EntityOf['procedure'], context: RuleContext): void {
  for (const step of stepsOf(procedure)) {
    const agent = agentOfStep(step, context.view);
    if (agent !== undefined && step.temp !== undefined)
      judge(agent, step.temp, stepInWords(step), settingFor({}, context.view), context);
  }
}

function checkBath(bath: EntityOf['ultrasonic'], context: RuleContext): void {
  if (bath.chemistry === undefined || bath.temp === undefined) return;
  judge(
    agentNamed(bath.chemistry, context.view),
    bath.temp,
    `the bath runs at ${formatQuantity(bath.temp)}`,
    settingFor(bath, context.view),
    context,
  );
}

function checkWasher(washer: EntityOf['washer'], context: RuleContext): void {
  for (const cycle of washer.cycles?.items ?? []) {
    const agents = agentsOfCycle(washer, cycle, context.view);
    for (const phase of cycle.phases?.items ?? []) {
      const agent = phase.temp === undefined ? undefined : agentOfPhase(phase, agents);
      if (agent !== undefined && phase.temp !== undefined)
        judge(
          agent,
          phase.temp,
          `${cycle.id?.text ?? ''}, ${phase.phase?.text ?? ''}`,
          settingFor(washer, context.view),
          context,
        );
    }
  }
}

/** The phase's own agent; else the only detergent of the cycle, in the phases that wash. */
function agentOfPhase(phase: MachinePhase, agents: readonly Agent[]): Agent | undefined {
  if (phase.chemistry !== undefined) return agents.find((agent) => agent.word.text === phase.chemistry?.text);
  if (phase.phase?.text !== 'wash') return undefined;
  const detergents = agents.filter(isDetergent);
  return detergents.length === 1 ? detergents[0] : undefined;
}

function judge(agent: Agent, temp: Quantity, does: string, setting: Setting, { report }: RuleContext): void {
  const judgement = judgeWindow(agent, '', { given: givenOf(temp), at: temp.at }, setting)[0];
  if (judgement?.outcome !== 'fails') return;
  report({
    at: temp.at,
    message: message.outside(formatQuantity(temp), agent.word.text, judgement.required),
    does,
    says: judgement.says,
    ...(judgement.gap !== undefined && { gap: judgement.gap }),
    related: [{ at: judgement.demandAt, note: `what the label of ${agent.word.text} says` }],
  });
}
