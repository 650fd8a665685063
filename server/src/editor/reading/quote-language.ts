import { guessLanguageWithin } from '../../quantity/prose/language.ts';
import type { Language } from '../../quantity/prose/token.ts';
import type { MapTree } from '../../syntax/tree.ts';
import { valueUnder } from '../../syntax/value-under.ts';

/** The language of a statement: the one it gives, else the one that its words show, else that of the other statements of the file. */
export function languageOf(
  tree: MapTree,
  { quote, lang }: { readonly quote: string; readonly lang: string },
): Language {
  return lang === 'de' || lang === 'fr' || lang === 'en' ? lang : guessLanguageWithin(quote, allQuotes.get(tree));
}

/** Asked for once for each state of the file. */
const allQuotes = {
  known: new WeakMap<MapTree, string>(),
  get(tree: MapTree): string {
    const found = this.known.get(tree) ?? quotesIn(tree);
    this.known.set(tree, found);
    return found;
  },
};

function quotesIn(tree: MapTree): string {
  const statements = valueUnder(tree, 'statements');
  if (statements?.node !== 'map') return '';
  const quotes = statements.entries.flatMap(({ value }) => {
    const quote = value.node === 'map' ? valueUnder(value, 'quote') : undefined;
    return quote?.node === 'scalar' ? [quote.text] : [];
  });
  return quotes.join('\n');
}
