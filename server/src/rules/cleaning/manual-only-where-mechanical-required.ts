import type { StageDemand } from '../../judge/demands.ts';
import type { Setting } from '../../judge/setting.ts';
import type { LibraryView } from '../../library/view.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { sayingsOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';
import { alwaysDemanded, banOf } from '../support/cleaning-ways.ts';
import { deviceName } from '../support/device-names.ts';
import { named, quotesOf } from '../support/failures.ts';
import { settingFor } from '../support/judging.ts';
import { isPastCleaning, reachOf, stepsOf } from '../support/steps.ts';

type Device = EntityOf['device'];
type Procedure = EntityOf['procedure'];

const message = {
  omitted: (devices: string, next: string) =>
    `${devices} must also be washed in a machine, and this procedure goes from the sink to ${next} without it.`,
  does: (stages: string) => `stages here: ${stages}`,
};

export const rule = defineRule({
  id: 'manual-only-where-mechanical-required',
  stage: 'cleaning',
  severity: 'error',
  settledBy: 'manager',
  why: 'The machine is part of the cleaning that the manufacturer has shown to work, whatever the hurry.',
  source: 'standard',
  kinds: ['procedure'],
  check(procedure, { view, report }) {
    const route = routeOf(procedure);
    if (route === undefined) return;
    const setting = settingFor({}, view);
    const missed = demandsOn(procedure, route.byHand, setting, view);
    if (missed.length === 0) return;
    report({
      at: procedure.steps?.at ?? procedure.at,
      message: message.omitted(named(missed.map(({ device }) => device)), route.next.stage?.text ?? ''),
      does: message.does(
        [...new Set(stepsOf(procedure).flatMap((step) => (step.stage === undefined ? [] : [step.stage.text])))].join(
          ', ',
        ),
      ),
      says: quotesOf(
        missed.map(({ device, demand }) => demand.voices.flatMap((voice) => sayingsOf(device, voice.src))),
      ),
      related: missed.map(({ device, demand }) => ({
        at: demand.voices[0]?.at ?? device.at,
        note: `machine stage of "${deviceName(device)}"`,
      })),
    });
  },
  examples: {
    bad: [
      `
=== procedures/turnover.ifu.yaml
kind: procedure
id: turnover
applies_to: [scissors]
steps: [{stage: manual}, {stage: steam}]
^^^^^ "scissors" must also be washed in a machine, and this procedure goes from the sink to steam without it.
=== devices/scissors.ifu.yaml
kind: device
id: scissors
cleaning: {all_of: [{stage: manual, src: s1}, {stage: mechanical, src: s1}]}
statements:
  s1: {doc: DW-REP-077, rev: D, page: 4, quote: "Pre-clean manually, then clean in a washer-disinfector."}
`,
      `
=== procedures/dropped.ifu.yaml
kind: procedure
id: dropped
applies_to_all: true
steps:
^^^^^ "knee-trials" must also be washed in a machine, and this procedure goes from the sink to drying without it.
  - {stage: manual, do: scrub}
  - {stage: drying, do: dry}
  - {stage: packaging, do: pack}
=== devices/forceps.ifu.yaml
kind: device
id: forceps
cleaning: {any_of: [{id: by-hand, stage: manual}, {id: machine, stage: mechanical}]}
=== devices/trials.ifu.yaml
kind: device
id: knee-trials
cleaning:
  all_of:
    - {stage: manual, src: s3}
    - {stage: mechanical, src: s3}
statements:
  s3: {doc: FN-KS, rev: D, page: 5, quote: "Pre-clean manually, then clean in a washer-disinfector."}
`,
    ],
    good: [
      `
=== procedures/scissors.ifu.yaml
kind: procedure
id: scissors
applies_to: [scissors]
steps:
  - {stage: manual, do: soak}
  - {stage: mechanical, do: wash}
  - {stage: packaging, do: pack}
=== devices/scissors.ifu.yaml
kind: device
id: scissors
cleaning: {all_of: [{stage: manual}, {stage: mechanical}]}
`,
      `
=== procedures/sink.ifu.yaml
kind: procedure
id: sink
applies_to: [scissors, tip]
steps:
  - {stage: manual, do: soak}
  - {stage: manual, do: rinse}
=== procedures/tip.ifu.yaml
kind: procedure
id: tip
applies_to: [tip]
steps: [{stage: manual, do: flush}, {stage: packaging, do: pack}]
=== devices/scissors.ifu.yaml
kind: device
id: scissors
cleaning: {all_of: [{stage: manual}, {stage: mechanical}]}
=== devices/tip.ifu.yaml
kind: device
id: tip
cleaning: {any_of: [{id: both, all_of: [{stage: manual}, {stage: mechanical}]}, {id: by-hand, stage: manual}]}
`,
    ],
  },
});

/** A procedure that cleans by hand and goes on, without a machine. One that ends at the sink may go on elsewhere. */
function routeOf(procedure: Procedure): { byHand: readonly ProcedureStep[]; next: ProcedureStep } | undefined {
  const steps = stepsOf(procedure);
  const byHand = steps.filter((step) => step.stage?.text === 'manual');
  const next = steps.find((step) => isPastCleaning(step.stage));
  const washes = steps.some((step) => step.stage?.text === 'mechanical');
  return byHand.length === 0 || next === undefined || washes ? undefined : { byHand, next };
}

function demandsOn(
  procedure: Procedure,
  byHand: readonly ProcedureStep[],
  setting: Setting,
  view: LibraryView,
): readonly { device: Device; demand: StageDemand }[] {
  const found: { device: Device; demand: StageDemand }[] = [];
  for (const device of new Set(byHand.flatMap((step) => reachOf(step, procedure, view)))) {
    const demand =
      banOf(device, 'mechanical') === undefined ? alwaysDemanded(device, 'mechanical', setting) : undefined;
    if (demand !== undefined) found.push({ device, demand });
  }
  return found;
}
