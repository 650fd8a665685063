import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { printingOf } from '../../server/src/print/amounts.ts';
import { workCard } from '../../server/src/print/card/build.ts';
import { cardHtml } from '../../server/src/print/card/card-html.ts';
import { paperSizes } from '../../server/src/print/paper-size.ts';
import { poster, posterIds } from '../../server/src/print/posters/build.ts';
import { posterHtml } from '../../server/src/print/posters/poster-html.ts';
import { wordsOf } from '../../server/src/print/words/languages.ts';
import { openedSample } from '../support/printed.ts';
import { demoDay } from '../support/routes.ts';
import { departments } from '../support/samples.ts';
import { type PrintingBrowser, startPrinting } from './layout.ts';

/* Cards and posters as a browser prints them. */

let browser: PrintingBrowser | undefined;

beforeAll(async () => {
  browser = await startPrinting();
}, 60_000);

afterAll(() => browser?.close());

const runs = departments.flatMap((name) => ['en', 'de'].map((language) => [name, language] as const));

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
          expect(await browser?.layoutOf(cardHtml(card, words, size), size), `${id} ${size.name}`).toEqual({
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
              await browser?.layoutOf(posterHtml(poster(id, printing), words, size, demoDay), size),
              `${id} ${size.name}`,
            ).toEqual({ sheets: 1, sticksOut: [] });
    },
    240_000,
  );
});
