import { Remembered } from '../../base/remembered.ts';
import type { Meaning, PhraseList } from './meaning.ts';
import { germanPhrases } from './phrases-de.ts';
import { englishPhrases } from './phrases-en.ts';
import { frenchPhrases } from './phrases-fr.ts';
import { sharedPhrases } from './phrases-shared.ts';
import type { Language, Token } from './token.ts';

interface Branch {
  readonly next: Map<string, Branch>;
  /** Words that end in `*` at this point, without the star. */
  readonly stems: Map<string, Branch>;
  meaning: Meaning | undefined;
}

/** A phrase of the word lists, found at tokens `first` to `last`. */
export interface Hit {
  readonly meaning: Meaning;
  readonly first: number;
  readonly last: number;
}

function newBranch(): Branch {
  return { next: new Map(), stems: new Map(), meaning: undefined };
}

function addPhrase(root: Branch, phrase: string, meaning: Meaning): void {
  let branch = root;
  for (const word of phrase.split(/\s+/)) {
    const stem = word.length > 1 && word.endsWith('*');
    const map = stem ? branch.stems : branch.next;
    const key = stem ? word.slice(0, -1) : word;
    const found = map.get(key) ?? newBranch();
    map.set(key, found);
    branch = found;
  }
  branch.meaning = meaning;
}

function buildLexicon(...lists: readonly PhraseList[]): Branch {
  const root = newBranch();
  for (const list of lists) {
    for (const [meaning, phrases] of list) {
      for (const phrase of phrases.split(',')) addPhrase(root, phrase.trim(), meaning);
    }
  }
  return root;
}

const phrasesOf: Readonly<Record<Language, PhraseList>> = { en: englishPhrases, de: germanPhrases, fr: frenchPhrases };

interface Lexicon extends Branch {
  /** Stems of first words: the same few thousand words make up a whole library. */
  readonly firstStems: Remembered<string, Branch | undefined>;
}

/** Made at the first sentence of a language: most libraries quote one. */
const lexicons = new Remembered(3, (language: Language): Lexicon => {
  const root = buildLexicon(sharedPhrases, phrasesOf[language]);
  return { ...root, firstStems: new Remembered(20_000, (word: string) => longestStem(root, word)) };
});

/** Phrases in order, the longest at each place, never overlapping. */
export function findPhrases(tokens: readonly Token[], language: Language): Hit[] {
  const root = lexicons.of(language);
  const hits: Hit[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const hit = longestPhrase(tokens, at, root);
    if (hit === undefined) continue;
    hits.push(hit);
    at = hit.last;
  }
  return hits;
}

function longestPhrase(tokens: readonly Token[], first: number, root: Lexicon): Hit | undefined {
  const word = tokens[first]?.text ?? '';
  const whole = root.next.get(word);
  const hit = whole === undefined ? undefined : longestFrom(tokens, first, first, whole);
  if (hit !== undefined) return hit;
  const stem = root.firstStems.of(word);
  return stem === undefined ? undefined : longestFrom(tokens, first, first, stem);
}

/** The longest phrase that goes through `branch`, whose own word is token `at`. A whole word wins over a stem where it leads to a phrase. */
function longestFrom(tokens: readonly Token[], first: number, at: number, branch: Branch): Hit | undefined {
  const word = tokens[at + 1]?.text;
  if (word !== undefined) {
    const whole = branch.next.get(word);
    const longer = whole === undefined ? undefined : longestFrom(tokens, first, at + 1, whole);
    if (longer !== undefined) return longer;
    const stem = branch.stems.size === 0 ? undefined : longestStem(branch, word);
    const loose = stem === undefined ? undefined : longestFrom(tokens, first, at + 1, stem);
    if (loose !== undefined) return loose;
  }
  return branch.meaning === undefined ? undefined : { meaning: branch.meaning, first, last: at };
}

function longestStem(branch: Branch, word: string): Branch | undefined {
  for (let length = word.length; length >= 2; length--) {
    const found = branch.stems.get(word.slice(0, length));
    if (found !== undefined) return found;
  }
  return undefined;
}
