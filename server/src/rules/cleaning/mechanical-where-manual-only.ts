import type { LibraryView } from '../../library/view.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { sayingsOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';
import type { Ban } from '../support/cleaning-ways.ts';
import { banOf, isOutOfScope } from '../support/cleaning-ways.ts';
import { deviceName } from '../support/device-names.ts';
import { named, quotesOf } from '../support/failures.ts';
import { placeOf, reachOf, stepInWords, stepsOf } from '../support/steps.ts';

type Device = EntityOf['device'];

const message = {
  forbidden: (devices: string) => `This step washes ${devices} in a machine, which the instruction forbids.`,
};

export const rule = defineRule({
  id: 'mechanical-where-manual-only',
  stage: 'cleaning',
  severity: 'error',
  settledBy: 'manager',
  why: 'Heat, force and alkali of a machine ruin seals, optics and drives.',
  source: 'standard',
  kinds: ['procedure'],
  check(procedure, { view, report }) {
    for (const step of stepsOf(procedure)) {
      if (!washes(step, view)) continue;
      const banned = reachOf(step, procedure, view)
        .map((device) => ({ device, ban: banOf(device, 'mechanical') }))
        .filter((one): one is { device: Device; ban: Ban } => one.ban !== undefined && !isOutOfScope(one.device));
      if (banned.length === 0) continue;
      report({
        at: step.cycle?.at ?? placeOf(step),
        message: message.forbidden(named(banned.map(({ device }) => device))),
        does: stepInWords(step),
        says: quotesOf(banned.map(({ device, ban }) => sayingsOf(device, ban.src))),
        related: banned.map(({ device, ban }) => ({
          at: ban.at,
          note: `what the instruction of "${deviceName(device)}" forbids`,
        })),
      });
    }
  },
  examples: {
    bad: [
      `
=== procedures/std.ifu.yaml
kind: procedure
id: std
applies_to: [handpiece]
steps: [{stage: mechanical, cycle: W1-std}]
                                   ^^^^^^ This step washes "handpiece" in a machine, which the instruction forbids.
=== devices/handpiece.ifu.yaml
kind: device
id: handpiece
mechanical: {use: forbidden, src: s2}
statements:
  s2: {doc: TW-204, rev: C, page: 3, quote: "Do not clean in a washer."}
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles: [{id: W1-std}]
`,
      `
=== procedures/optics.ifu.yaml
kind: procedure
id: optics
applies_to_traits: [optic]
steps:
  - {stage: manual, do: wipe}
  - {stage: mechanical, do: wash on the gentle cycle}
                            ^^^^^^^^^^^^^^^^^^^^^^^^ This step washes "rigid-scope" in a machine, which the instruction forbids.
=== devices/scope.ifu.yaml
kind: device
id: rigid-scope
traits: [optic]
not: [{what: washer, src: s4}]
statements:
  s4: {doc: RS-1, rev: A, page: 2, quote: "Never put the scope in a washer."}
=== devices/camera.ifu.yaml
kind: device
id: camera
traits: [camera]
mechanical: {use: forbidden}
`,
    ],
    good: [
      `
=== procedures/std.ifu.yaml
kind: procedure
id: std
applies_to: [handpiece]
steps: [{stage: manual, do: wipe}]
=== devices/handpiece.ifu.yaml
kind: device
id: handpiece
mechanical: {use: forbidden}
`,
      `
=== procedures/std.ifu.yaml
kind: procedure
id: std
applies_to: [clamp]
steps: [{stage: mechanical, do: wash}]
=== devices/clamp.ifu.yaml
kind: device
id: clamp
mechanical: {silent: true, checked: 2025-02-24}
`,
    ],
  },
});

function washes(step: ProcedureStep, view: LibraryView): boolean {
  return (
    step.stage?.text === 'mechanical' ||
    (step.stage === undefined && step.cycle !== undefined && view.washerCycle(step.cycle.text) !== undefined)
  );
}
