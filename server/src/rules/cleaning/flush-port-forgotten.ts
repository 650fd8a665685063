import { counted } from '../../base/words.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import { sayingsOf } from '../../model/saying.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { devicesOfStep } from '../support/applies.ts';
import { deviceName } from '../support/device-names.ts';
import { flushesOf } from '../support/flushes.ts';
import { listed } from '../support/lists.ts';

type Device = EntityOf['device'];
type Procedure = EntityOf['procedure'];

const message = {
  inDevice: (lumen: string, flushed: readonly string[]) =>
    `No flush is encoded for "${lumen}", while ${listed(flushed)} ${flushed.length > 1 ? 'have' : 'has'} one. Look at the page again, or say that the page is silent.`,
  inProcedure: (device: string, missing: string) => `This procedure never flushes ${missing} of "${device}".`,
  late: (device: string, late: string, bath: string) =>
    `This procedure flushes ${late} of "${device}" only after ${bath}; its page has that done by hand before.`,
  does: (flushed: string) => `It flushes ${flushed}.`,
  gap: (missing: number, all: number) => `${missing} of ${counted(all, 'port')} missing`,
};

export const rule = defineRule({
  id: 'flush-port-forgotten',
  stage: 'cleaning',
  severity: 'error',
  settledBy: 'educator',
  why: 'Each port is a channel of its own, and the one left out keeps its soil.',
  source: 'logic',
  kinds: ['device', 'procedure'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'device')) checkDevice(entity, context);
    else if (isOfKind(entity, 'procedure')) {
      checkProcedure(entity, context);
      checkOrder(entity, context);
    }
  },
  examples: {
    bad: [
      `
kind: device
id: wristed-grasper
lumens: [{id: P1}, {id: P2}, {id: P3}]
                                  ^^ No flush is encoded for "P3", while P1 and P2 have one. Look at the page again, or say that the page is silent.
manual:
  steps:
    - {do: flush, lumen: P1, time: {at_least: 90 s}, src: s1}
    - {do: flush, lumen: P2, time: {at_least: 90 s}, src: s1}
statements:
  s1: {doc: SK-210, rev: F, page: 6, quote: "Flush every port for at least 90 s."}
`,
      `
=== procedures/grasper.ifu.yaml
kind: procedure
id: grasper-cleaning
applies_to: [wristed-grasper]
steps:
  - {stage: manual, do: flush, port: P1, time: 90 s}
                        ^^^^^ This procedure never flushes P2 and P3 of "wristed-grasper".
=== devices/grasper.ifu.yaml
kind: device
id: wristed-grasper
lumens: [{id: P1}, {id: P2}, {id: P3}]
manual:
  steps:
    - {do: flush, time: {at_least: 90 s}}
`,
      `
=== procedures/grasper.ifu.yaml
kind: procedure
id: grasper-cleaning
applies_to: [wristed-grasper]
steps:
  - {stage: manual, do: flush, port: P1, time: 90 s}
  - {stage: ultrasonic, do: sonicate, time: 15 min}
  - {stage: manual, do: flush, port: P2, time: 90 s}
                        ^^^^^ This procedure flushes P2 of "wristed-grasper" only after the ultrasonic bath; its page has that done by hand before.
=== devices/grasper.ifu.yaml
kind: device
id: wristed-grasper
lumens: [{id: P1}, {id: P2}]
cleaning:
  all_of:
    - stage: manual
      steps:
        - {do: flush, lumen: P1, time: {at_least: 90 s}, src: s1}
        - {do: flush, lumen: P2, time: {at_least: 90 s}, src: s1}
    - stage: ultrasonic
      use: required
statements:
  s1: {doc: SK-210, rev: F, page: 6, quote: "Flush every port for at least 90 s, then clean in the ultrasonic bath."}
`,
    ],
    good: [
      `
=== procedures/grasper.ifu.yaml
kind: procedure
id: grasper-cleaning
applies_to: [wristed-grasper]
steps:
  - {stage: manual, do: flush, port: P1, time: 90 s}
  - {stage: ultrasonic, do: sonicate, time: 15 min}
  - {stage: manual, do: flush, port: P1, time: 30 s}
=== devices/grasper.ifu.yaml
kind: device
id: wristed-grasper
lumens: [{id: P1}]
cleaning:
  all_of:
    - {stage: manual, flush: {lumen: P1, time: {at_least: 90 s}}}
    - {stage: ultrasonic, use: required}
`,
      `
=== procedures/grasper.ifu.yaml
kind: procedure
id: grasper-cleaning
applies_to: [wristed-grasper]
steps:
  - {stage: manual, do: flush, per_port: true, time: 90 s}
=== devices/grasper.ifu.yaml
kind: device
id: wristed-grasper
lumens: [{id: P1}, {id: P2}]
manual:
  steps:
    - {do: flush, lumen: P1, time: {at_least: 90 s}}
    - {do: flush, lumen: P2, time: {at_least: 90 s}}
`,
      `
kind: device
id: suction-tube
lumens: [{id: tube}, {id: vent}]
manual:
  flush: {volume: {at_least: 60 mL}}
`,
      `
kind: device
id: two-bores
lumens: [{id: A}, {id: B}]
manual:
  flush: {lumen: A, volume: {at_least: 60 mL}}
cleaning:
  all_of:
    - stage: manual
      steps:
        - {do: flush, lumen: B, silent: true, checked: 2025-02-03}
`,
    ],
  },
});

function checkDevice(device: Device, { report }: RuleContext): void {
  const flushes = flushesOf(device);
  const flushed = new Set(flushes.flatMap(({ port }) => (port === undefined ? [] : [port.text])));
  if (flushes.length === 0 || flushes.some(({ port }) => port === undefined)) return;
  const lumens = device.lumens?.items ?? [];
  for (const lumen of lumens) {
    if (lumen.id === undefined || flushed.has(lumen.id.text) || flushed.has(lumen.port?.text ?? '')) continue;
    report({
      at: lumen.at,
      message: message.inDevice(lumen.id.text, [...flushed]),
      says: sayingsOf(device, flushes[0]?.src),
      gap: message.gap(1, lumens.length),
      related: flushes.map(({ at }) => ({ at, note: 'a flush that is encoded' })),
    });
  }
}

function checkProcedure(procedure: Procedure, { view, report }: RuleContext): void {
  const steps = (procedure.steps?.items ?? []).filter((step) => step.do?.text === 'flush');
  const [first] = steps;
  if (
    first?.do === undefined ||
    steps.some((step) => step.per_port?.on === true || (step.lumen ?? step.port) === undefined)
  )
    return;
  for (const device of devicesOfStep(first, procedure, view)) {
    const demands = flushesOf(device);
    const wanted = demands.some(({ port }) => port === undefined)
      ? lumenIds(device)
      : demands.flatMap(({ port }) => (port === undefined ? [] : [port.text]));
    const ports = new Set(steps.map((step) => (step.lumen ?? step.port)?.text));
    const missing = [...new Set(wanted)].filter((port) => !ports.has(port));
    if (missing.length === 0) continue;
    report({
      at: first.do.at,
      message: message.inProcedure(deviceName(device), listed(missing)),
      says: sayingsOf(device, demands.find(({ port }) => port === undefined || missing.includes(port.text))?.src),
      does: message.does(listed([...ports].flatMap((port) => (port === undefined ? [] : [port])))),
      gap: message.gap(missing.length, new Set(wanted).size),
      related: demands.map(({ at }) => ({ at, note: 'what the instruction asks for' })),
    });
  }
}

const baths: ReadonlyMap<string, string> = new Map([
  ['ultrasonic', 'the ultrasonic bath'],
  ['mechanical', 'the washer'],
]);

/** A port whose every flush stands behind the bath, though the instruction has it flushed by hand first: the bath bakes and drives in what is left. */
function checkOrder(procedure: Procedure, { view, report }: RuleContext): void {
  const steps = procedure.steps?.items ?? [];
  const bath = steps.findIndex(({ stage, when }) => baths.has(stage?.text ?? '') && when === undefined);
  const bathStep = steps[bath];
  const stage = bathStep?.stage?.text ?? '';
  if (bathStep === undefined || steps.some((step) => isFlush(step) && portOf(step) === undefined)) return;
  const early = new Set(steps.slice(0, bath).filter(isFlush).map(portOf));
  const late = steps.slice(bath + 1).filter((step) => isFlush(step) && !early.has(portOf(step)));
  for (const device of devicesOfStep(bathStep, procedure, view)) {
    const { ports, src } = flushedBefore(device, stage);
    const [first, ...more] = late.filter((step) => ports.has(portOf(step) ?? ''));
    if (first?.do === undefined) continue;
    const named = [...new Set([first, ...more].flatMap((step) => portOf(step) ?? []))];
    report({
      at: first.do.at,
      message: message.late(deviceName(device), listed(named), baths.get(stage) ?? stage),
      says: sayingsOf(device, src),
      related: [{ at: bathStep.at, note: 'what it should stand before' }],
    });
  }
}

function isFlush(step: ProcedureStep): boolean {
  return step.do?.text === 'flush' && step.when === undefined;
}

function portOf(step: ProcedureStep): string | undefined {
  return (step.lumen ?? step.port)?.text;
}

/** The ports that the instruction has flushed by hand in a stage that stands before this one, all stages being done in their order. */
function flushedBefore(device: Device, stage: string) {
  const nodes = device.cleaning?.unordered?.on === true ? [] : (device.cleaning?.all_of?.items ?? []);
  const manual = nodes.findIndex((node) => node.stage?.text === 'manual');
  const at = nodes[manual]?.at.span;
  const isBefore = manual >= 0 && nodes.findIndex((node) => node.stage?.text === stage) > manual;
  const demands = flushesOf(device).filter(
    ({ at: { span } }) => isBefore && at !== undefined && at.start <= span.start && span.end <= at.end,
  );
  const isEvery = demands.some(({ port }) => port === undefined);
  const ports = isEvery ? lumenIds(device) : demands.flatMap(({ port }) => port?.text ?? []);
  return { ports: new Set(ports), src: demands[0]?.src };
}

function lumenIds(device: Device): readonly string[] {
  return (device.lumens?.items ?? []).flatMap((lumen) => (lumen.id === undefined ? [] : [lumen.id.text]));
}
