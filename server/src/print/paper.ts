import type { Markup } from './markup.ts';
import { element, lineMarkup, nothing, sheetHtml, text, together } from './markup.ts';
import type { Part } from './paper-part.ts';
import type { PaperSize } from './paper-size.ts';
import { paperStyle } from './paper-style.ts';
import { typeSizeForParts } from './paper-type.ts';
import type { Line } from './piece.ts';
import { told } from './piece.ts';

export interface Paper {
  readonly title: string;
  readonly language: string;
  /** Read back by programs: what the page is, of what, with which stamp. */
  readonly facts: Readonly<Record<string, string>>;
  readonly parts: readonly Part[];
}

/** Several pages as one: each begins on a sheet of its own. */
export function papersTogether(papers: readonly Paper[]): Paper | undefined {
  const [first, ...others] = papers;
  if (first === undefined) return undefined;
  const further = others.flatMap(({ parts }): readonly Part[] => [{ is: 'new-page' }, ...parts]);
  const title = others.length === 0 ? first.title : `${first.title} and ${others.length} more`;
  return { ...first, title, parts: [...first.parts, ...further] };
}

/** The page as one file of HTML: no script, nothing loaded. */
export function paperHtml(paper: Paper, size: PaperSize): string {
  return sheetHtml({
    language: paper.language,
    title: paper.title,
    style: paperStyle(size, typeSizeForParts(paper.parts, size)),
    facts: paper.facts,
    bodyClass: 'paper',
    body: together(...paper.parts.map(partMarkup)),
  });
}

function partMarkup(part: Part): Markup {
  switch (part.is) {
    case 'heading':
      return element(`h${part.level}`, { id: part.anchor }, lineMarkup(part.line));
    case 'contents':
      return element(
        'ol',
        { class: 'contents' },
        part.items.map(({ line, anchor, sheet }) =>
          element(
            'li',
            {},
            element('a', { href: `#${anchor}` }, lineMarkup(line)),
            sheet === undefined
              ? nothing
              : element('span', { class: 'sheet' }, lineMarkup([told('print', String(sheet))])),
          ),
        ),
      );
    case 'verdict':
      return element(
        'div',
        { class: 'verdict' },
        element('p', { class: 'says' }, lineMarkup(part.line)),
        part.under.map((line) => element('p', {}, lineMarkup(line))),
      );
    case 'text':
      return element('p', {}, lineMarkup(part.line));
    case 'small':
      return element('p', { class: 'small' }, lineMarkup(part.line));
    case 'list':
      return listMarkup('ul', part.items);
    case 'choices':
    case 'cautions':
      return listMarkup('ul', part.items, part.is);
    case 'numbered':
      return listMarkup('ol', part.items);
    case 'table':
      return tableMarkup(part);
    case 'quote':
      return element(
        'blockquote',
        {},
        text('“'),
        lineMarkup(part.quote),
        text('” '),
        part.citation.length === 0 ? nothing : element('span', { class: 'small' }, lineMarkup(part.citation)),
      );
    case 'figure':
      return element('figure', {}, part.drawing, element('figcaption', {}, lineMarkup(part.caption)));
    case 'blank':
      return element('p', { class: 'blank' }, text(part.label));
    case 'new-page':
      return element('div', { class: 'new-page' });
  }
}

function listMarkup(name: 'ul' | 'ol', items: readonly Line[], className?: string): Markup {
  return items.length === 0
    ? nothing
    : element(
        name,
        { class: className },
        items.map((item) => element('li', {}, lineMarkup(item))),
      );
}

/** Rows of a table that still stay together on one sheet. */
const wholeRows = 12;

function tableMarkup({ head, rows, narrow = [] }: Extract<Part, { is: 'table' }>): Markup {
  if (rows.length === 0) return nothing;
  return element(
    'table',
    { class: rows.length > wholeRows ? undefined : 'whole' },
    element(
      'thead',
      {},
      element(
        'tr',
        {},
        head.map((cell) => element('th', { scope: 'col' }, text(cell))),
      ),
    ),
    element(
      'tbody',
      {},
      rows.map((row) =>
        element(
          'tr',
          {},
          row.map((cell, column) =>
            element('td', { class: narrow.includes(column) ? 'narrow' : undefined }, lineMarkup(cell)),
          ),
        ),
      ),
    ),
  );
}
