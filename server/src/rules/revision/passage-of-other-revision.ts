import type { Source } from '../../model/entities/source.generated.ts';
import type { List } from '../../model/node.ts';
import { sayingOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';
import { documentName } from '../support/documents.ts';
import { listed } from '../support/lists.ts';
import type { Transcribed } from '../support/transcription.ts';
import { transcribedKinds } from '../support/transcription.ts';

const message = {
  revision: (named: string, sources: string) =>
    `This passage is from ${named}, but the sources of this file name revision ${sources}. Read it again there.`,
  document: (named: string) => `This passage is from ${named}, which is not among the sources of this file.`,
};

export const rule = defineRule({
  id: 'passage-of-other-revision',
  stage: 'revision',
  severity: 'warning',
  settledBy: 'educator',
  why: 'A sentence of an older revision may no longer stand in the one that is followed.',
  source: 'logic',
  kinds: transcribedKinds,
  check(entity: Transcribed & { readonly sources?: List<Source> }, { report }) {
    const sources = entity.sources?.items ?? [];
    if (sources.length === 0) return;
    for (const { key, value } of entity.statements?.rows.values() ?? []) {
      const { doc, rev } = value;
      if (doc === undefined) continue;
      const same = sources.filter((source) => source.doc?.text === doc.text);
      const revisions = same.flatMap((source) => source.rev?.text ?? []);
      if (same.length > 0 && (rev === undefined || revisions.length < same.length || revisions.includes(rev.text)))
        continue;
      const name = documentName(value);
      report({
        at: rev?.at ?? value.at,
        ...(rev === undefined && { span: key.at.span }),
        message: same.length === 0 ? message.document(name) : message.revision(name, listed(revisions)),
        says: [sayingOf(value, value.at)],
        related: sources.map(({ at }) => ({ at, note: 'a source of this file' })),
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: pale-forceps
sources: [{doc: PF-1, rev: B}]
statements:
  s1: {doc: PF-1, rev: A, page: 4, quote: "Dry at least 20 minutes."}
                       ^ This passage is from PF-1 rev A, but the sources of this file name revision B. Read it again there.
  s2: {doc: PF-1, rev: B, page: 5, quote: "Store dry."}
`,
      `
kind: packaging
id: container-small
sources:
  - {doc: RC-12, rev: "2", role: device-specific}
statements:
  s1: {doc: RC-21, rev: "2", page: 11, quote: "Pre-vacuum steam only."}
                        ^^^ This passage is from RC-21 rev 2, which is not among the sources of this file.
`,
    ],
    good: [
      `
kind: device
id: pale-forceps
sources: [{doc: PF-1, rev: B}, {doc: PF-LETTER, rev: A, role: response}]
statements:
  s1: {doc: PF-1, rev: B, page: 4, quote: "Dry at least 20 minutes."}
  s2: {doc: PF-LETTER, rev: A, page: 1, quote: "Do not clean in a washer."}
`,
      `
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 4, quote: "Dry at least 20 minutes."}
`,
    ],
  },
});
