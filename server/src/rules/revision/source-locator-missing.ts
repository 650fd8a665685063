import { counted } from '../../base/words.ts';
import type { LibraryView } from '../../library/view.ts';
import type { Statement } from '../../model/entities/statement.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import type { Citation, Table } from '../../model/node.ts';
import { sayingOf } from '../../model/saying.ts';
import type { Kind } from '../../schema/kinds.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { documentName } from '../support/documents.ts';
import { partsOf } from '../support/entity-parts.ts';

const message = {
  nowhere: (name: string) =>
    `This passage does not say where in ${name} it stands: give the page, the section or the figure.`,
  page: (name: string) => `This passage does not say on which page of ${name} it stands.`,
  citation: (name: string) => `This source does not say where in ${name} it stands: give the page or the clause.`,
  beyond: (page: number, name: string, pages: number) =>
    `Page ${page} is cited, but ${name} has only ${counted(pages, 'page')}.`,
};

const kinds = [
  'device',
  'packaging',
  'chemistry',
  'washer',
  'ultrasonic',
  'sterilizer',
  'monitor',
  'procedure',
  'response',
] as const satisfies readonly Kind[];

export const rule = defineRule({
  id: 'source-locator-missing',
  stage: 'revision',
  severity: 'warning',
  settledBy: 'educator',
  why: 'Whoever asks on what a step rests wants to see the page.',
  source: 'practice',
  kinds,
  check(entity: AnyEntity & { readonly statements?: Table<Statement> }, context) {
    for (const { value } of entity.statements?.rows.values() ?? []) checkStatement(value, context);
    for (const citation of partsOf(entity).citations) checkCitation(citation, context);
  },
  examples: {
    bad: [
      `
=== devices/scissors.ifu.yaml
kind: device
id: takeapart-scissors
statements:
  s1: {doc: DW-REP-077, rev: D, section: "4.2 Sterilization", quote: "Pre-vacuum 132 °C"}
  ^^ This passage does not say on which page of DW-REP-077 rev D it stands.
=== documents/dw.ifu.yaml
kind: document
id: dw-rep-077-d
doc: DW-REP-077
rev: D
pages: 12
`,
      `
kind: device
id: takeapart-scissors
statements:
  s1: {doc: DW-REP-077, rev: D, quote: "Pre-vacuum 132 °C"}
  ^^ This passage does not say where in DW-REP-077 rev D it stands: give the page, the section or the figure.
`,
      `
=== devices/scissors.ifu.yaml
kind: device
id: takeapart-scissors
statements:
  s1: {doc: DW-REP-077, rev: D, page: 31, quote: "Pre-vacuum 132 °C"}
                                      ^^ Page 31 is cited, but DW-REP-077 rev D has only 12 pages.
=== documents/dw.ifu.yaml
kind: document
id: dw-rep-077-d
doc: DW-REP-077
rev: D
pages: 12
`,
      `
kind: device
id: pale-probe
drying:
  time: {at_least: 20 min, src: {doc: PP-4}}
                           ^^^ This source does not say where in PP-4 it stands: give the page or the clause.
`,
    ],
    good: [
      `
kind: device
id: takeapart-scissors
statements:
  s1: {doc: DW-REP-077, rev: D, section: "4.2 Sterilization", quote: "Pre-vacuum 132 °C"}
  s2: {doc: DW-REP-077, rev: D, figure: "3", quote: "[pictogram: no immersion]"}
`,
      `
=== devices/scissors.ifu.yaml
kind: device
id: takeapart-scissors
statements:
  s1: {doc: DW-REP-077, rev: D, page: 12, quote: "Pre-vacuum 132 °C"}
=== documents/dw.ifu.yaml
kind: document
id: dw-rep-077-d
doc: DW-REP-077
rev: D
pages: 12
`,
    ],
  },
});

function checkStatement(statement: Statement, { view, report }: RuleContext): void {
  const { page, section, figure, doc } = statement;
  const says = [sayingOf(statement, statement.at)];
  if (page === undefined && section === undefined && figure === undefined) {
    report({
      at: statement.at,
      span: statement.at.keySpan ?? statement.at.span,
      message: message.nowhere(documentName(statement)),
      says,
    });
  }
  const pages = pagesOf(doc?.text, statement.rev?.text, view);
  if (page === undefined && pages !== undefined && (section !== undefined || figure !== undefined)) {
    report({
      at: statement.at,
      span: statement.at.keySpan ?? statement.at.span,
      message: message.page(documentName(statement)),
      says,
      related: [{ at: pages.at, note: 'how many pages it has' }],
    });
  }
  if (page === undefined || page.problem !== undefined || pages === undefined || page.value <= pages.value) return;
  report({
    at: page.at,
    message: message.beyond(page.value, documentName(statement), pages.value),
    says,
    gap: `${counted(page.value - pages.value, 'page')} too far`,
    related: [{ at: pages.at, note: 'how many pages it has' }],
  });
}

function checkCitation(citation: Citation, { report }: RuleContext): void {
  const { inline } = citation;
  if (inline?.doc === undefined || inline.page !== undefined || inline.text !== undefined) return;
  report({ at: citation.at, message: message.citation(documentName(inline)) });
}

function pagesOf(doc: string | undefined, rev: string | undefined, view: LibraryView) {
  if (doc === undefined) return undefined;
  const pages = view.revisions(doc).find((document) => document.rev?.text === rev)?.pages;
  return pages?.problem === undefined ? pages : undefined;
}
