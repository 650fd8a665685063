import type { Edit, Fix } from '../base/problem.ts';
import { type Span, span } from '../base/span.ts';
import { quoteScalar } from './quote.ts';

/** From `start` to the end of what is written on that line: no trailing spaces, no comment after a space and a number sign. */
export function lineRest(text: string, start: number): Span {
  let end = text.indexOf('\n', start);
  if (end < 0) end = text.length;
  const comment = text.slice(start, end).indexOf(' #');
  if (comment > 0) end = start + comment;
  while (end > start && /\s/.test(text[end - 1] ?? '')) end--;
  return span(start, end);
}

/** Puts quotes around what is written in `whole`, character for character. */
export function fixQuote(text: string, whole: Span): Fix {
  return {
    title: 'Put the text in quotes',
    edits: [{ span: whole, text: quoteScalar(text.slice(whole.start, whole.end)) }],
  };
}

/** Column of an offset, in UTF-16 units from the start of its line. */
export function columnOf(text: string, at: number): number {
  return at - lineStartOf(text, at);
}

export function lineStartOf(text: string, at: number): number {
  return at === 0 ? 0 : text.lastIndexOf('\n', at - 1) + 1;
}

/** The edit that gives the line of `at` an indent of `columns` spaces. */
export function reindent(text: string, at: number, columns: number): Edit {
  const start = lineStartOf(text, at);
  let end = start;
  while (text[end] === ' ' || text[end] === '\t') end++;
  return { span: span(start, end), text: ' '.repeat(columns) };
}
