import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { printingOf } from '../../server/src/print/amounts.ts';
import { deviceAnswer } from '../../server/src/print/answer/device-answer.ts';
import { receivingSheet } from '../../server/src/print/answer/receive.ts';
import { urgentAnswer } from '../../server/src/print/answer/urgent.ts';
import { wetLoadSheet } from '../../server/src/print/answer/wet-load.ts';
import { type Paper, paperHtml } from '../../server/src/print/paper.ts';
import { type PaperSize, paperSizes } from '../../server/src/print/paper-size.ts';
import { quizOf } from '../../server/src/print/quiz/build.ts';
import { practicalChecklist } from '../../server/src/print/quiz/checklist.ts';
import { groundOf } from '../../server/src/print/quiz/ground.ts';
import { Random } from '../../server/src/print/quiz/random.ts';
import { quizSheet } from '../../server/src/print/quiz/sheet.ts';
import { wordsOf } from '../../server/src/print/words/languages.ts';
import { cli, folderWith } from '../support/cli.ts';
import { elementsIn, readHtml, textOf } from '../support/html.ts';
import { bookmarksOf, linksOf, pageTextsOf } from '../support/pdf-outline.ts';
import { builtPdfReader } from '../support/pdf-reader.ts';
import { openedSample } from '../support/printed.ts';
import { demoDay } from '../support/routes.ts';
import { type PrintingBrowser, startPrinting } from './layout.ts';

/* Answers, sheets of questions and the binder as a browser prints them, on both sizes of office paper. */

const root = join(import.meta.dirname, '../..');
const samples = ['lanternfield', 'saltmere-eye-clinic-corrected'] as const;
type Sample = (typeof samples)[number];
const sizes = [paperSizes.a4, paperSizes.letter].filter((size): size is PaperSize => size !== undefined);

let browser: PrintingBrowser;

beforeAll(async () => {
  browser = await startPrinting();
}, 60_000);

afterAll(() => browser.close());

/** Every page of a kind, and the most sheets that one of it may take. */
interface Sheets {
  readonly papers: readonly Paper[];
  readonly most: number;
}

const kinds: Readonly<Record<string, (name: Sample) => Sheets>> = {
  answers: (name) => {
    const { engine, findings } = openedSample(name);
    const printing = printingOf(engine.view(), wordsOf('en'));
    const papers = printing.view.all('device').map((device) => {
      const number = device.id?.text ?? '';
      return deviceAnswer(device, { asked: number, number, devices: [device] }, printing, demoDay, findings);
    });
    return { papers, most: 1 };
  },
  'immediate use': (name) => {
    const printing = printingOf(openedSample(name).engine.view(), wordsOf('en'));
    const { view } = printing;
    const papers = [
      ...view.all('device').map((device) => urgentAnswer({ device }, printing)),
      ...view.all('set').map((set) => urgentAnswer({ set }, printing)),
    ];
    return { papers, most: 1 };
  },
  receiving: (name) => {
    const printing = printingOf(openedSample(name).engine.view(), wordsOf('en'));
    const arrival = { received: '2025-03-03T18:00', neededBy: '2025-03-04T07:30' };
    return { papers: printing.view.all('set').map((set) => receivingSheet([set], arrival, printing)), most: 2 };
  },
  'wet loads': (name) => {
    const { engine, findings } = openedSample(name);
    const printing = printingOf(engine.view(), wordsOf('en'));
    return {
      papers: printing.view.all('set').map((set) => wetLoadSheet({ set, findings, changes: [] }, printing)),
      most: 2,
    };
  },
  questions: (name) => {
    const { engine, findings } = openedSample(name);
    const printing = printingOf(engine.view(), wordsOf('en'));
    const quiz = quizOf(printing, findings, { seed: 'a', count: 12 });
    const checklist = practicalChecklist(groundOf(printing, findings), new Random('a'), 12);
    return { papers: [quizSheet(quiz, checklist, printing, demoDay)], most: 5 };
  },
};

describe.each(samples)('papers of %s', (name) => {
  it.each(Object.keys(kinds))(
    '%s: few sheets, nothing sticks out, no heading alone at the foot',
    async (kind) => {
      const { papers, most } = kinds[kind]?.(name) ?? { papers: [], most: 0 };
      expect(papers.length).toBeGreaterThan(0);
      for (const paper of papers)
        for (const size of sizes) {
          const html = paperHtml(paper, size);
          const { sheets, sticksOut } = await browser.layoutOf(html, size);
          expect(sticksOut, `${paper.title} ${size.name}`).toEqual([]);
          expect(sheets, `${paper.title} ${size.name}`).toBeLessThanOrEqual(most);
          if (sheets > 1) expect(await aloneAtFoot(html), `${paper.title} ${size.name}`).toEqual([]);
        }
    },
    240_000,
  );
});

function headingsOf(html: string): readonly string[] {
  return [...elementsIn(readHtml(html))].filter(({ name }) => /^h[1-3]$/.test(name)).map(plainText);
}

function plainText(element: Parameters<typeof textOf>[0]): string {
  return textOf(element).replace(/\s+/g, ' ').trim();
}

/** Headings that end a sheet; the number of the sheet is its last line. */
async function aloneAtFoot(html: string): Promise<readonly string[]> {
  const headings = new Set(headingsOf(html));
  const pages = await pageTextsOf(await browser.pdfOf(html));
  return pages.slice(0, -1).flatMap((lines) => {
    const last = lines.filter((line) => !/^\d+ \/ \d+$/.test(line)).at(-1) ?? '';
    return headings.has(last) ? [last] : [];
  });
}

describe('the binder', () => {
  it.each(sizes.map((size) => [size.name, size] as const))(
    '%s: bookmarks, links and numbers of the contents lead to the right sheets',
    async (_, size) => {
      const out = folderWith({});
      const paper = size.name.toLowerCase();
      const words = ['binder', 'samples/lanternfield', '--day', demoDay, '--out', out, '--paper', paper, '--pdf'];
      const ran = await cli(words, { cwd: root, env: { PATH: process.env.PATH ?? '' }, pdfReader: builtPdfReader() });
      expect(ran.err).toBe('');
      const html = readFileSync(join(out, `binder-${demoDay}.html`), 'utf8');
      expect((await browser.layoutOf(html, size)).sticksOut).toEqual([]);
      const target = join(out, `binder-${demoDay}.pdf`);
      const bytes = (): Uint8Array => new Uint8Array(readFileSync(target));
      const pages = await pageTextsOf(bytes());
      const bookmarks = await bookmarksOf(bytes());
      expect(bookmarks.map(({ title }) => title)).toEqual(headingsOf(html));
      for (const { title, sheet } of bookmarks)
        expect(pages[sheet - 1]?.join(' '), `${title} on sheet ${sheet}`).toContain(title);
      const sections = bookmarks.filter(({ title }) => /^\d+\. /.test(title));
      expect((await linksOf(bytes(), 1)).toSorted((a, b) => a - b)).toEqual(sections.map(({ sheet }) => sheet));
      const contents = (pages[0] ?? []).flatMap((line) => /^\d+\. ?.*?(\d+)$/.exec(line)?.[1] ?? []);
      expect(contents.map(Number)).toEqual(sections.map(({ sheet }) => sheet));
      expect(await aloneAtFoot(html)).toEqual([]);
    },
    240_000,
  );
});
