import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { deviceName } from '../support/device-names.ts';
import type { Failure } from '../support/failures.ts';
import { evidenceOf } from '../support/failures.ts';
import { listed } from '../support/lists.ts';
import { isConnector, unfitForMachine } from '../support/washer-fits.ts';
import { washerUses, washFailures } from '../support/washer-uses.ts';

const message = {
  missing: (what: string, given: string, who: string) =>
    `${what} gives ${given}. To wash inside, these must be connected: ${who}.`,
  needs: (device: string, required: string) => `"${device}" (${required})`,
  rack: 'The rack of this washer',
};

export const rule = defineRule({
  id: 'washer-connector-missing',
  stage: 'washing',
  severity: 'error',
  settledBy: 'biomed',
  why: 'Spray does not enter a narrow bore: a channel is washed only where water is pushed through it.',
  source: 'practice',
  kinds: ['washer', 'set', 'procedure'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'washer')) checkWasher(entity, context);
    else checkUses(entity, context);
  },
  examples: {
    bad: [
      `
=== washers/w2.ifu.yaml
kind: washer
id: W2
rack: {ports: []}
       ^^^^^ The rack of this washer gives 0 luer. To wash inside, these must be connected: "tube" (1 luer).
cycles: [{id: W2-std, phases: [{phase: wash, temp: 60 C, time: 5 min}]}]
=== devices/tube.ifu.yaml
kind: device
id: tube
mechanical: {use: required, connector: luer, src: s8}
lumens: [{id: bore, bore: 3 mm, length: 180 mm, ends: open-both}]
statements:
  s8: {doc: QM-31, rev: E, page: 5, quote: "Connect the tube to a luer port of the washer rack."}
`,
      `
=== sets/tubes.ifu.yaml
kind: set
id: tubes
members: [{device: grasper, qty: 2}]
washer_cycle: W3-std
              ^^^^^^ W3-std gives 1 luer. To wash inside, these must be connected: "grasper" (2 luer).
=== washers/w3.ifu.yaml
kind: washer
id: W3
rack: {ports: [luer]}
cycles: [{id: W3-std, phases: [{phase: wash, temp: 60 C, time: 5 min}]}]
=== devices/grasper.ifu.yaml
kind: device
id: grasper
mechanical: {use: required, connector: luer}
lumens:
  - {id: P1, bore: 3 mm, length: 180 mm, ends: open-both, port: P1}
  - {id: P2, bore: 3 mm, length: 180 mm, ends: open-both, port: P2}
`,
    ],
    good: [
      `
=== washers/w1.ifu.yaml
kind: washer
id: W1
rack: {ports: [luer, luer]}
cycles: [{id: W1-std, phases: [{phase: wash, temp: 60 C, time: 5 min}]}]
=== devices/tube.ifu.yaml
kind: device
id: tube
mechanical: {use: required, connector: luer}
lumens: [{id: bore, bore: 3 mm, length: 180 mm, ends: open-both}]
`,
      `
=== washers/w2.ifu.yaml
kind: washer
id: W2
rack: {ports: []}
cycles: [{id: W2-std, phases: [{phase: wash, temp: 60 C, time: 5 min}]}]
=== devices/forceps.ifu.yaml
kind: device
id: forceps
mechanical: {use: allowed}
`,
    ],
  },
});

function checkWasher(washer: EntityOf['washer'], { view, report }: RuleContext): void {
  const failures = unfitForMachine(washer, 'connectors', view);
  const [first] = failures;
  if (first === undefined) return;
  report({
    at: (washer.rack?.ports ?? washer.rack ?? washer.id ?? washer).at,
    message: message.missing(message.rack, first.judgement.given, whoNeeds(failures)),
    ...evidenceOf(failures),
  });
}

function checkUses(entity: AnyEntity, { view, report }: RuleContext): void {
  for (const { name, machine, devices } of washerUses(entity, view)) {
    const failures = washFailures(name.text, devices, isConnector, view);
    const [first] = failures;
    if (first === undefined) continue;
    const evidence = evidenceOf(failures);
    report({
      at: name.at,
      message: message.missing(name.text, first.judgement.given, whoNeeds(failures)),
      ...evidence,
      related: [...(evidence.related ?? []), { at: (machine.rack ?? machine).at, note: 'the rack' }],
    });
  }
}

function whoNeeds(failures: readonly Failure[]): string {
  return listed(failures.map(({ device, judgement }) => message.needs(deviceName(device), judgement.required)));
}
