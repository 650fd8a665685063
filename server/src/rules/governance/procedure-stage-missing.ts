import type { LibraryView } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Citation, Place } from '../../model/node.ts';
import { sayingsOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';
import { devicesOf } from '../support/applies.ts';
import { alwaysDemanded, isOutOfScope } from '../support/cleaning-ways.ts';
import { deviceName } from '../support/device-names.ts';
import { settingFor } from '../support/judging.ts';
import { isCleaning, proceduresFor, stepsOf } from '../support/steps.ts';

type Device = EntityOf['device'];
type Procedure = EntityOf['procedure'];

const message = {
  missing: (device: string, what: string) => `No step here or in another procedure for "${device}" ${what}.`,
};

export const rule = defineRule({
  id: 'procedure-stage-missing',
  stage: 'governance',
  severity: 'error',
  settledBy: 'manager',
  why: 'A stage that no procedure has is done by whoever remembers it.',
  source: 'practice',
  kinds: ['procedure'],
  check(procedure, { view, report }) {
    for (const device of devicesOf(procedure, view)) {
      if (isOutOfScope(device)) continue;
      for (const need of needs) {
        if (!need.begins(procedure) || hasStage(procedure, need.stages)) continue;
        const demand = need.demand(device, view);
        if (demand === undefined || !isFirst(procedure, device, need, view)) continue;
        report({
          at: procedure.steps?.at ?? procedure.at,
          message: message.missing(deviceName(device), need.what),
          says: sayingsOf(device, demand.src),
          related: [{ at: demand.at, note: 'what the instruction says' }],
        });
      }
    }
  },
  examples: {
    bad: [
      `
kind: procedure
id: case-end
applies_to: [tube]
steps: [{stage: point-of-use, do: wipe}]
^^^^^ No step here or in another procedure for "tube" carries it to the department.
=== devices/tube.ifu.yaml
kind: device
id: tube
point_of_use: {wipe: {use: required, src: s1}}
`,
      `
=== procedures/tube.ifu.yaml
kind: procedure
id: tube
applies_to: [tube]
steps:
^^^^^ No step here or in another procedure for "tube" cleans it in an ultrasonic bath.
  - {stage: manual, do: brush}
  - {stage: inspection, do: visual}
=== devices/tube.ifu.yaml
kind: device
id: tube
cleaning: {all_of: [{stage: manual, src: s4}, {stage: ultrasonic, use: required, src: s4}]}
statements:
  s4: {doc: TU-1, rev: A, page: 4, quote: "Clean by hand, then in an ultrasonic bath."}
`,
    ],
    good: [
      `
=== procedures/sink.ifu.yaml
kind: procedure
id: sink
applies_to: [tube]
steps: [{stage: manual, do: brush}]
=== procedures/table.ifu.yaml
kind: procedure
id: table
applies_to: [tube]
steps: [{stage: ultrasonic, do: sonicate}, {stage: inspection, do: visual}, {stage: packaging, do: pack}]
=== devices/tube.ifu.yaml
kind: device
id: tube
inspection: {visual: true}
cleaning: {all_of: [{stage: manual}, {stage: ultrasonic, use: required}]}
`,
      `
=== procedures/tube.ifu.yaml
kind: procedure
id: tube
applies_to: [tube]
steps: [{stage: manual, do: brush}]
=== devices/tube.ifu.yaml
kind: device
id: tube
ultrasonic: {use: allowed}
`,
    ],
  },
});

interface Need {
  readonly stages: readonly string[];
  readonly what: string;
  /** True of a procedure that is concerned with the part of the work in which the stage has its place. */
  readonly begins: (procedure: Procedure) => boolean;
  readonly demand: (
    device: Device,
    view: LibraryView,
  ) => { readonly at: Place; readonly src: Citation | undefined } | undefined;
}

const needs: readonly Need[] = [
  {
    stages: ['transport', 'receipt'],
    what: 'carries it to the department',
    begins: (procedure) => hasStage(procedure, ['point-of-use']),
    demand: ({ point_of_use }) => point_of_use && { at: point_of_use.at, src: undefined },
  },
  {
    stages: ['ultrasonic'],
    what: 'cleans it in an ultrasonic bath',
    begins: cleans,
    demand: (device, view) => {
      const voice = alwaysDemanded(device, 'ultrasonic', settingFor({}, view))?.voices[0];
      return voice && { at: voice.at, src: voice.src };
    },
  },
  {
    stages: ['inspection'],
    what: 'looks at it before it is packed',
    begins: cleans,
    demand: ({ inspection }) =>
      inspection?.visual?.on === true || inspection?.criteria !== undefined
        ? { at: inspection.at, src: inspection.src }
        : undefined,
  },
  {
    stages: ['packaging'],
    what: 'packs it',
    begins: (procedure) => cleans(procedure) && hasStage(procedure, ['inspection']),
    demand: ({ sterilization }) => {
      const option = sterilization?.any_of?.items.find(({ packaging }) => packaging !== undefined);
      return option?.packaging && { at: option.packaging.at, src: option.packaging.src ?? option.src };
    },
  },
];

function cleans(procedure: Procedure): boolean {
  return stepsOf(procedure).some(({ stage }) => isCleaning(stage));
}

/** Where the indicator goes is told for all packs at once, and packs nothing. */
function hasStage(procedure: Procedure, stages: readonly string[]): boolean {
  return stepsOf(procedure).some(
    (step) => step.stage !== undefined && stages.includes(step.stage.text) && step.do?.text !== 'place-indicator',
  );
}

/** True when no procedure for the device has the stage, and this is the first that is concerned with it: told once. */
function isFirst(procedure: Procedure, device: Device, { stages, begins }: Need, view: LibraryView): boolean {
  let first: Procedure | undefined;
  for (const other of proceduresFor(device, view)) {
    if (hasStage(other, stages)) return false;
    if (begins(other)) first ??= other;
  }
  return first === procedure;
}
