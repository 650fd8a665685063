import { cardEn } from './card-en.ts';
import type { BoundWords } from './card-words.ts';
import { line } from './line.ts';
import { posterEn } from './poster-en.ts';
import { termsEn } from './terms-en.ts';
import type { Words } from './words.ts';

const bounds: BoundWords = {
  atLeast: (amount) => line`at least ${amount}`,
  atMost: (amount) => line`at most ${amount}`,
  between: (low, high) => line`${low} to ${high}`,
  exactly: (amount) => line`exactly ${amount}`,
  about: (amount) => line`about ${amount}`,
  ask: (quote) => line`ASK FIRST: the page says “${quote}”`,
  conflict: () => line`ASK FIRST: two current documents differ`,
};

const units = new Map([['d', 'days']]);

/** English. */
export const en: Words = {
  language: 'en',
  decimalMark: '.',
  bounds,
  units,
  terms: termsEn,
  card: cardEn,
  poster: posterEn,
};
