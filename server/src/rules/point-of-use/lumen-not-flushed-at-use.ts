import { givenOf } from '../../judge/given.ts';
import { factOf, judgeDemand } from '../../judge/judgement.ts';
import type { Setting } from '../../judge/setting.ts';
import type { LibraryView } from '../../library/view.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Place, Requirement } from '../../model/node.ts';
import { sayingsOf } from '../../model/saying.ts';
import { formatQuantity } from '../../quantity/format.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { devicesOf, devicesOfStep } from '../support/applies.ts';
import { flushing } from '../support/cleaning-words.ts';
import { deviceName } from '../support/device-names.ts';
import type { Failure } from '../support/failures.ts';
import { evidenceOf, named, quotesOf, whoAsks } from '../support/failures.ts';
import { settingFor } from '../support/judging.ts';
import { isAct, placeOf, proceduresFor, stepsOf } from '../support/steps.ts';

type Device = EntityOf['device'];
type Procedure = EntityOf['procedure'];

const message = {
  missing: (devices: string) => `The bore of ${devices} must be flushed directly after use, and no step here does it.`,
  short: (volume: string, who: string) => `A flush of ${volume} directly after use is too little for ${who}.`,
};

export const rule = defineRule({
  id: 'lumen-not-flushed-at-use',
  stage: 'point-of-use',
  severity: 'warning',
  settledBy: 'OR',
  why: 'A bore in which soil has dried is the one that nobody can see.',
  source: 'practice',
  kinds: ['procedure'],
  check(procedure, context) {
    const atUse = stepsOf(procedure).filter((step) => step.stage?.text === 'point-of-use');
    const first = atUse[0];
    if (first === undefined) return;
    const flushes = atUse.filter((step) => isAct(step, flushing));
    reportMissing(procedure, placeOf(first), flushes, context);
    const setting = settingFor({}, context.view);
    for (const step of flushes) reportShort(step, procedure, setting, context);
  },
  examples: {
    bad: [
      `
=== procedures/case-end.ifu.yaml
kind: procedure
id: case-end
applies_to: [suction-tube]
steps: [{stage: point-of-use, do: wipe}]
                                  ^^^^ The bore of "suction-tube" must be flushed directly after use, and no step here does it.
=== devices/tube.ifu.yaml
kind: device
id: suction-tube
traits: [lumen]
point_of_use: {flush_now: {at_least: 20 mL, src: s2}}
statements:
  s2: {doc: QM-31, rev: E, page: 3, quote: "Flush with at least 20 mL at the point of use."}
`,
      `
=== procedures/case-end.ifu.yaml
kind: procedure
id: case-end
applies_to: [suction-tube, forceps]
steps:
  - {stage: point-of-use, do: wipe, agent: water}
  - {stage: point-of-use, do: flush, agent: water, volume: 10 mL}
                                                           ^^^^^ A flush of 10 mL directly after use is too little for "suction-tube" (at least 20 mL).
=== devices/tube.ifu.yaml
kind: device
id: suction-tube
traits: [lumen]
point_of_use: {flush_now: {at_least: 20 mL, src: s2}}
statements:
  s2: {doc: QM-31, rev: E, page: 3, quote: "Flush with at least 20 mL at the point of use."}
=== devices/forceps.ifu.yaml
kind: device
id: forceps
`,
    ],
    good: [
      `
=== procedures/case-end.ifu.yaml
kind: procedure
id: case-end
applies_to: [suction-tube]
steps:
  - {stage: point-of-use, do: wipe, agent: water}
  - {stage: point-of-use, do: flush, agent: water, volume: 60 mL}
=== devices/tube.ifu.yaml
kind: device
id: suction-tube
traits: [lumen]
point_of_use: {flush_now: {at_least: 20 mL}}
`,
      `
=== procedures/case-end.ifu.yaml
kind: procedure
id: case-end
applies_to: [suction-tube]
steps: [{stage: point-of-use, do: keep-moist, agent: water}]
=== procedures/scrub-nurse.ifu.yaml
kind: procedure
id: scrub-nurse
applies_to: [suction-tube]
steps: [{stage: point-of-use, do: flush, volume: 20 mL}]
=== devices/tube.ifu.yaml
kind: device
id: suction-tube
point_of_use: {flush_now: {at_least: 20 mL}}
`,
    ],
  },
});

function reportMissing(
  procedure: Procedure,
  at: Place,
  flushes: readonly ProcedureStep[],
  { view, report }: RuleContext,
): void {
  const flushed = new Set(flushes.flatMap((step) => devicesOfStep(step, procedure, view)));
  const missed = devicesOf(procedure, view).filter(
    (device) => demandOf(device) !== undefined && !flushed.has(device) && !isFlushedElsewhere(device, procedure, view),
  );
  if (missed.length === 0) return;
  report({
    at,
    message: message.missing(named(missed)),
    says: quotesOf(missed.map((device) => sayingsOf(device, demandOf(device)?.src ?? device.point_of_use?.src))),
    related: missed.map((device) => ({
      at: demandOf(device)?.at ?? device.at,
      note: `what the instruction of "${deviceName(device)}" asks for`,
    })),
  });
}

function demandOf(device: Device): Requirement | undefined {
  const flush = device.point_of_use?.flush_now;
  const isDemand =
    flush !== undefined &&
    flush.silent?.on !== true &&
    flush.not_applicable === undefined &&
    flush.strength?.text !== 'may';
  return isDemand ? flush : undefined;
}

function isFlushedElsewhere(device: Device, here: Procedure, view: LibraryView): boolean {
  for (const procedure of proceduresFor(device, view)) {
    if (procedure === here) continue;
    if (stepsOf(procedure).some((step) => step.stage?.text === 'point-of-use' && isAct(step, flushing))) return true;
  }
  return false;
}

function reportShort(step: ProcedureStep, procedure: Procedure, setting: Setting, { view, report }: RuleContext): void {
  const { volume } = step;
  if (volume === undefined) return;
  const failures: Failure[] = [];
  for (const device of devicesOfStep(step, procedure, view)) {
    const requirement = demandOf(device);
    if (requirement === undefined) continue;
    const judgement = judgeDemand(
      { by: device, parameter: 'cleaning-amount', requirement, src: device.point_of_use?.src },
      factOf(volume, givenOf(volume)),
      setting,
    );
    if (judgement.outcome === 'fails') failures.push({ device, judgement });
  }
  if (failures.length > 0)
    report({
      at: volume.at,
      message: message.short(formatQuantity(volume), whoAsks(failures)),
      ...evidenceOf(failures),
    });
}
