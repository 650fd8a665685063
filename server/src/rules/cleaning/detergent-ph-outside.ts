import type { Agent, CleaningMethod } from '../../judge/agents.ts';
import { judgePh } from '../../judge/agents.ts';
import { waysThrough } from '../../judge/demands.ts';
import type { Setting } from '../../judge/setting.ts';
import type { LibraryView } from '../../library/view.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind, rootOfEntity } from '../../model/entity.ts';
import type { Text } from '../../model/node.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { agentFailures, agentNamed, agentOfStep, agentsOfCycle, methodOf } from '../support/agents.ts';
import { membersOf } from '../support/applies.ts';
import { banOf, isOutOfScope } from '../support/cleaning-ways.ts';
import type { Failure } from '../support/failures.ts';
import { evidenceOf, whoAsks } from '../support/failures.ts';
import { settingFor } from '../support/judging.ts';
import { listed } from '../support/lists.ts';
import { reachOf, stepsOf } from '../support/steps.ts';

type Device = EntityOf['device'];

const message = {
  outside: (agent: string, ph: string, who: string, others: string) =>
    `${agent} has a pH in use of ${ph}. That is outside what the instruction allows for ${who}.${others}`,
  others: (names: string) => ` In stock and inside: ${names}.`,
  cycle: (cycle: string, agent: string) => `${cycle} doses ${agent}`,
  step: (agent: string) => `this step uses ${agent}`,
};

export const rule = defineRule({
  id: 'detergent-ph-outside',
  stage: 'cleaning',
  severity: 'error',
  settledBy: 'manager',
  why: 'A detergent that is too alkaline or too acid dissolves what it should clean.',
  source: 'standard',
  kinds: ['procedure', 'set'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'procedure')) checkProcedure(entity, context);
    else if (isOfKind(entity, 'set')) checkSet(entity, context);
  },
  examples: {
    bad: [
      `
=== sets/knee.ifu.yaml
kind: set
id: knee
members: [{device: case, qty: 1}, {device: trials, qty: 1}]
washer_cycle: W1-std
              ^^^^^^ C2 has a pH in use of 10.2 to 10.6. That is outside what the instruction allows for "case" (6-8.5).
=== devices/case.ifu.yaml
kind: device
id: case
materials: [aluminium-anodised]
cleaning: {all_of: [{stage: mechanical, src: s2}]}
limits: {ph: {between: [6, 8.5], src: s3}}
statements:
  s2: {doc: OX-2, rev: A, page: 2, quote: "Clean in a washer-disinfector."}
  s3: {doc: OX-2, rev: A, page: 2, quote: "The in-use pH must lie between 6 and 8.5."}
=== devices/trials.ifu.yaml
kind: device
id: trials
cleaning: {all_of: [{stage: mechanical, detergent: {ph: {between: [6, 10.8]}}}]}
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles: [{id: W1-std, doses: [C2]}]
=== chemistry/c2.ifu.yaml
kind: chemistry
id: C2
class: mild-alkaline
methods: [mechanical]
ph_in_use: {between: [10.2, 10.6]}
`,
      `
=== procedures/camera.ifu.yaml
kind: procedure
id: camera
applies_to: [camera]
steps:
  - {stage: manual, do: wipe, chemistry: C3}
                                         ^^ C3 has a pH in use of 11.8 to 12.2. That is outside what the instruction allows for "camera" (6-8). In stock and inside: C1.
=== devices/camera.ifu.yaml
kind: device
id: camera
cleaning: {all_of: [{stage: manual, detergent: {ph: {between: [6, 8], of: in-use, src: s5}}}]}
statements:
  s5: {doc: CV-8, rev: G, page: 6, quote: "Use detergent with an in-use pH between 6 and 8."}
=== chemistry/c3.ifu.yaml
kind: chemistry
id: C3
class: strong-alkaline
methods: [manual]
ph_in_use: {between: [11.8, 12.2]}
=== chemistry/c1.ifu.yaml
kind: chemistry
id: C1
class: neutral-enzymatic
methods: [manual]
ph_in_use: {between: [7.0, 7.8]}
`,
    ],
    good: [
      `
=== sets/small.ifu.yaml
kind: set
id: small
members: [{device: clamp, qty: 1}]
washer_cycle: W1-std
=== devices/clamp.ifu.yaml
kind: device
id: clamp
limits: {ph: {between: [6, 8.5]}}
cleaning: {all_of: [{stage: manual}]}
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles: [{id: W1-std, doses: [C2]}]
=== chemistry/c2.ifu.yaml
kind: chemistry
id: C2
class: mild-alkaline
methods: [mechanical]
ph_in_use: {between: [10.2, 10.6]}
`,
      `
=== procedures/camera.ifu.yaml
kind: procedure
id: camera
applies_to: [camera]
steps: [{stage: manual, do: wipe, chemistry: C1}]
=== devices/camera.ifu.yaml
kind: device
id: camera
limits: {ph: {between: [6, 8]}}
=== chemistry/c1.ifu.yaml
kind: chemistry
id: C1
class: neutral-enzymatic
methods: [manual]
ph_in_use: {between: [7.0, 7.8]}
`,
    ],
  },
});

/** What one agent touches at one place of the file that is checked. */
interface Use {
  readonly at: Text;
  readonly agent: Agent;
  readonly method: CleaningMethod;
  readonly devices: readonly Device[];
  readonly does: string;
}

function checkProcedure(procedure: EntityOf['procedure'], context: RuleContext): void {
  for (const step of stepsOf(procedure)) {
    for (const use of usesOfStep(step, context.view))
      judgeUse({ ...use, devices: reachOf(step, procedure, context.view) }, settingFor({}, context.view), context);
  }
}

function usesOfStep(step: ProcedureStep, view: LibraryView): readonly Omit<Use, 'devices'>[] {
  const method = methodOf(step.stage);
  if (method === undefined) return [];
  const agent = agentOfStep(step, view);
  const uses = agent === undefined ? [] : [{ at: agent.word, agent, method, does: message.step(agent.word.text) }];
  const washing = step.cycle === undefined ? undefined : view.washerCycle(step.cycle.text);
  if (step.cycle === undefined || washing === undefined) return uses;
  const at = step.cycle;
  return [
    ...uses,
    ...agentsOfCycle(washing.machine, washing.cycle, view).map((dosed) => ({
      at,
      agent: dosed,
      method,
      does: message.cycle(at.text, dosed.word.text),
    })),
  ];
}

/** Members that their instruction does not send through a machine are no load of it; that they can't go there is another finding. */
function checkSet(set: EntityOf['set'], context: RuleContext): void {
  const { view } = context;
  const setting = settingFor(set, view);
  for (const name of [set.washer_cycle, ...(set.routes?.items.map((route) => route.washer_cycle) ?? [])]) {
    const washing = name === undefined ? undefined : view.washerCycle(name.text);
    if (name === undefined || washing === undefined) continue;
    const devices = membersOf(set, view).filter(
      (device) => banOf(device, 'mechanical') === undefined && waysThrough(device, 'mechanical', setting).length > 0,
    );
    for (const agent of agentsOfCycle(washing.machine, washing.cycle, view)) {
      judgeUse(
        { at: name, agent, method: 'mechanical', devices, does: message.cycle(name.text, agent.word.text) },
        setting,
        context,
      );
    }
  }
}

function judgeUse(use: Use, setting: Setting, { view, report }: RuleContext): void {
  const failures = failuresOf(use, use.agent, setting);
  const first = failures[0];
  if (first === undefined) return;
  const { chemistry } = use.agent;
  const others = othersThatFit(use, setting, view);
  const evidence = evidenceOf(failures);
  const label = chemistry?.ph_in_use ?? chemistry;
  report({
    at: use.at.at,
    message: message.outside(
      use.agent.word.text,
      first.judgement.given,
      whoAsks(failures),
      others.length === 0 ? '' : message.others(listed(others)),
    ),
    does: use.does,
    ...evidence,
    related: [
      ...(evidence.related ?? []),
      ...(label === undefined ? [] : [{ at: label.at, note: `pH of ${use.agent.word.text}` }]),
    ],
  });
}

function failuresOf({ devices, method }: Use, agent: Agent, setting: Setting): readonly Failure[] {
  const failures: Failure[] = [];
  for (const device of devices) {
    if (isOutOfScope(device)) continue;
    const judgement = agentFailures(device, agent, method, setting, judgePh)[0];
    if (judgement !== undefined) failures.push({ device, judgement });
  }
  return failures;
}

function othersThatFit(use: Use, setting: Setting, view: LibraryView): readonly string[] {
  const names: string[] = [];
  for (const chemistry of view.all('chemistry')) {
    const isFor = chemistry.methods?.items.some((method) => method.text === use.method) === true;
    const isGone = chemistry.discontinued_on !== undefined && chemistry.discontinued_on.text <= view.today;
    if (
      !isFor ||
      isGone ||
      chemistry.proposed?.on === true ||
      chemistry.ph_in_use === undefined ||
      chemistry.id === undefined
    )
      continue;
    if (failuresOf(use, agentNamed(chemistry.id, view), setting).length === 0) names.push(rootOfEntity(chemistry).id);
  }
  return names;
}
