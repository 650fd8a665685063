import { defineRule } from '../rule.ts';
import { immediateUsePlace } from '../support/iuss.ts';
import { listed } from '../support/lists.ts';

const message = {
  none: 'Nothing says what is recorded when this immediate use is done. It needs the item, the link to the patient, the reason, the cycle, the operator and the indicator.',
  lacking: (what: string) => `The record of this immediate use lacks ${what}.`,
};

export const rule = defineRule({
  id: 'iuss-record-missing',
  stage: 'immediate-use',
  severity: 'warning',
  settledBy: 'manager',
  why: 'Without a record nobody can trace the item to its patient, nor see how often immediate use is needed and why.',
  source: 'guideline',
  kinds: ['procedure'],
  check(procedure, { view, report }) {
    const use = immediateUsePlace(procedure, view);
    if (use === undefined) return;
    const kept = new Set(procedure.record?.items.map(({ text }) => text));
    const lacking = [...wanted].filter(([word]) => !kept.has(word)).map(([, words]) => words);
    if (lacking.length === 0) return;
    const isNone = lacking.length === wanted.size;
    report({ at: procedure.record?.at ?? use, message: isNone ? message.none : message.lacking(listed(lacking)) });
  },
  examples: {
    bad: [
      `
kind: procedure
id: drop
context: iuss
record: [cycle]
^^^^^^ The record of this immediate use lacks the item, the link to the patient, the reason, the operator and the indicator.
`,
      `
kind: procedure
id: late-drill
context: iuss
         ^^^^ Nothing says what is recorded when this immediate use is done. It needs the item, the link to the patient, the reason, the cycle, the operator and the indicator.
steps: [{stage: manual, do: wipe}, {stage: steam}]
`,
    ],
    good: [
      `
kind: procedure
id: drop
context: iuss
record: [item, patient-link, reason, cycle, operator, indicator]
`,
      `
kind: procedure
id: evening
context: terminal
record: [cycle]
`,
    ],
  },
});

/** The words a record is written with, and what they mean in a sentence. */
const wanted: ReadonlyMap<string, string> = new Map([
  ['item', 'the item'],
  ['patient-link', 'the link to the patient'],
  ['reason', 'the reason'],
  ['cycle', 'the cycle'],
  ['operator', 'the operator'],
  ['indicator', 'the indicator'],
]);
