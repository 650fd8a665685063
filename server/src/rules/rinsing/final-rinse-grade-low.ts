import { waysThrough } from '../../judge/demands.ts';
import type { Judgement } from '../../judge/outcome.ts';
import type { Setting } from '../../judge/setting.ts';
import { nameOrId } from '../../library/called.ts';
import type { LibraryView } from '../../library/view.ts';
import type { CleaningNode } from '../../model/entities/device-manual.generated.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { WasherCycle } from '../../model/entities/washer.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { Text } from '../../model/node.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { devicesOfStep } from '../support/applies.ts';
import { failsEveryWay } from '../support/cleaning-ways.ts';
import type { Failure } from '../support/failures.ts';
import { evidenceOf, whoAsks } from '../support/failures.ts';
import { settingFor } from '../support/judging.ts';
import { byMachine, isRinsedByMachine, isWaterLow, judged } from '../support/last-rinse.ts';
import { listed } from '../support/lists.ts';
import { stepInWords, stepsOf } from '../support/steps.ts';
import { washedAt } from '../support/washer-fits.ts';

type Device = EntityOf['device'];

const message = {
  low: (water: string, who: string, others: string) =>
    `The last rinse with "${water}" is not pure enough for ${who}.${others}`,
  others: (names: string) => ` Pure enough: ${names}.`,
};

export const rule = defineRule({
  id: 'final-rinse-grade-low',
  stage: 'rinsing',
  severity: 'error',
  settledBy: 'manager',
  why: 'What the last water holds is what dries on the item.',
  source: 'standard',
  kinds: ['procedure', 'washer'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'procedure')) checkProcedure(entity, context);
    else if (isOfKind(entity, 'washer')) checkWasher(entity, context);
  },
  examples: {
    bad: [
      `
=== procedures/eye.ifu.yaml
kind: procedure
id: eye
applies_to: [eye-tip]
steps: [{stage: rinse, do: final-rinse, water: tap}]
                                               ^^^ The last rinse with "tap" is not pure enough for "eye-tip" (at most 10 µS/cm). Pure enough: RO-1.
=== devices/tip.ifu.yaml
kind: device
id: eye-tip
rinse: {final: {conductivity: {at_most: 10 uS/cm}, endotoxin: {at_most: 10 EU/mL}, src: s3}}
statements:
  s3: {doc: BW-5, rev: "3", page: 5, quote: "Rinse last with water of at most 10 µS/cm and 10 EU/mL."}
=== water/tap.ifu.yaml
kind: water
id: tap
grade: utility
conductivity: 310 uS/cm
=== water/ro.ifu.yaml
kind: water
id: RO-1
grade: critical
conductivity: 4 uS/cm
endotoxin: 1 EU/mL
last_result: 2025-02-10
`,
      `
=== washers/w2.ifu.yaml
kind: washer
id: W2
cycles:
  - {id: W2-std, final_water: tap}
                              ^^^ The last rinse with "tap" is not pure enough for "eye-tip" (critical water: at most 10 µS/cm).
=== devices/tip.ifu.yaml
kind: device
id: eye-tip
cleaning:
  any_of:
    - id: machine
      all_of:
        - {stage: manual}
        - {stage: mechanical, final_rinse: {grade: critical, src: s12}}
    - {id: by-hand, stage: manual}
statements:
  s12: {doc: BW-5, rev: "3", page: 5, quote: "The final rinse of the washer must be critical water."}
=== water/tap.ifu.yaml
kind: water
id: tap
grade: utility
conductivity: 310 uS/cm
=== site.ifu.yaml
kind: site
id: lakeside
water_grades:
  critical: {grade: critical, conductivity: {at_most: 10 uS/cm}, src: water plan W-3}
`,
    ],
    good: [
      `
=== procedures/eye.ifu.yaml
kind: procedure
id: eye
applies_to: [eye-tip]
steps:
  - {stage: manual, do: rinse, water: tap}
  - {stage: rinse, do: final-rinse, water: RO-1}
=== devices/tip.ifu.yaml
kind: device
id: eye-tip
rinse: {final: {conductivity: {at_most: 10 uS/cm}}}
=== water/tap.ifu.yaml
kind: water
id: tap
conductivity: 310 uS/cm
=== water/ro.ifu.yaml
kind: water
id: RO-1
grade: critical
conductivity: 4 uS/cm
last_result: 2025-02-10
`,
      `
=== washers/w2.ifu.yaml
kind: washer
id: W2
cycles: [{id: W2-std, final_water: tap}]
=== devices/forceps.ifu.yaml
kind: device
id: forceps
mechanical: {use: allowed}
=== water/tap.ifu.yaml
kind: water
id: tap
grade: utility
conductivity: 310 uS/cm
`,
    ],
  },
});

/** Only the step that is the last rinse is meant; earlier ones may use plainer water. */
function checkProcedure(procedure: EntityOf['procedure'], context: RuleContext): void {
  const setting = settingFor({}, context.view);
  for (const step of lastRinses(procedure)) {
    const devices = devicesOfStep(step, procedure, context.view);
    if (step.water !== undefined)
      reportLow(step.water, devices, stepInWords(step), { setting, judge: byHand }, context);
  }
}

/** Each channel may have a last rinse of its own. Without any that is called so, the last one, when no machine rinses after it. */
function lastRinses(procedure: EntityOf['procedure']): readonly ProcedureStep[] {
  const called = stepsOf(procedure).filter((one) => one.do?.text === 'final-rinse');
  if (called.length > 0) return called;
  if (stepsOf(procedure).some((one) => one.stage?.text === 'mechanical')) return [];
  const last = stepsOf(procedure).findLast((one) => one.water !== undefined && one.do?.text === 'rinse');
  return last === undefined || last.order?.text === 'first' ? [] : [last];
}

/** A washer takes whatever its rack takes: every item that its instruction sends through a machine counts. */
function checkWasher(washer: EntityOf['washer'], context: RuleContext): void {
  if (washer.proposed?.on === true) return;
  const { view } = context;
  const setting = settingFor(washer, view);
  for (const cycle of washer.cycles?.items ?? []) {
    if (cycle.final_water === undefined || cycle.withdrawn_on !== undefined) continue;
    const does = `${cycle.id?.text ?? ''} rinses last with ${cycle.final_water.text}`;
    reportLow(cycle.final_water, rinsedIn(washer, cycle, view), does, { setting, judge: byMachine }, context);
  }
}

/** None where the water suits each of them. */
function rinsedIn(washer: EntityOf['washer'], cycle: WasherCycle, view: LibraryView): readonly Device[] {
  const rinsed = view.ask(washedAt, washer.site?.text ?? '').filter((id) => view.ask(isRinsedByMachine, id));
  const isLow = cycle.id === undefined || rinsed.some((id) => view.ask(isWaterLow, `${cycle.id?.text}\n${id}`));
  return isLow ? rinsed.flatMap((id) => view.claimants('device', id)) : [];
}

interface Judging {
  readonly setting: Setting;
  readonly judge: (device: Device, water: Text, setting: Setting, view: LibraryView) => Judgement | undefined;
}

function byHand(device: Device, water: Text, setting: Setting, view: LibraryView): Judgement | undefined {
  const own = judged(device, device.rinse?.final, water, setting, view).find((one) => one.outcome === 'fails');
  return (
    own ??
    failsEveryWay(waysThrough(device, 'manual', setting), ({ rinse }: CleaningNode) =>
      judged(device, rinse?.final, water, setting, view),
    )
  );
}

function reportLow(
  water: Text,
  devices: readonly Device[],
  does: string,
  { setting, judge }: Judging,
  { view, report }: RuleContext,
): void {
  const failuresWith = (name: Text): readonly Failure[] => {
    const failures: Failure[] = [];
    for (const device of devices) {
      const judgement = judge(device, name, setting, view);
      if (judgement !== undefined) failures.push({ device, judgement });
    }
    return failures;
  };
  const failures = failuresWith(water);
  if (failures.length === 0) return;
  const point = view.get('water', water.text);
  const others = view
    .all('water')
    .filter(
      (other) =>
        other !== point &&
        other.id !== undefined &&
        other.withdrawn_on === undefined &&
        failuresWith(other.id).length === 0,
    );
  const evidence = evidenceOf(failures);
  report({
    at: water.at,
    message: message.low(
      point === undefined ? water.text : nameOrId(point),
      whoAsks(failures),
      others.length === 0 ? '' : message.others(listed(others.map(nameOrId))),
    ),
    does,
    ...evidence,
    related: [
      ...(evidence.related ?? []),
      ...(point === undefined ? [] : [{ at: point.at, note: 'the water that is used' }]),
    ],
  });
}
