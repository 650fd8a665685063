import { counted } from '../../base/words.ts';
import type { Source } from '../../model/entities/source.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { sayingOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';

type Device = EntityOf['device'];

const message = {
  cited: (role: string, doc: string, statements: number) =>
    `${counted(statements, 'statement')} of this file ${statements === 1 ? 'is' : 'are'} taken from ${role} (${doc}), which is not the maker’s instruction. Ask the maker for the document.`,
  only: (role: string, doc: string) =>
    `This file rests on ${role} (${doc}) alone, which is not the maker’s instruction. Ask the maker for the document.`,
};

export const rule = defineRule({
  id: 'encoded-from-secondary-source',
  stage: 'source',
  severity: 'warning',
  settledBy: 'manufacturer',
  why: 'Only the maker’s instruction is the instruction.',
  source: 'practice',
  kinds: ['device'],
  check(device, { report }) {
    for (const source of device.sources?.items ?? []) {
      const role = secondaryRoles.get(source.role?.text ?? '');
      const doc = source.doc?.text ?? 'no number';
      if (source.role === undefined || role === undefined) continue;
      const statements = statementsFrom(source, device);
      if (statements.length === 0 && hasOtherSource(device)) continue;
      report({
        at: source.role.at,
        message: statements.length > 0 ? message.cited(role, doc, statements.length) : message.only(role, doc),
        says: statements.slice(0, 1).map((statement) => sayingOf(statement, statement.at)),
        related: statements.slice(1).map(({ at }) => ({ at, note: 'taken from it too' })),
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: pale-forceps
sources: [{doc: SALES-SHEET-2, rev: "-", role: representative-email}]
                                               ^^^^^^^^^^^^^^^^^^^^ This file rests on the letter of a representative (SALES-SHEET-2) alone, which is not the maker’s instruction. Ask the maker for the document.
`,
      `
kind: device
id: pale-forceps
sources:
  - {doc: PF-1, rev: A, role: device-specific}
  - {doc: PF-WEB, role: website}
                        ^^^^^^^ 1 statement of this file is taken from a website (PF-WEB), which is not the maker’s instruction. Ask the maker for the document.
statements:
  s1: {doc: PF-1, rev: A, page: 4, quote: "Dry at least 20 minutes."}
  s2: {doc: PF-WEB, section: Care, quote: "Steam at 132 °C."}
drying: {time: {at_least: 20 min, src: s1}}
`,
    ],
    good: [
      `
kind: device
id: pale-forceps
sources:
  - {doc: PF-1, rev: A, role: device-specific}
  - {doc: PF-CAT, rev: "2024", role: catalogue, note: catalogue numbers only}
statements:
  s1: {doc: PF-1, rev: A, page: 4, quote: "Dry at least 20 minutes."}
drying: {time: {at_least: 20 min, src: s1}}
`,
      `
kind: device
id: pale-forceps
sources:
  - {doc: PF-0, rev: C, role: generic}
  - {doc: CASE-2, rev: A, role: case-leaflet}
`,
    ],
  },
});

/** Documents that are not the maker's instruction, in words. */
const secondaryRoles: ReadonlyMap<string, string> = new Map([
  ['catalogue', 'a catalogue'],
  ['website', 'a website'],
  ['representative-email', 'the letter of a representative'],
  ['photo', 'a photograph'],
  ['other-department', 'the list of another department'],
]);

function statementsFrom(source: Source, device: Device) {
  const statements = [...(device.statements?.rows.values() ?? [])].map((row) => row.value);
  return statements.filter(({ doc, rev }) => {
    const isSameRevision = source.rev === undefined || rev === undefined || rev.text === source.rev.text;
    return doc !== undefined && doc.text === source.doc?.text && isSameRevision;
  });
}

function hasOtherSource(device: Device): boolean {
  return device.sources?.items.some(({ role }) => role === undefined || !secondaryRoles.has(role.text)) === true;
}
