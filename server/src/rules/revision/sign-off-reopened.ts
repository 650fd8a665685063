import { stampOf } from '../../model/content.ts';
import { nameOf } from '../../model/entity.ts';
import { defineRule } from '../rule.ts';
import { citedRevision, subjectOf } from '../support/sign-offs.ts';

const message = {
  edited: (name: string, day: string) =>
    `The ${name} was edited after this decision${day === '' ? '' : ` of ${day}`}, so the decision is open again. Compare the two states once more.`,
};

export const rule = defineRule({
  id: 'sign-off-reopened',
  stage: 'revision',
  severity: 'error',
  settledBy: 'educator',
  why: 'What was decided is the text as it stood then; a later edit was read by nobody who signed.',
  source: 'logic',
  kinds: ['sign-off'],
  check(record, { view, report }) {
    const { from_stamp, to_stamp } = record;
    const subject = from_stamp === undefined && to_stamp === undefined ? undefined : subjectOf(record, view);
    if (subject === undefined) return;
    const stamp = stampOf(subject);
    if (stamp === from_stamp?.text || stamp === to_stamp?.text) return;
    const cited = citedRevision(record, subject);
    // A record on revisions that were replaced since is history.
    if (cited !== undefined && cited !== record.from_rev?.text && cited !== record.to_rev?.text) return;
    const wanted = cited !== undefined && cited === record.from_rev?.text ? from_stamp : to_stamp;
    if (wanted === undefined) return;
    report({
      at: wanted.at,
      message: message.edited(nameOf(subject), record.on?.text ?? ''),
      related: [{ at: subject.at, note: 'what was edited' }],
    });
  },
  examples: {
    bad: [
      `
=== sign-offs/SO-1.ifu.yaml
kind: sign-off
id: SO-1
about: washer-1
from_stamp: "0000000000000000"
to_stamp: "1111111111111111"
          ^^^^^^^^^^^^^^^^^^ The washer "washer-1" was edited after this decision of 2025-02-20, so the decision is open again. Compare the two states once more.
on: 2025-02-20
=== washers/washer-1.ifu.yaml
kind: washer
id: washer-1
`,
      `
=== sign-offs/SO-2.ifu.yaml
kind: sign-off
id: SO-2
doc: PF-1
about: pale-forceps
from_rev: A
to_rev: B
from_stamp: "0000000000000000"
            ^^^^^^^^^^^^^^^^^^ The device "pale-forceps" was edited after this decision, so the decision is open again. Compare the two states once more.
to_stamp: "1111111111111111"
=== devices/pale-forceps.ifu.yaml
kind: device
id: pale-forceps
sources: [{doc: PF-1, rev: A}]
`,
    ],
    good: [
      `
=== sign-offs/SO-3.ifu.yaml
kind: sign-off
id: SO-3
about: washer-1
=== washers/washer-1.ifu.yaml
kind: washer
id: washer-1
`,
      `
=== sign-offs/SO-4.ifu.yaml
kind: sign-off
id: SO-4
doc: PF-1
about: pale-forceps
from_rev: A
to_rev: B
to_stamp: "1111111111111111"
=== devices/pale-forceps.ifu.yaml
kind: device
id: pale-forceps
sources: [{doc: PF-1, rev: C}]
`,
    ],
  },
});
