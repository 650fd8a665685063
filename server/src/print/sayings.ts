import type { Saying } from '../model/saying.ts';
import type { Clash } from '../route/model.ts';
import type { Part } from './paper-part.ts';
import type { Line, Value } from './piece.ts';
import { judged, originOf } from './piece.ts';
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

/** The words of a clash, with every place they rest on. */
export function clashLine({ words, atoms, alsoDemanded }: Clash): Line {
  const places = [...atoms, ...alsoDemanded].flatMap(({ at, factAt, says }) => [
    at,
    factAt,
    ...says.map((one) => one.at),
  ]);
  return [judged(words, places)];
}
