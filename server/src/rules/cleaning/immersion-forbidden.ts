import { judgeCase } from '../../judge/judgement.ts';
import type { CleaningNode } from '../../model/entities/device-manual.generated.ts';
import type { Immersion } from '../../model/entities/immersion.generated.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Citation, Place } from '../../model/node.ts';
import { defineRule } from '../rule.ts';
import { soaking } from '../support/cleaning-words.ts';
import type { Failure } from '../support/failures.ts';
import { evidenceOf, named } from '../support/failures.ts';
import { isAct, placeOf, reachOf, stepInWords, stepsOf } from '../support/steps.ts';

type Device = EntityOf['device'];

const message = {
  forbidden: (devices: string) => `This step puts ${devices} under liquid, which the instruction forbids.`,
  partly: (devices: string) =>
    `This step puts ${devices} under liquid as a whole. The instruction allows a part of it only.`,
};

export const rule = defineRule({
  id: 'immersion-forbidden',
  stage: 'cleaning',
  severity: 'error',
  settledBy: 'manager',
  why: 'Water in a motor, a lens or a plug can’t be got out again.',
  source: 'standard',
  kinds: ['procedure'],
  check(procedure, { view, report }) {
    for (const step of stepsOf(procedure)) {
      if (!isUnderLiquid(step)) continue;
      const reach = reachOf(step, procedure, view);
      const wholly = reach.map((device) => failureOf(device, step, 'forbidden')).filter((one) => one !== undefined);
      const partly = reach.map((device) => failureOf(device, step, 'too-deep')).filter((one) => one !== undefined);
      for (const [failures, words] of [
        [wholly, message.forbidden],
        [partly, message.partly],
      ] as const) {
        if (failures.length === 0) continue;
        report({
          at: (step.extent ?? step.do)?.at ?? placeOf(step),
          message: words(named(failures.map(({ device }) => device))),
          does: stepInWords(step),
          ...evidenceOf(failures),
        });
      }
    }
  },
  examples: {
    bad: [
      `
=== procedures/power.ifu.yaml
kind: procedure
id: power
applies_to: [handpiece]
steps: [{stage: manual, do: soak, extent: full}]
                                          ^^^^ This step puts "handpiece" under liquid, which the instruction forbids.
=== devices/handpiece.ifu.yaml
kind: device
id: handpiece
immersion: {use: forbidden, src: s1}
statements:
  s1: {doc: TW-204, rev: C, page: 3, quote: "Do not immerse the handpiece."}
`,
      `
=== procedures/probe.ifu.yaml
kind: procedure
id: probe
applies_to: [probe]
steps:
  - {stage: manual, do: soak, chemistry: C1, time: 5 min}
                        ^^^^ This step puts "probe" under liquid as a whole. The instruction allows a part of it only.
=== devices/probe.ifu.yaml
kind: device
id: probe
immersion: {use: allowed, extent: tip-only, src: s1}
statements:
  s1: {doc: LN-44, rev: B, page: 4, quote: "The tip may be immersed."}
`,
      `
=== procedures/all.ifu.yaml
kind: procedure
id: everything-soaks
applies_to_traits: [powered]
steps:
  - {stage: manual, do: rinse, mode: basin, water: tap}
                        ^^^^^ This step puts "saw" under liquid, which the instruction forbids.
=== devices/saw.ifu.yaml
kind: device
id: saw
traits: [powered]
not: [{what: immersion, src: s2}]
statements:
  s2: {doc: SA-1, rev: A, page: 2, quote: "Never put under water."}
`,
    ],
    good: [
      `
=== procedures/power.ifu.yaml
kind: procedure
id: power
applies_to: [handpiece]
steps:
  - {stage: manual, do: wipe, chemistry: C1}
  - {stage: manual, do: rinse, mode: running, water: tap}
=== devices/handpiece.ifu.yaml
kind: device
id: handpiece
immersion: {use: forbidden}
`,
      `
=== procedures/probe.ifu.yaml
kind: procedure
id: probe
applies_to: [probe]
steps:
  - {stage: manual, do: soak, extent: tip-only, chemistry: C1}
=== devices/probe.ifu.yaml
kind: device
id: probe
immersion: {use: allowed, extent: tip-only}
`,
    ],
  },
});

/** A bath of the ultrasonic kind is judged with that stage. */
function isUnderLiquid(step: ProcedureStep): boolean {
  if (step.stage?.text === 'ultrasonic' || step.stage?.text === 'mechanical') return false;
  const isWiped = step.do?.text === 'wipe';
  return isAct(step, soaking) || step.mode?.text === 'basin' || (step.extent?.text === 'full' && !isWiped);
}

interface Limit {
  readonly which: 'forbidden' | 'too-deep';
  readonly at: Place;
  readonly src: Citation | undefined;
  readonly words: string;
}

function failureOf(device: Device, step: ProcedureStep, which: Limit['which']): Failure | undefined {
  const limit = limitOf(device, step);
  if (limit?.which !== which) return undefined;
  const judgement = judgeCase('immersion', which, {
    by: device,
    required: limit.words,
    given: step.extent?.text ?? step.do?.text,
    at: limit.at,
    src: limit.src,
  });
  return { device, judgement };
}

function limitOf(device: Device, step: ProcedureStep): Limit | undefined {
  const forbidden = device.not?.items.find((one) => one.what?.text === 'immersion' && one.when === undefined);
  if (forbidden !== undefined)
    return { which: 'forbidden', at: forbidden.at, src: forbidden.src, words: 'not under liquid' };
  for (const stated of immersionsOf(device)) {
    if (stated.use?.text === 'forbidden')
      return { which: 'forbidden', at: stated.at, src: stated.src, words: 'not under liquid' };
    const { extent } = stated;
    if (extent === undefined || extent.text === 'full' || step.extent?.text === extent.text) continue;
    return { which: 'too-deep', at: stated.at, src: stated.src, words: extent.text };
  }
  return undefined;
}

function immersionsOf(device: Device): readonly Immersion[] {
  const found = [
    device.immersion,
    device.manual?.immersion,
    ...(device.cleaning === undefined ? [] : inNode(device.cleaning)),
  ];
  return found.filter((one) => one !== undefined);
}

function inNode(node: CleaningNode): readonly (Immersion | undefined)[] {
  return [node.immersion, ...(node.all_of?.items ?? []).flatMap(inNode)];
}
