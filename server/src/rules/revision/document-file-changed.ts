import { defineRule } from '../rule.ts';
import { fileOf, hasChanged } from '../support/kept-documents.ts';

const message = (name: string) =>
  `"${name}" is not the file that this checksum was stored for. Every value that rests on it is marked for a second look; store the new checksum when all are read again.`;

const fixTitle = 'Everything was read again: store the checksum of the file as it is now';

export const rule = defineRule({
  id: 'document-file-changed',
  stage: 'revision',
  severity: 'warning',
  settledBy: 'educator',
  why: 'A maker may send another text under the same revision, and a file may be replaced by mistake.',
  source: 'practice',
  fix: 'Stores the checksum of the file as it is now.',
  kinds: ['document'],
  check(document, { view, report }) {
    const kept = fileOf(document, view);
    if (kept === undefined || document.checksum === undefined || !hasChanged(kept)) return;
    const sha256 = kept.file.state === 'missing' ? undefined : kept.file.sha256;
    const { at } = document.checksum;
    const fixes =
      sha256 === undefined ? [] : [{ title: fixTitle, edits: [{ span: at.span, text: JSON.stringify(sha256) }] }];
    report({ at, message: message(kept.name), fixes });
  },
  examples: {
    bad: [
      `
=== documents/dw.ifu.yaml
kind: document
id: dw-rep-077-d
doc: DW-REP-077
rev: D
file: dw.pdf
checksum: "aa00000000000000000000000000000000000000000000000000000000000001"
          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ "dw.pdf" is not the file that this checksum was stored for. Every value that rests on it is marked for a second look; store the new checksum when all are read again.
=== documents/dw.pdf
sha256: bb00000000000000000000000000000000000000000000000000000000000002
Instructions
`,
      `
=== documents/dw.ifu.yaml
kind: document
id: dw-rep-077-d
doc: DW-REP-077
rev: D
file: dw.pdf
checksum: not yet known
          ^^^^^^^^^^^^^ "dw.pdf" is not the file that this checksum was stored for. Every value that rests on it is marked for a second look; store the new checksum when all are read again.
=== documents/dw.pdf
sha256: bb00000000000000000000000000000000000000000000000000000000000002
Instructions
`,
    ],
    good: [
      `
=== documents/dw.ifu.yaml
kind: document
id: dw-rep-077-d
doc: DW-REP-077
rev: D
file: dw.pdf
checksum: "SHA256:BB00000000000000000000000000000000000000000000000000000000000002"
=== documents/dw.pdf
sha256: bb00000000000000000000000000000000000000000000000000000000000002
Instructions
`,
      `
=== documents/dw.ifu.yaml
kind: document
id: dw-rep-077-d
doc: DW-REP-077
rev: D
file: dw.pdf
checksum: "aa00000000000000000000000000000000000000000000000000000000000001"
`,
    ],
  },
});
