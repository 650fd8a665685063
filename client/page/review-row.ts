import type { ReviewMark, ReviewRow, ReviewSide } from '../../server/src/panel/review.ts';
import { make } from './elements.ts';
import type { Decision, Given } from './review.ts';

/** What a row asks for. */
export interface RowActs {
  go(place: number): void;
  give(given: Given | ''): void;
}

/** A sign of its own shape for each weight; the word beside it says the same, colour only repeats it. */
const signs: Readonly<Record<ReviewMark, string>> = {
  breaks: '✕',
  changes: '◐',
  opens: '＋',
  quiet: '●',
  unknown: '?',
};

const decisions: readonly (readonly [Decision, string])[] = [
  ['agree', 'Agree'],
  ['disagree', 'Disagree'],
  ['ask', 'Ask the maker'],
];

export function drawRow(row: ReviewRow, index: number, given: Given | '', acts: RowActs): HTMLElement {
  const name = `change-${index}`;
  const title = make('h3', '', `${index + 1}. ${row.title}`, make('span', 'detail', ` ${row.where}`));
  title.id = name;
  const article = make(
    'article',
    `change ${row.mark}`,
    title,
    make('div', 'sides', drawSide('Old', row.old, index, acts), drawSide('New', row.now, index, acts)),
    drawMiddle(row),
    drawReach(row),
    drawDecision(row, index, given, acts),
  );
  article.setAttribute('aria-labelledby', name);
  article.tabIndex = -1;
  article.dataset.change = String(index);
  return article;
}

function drawSide(label: string, side: ReviewSide, index: number, { go }: RowActs): HTMLElement {
  const column = make('div', 'side', make('h4', '', label));
  const words = side.words === '' ? 'nothing' : side.words;
  const { place } = side;
  if (place === undefined) column.append(make('p', side.words === '' ? 'detail' : 'words', words));
  else {
    const button = make('button', 'link', words);
    button.type = 'button';
    button.title = `Show it in the ${label.toLowerCase()} text`;
    button.dataset.keep = `${label} ${index}`;
    button.addEventListener('click', () => go(place));
    column.append(make('p', 'words', button));
  }
  for (const { text, from } of side.quotes)
    column.append(make('blockquote', '', make('p', '', `“${text}”`), make('footer', '', from)));
  return column;
}

function drawMiddle(row: ReviewRow): HTMLElement {
  const sign = make('span', 'sign', signs[row.mark]);
  sign.setAttribute('aria-hidden', 'true');
  const effect = make('p', `effect ${row.mark}`, sign, make('strong', '', `Here: ${row.effect}`));
  const more = [row.effectWords, row.because].filter((text) => text !== '').map((text) => make('p', '', text));
  return make('div', 'middle', effect, ...more, make('p', '', make('strong', '', 'To do: '), row.action));
}

function drawReach({ reach }: ReviewRow): HTMLElement {
  if (reach.length === 0) return make('span', '');
  const list = make('ul', '', ...reach.map((text) => make('li', '', text)));
  const details = make('details', '', make('summary', '', 'What it reaches'), list);
  details.setAttribute('aria-label', 'What it reaches');
  return details;
}

function drawDecision(row: ReviewRow, index: number, given: Given | '', acts: RowActs): HTMLElement {
  if (row.needs === 'settled') return make('p', 'detail', `On record: ${row.state}.`);
  if (row.needs === 'look') return drawLook(index, given, acts);
  const choices = decisions.map(([decision, words]) => {
    const input = make('input', '');
    input.type = 'radio';
    input.name = `decision-${index}`;
    input.value = decision;
    input.checked = given === decision;
    input.dataset.keep = `decision ${index} ${decision}`;
    input.addEventListener('change', () => acts.give(decision));
    return make('label', '', input, ` ${words}`);
  });
  return make(
    'fieldset',
    'decision',
    make('legend', '', `Your decision on change ${index + 1}`),
    ...choices,
    make('span', 'detail', `On record: ${row.state}.`),
  );
}

function drawLook(index: number, given: Given | '', acts: RowActs): HTMLElement {
  const box = make('input', '');
  box.type = 'checkbox';
  box.checked = given === 'looked';
  box.dataset.keep = `look ${index}`;
  box.addEventListener('change', () => acts.give(box.checked ? 'looked' : ''));
  return make('label', 'decision', box, ` I have looked at change ${index + 1}. No decision is needed.`);
}
