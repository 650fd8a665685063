import type { Judgement } from '../../judge/outcome.ts';
import { rootOfEntity } from '../../model/entity.ts';
import { defineRule } from '../rule.ts';
import type { Failure } from '../support/failures.ts';
import { evidenceOf } from '../support/failures.ts';
import { listed } from '../support/lists.ts';
import { allWashFailures, washerUses } from '../support/washer-uses.ts';

const message = {
  missing: (cycle: string, who: string) =>
    `${cycle} does not have the phases that the page asks for: ${who}. The whole sequence is the instruction.`,
  forbidden: (cycle: string, who: string) => `${cycle} has a phase that the page forbids: ${who}.`,
  phase: (device: string, phase: string) => `"${device}" (${phase})`,
};

export const rule = defineRule({
  id: 'washer-phase-missing',
  stage: 'washing',
  severity: 'error',
  settledBy: 'educator',
  why: 'What was shown to clean is the whole sequence, with everything that must follow the detergent.',
  source: 'standard',
  kinds: ['set', 'procedure'],
  check(entity, { view, report }) {
    for (const { name, cycle, devices } of washerUses(entity, view)) {
      const failures = devices.flatMap((device) => allWashFailures(name.text, device, isPhase, view));
      if (failures.length === 0) continue;
      const evidence = evidenceOf(failures);
      const isForbidden = failures.every(({ judgement }) => isThere(judgement));
      report({
        at: name.at,
        message: (isForbidden ? message.forbidden : message.missing)(name.text, whichPhases(failures)),
        ...evidence,
        related: [...(evidence.related ?? []), { at: (cycle.phases ?? cycle).at, note: 'the phases of the cycle' }],
      });
    }
  },
  examples: {
    bad: [
      `
=== sets/tubes.ifu.yaml
kind: set
id: tubes
members: [{device: tube, qty: 2}]
washer_cycle: W2-fast
              ^^^^^^^ W2-fast does not have the phases that the page asks for: "tube" (prewash and thermal). The whole sequence is the instruction.
=== devices/tube.ifu.yaml
kind: device
id: tube
mechanical: {use: required, phases: [prewash, wash, rinse, thermal, dry], src: s2}
statements:
  s2: {doc: TU-1, rev: A, page: 4, quote: "Pre-wash, wash, rinse, thermal disinfection, drying."}
=== washers/w2.ifu.yaml
kind: washer
id: W2
cycles: [{id: W2-fast, phases: [{phase: wash, temp: 60 C, time: 5 min}, {phase: rinse, time: 1 min}, {phase: dry, temp: 90 C, time: 10 min}]}]
`,
      `
=== procedures/cases.ifu.yaml
kind: procedure
id: cases
applies_to: [case]
steps: [{stage: mechanical, do: wash, cycle: W3-strong}]
                                             ^^^^^^^^^ W3-strong does not have the phases that the page asks for: "case" (neutralise). The whole sequence is the instruction.
=== devices/case.ifu.yaml
kind: device
id: case
mechanical: {use: required}
=== washers/w3.ifu.yaml
kind: washer
id: W3
cycles: [{id: W3-strong, doses: [C3], phases: [{phase: wash, temp: 70 C, time: 5 min}, {phase: thermal, temp: 90 C, time: 5 min}]}]
=== chemistry/c3.ifu.yaml
kind: chemistry
id: C3
class: strong-alkaline
methods: [mechanical]
couples: neutralise
src: s3
statements:
  s3: {doc: SM-C3, rev: "1", page: 1, quote: "Neutralise after use."}
`,
    ],
    good: [
      `
=== sets/tubes.ifu.yaml
kind: set
id: tubes
members: [{device: tube, qty: 2}]
washer_cycle: W1-std
=== devices/tube.ifu.yaml
kind: device
id: tube
mechanical: {use: required, phases: [prewash, wash, final-rinse, thermal, dry]}
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles: [{id: W1-std, final_water: RO-1, phases: [{phase: prewash, temp: 20 C, time: 3 min}, {phase: wash, temp: 60 C, time: 5 min}, {phase: thermal, temp: 90 C, time: 5 min}, {phase: dry, temp: 95 C, time: 15 min}]}]
=== water/ro.ifu.yaml
kind: water
id: RO-1
`,
      `
=== sets/forceps.ifu.yaml
kind: set
id: forceps
members: [{device: forceps, qty: 2}]
washer_cycle: W2-fast
=== devices/forceps.ifu.yaml
kind: device
id: forceps
mechanical: {use: allowed}
=== washers/w2.ifu.yaml
kind: washer
id: W2
cycles: [{id: W2-fast, phases: [{phase: wash, temp: 60 C, time: 5 min}]}]
`,
    ],
  },
});

/** A phase of the page, or the phase that must follow a detergent by its label or by the page. */
function isPhase({ parameter, demandAt, reason, demandedBy }: Judgement): boolean {
  if (demandAt.key === 'couples') return true;
  return parameter === 'machine-step' && demandedBy.startsWith('device/') && reason.startsWith('Phase ');
}

/** The phase is there and is not wanted. */
function isThere({ demandAt }: Judgement): boolean {
  return demandAt.key === 'use';
}

function whichPhases(failures: readonly Failure[]): string {
  const phases = new Map<string, string[]>();
  for (const { device, judgement } of failures) {
    const { id } = rootOfEntity(device);
    phases.set(id, [...(phases.get(id) ?? []), judgement.required]);
  }
  return listed([...phases].map(([id, names]) => message.phase(id, listed([...new Set(names)]))));
}
