/**
 * quantity/prose/named/: what pages call the things and acts of the trade, in English, German and French, with the word that the files have
 * for each. Patterns only, for text in small letters; the first that is found counts. They must not know fields or sentences.
 */
export type Named = readonly (readonly [string, RegExp])[];

/** The word of the list for what a text in small letters names; undefined for anything else. */
export function wordFor(list: Named, text: string): string | undefined {
  return list.find(([, words]) => words.test(text))?.[0];
}

/** Every word of the list that a text in small letters names, in the order of the list. */
export function wordsFor(list: Named, text: string): readonly string[] {
  return list.filter(([, words]) => words.test(text)).map(([word]) => word);
}

/** What the first of the forms that fits has in its group. */
export function firstOf(forms: readonly RegExp[], quote: string): string | undefined {
  const found = forms.map((form) => form.exec(quote)).find((one) => one !== null);
  return found?.slice(1).find((group) => group !== undefined && group !== '');
}
