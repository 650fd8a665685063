import type { Span } from '../../base/span.ts';
import type { Place, Text } from '../../model/node.ts';

/**
 * The place of some words of a quote, so that they can be underlined and told apart. Where the file writes the quote with escapes or over
 * several lines, the whole quote stands for them.
 */
export function placeInQuote(quote: Text, words: Span): Place {
  const span = spanInQuote(quote, words);
  return { span, focus: span, key: `[${quote.text.slice(words.start, words.end)}]`, parent: quote.at };
}

function spanInQuote(quote: Text, words: Span): Span {
  const { span } = quote.at;
  if (quote.rewritten === true) return span;
  const marks = span.end - span.start > quote.text.length ? 1 : 0;
  return { start: span.start + marks + words.start, end: span.start + marks + words.end };
}
