import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { Place, Quantity } from '../../model/node.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import type { Failure } from '../support/failures.ts';
import { evidenceOf, named } from '../support/failures.ts';
import { settingFor } from '../support/judging.ts';
import { longerThanShown } from '../support/longer-exposures.ts';
import { devicesShownShorter } from '../support/shorter-devices.ts';
import { shown } from '../support/shown.ts';
import { stepInWords, stepsOf } from '../support/steps.ts';

const message = {
  all: (given: string, who: string) =>
    `${given} for everything is longer than what the pages of these give: ${who}. One long cycle for all is shown for few and wears out the rest.`,
  usual: (given: string, who: string) =>
    `The usual cycle of this machine holds for ${given}, longer than what the pages of these give: ${who}.`,
  does: (cycle: string) => `${cycle} is run where nothing else is chosen`,
};

export const rule = defineRule({
  id: 'extended-cycle-for-all',
  stage: 'sterilization',
  severity: 'warning',
  settledBy: 'manager',
  why: 'A longer cycle "to be safe" is outside the instruction of most items and ages all of them.',
  source: 'practice',
  kinds: ['procedure', 'sterilizer'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'procedure')) checkProcedure(entity, context);
    else if (isOfKind(entity, 'sterilizer')) checkSterilizer(entity, context);
  },
  examples: {
    bad: [
      `
=== procedures/one-cycle.ifu.yaml
kind: procedure
id: one-cycle
steps: [{stage: steam, do: sterilize, applies_to_all: true, exposure: 10 min}]
                                                                      ^^^^^^ 10 min for everything is longer than what the pages of these give: "hook". One long cycle for all is shown for few and wears out the rest.
=== devices/hook.ifu.yaml
kind: device
id: hook
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 30 min}, src: s1}
statements:
  s1: {doc: HO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 30 minutes."}
`,
      `
=== procedures/longest.ifu.yaml
kind: procedure
id: longest
applies_to_all: true
steps: [{stage: steam, do: sterilize, cycle: pv132-10-30}]
                                             ^^^^^^^^^^^ 10 min for everything is longer than what the pages of these give: "hook". One long cycle for all is shown for few and wears out the rest.
=== devices/hook.ifu.yaml
kind: device
id: hook
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {stated: 4 min}, dry: {at_least: 30 min}, src: s1}
statements:
  s1: {doc: HO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, 4 minutes, dry at least 30 minutes."}
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-10-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 10 min, dry: 30 min, qualified: 2025-01-15, default: true}
                                                                                                                                             ^^^^ The usual cycle of this machine holds for 10 min, longer than what the pages of these give: "hook".
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
    ],
    good: [
      `
=== procedures/by-card.ifu.yaml
kind: procedure
id: by-card
applies_to_all: true
steps: [{stage: steam, do: sterilize, note: the cycle that the card of the set names}]
=== devices/hook.ifu.yaml
kind: device
id: hook
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 30 min}, src: s1}
statements:
  s1: {doc: HO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 30 minutes."}
`,
      `
=== procedures/hooks.ifu.yaml
kind: procedure
id: hooks
applies_to: [hook]
steps: [{stage: steam, do: sterilize, exposure: 4 min}]
=== devices/hook.ifu.yaml
kind: device
id: hook
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 30 min}, src: s1}
statements:
  s1: {doc: HO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 30 minutes."}
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15, default: true}
  - {id: pv132-10-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 10 min, dry: 30 min, qualified: 2025-01-15}
`,
    ],
  },
});

function checkProcedure(procedure: EntityOf['procedure'], { view, report }: RuleContext): void {
  const isImmediate = procedure.context?.text === 'iuss';
  if (procedure.when !== undefined || isImmediate) return;
  for (const step of stepsOf(procedure)) {
    const isForAll =
      step.applies_to_all?.on === true || (procedure.applies_to_all?.on === true && step.applies_to === undefined);
    if (!isForAll || step.when !== undefined) continue;
    const cycle = step.cycle === undefined ? undefined : view.sterilizerCycle(step.cycle.text)?.cycle;
    if (cycle?.context?.text === 'iuss') continue;
    const at = (step.exposure ?? step.cycle)?.at;
    const exposure = step.exposure ?? cycle?.exposure;
    const longer = longerFor(exposure, view);
    if (at !== undefined)
      tell(longer, { at, message: message.all(shown(exposure), whoOf(longer)), does: stepInWords(step) }, report);
  }
}

/** The cycle that the machine runs where nobody chooses. */
function checkSterilizer(sterilizer: EntityOf['sterilizer'], { view, report }: RuleContext): void {
  for (const { default: usual, exposure, id, context } of sterilizer.cycles?.items ?? []) {
    if (usual?.on !== true || context?.text === 'iuss') continue;
    const longer = longerFor(exposure, view);
    tell(
      longer,
      { at: usual.at, message: message.usual(shown(exposure), whoOf(longer)), does: message.does(id?.text ?? '') },
      report,
    );
  }
}

function longerFor(exposure: Quantity | undefined, view: RuleContext['view']): readonly Failure[] {
  if (exposure === undefined || exposure.problem !== undefined) return [];
  const devices = devicesShownShorter(exposure, view);
  return devices.length === 0 ? [] : longerThanShown(devices, exposure, settingFor({}, view));
}

function whoOf(longer: readonly Failure[]): string {
  return named(longer.map(({ device }) => device));
}

function tell(
  longer: readonly Failure[],
  words: { at: Place; message: string; does: string },
  report: RuleContext['report'],
): void {
  if (longer.length > 0) report({ ...words, ...evidenceOf(longer) });
}
