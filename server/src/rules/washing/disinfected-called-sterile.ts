import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { defineRule } from '../rule.ts';
import { deviceName } from '../support/device-names.ts';
import { named } from '../support/failures.ts';
import { reachOf, stepsOf } from '../support/steps.ts';

type Procedure = EntityOf['procedure'];

const message = {
  skipped: (devices: string, stage: string) =>
    `${devices} must be sterilized before it is used, and goes from disinfection to ${stage} here. Disinfection protects those who pack it; it makes nothing fit for use.`,
  does: (stages: string) => `stages here: ${stages}`,
};

export const rule = defineRule({
  id: 'disinfected-called-sterile',
  stage: 'washing',
  severity: 'error',
  settledBy: 'manager',
  why: 'Disinfection in a washer protects those who pack; what enters the body needs more.',
  source: 'standard',
  kinds: ['procedure'],
  check(procedure, { view, report }) {
    const end = endWithoutSterilization(procedure);
    if (end?.stage === undefined) return;
    const critical = reachOf(end, procedure, view).filter((device) => device.class?.text === 'critical');
    if (critical.length === 0) return;
    const stages = stepsOf(procedure).flatMap((step) => step.stage?.text ?? []);
    report({
      at: end.stage.at,
      message: message.skipped(named(critical), end.stage.text),
      does: message.does([...new Set(stages)].join(', ')),
      related: critical.map((device) => ({
        at: device.class?.at ?? device.at,
        note: `class of "${deviceName(device)}"`,
      })),
    });
  },
  examples: {
    bad: [
      `
=== procedures/quick.ifu.yaml
kind: procedure
id: quick
applies_to: [hook]
steps: [{stage: mechanical}, {stage: storage}]
                                     ^^^^^^^ "hook" must be sterilized before it is used, and goes from disinfection to storage here. Disinfection protects those who pack it; it makes nothing fit for use.
=== devices/hook.ifu.yaml
kind: device
id: hook
class: critical
`,
      `
=== procedures/scopes.ifu.yaml
kind: procedure
id: scopes
applies_to: [scope, bowl]
steps:
  - {stage: manual, do: wipe}
  - {stage: disinfection, do: disinfect}
  - {stage: packaging, do: pack}
  - {stage: use, do: hand over}
            ^^^ "scope" must be sterilized before it is used, and goes from disinfection to use here. Disinfection protects those who pack it; it makes nothing fit for use.
=== devices/scope.ifu.yaml
kind: device
id: scope
class: critical
=== devices/bowl.ifu.yaml
kind: device
id: bowl
class: non-critical
`,
    ],
    good: [
      `
=== procedures/std.ifu.yaml
kind: procedure
id: std
applies_to: [hook]
steps: [{stage: mechanical}, {stage: packaging}, {stage: steam}, {stage: storage}]
=== devices/hook.ifu.yaml
kind: device
id: hook
class: critical
`,
      `
=== procedures/bowls.ifu.yaml
kind: procedure
id: bowls
applies_to: [bowl]
steps: [{stage: mechanical}, {stage: storage}]
=== devices/bowl.ifu.yaml
kind: device
id: bowl
class: non-critical
`,
    ],
  },
});

const disinfecting: ReadonlySet<string> = new Set(['mechanical', 'disinfection']);
const sterilizing: ReadonlySet<string> = new Set(['steam', 'low-temperature', 'sterilization']);
const ends: ReadonlySet<string> = new Set(['release', 'storage', 'use']);

/** The first step that ends the way of an item that was disinfected and not sterilized. */
function endWithoutSterilization(procedure: Procedure): ProcedureStep | undefined {
  let isDisinfected = false;
  for (const step of stepsOf(procedure)) {
    const stage = step.stage?.text ?? '';
    if (sterilizing.has(stage)) return undefined;
    if (isDisinfected && ends.has(stage)) return step;
    if (disinfecting.has(stage)) isDisinfected = true;
  }
  return undefined;
}
