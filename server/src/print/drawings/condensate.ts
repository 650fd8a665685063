import type { Markup } from '../markup.ts';
import { element } from '../markup.ts';
import type { Spot } from './svg.ts';
import { arrow, disc, drawing, polygon, stroke } from './svg.ts';

/** Steam from above, a cold pair of forceps, drops below it; a jug beside, which nobody ordered. */
export function condensateDrawing(label: string): Markup {
  return drawing(
    300,
    170,
    label,
    ...[40, 85, 130].map((x) => arrow({ x, y: 10 }, { x, y: 52 })),
    instrument(),
    ...[34, 62, 90, 118, 146].map((x, index) => drop({ x, y: 118 + (index % 2) * 16 })),
    stroke({ x: 14, y: 158 }, { x: 172, y: 158 }, { width: 3 }),
    jug(),
    ...[0, 1].map((index) => drop({ x: 206 - index * 12, y: 84 + index * 22 })),
  );
}

function instrument(): Markup {
  return element('g', {}, [
    polygon(
      [
        { x: 22, y: 70 },
        { x: 150, y: 62 },
        { x: 168, y: 66 },
        { x: 150, y: 74 },
        { x: 22, y: 84 },
      ],
      { fill: '#ddd' },
    ),
    disc({ x: 92, y: 74 }, 5, { fill: '#fff' }),
    disc({ x: 20, y: 64 }, 9, { fill: 'none', width: 3 }),
    disc({ x: 20, y: 90 }, 9, { fill: 'none', width: 3 }),
  ]);
}

function drop({ x, y }: Spot): Markup {
  return element('path', {
    d: `M ${x} ${y - 9} Q ${x + 8} ${y + 2} ${x} ${y + 7} Q ${x - 8} ${y + 2} ${x} ${y - 9} Z`,
    fill: '#000',
  });
}

/** Tipped to the left, crossed out. */
function jug(): Markup {
  return element('g', {}, [
    polygon([
      { x: 214, y: 78 },
      { x: 262, y: 42 },
      { x: 286, y: 74 },
      { x: 238, y: 110 },
    ]),
    stroke({ x: 206, y: 118 }, { x: 292, y: 34 }, { width: 4 }),
    stroke({ x: 206, y: 34 }, { x: 292, y: 118 }, { width: 4 }),
  ]);
}
