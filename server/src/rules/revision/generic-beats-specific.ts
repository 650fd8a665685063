import type { Overridden } from '../../model/entities/device.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Requirement } from '../../model/node.ts';
import { pathOf } from '../../model/node.ts';
import { sayingsOf } from '../../model/saying.ts';
import { intersect, isEmpty } from '../../quantity/interval.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { partsOf } from '../support/entity-parts.ts';
import { keepOnly } from '../support/flow-edits.ts';
import { demandInWords, demandOf } from '../support/limits-of.ts';

const message = {
  specific: (generic: string, specific: string) =>
    `This value comes from the generic manual${generic}, while the document for this device states ${specific}. The page for the device goes first.`,
  overridden:
    'This value cites the generic manual, although "overrides" says that the document for this device takes its place.',
  does: (value: string) => `The file uses ${value}.`,
};

export const rule = defineRule({
  id: 'generic-beats-specific',
  stage: 'revision',
  severity: 'error',
  settledBy: 'educator',
  why: 'The page for the device knows about its lumen, its seal and its glue; the generic manual does not.',
  source: 'practice',
  fix: 'Puts the statement of the device’s own document in place of the generic one.',
  kinds: ['device'],
  check(device, context) {
    for (const { requirement } of partsOf(device).requirements) {
      if (requirement.specific !== undefined) besideSpecific(requirement, requirement.specific, device, context);
    }
    for (const overridden of device.overrides?.items ?? []) stillGeneric(overridden, device, context);
  },
  examples: {
    bad: [
      `
kind: device
id: cannulated-driver
sources: [{doc: GEN-1, role: generic}, {doc: SPEC-9, role: device-specific}]
sterilization:
  any_of:
    - id: pv132
      exposure: {stated: 3 min, src: {doc: GEN-1, page: 12}, specific: {stated: 4 min, doc: SPEC-9}}
      ^^^^^^^^ This value comes from the generic manual (3 min (no bound word)), while the document for this device states 4 min (no bound word). The page for the device goes first.
`,
      `
kind: device
id: drill-guide
sources: [{doc: GEN-1, rev: "4", role: generic}, {doc: DG-2, rev: A, role: device-specific}]
overrides:
  - {field: manual.soak, generic: s1, specific: s2}
manual:
  soak: {at_most: 30 min, src: s1}
                               ^^ This value cites the generic manual, although "overrides" says that the document for this device takes its place.
statements:
  s1: {doc: GEN-1, rev: "4", page: 8, quote: "Soak for no longer than 30 minutes."}
  s2: {doc: DG-2, rev: A, page: 2, quote: "Soak for no longer than 10 minutes."}
`,
    ],
    good: [
      `
kind: device
id: drill-guide
sources: [{doc: GEN-1, rev: "4", role: generic}, {doc: DG-2, rev: A, role: device-specific}]
overrides:
  - {field: manual.soak, generic: s1, specific: s2}
manual:
  soak: {at_most: 10 min, src: s2}
statements:
  s1: {doc: GEN-1, rev: "4", page: 8, quote: "Soak for no longer than 30 minutes."}
  s2: {doc: DG-2, rev: A, page: 2, quote: "Soak for no longer than 10 minutes."}
`,
      `
kind: device
id: drill-guide
sources: [{doc: GEN-1, rev: "4", role: generic}, {doc: DG-2, rev: A, role: device-specific}]
manual:
  soak: {at_most: 30 min, src: s1}
statements:
  s1: {doc: GEN-1, rev: "4", page: 8, quote: "Soak for no longer than 30 minutes."}
`,
    ],
  },
});

function besideSpecific(
  generic: Requirement,
  specific: Requirement,
  device: EntityOf['device'],
  { report }: RuleContext,
): void {
  const value = demandInWords(generic);
  const edits = keepOnly(generic, specific);
  const gap = gapOf(generic, specific);
  report({
    at: generic.at,
    message: message.specific(value === '' ? '' : ` (${value})`, demandInWords(specific) || 'its own'),
    says: [...sayingsOf(device, specific.src), ...sayingsOf(device, generic.src)],
    ...(value !== '' && { does: message.does(value) }),
    ...(gap !== undefined && { gap }),
    related: [{ at: specific.at, note: 'the statement for this device' }],
    ...(edits !== undefined && { fixes: [{ title: 'Use the statement of the device’s own document', edits }] }),
  });
}

function gapOf(generic: Requirement, specific: Requirement): string | undefined {
  const one = demandOf(generic);
  const other = demandOf(specific);
  if (one === undefined || other === undefined || !isEmpty(intersect(one, other))) return undefined;
  return `${demandInWords(generic)} against ${demandInWords(specific)}`;
}

function stillGeneric(overridden: Overridden, device: EntityOf['device'], { report }: RuleContext): void {
  const field = overridden.field?.text;
  const generic = new Set(overridden.generic?.statements.map((statement) => statement.text));
  const specific = new Set(overridden.specific?.statements.map((statement) => statement.text));
  if (field === undefined || generic.size === 0) return;
  for (const { requirement } of partsOf(device).requirements) {
    const path = pathOf(requirement.at);
    const cited = requirement.src?.statements ?? [];
    if (requirement.src === undefined || (path !== field && !path.endsWith(`.${field}`))) continue;
    if (!cited.some((one) => generic.has(one.text)) || cited.some((one) => specific.has(one.text))) continue;
    report({
      at: requirement.src.at,
      message: message.overridden,
      says: [...sayingsOf(device, overridden.specific), ...sayingsOf(device, requirement.src)],
      does: message.does(demandInWords(requirement)),
      related: [{ at: overridden.at, note: 'what takes its place' }],
    });
  }
}
