import type { Agent } from '../../judge/agents.ts';
import { waysThrough } from '../../judge/demands.ts';
import { catchesAgent } from '../../judge/prohibitions.ts';
import type { LibraryView } from '../../library/view.ts';
import type { MaterialConflict } from '../../model/entities/site.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { Place, Text } from '../../model/node.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { agentOfStep, agentsOfCycle, methodOf } from '../support/agents.ts';
import { membersOf } from '../support/applies.ts';
import { banOf } from '../support/cleaning-ways.ts';
import { deviceName } from '../support/device-names.ts';
import { named } from '../support/failures.ts';
import { settingFor } from '../support/judging.ts';
import { siteOf } from '../support/site-limits.ts';
import { reachOf, stepInWords, stepsOf } from '../support/steps.ts';

type Device = EntityOf['device'];

const message = {
  harms: (agent: string, material: string, devices: string, reason: string) =>
    `${agent} harms ${material}, of which ${devices} is made${reason}.`,
  reason: (words: string) => `: it ${words}`,
  listed: (source: string) => `pair that the department knows to harm${source}`,
  label: 'material that the label names as unsuitable',
};

export const rule = defineRule({
  id: 'material-chemistry-conflict',
  stage: 'cleaning',
  severity: 'warning',
  settledBy: 'manager',
  why: 'pH is not the only way in which an agent attacks a material.',
  source: 'practice',
  kinds: ['procedure', 'set'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'procedure')) checkProcedure(entity, context);
    else if (isOfKind(entity, 'set')) checkSet(entity, context);
  },
  examples: {
    bad: [
      `
=== procedures/descale.ifu.yaml
kind: procedure
id: descale
applies_to: [tap-adapter]
steps: [{stage: manual, do: descale, chemistry: acid-remover}]
                                                ^^^^^^^^^^^^ acid-remover harms brass-chrome-plated, of which "tap-adapter" is made: it lifts the plating.
=== devices/adapter.ifu.yaml
kind: device
id: tap-adapter
materials: [brass-chrome-plated]
=== chemistry/acid.ifu.yaml
kind: chemistry
id: acid-remover
class: acid
=== site.ifu.yaml
kind: site
id: lakeside
material_conflicts:
  - {material: brass-chrome-plated, agent: acid, reason: lifts the plating, src: policy P-13}
`,
      `
=== sets/eye.ifu.yaml
kind: set
id: eye
members: [{device: speculum, qty: 1}]
washer_cycle: W1-std
              ^^^^^^ C7 harms silicone, of which "speculum" is made.
=== devices/speculum.ifu.yaml
kind: device
id: speculum
materials: [stainless-martensitic, silicone]
mechanical: {use: required}
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles: [{id: W1-std, doses: [C7]}]
=== chemistry/c7.ifu.yaml
kind: chemistry
id: C7
class: alkaline
unsuitable_materials: [silicone]
`,
    ],
    good: [
      `
=== procedures/descale.ifu.yaml
kind: procedure
id: descale
applies_to: [forceps]
steps: [{stage: manual, do: descale, chemistry: acid-remover}]
=== devices/forceps.ifu.yaml
kind: device
id: forceps
materials: [titanium]
=== chemistry/acid.ifu.yaml
kind: chemistry
id: acid-remover
class: acid
=== site.ifu.yaml
kind: site
id: lakeside
material_conflicts: [{material: brass-chrome-plated, agent: acid, reason: lifts the plating}]
`,
      `
=== procedures/case-end.ifu.yaml
kind: procedure
id: case-end
applies_to: [forceps]
steps: [{stage: point-of-use, do: keep-moist, agent: water}]
=== devices/forceps.ifu.yaml
kind: device
id: forceps
materials: [stainless-austenitic]
=== site.ifu.yaml
kind: site
id: lakeside
material_conflicts: [{material: stainless, agent: chloride, reason: pits the surface}]
`,
    ],
  },
});

/** Fluids at the point of use have a rule of their own. */
function checkProcedure(procedure: EntityOf['procedure'], context: RuleContext): void {
  const { view } = context;
  for (const step of stepsOf(procedure)) {
    if (methodOf(step.stage) === undefined && step.stage?.text !== 'lubrication') continue;
    const agent = agentOfStep(step, view);
    if (agent === undefined || reasonsAgainst(agent, view, {}).length === 0) continue;
    reportHarm(agent, agent.word, reachOf(step, procedure, view), stepInWords(step), {}, context);
  }
}

function checkSet(set: EntityOf['set'], context: RuleContext): void {
  const { view } = context;
  const washing = set.washer_cycle === undefined ? undefined : view.washerCycle(set.washer_cycle.text);
  if (set.washer_cycle === undefined || washing === undefined) return;
  const setting = settingFor(set, view);
  const devices = membersOf(set, view).filter(
    (device) => banOf(device, 'mechanical') === undefined && waysThrough(device, 'mechanical', setting).length > 0,
  );
  for (const agent of agentsOfCycle(washing.machine, washing.cycle, view)) {
    reportHarm(agent, set.washer_cycle, devices, `${set.washer_cycle.text} doses ${agent.word.text}`, set, context);
  }
}

interface Reason {
  readonly material: string;
  readonly words: string;
  readonly at: Place;
  readonly note: string;
}

/** Materials that an agent harms: what its own label says, and the pairs that the department has listed. */
function reasonsAgainst(
  { word, chemistry }: Agent,
  view: LibraryView,
  of: { readonly site?: Text },
): readonly Reason[] {
  const reasons: Reason[] = (chemistry?.unsuitable_materials?.items ?? []).map((material) => ({
    material: material.text,
    words: '',
    at: material.at,
    note: message.label,
  }));
  for (const pair of siteOf(of, view)?.material_conflicts?.items ?? []) {
    const isIt =
      pair.agent !== undefined &&
      (catchesAgent(pair.agent.text, word.text, chemistry) || chemistry?.class?.text === pair.agent.text);
    if (isIt && pair.material !== undefined) reasons.push({ material: pair.material.text, ...wordsOf(pair) });
  }
  return reasons;
}

function wordsOf({ reason, src, at }: MaterialConflict): Omit<Reason, 'material'> {
  return { words: reason?.text ?? '', at, note: message.listed(src === undefined ? '' : ` (${src.text})`) };
}

function reportHarm(
  agent: Agent,
  place: Text,
  devices: readonly Device[],
  does: string,
  of: { readonly site?: Text },
  { view, report }: RuleContext,
): void {
  for (const reason of reasonsAgainst(agent, view, of)) {
    const harmed = devices.filter((device) => materialOf(device, reason.material) !== undefined);
    if (harmed.length === 0) continue;
    report({
      at: place.at,
      message: message.harms(
        agent.word.text,
        reason.material,
        named(harmed),
        reason.words === '' ? '' : message.reason(reason.words),
      ),
      does,
      related: [
        { at: reason.at, note: reason.note },
        ...harmed.map((device) => ({
          at: materialOf(device, reason.material)?.at ?? device.at,
          note: `material of "${deviceName(device)}"`,
        })),
      ],
    });
    return;
  }
}

/** `stainless` means every stainless steel. */
function materialOf(device: Device, material: string): Text | undefined {
  return device.materials?.items.find(({ text }) => text === material || text.startsWith(`${material}-`));
}
