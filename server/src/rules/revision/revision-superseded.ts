import type { IsoDate } from '../../base/brand.ts';
import { counted } from '../../base/words.ts';
import type { LibraryView } from '../../library/view.ts';
import type { Source } from '../../model/entities/source.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import type { List } from '../../model/node.ts';
import type { Kind } from '../../schema/kinds.ts';
import { defineRule } from '../rule.ts';
import type { RegisteredDocument } from '../support/documents.ts';
import { documentName, isInForce, registeredOf } from '../support/documents.ts';
import { partsOf } from '../support/entity-parts.ts';

const message = {
  replaced: (cited: string, newer: string) =>
    `${cited} is cited here, but revision ${newer} is the one in force. Compare the two before going on.`,
  noLonger: (cited: string, status: string) =>
    `${cited} is cited here, but it is ${status} and no newer revision is on file. Ask for the one in force.`,
  does: (statements: number) =>
    `${counted(statements, 'passage')} of this file ${statements === 1 ? 'is' : 'are'} taken from it.`,
};

type Sourced = AnyEntity & { readonly sources?: List<Source> };
const kinds = [
  'device',
  'packaging',
  'chemistry',
  'washer',
  'ultrasonic',
  'sterilizer',
  'monitor',
] as const satisfies readonly Kind[];

export const rule = defineRule({
  id: 'revision-superseded',
  stage: 'revision',
  severity: 'error',
  settledBy: 'educator',
  why: 'The old page may say the opposite of the new one.',
  source: 'standard',
  kinds,
  check(entity: Sourced, { view, today, report }) {
    for (const source of entity.sources?.items ?? []) {
      if (source.doc === undefined || source.rev === undefined) continue;
      const cited = registeredOf(source, view);
      const newer = successorOf(source, cited, view, today);
      if (newer === undefined && !isOver(cited, source, view, today)) continue;
      const statements = citing(entity, source.doc.text, source.rev.text);
      report({
        at: source.rev.at,
        message:
          newer === undefined
            ? message.noLonger(documentName(source), cited?.status?.text ?? 'superseded')
            : message.replaced(documentName(source), newer.rev?.text ?? ''),
        ...(statements > 0 && { does: message.does(statements) }),
        ...(newer !== undefined && { related: [{ at: newer.at, note: 'the revision in force' }] }),
      });
    }
  },
  examples: {
    bad: [
      `
=== devices/scissors.ifu.yaml
kind: device
id: takeapart-scissors
sources: [{doc: DW-REP-077, rev: C, role: device-specific}]
                                 ^ DW-REP-077 rev C is cited here, but revision D is the one in force. Compare the two before going on.
=== documents/dw-rep-077-d.ifu.yaml
kind: document
id: dw-rep-077-d
doc: DW-REP-077
rev: D
status: current
supersedes: C
`,
      `
=== packaging/container.ifu.yaml
kind: packaging
id: container-small
type: rigid-container
sources:
  - doc: RC-12
    rev: "2"
         ^^^ RC-12 rev 2 is cited here, but it is withdrawn and no newer revision is on file. Ask for the one in force.
=== documents/rc-12-2.ifu.yaml
kind: document
id: rc-12-2
doc: RC-12
rev: "2"
status: withdrawn
`,
    ],
    good: [
      `
=== devices/scissors.ifu.yaml
kind: device
id: takeapart-scissors
sources: [{doc: DW-REP-077, rev: D}]
=== documents/dw-rep-077-d.ifu.yaml
kind: document
id: dw-rep-077-d
doc: DW-REP-077
rev: D
status: current
supersedes: C
=== documents/dw-rep-077-e.ifu.yaml
kind: document
id: dw-rep-077-e
doc: DW-REP-077
rev: E
status: current
effective: 2099-01-01
supersedes: D
`,
      `
=== devices/old-handpiece.ifu.yaml
kind: device
id: handpiece-to-serial-900
applies_to: "900"
sources: [{doc: TW-2, rev: A}]
=== documents/tw-2-a.ifu.yaml
kind: document
id: tw-2-a
doc: TW-2
rev: A
status: current
serial_to: "900"
=== documents/tw-2-b.ifu.yaml
kind: document
id: tw-2-b
doc: TW-2
rev: B
status: current
serial_from: "901"
`,
    ],
  },
});

/** The revision that took the place of the cited one and is in force today. Two revisions for two ranges of serial numbers are both in force. */
function successorOf(
  source: Source,
  cited: RegisteredDocument | undefined,
  view: LibraryView,
  today: IsoDate,
): RegisteredDocument | undefined {
  const others = view
    .revisions(source.doc?.text ?? '')
    .filter((one) => one.rev?.text !== source.rev?.text && isInForce(one, today));
  const replaced = new Set([source.rev?.text]);
  const chain = new Set<RegisteredDocument>();
  for (let grown = true; grown; ) {
    grown = false;
    for (const one of view.revisions(source.doc?.text ?? '')) {
      if (chain.has(one) || one.supersedes === undefined || !replaced.has(one.supersedes.text)) continue;
      chain.add(one);
      replaced.add(one.rev?.text);
      grown = true;
    }
  }
  const direct = others.find((one) => chain.has(one));
  if (direct !== undefined) return direct;
  return cited === undefined || cited.status?.text === 'superseded' || cited.status?.text === 'withdrawn'
    ? others[0]
    : undefined;
}

function isOver(cited: RegisteredDocument | undefined, source: Source, view: LibraryView, today: IsoDate): boolean {
  if (cited?.status?.text === 'withdrawn') return true;
  if (cited?.status?.text !== 'superseded') return false;
  // A replacement that is registered and holds only from a later day: until then the old one is followed.
  return !view
    .revisions(source.doc?.text ?? '')
    .some((one) => one.supersedes?.text === source.rev?.text && (one.effective?.text ?? '') > today);
}

function citing(entity: AnyEntity, doc: string, rev: string): number {
  let count = 0;
  for (const record of partsOf(entity).records) {
    if (!('quote' in record)) continue;
    const { doc: from, rev: of } = record as { doc?: { text: string }; rev?: { text: string } };
    if (from?.text === doc && of?.text === rev) count++;
  }
  return count;
}
