import { givenOf } from '../../judge/given.ts';
import { factOf, judgeDemand } from '../../judge/judgement.ts';
import type { Judgement, Parameter } from '../../judge/outcome.ts';
import { heatLimits } from '../../judge/prohibitions.ts';
import type { Setting } from '../../judge/setting.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Citation, Quantity, Requirement } from '../../model/node.ts';
import { formatQuantity } from '../../quantity/format.ts';
import { defineRule } from '../rule.ts';
import { isOutOfScope } from '../support/cleaning-ways.ts';
import type { Failure } from '../support/failures.ts';
import { evidenceOf, whoAsks } from '../support/failures.ts';
import { settingFor } from '../support/judging.ts';
import { isAbove } from '../support/limits-of.ts';
import { reachOf, stepInWords, stepsOf } from '../support/steps.ts';

const message = {
  hot: (temp: string, who: string) => `Drying at ${temp} is too hot for ${who}.`,
};

export const rule = defineRule({
  id: 'drying-hotter-than-device',
  stage: 'rinsing',
  severity: 'error',
  settledBy: 'manager',
  why: 'A drying cabinet is a source of heat that people forget.',
  source: 'logic',
  kinds: ['procedure'],
  check(procedure, { view, report }) {
    for (const step of stepsOf(procedure)) {
      const { temp } = step;
      if (temp === undefined || step.stage?.text !== 'drying') continue;
      const setting = settingFor({}, view);
      const failures: Failure[] = [];
      for (const device of reachOf(step, procedure, view)) {
        const judgement = tooHot(device, temp, setting);
        if (judgement !== undefined) failures.push({ device, judgement });
      }
      if (failures.length === 0) continue;
      report({
        at: temp.at,
        message: message.hot(formatQuantity(temp), whoAsks(failures)),
        does: stepInWords(step),
        ...evidenceOf(failures),
      });
    }
  },
  examples: {
    bad: [
      `
=== procedures/cabinet.ifu.yaml
kind: procedure
id: cabinet
applies_to: [optic]
steps: [{stage: drying, temp: 90 C}]
                              ^^^^ Drying at 90 °C is too hot for "optic" (at most 70 °C).
=== devices/optic.ifu.yaml
kind: device
id: optic
drying: {temp: {at_most: 70 C, src: s4}}
statements:
  s4: {doc: OP-4, rev: B, page: 5, quote: "Dry at no more than 70 °C."}
`,
      `
=== procedures/cabinet.ifu.yaml
kind: procedure
id: cabinet
applies_to_all: true
steps:
  - {stage: drying, do: dry in the cabinet, temp: 80 C, time: 30 min}
                                                  ^^^^ Drying at 80 °C is too hot for "probe" (at most 60 °C).
=== devices/probe.ifu.yaml
kind: device
id: probe
limits: {temp: {at_most: 60 C, src: s1}}
statements:
  s1: {doc: LN-44, rev: B, page: 2, quote: "Do not exceed 60 °C."}
=== devices/forceps.ifu.yaml
kind: device
id: forceps
limits: {temp: {at_most: 140 C}}
`,
    ],
    good: [
      `
=== procedures/cabinet.ifu.yaml
kind: procedure
id: cabinet
applies_to: [optic]
steps: [{stage: drying, temp: 65 C}]
=== devices/optic.ifu.yaml
kind: device
id: optic
drying: {temp: {at_most: 70 C}}
`,
      `
=== procedures/cabinet.ifu.yaml
kind: procedure
id: cabinet
applies_to: [forceps]
steps: [{stage: drying, temp: 90 C}]
=== devices/forceps.ifu.yaml
kind: device
id: forceps
drying: {use: required}
limits: {temp: {silent: true, checked: 2025-02-24}}
`,
    ],
  },
});

/** The page's own drying temperature first, then the limits that hold at every stage. */
function tooHot(device: EntityOf['device'], temp: Quantity, setting: Setting): Judgement | undefined {
  if (isOutOfScope(device)) return undefined;
  const limits: { requirement: Requirement; src: Citation | undefined; parameter: Parameter }[] = heatLimits(
    device,
  ).map((limit) => ({ ...limit, parameter: 'heat-limit' }));
  const own = device.drying?.temp;
  if (own !== undefined) limits.unshift({ requirement: own, src: device.drying?.src, parameter: 'drying-temperature' });
  for (const { requirement, src, parameter } of limits) {
    const judgement = judgeDemand({ by: device, parameter, requirement, src }, factOf(temp, givenOf(temp)), setting);
    if (judgement.outcome === 'fails' && isAbove(temp, requirement)) return judgement;
  }
  return undefined;
}
