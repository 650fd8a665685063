import { defineRule } from '../rule.ts';
import { deviceName } from '../support/device-names.ts';
import type { Failure } from '../support/failures.ts';
import { evidenceOf } from '../support/failures.ts';
import { listed } from '../support/lists.ts';
import { isAbout } from '../support/use-reports.ts';
import { washerUses, washFailures } from '../support/washer-uses.ts';

const message = {
  outside: (cycle: string, who: string) => `The phases of ${cycle} are not as the page asks: ${who}.`,
  one: (device: string, reason: string, given: string, required: string) =>
    `"${device}": ${reason.replace(/\.$/, '')} (${given}, ${required})`,
};

export const rule = defineRule({
  id: 'washer-phase-short-or-cool',
  stage: 'washing',
  severity: 'error',
  settledBy: 'educator',
  why: 'Detergent, time, heat and force clean together; less of one is not made up by the others unless the maker says so.',
  source: 'logic',
  kinds: ['set', 'procedure'],
  check(entity, { view, report }) {
    for (const { name, devices } of washerUses(entity, view)) {
      const failures = washFailures(name.text, devices, isAbout('cleaning-amount', 'wash-temperature'), view);
      if (failures.length === 0) continue;
      const evidence = evidenceOf(failures);
      const phases = failures.flatMap(({ judgement }) => judgement.factAt ?? []);
      report({
        at: name.at,
        message: message.outside(name.text, whatFails(failures)),
        ...evidence,
        related: [...(evidence.related ?? []), ...phases.map((at) => ({ at, note: 'the phase of the cycle' }))],
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
washer_cycle: W1-quick
              ^^^^^^^^ The phases of W1-quick are not as the page asks: "tube": Time of phase wash: less than the page demands; cleaning is a dose (2 min, at least 5 min).
=== devices/tube.ifu.yaml
kind: device
id: tube
mechanical: {use: required, wash: {temp: {at_least: 55 C}, time: {at_least: 5 min}, src: s2}}
statements:
  s2: {doc: TU-1, rev: A, page: 4, quote: "Wash at no less than 55 °C for at least 5 minutes."}
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles: [{id: W1-quick, phases: [{phase: wash, temp: 55 C, time: 2 min}]}]
`,
      `
=== procedures/tubes.ifu.yaml
kind: procedure
id: tubes
applies_to: [tube]
steps: [{stage: mechanical, do: wash, cycle: W1-cool}]
                                             ^^^^^^^ The phases of W1-cool are not as the page asks: "tube": Temperature of phase wash: cooler than the window (45 °C, 55-65 °C).
=== devices/tube.ifu.yaml
kind: device
id: tube
cleaning: {all_of: [{stage: manual}, {stage: mechanical, wash: {temp: {between: [55 C, 65 C]}}}]}
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles: [{id: W1-cool, phases: [{phase: prewash, temp: 20 C, time: 2 min}, {phase: wash, temp: 45 C, time: 8 min}]}]
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
mechanical: {use: required, wash: {temp: {at_least: 55 C}, time: {at_least: 5 min}}}
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles: [{id: W1-std, phases: [{phase: wash, temp: 60 C, time: 3 min}, {phase: wash, temp: 60 C, time: 3 min}]}]
`,
      `
=== sets/tubes.ifu.yaml
kind: set
id: tubes
members: [{device: tube, qty: 2}]
washer_cycle: W1-quick
=== devices/tube.ifu.yaml
kind: device
id: tube
cleaning:
  any_of:
    - {id: gentle, stage: mechanical}
    - {id: strong, stage: mechanical, wash: {time: {at_least: 5 min}}}
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles: [{id: W1-quick, phases: [{phase: wash, temp: 55 C, time: 2 min}]}]
`,
    ],
  },
});

function whatFails(failures: readonly Failure[]): string {
  return listed(
    failures.map(({ device, judgement: { reason, given, required } }) =>
      message.one(deviceName(device), reason, given, required),
    ),
  );
}
