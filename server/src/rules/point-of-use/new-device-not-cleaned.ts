import { defineRule } from '../rule.ts';
import { entryPastCleaning } from '../support/steps.ts';

const message = {
  uncleaned: (stage: string) =>
    `New items enter here at ${stage}. Oil and dust of manufacture must come off first: start with cleaning.`,
};

export const rule = defineRule({
  id: 'new-device-not-cleaned',
  stage: 'point-of-use',
  severity: 'warning',
  settledBy: 'manager',
  why: 'New instruments carry oil and dust of manufacture.',
  source: 'standard',
  kinds: ['procedure'],
  check(procedure, { report }) {
    const scope = procedure.scope?.items.find((one) => one.text === 'new');
    const entry = scope === undefined ? undefined : entryPastCleaning(procedure);
    if (scope === undefined || entry === undefined) return;
    report({
      at: entry.at,
      message: message.uncleaned(entry.stage),
      related: [{ at: scope.at, note: 'that it is for new items' }],
    });
  },
  examples: {
    bad: [
      `
kind: procedure
id: new-instrument
starts_at: packaging
           ^^^^^^^^^ New items enter here at packaging. Oil and dust of manufacture must come off first: start with cleaning.
scope: [new]
`,
      `
kind: procedure
id: delivery
scope: [new]
steps:
  - {stage: receipt, do: compare with the order}
  - {stage: assembly, do: add to the set}
            ^^^^^^^^ New items enter here at assembly. Oil and dust of manufacture must come off first: start with cleaning.
`,
    ],
    good: [
      `
kind: procedure
id: new-instrument
starts_at: receipt
scope: [new]
steps:
  - {stage: receipt, do: count}
  - {stage: manual, do: clean}
  - {stage: packaging, do: pack}
`,
      `
kind: procedure
id: delivery
scope: [new]
steps:
  - {stage: receipt, do: compare with the order}
  - {stage: quarantine, do: quarantine, note: until its instruction is encoded}
`,
    ],
  },
});
