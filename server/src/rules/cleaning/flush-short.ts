import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { rootOfEntity } from '../../model/entity.ts';
import type { Place, Quantity, Requirement } from '../../model/node.ts';
import { sayingsOf } from '../../model/saying.ts';
import { formatQuantity } from '../../quantity/format.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { devicesOfStep } from '../support/applies.ts';
import type { FlushDemand } from '../support/flushes.ts';
import { flushesOf } from '../support/flushes.ts';
import { demandOf } from '../support/limits-of.ts';
import { likeQuantity } from '../support/site-limits.ts';

const message = {
  short: (device: string, port: string, what: string, given: string, required: string) =>
    `The flush of ${port}"${device}" is too small: ${what} ${given}, and the instruction asks for ${required}.`,
  port: (port: string) => `${port} of `,
  gap: (missing: string) => `${missing} short`,
};

export const rule = defineRule({
  id: 'flush-short',
  stage: 'cleaning',
  severity: 'error',
  settledBy: 'manager',
  why: 'Cleaning a lumen is a dose: with less volume, time or pressure soil stays inside.',
  source: 'logic',
  kinds: ['procedure'],
  check(procedure, context) {
    const byDevice = new Map<EntityOf['device'], ProcedureStep[]>();
    for (const step of procedure.steps?.items ?? []) {
      if (step.do?.text !== 'flush' || step.stage?.text === 'point-of-use') continue;
      for (const device of devicesOfStep(step, procedure, context.view))
        byDevice.set(device, [...(byDevice.get(device) ?? []), step]);
    }
    for (const [device, steps] of byDevice) checkDevice(device, steps, context);
  },
  examples: {
    bad: [
      `
=== procedures/grasper.ifu.yaml
kind: procedure
id: grasper-cleaning
applies_to: [wristed-grasper]
steps:
  - {stage: manual, do: flush, port: P2, time: 20 s, pressure: 2.5 bar}
                                               ^^^^ The flush of P2 of "wristed-grasper" is too small: time 20 s, and the instruction asks for 90 s or more.
=== devices/grasper.ifu.yaml
kind: device
id: wristed-grasper
lumens: [{id: P2}]
manual:
  flush: {port: P2, time: {at_least: 90 s}, pressure: {between: [2 bar, 3 bar]}, src: s3}
statements:
  s3: {doc: SK-210, rev: F, page: 6, quote: "Flush every port for at least 90 s at 2 to 3 bar."}
`,
      `
=== procedures/scissors.ifu.yaml
kind: procedure
id: scissors-cleaning
applies_to: [takeapart-scissors]
steps:
  - {stage: manual, do: flush, volume: 50 mL, times: 2 times}
                                       ^^^^^ The flush of shaft of "takeapart-scissors" is too small: volume 100 mL, and the instruction asks for 150 mL or more.
=== devices/scissors.ifu.yaml
kind: device
id: takeapart-scissors
lumens: [{id: shaft}]
cleaning:
  all_of:
    - stage: manual
      steps:
        - {do: flush, lumen: shaft, volume: {at_least: 50 mL}, times: {exactly: 3 times}, src: s4}
statements:
  s4: {doc: DW-REP-077, rev: D, page: 3, quote: "Flush with at least 50 mL, 3 times."}
`,
      `
=== procedures/tube.ifu.yaml
kind: procedure
id: tube-cleaning
applies_to: [suction-tube]
steps:
  - {stage: manual, do: flush, lumen: tube, time: 30 s, pressure: 1 bar}
                                                                  ^^^^^ The flush of tube of "suction-tube" is too small: pressure 1 bar, and the instruction asks for 1.5 bar or more.
=== devices/tube.ifu.yaml
kind: device
id: suction-tube
lumens: [{id: tube}]
manual:
  flush: {lumen: tube, time: {stated: 30 s}, pressure: {between: [1.5 bar, 3 bar]}, src: s1}
statements:
  s1: {doc: QM-31, rev: E, page: 4, quote: "Flush for 30 s at 1.5 to 3 bar."}
`,
    ],
    good: [
      `
=== procedures/grasper.ifu.yaml
kind: procedure
id: grasper-cleaning
applies_to: [wristed-grasper]
steps:
  - {stage: point-of-use, do: flush, volume: 20 mL}
  - {stage: manual, do: flush, port: P2, time: 2 min, pressure: 2.5 bar}
=== devices/grasper.ifu.yaml
kind: device
id: wristed-grasper
lumens: [{id: P2}]
manual:
  flush: {port: P2, time: {at_least: 90 s}, pressure: {between: [2 bar, 3 bar]}, src: s3}
`,
      `
=== procedures/tip.ifu.yaml
kind: procedure
id: tip-cleaning
applies_to: [irrigating-tip]
steps:
  - {stage: manual, do: flush, lumen: tip, volume: 120 mL}
=== devices/tip.ifu.yaml
kind: device
id: irrigating-tip
lumens: [{id: tip}]
cleaning:
  any_of:
    - id: by-hand
      stage: manual
      steps:
        - {do: flush, lumen: tip, volume: {at_least: 200 mL}}
    - id: machine
      all_of:
        - stage: manual
          steps:
            - {do: flush, lumen: tip, volume: {at_least: 100 mL}}
`,
    ],
  },
});

/** A demand is met when one of the steps for its port meets it; of alternatives one is enough. */
function checkDevice(device: EntityOf['device'], steps: readonly ProcedureStep[], { report }: RuleContext): void {
  const demands = flushesOf(device);
  const metChoices = new Set(demands.filter((demand) => demand.isAlternative && isMet(demand, steps)).map(portName));
  const reported = new Set<string>();
  for (const demand of demands) {
    if (isMet(demand, steps) || (demand.isAlternative && metChoices.has(portName(demand)))) continue;
    const shortfall = firstShortfall(demand, steps);
    if (shortfall === undefined || reported.has(portName(demand))) continue;
    reported.add(portName(demand));
    const port = demand.port === undefined ? '' : message.port(demand.port.text);
    report({
      at: shortfall.at,
      message: message.short(
        rootOfEntity(device).id,
        port,
        shortfall.what,
        shortfall.given,
        `${shortfall.required} or more`,
      ),
      says: sayingsOf(device, demand.src),
      does: `${shortfall.what} ${shortfall.given}`,
      gap: message.gap(shortfall.missing),
      related: [{ at: demand.at, note: 'what the instruction asks for' }],
    });
  }
}

function portName(demand: FlushDemand): string {
  return demand.port?.text ?? '';
}

function stepsFor(demand: FlushDemand, steps: readonly ProcedureStep[]): readonly ProcedureStep[] {
  return steps.filter((step) => {
    const port = step.lumen ?? step.port;
    return demand.port === undefined || port === undefined || port.text === demand.port.text;
  });
}

/** True also when no step is for the port: a port left out is a fault of its own. */
function isMet(demand: FlushDemand, steps: readonly ProcedureStep[]): boolean {
  const own = stepsFor(demand, steps);
  return own.length === 0 || own.some((step) => shortfallOf(demand, step) === undefined);
}

function firstShortfall(demand: FlushDemand, steps: readonly ProcedureStep[]): Shortfall | undefined {
  for (const step of stepsFor(demand, steps)) {
    const shortfall = shortfallOf(demand, step);
    if (shortfall !== undefined) return shortfall;
  }
  return undefined;
}

interface Shortfall {
  readonly at: Place;
  readonly what: string;
  readonly given: string;
  readonly required: string;
  readonly missing: string;
}

/** Volume counts with its repeats; a step that gives no number for something is not judged on it. */
function shortfallOf(demand: FlushDemand, step: ProcedureStep): Shortfall | undefined {
  const repeats = demandOf(demand.times)?.lowest?.value ?? 1;
  const done = step.times === undefined || step.times.problem !== undefined ? 1 : step.times.value;
  return (
    compared('volume', step.volume, demand.volume, done, repeats) ??
    (demand.volume === undefined ? compared('repeats', step.times, demand.times, 1, 1) : undefined) ??
    compared('time', step.time, demand.time, 1, 1) ??
    compared('pressure', step.pressure, demand.pressure, 1, 1)
  );
}

function compared(
  what: string,
  given: Quantity | undefined,
  required: Requirement | undefined,
  done: number,
  repeats: number,
): Shortfall | undefined {
  const lowest = demandOf(required)?.lowest;
  if (given === undefined || given.problem !== undefined || lowest === undefined) return undefined;
  const has = given.value * done;
  const needs = lowest.value * repeats;
  if (has >= needs - 1e-9 * Math.abs(needs)) return undefined;
  return {
    at: given.at,
    what,
    given: done === 1 ? formatQuantity(given) : likeQuantity(has, given),
    required: repeats === 1 ? formatQuantity(lowest) : likeQuantity(needs, lowest),
    missing: likeQuantity(needs - has, lowest),
  };
}
