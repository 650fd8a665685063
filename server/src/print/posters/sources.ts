import type { Printing } from '../amounts.ts';
import type { Line } from '../piece.ts';
import { said } from '../piece.ts';

/** The sources that the department's own poster file of this topic names. */
export function ownSources({ view, words }: Printing, topic: string): readonly Line[] {
  const sources = view
    .all('poster')
    .filter((poster) => poster.topic?.text === topic)
    .flatMap((poster) => (poster.sources?.items ?? []).map((source): Line => [said(source)]));
  return sources.length > 0 ? sources : [[words.poster.noSource]];
}
