import type { LibraryView } from '../../library/view.ts';
import type { Statement } from '../../model/entities/statement.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import type { Citation, Place, Table } from '../../model/node.ts';
import { sayingOf, statementsOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';
import { documentName } from '../support/documents.ts';
import { partsOf } from '../support/entity-parts.ts';
import { hasChanged, keptDocumentOf, placeOf, quotingKinds } from '../support/kept-documents.ts';
import { fieldName } from '../support/quote-report.ts';

const message = (what: string, document: string, where: string, still: string) =>
  `The file of ${document} has changed since ${what} was read from it. Read ${where} again${still}.`;

const ends = {
  there: ': the quoted words still stand there',
  gone: ': the quoted words no longer stand there',
  open: '',
};

export const rule = defineRule({
  id: 'value-after-file-change',
  stage: 'revision',
  severity: 'warning',
  settledBy: 'educator',
  why: 'A value is as good as the page it was read from, and that page may now say something else.',
  source: 'practice',
  kinds: quotingKinds,
  check(entity: Quoting, { view, report }) {
    const changed = new Map<Statement, keyof typeof ends>();
    for (const { value } of entity.statements?.rows.values() ?? []) {
      const end = endOf(value, view);
      if (end !== undefined) changed.set(value, end);
    }
    if (changed.size === 0) return;
    for (const { at, src } of valuesOf(entity)) {
      for (const statement of statementsOf(entity, src)) {
        const end = changed.get(statement);
        if (end === undefined) continue;
        const where = statement.page === undefined ? 'the document' : `page ${statement.page.text}`;
        report({
          at,
          severity: end === 'there' ? 'advice' : 'warning',
          message: message(what(at), documentName(statement), where, ends[end]),
          says: [sayingOf(statement, statement.at)],
        });
      }
    }
  },
  examples: {
    bad: [
      `
=== devices/forceps.ifu.yaml
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 1, quote: "Expose at 132 °C for 4 minutes."}
  s2: {doc: PF-1, rev: A, page: 2, quote: "Dry for at least 20 minutes."}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, temp: {stated: 132 C}, exposure: {stated: 4 min}, src: s1}
                                          ^^^^ The file of PF-1 rev A has changed since "temp" was read from it. Read page 1 again: the quoted words still stand there.
                                                                 ^^^^^^^^ The file of PF-1 rev A has changed since "exposure" was read from it. Read page 1 again: the quoted words still stand there.
drying: {time: {at_least: 20 min, src: s2}}
         ^^^^ The file of PF-1 rev A has changed since "time" was read from it. Read page 2 again: the quoted words no longer stand there.
=== documents/pf-1-a.ifu.yaml
kind: document
id: pf-1-a
doc: PF-1
rev: A
file: pf-1-a.pdf
checksum: "aa00000000000000000000000000000000000000000000000000000000000001"
=== documents/pf-1-a.pdf
sha256: bb00000000000000000000000000000000000000000000000000000000000002
Expose at 132 °C for 4 minutes.
--- next page
Dry for at least 30 minutes.
`,
      `
=== devices/probe.ifu.yaml
kind: device
id: pale-probe
statements:
  s1: {doc: PP-4, rev: "2", page: 3, quote: "Do not use saline."}
not:
  - {what: saline, src: s1}
                        ^^ The file of PP-4 rev 2 has changed since this was read from it. Read page 3 again.
=== documents/pp-4-2.ifu.yaml
kind: document
id: pp-4-2
doc: PP-4
rev: "2"
file: pp-4-2.pdf
checksum: "aa00000000000000000000000000000000000000000000000000000000000001"
=== documents/pp-4-2.pdf
(locked)
sha256: bb00000000000000000000000000000000000000000000000000000000000002
`,
      `
=== packaging/pouch.ifu.yaml
kind: packaging
id: pale-pouch
mass_max: 1.5 kg
mass_src: s1
          ^^ The file of PP-4 rev 2 has changed since "mass" was read from it. Read page 1 again: the quoted words still stand there.
statements:
  s1: {doc: PP-4, rev: "2", page: 1, quote: "Contents up to 1.5 kg."}
=== documents/pp-4-2.ifu.yaml
kind: document
id: pp-4-2
doc: PP-4
rev: "2"
file: pp-4-2.pdf
checksum: "aa00000000000000000000000000000000000000000000000000000000000001"
=== documents/pp-4-2.pdf
sha256: bb00000000000000000000000000000000000000000000000000000000000002
Contents up to 1.5 kg.
`,
    ],
    good: [
      `
=== devices/forceps.ifu.yaml
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 1, quote: "Dry for at least 20 minutes."}
drying: {time: {at_least: 20 min, src: s1}}
=== documents/pf-1-a.ifu.yaml
kind: document
id: pf-1-a
doc: PF-1
rev: A
file: pf-1-a.pdf
checksum: "bb00000000000000000000000000000000000000000000000000000000000002"
=== documents/pf-1-a.pdf
sha256: bb00000000000000000000000000000000000000000000000000000000000002
Dry for at least 20 minutes.
`,
      `
=== devices/forceps.ifu.yaml
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: B, page: 1, quote: "Dry for at least 20 minutes."}
drying: {time: {at_least: 20 min, src: s1}}
=== documents/pf-1-a.ifu.yaml
kind: document
id: pf-1-a
doc: PF-1
rev: A
file: pf-1-a.pdf
checksum: "aa00000000000000000000000000000000000000000000000000000000000001"
=== documents/pf-1-a.pdf
sha256: bb00000000000000000000000000000000000000000000000000000000000002
Dry for at least 30 minutes.
`,
    ],
  },
});

/** `mass`, where the citation stands beside it as `mass_src`. */
function what(at: Place): string {
  return at.key === 'src' ? 'this' : `"${fieldName(at).replace(/ src$/, '')}"`;
}

type Quoting = AnyEntity & { readonly statements?: Table<Statement> };

/** How it stands with a statement whose file has changed; undefined when it has not. */
function endOf(statement: Statement, view: LibraryView): keyof typeof ends | undefined {
  const kept = keptDocumentOf(statement, view);
  if (kept === undefined || !hasChanged(kept)) return undefined;
  if (kept.file.state !== 'read' || statement.quote === undefined) return 'open';
  const page = statement.page?.problem === undefined ? statement.page?.value : undefined;
  const { stands } = placeOf(statement.quote.text, page, kept.file);
  return stands === 'unknown' ? 'open' : stands === 'there' ? 'there' : 'gone';
}

interface Value {
  readonly at: Place;
  readonly src: Citation | undefined;
}

/** Every requirement with the citation that speaks for it, and every other thing that cites by itself. */
function valuesOf(entity: AnyEntity): readonly Value[] {
  const { requirements, citations } = partsOf(entity);
  const spoken = new Set(requirements.map(({ src }) => src));
  return [
    ...requirements.map(({ requirement, src }) => ({ at: requirement.at, src })),
    ...citations.filter((citation) => !spoken.has(citation)).map((citation) => ({ at: citation.at, src: citation })),
  ];
}
