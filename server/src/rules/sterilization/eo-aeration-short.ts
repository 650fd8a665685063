import { givenOf } from '../../judge/given.ts';
import { factOf, judgeDemand } from '../../judge/judgement.ts';
import type { Judgement } from '../../judge/outcome.ts';
import type { Setting } from '../../judge/setting.ts';
import type { LibraryView } from '../../library/view.ts';
import type { SterilizationOption } from '../../model/entities/device-sterilization.generated.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { devicesOfStep } from '../support/applies.ts';
import { cycleUses } from '../support/cycle-uses.ts';
import type { Failure } from '../support/failures.ts';
import { evidenceOf, named, whoAsks } from '../support/failures.ts';
import { settingFor } from '../support/judging.ts';
import { proceduresFor, stepInWords, stepsOf } from '../support/steps.ts';
import { isAbout, membersEvidence, membersWith } from '../support/use-reports.ts';

type Device = EntityOf['device'];

const message = {
  outside: (what: string, who: string) => `${what} does not air out as the page asks: ${who}.`,
  missing: (cycle: string, who: string) =>
    `After ${cycle}, ${who} must be aired out, and neither the cycle nor a procedure does it.`,
  step: 'This step',
};

export const rule = defineRule({
  id: 'eo-aeration-short',
  stage: 'sterilization',
  severity: 'error',
  settledBy: 'educator',
  why: 'What is left of the gas in the item burns tissue.',
  source: 'standard',
  kinds: ['procedure', 'set'],
  check(entity: AnyEntity, context) {
    checkUses(entity, context);
    if (isOfKind(entity, 'procedure')) checkSteps(entity, context);
  },
  examples: {
    bad: [
      `
=== procedures/probe.ifu.yaml
kind: procedure
id: probe
applies_to: [probe]
steps: [{stage: aeration, do: aerate, time: 8 h, temp: 60 C}]
                                            ^^^ This step does not air out as the page asks: "probe" (at least 12 h).
=== devices/probe.ifu.yaml
kind: device
id: probe
manual: {use: required}
sterilization:
  any_of:
    - {id: eo55, modality: eo, context: terminal, temp: {stated: 55 C}, exposure: {stated: 60 min}, aeration: {time: {at_least: 12 h}, temp: {at_most: 55 C}}, src: s1}
statements:
  s1: {doc: LN-44, rev: A, page: 2, quote: "Ethylene oxide 55 °C, 60 minutes; air out at least 12 hours at no more than 55 °C."}
`,
      `
=== sets/probes.ifu.yaml
kind: set
id: probes
members: [{device: probe, qty: 2}]
packaging: pouch
cycle: "E1:55"
       ^^^^^^^ After E1:55, "probe" must be aired out, and neither the cycle nor a procedure does it.
=== devices/probe.ifu.yaml
kind: device
id: probe
manual: {use: required}
sterilization:
  any_of:
    - {id: eo55, modality: eo, context: terminal, temp: {stated: 55 C}, exposure: {stated: 60 min}, aeration: {time: {at_least: 12 h}, temp: {at_most: 55 C}}, src: s1}
statements:
  s1: {doc: LN-44, rev: A, page: 2, quote: "Ethylene oxide 55 °C, 60 minutes; air out at least 12 hours at no more than 55 °C."}
=== packaging/pouch.ifu.yaml
kind: packaging
id: pouch
type: pouch
validated: [{modality: eo, context: terminal}]
=== sterilizers/E1.ifu.yaml
kind: sterilizer
id: E1
cycles:
  - {id: "E1:55", modality: eo, context: terminal, temp: 55 C, exposure: 60 min, qualified: 2025-01-22}
`,
    ],
    good: [
      `
=== procedures/probe.ifu.yaml
kind: procedure
id: probe
applies_to: [probe]
steps:
  - {stage: low-temperature, do: sterilize, cycle: "E1:55"}
  - {stage: aeration, do: aerate, time: 12 h, temp: 55 C}
=== devices/probe.ifu.yaml
kind: device
id: probe
manual: {use: required}
sterilization:
  any_of:
    - {id: eo55, modality: eo, context: terminal, temp: {stated: 55 C}, exposure: {stated: 60 min}, aeration: {time: {at_least: 12 h}, temp: {at_most: 55 C}}, src: s1}
statements:
  s1: {doc: LN-44, rev: A, page: 2, quote: "Ethylene oxide 55 °C, 60 minutes; air out at least 12 hours at no more than 55 °C."}
=== sterilizers/E1.ifu.yaml
kind: sterilizer
id: E1
cycles:
  - {id: "E1:55", modality: eo, context: terminal, temp: 55 C, exposure: 60 min, qualified: 2025-01-22}
`,
      `
=== sets/probes.ifu.yaml
kind: set
id: probes
members: [{device: probe, qty: 2}]
packaging: pouch
cycle: "E1:55"
=== devices/probe.ifu.yaml
kind: device
id: probe
manual: {use: required}
sterilization:
  any_of:
    - {id: eo55, modality: eo, context: terminal, temp: {stated: 55 C}, exposure: {stated: 60 min}, aeration: {time: {at_least: 12 h}}, src: s1}
statements:
  s1: {doc: LN-44, rev: A, page: 2, quote: "Ethylene oxide 55 °C, 60 minutes; air out at least 12 hours."}
=== packaging/pouch.ifu.yaml
kind: packaging
id: pouch
type: pouch
validated: [{modality: eo, context: terminal}]
=== sterilizers/E1.ifu.yaml
kind: sterilizer
id: E1
cycles:
  - {id: "E1:55", modality: eo, context: terminal, temp: 55 C, exposure: 60 min, aeration: {time: 12 h, temp: 50 C}, qualified: 2025-01-22}
`,
    ],
  },
});

/** Cycles named on cards and in steps: what they air out themselves, and where nothing does. */
function checkUses(entity: AnyEntity, { view, report }: RuleContext): void {
  for (const use of cycleUses(entity, view)) {
    const failures = membersWith('fails', use, isAbout('aeration', 'aeration-temperature'));
    const forgotten = membersWith('needs-answer', use, (one) => isAbout('aeration')(one) && one.given === '').filter(
      ({ device }) => !isAiredBySteps(device, view),
    );
    if (failures.length > 0)
      report({
        at: use.name.at,
        message: message.outside(use.name.text, whoAsks(failures)),
        ...membersEvidence(use, failures),
      });
    if (forgotten.length > 0)
      report({
        at: use.name.at,
        message: message.missing(use.name.text, named(forgotten.map(({ device }) => device))),
        ...membersEvidence(use, forgotten),
      });
  }
}

function isAiredBySteps(device: Device, view: LibraryView): boolean {
  for (const procedure of proceduresFor(device, view)) {
    if (stepsOf(procedure).some(isAeration)) return true;
  }
  return false;
}

function isAeration({ stage }: ProcedureStep): boolean {
  return stage?.text === 'aeration';
}

function checkSteps(procedure: EntityOf['procedure'], { view, report }: RuleContext): void {
  for (const step of stepsOf(procedure).filter(isAeration)) {
    const setting = settingFor({}, view);
    const failures: Failure[] = [];
    for (const device of devicesOfStep(step, procedure, view)) {
      const judgement = judgedStep(step, device, setting);
      if (judgement !== undefined) failures.push({ device, judgement });
    }
    if (failures.length === 0) continue;
    report({
      at: (step.time ?? step.temp ?? step.stage ?? step).at,
      message: message.outside(message.step, whoAsks(failures)),
      does: stepInWords(step),
      ...evidenceOf(failures),
    });
  }
}

/** The first judgement that fails, where every gas option has one. */
function judgedStep(step: ProcedureStep, device: Device, setting: Setting): Judgement | undefined {
  let first: Judgement | undefined;
  for (const option of device.sterilization?.any_of?.items ?? []) {
    if (option.modality?.text !== 'eo') continue;
    const failing = judged(step, option, device, setting).find(({ outcome }) => outcome === 'fails');
    if (failing === undefined) return undefined;
    first ??= failing;
  }
  return first;
}

function judged(
  { time, temp }: ProcedureStep,
  { aeration, src }: SterilizationOption,
  by: Device,
  setting: Setting,
): readonly Judgement[] {
  const wanted = [
    { parameter: 'aeration', requirement: aeration?.time, ours: time },
    { parameter: 'aeration-temperature', requirement: aeration?.temp, ours: temp },
  ] as const;
  return wanted.flatMap(({ parameter, requirement, ours }) =>
    requirement === undefined
      ? []
      : [judgeDemand({ by, parameter, requirement, src: aeration?.src ?? src }, factOf(ours, givenOf(ours)), setting)],
  );
}
