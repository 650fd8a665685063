import type { SheetSection } from '../../server/src/panel/set-sheet.ts';
import { drawBlock } from './blocks.ts';
import { drawChoices } from './choices.ts';
import { type Drawing, linked, make, signOf } from './elements.ts';
import { type FromPage, isToPage, type Sheet, type ToPage } from './sheet.ts';

/**
 * The page of the set sheet: draws what it is told, and says what was asked for. It keeps nothing but how far it is scrolled, and knows
 * nothing of the trade.
 */
interface Host {
  postMessage(message: FromPage): void;
  getState(): unknown;
  setState(state: unknown): void;
}
declare function acquireVsCodeApi(): Host;

const host = acquireVsCodeApi();
const root = document.querySelector('main') ?? document.body;
const spoken = document.querySelector('[role="status"]');
let shown = '';

window.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
  if (isToPage(data)) show(data);
});
window.addEventListener('scroll', keep);
host.postMessage({ is: 'ready' });

/** For when the panel was hidden, or the window was closed: which set it was, and how far it was scrolled. */
function keep(): void {
  host.setState({ set: shown, scrolled: window.scrollY });
}

function show(message: ToPage): void {
  const focused = document.activeElement instanceof HTMLElement ? document.activeElement.dataset.keep : undefined;
  const isOther = message.is === 'sheet' && shown !== '' && message.sheet.set !== shown;
  const scrolled = isOther ? 0 : root.childElementCount > 0 ? window.scrollY : scrolledBefore();
  root.replaceChildren(
    ...(message.is === 'sheet' ? parts(message.sheet, message.number) : [make('p', '', message.text)]),
  );
  say(message.is === 'sheet' ? message.sheet.status : message.text);
  shown = message.is === 'sheet' ? message.sheet.set : '';
  window.scrollTo({ top: scrolled });
  keep();
  if (focused !== undefined) giveFocus(focused);
}

/** A screen reader hears the status again only when it is another one. */
function say(text: string): void {
  if (spoken !== null && spoken.textContent !== text) spoken.textContent = text;
}

function scrolledBefore(): number {
  const state = host.getState();
  const scrolled = typeof state === 'object' && state !== null && 'scrolled' in state ? state.scrolled : 0;
  return typeof scrolled === 'number' ? scrolled : 0;
}

function giveFocus(kept: string): void {
  for (const element of root.querySelectorAll<HTMLElement>('[data-keep]')) {
    if (element.dataset.keep !== kept) continue;
    element.focus({ preventScroll: true });
    return;
  }
}

function parts(sheet: Sheet, number: number): readonly HTMLElement[] {
  const drawing: Drawing = {
    places: sheet.places,
    go: (place) => host.postMessage({ is: 'go', number, place }),
  };
  const imagine = (keys: readonly string[]): void => host.postMessage({ is: 'imagine', number, keys });
  return [
    head(sheet, drawing, () => imagine([])),
    drawChoices(sheet, imagine),
    ...sheet.sections.map((section) => drawSection(section, drawing)),
    make('footer', 'cautions', ...sheet.cautions.map((text) => make('p', '', text))),
  ];
}

/** A table is called as its section is. */
function drawSection({ title, blocks }: SheetSection, drawing: Drawing): HTMLElement {
  const drawn = blocks.map((block) => drawBlock(block, drawing));
  for (const block of drawn) if (block instanceof HTMLTableElement) block.setAttribute('aria-label', title);
  return make('section', '', make('h2', '', title), ...drawn);
}

function head(sheet: Sheet, drawing: Drawing, asFiled: () => void): HTMLElement {
  const name = { text: sheet.name, ...(sheet.place !== undefined && { place: sheet.place }) };
  const title = make('h1', '', linked(name, drawing), make('span', 'detail', ` set ${sheet.set}`));
  const status = make('p', `status ${sheet.mark}`, signOf(sheet.mark), make('strong', '', sheet.status));
  const problems = sheet.problems.map((text) => make('p', 'detail', text));
  if (sheet.imagined.length === 0) return make('header', '', title, status, ...problems);
  const back = make('button', '', 'Show it as filed');
  back.type = 'button';
  back.dataset.keep = 'as filed';
  back.addEventListener('click', asFiled);
  const words = make('p', 'imagined', make('strong', '', 'Only imagined: '), `${sheet.imagined.join('; ')}. `, back);
  return make('header', '', title, words, status, ...problems);
}
