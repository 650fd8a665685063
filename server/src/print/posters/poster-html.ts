import type { Markup } from '../markup.ts';
import { element, lineMarkup, nothing, sheetHtml, text, together } from '../markup.ts';
import type { PaperSize } from '../paper-size.ts';
import type { Line } from '../piece.ts';
import { joined } from '../piece.ts';
import type { Words } from '../words/words.ts';
import { posterStamp } from './build.ts';
import type { Poster } from './poster.ts';
import { posterStyle } from './poster-style.ts';

/** A poster as one file of HTML. */
export function posterHtml(shown: Poster, words: Words, paper: PaperSize, day: string): string {
  const stamp = posterStamp(shown);
  return sheetHtml({
    language: words.language,
    title: shown.title,
    style: posterStyle(paper),
    facts: { 'poster-id': shown.id, 'poster-stamp': stamp, 'poster-day': day },
    bodyClass: 'poster',
    body: together(
      element('h1', {}, text(shown.title)),
      element('p', { class: 'claim' }, text(shown.claim)),
      figuresMarkup(shown),
      pathMarkup(shown),
      shown.lines.length === 0
        ? nothing
        : element(
            'ul',
            { class: 'say' },
            shown.lines.map((line) => element('li', {}, lineMarkup(line))),
          ),
      tableMarkup(shown),
      shown.loud === undefined ? nothing : element('p', { class: 'loud' }, lineMarkup(shown.loud)),
      footMarkup(shown, words, stamp, day),
    ),
  });
}

function figuresMarkup({ figures }: Poster): Markup {
  if (figures.length === 0) return nothing;
  return element(
    'div',
    { class: figures.length === 1 ? 'figures one' : 'figures' },
    figures.map(({ drawing, caption }) =>
      element('figure', {}, drawing, element('figcaption', {}, lineMarkup(caption))),
    ),
  );
}

function pathMarkup({ path }: Poster): Markup {
  if (path.length === 0) return nothing;
  return element(
    'ol',
    { class: 'path' },
    path.map((step) =>
      element(
        'li',
        {},
        element('div', { class: 'ask' }, text(step.ask)),
        element('div', { class: 'else' }, text(step.else)),
      ),
    ),
  );
}

/** A table of more rows is set tighter, so that the poster stays one sheet. */
const longTable = 12;

function tableMarkup({ table }: Poster): Markup {
  if (table === undefined) return nothing;
  return element(
    'table',
    { class: table.rows.length > longTable ? 'long' : undefined },
    element(
      'thead',
      {},
      element(
        'tr',
        {},
        table.head.map((cell) => element('th', {}, text(cell))),
      ),
    ),
    element(
      'tbody',
      {},
      table.rows.map((row) =>
        element(
          'tr',
          {},
          row.map((cell) => element('td', {}, lineMarkup(cell))),
        ),
      ),
    ),
  );
}

function footMarkup(
  { exceptions, sources, cautions, notes }: Poster,
  { poster: words }: Words,
  stamp: string,
  day: string,
): Markup {
  const labelled = (label: string, lines: readonly Line[]): Markup =>
    lines.length === 0
      ? nothing
      : element('p', {}, element('b', {}, text(`${label}: `)), lineMarkup(joined(lines, '; ')));
  return element(
    'div',
    { class: 'foot' },
    labelled(words.exceptions, exceptions),
    labelled(words.sources, sources),
    element(
      'div',
      { class: 'cautions' },
      cautions.map((caution) => element('p', {}, text(caution))),
      notes.map((note) => element('p', {}, lineMarkup(note))),
    ),
    element(
      'p',
      { class: 'seal' },
      element('b', { class: 'stamp' }, text(words.stamp(stamp))),
      text(' · '),
      element('span', { class: 'day' }, text(words.printed(day))),
    ),
  );
}
