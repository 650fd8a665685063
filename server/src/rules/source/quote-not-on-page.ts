import { counted } from '../../base/words.ts';
import type { Statement } from '../../model/entities/statement.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import type { Table, Text } from '../../model/node.ts';
import { sayingOf } from '../../model/saying.ts';
import { nearestIn, numbersDiffer, searchQuote } from '../../quantity/prose/page-search.ts';
import type { Report } from '../rule.ts';
import { defineRule } from '../rule.ts';
import type { ReadFile } from '../support/kept-documents.ts';
import { isScan, keptDocumentOf, pagesNumbered, placeOf, quotingKinds, readyPage } from '../support/kept-documents.ts';
import { listed } from '../support/lists.ts';

const message = {
  nowhere: (name: string, nearest: string) =>
    `These words do not stand in ${name}, here or on any other page. ${nearest}`,
  number: (page: string, name: string, nearest: string) =>
    `Page ${page} of ${name} reads differently, in its numbers: "${nearest}"`,
  elsewhere: (page: string, name: string, found: readonly string[]) =>
    `These words do not stand on page ${page} of ${name}, but on page ${listed(found)}.`,
  beyond: (page: string, name: string, pages: number) =>
    `${name} has ${counted(pages, 'page')} and none with the number ${page}; these words stand on none of them.`,
  picture: (page: string, name: string) =>
    `Page ${page} of ${name} is a picture without text, so these words could not be looked for.`,
  nearest: (page: string, text: string) => `The nearest, on page ${page}: "${text}"`,
  nothing: 'Nothing there comes near to them.',
};

/** A stretch that shares fewer of its words says nothing about the quote. */
const leastShare = 0.5;
/** A stretch that shares so many is meant to be the same sentence: another number in it is a slip or a changed page. */
const sameSentence = 0.7;
const longestShown = 240;

export const rule = defineRule({
  id: 'quote-not-on-page',
  stage: 'source',
  severity: 'error',
  settledBy: 'educator',
  why: 'A quote is only worth what it says if anybody who opens the document finds it there, word for word.',
  source: 'logic',
  fix: 'Puts the page on which the words do stand.',
  kinds: quotingKinds,
  check(entity: AnyEntity & { readonly statements?: Table<Statement> }, { view, report }) {
    for (const { value: statement } of entity.statements?.rows.values() ?? []) {
      const kept = keptDocumentOf(statement, view);
      if (kept?.file.state !== 'read' || isScan(kept.file) || statement.quote === undefined) continue;
      const found = reportOn(statement, statement.quote, kept.name, kept.file);
      if (found !== undefined) report({ ...found, says: [sayingOf(statement, statement.at)] });
    }
  },
  examples: {
    bad: [
      `
=== devices/forceps.ifu.yaml
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 1, quote: "Expose at 132 °C for 3 minutes."}
                                          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ Page 1 of pf-1-a.pdf reads differently, in its numbers: "Expose at 132 °C for 4 minutes."
  s2: {doc: PF-1, rev: A, page: 1, quote: "Dry for at least 20 minutes."}
                                          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ These words do not stand on page 1 of pf-1-a.pdf, but on page 2.
  s3: {doc: PF-1, rev: A, page: 2, quote: "Dry the forceps for at least 20 minutes."}
                                          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ These words do not stand in pf-1-a.pdf, here or on any other page. The nearest, on page 2: "Dry for at least 20 minutes."
  s4: {doc: PF-1, rev: A, page: 2, quote: "Never immerse the handle."}
                                          ^^^^^^^^^^^^^^^^^^^^^^^^^^^ These words do not stand in pf-1-a.pdf, here or on any other page. Nothing there comes near to them.
=== documents/pf-1-a.ifu.yaml
kind: document
id: pf-1-a
doc: PF-1
rev: A
file: pf-1-a.pdf
=== documents/pf-1-a.pdf
Expose at 132 °C for
4 minutes.
--- next page
Dry for at least 20 minutes.
`,
      `
=== devices/probe.ifu.yaml
kind: device
id: pale-probe
statements:
  s1: {doc: PP-4, rev: "2", page: 9, quote: "Rinse for 1 minute."}
                                            ^^^^^^^^^^^^^^^^^^^^^ pp-4-2.pdf has 2 pages and none with the number 9; these words stand on none of them.
  s2: {doc: PP-4, rev: "2", page: 2, quote: "Rinse for 1 minute."}
                                            ^^^^^^^^^^^^^^^^^^^^^ Page 2 of pp-4-2.pdf is a picture without text, so these words could not be looked for.
=== documents/pp-4-2.ifu.yaml
kind: document
id: pp-4-2
doc: PP-4
rev: "2"
file: pp-4-2.pdf
=== documents/pp-4-2.pdf
Instructions for the probe
--- next page
`,
    ],
    good: [
      `
=== devices/forceps.ifu.yaml
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 1, quote: "Expose at 132 °C for 4 minutes."}
  s2: {doc: PF-1, rev: A, page: 2, quote: "Wrap \\"dry\\" items … and let them cool."}
  s3: {doc: PF-1, rev: A, page: 1, quote: "Then dry them for at least 20 minutes in the chamber."}
=== documents/pf-1-a.ifu.yaml
kind: document
id: pf-1-a
doc: PF-1
rev: A
file: pf-1-a.pdf
=== documents/pf-1-a.pdf
Expose at 132\u00a0°C for
4 minutes. Then dry them for
Page 1 of 2
--- next page
at least 20 minutes in the cham-
ber.
Wrap “dry” items in two sheets and let them cool.
`,
      `
=== devices/forceps.ifu.yaml
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 1, quote: "No file is kept, so nothing is looked for."}
=== documents/pf-1-a.ifu.yaml
kind: document
id: pf-1-a
doc: PF-1
rev: A
`,
    ],
  },
});

function reportOn(statement: Statement, quote: Text, name: string, file: ReadFile): Report | undefined {
  const page = statement.page?.problem === undefined ? statement.page : undefined;
  const written = page?.text ?? '';
  const place = placeOf(quote.text, page?.value, file);
  switch (place.stands) {
    case 'there':
      return undefined;
    case 'unknown':
      return { at: quote.at, severity: 'advice', message: message.picture(written, name) };
    case 'elsewhere':
      return movedTo(place.pages, statement, quote, name);
    case 'nowhere':
      return absent(quote, page?.value, name, file);
  }
}

function movedTo(pages: readonly number[], { page }: Statement, quote: Text, name: string): Report {
  const found = pages.map((index) => String(index + 1));
  const [only] = found;
  const fixes =
    page === undefined || only === undefined || found.length > 1
      ? []
      : [{ title: `Change the page to ${only}`, edits: [{ span: page.at.span, text: only }] }];
  return { at: quote.at, severity: 'warning', message: message.elsewhere(page?.text ?? '', name, found), fixes };
}

function absent(quote: Text, page: number | undefined, name: string, file: ReadFile): Report {
  const named = page === undefined ? [] : pagesNumbered(page, file);
  if (page !== undefined && named.length === 0)
    return { at: quote.at, severity: 'warning', message: message.beyond(String(page), name, file.pages.length) };
  const near = nearestTo(quote.text, named, file);
  if (near === undefined) return { at: quote.at, severity: 'warning', message: message.nowhere(name, message.nothing) };
  const shown = near.text.length > longestShown ? `${near.text.slice(0, longestShown)} …` : near.text;
  const isSame = near.share >= sameSentence && numbersDiffer(quote.text, near.text);
  if (isSame && (page === undefined || named.includes(near.page)))
    return { at: quote.at, message: message.number(String(near.page + 1), name, shown) };
  return {
    at: quote.at,
    severity: 'warning',
    message: message.nowhere(name, message.nearest(String(near.page + 1), shown)),
  };
}

/** On the page that was named if anything there comes near, else anywhere. */
function nearestTo(quote: string, named: readonly number[], { pages }: ReadFile) {
  const wanted = searchQuote(quote);
  const onNamed = named.flatMap((index) => {
    const page = pages[index];
    const found = page === undefined ? undefined : nearestIn([readyPage(page)], wanted);
    return found === undefined ? [] : [{ ...found, page: index }];
  });
  const best = onNamed.sort((a, b) => b.share - a.share)[0] ?? undefined;
  if (best !== undefined && best.share >= leastShare) return best;
  const anywhere = nearestIn(pages.map(readyPage), wanted);
  return anywhere !== undefined && anywhere.share >= leastShare ? anywhere : undefined;
}
