import { fieldOf } from '../../model/walk.ts';
import { defineRule } from '../rule.ts';

const message = {
  named: (text: string) =>
    `The line "${text}" names no device file, so nothing about this instrument is checked. Encode its instruction, or name its device.`,
  nameless: 'This line names no instrument at all. Name its device.',
  does: (quantity: string) => `The set holds ${quantity}.`,
};

export const rule = defineRule({
  id: 'set-line-unmapped',
  stage: 'point-of-use',
  severity: 'error',
  settledBy: 'educator',
  why: 'A line without a device file is an instrument that nobody checks.',
  source: 'logic',
  kinds: ['set'],
  check(set, { report }) {
    for (const member of set.members?.items ?? []) {
      if (member.device !== undefined || fieldOf(member, 'device') !== undefined) continue;
      const words = member.text ?? member.catalogue;
      report({
        at: words?.at ?? member.at,
        message: words === undefined ? message.nameless : message.named(words.text),
        ...(member.qty !== undefined && { does: message.does(member.qty.text) }),
      });
    }
  },
  examples: {
    bad: [
      `
kind: set
id: minor
members:
  - {text: "Retractor, odd one", qty: 1}
           ^^^^^^^^^^^^^^^^^^^^ The line "Retractor, odd one" names no device file, so nothing about this instrument is checked. Encode its instruction, or name its device.
`,
      `
kind: set
id: ear
members:
  - {device: ringed-forceps, qty: 4}
  - {catalogue: EH-22, qty: 2}
                ^^^^^ The line "EH-22" names no device file, so nothing about this instrument is checked. Encode its instruction, or name its device.
  - {qty: 1, note: "the small hook"}
     ^^^ This line names no instrument at all. Name its device.
`,
    ],
    good: [
      `
kind: set
id: minor
members:
  - {device: ringed-forceps, qty: 24}
  - {device: odd-retractor, text: "Retractor, odd one", qty: 1}
`,
      `
kind: set
id: planned
`,
    ],
  },
});
