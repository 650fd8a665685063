import type { Member } from '../../model/entities/set.generated.ts';
import { defineRule } from '../rule.ts';

const message = {
  twice: (device: string) =>
    `"${device}" stands on two lines of this set, and nothing tells the lines apart. Either one of them means another item, or the count is split.`,
  first: 'the other line',
};

export const rule = defineRule({
  id: 'member-listed-twice',
  stage: 'packaging',
  severity: 'warning',
  settledBy: 'educator',
  why: 'Whoever counts by such a list counts wrongly, and the item that was meant has no instruction here.',
  source: 'logic',
  kinds: ['set'],
  check(set, { report }) {
    const lines = new Map<string, Member>();
    for (const member of set.members?.items ?? []) {
      if (member.device === undefined) continue;
      const line = lineOf(member);
      const other = lines.get(line);
      if (other === undefined) lines.set(line, member);
      else
        report({
          at: member.device.at,
          message: message.twice(member.device.text),
          related: [{ at: other.at, note: message.first }],
        });
    }
  },
  examples: {
    bad: [
      `
kind: set
id: bone
members:
  - {device: bone-clamp, qty: 1}
  - {device: bone-clamp, qty: 6, instructions: [jaws-open]}
             ^^^^^^^^^^ "bone-clamp" stands on two lines of this set, and nothing tells the lines apart. Either one of them means another item, or the count is split.
`,
      `
kind: set
id: minor
members:
  - {device: forceps, qty: 4, level: 1}
  - {device: scissors, qty: 2, level: 1}
  - {device: forceps, qty: 8, level: 1}
             ^^^^^^^ "forceps" stands on two lines of this set, and nothing tells the lines apart. Either one of them means another item, or the count is split.
`,
    ],
    good: [
      `
kind: set
id: minor
members:
  - {device: forceps, qty: 4, level: 1}
  - {device: forceps, qty: 8, level: 2}
`,
      `
kind: set
id: lap
members:
  - {device: scissors, qty: 1, catalogue: DW-3301}
  - {device: scissors, qty: 1, catalogue: DW-3302}
  - {device: forceps, qty: 2}
`,
    ],
  },
});

/** Lines for the same item: nothing of what tells two lines of one instruction apart differs. */
function lineOf({ device, catalogue, level, basket, text }: Member): string {
  return [device, catalogue, level, basket, text].map((one) => one?.text ?? '').join('\n');
}
