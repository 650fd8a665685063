import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { chromium } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { printingOf } from '../../server/src/print/amounts.ts';
import { workCard } from '../../server/src/print/card/build.ts';
import { cardHtml } from '../../server/src/print/card/card-html.ts';
import { type PaperSize, paperSizes } from '../../server/src/print/paper-size.ts';
import { poster, posterIds } from '../../server/src/print/posters/build.ts';
import { posterHtml } from '../../server/src/print/posters/poster-html.ts';
import { wordsOf } from '../../server/src/print/words/words.ts';
import { openedSample } from '../support/printed.ts';
import { demoDay } from '../support/routes.ts';
import { findChromium } from './harness.ts';

/*
 * Pages as a Chromium lays them out: how many sheets, and nothing that sticks out of its frame. No pixels are compared, so other fonts
 * change nothing.
 */

const folder = mkdtempSync(join(tmpdir(), 'traywright-rendered-'));
let browser: Browser | undefined;
let page: Page | undefined;

beforeAll(async () => {
  browser = await chromium.launch({ executablePath: findChromium(), args: ['--no-sandbox'] });
  page = await browser.newPage();
}, 60_000);

afterAll(async () => {
  await browser?.close();
  rmSync(folder, { recursive: true, force: true });
});

interface Layout {
  readonly sheets: number;
  readonly sticksOut: readonly string[];
}

/** Sheets of the printed page, and elements wider than the frame they stand in. */
async function layoutOf(html: string, { widthMm, marginMm }: PaperSize): Promise<Layout> {
  if (page === undefined) throw new Error('no browser');
  const file = join(folder, 'page.html');
  writeFileSync(file, html);
  await page.emulateMedia({ media: 'print' });
  await page.setViewportSize({ width: Math.round(((widthMm - 2 * marginMm) / 25.4) * 96), height: 1000 });
  await page.goto(pathToFileURL(file).href);
  const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
  return { sheets: pdf.match(/\/Type\s*\/Page\b/g)?.length ?? 0, sticksOut: await page.evaluate<string[]>(sticksOut) };
}

/** Read by the browser itself. The word across a draft is meant to lie over everything. */
const sticksOut = `(() => {
  const room = document.documentElement.clientWidth + 1;
  const faults = [];
  for (const element of document.querySelectorAll('body *')) {
    if (element.closest('.draft, svg') !== null) continue;
    const { left, right } = element.getBoundingClientRect();
    const isClipped = element.clientWidth > 0 && element.scrollWidth > element.clientWidth + 1;
    if (left < -1 || right > room || isClipped) faults.push(element.tagName + ' ' + element.className);
  }
  for (const words of document.querySelectorAll('svg text')) {
    const [outer, inner] = [words.closest('svg').getBoundingClientRect(), words.getBoundingClientRect()];
    if (inner.left < outer.left - 1 || inner.right > outer.right + 1 || inner.bottom > outer.bottom + 1)
      faults.push('drawing: ' + words.textContent);
  }
  return faults;
})()`;

const samples = [
  'lanternfield',
  'lanternfield-corrected',
  'saltmere-eye-clinic',
  'saltmere-eye-clinic-corrected',
] as const;
const runs = samples.flatMap((name) => ['en', 'de'].map((language) => [name, language] as const));

describe('pages as a browser prints them', () => {
  it.each(runs)(
    'cards of %s (%s) take one side of every sheet and nothing sticks out',
    async (name, language) => {
      const { engine, findings } = openedSample(name);
      const words = wordsOf(language);
      const printing = printingOf(engine.view(), words);
      for (const id of engine.view().ids('set')) {
        const card = workCard(id, printing, demoDay, findings);
        if (card === undefined) throw new Error(`no card of ${id}`);
        for (const size of Object.values(paperSizes))
          expect(await layoutOf(cardHtml(card, words, size), size), `${id} ${size.name}`).toEqual({
            sheets: 1,
            sticksOut: [],
          });
      }
    },
    240_000,
  );

  it.each(runs)(
    'posters of %s (%s) take one sheet',
    async (name, language) => {
      const words = wordsOf(language);
      const printing = printingOf(openedSample(name).engine.view(), words);
      for (const id of posterIds)
        for (const size of [paperSizes.a4, paperSizes.letter])
          if (size !== undefined)
            expect(
              await layoutOf(posterHtml(poster(id, printing), words, size, demoDay), size),
              `${id} ${size.name}`,
            ).toEqual({ sheets: 1, sticksOut: [] });
    },
    240_000,
  );
});
