import type { Agent, AgentQuestion } from '../../judge/agents.ts';
import { isDetergent, judgeAgent } from '../../judge/agents.ts';
import { saysOf } from '../../judge/judgement.ts';
import type { Judgement } from '../../judge/outcome.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { Text } from '../../model/node.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { agentFailures, agentNamed, agentOfStep, methodOf } from '../support/agents.ts';
import type { Failure } from '../support/failures.ts';
import { evidenceOf, whoAsks } from '../support/failures.ts';
import { settingFor } from '../support/judging.ts';
import { listed } from '../support/lists.ts';
import { reachOf, stepInWords, stepsOf } from '../support/steps.ts';

const message = {
  method: (agent: string, method: string, labelled: string) =>
    `${agent} is not labelled for ${method}. Its label names ${labelled}.`,
  foam: (agent: string) => `${agent} foams, and foam stops the spray arms of a washer.`,
  wrongClass: (agent: string, who: string) => `${agent} is not the kind of detergent that is asked for by ${who}.`,
};

/** Ways of using an agent as people name them. */
const ways: ReadonlyMap<string, string> = new Map([
  ['manual', 'cleaning by hand'],
  ['ultrasonic', 'ultrasonic baths'],
  ['mechanical', 'washers'],
  ['disinfection', 'disinfection'],
  ['point-of-use', 'the point of use'],
  ['lubrication', 'lubrication'],
]);

export const rule = defineRule({
  id: 'detergent-wrong-method',
  stage: 'cleaning',
  severity: 'error',
  settledBy: 'manager',
  why: 'Foam stops spray arms and blinds pumps, and a detergent made for a washer burns hands and does not clean a sink load.',
  source: 'practice',
  kinds: ['procedure', 'washer', 'ultrasonic'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'procedure')) checkProcedure(entity, context);
    else if (isOfKind(entity, 'washer')) checkWasher(entity, context);
    else if (isOfKind(entity, 'ultrasonic') && entity.chemistry !== undefined)
      checkLabel(agentNamed(entity.chemistry, context.view), entity.chemistry, 'ultrasonic', context);
  },
  examples: {
    bad: [
      `
=== washers/w1.ifu.yaml
kind: washer
id: W1
doses: [C1]
        ^^ C1 is not labelled for washers. Its label names cleaning by hand and ultrasonic baths.
=== chemistry/c1.ifu.yaml
kind: chemistry
id: C1
class: neutral-enzymatic
methods: [manual, ultrasonic]
src: s1
statements:
  s1: {doc: SM-C1, rev: "2", page: 1, quote: "For manual and ultrasonic cleaning."}
`,
      `
=== procedures/eye.ifu.yaml
kind: procedure
id: lumen-bench
applies_to: [suction-tube]
steps:
  - {stage: manual, do: soak, chemistry: C4, time: 5 min}
                                         ^^ C4 is not the kind of detergent that is asked for by "suction-tube" (enzymatic).
=== devices/tube.ifu.yaml
kind: device
id: suction-tube
manual: {detergent: {class: [enzymatic], src: s1}}
statements:
  s1: {doc: QM-31, rev: E, page: 4, quote: "Soak in an enzymatic detergent."}
=== chemistry/c4.ifu.yaml
kind: chemistry
id: C4
class: neutral
methods: [manual]
`,
      `
=== procedures/eye.ifu.yaml
kind: procedure
id: eye-bench
applies_to: [eye-tip]
steps:
  - {stage: ultrasonic, do: sonicate, chemistry: C1, time: 5 min}
                                                 ^^ C1 is not the kind of detergent that is asked for by "eye-tip" (no enzymatic).
=== devices/tip.ifu.yaml
kind: device
id: eye-tip
ultrasonic: {use: required, irrigated: true}
not: [{what: enzymatic, src: s1}]
statements:
  s1: {doc: ET-1, rev: B, page: 4, quote: "Never use enzymatic agents."}
=== chemistry/c1.ifu.yaml
kind: chemistry
id: C1
class: neutral-enzymatic
methods: [manual, ultrasonic]
`,
      `
=== washers/w2.ifu.yaml
kind: washer
id: W2
cycles: [{id: W2-std, doses: [C9]}]
                              ^^ C9 foams, and foam stops the spray arms of a washer.
=== chemistry/c9.ifu.yaml
kind: chemistry
id: C9
class: neutral
methods: [manual, mechanical]
foam: high
`,
    ],
    good: [
      `
=== washers/w1.ifu.yaml
kind: washer
id: W1
doses: [C2, milk]
=== chemistry/c2.ifu.yaml
kind: chemistry
id: C2
class: mild-alkaline
methods: [mechanical]
foam: low
=== chemistry/milk.ifu.yaml
kind: chemistry
id: milk
class: lubricant
methods: [mechanical, lubrication]
`,
      `
=== procedures/bench.ifu.yaml
kind: procedure
id: lumen-bench
applies_to: [suction-tube]
steps: [{stage: manual, do: soak, chemistry: C1}]
=== devices/tube.ifu.yaml
kind: device
id: suction-tube
manual: {detergent: {class: [enzymatic]}}
=== chemistry/c1.ifu.yaml
kind: chemistry
id: C1
class: neutral-enzymatic
methods: [manual, ultrasonic]
`,
    ],
  },
});

function checkProcedure(procedure: EntityOf['procedure'], context: RuleContext): void {
  for (const step of stepsOf(procedure)) {
    const agent = step.chemistry === undefined ? undefined : agentOfStep(step, context.view);
    const method =
      step.stage?.text === 'point-of-use' || step.stage?.text === 'lubrication'
        ? step.stage.text
        : methodOf(step.stage);
    if (agent === undefined || method === undefined) continue;
    if (checkLabel(agent, agent.word, method, context) === 'reported') continue;
    if (isDetergent(agent)) checkClass(agent, step, procedure, context);
  }
}

function checkWasher(washer: EntityOf['washer'], context: RuleContext): void {
  const named = [
    ...(washer.doses?.items ?? []),
    ...(washer.cycles?.items ?? []).flatMap((cycle) => [
      ...(cycle.doses?.items ?? []),
      ...(cycle.phases?.items ?? []).map((phase) => phase.chemistry),
    ]),
  ];
  const seen = new Set<string>();
  for (const word of named) {
    if (word === undefined || seen.has(word.text)) continue;
    seen.add(word.text);
    const agent = agentNamed(word, context.view);
    if (checkLabel(agent, word, 'mechanical', context) === 'reported' || agent.chemistry?.foam?.text !== 'high')
      continue;
    context.report({
      at: word.at,
      message: message.foam(word.text),
      related: [{ at: agent.chemistry.foam.at, note: 'what its file says' }],
    });
  }
}

function checkLabel({ chemistry }: Agent, word: Text, method: string, { report }: RuleContext): 'reported' | 'fits' {
  const labelled = chemistry?.methods?.items.map((one) => one.text as string);
  if (chemistry === undefined || labelled === undefined || labelled.includes(method)) return 'fits';
  report({
    at: word.at,
    message: message.method(word.text, ways.get(method) ?? method, listed(labelled.map((one) => ways.get(one) ?? one))),
    says: saysOf(chemistry, chemistry.src),
    related: [{ at: chemistry.methods?.at ?? chemistry.at, note: 'what its file says' }],
    settledBy: 'vendor',
  });
  return 'reported';
}

/** Of all that the agent is judged by, what it is. */
function judgeKind(question: AgentQuestion): readonly Judgement[] {
  return judgeAgent(question).filter(
    ({ parameter, demandedBy }) =>
      parameter === 'prohibition' || (parameter === 'chemistry' && demandedBy.startsWith('device/')),
  );
}

/** What the instruction asks the detergent to be: its class, its name, what it must not hold, what the page forbids altogether. */
function checkClass(
  agent: Agent,
  step: ProcedureStep,
  procedure: EntityOf['procedure'],
  { view, report }: RuleContext,
): void {
  const method = methodOf(step.stage);
  if (method === undefined) return;
  const setting = settingFor({}, view);
  const failures: Failure[] = [];
  for (const device of reachOf(step, procedure, view)) {
    const judgement = agentFailures(device, agent, method, setting, judgeKind)[0];
    if (judgement !== undefined) failures.push({ device, judgement });
  }
  if (failures.length > 0)
    report({
      at: agent.word.at,
      message: message.wrongClass(agent.word.text, whoAsks(failures)),
      does: stepInWords(step),
      ...evidenceOf(failures),
    });
}
