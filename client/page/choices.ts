import type { Choice, Choices } from '../../server/src/panel/set-sheet.ts';
import { make } from './elements.ts';
import type { Sheet } from './sheet.ts';

/** Called with the keys of all changes that are to be imagined. */
export type Imagine = (keys: readonly string[]) => void;

/** Changes to try: boxes to tick, and a list where only one can be. */
export function drawChoices(sheet: Sheet, imagine: Imagine): HTMLElement {
  const chosen = new Set(sheet.choices.flatMap(({ options }) => options.filter(({ on }) => on).map(({ key }) => key)));
  const groups = sheet.choices.map((choices) =>
    choices.takes === 'one' ? drawOne(choices, chosen, imagine) : drawMany(choices, chosen, imagine),
  );
  const heading = make('h2', '', 'What if');
  const lead = make('p', 'detail', 'Tried out on a copy in memory. No file is changed.');
  return make('section', 'what-if', heading, lead, ...groups);
}

function drawMany({ title, options }: Choices, chosen: ReadonlySet<string>, imagine: Imagine): HTMLElement {
  const boxes = options.map((option) => {
    const box = make('input', '');
    box.type = 'checkbox';
    box.checked = option.on;
    box.dataset.keep = option.key;
    box.addEventListener('change', () => {
      const keys = new Set(chosen);
      if (box.checked) keys.add(option.key);
      else keys.delete(option.key);
      imagine([...keys]);
    });
    return make('label', '', box, ` ${option.label}`, about(option));
  });
  return make('fieldset', '', make('legend', '', title), ...boxes);
}

function drawOne({ title, options }: Choices, chosen: ReadonlySet<string>, imagine: Imagine): HTMLElement {
  const select = make('select', '');
  select.dataset.keep = title;
  select.append(new Option('as the file says', ''));
  for (const { key, label, about: words, on } of options)
    select.append(new Option(words === '' ? label : `${label} · ${words}`, key, on, on));
  select.addEventListener('change', () => {
    const keys = [...chosen].filter((key) => !options.some((option) => option.key === key));
    imagine(select.value === '' ? keys : [...keys, select.value]);
  });
  return make('label', 'one', make('span', '', `${title} `), select);
}

function about({ about: words }: Choice): HTMLElement {
  return make('span', 'detail', words === '' ? '' : ` ${words}`);
}
