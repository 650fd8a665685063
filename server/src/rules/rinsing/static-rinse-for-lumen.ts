import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { Place } from '../../model/node.ts';
import { formatQuantity } from '../../quantity/format.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { traitOf } from '../support/applies.ts';
import { rinsing } from '../support/cleaning-words.ts';
import { named } from '../support/failures.ts';
import type { SiteLimit } from '../support/site-limits.ts';
import { siteLimit, siteOf } from '../support/site-limits.ts';
import { isAct, reachOf, stepInWords, stepsOf } from '../support/steps.ts';
import { unjudged } from '../support/unjudged.ts';

type Device = EntityOf['device'];

const message = {
  basin: (devices: string) => `${devices} is rinsed in a basin. Let the water flow through instead.`,
  eye: 'enters the eye',
  narrow: (bore: string, limit: string) => `bore of ${bore}; up to ${limit} counts as narrow`,
};

export const rule = defineRule({
  id: 'static-rinse-for-lumen',
  stage: 'rinsing',
  severity: 'warning',
  settledBy: 'manager',
  why: 'Standing water thins residue but does not carry it away, and residue inflames the eye.',
  source: 'guideline',
  kinds: ['procedure', 'site'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'procedure')) checkProcedure(entity, context);
    else if (isOfKind(entity, 'site')) checkSite(entity, context);
  },
  examples: {
    bad: [
      `
=== procedures/eye.ifu.yaml
kind: procedure
id: eye
applies_to: [eye-tip]
steps: [{stage: rinse, do: final-rinse, mode: basin}]
                                              ^^^^^ "eye-tip" is rinsed in a basin. Let the water flow through instead.
=== devices/tip.ifu.yaml
kind: device
id: eye-tip
traits: [intraocular, lumen]
`,
      `
=== procedures/needles.ifu.yaml
kind: procedure
id: needles
applies_to: [needle, forceps]
steps:
  - {stage: manual, do: rinse, mode: basin, water: RO-1}
                                     ^^^^^ "needle" is rinsed in a basin. Let the water flow through instead.
=== devices/needle.ifu.yaml
kind: device
id: needle
lumens: [{id: bore, bore: 0.8 mm, length: 60 mm}]
=== devices/forceps.ifu.yaml
kind: device
id: forceps
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {narrow_lumen_bore: {at_most: 1.0 mm, src: policy P-17}}
`,
      `
=== procedures/needles.ifu.yaml
kind: procedure
id: needles
applies_to: [needle]
steps: [{stage: manual, do: rinse, mode: basin, water: RO-1}]
=== devices/needle.ifu.yaml
kind: device
id: needle
lumens: [{id: bore, bore: 0.8 mm, length: 60 mm}]
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {set_mass: {at_most: 11.3 kg, src: policy P-12}}
^^^^^^^^^^ Which bores are too narrow for a basin can't be judged: the limits of this site give no "narrow_lumen_bore".
`,
    ],
    good: [
      `
=== procedures/eye.ifu.yaml
kind: procedure
id: eye
applies_to: [eye-tip]
steps: [{stage: rinse, do: final-rinse, mode: flow-through, water: RO-1}]
=== devices/tip.ifu.yaml
kind: device
id: eye-tip
traits: [intraocular, lumen]
=== site.ifu.yaml
kind: site
id: lakeside
`,
      `
=== procedures/tubes.ifu.yaml
kind: procedure
id: tubes
applies_to: [tube]
steps: [{stage: manual, do: rinse, mode: basin}]
=== devices/tube.ifu.yaml
kind: device
id: tube
lumens: [{id: tube, bore: 5 mm, length: 180 mm}]
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {narrow_lumen_bore: {at_most: 1.0 mm, src: policy P-17}}
`,
    ],
  },
});

interface Delicate {
  readonly device: Device;
  readonly at: Place;
  readonly note: string;
}

function isInBasin(step: ProcedureStep): boolean {
  return step.mode?.text === 'basin' && (step.stage?.text === 'rinse' || isAct(step, rinsing));
}

function checkProcedure(procedure: EntityOf['procedure'], { view, report }: RuleContext): void {
  for (const step of stepsOf(procedure)) {
    if (step.mode === undefined || !isInBasin(step)) continue;
    const limit = siteLimit(siteOf({}, view), 'narrow_lumen_bore');
    const found = reachOf(step, procedure, view)
      .map((device) => delicate(device, limit))
      .filter((one) => one !== undefined);
    if (found.length === 0) continue;
    report({
      at: step.mode.at,
      message: message.basin(named(found.map(({ device }) => device))),
      does: stepInWords(step),
      related: [
        ...found.map(({ at, note }) => ({ at, note })),
        ...(limit === undefined ? [] : [{ at: limit.at, note: 'what the department counts as narrow' }]),
      ],
    });
  }
}

function delicate(device: Device, limit: SiteLimit | undefined): Delicate | undefined {
  const eye = traitOf(device, 'intraocular');
  if (eye !== undefined) return { device, at: eye.at, note: message.eye };
  if (limit === undefined) return undefined;
  for (const { bore } of device.lumens?.items ?? []) {
    if (bore !== undefined && bore.problem === undefined && bore.value <= limit.value) {
      return { device, at: bore.at, note: message.narrow(formatQuantity(bore), formatQuantity(limit.quantity)) };
    }
  }
  return undefined;
}

function checkSite(site: EntityOf['site'], { view, report }: RuleContext): void {
  if (siteLimit(site, 'narrow_lumen_bore') !== undefined) return;
  const isNeeded = view
    .all('procedure')
    .some((procedure) =>
      stepsOf(procedure).some(
        (step) => isInBasin(step) && reachOf(step, procedure, view).some((device) => device.lumens !== undefined),
      ),
    );
  if (isNeeded) report(unjudged(site, 'thresholds', 'narrow_lumen_bore', 'Which bores are too narrow for a basin'));
}
