import { defineRule } from '../rule.ts';
import { entryPastCleaning } from '../support/steps.ts';

const message = {
  trusted: (what: string, stage: string) =>
    `${what} enter here at ${stage}, as if they were clean. Nobody here knows what was done to them: start with cleaning.`,
};

/** Situations in which an item comes from outside, with how such items are called. */
const fromOutside: ReadonlyMap<string, string> = new Map([
  ['loaner', 'Borrowed items'],
  ['repair-return', 'Items back from repair'],
  ['trial', 'Items on trial'],
]);

export const rule = defineRule({
  id: 'loaner-trusted-as-processed',
  stage: 'point-of-use',
  severity: 'error',
  settledBy: 'manager',
  why: 'Nobody here knows the history of an item that a vendor or a workshop delivers.',
  source: 'standard',
  kinds: ['procedure'],
  check(procedure, { report }) {
    const scope = procedure.scope?.items.find((one) => fromOutside.has(one.text));
    const entry = scope === undefined ? undefined : entryPastCleaning(procedure);
    if (scope === undefined || entry === undefined) return;
    report({
      at: entry.at,
      message: message.trusted(fromOutside.get(scope.text) ?? '', entry.stage),
      related: [{ at: scope.at, note: 'where these items come from' }],
    });
  },
  examples: {
    bad: [
      `
kind: procedure
id: repair-return
starts_at: assembly
           ^^^^^^^^ Items back from repair enter here at assembly, as if they were clean. Nobody here knows what was done to them: start with cleaning.
scope: [repair-return]
`,
      `
kind: procedure
id: loan-sets
scope: [loaner]
steps:
  - {stage: receipt, do: count}
  - {stage: steam, do: sterilize, note: delivered washed by the vendor}
            ^^^^^ Borrowed items enter here at steam, as if they were clean. Nobody here knows what was done to them: start with cleaning.
  - {stage: manual, do: clean}
`,
    ],
    good: [
      `
kind: procedure
id: repair-return
starts_at: receipt
scope: [repair-return]
steps:
  - {stage: receipt, do: check the repair certificate}
  - {stage: manual, do: clean}
  - {stage: packaging, do: pack}
`,
      `
kind: procedure
id: own-sets
starts_at: assembly
`,
    ],
  },
});
