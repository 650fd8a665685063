import type { Cell, Mark } from '../../server/src/panel/set-sheet.ts';

/** Making parts of the page. Texts go in as text only, never as markup. */
export type Child = Node | string;

export function make<Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  looks: string,
  ...children: readonly Child[]
): HTMLElementTagNameMap[Name] {
  const element = document.createElement(name);
  if (looks !== '') element.className = looks;
  element.append(...children);
  return element;
}

const signs: Readonly<Record<Mark, readonly [sign: string, spoken: string]>> = {
  fits: ['●', 'fits'],
  note: ['◐', 'note'],
  asks: ['?', 'open'],
  fails: ['✕', 'fails'],
};

/** A sign of its own shape for each mark, spoken as a word: colour only repeats it. */
export function signOf(mark: Mark): HTMLElement {
  const [sign, spoken] = signs[mark];
  const shown = make('span', '', sign);
  shown.setAttribute('aria-hidden', 'true');
  return make('span', `sign ${mark}`, shown, make('span', 'spoken', `${spoken}: `));
}

export function wordOf(mark: Mark): string {
  return signs[mark][1];
}

/** Called with the place that was asked for. */
export type Go = (place: number) => void;

export interface Drawing {
  readonly places: readonly string[];
  readonly go: Go;
}

/** A text, or a button that leads to where it stands. */
export function linked({ text, place }: Cell, { places, go }: Drawing): HTMLElement {
  if (place === undefined || text === '') return make('span', '', text);
  const button = make('button', 'link', text);
  button.type = 'button';
  button.title = `Go to ${places[place] ?? 'its place'}`;
  button.dataset.keep = `${place} ${text}`;
  button.addEventListener('click', () => go(place));
  return button;
}
