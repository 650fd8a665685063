import { Remembered } from '../../base/remembered.ts';

/** Words in order within one sentence; a few others may stand between. `virus*` is any word that begins so. */
export type Phrase = readonly string[];

const longestText = 2000;
const mostBetween = 2;
/** Words that turn a sentence round. A phrase that holds one itself is not turned round by it. */
const negators: ReadonlySet<string> = new Set([
  'not',
  'no',
  'never',
  'nobody',
  'none',
  'without',
  'neither',
  'nor',
  'nicht',
  'kein',
  'keine',
  'nie',
  'ne',
  'pas',
  'jamais',
  'sans',
]);

/** The first phrase that the text holds, as its words stand there; undefined when there is none. A negated sentence is passed over. */
export function saidIn(text: string, phrases: readonly Phrase[]): string | undefined {
  for (const { words, joined } of sentences.of(text)) {
    for (const phrase of phrases) {
      const places = joined.includes(beginnings.of(phrase)) ? placesOf(phrase, words) : undefined;
      if (places !== undefined && !isNegated(words, places)) return places.map((at) => words[at]).join(' ');
    }
  }
  return undefined;
}

/** True when any of the phrases stands in the text, negated or not. */
export function isMentioned(text: string, phrases: readonly Phrase[]): boolean {
  return sentences
    .of(text)
    .some(({ words, joined }) =>
      phrases.some((phrase) => joined.includes(beginnings.of(phrase)) && placesOf(phrase, words) !== undefined),
    );
}

/** The same quote and the same words of a step are asked about by many rules, one right after the other. */
const sentences = new Remembered(500, (text: string): readonly Sentence[] =>
  text
    .toLowerCase()
    .slice(0, longestText)
    .split(/[.;!?\n]/)
    .map((sentence) => {
      const words = sentence.split(/[^\p{L}\p{N}]+/u).filter((word) => word !== '');
      return { words, joined: ` ${words.join(' ')} ` };
    }),
);

interface Sentence {
  readonly words: readonly string[];
  /** With a space before and behind each word. */
  readonly joined: string;
}

/** What a sentence must hold to hold the phrase: nearly all phrases part here. */
const beginnings = new Remembered(10_000, ([first = '*']: Phrase) =>
  first.endsWith('*') ? ` ${first.slice(0, -1)}` : ` ${first} `,
);

function placesOf(phrase: Phrase, words: readonly string[]): readonly number[] | undefined {
  const [first] = phrase;
  if (first === undefined) return [];
  for (let start = 0; start < words.length; start++) {
    if (!isWord(words[start], first)) continue;
    const places = placesFrom(start, phrase, words);
    if (places !== undefined) return places;
  }
  return undefined;
}

function placesFrom(start: number, phrase: Phrase, words: readonly string[]): readonly number[] | undefined {
  const places: number[] = [];
  let at = start;
  for (const wanted of phrase) {
    const last = places.length === 0 ? at : at + mostBetween;
    while (at <= last && !isWord(words[at], wanted)) at++;
    if (at > last) return undefined;
    places.push(at++);
  }
  return places;
}

function isWord(word: string | undefined, wanted: string): boolean {
  if (word === undefined) return false;
  return wanted.endsWith('*') ? word.startsWith(wanted.slice(0, -1)) : word === wanted;
}

function isNegated(words: readonly string[], places: readonly number[]): boolean {
  return words.some((word, at) => negators.has(word) && !places.includes(at));
}
