import type { Language } from './token.ts';

/** Small words and letters that only one of the languages has. Weak on purpose: a document that names its language is not guessed at. */
const germanSigns =
  /\b(?:der|die|das|und|mit|nicht|bei|ist|mindestens|höchstens|bis|oder|nur|Sie|zu|wird|werden|Minuten)\b|[äöß]/g;
const frenchSigns = /\b(?:le|la|les|et|avec|pas|ne|pendant|au|aux|dans|ou|est|pour|une|un|minutes à)\b|[éèêàçù]/g;
const englishSigns = /\b(?:the|and|with|not|for|at|is|of|or|to|be|do|in|minutes)\b/g;

export function guessLanguage(quote: string): Language {
  const { language, lead } = likeliest(quote);
  return lead > 0 ? language : 'en';
}

/**
 * The language of a line that may have too few small words of its own, such as a row of a table: that of the text it stands in, unless its
 * own words are surer.
 */
export function guessLanguageWithin(line: string, text: string): Language {
  const own = likeliest(line);
  const around = likeliest(text);
  return around.lead > own.lead && own.lead < sureLead ? around.language : guessLanguage(line);
}

const sureLead = 2;

/** The language with most of its signs, and how many more it has than the next. */
function likeliest(quote: string): { readonly language: Language; readonly lead: number } {
  const counts: readonly (readonly [Language, number])[] = [
    ['en', countOf(quote, englishSigns)],
    ['de', countOf(quote, germanSigns)],
    ['fr', countOf(quote, frenchSigns)],
  ];
  const [first, second] = counts.toSorted(([, a], [, b]) => b - a);
  return { language: first?.[0] ?? 'en', lead: (first?.[1] ?? 0) - (second?.[1] ?? 0) };
}

function countOf(quote: string, signs: RegExp): number {
  return quote.match(signs)?.length ?? 0;
}
