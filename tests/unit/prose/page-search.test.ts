import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  nearestIn,
  numbersDiffer,
  runsOver,
  searchPage,
  searchQuote,
  standsOn,
} from '../../../server/src/quantity/prose/page-search.ts';

const stands = (page: string, quote: string) => standsOn(searchPage(page), searchQuote(quote));

describe('a quote on a page', () => {
  it.each([
    ['over lines', 'Expose at 132\n°C for 4\nminutes.', 'Expose at 132 °C for 4 minutes.'],
    ['with spaces that the page does not have', 'at 132°C', 'at 132 °C'],
    ['in other quotation marks', 'the “open” position', 'the "open" position'],
    ['with another dash', '5–7 minutes', '5-7 minutes'],
    ['with words left out', 'Rinse the tube. Dry it. Then store it.', 'Rinse the tube. […] Then store it.'],
    ['broken at a line end', 'sterilize', 'steri-\nlize'],
  ])('is found %s', (_, page, quote) => {
    expect(stands(page, quote)).toBe(true);
  });

  it.each([
    ['at the end of a longer number', 'for 14 minutes', '4 minutes'],
    ['behind a decimal sign', 'for 2.4 minutes', '4 minutes'],
    ['before a decimal sign', 'at least 4.5', 'at least 4'],
    ['inside a word', 'unsterile', 'sterile'],
    ['with passages in another order', 'Then store it. Rinse the tube.', 'Rinse the tube … Then store it.'],
    ['in other letters', 'Do not immerse', 'do NOT immerse'],
  ])('is not found %s', (_, page, quote) => {
    expect(stands(page, quote)).toBe(false);
  });

  const word = fc.constantFrom(
    'rinse',
    'the',
    'tube',
    'for',
    '4',
    '14',
    'min',
    '132 °C',
    '“open”',
    '2.5',
    'dry,',
    'A-1',
  );
  const words = fc.array(word, { minLength: 1, maxLength: 30 });

  it('is found wherever whole words of the page are quoted, however they are set', () => {
    fc.assert(
      fc.property(words, fc.nat(), fc.nat(), fc.constantFrom(' ', '\n', '  \n '), (page, from, count, between) => {
        const start = from % page.length;
        const quoted = page.slice(start, start + 1 + (count % (page.length - start)));
        expect(stands(page.join(between), quoted.join(' '))).toBe(true);
      }),
      { numRuns: 500, seed: 1 },
    );
  });

  it('is not found on a page that has another number everywhere', () => {
    fc.assert(
      fc.property(words, fc.integer({ min: 200, max: 900 }), (page, number) => {
        expect(stands(page.join(' '), `for ${number} minutes`)).toBe(false);
      }),
      { numRuns: 200, seed: 2 },
    );
  });

  it('may run over to the next page, past foot and head', () => {
    const [page, next] = [
      searchPage('Dry them for at least\nPage 1 of 2'),
      searchPage('Title\n20 minutes in the chamber.'),
    ];
    expect(runsOver(page, next, searchQuote('Dry them for at least 20 minutes in the chamber.'))).toBe(true);
    expect(runsOver(page, next, searchQuote('Dry them for at least 30 minutes in the chamber.'))).toBe(false);
  });
});

describe('what comes nearest', () => {
  it('is the stretch that shares most words, with its page', () => {
    const pages = ['Rinse with water for 1 minute.', 'Dry in the chamber for at least 30 minutes. Store dry.'].map(
      searchPage,
    );
    expect(nearestIn(pages, searchQuote('Dry in the chamber for at least 20 minutes.'))).toEqual({
      page: 1,
      text: 'Dry in the chamber for at least 30 minutes.',
      share: 8 / 9,
    });
    expect(nearestIn(pages, searchQuote('xyzzy'))).toBeUndefined();
    expect(nearestIn([searchPage('')], searchQuote('a b'))).toBeUndefined();
  });

  it('tells whether the numbers are the same', () => {
    expect(numbersDiffer('4 minutes at 132', 'at 132 for 4 minutes')).toBe(false);
    expect(numbersDiffer('4 minutes', '4.0 minutes')).toBe(true);
  });

  it('costs in proportion to the pages', () => {
    const page = searchPage('rinse the tube for 4 minutes and dry it '.repeat(500));
    const started = performance.now();
    for (let run = 0; run < 200; run++) nearestIn([page], searchQuote('rinse the bore for 5 minutes and leave it'));
    expect(performance.now() - started).toBeLessThan(5000);
  });
});
