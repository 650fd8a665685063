import { nearest } from '../../base/nearest.ts';
import type { LibraryView } from '../../library/view.ts';
import type { Member } from '../../model/entities/set.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Text } from '../../model/node.ts';
import type { Report } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { hasTrait } from '../support/applies.ts';
import { documentsOnFile } from '../support/documents.ts';

const message = {
  noFile: (device: string, suggestion: string | undefined) =>
    `No instruction is on file for "${device}": it has no device file.${suggestion === undefined ? ' Hold the set and ask the vendor.' : ` Did you mean "${suggestion}"?`}`,
  noDocument: (device: string) =>
    `No instruction is on file for "${device}". Hold the set until the vendor has sent it.`,
  does: (quantity: string) => `The borrowed set holds ${quantity} of it.`,
};

export const rule = defineRule({
  id: 'loaner-document-missing',
  stage: 'point-of-use',
  severity: 'error',
  settledBy: 'vendor',
  why: 'A borrowed set that comes with fewer documents than instruments can’t be processed by any of them.',
  source: 'standard',
  fix: 'Changes the name to the nearest device file, when the name is only misspelt.',
  kinds: ['set'],
  check(set, { view, report }) {
    if (!isBorrowed(set)) return;
    for (const member of set.members?.items ?? []) {
      if (member.device === undefined) continue;
      const found = judged(member, member.device, view);
      if (found !== undefined) report(found);
    }
  },
  examples: {
    bad: [
      `
kind: set
id: knee-loaner
loaner: true
members:
  - {device: unknown-reamer, qty: 6}
             ^^^^^^^^^^^^^^ No instruction is on file for "unknown-reamer": it has no device file. Hold the set and ask the vendor.
`,
      `
=== sets/knee-loaner.ifu.yaml
kind: set
id: knee-loaner
traits: [loaner]
members:
  - {device: knee-trials, qty: 1}
  - {device: knee-saw-guide, qty: 2}
             ^^^^^^^^^^^^^^ No instruction is on file for "knee-saw-guide". Hold the set until the vendor has sent it.
=== devices/trials.ifu.yaml
kind: device
id: knee-trials
sources: [{doc: FN-1, rev: A}]
=== devices/guide.ifu.yaml
kind: device
id: knee-saw-guide
sources: [{doc: FN-2, rev: A}]
=== documents/fn-1.ifu.yaml
kind: document
id: fn-1-a
doc: FN-1
rev: A
status: current
`,
      `
=== sets/hip-loaner.ifu.yaml
kind: set
id: hip-loaner
loaner: true
members:
  - {device: hip-trails, qty: 1}
             ^^^^^^^^^^ No instruction is on file for "hip-trails": it has no device file. Did you mean "hip-trials"?
=== devices/trials.ifu.yaml
kind: device
id: hip-trials
sources: [{doc: FN-9, rev: A}]
`,
    ],
    good: [
      `
=== sets/knee-loaner.ifu.yaml
kind: set
id: knee-loaner
loaner: true
members:
  - {device: knee-trials, qty: 1}
=== devices/trials.ifu.yaml
kind: device
id: knee-trials
sources: [{doc: FN-1, rev: A}]
=== documents/fn-1.ifu.yaml
kind: document
id: fn-1-a
doc: FN-1
rev: A
`,
      `
kind: set
id: our-own-minor
members:
  - {device: not-yet-encoded, qty: 1}
`,
    ],
  },
});

function isBorrowed(set: EntityOf['set']): boolean {
  return set.loaner?.on === true || hasTrait(set, 'loaner');
}

function judged(member: Member, name: Text, view: LibraryView): Report | undefined {
  const does = message.does(member.qty?.text ?? 'some');
  if (!view.exists('device', name.text)) {
    const suggestion = nearest(name.text, view.ids('device'));
    const fixes =
      suggestion === undefined
        ? []
        : [{ title: `Change to "${suggestion}"`, edits: [{ span: name.at.span, text: suggestion }] }];
    return { at: name.at, message: message.noFile(name.text, suggestion), does, fixes };
  }
  const device = view.get('device', name.text);
  if (device === undefined || documentsOnFile(device, view).length > 0) return undefined;
  return {
    at: name.at,
    message: message.noDocument(name.text),
    does,
    related: [{ at: device.at, note: 'its device file' }],
  };
}
