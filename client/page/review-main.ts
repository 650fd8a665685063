import type { Review } from '../../server/src/panel/review.ts';
import { make } from './elements.ts';
import { type FromReviewPage, type Given, isToReviewPage, leftIn, type ToReviewPage } from './review.ts';
import { drawRow } from './review-row.ts';

/**
 * The page of a review: draws what it is told, and says what was decided. It keeps nothing of its own but which review it shows, and knows
 * nothing of the trade.
 */
interface Host {
  postMessage(message: FromReviewPage): void;
}
declare function acquireVsCodeApi(): Host;

const host = acquireVsCodeApi();
const root = document.querySelector('main') ?? document.body;
const spoken = document.querySelector('[role="status"]');
type Shown = Extract<ToReviewPage, { is: 'review' }>;

window.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
  if (isToReviewPage(data)) show(data);
});
host.postMessage({ is: 'ready' });

function show(message: ToReviewPage): void {
  const focused = document.activeElement instanceof HTMLElement ? document.activeElement.dataset.keep : undefined;
  const top = window.scrollY;
  if (message.is === 'nothing') root.replaceChildren(make('p', '', message.text));
  else draw(message);
  if (message.is === 'nothing') say(message.text);
  window.scrollTo({ top });
  for (const element of root.querySelectorAll<HTMLElement>('[data-keep]'))
    if (focused !== undefined && element.dataset.keep === focused) element.focus({ preventScroll: true });
}

function draw(shown: Shown): void {
  const { number, about, review, given: first } = shown;
  const given: (Given | '')[] = review.changes.map((_, index) => first[index] ?? '');
  const bar = make('div', 'bar');
  const rows = review.changes.map((row, index) =>
    drawRow(row, index, given[index] ?? '', {
      go: (place) => host.postMessage({ is: 'go', number, place }),
      give: (one) => {
        given[index] = one;
        host.postMessage({ is: 'give', number, change: index, given: one });
        drawBar(bar, shown, given);
      },
    }),
  );
  root.replaceChildren(
    drawHead(about, review),
    bar,
    ...drawLost(review),
    ...section('All changes together', review.together),
    ...(rows.length === 0 ? [] : [make('section', '', make('h2', '', 'Changes, worst first'), ...rows)]),
    drawTotals(review),
    ...section('Beside that', review.notices),
    make('footer', 'cautions', ...review.cautions.map((text) => make('p', '', text))),
  );
  drawBar(bar, shown, given);
}

/** The counter, and what can be done next. It stays in sight while the page is scrolled. */
function drawBar(bar: HTMLElement, { number, review, waits }: Shown, given: readonly (Given | '')[]): void {
  const focused = document.activeElement;
  const focusedName = focused instanceof HTMLElement && bar.contains(focused) ? focused.dataset.keep : undefined;
  const counter = counterWords(review, given);
  const { undecided, unseen } = leftIn(review, given);
  const asksNothing = !review.changes.some(({ needs }) => needs === 'decide');
  const next = button('next', 'Next one not looked at', () => goToNext(review, given));
  next.disabled = unseen === 0;
  const write = button('write', 'Write the record', () => host.postMessage({ is: 'write', number }));
  write.disabled = undecided > 0 || asksNothing || waits !== '';
  const again = button('again', 'Look again', () => host.postMessage({ is: 'again', number }));
  const note = waits === '' ? '' : `Shown as it was before. ${waits}`;
  bar.replaceChildren(
    make('strong', 'counter', counter),
    next,
    write,
    again,
    ...(note === '' ? [] : [make('p', 'waits', note)]),
  );
  if (focusedName !== undefined) bar.querySelector<HTMLElement>(`[data-keep="${focusedName}"]`)?.focus();
  say(note === '' ? counter : note);
}

function counterWords(review: Review, given: readonly (Given | '')[]): string {
  const all = review.changes.length;
  if (all === 0)
    return review.notices.length === 0 ? 'No change of meaning.' : 'No change of meaning in what was compared.';
  const { unseen, undecided } = leftIn(review, given);
  if (unseen === 0) return `All ${all} looked at.`;
  return `${unseen} of ${all} not looked at yet${undecided === unseen ? '' : `, ${undecided} to decide`}.`;
}

function button(name: string, words: string, act: () => void): HTMLButtonElement {
  const made = make('button', '', words);
  made.type = 'button';
  made.dataset.keep = name;
  made.addEventListener('click', act);
  return made;
}

/** To where the answer is given, so that the keyboard can go on at once. */
function goToNext({ changes }: Review, given: readonly (Given | '')[]): void {
  const index = changes.findIndex(({ needs }, at) => needs !== 'settled' && (given[at] ?? '') === '');
  const article = root.querySelector<HTMLElement>(`[data-change="${index}"]`);
  article?.querySelector<HTMLElement>('.decision input, input.decision')?.focus({ preventScroll: true });
  article?.scrollIntoView({ block: 'start' });
}

function drawHead(about: string, { old, now, counts, head }: Review): HTMLElement {
  const title = make('h1', '', 'What changed', make('span', 'detail', ` ${about}`));
  const sides = make('p', '', make('strong', '', 'Old: '), `${old}. `, make('strong', '', 'New: '), `${now}.`);
  return make(
    'header',
    '',
    title,
    sides,
    make('p', 'counts', counts),
    ...head.map((text) => make('p', 'detail', text)),
  );
}

function drawLost({ lost, changes }: Review): readonly HTMLElement[] {
  if (lost.length === 0) return [];
  const items = lost.map(({ quote, from, see }) => {
    const told = changes.flatMap(({ fingerprint, title }, index) =>
      see.includes(fingerprint) ? [`${index + 1} (${title})`] : [],
    );
    const where = told.length === 0 ? from : `${from}. See change ${told.join(', ')}.`;
    return make('blockquote', '', make('p', '', `“${quote}”`), make('footer', '', where));
  });
  return [make('section', 'lost', make('h2', '', 'Passages that are gone from the new side'), ...items)];
}

function section(title: string, items: readonly string[]): readonly HTMLElement[] {
  if (items.length === 0) return [];
  return [make('section', '', make('h2', '', title), make('ul', '', ...items.map((text) => make('li', '', text))))];
}

function drawTotals({ totals }: Review): HTMLElement {
  const items = totals.map(({ label, ids }) =>
    make('li', '', make('strong', '', `${label}: ${ids.length}`), ids.length === 0 ? '' : ` (${ids.join(', ')})`),
  );
  return make('section', '', make('h2', '', 'What follows from it'), make('ul', 'totals', ...items));
}

/** A screen reader hears the counter again only when it is another one. */
function say(text: string): void {
  if (spoken !== null && spoken.textContent !== text) spoken.textContent = text;
}
