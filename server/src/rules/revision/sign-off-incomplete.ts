import { fieldOf } from '../../model/walk.ts';
import { defineRule } from '../rule.ts';
import { listed } from '../support/lists.ts';
import { decidedField, missingIn } from '../support/sign-offs.ts';

const message = {
  incomplete: (missing: readonly string[]) => `This decision does not count yet: it has ${listed(missing)}.`,
  noQuestion: (field: string) =>
    `The maker is to be asked about ${field}, but no question is named. Write the question and name it here.`,
};

export const rule = defineRule({
  id: 'sign-off-incomplete',
  stage: 'revision',
  severity: 'error',
  settledBy: 'manager',
  why: 'A decision that one person made alone, or that says nothing about packs on the shelf, protects nobody.',
  source: 'practice',
  kinds: ['sign-off'],
  check(record, { report }) {
    const missing = missingIn(record);
    if (missing.length > 0)
      report({ at: fieldOf(record, 'id')?.at ?? record.at, message: message.incomplete(missing) });
    for (const change of record.changes?.items ?? []) {
      if (change.decision?.text !== 'ask' || change.question !== undefined) continue;
      report({ at: change.decision.at, message: message.noQuestion(decidedField(change)) });
    }
  },
  examples: {
    bad: [
      `
kind: sign-off
id: SO-1
    ^^^^ This decision does not count yet: it has no second reader and no choice about packs on the shelf.
doc: PF-1
reviewer: educator-1
manager: manager
on: 2025-02-20
`,
      `
kind: sign-off
id: SO-2
changes:
  - {fingerprint: "0a1b", field: sterilization.dry, decision: ask}
                                                              ^^^ The maker is to be asked about sterilization.dry, but no question is named. Write the question and name it here.
reviewer: educator-1
second_reader: educator-2
manager: manager
on: 2025-02-20
shelf_stock: reprocess
`,
    ],
    good: [
      `
kind: sign-off
id: SO-3
changes:
  - {fingerprint: "0a1b", decision: agree}
reviewer: educator-1
second_reader: educator-2
manager: manager
on: 2025-02-20
shelf_stock: not-affected
`,
      `
=== sign-offs/SO-4.ifu.yaml
kind: sign-off
id: SO-4
changes:
  - {fingerprint: "0a1b", decision: ask, question: q-4}
reviewer: educator-1
second_reader: educator-2
manager: manager
on: 2025-02-20
shelf_stock: quarantine
=== questions/q-4.ifu.yaml
kind: question
id: q-4
`,
    ],
  },
});
