import { de } from './de.ts';
import { en } from './en.ts';
import type { Words } from './words.ts';

const languages: ReadonlyMap<string, Words> = new Map([
  ['en', en],
  ['de', de],
]);

/** The words of a language by its code; English for any other. */
export function wordsOf(language: string | undefined): Words {
  return languages.get(language ?? 'en') ?? en;
}
