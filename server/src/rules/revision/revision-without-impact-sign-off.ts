import type { Fix } from '../../base/problem.ts';
import { counted } from '../../base/words.ts';
import type { LibraryView } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { nameOf, rootOfEntity } from '../../model/entity.ts';
import { defineRule } from '../rule.ts';
import { documentName, isCurrent } from '../support/documents.ts';
import { isFlow } from '../support/flow-edits.ts';
import { listed } from '../support/lists.ts';
import { recordFor } from '../support/sign-offs.ts';

const message = {
  missing: (name: string, affected: string, state: 'was approved' | 'is in force') =>
    `${name} ${state}, but nobody has acknowledged it for ${affected}. The change must reach the people at the bench.`,
  gap: (missing: number, all: number) => `${missing} of ${counted(all, 'acknowledgement')} missing`,
};

export const rule = defineRule({
  id: 'revision-without-impact-sign-off',
  stage: 'revision',
  severity: 'error',
  settledBy: 'manager',
  why: 'A change that reaches only the folder changes nothing at the bench.',
  source: 'practice',
  fix: 'Lists the affected sets and procedures, each still to be acknowledged.',
  kinds: ['document'],
  check(document, { view, report }) {
    if (document.supersedes === undefined || !isCurrent(document)) return;
    // A record of the decision answers for all; a list that was begun beside it has to be whole.
    if (recordFor(document, view) !== undefined && (document.impact_ack?.items.length ?? 0) === 0) return;
    if (view.site()?.policies?.sign_off_required?.on === false) return;
    const affected = affectedBy(document, view);
    const acknowledged = acknowledgedIn(document);
    const missing = affected.filter((entity) => !acknowledged.has(rootOfEntity(entity).id));
    if (missing.length === 0) return;
    const fixes = checklist(document, missing);
    report({
      at: document.impact_ack?.at ?? document.approved?.at ?? document.supersedes.at,
      message: message.missing(
        documentName(document),
        listed(missing.map(nameOf)),
        document.approved === undefined ? 'is in force' : 'was approved',
      ),
      gap: message.gap(missing.length, affected.length),
      related: missing.map((entity) => ({ at: entity.at, note: 'uses an instrument of this document' })),
      ...(fixes.length > 0 && { fixes }),
    });
  },
  examples: {
    bad: [
      `
=== documents/ks-1-d.ifu.yaml
kind: document
id: ks-1-d
doc: KS-1
rev: D
supersedes: C
impact_ack: [{what: knee, by: manager, on: 2025-02-20}]
^^^^^^^^^^ KS-1 rev D is in force, but nobody has acknowledged it for procedure "knee-cleaning". The change must reach the people at the bench.
sign_off: SO-1
=== sign-offs/SO-1.ifu.yaml
kind: sign-off
id: SO-1
doc: KS-1
from_rev: C
to_rev: D
reviewer: educator-1
second_reader: educator-2
manager: manager
on: 2025-02-20
shelf_stock: not-affected
=== devices/knee.ifu.yaml
kind: device
id: knee-system
sources: [{doc: KS-1, rev: D}]
=== procedures/knee-cleaning.ifu.yaml
kind: procedure
id: knee-cleaning
applies_to: [knee-system]
=== sets/knee.ifu.yaml
kind: set
id: knee
members: [{device: knee-system, qty: 1}]
`,
      `
=== documents/pf-1-b.ifu.yaml
kind: document
id: pf-1-b
doc: PF-1
rev: B
supersedes: A
            ^ PF-1 rev B is in force, but nobody has acknowledged it for set "minor". The change must reach the people at the bench.
=== devices/forceps.ifu.yaml
kind: device
id: pale-forceps
sources: [{doc: PF-1, rev: B}]
=== sets/minor.ifu.yaml
kind: set
id: minor
members:
  - {device: pale-forceps, qty: 4}
`,
      `
=== documents/dw-rep-077-d.ifu.yaml
kind: document
id: dw-rep-077-d
doc: DW-REP-077
rev: D
supersedes: C
approved: 2025-03-02
impact_ack: []
^^^^^^^^^^ DW-REP-077 rev D was approved, but nobody has acknowledged it for set "lap-chole". The change must reach the people at the bench.
=== devices/scissors.ifu.yaml
kind: device
id: takeapart-scissors
sources: [{doc: DW-REP-077, rev: D}]
=== sets/lap-chole.ifu.yaml
kind: set
id: lap-chole
members:
  - {device: takeapart-scissors, qty: 4}
`,
      `
=== documents/kn-2-b.ifu.yaml
kind: document
id: kn-2-b
doc: KN-2
rev: B
supersedes: A
approved: 2025-02-20
          ^^^^^^^^^^ KN-2 rev B was approved, but nobody has acknowledged it for set "knee" and procedure "knee-cleaning". The change must reach the people at the bench.
=== devices/reamer.ifu.yaml
kind: device
id: knee-reamer
sources: [{doc: KN-2, rev: A}]
=== procedures/knee-cleaning.ifu.yaml
kind: procedure
id: knee-cleaning
applies_to: [knee-reamer]
=== sets/knee.ifu.yaml
kind: set
id: knee
members:
  - {device: knee-reamer, qty: 1}
`,
    ],
    good: [
      `
=== documents/pf-1-b.ifu.yaml
kind: document
id: pf-1-b
doc: PF-1
rev: B
supersedes: A
=== sign-offs/SO-1.ifu.yaml
kind: sign-off
id: SO-1
doc: PF-1
from_rev: A
to_rev: B
reviewer: educator-1
second_reader: educator-2
manager: manager
on: 2025-02-20
shelf_stock: not-affected
=== devices/forceps.ifu.yaml
kind: device
id: pale-forceps
sources: [{doc: PF-1, rev: B}]
=== sets/minor.ifu.yaml
kind: set
id: minor
members:
  - {device: pale-forceps, qty: 4}
`,
      `
=== documents/dw-rep-077-d.ifu.yaml
kind: document
id: dw-rep-077-d
doc: DW-REP-077
rev: D
supersedes: C
approved: 2025-03-02
impact_ack:
  - {what: lap-chole, by: lead-technician, on: 2025-03-02}
=== devices/scissors.ifu.yaml
kind: device
id: takeapart-scissors
sources: [{doc: DW-REP-077, rev: D}]
=== sets/lap-chole.ifu.yaml
kind: set
id: lap-chole
members:
  - {device: takeapart-scissors, qty: 4}
`,
      `
kind: document
id: dw-rep-077-c
doc: DW-REP-077
rev: C
approved: 2021-03-02
status: superseded
supersedes: B
`,
    ],
  },
});

/** Sets and procedures that name a device which cites any revision of this document. */
function affectedBy(document: EntityOf['document'], view: LibraryView): readonly AnyEntity[] {
  const affected = new Map<string, AnyEntity>();
  const devices = document.doc === undefined ? [] : view.users('document-number', document.doc.text, 'device');
  for (const device of devices) {
    const { id } = rootOfEntity(device);
    for (const set of view.users('device', id, 'set')) affected.set(nameOf(set), set);
    for (const procedure of view.users('device', id, 'procedure')) affected.set(nameOf(procedure), procedure);
  }
  return [...affected.values()];
}

/** An entry without a role and a day is only a line of the checklist. */
function acknowledgedIn(document: EntityOf['document']): ReadonlySet<string> {
  const entries = document.impact_ack?.items ?? [];
  return new Set(
    entries.flatMap((entry) =>
      entry.by !== undefined && entry.on !== undefined && entry.what !== undefined ? [entry.what.text] : [],
    ),
  );
}

function checklist(document: EntityOf['document'], missing: readonly AnyEntity[]): readonly Fix[] {
  const listedAlready = new Set(document.impact_ack?.items.map((entry) => entry.what?.text));
  const ids = missing.map((entity) => rootOfEntity(entity).id).filter((id) => !listedAlready.has(id));
  const entries = ids.map((id) => `{what: ${id}}`).join(', ');
  const start = (document.approved ?? document.supersedes)?.at.keySpan?.start;
  const title = 'List what is affected, to be acknowledged';
  const list = document.impact_ack;
  if (ids.length === 0 || start === undefined) return [];
  if (list === undefined && !isFlow(document))
    return [{ title, edits: [{ span: { start, end: start }, text: `impact_ack: [${entries}]\n` }] }];
  if (list === undefined || (list.items.length > 0 && !isFlow(list))) return [];
  const end = list.at.span.end - 1;
  return [{ title, edits: [{ span: { start: end, end }, text: list.items.length > 0 ? `, ${entries}` : entries }] }];
}
