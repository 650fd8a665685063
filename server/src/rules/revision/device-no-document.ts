import { nameOf, rootOfEntity } from '../../model/entity.ts';
import { fieldOf } from '../../model/walk.ts';
import { defineRule } from '../rule.ts';
import { documentsOnFile } from '../support/documents.ts';
import { listed } from '../support/lists.ts';

const message = {
  none: (name: string) =>
    `The ${name} is in use, and no instruction for it is on file. Ask its maker for the document.`,
  draftOnly: (name: string, numbers: string) =>
    `The ${name} is in use, and no document file says that ${numbers} is in force. Add the document file, or ask the maker.`,
  does: (sets: string) => `It is in the set ${sets}.`,
};

export const rule = defineRule({
  id: 'device-no-document',
  stage: 'revision',
  severity: 'error',
  settledBy: 'manufacturer',
  why: 'Without an instruction nothing says how the device may be processed.',
  source: 'standard',
  kinds: ['device'],
  check(device, { view, report }) {
    // Borrowed sets are judged by loaner-document-missing, which speaks to the vendor.
    const sets = view.users('device', rootOfEntity(device).id, 'set').filter((set) => set.loaner?.on !== true);
    if (sets.length === 0 || documentsOnFile(device, view).length > 0) return;
    const numbers = (device.sources?.items ?? []).flatMap((source) =>
      source.doc === undefined ? [] : [source.doc.text],
    );
    report({
      at: device.sources?.at ?? fieldOf(device, 'id')?.at ?? device.at,
      message: numbers.length === 0 ? message.none(nameOf(device)) : message.draftOnly(nameOf(device), listed(numbers)),
      does: message.does(listed(sets.map((set) => rootOfEntity(set).id))),
      related: sets.map((set) => ({ at: set.at, note: 'a set that holds it' })),
    });
  },
  examples: {
    bad: [
      `
=== devices/retractor.ifu.yaml
kind: device
id: visiting-surgeon-retractor
class: critical
sources: []
^^^^^^^ The device "visiting-surgeon-retractor" is in use, and no instruction for it is on file. Ask its maker for the document.
=== sets/minor.ifu.yaml
kind: set
id: minor
members:
  - {device: visiting-surgeon-retractor, qty: 1}
`,
      `
=== devices/probe.ifu.yaml
kind: device
id: pale-probe
sources: [{doc: PP-4, rev: B, role: device-specific}]
^^^^^^^ The device "pale-probe" is in use, and no document file says that PP-4 is in force. Add the document file, or ask the maker.
=== documents/pp-4-b.ifu.yaml
kind: document
id: pp-4-b
doc: PP-4
rev: B
status: draft
=== sets/ent.ifu.yaml
kind: set
id: ent
members:
  - {device: pale-probe, qty: 2}
`,
    ],
    good: [
      `
=== devices/probe.ifu.yaml
kind: device
id: pale-probe
sources: [{doc: PP-4, rev: B}]
=== documents/pp-4-b.ifu.yaml
kind: document
id: pp-4-b
doc: PP-4
rev: B
status: current
=== sets/ent.ifu.yaml
kind: set
id: ent
members:
  - {device: pale-probe, qty: 2}
`,
      `
kind: device
id: probe-on-trial
sources: []
notes: ["No set holds it yet."]
`,
    ],
  },
});
