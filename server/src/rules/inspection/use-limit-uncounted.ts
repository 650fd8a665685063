import { boundsOf, requirementWords } from '../../judge/bounds.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Requirement } from '../../model/node.ts';
import { sayingsOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';
import { isOutOfScope } from '../support/cleaning-ways.ts';
import { deviceName } from '../support/device-names.ts';

type Device = EntityOf['device'];

const message = {
  uncounted: (device: string, limit: string) =>
    `The life of "${device}" is limited to ${limit}, and nothing says who counts. Name the counter with "uses_counter".`,
};

export const rule = defineRule({
  id: 'use-limit-uncounted',
  stage: 'inspection',
  severity: 'error',
  settledBy: 'manager',
  why: 'The end of life is a limit of safety, and nobody sees it on the instrument.',
  source: 'standard',
  kinds: ['set'],
  check(set, { view, report }) {
    if (set.uses_counter !== undefined) return;
    for (const member of set.members?.items ?? []) {
      const device = member.device === undefined ? undefined : view.get('device', member.device.text);
      if (
        member.device === undefined ||
        device === undefined ||
        member.uses_counter !== undefined ||
        isOutOfScope(device)
      )
        continue;
      const limit = limitOf(device);
      if (limit === undefined || device.limits?.counted_by !== undefined) continue;
      report({
        at: member.device.at,
        message: message.uncounted(deviceName(device), requirementWords(limit)),
        says: sayingsOf(device, limit.src),
        related: [{ at: limit.at, note: 'limit of the instruction' }],
      });
    }
  },
  examples: {
    bad: [
      `
=== sets/robot.ifu.yaml
kind: set
id: robot
members: [{device: grasper, qty: 3}]
                   ^^^^^^^ The life of "grasper" is limited to at most 18 cycles, and nothing says who counts. Name the counter with "uses_counter".
=== devices/grasper.ifu.yaml
kind: device
id: grasper
limits: {uses: {at_most: 18 cycles, src: s10}}
statements:
  s10: {doc: SK-210, rev: F, page: 4, quote: "At most 18 cycles."}
`,
      `
=== sets/lap.ifu.yaml
kind: set
id: lap
members:
  - {device: forceps, qty: 4}
  - {device: sealer, qty: 1}
             ^^^^^^ The life of "sealer" is limited to 10 uses (no bound word), and nothing says who counts. Name the counter with "uses_counter".
=== devices/forceps.ifu.yaml
kind: device
id: forceps
limits: {uses: {silent: true, checked: 2025-02-24}}
=== devices/sealer.ifu.yaml
kind: device
id: sealer
parts: [{id: jaw-pad, uses: {stated: 10 uses, src: s2}}]
statements:
  s2: {doc: SE-3, rev: A, page: 6, quote: "Replace the jaw pad after 10 uses."}
`,
    ],
    good: [
      `
=== sets/robot.ifu.yaml
kind: set
id: robot
members:
  - {device: grasper, qty: 3, uses_counter: tag on each grasper}
  - {device: handpiece, qty: 1}
=== devices/grasper.ifu.yaml
kind: device
id: grasper
limits: {uses: {at_most: 18 uses}}
=== devices/handpiece.ifu.yaml
kind: device
id: handpiece
limits: {uses: {at_most: 500 cycles}, counted_by: "department: cycle counter"}
`,
      `
=== sets/minor.ifu.yaml
kind: set
id: minor
uses_counter: tracking system
members: [{device: sealer, qty: 1}]
=== devices/sealer.ifu.yaml
kind: device
id: sealer
limits: {uses: {at_most: 20 uses}}
`,
    ],
  },
});

/** The life of the item, else of a part of it. A number that is not one, silence and words are no limit to count to. */
function limitOf(device: Device): Requirement | undefined {
  const stated = [device.limits?.uses, ...(device.parts?.items.map((part) => part.uses) ?? [])];
  return stated.find(
    (requirement) => requirement !== undefined && boundsOf(requirement).some((bound) => bound.bound !== 'about'),
  );
}
