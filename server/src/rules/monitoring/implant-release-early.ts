import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { Text } from '../../model/node.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { devicesOf, membersOf, traitOf } from '../support/applies.ts';
import { stepInWords, stepsOf } from '../support/steps.ts';
import { biologicalRelease, earlyRelease } from '../support/sterilizing-words.ts';
import { isMentioned, saidIn } from '../support/wording.ts';

const message = {
  none: 'This set holds implants, and no biological challenge goes with its load. Nobody can take them out again when the load turns out bad.',
  early: (release: string) =>
    `This set holds implants and is released by "${release}", without waiting for the biological result, and no emergency path is written down.`,
  step: 'This step releases implants before the biological result, and no emergency path is written down.',
};

export const rule = defineRule({
  id: 'implant-release-early',
  stage: 'monitoring',
  severity: 'error',
  settledBy: 'manager',
  why: 'An implant stays in the patient: it waits for the answer of the biological indicator, except in a documented emergency.',
  source: 'standard',
  kinds: ['set', 'procedure'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'set')) checkSet(entity, context);
    else if (isOfKind(entity, 'procedure')) checkProcedure(entity, context);
  },
  examples: {
    bad: [
      `
=== sets/plates.ifu.yaml
kind: set
id: plates
traits: [implant]
release: parametric-print-only
         ^^^^^^^^^^^^^^^^^^^^^ This set holds implants, and no biological challenge goes with its load. Nobody can take them out again when the load turns out bad.
=== sets/screws.ifu.yaml
kind: set
id: screws
members: [{device: bone-screws, qty: 1}]
biological: MB-steam
release: print-out only
         ^^^^^^^^^^^^^^ This set holds implants and is released by "print-out only", without waiting for the biological result, and no emergency path is written down.
=== devices/screws.ifu.yaml
kind: device
id: bone-screws
traits: [implant]
=== monitors/mb.ifu.yaml
kind: monitor
id: MB-steam
type: biological
`,
      `
=== procedures/release.ifu.yaml
kind: procedure
id: release
applies_to_traits: [implant]
steps:
  - {stage: steam, do: sterilize}
  - {stage: release, do: release before the result is in}
                         ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ This step releases implants before the biological result, and no emergency path is written down.
`,
    ],
    good: [
      `
=== sets/plates.ifu.yaml
kind: set
id: plates
traits: [implant]
biological: MB-steam
release: biological-result
=== monitors/mb.ifu.yaml
kind: monitor
id: MB-steam
type: biological
=== sets/trials.ifu.yaml
kind: set
id: trials
traits: [implant-trial]
release: print-out only
`,
      `
=== procedures/release.ifu.yaml
kind: procedure
id: release
applies_to_traits: [implant]
emergency_path: surgeon and manager sign, the result is followed up, form F-12
steps:
  - {stage: release, do: release before the result is in}
=== procedures/routine.ifu.yaml
kind: procedure
id: routine
applies_to_traits: [implant]
steps:
  - {stage: release, do: wait for the biological result}
`,
    ],
  },
});

function checkSet(set: EntityOf['set'], { view, report }: RuleContext): void {
  const implant =
    traitOf(set, 'implant') ??
    membersOf(set, view)
      .map((device) => traitOf(device, 'implant'))
      .find((one) => one !== undefined);
  if (implant === undefined) return;
  const { release, biological } = set;
  const related = [{ at: implant.at, note: 'why it counts as an implant' }];
  if (biological === undefined) {
    const at = (release ?? traitOf(set, 'implant') ?? set.id ?? set).at;
    report({ at, message: message.none, related, ...(release !== undefined && { does: release.text }) });
  } else if (release !== undefined && isEarly(release) && set.emergency_release === undefined)
    report({ at: release.at, message: message.early(release.text), does: release.text, related });
}

/** Says that it does not wait, or by what else it releases, without a word of the biological result. */
function isEarly({ text }: Text): boolean {
  return isMentioned(text, earlyRelease) && saidIn(text, biologicalRelease) === undefined;
}

function checkProcedure(procedure: EntityOf['procedure'], { view, report }: RuleContext): void {
  const early = stepsOf(procedure).filter((step) => step.stage?.text === 'release' && isEarlyStep(step));
  if (early.length === 0 || procedure.emergency_path !== undefined) return;
  const traits = procedure.applies_to_traits?.items ?? [];
  const implant =
    traits.find(({ text }) => text === 'implant') ??
    devicesOf(procedure, view)
      .map((device) => traitOf(device, 'implant'))
      .find((one) => one !== undefined);
  if (implant === undefined) return;
  for (const step of early)
    report({
      at: (step.do ?? step.stage ?? step).at,
      message: message.step,
      does: stepInWords(step),
      related: [{ at: implant.at, note: 'why it counts as an implant' }],
    });
}

function isEarlyStep({ do: act, note }: ProcedureStep): boolean {
  return [act, note].some((text) => text !== undefined && isMentioned(text.text, earlyRelease));
}
