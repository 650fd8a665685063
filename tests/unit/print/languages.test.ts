import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { printingOf } from '../../../server/src/print/amounts.ts';
import { workCard } from '../../../server/src/print/card/build.ts';
import { cardHtml } from '../../../server/src/print/card/card-html.ts';
import { defaultPaper } from '../../../server/src/print/paper-size.ts';
import { poster, posterIds } from '../../../server/src/print/posters/build.ts';
import { posterHtml } from '../../../server/src/print/posters/poster-html.ts';
import { wordsOf } from '../../../server/src/print/words/languages.ts';
import { closest, elementsIn, type HtmlElement, readHtml, textOf, textsIn } from '../../support/html.ts';
import { filesOf } from '../../support/keys/asked.ts';
import { openedSample } from '../../support/printed.ts';
import { demoDay } from '../../support/routes.ts';
import { type DepartmentName, departments, readSample } from '../../support/samples.ts';
import { type PlainFiles, valueAt } from '../../support/traced.ts';

/* Cards and posters in the second language: no word of the first is left, except in what the department itself wrote. */

const root = join(import.meta.dirname, '../../..');
function pagesOf(name: DepartmentName, language: string): readonly HtmlElement[] {
  const { engine, findings } = openedSample(name);
  const words = wordsOf(language);
  const printing = printingOf(engine.view(), words);
  const cards = [...engine.view().ids('set')].flatMap((id) => workCard(id, printing, demoDay, findings) ?? []);
  return [
    ...cards.map((card) => readHtml(cardHtml(card, words, defaultPaper))),
    ...posterIds.map((id) => readHtml(posterHtml(poster(id, printing), words, defaultPaper, demoDay))),
  ];
}

/** Words that stand on the page of themselves: not those of fields, names and stamps. */
function ownWords(page: HtmlElement): readonly string[] {
  const own: string[] = [];
  for (const { text, in: element } of textsIn(page)) {
    const isOthers = closest(
      element,
      ({ attributes }) =>
        attributes.has('data-from') ||
        attributes.has('data-told') ||
        ['id', 'stamp'].includes(attributes.get('class') ?? ''),
    );
    if (isOthers === undefined && closest(element, ({ name }) => name === 'head') === undefined) own.push(text);
  }
  for (const { attributes } of elementsIn(page))
    own.push(attributes.get('aria-label') ?? '', attributes.get('title') ?? '');
  return own.flatMap((text) => text.match(/\p{L}{2,}/gu) ?? []).map((word) => word.toLowerCase());
}

/** The same in both languages. */
const shared: ReadonlySet<string> = new Set(
  'aluminium an filter hand iapws if in kpa lumen plan psi rev thermometer virus was'.split(' '),
);

/** Every word of every closed list of the schemas. */
const closedWords = new Set(
  readdirSync(join(root, 'schemas')).flatMap((file) =>
    [...readFileSync(join(root, 'schemas', file), 'utf8').matchAll(/"enum": \[([^\]]*)\]/g)].flatMap(([, list = '']) =>
      [...list.matchAll(/"([^"]+)"/g)].map(([, word = '']) => word),
    ),
  ),
);

describe('the second language', () => {
  it('has no word of the first', () => {
    const [english, german] = ['en', 'de'].map(
      (language) => new Set(departments.flatMap((name) => pagesOf(name, language).flatMap(ownWords))),
    );
    const both = [...(german ?? [])].filter((word) => english?.has(word) === true && !shared.has(word));
    expect(both.sort()).toEqual([]);
    expect(closedWords.size).toBeGreaterThan(200);
    expect(german?.size).toBeGreaterThan(300);
  });

  it.each(departments)('puts every closed word of %s into its own', (name) => {
    const files = filesOf(readSample(name));
    const raw = pagesOf(name, 'de').flatMap((page) => rawWords(page, files));
    expect([...new Set(raw)].sort()).toEqual([]);
  });

  it.each(departments)('counts in its own words on pages of %s', (name) => {
    const found = pagesOf(name, 'de').flatMap(foreignUnits);
    expect([...new Set(found)].sort()).toEqual([]);
    expect(pagesOf(name, 'en').flatMap(foreignUnits).length).toBeGreaterThan(0);
  });
});

/** Counting words of the first language behind a number: `3 times`. */
function foreignUnits(page: HtmlElement): readonly string[] {
  return [...elementsIn(page)].flatMap((element) => {
    const shown = element.attributes.has('data-from') ? textOf(element) : '';
    return /^[\d.,]+ (?:times|cycles|pieces|uses|days|weeks|months|years|hours|minutes|levels|strokes)\b/.test(shown)
      ? [shown]
      : [];
  });
}

/** Words of closed lists that are printed as the file writes them: `double-wrap`. */
function rawWords(page: HtmlElement, files: PlainFiles): readonly string[] {
  return [...elementsIn(page)].flatMap((element) => {
    const [origin = '', more] = (element.attributes.get('data-from') ?? '').split(' ');
    const value = origin === '' || more !== undefined ? undefined : valueAt(files, origin);
    const shown = textOf(element);
    if (typeof value !== 'string' || value.length < 2 || !closedWords.has(value)) return [];
    return [value, value.replaceAll('-', ' ')].includes(shown) ? [`${shown} (${origin.replace(/^.*#/, '')})`] : [];
  });
}
