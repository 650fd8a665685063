import { waysThrough } from '../../judge/demands.ts';
import { givenOf } from '../../judge/given.ts';
import { factOf, judgeDemand } from '../../judge/judgement.ts';
import type { Judgement } from '../../judge/outcome.ts';
import { thresholdOf } from '../../judge/policies.ts';
import type { Setting } from '../../judge/setting.ts';
import type { CleaningNode } from '../../model/entities/device-manual.generated.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { Quantity } from '../../model/node.ts';
import { formatQuantity } from '../../quantity/format.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { failsEveryWay } from '../support/cleaning-ways.ts';
import type { Failure } from '../support/failures.ts';
import { evidenceOf, whoAsks } from '../support/failures.ts';
import { settingFor } from '../support/judging.ts';
import { bySource, siteLimit, siteOf } from '../support/site-limits.ts';
import { reachOf, stepInWords, stepsOf } from '../support/steps.ts';
import { anyStep, unjudged } from '../support/unjudged.ts';

const message = {
  device: (temp: string, who: string) => `The first water is ${temp}, which is too hot for ${who}. Begin cold.`,
  site: (temp: string, limit: string, source: string) =>
    `The first water is ${temp}. The department lets it be at most ${limit}${source}. Begin cold.`,
  fix: (limit: string) => `Change to the department’s limit, ${limit}`,
};

export const rule = defineRule({
  id: 'first-rinse-hot',
  stage: 'cleaning',
  severity: 'warning',
  settledBy: 'manager',
  why: 'Hot water bakes protein onto metal before it is washed off.',
  source: 'standard',
  fix: 'Changes the temperature to the limit that the department has adopted.',
  kinds: ['procedure', 'site'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'procedure')) checkProcedure(entity, context);
    else if (isOfKind(entity, 'site')) checkSite(entity, context);
  },
  examples: {
    bad: [
      `
=== procedures/tray.ifu.yaml
kind: procedure
id: tray
steps:
  - {stage: manual, do: rinse, order: first, water: tap, temp: 60 C}
                                                               ^^^^ The first water is 60 °C. The department lets it be at most 45 °C (policy P-13). Begin cold.
  - {stage: manual, do: soak, chemistry: C1, temp: 40 C}
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {first_rinse_temp: {at_most: 45 C, src: policy P-13}}
`,
      `
=== procedures/scope.ifu.yaml
kind: procedure
id: rigid-scope
applies_to: [rigid-scope]
steps:
  - {stage: point-of-use, do: wipe}
  - {stage: manual, do: soak, chemistry: C1, temp: 44 C, time: 5 min}
                                                   ^^^^ The first water is 44 °C, which is too hot for "rigid-scope" (at most 40 °C). Begin cold.
=== devices/scope.ifu.yaml
kind: device
id: rigid-scope
manual: {first_rinse: {temp: {at_most: 40 C, src: s2}}}
statements:
  s2: {doc: RS-1, rev: A, page: 3, quote: "Rinse first with water of at most 40 °C."}
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {first_rinse_temp: {at_most: 45 C, src: policy P-13}}
`,
      `
=== procedures/tray.ifu.yaml
kind: procedure
id: tray
steps:
  - {stage: manual, do: rinse, order: first, water: tap, temp: 60 C}
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {set_mass: {at_most: 11.3 kg, src: policy P-12}}
^^^^^^^^^^ Whether the first water is too hot can't be judged: the limits of this site give no "first_rinse_temp".
`,
    ],
    good: [
      `
=== procedures/tray.ifu.yaml
kind: procedure
id: tray
steps:
  - {stage: manual, do: rinse, order: first, water: tap, temp: 25 C}
  - {stage: manual, do: rinse, water: tap, temp: 60 C}
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {first_rinse_temp: {at_most: 45 C, src: policy P-13}}
`,
      `
=== procedures/drying.ifu.yaml
kind: procedure
id: drying
steps:
  - {stage: drying, do: dry, temp: 80 C}
=== site.ifu.yaml
kind: site
id: lakeside
`,
    ],
  },
});

function checkProcedure(procedure: EntityOf['procedure'], { view, report }: RuleContext): void {
  const step = firstWater(stepsOf(procedure));
  const temp = step?.temp;
  if (step === undefined || temp === undefined || temp.problem !== undefined) return;
  const setting = settingFor({}, view);
  const failures: Failure[] = [];
  for (const device of reachOf(step, procedure, view)) {
    const judgement = tooHotFor(device, temp, setting);
    if (judgement !== undefined) failures.push({ device, judgement });
  }
  if (failures.length > 0) {
    report({
      at: temp.at,
      message: message.device(formatQuantity(temp), whoAsks(failures)),
      does: stepInWords(step),
      ...evidenceOf(failures),
    });
    return;
  }
  const limit = siteLimit(siteOf({}, view), 'first_rinse_temp');
  const judgement = tooHotHere(temp, setting);
  if (limit === undefined || judgement === undefined) return;
  report({
    at: temp.at,
    message: message.site(formatQuantity(temp), formatQuantity(limit.quantity), bySource(limit)),
    does: stepInWords(step),
    ...(judgement.gap !== undefined && { gap: judgement.gap }),
    related: [{ at: limit.at, note: 'limit of the department' }],
    fixes: [
      {
        title: message.fix(formatQuantity(limit.quantity)),
        edits: [{ span: temp.at.span, text: limit.quantity.text }],
      },
    ],
  });
}

/** The step that says it is the first; else the first that wets the item in the department. */
function firstWater(steps: readonly ProcedureStep[]): ProcedureStep | undefined {
  const marked = steps.find((step) => step.order?.text === 'first' && step.stage?.text !== 'mechanical');
  if (marked !== undefined) return marked;
  const first = steps.find((step) => wets(step) || step.stage?.text === 'mechanical');
  return first?.stage?.text === 'mechanical' ? undefined : first;
}

function wets(step: ProcedureStep): boolean {
  const isHere = step.stage === undefined || step.stage.text === 'manual' || step.stage.text === 'rinse';
  return isHere && [step.water, step.chemistry, step.temp, step.volume].some((one) => one !== undefined);
}

function tooHotFor(device: EntityOf['device'], temp: Quantity, setting: Setting): Judgement | undefined {
  return failsEveryWay(waysThrough(device, 'manual', setting), ({ first_rinse, src }: CleaningNode) => {
    const requirement = first_rinse?.temp;
    if (requirement === undefined) return [];
    return [
      judgeDemand(
        { by: device, parameter: 'first-rinse-temperature', requirement, src: first_rinse?.src ?? src },
        factOf(temp, givenOf(temp)),
        setting,
      ),
    ];
  });
}

function tooHotHere(temp: Quantity, setting: Setting): Judgement | undefined {
  const requirement = thresholdOf(setting, 'first_rinse_temp', 'temperature');
  if (requirement === undefined || setting.site === undefined) return undefined;
  const judgement = judgeDemand(
    { by: setting.site, parameter: 'first-rinse-temperature', requirement },
    factOf(temp, givenOf(temp)),
    setting,
  );
  return judgement.outcome === 'fails' ? judgement : undefined;
}

function checkSite(site: EntityOf['site'], { view, report }: RuleContext): void {
  if (siteLimit(site, 'first_rinse_temp') !== undefined) return;
  if (!anyStep(view, (step) => step.temp !== undefined && wets(step))) return;
  report(unjudged(site, 'thresholds', 'first_rinse_temp', 'Whether the first water is too hot'));
}
