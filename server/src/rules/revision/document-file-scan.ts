import { defineRule } from '../rule.ts';
import { fileOf, isScan } from '../support/kept-documents.ts';

const message = (name: string) =>
  `"${name}" is a scan: its pages are pictures without text, so no quote could be looked for in it. Compare by eye, or ask the maker for the PDF itself.`;

export const rule = defineRule({
  id: 'document-file-scan',
  stage: 'revision',
  severity: 'advice',
  settledBy: 'educator',
  why: 'Quotes from a scan were typed by hand and nothing but a second pair of eyes has checked them.',
  source: 'practice',
  kinds: ['document'],
  check(document, { view, report }) {
    const kept = fileOf(document, view);
    if (kept?.file.state === 'read' && isScan(kept.file) && document.file !== undefined)
      report({ at: document.file.at, message: message(kept.name) });
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
      ^^^^^^ "dw.pdf" is a scan: its pages are pictures without text, so no quote could be looked for in it. Compare by eye, or ask the maker for the PDF itself.
=== documents/dw.pdf

--- next page

`,
      `
=== documents/dw.ifu.yaml
kind: document
id: dw-rep-077-d
doc: DW-REP-077
rev: D
file: ../files/dw.pdf
      ^^^^^^^^^^^^^^^ "dw.pdf" is a scan: its pages are pictures without text, so no quote could be looked for in it. Compare by eye, or ask the maker for the PDF itself.
=== files/dw.pdf
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
=== documents/dw.pdf

--- next page
One page of text is enough to look in
`,
      `
=== documents/dw.ifu.yaml
kind: document
id: dw-rep-077-d
doc: DW-REP-077
rev: D
file: dw.pdf
=== documents/dw.pdf
(broken)
`,
    ],
  },
});
