import { saysOf } from '../../judge/judgement.ts';
import type { Judgement } from '../../judge/outcome.ts';
import type { Setting } from '../../judge/setting.ts';
import { routineSetting } from '../../judge/setting.ts';
import { judgeWater } from '../../judge/water.ts';
import type { LibraryView, Query } from '../../library/view.ts';
import type { CleaningNode } from '../../model/entities/device-manual.generated.ts';
import type { FinalRinse } from '../../model/entities/final-rinse.generated.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { WaterQuality } from '../../model/entities/water-quality.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind, rootOfEntity } from '../../model/entity.ts';
import type { Text } from '../../model/node.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { devicesOfStep } from '../support/applies.ts';
import { banOf, failsEveryWay, isOutOfScope, waysThrough } from '../support/cleaning-ways.ts';
import type { Failure } from '../support/failures.ts';
import { evidenceOf, whoAsks } from '../support/failures.ts';
import { settingFor } from '../support/judging.ts';
import { listed } from '../support/lists.ts';
import { stepInWords, stepsOf } from '../support/steps.ts';

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

type Quality = WaterQuality | FinalRinse;

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
  const setting = settingFor(washer, context.view);
  for (const cycle of washer.cycles?.items ?? []) {
    if (cycle.final_water === undefined || cycle.withdrawn_on !== undefined) continue;
    reportLow(
      cycle.final_water,
      context.view.ask(rinsedByMachine, ''),
      `${cycle.id?.text ?? ''} rinses last with ${cycle.final_water.text}`,
      { setting, judge: byMachine },
      context,
    );
  }
}

const rinsedByMachine: Query<'', readonly Device[]> = {
  name: 'devices whose instruction asks for a water in the last rinse of a washer',
  work(view) {
    const setting = routineSetting(view.today);
    return view.all('device').filter((device) => {
      if (isOutOfScope(device) || banOf(device, 'mechanical') !== undefined) return false;
      return waysThrough(device, 'mechanical', setting).some((way) =>
        way.some(({ voices }) => voices.some((voice) => voice.final_rinse !== undefined)),
      );
    });
  },
};

interface Judging {
  readonly setting: Setting;
  readonly judge: (device: Device, water: Text, setting: Setting, view: LibraryView) => Judgement | undefined;
}

function byMachine(device: Device, water: Text, setting: Setting, view: LibraryView): Judgement | undefined {
  return failsEveryWay(waysThrough(device, 'mechanical', setting), ({ final_rinse }: CleaningNode) =>
    judged(device, final_rinse, water, setting, view),
  );
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

function judged(
  device: Device,
  quality: Quality | undefined,
  water: Text,
  setting: Setting,
  view: LibraryView,
): readonly Judgement[] {
  if (quality === undefined) return [];
  const point = view.get('water', water.text);
  const judgements = judgeWater({
    by: device,
    quality,
    water: point,
    waterName: water.text,
    factAt: water.at,
    setting,
  });
  return judgements.map((judgement) => inWordsOfPage(judgement, device, quality));
}

/** What a grade must be like is the site's to say; that this grade is asked for stands on the page. */
function inWordsOfPage(judgement: Judgement, device: Device, quality: Quality): Judgement {
  const { grade } = quality;
  if (grade === undefined || !judgement.demandedBy.startsWith('site/')) return judgement;
  const required = `${grade.text} water: ${judgement.required}`;
  return { ...judgement, required, says: saysOf(device, quality.src), demandAt: grade.at };
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
      water.text,
      whoAsks(failures),
      others.length === 0 ? '' : message.others(listed(others.map((other) => rootOfEntity(other).id))),
    ),
    does,
    ...evidence,
    related: [
      ...(evidence.related ?? []),
      ...(point === undefined ? [] : [{ at: point.at, note: 'the water that is used' }]),
    ],
  });
}
