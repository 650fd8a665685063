import { judgeBrush } from '../../judge/brush.ts';
import { type StageDemand, waysThrough } from '../../judge/demands.ts';
import type { Judgement } from '../../judge/outcome.ts';
import type { Setting } from '../../judge/setting.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { devicesOfStep } from '../support/applies.ts';
import { deviceName } from '../support/device-names.ts';
import { settingFor } from '../support/judging.ts';
import { siteLimit } from '../support/site-limits.ts';
import { stepInWords, stepsOf } from '../support/steps.ts';
import { anyStep, unjudged } from '../support/unjudged.ts';

type Device = EntityOf['device'];

const message = {
  misfit: (device: string, required: string, given: string, reason: string) =>
    `A brush of ${given} does not fit "${device}" (${required}). ${reason}`,
};

export const rule = defineRule({
  id: 'brush-does-not-fit',
  stage: 'cleaning',
  severity: 'error',
  settledBy: 'manager',
  why: 'The brush must touch every wall from one end to the other.',
  source: 'logic',
  kinds: ['procedure', 'site'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'procedure')) checkProcedure(entity, context);
    else if (isOfKind(entity, 'site')) checkSite(entity, context);
  },
  examples: {
    bad: [
      `
=== procedures/tube.ifu.yaml
kind: procedure
id: tube
applies_to: [cannula]
steps:
  - {stage: manual, do: brush, brush: {diameter: 3.0 mm, length: 350 mm}}
                               ^^^^^ A brush of 3.0 mm × 350 mm does not fit "cannula" (5.0 mm × 330 mm). Brush for shaft: thinner than the bore: it does not touch the wall.
=== devices/cannula.ifu.yaml
kind: device
id: cannula
lumens: [{id: shaft, bore: 5.0 mm, length: 330 mm}]
manual: {brush: {required: true, lumen: shaft, src: s1}}
statements:
  s1: {doc: CA-1, rev: A, page: 2, quote: "Brush the shaft."}
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {brush_oversize: {at_most: 1.3, src: policy P-13}}
`,
      `
=== procedures/tube.ifu.yaml
kind: procedure
id: tube
applies_to: [suction-tube]
steps:
  - {stage: manual, do: brush, lumen: tube, brush: {diameter: 4.2 mm, length: 250 mm}}
                                            ^^^^^ A brush of 4.2 mm does not fit "suction-tube" (3-3.5 mm). Diameter of the brush: above the highest value the page gives; both ends of a range bind.
=== devices/tube.ifu.yaml
kind: device
id: suction-tube
lumens: [{id: tube, bore: 3.0 mm, length: 180 mm}]
manual:
  brush: {required: true, lumen: tube, diameter: {between: [3.0 mm, 3.5 mm]}, length: {at_least: 200 mm}, src: s5}
statements:
  s5: {doc: QM-31, rev: E, page: 4, quote: "Brush the bore with a brush of 3.0 mm to 3.5 mm and at least 200 mm reach."}
`,
      `
=== procedures/tube.ifu.yaml
kind: procedure
id: tube
applies_to: [cannula]
steps:
  - {stage: manual, do: brush, lumen: shaft, brush: {diameter: 5.0 mm, length: 250 mm}}
                                             ^^^^^ A brush of 5.0 mm × 250 mm does not fit "cannula" (5.0 mm × 330 mm). Brush for shaft: shorter than the lumen: the far end is not reached.
=== devices/cannula.ifu.yaml
kind: device
id: cannula
lumens: [{id: shaft, bore: 5.0 mm, length: 330 mm}]
manual: {use: required}
=== site.ifu.yaml
kind: site
id: lakeside
    ^^^^^^^^ Whether a brush is too thick for its bore can't be judged: the limits of this site give no "brush_oversize".
`,
    ],
    good: [
      `
=== procedures/tube.ifu.yaml
kind: procedure
id: tube
applies_to: [cannula]
steps:
  - {stage: manual, do: brush, brush: {diameter: 5.5 mm, length: 350 mm}}
=== devices/cannula.ifu.yaml
kind: device
id: cannula
lumens: [{id: shaft, bore: 5.0 mm, length: 330 mm}]
manual: {brush: {required: true, lumen: shaft}}
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {brush_oversize: {at_most: 1.3, src: policy P-13}}
`,
      `
=== procedures/forceps.ifu.yaml
kind: procedure
id: forceps-by-hand
applies_to: [forceps]
steps:
  - {stage: manual, do: brush, tool: nylon-brush}
=== devices/forceps.ifu.yaml
kind: device
id: forceps
manual: {use: required}
=== site.ifu.yaml
kind: site
id: lakeside
`,
    ],
  },
});

function checkProcedure(procedure: EntityOf['procedure'], { view, report }: RuleContext): void {
  const steps = stepsOf(procedure).filter((step) => step.brush !== undefined);
  if (steps.length === 0) return;
  const setting = settingFor({}, view);
  for (const step of steps) {
    for (const device of devicesOfStep(step, procedure, view)) {
      const judgement = misfit(device, step, setting);
      if (judgement === undefined) continue;
      report({
        at: step.brush?.at ?? step.at,
        message: message.misfit(deviceName(device), judgement.required, judgement.given, judgement.reason),
        does: stepInWords(step),
        says: judgement.says,
        ...(judgement.gap !== undefined && { gap: judgement.gap }),
        related: [{ at: judgement.demandAt, note: 'what it must fit' }],
      });
    }
  }
}

/** The page's own demand comes first; without one the bore and the length decide. */
function misfit(device: Device, step: ProcedureStep, setting: Setting): Judgement | undefined {
  const ways = waysThrough(device, 'manual', setting);
  let first: Judgement | undefined;
  for (const way of ways) {
    const failing = way
      .flatMap((demand: StageDemand) => judgeBrush(device, demand, [step], setting))
      .find((one) => one.outcome === 'fails');
    if (failing === undefined) return undefined;
    first ??= failing;
  }
  return first;
}

function checkSite(site: EntityOf['site'], { view, report }: RuleContext): void {
  if (siteLimit(site, 'brush_oversize') !== undefined) return;
  if (!anyStep(view, (step) => step.brush?.diameter !== undefined)) return;
  report(unjudged(site, 'thresholds', 'brush_oversize', 'Whether a brush is too thick for its bore'));
}
