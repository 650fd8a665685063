import type { Markup } from '../markup.ts';
import type { SignKind } from '../words/card-words.ts';
import { disc, drawing, polygon, stroke } from './svg.ts';

/** A ring with a bar for what is forbidden, a triangle for what has a limit. The words beside it say which. */
export function signMark(kind: SignKind, words: string): Markup {
  const ring = [
    disc({ x: 12, y: 12 }, 9.5, { fill: 'none', width: 2.6 }),
    stroke({ x: 5.5, y: 18.5 }, { x: 18.5, y: 5.5 }, { width: 2.6 }),
  ];
  const triangle = [
    polygon(
      [
        { x: 12, y: 2.5 },
        { x: 22, y: 21 },
        { x: 2, y: 21 },
      ],
      { width: 2.2 },
    ),
    stroke({ x: 12, y: 9 }, { x: 12, y: 14.5 }, { width: 2.4 }),
    disc({ x: 12, y: 18 }, 1, { width: 0.6 }),
  ];
  return drawing(24, 24, words, ...(kind === 'tip-only' || kind === 'no-wet' ? triangle : ring));
}
