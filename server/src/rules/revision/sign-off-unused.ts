import { defineRule } from '../rule.ts';
import { subjectOf } from '../support/sign-offs.ts';

const message = {
  noRevision: (doc: string, rev: string) =>
    `This decides on ${doc} revision ${rev}, but no document file holds that revision. Register it, or take this record away.`,
  noSubject: (about: string) => `This decides on a change of "${about}", but no file has that id.`,
};

export const rule = defineRule({
  id: 'sign-off-unused',
  stage: 'revision',
  severity: 'warning',
  settledBy: 'educator',
  why: 'A decision on something that is not there makes people believe that what is there was decided.',
  source: 'logic',
  kinds: ['sign-off'],
  check(record, { view, report }) {
    const { doc, to_rev, about } = record;
    if (doc !== undefined && to_rev !== undefined) {
      const isRegistered = view.revisions(doc.text).some((one) => one.rev?.text === to_rev.text);
      if (!isRegistered) report({ at: to_rev.at, message: message.noRevision(doc.text, to_rev.text) });
      return;
    }
    if (about === undefined) return;
    const isThere = subjectOf(record, view) !== undefined;
    if (!isThere) report({ at: about.at, message: message.noSubject(about.text) });
  },
  examples: {
    bad: [
      `
kind: sign-off
id: SO-1
doc: PF-1
from_rev: A
to_rev: B
        ^ This decides on PF-1 revision B, but no document file holds that revision. Register it, or take this record away.
`,
      `
kind: sign-off
id: SO-2
about: washer-9
       ^^^^^^^^ This decides on a change of "washer-9", but no file has that id.
`,
    ],
    good: [
      `
=== sign-offs/SO-3.ifu.yaml
kind: sign-off
id: SO-3
doc: PF-1
from_rev: A
to_rev: B
=== documents/pf-1-b.ifu.yaml
kind: document
id: pf-1-b
doc: PF-1
rev: B
`,
      `
=== sign-offs/SO-4.ifu.yaml
kind: sign-off
id: SO-4
about: washer-1
=== washers/washer-1.ifu.yaml
kind: washer
id: washer-1
`,
    ],
  },
});
