import type { Saying } from '../model/saying.ts';
import type { Part } from './paper.ts';
import type { Line, Value } from './piece.ts';
import { originOf } from './piece.ts';
import { line } from './words/line.ts';

/** `KL-3 rev. C, page 11`, each part with its origin. */
export function citationOf({ doc, rev, page, at }: Saying): Line {
  const origin = originOf(at);
  const part = (key: string, text: string): Value => ({ text, from: [`${origin}.${key}`] });
  if (doc === '') return [];
  return line`${part('doc', doc)}${rev === '' ? '' : line` rev. ${part('rev', rev)}`}${page === '' ? '' : line`, page ${part('page', page)}`}`;
}

export function quoteOf({ quote, at }: Saying): Value {
  return { text: quote, from: [`${originOf(at)}.quote`] };
}

export function quotePart(saying: Saying): Part {
  return { is: 'quote', quote: [quoteOf(saying)], citation: citationOf(saying) };
}
