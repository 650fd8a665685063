import type { LibraryView } from '../../library/view.ts';
import type { Source } from '../../model/entities/source.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { List, Text } from '../../model/node.ts';
import type { CoverSet } from '../../quantity/covers.ts';
import { coverSetOf, parseCoverPattern, setCovers, uncoveredNumber } from '../../quantity/covers.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import type { RegisteredDocument } from '../support/documents.ts';
import { describesDevice, documentName, registeredOf } from '../support/documents.ts';
import { listed } from '../support/lists.ts';
import { compareSerials } from '../support/serials.ts';

const message = {
  notCovered: (number: string, documents: string) =>
    `The catalogue number ${number} is not among those that ${documents} is for.`,
  excluded: (number: string, document: string) => `The catalogue number ${number} is excluded by ${document}.`,
  serials: (document: string, to: string, from: string) =>
    `${document} ends with serial number ${to}, and this file is for instruments from ${from} on.`,
};

export const rule = defineRule({
  id: 'document-does-not-cover',
  stage: 'revision',
  severity: 'error',
  settledBy: 'educator',
  why: 'Instruments that look alike can have different lumens and different limits.',
  source: 'standard',
  kinds: ['device'],
  check(device, context) {
    const cited = citedDocuments(device, context.view);
    checkNumbers(device, cited, context);
    checkSerials(device, cited, context);
  },
  examples: {
    bad: [
      `
=== devices/q150.ifu.yaml
kind: device
id: q150
covers: ["Q-150"]
         ^^^^^^^ The catalogue number Q-150 is excluded by QM-10 rev B.
sources: [{doc: QM-10, rev: B, role: device-specific}]
=== documents/qm-10-b.ifu.yaml
kind: document
id: qm-10-b
doc: QM-10
rev: B
covers: ["Q-100..Q-180"]
excludes: ["Q-150"]
`,
      `
=== devices/graspers.ifu.yaml
kind: device
id: graspers
covers: ["45-1xx", "45-210"]
                   ^^^^^^^^ The catalogue number 45-210 is not among those that SK-2 rev A is for.
sources: [{doc: SK-2, rev: A}]
=== documents/sk-2-a.ifu.yaml
kind: document
id: sk-2-a
doc: SK-2
rev: A
covers: ["45-100..45-199"]
`,
      `
=== devices/handpiece.ifu.yaml
kind: device
id: handpiece
applies_from: TW-00901
sources: [{doc: TW-2, rev: A}]
                ^^^^ TW-2 rev A ends with serial number TW-00900, and this file is for instruments from TW-00901 on.
=== documents/tw-2-a.ifu.yaml
kind: document
id: tw-2-a
doc: TW-2
rev: A
serial_to: TW-00900
`,
    ],
    good: [
      `
=== devices/graspers.ifu.yaml
kind: device
id: graspers
covers: ["45-1xx", "45-210"]
sources: [{doc: SK-2, rev: A}, {doc: SK-3, rev: A}]
=== documents/sk-2-a.ifu.yaml
kind: document
id: sk-2-a
doc: SK-2
rev: A
covers: ["45-100..45-199"]
=== documents/sk-3-a.ifu.yaml
kind: document
id: sk-3-a
doc: SK-3
rev: A
covers: ["45-200..45-299"]
`,
      `
=== devices/forceps.ifu.yaml
kind: device
id: forceps
covers: ["Q-150"]
sources: [{doc: QM-9, rev: B}]
=== documents/qm-9-b.ifu.yaml
kind: document
id: qm-9-b
doc: QM-9
rev: B
`,
    ],
  },
});

interface Cited {
  readonly source: Source;
  readonly document: RegisteredDocument;
}

function citedDocuments(device: EntityOf['device'], view: LibraryView): readonly Cited[] {
  const cited: Cited[] = [];
  for (const source of device.sources?.items ?? []) {
    const document = describesDevice(source) ? registeredOf(source, view) : undefined;
    if (document !== undefined) cited.push({ source, document });
  }
  return cited;
}

/** A number needs one of the documents. A document that lists no numbers says nothing about them, and then none is missed. */
function checkNumbers(device: EntityOf['device'], cited: readonly Cited[], { report }: RuleContext): void {
  if (cited.length === 0 || cited.some(({ document }) => document.covers === undefined)) return;
  const given = cited.flatMap(({ document }) => [...coverSetOf(texts(document.covers), texts(document.excludes))]);
  for (const entry of device.covers?.items ?? []) {
    const asked = parseCoverPattern(entry.text);
    const number = 'fault' in asked ? undefined : firstMissing(asked, given, texts(device.excludes));
    if (number === undefined) continue;
    const excluding = cited.find(({ document }) => setCovers(coverSetOf(texts(document.excludes), []), number));
    report({
      at: entry.at,
      message:
        excluding === undefined
          ? message.notCovered(number, listed(cited.map(({ document }) => documentName(document))))
          : message.excluded(number, documentName(excluding.document)),
      related: cited.map(({ document }) => ({
        at: document.covers?.at ?? document.at,
        note: `what ${documentName(document)} is for`,
      })),
    });
  }
}

function firstMissing(asked: CoverSet, given: CoverSet, leftOut: readonly string[]): string | undefined {
  return uncoveredNumber(asked, [...given, ...coverSetOf(leftOut, [])]);
}

function checkSerials(device: EntityOf['device'], cited: readonly Cited[], { report }: RuleContext): void {
  const from = device.applies_from?.text;
  for (const { source, document } of cited) {
    const to = document.serial_to;
    if (from === undefined || to === undefined || compareSerials(to.text, from) !== 'before') continue;
    report({
      at: source.doc?.at ?? source.at,
      message: message.serials(documentName(document), to.text, from),
      related: [{ at: to.at, note: 'last serial number it is for' }],
    });
  }
}

function texts(list: List<Text> | undefined): readonly string[] {
  return list?.items.map((item) => item.text) ?? [];
}
