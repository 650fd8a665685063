import { keptPath } from '../../library/kept-file.ts';
import { defineRule } from '../rule.ts';

const message = {
  missing: (path: string) =>
    `There is no file "${path}" in the library that can be opened. Put it there, or change the name.`,
  outside: 'This does not name a file of the library, so nothing was opened. Write its path from this file.',
};

export const rule = defineRule({
  id: 'document-file-missing',
  stage: 'revision',
  severity: 'warning',
  settledBy: 'educator',
  why: 'Whoever wants to see the page finds nothing, and no quote can be held against it.',
  source: 'practice',
  kinds: ['document'],
  check({ file }, { view, report }) {
    if (file === undefined) return;
    const path = keptPath(file);
    if (path === undefined) report({ at: file.at, message: message.outside });
    else if (view.keptFile(path)?.state === 'missing') report({ at: file.at, message: message.missing(path) });
  },
  examples: {
    bad: [
      `
=== documents/dw.ifu.yaml
kind: document
id: dw-rep-077-d
doc: DW-REP-077
rev: D
file: DW-REP-077-D.pdf
      ^^^^^^^^^^^^^^^^ There is no file "documents/DW-REP-077-D.pdf" in the library that can be opened. Put it there, or change the name.
=== documents/DW-REP-077-D.pdf
(missing)
`,
      `
kind: document
id: dw-rep-077-d
doc: DW-REP-077
rev: D
file: ../../elsewhere/DW-REP-077-D.pdf
      ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ This does not name a file of the library, so nothing was opened. Write its path from this file.
`,
    ],
    good: [
      `
=== documents/dw.ifu.yaml
kind: document
id: dw-rep-077-d
doc: DW-REP-077
rev: D
file: ../scans/DW-REP-077-D.pdf
=== scans/DW-REP-077-D.pdf
Instructions
`,
      `
kind: document
id: dw-rep-077-d
doc: DW-REP-077
rev: D
`,
    ],
  },
});
