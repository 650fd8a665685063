import type { UnreadReason } from '../../library/kept-file.ts';
import { keptFileLimits } from '../../library/kept-file.ts';
import { defineRule } from '../rule.ts';
import { fileOf } from '../support/kept-documents.ts';

const reasons: Readonly<Record<UnreadReason, string>> = {
  'no-pdf': 'it is no PDF',
  broken: 'it is damaged',
  locked: 'it is locked with a password',
  'too-large': `it is larger than ${keptFileLimits.bytes / 1_000_000} MB or holds more text than a manual would`,
  'too-many-pages': `it has more than ${keptFileLimits.pages} pages`,
  'too-slow': 'reading it takes too much time or memory',
  unreadable: 'it may not be opened',
};

const message = (name: string, why: UnreadReason) =>
  `"${name}" could not be read: ${reasons[why]}. No quote was looked for in it.`;

export const rule = defineRule({
  id: 'document-file-unreadable',
  stage: 'revision',
  severity: 'warning',
  settledBy: 'educator',
  why: 'A document that cannot be opened proves nothing, and nobody may notice until a surveyor asks for it.',
  source: 'practice',
  kinds: ['document'],
  check(document, { view, report }) {
    const kept = fileOf(document, view);
    if (kept?.file.state !== 'unread' || document.file === undefined) return;
    const severity = kept.file.why === 'no-pdf' ? { severity: 'advice' as const } : {};
    report({ at: document.file.at, message: message(kept.name, kept.file.why), ...severity });
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
      ^^^^^^ "dw.pdf" could not be read: it is damaged. No quote was looked for in it.
=== documents/dw.pdf
(broken)
`,
      `
=== documents/dw.ifu.yaml
kind: document
id: dw-rep-077-d
doc: DW-REP-077
rev: D
file: ../dw.pdf
      ^^^^^^^^^ "dw.pdf" could not be read: it is locked with a password. No quote was looked for in it.
=== dw.pdf
(locked)
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
