import type { LibraryView } from '../../library/view.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Place } from '../../model/node.ts';
import { sayingsOf } from '../../model/saying.ts';
import type { Report } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { devicesOf } from '../support/applies.ts';
import { deviceName } from '../support/device-names.ts';
import { named, quotesOf } from '../support/failures.ts';
import { placeOf, stepInWords, stepsOf } from '../support/steps.ts';

type Device = EntityOf['device'];
type Procedure = EntityOf['procedure'];

const message = {
  none: (devices: string) => `${devices} goes to a low-temperature cycle, and no step dries it.`,
  endpoint: (devices: string) =>
    `${devices} goes to a low-temperature cycle, and this step does not say how one sees that it is dry.`,
  lumens: (devices: string) => `${devices} goes to a low-temperature cycle, and no step dries its bore.`,
};

export const rule = defineRule({
  id: 'wet-into-low-temperature',
  stage: 'rinsing',
  severity: 'error',
  settledBy: 'manager',
  why: 'Moisture stops a peroxide cycle, and with ethylene oxide it makes harmful residues.',
  source: 'standard',
  kinds: ['procedure'],
  check(procedure, { view, report }) {
    const entry = entryOf(procedure, view);
    if (entry === undefined) return;
    const devices = devicesOf(procedure, view).filter(
      (device) => entry.isLowTemperature || isOnlyLowTemperature(device),
    );
    if (devices.length === 0) return;
    const drying = stepsOf(procedure).filter((step) => step.stage?.text === 'drying');
    const found = faultIn(drying, devices, entry.at);
    if (found === undefined) return;
    const lastDrying = drying[drying.length - 1];
    report({
      ...found,
      ...(lastDrying !== undefined && { does: stepInWords(lastDrying) }),
      says: quotesOf(devices.map((device) => sayingsOf(device, device.drying?.src))),
      related: devices.flatMap((device) => optionPlaces(device)),
    });
  },
  examples: {
    bad: [
      `
=== procedures/camera.ifu.yaml
kind: procedure
id: camera
applies_to: [camera]
steps: [{do: final-rinse}, {stage: packaging}]
                                   ^^^^^^^^^ "camera" goes to a low-temperature cycle, and no step dries it.
=== devices/camera.ifu.yaml
kind: device
id: camera
sterilization: {any_of: [{id: h, modality: vh2o2, src: s8}]}
statements:
  s8: {doc: CV-8, rev: G, page: 12, quote: "Vaporised hydrogen peroxide only."}
`,
      `
=== procedures/probe.ifu.yaml
kind: procedure
id: probe
applies_to: [probe]
steps:
  - {stage: manual, do: rinse, water: RO-1}
  - {stage: drying, do: dry, method: cloth}
                        ^^^ "probe" goes to a low-temperature cycle, and this step does not say how one sees that it is dry.
  - {stage: packaging, do: pack}
=== devices/probe.ifu.yaml
kind: device
id: probe
drying: {use: required, endpoint: no visible moisture, src: s7}
sterilization: {any_of: [{id: eo55, modality: eo}]}
statements:
  s7: {doc: LN-44, rev: B, page: 4, quote: "Dry with a lint-free cloth until no moisture is visible."}
`,
      `
=== procedures/scope.ifu.yaml
kind: procedure
id: scope
applies_to: [scope]
steps:
  - {stage: manual, do: rinse, water: RO-1}
  - {stage: drying, do: dry, method: cloth, endpoint: no visible moisture}
                        ^^^ "scope" goes to a low-temperature cycle, and no step dries its bore.
  - {stage: low-temperature, do: sterilize}
=== devices/scope.ifu.yaml
kind: device
id: scope
lumens: [{id: channel, bore: 2 mm}]
sterilization: {any_of: [{id: pv132, modality: steam-prevac}, {id: h, modality: vh2o2}]}
`,
    ],
    good: [
      `
=== procedures/camera.ifu.yaml
kind: procedure
id: camera
applies_to: [camera]
steps:
  - {do: final-rinse}
  - {stage: drying, do: dry, endpoint: no visible moisture}
  - {stage: packaging, do: pack}
=== devices/camera.ifu.yaml
kind: device
id: camera
sterilization: {any_of: [{id: h, modality: vh2o2}]}
`,
      `
=== procedures/scope.ifu.yaml
kind: procedure
id: scope
applies_to: [scope]
steps:
  - {stage: manual, do: rinse}
  - {stage: drying, do: dry, method: cloth}
  - {stage: steam, do: sterilize}
=== devices/scope.ifu.yaml
kind: device
id: scope
lumens: [{id: channel, bore: 2 mm}]
sterilization: {any_of: [{id: pv132, modality: steam-prevac}, {id: h, modality: vh2o2}]}
`,
    ],
  },
});

const lowTemperature: ReadonlySet<string> = new Set(['vh2o2', 'eo']);

interface Entry {
  readonly at: Place;
  readonly isLowTemperature: boolean;
}

/** The first step at which the items must be dry: packing, or the cycle itself. */
function entryOf(procedure: Procedure, view: LibraryView): Entry | undefined {
  const steps = stepsOf(procedure);
  const isLowTemperature = steps.some(
    (step) => step.stage?.text === 'low-temperature' || lowTemperature.has(modalityOf(step, view) ?? ''),
  );
  const first = steps.find(
    (step) =>
      step.stage?.text === 'packaging' ||
      step.stage?.text === 'low-temperature' ||
      lowTemperature.has(modalityOf(step, view) ?? ''),
  );
  return first === undefined ? undefined : { at: placeOf(first), isLowTemperature };
}

function modalityOf(step: ProcedureStep, view: LibraryView): string | undefined {
  return step.cycle === undefined ? undefined : view.sterilizerCycle(step.cycle.text)?.cycle.modality?.text;
}

function isOnlyLowTemperature(device: Device): boolean {
  const options = device.sterilization?.any_of?.items ?? [];
  return options.length > 0 && options.every((option) => lowTemperature.has(option.modality?.text ?? ''));
}

function optionPlaces(device: Device) {
  const option = device.sterilization?.any_of?.items.find((one) => lowTemperature.has(one.modality?.text ?? ''));
  return option === undefined ? [] : [{ at: option.at, note: `low-temperature option of "${deviceName(device)}"` }];
}

function faultIn(
  drying: readonly ProcedureStep[],
  devices: readonly Device[],
  at: Place,
): Pick<Report, 'at' | 'message'> | undefined {
  const first = drying[0];
  if (first === undefined) return { at, message: message.none(named(devices)) };
  if (!drying.some((step) => step.endpoint !== undefined))
    return { at: placeOf(first), message: message.endpoint(named(devices)) };
  const bored = devices.filter((device) => (device.lumens?.items.length ?? 0) > 0);
  const driesBores = drying.some(
    (step) => step.air !== undefined || step.lumen !== undefined || step.per_port?.on === true,
  );
  return bored.length === 0 || driesBores ? undefined : { at: placeOf(first), message: message.lumens(named(bored)) };
}
