import type { IsoDate } from '../../base/brand.ts';
import type { LibraryView } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { rootOfEntity } from '../../model/entity.ts';
import type { Requirement } from '../../model/node.ts';
import { pathOf } from '../../model/node.ts';
import { sayingsOf, statementsOf } from '../../model/saying.ts';
import { intersectAll, isEmpty } from '../../quantity/interval.ts';
import { defineRule } from '../rule.ts';
import { isInForce } from '../support/documents.ts';
import { partsOf } from '../support/entity-parts.ts';
import type { Demand } from '../support/limits-of.ts';
import { demandInWords, demandOf } from '../support/limits-of.ts';
import { listed } from '../support/lists.ts';
import { marketsMeet } from '../support/markets.ts';
import { faultsOfResponse } from '../support/response-faults.ts';

const message = {
  conflict: (values: string) =>
    `Two documents in force contradict each other here: ${values}. No cycle can follow both. Ask the maker which one holds.`,
};

export const rule = defineRule({
  id: 'documents-conflict-unresolved',
  stage: 'revision',
  severity: 'error',
  settledBy: 'manufacturer',
  why: 'Choosing one of two instructions in silence is deciding for the manufacturer.',
  source: 'standard',
  kinds: ['device'],
  check(device, { view, today, report }) {
    for (const { requirement } of partsOf(device).requirements) {
      if (requirement.conflict === undefined) continue;
      const sides = sidesInForce(requirement, device, view, today);
      if (sides.length < 2 || !isEmpty(intersectAll(sides.map(({ demand }) => demand)))) continue;
      if (isAnswered(device, requirement, view, today)) continue;
      const values = listed(sides.map(({ said }) => `${demandInWords(said)} (${numberOf(said, device)})`));
      report({
        at: requirement.at,
        message: message.conflict(values),
        says: sides.flatMap(({ said }) => sayingsOf(device, said.src)),
        gap: sides.map(({ said }) => demandInWords(said)).join(' against '),
        related: sides.map(({ said }) => ({ at: said.at, note: `as ${numberOf(said, device)} states it` })),
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: bowl-reamer
sterilization:
  any_of:
    - id: pv132
      modality: steam-prevac
      dry: {conflict: [{stated: 20 min, src: {doc: A1, page: 3}}, {stated: 40 min, src: {doc: A2, page: 7}}]}
      ^^^ Two documents in force contradict each other here: 20 min (no bound word) (A1) and 40 min (no bound word) (A2). No cycle can follow both. Ask the maker which one holds.
`,
      `
=== devices/shaver.ifu.yaml
kind: device
id: shaver-handle
manual:
  soak:
  ^^^^ Two documents in force contradict each other here: at most 5 min (SH-1) and at least 10 min (SH-GEN). No cycle can follow both. Ask the maker which one holds.
    conflict:
      - {at_most: 5 min, src: s1}
      - {at_least: 10 min, src: s2}
statements:
  s1: {doc: SH-1, rev: B, page: 4, quote: "Do not soak longer than 5 minutes."}
  s2: {doc: SH-GEN, rev: "7", page: 11, quote: "Soak for at least 10 minutes."}
=== responses/r7.ifu.yaml
kind: response
id: r7
date: 2020-05-04
from: regulatory-affairs
about: shaver-handle
field: manual.soak
permits: "5 min"
expires: 2022-05-04
`,
    ],
    good: [
      `
=== devices/shaver.ifu.yaml
kind: device
id: shaver-handle
manual:
  soak: {conflict: [{at_most: 5 min, src: {doc: SH-1, page: 4}}, {at_least: 10 min, src: {doc: SH-GEN, page: 11}}]}
=== responses/r7.ifu.yaml
kind: response
id: r7
date: 2024-05-04
from: regulatory-affairs
about: shaver-handle
field: manual.soak
permits: "At most 5 min; the general manual will be corrected."
`,
      `
kind: device
id: bowl-reamer
drying:
  time: {conflict: [{at_least: 20 min, src: {doc: A1, page: 3}}, {at_least: 30 min, src: {doc: A2, page: 7}}]}
`,
      `
=== devices/reamer.ifu.yaml
kind: device
id: bowl-reamer
drying:
  time: {conflict: [{stated: 20 min, src: {doc: A1, rev: A}}, {stated: 40 min, src: {doc: A2, rev: A}}]}
=== documents/a1.ifu.yaml
kind: document
id: a1
doc: A1
rev: A
market: [EU]
=== documents/a2.ifu.yaml
kind: document
id: a2
doc: A2
rev: A
market: [US]
`,
    ],
  },
});

interface Side {
  readonly said: Requirement;
  readonly demand: Demand;
}

/** The values that still stand against each other: of documents in force, for one market. */
function sidesInForce(
  requirement: Requirement,
  device: EntityOf['device'],
  view: LibraryView,
  today: IsoDate,
): readonly Side[] {
  const sides: Side[] = [];
  const documents: EntityOf['document'][] = [];
  for (const said of requirement.conflict?.items ?? []) {
    const demand = demandOf(said);
    const document = documentOf(said, device, view);
    if (demand === undefined || (document !== undefined && !isInForce(document, today))) continue;
    const elsewhere = documents.some(
      (other) => document !== undefined && !marketsMeet(marketOf(other), marketOf(document)),
    );
    if (elsewhere) continue;
    if (document !== undefined) documents.push(document);
    sides.push({ said, demand });
  }
  return sides;
}

/** Number of the document that states it. */
function numberOf(said: Requirement, device: EntityOf['device']): string {
  const statement = statementsOf(device, said.src)[0];
  return said.doc?.text ?? said.src?.inline?.doc?.text ?? statement?.doc?.text ?? 'a document without number';
}

function marketOf(document: EntityOf['document']): readonly string[] | undefined {
  return document.market?.items.map((item) => item.text);
}

function documentOf(
  said: Requirement,
  device: EntityOf['device'],
  view: LibraryView,
): EntityOf['document'] | undefined {
  const statement = statementsOf(device, said.src)[0];
  const number = said.doc ?? said.src?.inline?.doc ?? statement?.doc;
  const revision = (said.src?.inline?.rev ?? statement?.rev)?.text;
  if (number === undefined) return undefined;
  return view.revisions(number.text).find((one) => revision === undefined || one.rev?.text === revision);
}

function isAnswered(device: EntityOf['device'], requirement: Requirement, view: LibraryView, today: IsoDate): boolean {
  const path = pathOf(requirement.at);
  return view
    .users('device', rootOfEntity(device).id, 'response')
    .some(
      (response) =>
        response.field !== undefined &&
        isAbout(path, response.field.text) &&
        faultsOfResponse(response, today).length === 0,
    );
}

function isAbout(path: string, field: string): boolean {
  return path === field || path.endsWith(`.${field}`);
}
