import type { StageDemand } from '../../judge/demands.ts';
import type { LibraryView } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { sayingsOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';
import { alwaysDemanded, banOf } from '../support/cleaning-ways.ts';
import { deviceName } from '../support/device-names.ts';
import { named, quotesOf } from '../support/failures.ts';
import { settingFor } from '../support/judging.ts';
import { placeOf, proceduresFor, reachOf, stepInWords, stepsOf } from '../support/steps.ts';

type Device = EntityOf['device'];
type Procedure = EntityOf['procedure'];

const message = {
  dropped: (devices: string) =>
    `${devices} must be cleaned by hand before the machine, and no step before this one does it.`,
};

export const rule = defineRule({
  id: 'manual-preclean-dropped',
  stage: 'cleaning',
  severity: 'error',
  settledBy: 'manager',
  why: 'A washer does not brush lumens.',
  source: 'standard',
  kinds: ['procedure'],
  check(procedure, { view, report }) {
    const steps = stepsOf(procedure);
    const washing = steps.findIndex((step) => step.stage?.text === 'mechanical');
    const step = steps[washing];
    if (step === undefined || steps.slice(0, washing).some((before) => before.stage?.text === 'manual')) return;
    const setting = settingFor({}, view);
    const dropped: { device: Device; demand: StageDemand }[] = [];
    for (const device of reachOf(step, procedure, view)) {
      const demand = alwaysDemanded(device, 'manual', setting);
      if (demand === undefined || banOf(device, 'mechanical') !== undefined || isDoneElsewhere(device, procedure, view))
        continue;
      dropped.push({ device, demand });
    }
    if (dropped.length === 0) return;
    report({
      at: placeOf(step),
      message: message.dropped(named(dropped.map(({ device }) => device))),
      does: stepInWords(step),
      says: quotesOf(
        dropped.map(({ device, demand }) => demand.voices.flatMap((voice) => sayingsOf(device, voice.src))),
      ),
      related: dropped.map(({ device, demand }) => ({
        at: demand.voices[0]?.at ?? device.at,
        note: `cleaning by hand of "${deviceName(device)}"`,
      })),
    });
  },
  examples: {
    bad: [
      `
=== procedures/load.ifu.yaml
kind: procedure
id: load-and-go
applies_to: [tube]
steps: [{stage: mechanical, cycle: W1-std}]
                ^^^^^^^^^^ "tube" must be cleaned by hand before the machine, and no step before this one does it.
=== devices/tube.ifu.yaml
kind: device
id: tube
cleaning: {all_of: [{stage: manual, src: s4}, {stage: mechanical, src: s4}]}
statements:
  s4: {doc: QM-31, rev: E, page: 4, quote: "Clean manually, then in a washer-disinfector."}
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles: [{id: W1-std}]
`,
      `
=== procedures/night.ifu.yaml
kind: procedure
id: night-shift
applies_to: [tube, forceps]
steps:
  - {stage: receipt, do: count}
  - {stage: mechanical, do: wash}
                            ^^^^ "tube" must be cleaned by hand before the machine, and no step before this one does it.
  - {stage: manual, do: brush what is left}
=== devices/tube.ifu.yaml
kind: device
id: tube
cleaning: {all_of: [{stage: manual, needed: before-machine}, {stage: mechanical}]}
=== devices/forceps.ifu.yaml
kind: device
id: forceps
cleaning: {any_of: [{id: by-hand, stage: manual}, {id: machine, stage: mechanical}]}
`,
    ],
    good: [
      `
=== procedures/tube.ifu.yaml
kind: procedure
id: tube
applies_to: [tube]
steps: [{stage: manual, do: brush}, {stage: mechanical, do: wash}]
=== devices/tube.ifu.yaml
kind: device
id: tube
cleaning: {all_of: [{stage: manual}, {stage: mechanical}]}
`,
      `
=== procedures/sink.ifu.yaml
kind: procedure
id: sink
applies_to: [tube]
steps: [{stage: manual, do: brush}]
=== procedures/machine.ifu.yaml
kind: procedure
id: machine
applies_to: [tube]
steps: [{stage: mechanical, do: wash}]
=== devices/tube.ifu.yaml
kind: device
id: tube
cleaning: {all_of: [{stage: manual}, {stage: mechanical}]}
`,
    ],
  },
});

/** Another procedure may be the half at the sink: one that cleans by hand and leaves the machine to this one. */
function isDoneElsewhere(device: Device, here: Procedure, view: LibraryView): boolean {
  for (const procedure of proceduresFor(device, view)) {
    if (procedure === here) continue;
    const stages = new Set(stepsOf(procedure).map((step) => step.stage?.text));
    if (stages.has('manual') && !stages.has('mechanical') && !stages.has('packaging')) return true;
  }
  return false;
}
