import type { LibraryView } from '../../library/view.ts';
import type { Lumen } from '../../model/entities/device.generated.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind, rootOfEntity } from '../../model/entity.ts';
import type { Place } from '../../model/node.ts';
import { sayingsOf } from '../../model/saying.ts';
import { formatQuantity } from '../../quantity/format.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { devicesOf, devicesOfStep } from '../support/applies.ts';
import { isOutOfScope } from '../support/cleaning-ways.ts';
import { insideTests } from '../support/cleaning-words.ts';
import { deviceName } from '../support/device-names.ts';
import { named, quotesOf } from '../support/failures.ts';
import type { SiteLimit } from '../support/site-limits.ts';
import { siteLimit, siteOf } from '../support/site-limits.ts';
import { placeOf, proceduresFor, stepInWords, stepsOf } from '../support/steps.ts';
import { unjudged } from '../support/unjudged.ts';
import { isMentioned } from '../support/wording.ts';

type Device = EntityOf['device'];

const message = {
  procedure: (devices: string) =>
    `The bore of ${devices} is wide enough to look into, and no step looks into it or tests it for residue.`,
  device: (bore: string) =>
    `This bore of ${bore} is wide enough to look into, and neither the instruction as encoded nor a procedure says that anyone does.`,
};

export const rule = defineRule({
  id: 'lumen-inspection-missing',
  stage: 'inspection',
  severity: 'advice',
  settledBy: 'manager',
  why: 'That the outside is clean says nothing about the inside.',
  source: 'practice',
  kinds: ['procedure', 'device', 'site'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'procedure')) checkProcedure(entity, context);
    else if (isOfKind(entity, 'device')) checkDevice(entity, context);
    else if (isOfKind(entity, 'site')) checkSite(entity, context);
  },
  examples: {
    bad: [
      `
=== devices/cannula.ifu.yaml
kind: device
id: cannula
lumens: [{id: shaft, bore: 4 mm, length: 340 mm}]
              ^^^^^ This bore of 4 mm is wide enough to look into, and neither the instruction as encoded nor a procedure says that anyone does.
inspection: {visual: true}
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {lumen_inspection_bore: {at_least: 2.0 mm, src: policy P-17}}
`,
      `
=== procedures/tubes.ifu.yaml
kind: procedure
id: tubes
applies_to: [tube]
steps:
  - {stage: inspection, do: visual, tests: [visual]}
                            ^^^^^^ The bore of "tube" is wide enough to look into, and no step looks into it or tests it for residue.
=== devices/tube.ifu.yaml
kind: device
id: tube
lumens: [{id: bore, bore: 3 mm}]
inspection: {lumen_inspection: {required: true, src: s10}}
statements:
  s10: {doc: QM-31, rev: E, page: 6, quote: "Look through the bore."}
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {lumen_inspection_bore: {at_least: 2.0 mm, src: policy P-17}}
`,
      `
=== devices/cannula.ifu.yaml
kind: device
id: cannula
lumens: [{id: shaft, bore: 4 mm, length: 340 mm}]
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {set_mass: {at_most: 11.3 kg, src: policy P-12}}
^^^^^^^^^^ Which bores have to be looked into can't be judged: the limits of this site give no "lumen_inspection_bore".
`,
    ],
    good: [
      `
=== procedures/tubes.ifu.yaml
kind: procedure
id: tubes
applies_to: [tube]
steps:
  - {stage: inspection, do: visual, tests: [visual, lumen-inspection]}
=== devices/tube.ifu.yaml
kind: device
id: tube
lumens: [{id: bore, bore: 3 mm}]
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {lumen_inspection_bore: {at_least: 2.0 mm, src: policy P-17}}
`,
      `
=== devices/tip.ifu.yaml
kind: device
id: tip
lumens: [{id: tip, bore: 0.9 mm}]
inspection: {visual: true}
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {lumen_inspection_bore: {at_least: 2.0 mm, src: policy P-17}}
`,
    ],
  },
});

/** The step that inspects is what the reader can change, so the finding stands there when there is one. */
function checkProcedure(procedure: EntityOf['procedure'], { view, report }: RuleContext): void {
  const inspecting = stepsOf(procedure).filter(inspects);
  const first = inspecting[0];
  const limit = first === undefined ? undefined : limitIn(view);
  if (first === undefined || limit === undefined) return;
  const looked = new Set(inspecting.filter(looksInside).flatMap((step) => devicesOfStep(step, procedure, view)));
  const missed = devicesOf(procedure, view).filter(
    (device) => !looked.has(device) && wideLumen(device, limit) !== undefined && !isLookedInto(device, view),
  );
  if (missed.length === 0) return;
  report({
    at: placeOf(first),
    message: message.procedure(named(missed)),
    does: stepInWords(first),
    says: quotesOf(missed.map((device) => sayingsOf(device, device.inspection?.lumen_inspection?.src))),
    related: [
      ...missed.map((device) => ({ at: placeOfLumen(device, limit), note: `bore of "${deviceName(device)}"` })),
      { at: limit.at, note: 'from which width on the department looks into a bore' },
    ],
  });
}

function checkDevice(device: Device, { view, report }: RuleContext): void {
  if (
    isOutOfScope(device) ||
    device.lumens === undefined ||
    device.inspection?.lumen_inspection !== undefined ||
    device.inspection?.residue_test !== undefined
  )
    return;
  const limit = limitIn(view);
  const lumen = limit === undefined ? undefined : wideLumen(device, limit);
  if (limit === undefined || lumen?.bore === undefined || isInspectedSomewhere(device, view)) return;
  report({
    at: lumen.at,
    message: message.device(formatQuantity(lumen.bore)),
    settledBy: 'educator',
    related: [{ at: limit.at, note: 'from which width on the department looks into a bore' }],
  });
}

function checkSite(site: EntityOf['site'], { view, report }: RuleContext): void {
  if (siteLimit(site, 'lumen_inspection_bore') !== undefined) return;
  const isNeeded = view
    .all('device')
    .some((device) => device.lumens?.items.some((lumen) => lumen.bore !== undefined) === true);
  if (isNeeded) report(unjudged(site, 'thresholds', 'lumen_inspection_bore', 'Which bores have to be looked into'));
}

function limitIn(view: LibraryView): SiteLimit | undefined {
  return siteLimit(siteOf({}, view), 'lumen_inspection_bore');
}

function wideLumen(device: Device, limit: SiteLimit): Lumen | undefined {
  return device.lumens?.items.find(
    ({ bore }) => bore !== undefined && bore.problem === undefined && bore.value >= limit.value,
  );
}

function placeOfLumen(device: Device, limit: SiteLimit): Place {
  return wideLumen(device, limit)?.at ?? device.at;
}

function inspects(step: ProcedureStep): boolean {
  return step.stage?.text === 'inspection';
}

function looksInside(step: ProcedureStep): boolean {
  return [step.do, step.note, step.tool, ...(step.tests?.items ?? [])].some(
    (text) => text !== undefined && isMentioned(text.text, insideTests),
  );
}

function isLookedInto(device: Device, view: LibraryView): boolean {
  for (const procedure of view.users('device', rootOfEntity(device).id, 'procedure')) {
    if (stepsOf(procedure).some((step) => inspects(step) && looksInside(step))) return true;
  }
  return false;
}

/** A procedure that inspects the item answers for it, well or badly. */
function isInspectedSomewhere(device: Device, view: LibraryView): boolean {
  for (const procedure of proceduresFor(device, view)) if (stepsOf(procedure).some(inspects)) return true;
  return false;
}
