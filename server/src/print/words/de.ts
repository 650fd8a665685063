import { cardDe } from './card-de.ts';
import type { BoundWords } from './card-words.ts';
import { line } from './line.ts';
import { posterDe } from './poster-de.ts';
import { termsDe } from './terms-de.ts';
import type { Words } from './words.ts';

const bounds: BoundWords = {
  atLeast: (amount) => line`mindestens ${amount}`,
  atMost: (amount) => line`höchstens ${amount}`,
  between: (low, high) => line`${low} bis ${high}`,
  exactly: (amount) => line`genau ${amount}`,
  about: (amount) => line`etwa ${amount}`,
  ask: (quote) => line`ERST FRAGEN: auf der Seite steht „${quote}“`,
  conflict: () => line`ERST FRAGEN: zwei gültige Dokumente weichen voneinander ab`,
};

const units = new Map([
  ['d', 'Tage'],
  ['times', 'mal'],
  ['uses', 'Einsätze'],
  ['cycles', 'Zyklen'],
  ['drops', 'Tropfen'],
  ['strokes', 'Züge'],
  ['pieces', 'Stück'],
]);

/** German. */
export const de: Words = {
  language: 'de',
  decimalMark: ',',
  bounds,
  units,
  terms: termsDe,
  card: cardDe,
  poster: posterDe,
};
