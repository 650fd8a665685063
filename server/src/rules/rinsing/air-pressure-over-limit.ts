import { givenOf } from '../../judge/given.ts';
import { factOf, judgeDemand } from '../../judge/judgement.ts';
import type { Judgement } from '../../judge/outcome.ts';
import { pressureLimits } from '../../judge/prohibitions.ts';
import type { Setting } from '../../judge/setting.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { Quantity } from '../../model/node.ts';
import { formatQuantity } from '../../quantity/format.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { devicesOfStep } from '../support/applies.ts';
import { isOutOfScope } from '../support/cleaning-ways.ts';
import type { Failure } from '../support/failures.ts';
import { evidenceOf, named, whoAsks } from '../support/failures.ts';
import { settingFor } from '../support/judging.ts';
import { isAbove } from '../support/limits-of.ts';
import { bySource, likeQuantity, siteLimit, siteOf } from '../support/site-limits.ts';
import { reachOf, stepInWords, stepsOf } from '../support/steps.ts';
import { anyStep, unjudged } from '../support/unjudged.ts';

type Device = EntityOf['device'];
type Procedure = EntityOf['procedure'];

const message = {
  device: (pressure: string, who: string) => `Air of ${pressure} is too much for ${who}.`,
  site: (pressure: string, limit: string, source: string) =>
    `Air of ${pressure} is more than the department allows, ${limit}${source}.`,
  grade: (devices: string) =>
    `It is not said which air dries the bore of ${devices}. Name its grade, such as medical or filtered.`,
  over: (gap: string) => `${gap} over`,
};

export const rule = defineRule({
  id: 'air-pressure-over-limit',
  stage: 'rinsing',
  severity: 'error',
  settledBy: 'manager',
  why: 'Too much pressure bursts seals, and unfiltered air sprays oil where the last water has just been.',
  source: 'logic',
  kinds: ['procedure', 'site'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'procedure')) checkProcedure(entity, context);
    else if (isOfKind(entity, 'site')) checkSite(entity, context);
  },
  examples: {
    bad: [
      `
=== procedures/grasper.ifu.yaml
kind: procedure
id: grasper
applies_to: [grasper]
steps: [{stage: drying, air: {pressure: 4 bar, grade: medical}}]
                                        ^^^^^ Air of 4 bar is too much for "grasper" (at most 1.4 bar).
=== devices/grasper.ifu.yaml
kind: device
id: grasper
drying: {air: {pressure: {at_most: 1.4 bar}, src: s5}}
statements:
  s5: {doc: SK-210, rev: F, page: 9, quote: "Dry the channels with medical air of at most 1.4 bar."}
`,
      `
=== procedures/bench.ifu.yaml
kind: procedure
id: bench
applies_to: [tube]
steps:
  - {stage: drying, do: dry, air: {pressure: 3.5 bar}}
                             ^^^ It is not said which air dries the bore of "tube". Name its grade, such as medical or filtered.
                                             ^^^^^^^ Air of 3.5 bar is more than the department allows, 2.8 bar (policy P-13).
=== devices/tube.ifu.yaml
kind: device
id: tube
class: critical
lumens: [{id: bore, bore: 3 mm}]
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {air_pressure: {at_most: 2.8 bar, src: policy P-13}}
`,
      `
=== procedures/bench.ifu.yaml
kind: procedure
id: bench
steps:
  - {stage: drying, do: dry, air: {pressure: 3.5 bar, grade: medical}}
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {set_mass: {at_most: 11.3 kg, src: policy P-12}}
^^^^^^^^^^ Whether air for drying has too much pressure can't be judged: the limits of this site give no "air_pressure".
`,
    ],
    good: [
      `
=== procedures/grasper.ifu.yaml
kind: procedure
id: grasper
applies_to: [grasper]
steps: [{stage: drying, air: {pressure: 1.4 bar, grade: medical}}]
=== devices/grasper.ifu.yaml
kind: device
id: grasper
drying: {air: {pressure: {at_most: 1.4 bar}}}
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {air_pressure: {at_most: 2.8 bar, src: policy P-13}}
`,
      `
=== procedures/forceps.ifu.yaml
kind: procedure
id: forceps
applies_to: [forceps]
steps: [{stage: drying, method: cloth}]
=== devices/forceps.ifu.yaml
kind: device
id: forceps
class: critical
=== site.ifu.yaml
kind: site
id: lakeside
`,
    ],
  },
});

function checkProcedure(procedure: Procedure, context: RuleContext): void {
  for (const step of stepsOf(procedure)) {
    if (step.air === undefined) continue;
    if (step.air.pressure !== undefined) checkPressure(step, step.air.pressure, procedure, context);
    if (step.air.grade === undefined) checkGrade(step, procedure, context);
  }
}

/** What the page says about the item comes before what the department allows in general. */
function checkPressure(
  step: ProcedureStep,
  pressure: Quantity,
  procedure: Procedure,
  { view, report }: RuleContext,
): void {
  const setting = settingFor({}, view);
  const failures: Failure[] = [];
  for (const device of reachOf(step, procedure, view)) {
    const judgement = isOutOfScope(device) ? undefined : tooMuch(device, pressure, setting);
    if (judgement !== undefined) failures.push({ device, judgement });
  }
  if (failures.length > 0) {
    report({
      at: pressure.at,
      message: message.device(formatQuantity(pressure), whoAsks(failures)),
      does: stepInWords(step),
      ...evidenceOf(failures),
    });
    return;
  }
  const limit = siteLimit(siteOf({}, view), 'air_pressure');
  if (limit === undefined || pressure.problem !== undefined || pressure.value <= limit.value) return;
  report({
    at: pressure.at,
    message: message.site(formatQuantity(pressure), formatQuantity(limit.quantity), bySource(limit)),
    does: stepInWords(step),
    gap: message.over(likeQuantity(pressure.value - limit.value, limit.quantity)),
    related: [{ at: limit.at, note: 'limit of the department' }],
  });
}

function tooMuch(device: Device, pressure: Quantity, setting: Setting): Judgement | undefined {
  const limits = [...pressureLimits(device)];
  const air = device.drying?.air;
  if (air?.pressure !== undefined) limits.unshift({ requirement: air.pressure, src: air.src ?? device.drying?.src });
  for (const { requirement, src } of limits) {
    const judgement = judgeDemand(
      { by: device, parameter: 'pressure', requirement, src },
      factOf(pressure, givenOf(pressure)),
      setting,
    );
    if (judgement.outcome === 'fails' && isAbove(pressure, requirement)) return judgement;
  }
  return undefined;
}

function checkGrade(step: ProcedureStep, procedure: Procedure, { view, report }: RuleContext): void {
  const bored = devicesOfStep(step, procedure, view).filter(
    (device) => device.class?.text === 'critical' && (device.lumens?.items.length ?? 0) > 0,
  );
  if (bored.length === 0 || step.air === undefined) return;
  report({ at: step.air.at, message: message.grade(named(bored)), does: stepInWords(step) });
}

function checkSite(site: EntityOf['site'], { view, report }: RuleContext): void {
  if (siteLimit(site, 'air_pressure') !== undefined) return;
  if (!anyStep(view, (step) => step.air?.pressure !== undefined)) return;
  report(unjudged(site, 'thresholds', 'air_pressure', 'Whether air for drying has too much pressure'));
}
