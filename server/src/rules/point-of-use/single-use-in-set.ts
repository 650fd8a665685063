import { defineRule } from '../rule.ts';
import { traitOf } from '../support/applies.ts';

const message = {
  single: (device: string) =>
    `"${device}" is for single use, so no instruction for processing it can exist. Take it out of the set.`,
  does: (quantity: string) => `The set sends ${quantity} of it back for processing.`,
};

export const rule = defineRule({
  id: 'single-use-in-set',
  stage: 'point-of-use',
  severity: 'error',
  settledBy: 'manager',
  why: 'For an item of single use there is by definition no instruction for processing it.',
  source: 'guideline',
  kinds: ['set'],
  check(set, { view, report }) {
    for (const member of set.members?.items ?? []) {
      const device = member.device === undefined ? undefined : view.get('device', member.device.text);
      const trait = device === undefined ? undefined : traitOf(device, 'single-use');
      if (member.device === undefined || trait === undefined) continue;
      report({
        at: member.device.at,
        message: message.single(member.device.text),
        does: message.does(member.qty?.text ?? 'some'),
        related: [{ at: trait.at, note: 'where the device file says so' }],
      });
    }
  },
  examples: {
    bad: [
      `
=== sets/hand.ifu.yaml
kind: set
id: hand
members:
  - {device: drill-bit-su, qty: 2}
             ^^^^^^^^^^^^ "drill-bit-su" is for single use, so no instruction for processing it can exist. Take it out of the set.
=== devices/drill-bit.ifu.yaml
kind: device
id: drill-bit-su
traits: [single-use]
`,
      `
=== devices/blade.ifu.yaml
kind: device
id: saw-blade
traits: [sharp, single-use]
=== sets/knee.ifu.yaml
kind: set
id: knee
members:
  - device: saw-blade
            ^^^^^^^^^ "saw-blade" is for single use, so no instruction for processing it can exist. Take it out of the set.
    qty: 1
`,
    ],
    good: [
      `
=== sets/hand.ifu.yaml
kind: set
id: hand
members:
  - {device: drill-bit, qty: 2}
=== devices/drill-bit.ifu.yaml
kind: device
id: drill-bit
traits: [sharp]
`,
      `
kind: device
id: drill-bit-su
traits: [single-use]
notes: ["In no set; listed so that a set that names it is stopped."]
`,
    ],
  },
});
