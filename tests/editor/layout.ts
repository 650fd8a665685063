import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';
import type { PaperSize } from '../../server/src/print/paper-size.ts';
import { findChromium } from './harness.ts';

/*
 * Pages as a Chromium lays them out: how many sheets, and nothing that sticks out of its frame. No pixels are compared, so other fonts
 * change nothing.
 */

export interface Layout {
  readonly sheets: number;
  readonly sticksOut: readonly string[];
}

/** A browser that prints. Close it when all is done. */
export interface PrintingBrowser {
  layoutOf(html: string, size: PaperSize): Promise<Layout>;
  /** The PDF as the browser prints it, with bookmarks. */
  pdfOf(html: string): Promise<Uint8Array>;
  close(): Promise<void>;
}

export async function startPrinting(): Promise<PrintingBrowser> {
  const folder = mkdtempSync(join(tmpdir(), 'traywright-rendered-'));
  const browser = await chromium.launch({ executablePath: findChromium(), args: ['--no-sandbox'] });
  const page = await browser.newPage();
  const open = async (html: string): Promise<void> => {
    const file = join(folder, 'page.html');
    writeFileSync(file, html);
    await page.goto(pathToFileURL(file).href);
  };
  return {
    layoutOf: async (html, { widthMm, marginMm }) => {
      await page.emulateMedia({ media: 'print' });
      await page.setViewportSize({ width: Math.round(((widthMm - 2 * marginMm) / 25.4) * 96), height: 1000 });
      await open(html);
      const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
      const sheets = pdf.match(/\/Type\s*\/Page\b/g)?.length ?? 0;
      return { sheets, sticksOut: await page.evaluate<string[]>(sticksOut) };
    },
    pdfOf: async (html) => {
      await open(html);
      return new Uint8Array(await page.pdf({ preferCSSPageSize: true, outline: true, tagged: true }));
    },
    close: async () => {
      await browser.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
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
