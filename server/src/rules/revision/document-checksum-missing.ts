import type { Fix } from '../../base/problem.ts';
import { defineRule } from '../rule.ts';
import type { RegisteredDocument } from '../support/documents.ts';
import { isFlow } from '../support/flow-edits.ts';
import { fileOf } from '../support/kept-documents.ts';

const message = (name: string) =>
  `No checksum of "${name}" is stored, so nobody will notice when the file is exchanged or changed.`;

export const rule = defineRule({
  id: 'document-checksum-missing',
  stage: 'revision',
  severity: 'advice',
  settledBy: 'educator',
  why: 'With a checksum, a changed file marks every value that rests on it; without one it passes unseen.',
  source: 'practice',
  fix: 'Stores the checksum of the file as it is now.',
  kinds: ['document'],
  check(document, { view, report }) {
    const kept = fileOf(document, view);
    if (kept === undefined || document.file === undefined || document.checksum !== undefined) return;
    if (kept.file.state !== 'read') return;
    report({ at: document.file.at, message: message(kept.name), fixes: fixesFor(document, kept.file.sha256) });
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
      ^^^^^^ No checksum of "dw.pdf" is stored, so nobody will notice when the file is exchanged or changed.
=== documents/dw.pdf
sha256: bb00000000000000000000000000000000000000000000000000000000000002
Instructions
`,
      `
=== documents/dw.ifu.yaml
{kind: document, id: dw-rep-077-d, doc: DW-REP-077, rev: D, file: dw.pdf}
                                                                  ^^^^^^ No checksum of "dw.pdf" is stored, so nobody will notice when the file is exchanged or changed.
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
checksum: "bb00000000000000000000000000000000000000000000000000000000000002"
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
=== documents/dw.pdf
(missing)
`,
    ],
  },
});

/** In front of the file's own line, so that a comment behind that stays with it. */
function fixesFor(document: RegisteredDocument, sha256: string): readonly Fix[] {
  const start = document.file?.at.keySpan?.start;
  if (start === undefined) return [];
  const text = `checksum: "${sha256}"${isFlow(document) ? ', ' : '\n'}`;
  return [{ title: 'Store the checksum of the file as it is now', edits: [{ span: { start, end: start }, text }] }];
}
