import type { Part } from '../../model/entities/device.generated.ts';
import { sayingsOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';
import { listed } from '../support/lists.ts';

const message = {
  left: (parts: readonly string[]) =>
    `${listed(parts)} are parts that come off, and no step here takes them apart. One step is missing, or a part is named wrongly.`,
};

export const rule = defineRule({
  id: 'disassembly-part-left',
  stage: 'cleaning',
  severity: 'warning',
  settledBy: 'educator',
  why: 'Two parts that stay together hold between them what was never reached.',
  source: 'logic',
  kinds: ['device'],
  check(device, { report }) {
    const steps = device.disassembly?.steps;
    if (steps === undefined || steps.items.some(({ part }) => part === undefined)) return;
    const taken = new Set(steps.items.map(({ part }) => part?.text));
    const together = new Set(device.disassembly?.leave_together?.items.map(({ text }) => text));
    const left = (device.parts?.items ?? []).filter(
      ({ id, detachable }) => detachable?.on === true && !taken.has(id?.text) && !together.has(id?.text ?? ''),
    );
    // When all others are taken off, the last one lies alone.
    if (left.length < 2) return;
    report({
      at: steps.at,
      span: steps.at.keySpan ?? steps.at.span,
      message: message.left(left.map(nameOf)),
      says: sayingsOf(device, device.disassembly?.src),
      related: left.map(({ at }) => ({ at, note: 'a part that comes off' })),
    });
  },
  examples: {
    bad: [
      `
kind: device
id: scissors
parts:
  - {id: handle, detachable: true}
  - {id: shaft, detachable: true}
  - {id: insert, detachable: true}
disassembly:
  steps:
  ^^^^^ "shaft" and "insert" are parts that come off, and no step here takes them apart. One step is missing, or a part is named wrongly.
    - {do: unscrew the handle, part: handle}
`,
      `
kind: device
id: injector
parts:
  - {id: barrel, detachable: true}
  - {id: plunger, detachable: true}
  - {id: cap, detachable: true}
disassembly:
  steps: [{do: unscrew the end cap, part: end-cap}, {do: draw out the plunger, part: plunger}]
  ^^^^^ "barrel" and "cap" are parts that come off, and no step here takes them apart. One step is missing, or a part is named wrongly.
`,
    ],
    good: [
      `
kind: device
id: scissors
parts:
  - {id: handle, detachable: true}
  - {id: shaft, detachable: true}
  - {id: insert, detachable: true}
disassembly:
  steps: [{do: unscrew the handle, part: handle}, {do: pull the insert out of the shaft, part: insert}]
`,
      `
kind: device
id: trocar
parts: [{id: sleeve, detachable: true}, {id: valve, detachable: true}, {id: cap, detachable: true}]
disassembly: {steps: [{do: take all parts off}]}
`,
    ],
  },
});

function nameOf({ id, name }: Part): string {
  return `"${(id ?? name)?.text ?? 'a part'}"`;
}
