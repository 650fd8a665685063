import { aimDrawing } from '../drawings/aim.ts';
import { indicatorDrawing } from '../drawings/indicators.ts';
import { signMark } from '../drawings/signs.ts';
import type { Markup } from '../markup.ts';
import { element, lineMarkup, nothing, sheetHtml, text, together } from '../markup.ts';
import type { PaperSize } from '../paper-size.ts';
import type { Line } from '../piece.ts';
import { joined } from '../piece.ts';
import type { SignKind } from '../words/card-words.ts';
import type { Words } from '../words/words.ts';
import type { Band, Block, Card, Drawing, Fact } from './card.ts';
import { cardStyle } from './card-style.ts';
import { typeSizeFor } from './card-type.ts';

/** A card as one file of HTML: no script, nothing loaded, one side of paper where the set allows. */
export function cardHtml(card: Card, words: Words, paper: PaperSize): string {
  const { head } = words.card;
  return sheetHtml({
    language: words.language,
    title: `${card.name.text} · ${head.stamp(card.stamp)}`,
    style: cardStyle(paper, typeSizeFor(card, paper)),
    facts: { 'card-set': card.set, 'card-stamp': card.stamp, 'card-day': card.day },
    bodyClass: 'card',
    body: together(
      draftMark(card, words),
      headMarkup(card, words),
      element(
        'main',
        {},
        card.bands.map((band, index) => bandMarkup(band, index + 1, words)),
      ),
      footMarkup(card, words),
    ),
  });
}

function draftMark({ draft }: Card, { card: { head } }: Words): Markup {
  return draft.length === 0
    ? nothing
    : element('div', { class: 'draft', 'aria-hidden': 'true' }, element('span', {}, text(head.draft)));
}

function headMarkup(card: Card, words: Words): Markup {
  const { head } = words.card;
  return together(
    element(
      'header',
      {},
      element(
        'div',
        { class: 'who' },
        element('p', { class: 'kind' }, text(`${head.title} · `), element('span', { class: 'id' }, text(card.set))),
        element('h1', {}, lineMarkup([card.name])),
      ),
      element('div', { class: 'photo' }, text(head.photo)),
      element(
        'div',
        { class: 'seal' },
        element('b', { class: 'stamp' }, text(card.stamp)),
        text(head.printed('')),
        element('span', { class: 'day' }, text(card.day)),
        element('br', {}),
        text(head.validUntilChanged),
      ),
    ),
    card.draft.length === 0 ? nothing : element('p', { class: 'draft-why' }, text(head.draftBecause(card.draft))),
    factList('facts', card.facts),
  );
}

function factList(className: string, facts: readonly Fact[]): Markup {
  if (facts.length === 0) return nothing;
  return element(
    'dl',
    { class: className },
    facts.map(({ label, line }) =>
      element('div', {}, element('dt', {}, text(label)), element('dd', {}, lineMarkup(line))),
    ),
  );
}

function bandMarkup(band: Band, number: number, words: Words): Markup {
  const { kind, blocks, drawing, figures } = band;
  const figure = drawing === undefined ? nothing : figureMarkup(drawing, words);
  const className = `band ${kind}${figure === nothing ? '' : ' side'}`;
  return element(
    'section',
    { class: className },
    element(
      'div',
      { class: 'tab', 'aria-hidden': 'true', 'data-band': number },
      text(String.fromCharCode(64 + number)),
    ),
    element(
      'div',
      { class: 'in' },
      element('h2', {}, text(words.card.bands[kind])),
      factList('figures', figures),
      element(
        'div',
        { class: 'blocks' },
        blocks.filter(hasContent).map((block) => blockMarkup(block, words)),
      ),
      figure,
    ),
  );
}

function hasContent({ lines, title, signs }: Block): boolean {
  return lines.length > 0 || title !== undefined || signs.length > 0;
}

function blockMarkup({ title, signs, lines, weight }: Block, words: Words): Markup {
  return element(
    'div',
    { class: weight === 'plain' ? 'block' : `block ${weight}` },
    title === undefined ? nothing : element('h3', {}, lineMarkup(title)),
    signs.length === 0
      ? nothing
      : element(
          'span',
          { class: 'signs' },
          signs.map((sign) => signMarkup(sign, words)),
        ),
    listMarkup(lines),
  );
}

function listMarkup(lines: readonly Line[]): Markup {
  if (lines.length === 0) return nothing;
  return element(
    'ul',
    {},
    lines.map((line) => element('li', {}, lineMarkup(line))),
  );
}

function signMarkup(sign: SignKind, words: Words): Markup {
  const says = words.card.signs[sign];
  return element('span', { class: 'sign' }, signMark(sign, says), text(says));
}

function figureMarkup(drawing: Drawing, words: Words): Markup {
  const isAim = drawing.shows === 'aim';
  const svg = drawing.shows === 'aim' ? aimDrawing(drawing, words) : indicatorDrawing(drawing, words);
  const { cooling, packing } = words.card;
  const title = isAim ? cooling.aimTitle : packing.indicatorsTitle;
  return element('figure', {}, svg, element('figcaption', {}, text(title)));
}

function footMarkup({ why, call, notes }: Card, words: Words): Markup {
  const { foot } = words.card;
  const labelled = (label: string, lines: readonly Line[]): Markup =>
    lines.length === 0
      ? nothing
      : element('p', {}, element('b', {}, text(`${label}: `)), lineMarkup(joined(lines, ' · ')));
  return element(
    'footer',
    {},
    labelled(foot.why, why),
    labelled(foot.call, call),
    element('ul', { class: 'cautions' }, [
      ...foot.cautions.map((caution) => element('li', {}, text(caution))),
      ...notes.map((note) => element('li', {}, lineMarkup(note))),
    ]),
  );
}
