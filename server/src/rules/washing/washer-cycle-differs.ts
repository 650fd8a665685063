import { rootOfEntity } from '../../model/entity.ts';
import type { Text } from '../../model/node.ts';
import { defineRule } from '../rule.ts';
import { devicesOfStep, membersOf } from '../support/applies.ts';
import { stepsOf } from '../support/steps.ts';

const message = {
  differs: (card: string, named: string, device: string, procedure: string) =>
    `The card says ${card}, but the procedure ${procedure} washes "${device}" on ${named}. One of the two has to follow the other.`,
};

export const rule = defineRule({
  id: 'washer-cycle-differs',
  stage: 'washing',
  severity: 'error',
  settledBy: 'manager',
  why: 'Who reads the card and who reads the procedure start two different washes.',
  source: 'logic',
  kinds: ['set'],
  check(set, { view, report }) {
    const card = set.washer_cycle;
    if (card === undefined) return;
    const own = new Set<string>();
    const named: { readonly cycle: Text; readonly device: string; readonly procedure: string }[] = [];
    for (const device of membersOf(set, view)) {
      const { id } = rootOfEntity(device);
      for (const procedure of view.users('device', id, 'procedure')) {
        for (const step of stepsOf(procedure)) {
          if (step.stage?.text !== 'mechanical' || step.cycle === undefined || step.when !== undefined) continue;
          if (!devicesOfStep(step, procedure, view).includes(device)) continue;
          own.add(step.cycle.text);
          named.push({ cycle: step.cycle, device: id, procedure: rootOfEntity(procedure).id });
        }
      }
    }
    const [first] = named;
    // A set of items that are washed on several cycles follows one of them.
    if (first === undefined || own.has(card.text)) return;
    report({
      at: card.at,
      message: message.differs(card.text, first.cycle.text, first.device, first.procedure),
      related: named.map(({ cycle }) => ({ at: cycle.at, note: 'what the procedure says' })),
    });
  },
  examples: {
    bad: [
      `
=== sets/injector.ifu.yaml
kind: set
id: injector
members: [{device: lens-injector, qty: 1}]
washer_cycle: RD1-instruments
              ^^^^^^^^^^^^^^^ The card says RD1-instruments, but the procedure injectors washes "lens-injector" on RD1-eye. One of the two has to follow the other.
=== devices/injector.ifu.yaml
kind: device
id: lens-injector
=== procedures/injectors.ifu.yaml
kind: procedure
id: injectors
applies_to: [lens-injector]
steps: [{stage: mechanical, do: wash, cycle: RD1-eye}]
`,
      `
=== sets/forceps.ifu.yaml
kind: set
id: forceps
members: [{device: forceps, qty: 4}, {device: tray, qty: 1}]
washer_cycle: W1-strong
              ^^^^^^^^^ The card says W1-strong, but the procedure forceps washes "forceps" on W1-gentle. One of the two has to follow the other.
=== devices/forceps.ifu.yaml
kind: device
id: forceps
=== devices/tray.ifu.yaml
kind: device
id: tray
=== procedures/forceps.ifu.yaml
kind: procedure
id: forceps
applies_to: [forceps]
steps: [{stage: manual, do: brush}, {stage: mechanical, do: wash, cycle: W1-gentle}]
`,
    ],
    good: [
      `
=== sets/injector.ifu.yaml
kind: set
id: injector
members: [{device: lens-injector, qty: 1}]
washer_cycle: RD1-eye
=== devices/injector.ifu.yaml
kind: device
id: lens-injector
=== procedures/injectors.ifu.yaml
kind: procedure
id: injectors
applies_to: [lens-injector]
steps: [{stage: mechanical, do: wash, cycle: RD1-eye}]
`,
      `
=== sets/mixed.ifu.yaml
kind: set
id: mixed
members: [{device: forceps, qty: 1}, {device: speculum, qty: 1}]
washer_cycle: RD1-eye
=== devices/forceps.ifu.yaml
kind: device
id: forceps
=== devices/speculum.ifu.yaml
kind: device
id: speculum
=== procedures/forceps.ifu.yaml
kind: procedure
id: forceps
applies_to: [forceps]
steps: [{stage: mechanical, do: wash, cycle: RD1-eye}]
=== procedures/specula.ifu.yaml
kind: procedure
id: specula
applies_to: [speculum]
steps: [{stage: mechanical, do: wash, cycle: RD1-instruments}]
`,
    ],
  },
});
