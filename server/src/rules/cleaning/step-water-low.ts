import { judgeWater } from '../../judge/water.ts';
import type { CleaningStep } from '../../model/entities/cleaning-step.generated.ts';
import type { CleaningNode } from '../../model/entities/device-manual.generated.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Citation, Text } from '../../model/node.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { devicesOfStep } from '../support/applies.ts';
import { evidenceOf, whoAsks } from '../support/failures.ts';
import { settingFor } from '../support/judging.ts';
import { stepInWords, stepsOf } from '../support/steps.ts';

type Device = EntityOf['device'];

const message = {
  low: (water: string, act: string, who: string) => `"${water}" is not pure enough for this step (${act}): ${who}.`,
};

export const rule = defineRule({
  id: 'step-water-low',
  stage: 'cleaning',
  severity: 'error',
  settledBy: 'manager',
  why: 'A bore that is flushed with plainer water than the page names keeps what that water holds.',
  source: 'logic',
  kinds: ['procedure'],
  check(procedure, context) {
    for (const step of stepsOf(procedure)) {
      if (step.water === undefined || step.do === undefined || step.stage?.text !== 'manual') continue;
      checkStep(step, step.water, devicesOfStep(step, procedure, context.view), context);
    }
  },
  examples: {
    bad: [
      `
=== procedures/tips.ifu.yaml
kind: procedure
id: tips
applies_to: [eye-tip]
steps: [{stage: manual, do: flush, lumen: inner, water: tap, volume: 60 mL}]
                                                        ^^^ "tap" is not pure enough for this step (flush): "eye-tip" (sterile).
=== devices/tip.ifu.yaml
kind: device
id: eye-tip
lumens: [{id: inner}]
cleaning:
  all_of:
    - {stage: manual, steps: [{do: flush, lumen: inner, volume: {at_least: 60 mL}, water: {grade: sterile}, src: s7}]}
statements:
  s7: {doc: QT-3, rev: "2", page: 4, quote: "Flush each bore with no less than 60 mL of sterile water."}
=== water/tap.ifu.yaml
kind: water
id: tap
grade: utility
`,
      `
=== procedures/probe.ifu.yaml
kind: procedure
id: probe
applies_to: [probe]
steps:
  - {stage: manual, do: wipe, chemistry: C1}
  - {stage: manual, do: rinse, water: tap}
                                      ^^^ "tap" is not pure enough for this step (rinse): "probe" (at most 10 µS/cm).
=== devices/probe.ifu.yaml
kind: device
id: probe
cleaning:
  all_of: [{stage: manual, steps: [{do: rinse, water: {conductivity: {at_most: 10 uS/cm}}, src: s2}]}]
=== water/tap.ifu.yaml
kind: water
id: tap
conductivity: 310 uS/cm
`,
    ],
    good: [
      `
=== procedures/tips.ifu.yaml
kind: procedure
id: tips
applies_to: [eye-tip]
steps: [{stage: manual, do: flush, lumen: inner, water: bottle, volume: 60 mL}]
=== devices/tip.ifu.yaml
kind: device
id: eye-tip
cleaning:
  all_of: [{stage: manual, steps: [{do: flush, lumen: inner, water: {grade: sterile}, src: s7}]}]
=== water/bottle.ifu.yaml
kind: water
id: bottle
grade: sterile
last_result: 2025-02-10
`,
      `
=== procedures/tips.ifu.yaml
kind: procedure
id: tips
applies_to: [eye-tip]
steps:
  - {stage: manual, do: soak, water: tap}
  - {stage: manual, do: flush, lumen: outer, water: tap}
=== devices/tip.ifu.yaml
kind: device
id: eye-tip
cleaning:
  all_of: [{stage: manual, steps: [{do: flush, lumen: inner, water: {grade: sterile}, src: s7}]}]
=== water/tap.ifu.yaml
kind: water
id: tap
grade: utility
`,
    ],
  },
});

function checkStep(step: ProcedureStep, water: Text, devices: readonly Device[], { view, report }: RuleContext): void {
  const setting = settingFor({}, view);
  const point = view.get('water', water.text);
  const failures = devices.flatMap((device) => {
    for (const { quality, src } of demandsFor(step, device)) {
      const cited = quality.src === undefined && src !== undefined ? { ...quality, src } : quality;
      const question = { by: device, quality: cited, water: point, waterName: water.text, factAt: water.at, setting };
      const judgement = judgeWater(question).find(({ outcome }) => outcome === 'fails');
      if (judgement !== undefined) return [{ device, judgement }];
    }
    return [];
  });
  if (failures.length === 0) return;
  report({
    at: water.at,
    message: message.low(water.text, step.do?.text ?? '', whoAsks(failures)),
    does: stepInWords(step),
    ...evidenceOf(failures),
  });
}

interface WaterDemand {
  readonly quality: NonNullable<CleaningStep['water']>;
  readonly src: Citation | undefined;
}

/** What the steps of the instruction that say to do the same at the same place ask of the water. */
function demandsFor(step: ProcedureStep, device: Device): readonly WaterDemand[] {
  const place = (step.lumen ?? step.port)?.text;
  const found: WaterDemand[] = [];
  for (const asked of device.cleaning === undefined ? [] : stepsOfAll(device.cleaning)) {
    const own = (asked.lumen ?? asked.port)?.text;
    if (asked.water === undefined || asked.do?.text !== step.do?.text) continue;
    if (place === undefined || own === undefined || own === place) found.push({ quality: asked.water, src: asked.src });
  }
  return found;
}

/** Steps that are done whichever choice is followed. */
function stepsOfAll(node: CleaningNode): readonly CleaningStep[] {
  return [...(node.steps?.items ?? []), ...(node.all_of?.items ?? []).flatMap(stepsOfAll)];
}
