import type { FrameLocator } from 'playwright-core';

/** What a screen reader is told of a page in a panel, as Chromium works it out. */

/** Whatever takes an answer, leads somewhere or holds others together, and has no name. */
export async function nameless(page: FrameLocator): Promise<readonly string[]> {
  const tree = await page.locator('main').ariaSnapshot();
  return tree.split('\n').filter((line) => nameNeeded.test(line));
}

const nameNeeded =
  /^\s*- (?:article|button|checkbox|columnheader|combobox|figure|group|heading|link|radio|rowheader|table|textbox)(?! ["/])/;

/** Tables in which a column or a row says nothing of what it is about. */
export async function headless(page: FrameLocator): Promise<readonly string[]> {
  return page.locator('main').evaluate(`[...document.querySelectorAll('table')].flatMap((table) => {
    const isHeaded = [...table.rows].every((row, index) =>
      index === 0 ? [...row.cells].every(({ scope }) => scope === 'col') : row.cells[0].getAttribute('role') === 'rowheader');
    return isHeaded ? [] : [table.innerText.slice(0, 200)];
  })`);
}

/** Parts that a keyboard reaches in another order than that in which they stand. */
export async function outOfOrder(page: FrameLocator): Promise<readonly string[]> {
  return page
    .locator('main')
    .evaluate(
      `[...document.querySelectorAll('[tabindex]')].filter((one) => one.tabIndex > 0).map((one) => one.outerHTML.slice(0, 200))`,
    );
}

/** Signs that only their colour tells apart: those without a word for whoever does not see it. */
export async function colourAlone(page: FrameLocator, marks: string): Promise<readonly string[]> {
  return page.locator('main').evaluate(`[...document.querySelectorAll(${JSON.stringify(marks)})]
    .filter((one) => !/[a-z]{3}/i.test(one.textContent)).map((one) => one.outerHTML.slice(0, 200))`);
}
