import type { Language } from './token.ts';

/** Small words and letters that only one of the languages has. Weak on purpose: a document that names its language is not guessed at. */
const germanSigns =
  /\b(?:der|die|das|und|mit|nicht|bei|ist|mindestens|höchstens|bis|oder|nur|Sie|zu|wird|werden|Minuten)\b|[äöß]/g;
const frenchSigns = /\b(?:le|la|les|et|avec|pas|ne|pendant|au|aux|dans|ou|est|pour|une|un|minutes à)\b|[éèêàçù]/g;
const englishSigns = /\b(?:the|and|with|not|for|at|is|of|or|to|be|do|in|minutes)\b/g;

export function guessLanguage(quote: string): Language {
  const german = countOf(quote, germanSigns);
  const french = countOf(quote, frenchSigns);
  const english = countOf(quote, englishSigns);
  if (german > french && german > english) return 'de';
  return french > german && french > english ? 'fr' : 'en';
}

function countOf(quote: string, signs: RegExp): number {
  return quote.match(signs)?.length ?? 0;
}
