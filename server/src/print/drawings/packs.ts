import type { PackKind } from '../card/card.ts';
import type { Markup } from '../markup.ts';
import { element } from '../markup.ts';
import type { Box, Spot } from './svg.ts';
import { flatDisc, polygon, spotIn, stroke } from './svg.ts';

/** A pack as it looks closed: a wrap with its folds, a container with vents in the lid, a pouch with its porous side hatched. */
export function closedPack(kind: PackKind, box: Box): Markup {
  switch (kind) {
    case 'wrap':
      return element('g', {}, [solid(box), ...folds(box)]);
    case 'container':
      return element('g', {}, [solid(box), ...lid(box), ...ventHoles(box)]);
    case 'pouch':
      return element('g', {}, [...pouch(box)]);
  }
}

function solid(box: Box): Markup {
  return element('g', {}, [
    polygon([spotIn(box, 0, 0, 0), spotIn(box, 1, 0, 0), spotIn(box, 1, 0, 1), spotIn(box, 0, 0, 1)]),
    polygon([spotIn(box, 1, 0, 0), spotIn(box, 1, 1, 0), spotIn(box, 1, 1, 1), spotIn(box, 1, 0, 1)], { fill: '#ddd' }),
    polygon([spotIn(box, 0, 0, 1), spotIn(box, 1, 0, 1), spotIn(box, 1, 1, 1), spotIn(box, 0, 1, 1)]),
  ]);
}

/** The flap comes from the left and ends past the middle; its tape holds it. */
function folds(box: Box): readonly Markup[] {
  const tip = foldOf(box);
  return [
    polygon([spotIn(box, 0, 0, 1), tip, spotIn(box, 0, 1, 1)], { fill: '#eee' }),
    stroke(spotIn(box, 1, 0, 1), tip, { dash: '4 3', width: 1 }),
    stroke(spotIn(box, 1, 1, 1), tip, { dash: '4 3', width: 1 }),
  ];
}

/** Where the folds meet. */
export function foldOf(box: Box): Spot {
  return spotIn(box, 0.62, 0.5, 1);
}

function lid(box: Box): readonly Markup[] {
  return [
    stroke(spotIn(box, 0, 0, 0.68), spotIn(box, 1, 0, 0.68)),
    stroke(spotIn(box, 1, 0, 0.68), spotIn(box, 1, 1, 0.68)),
    polygon([
      spotIn(box, 0.44, 0, 0.58),
      spotIn(box, 0.56, 0, 0.58),
      spotIn(box, 0.56, 0, 0.78),
      spotIn(box, 0.44, 0, 0.78),
    ]),
  ];
}

/** Two fields of holes in the lid. */
export function ventCentres(box: Box): readonly Spot[] {
  return [spotIn(box, 0.28, 0.5, 1), spotIn(box, 0.72, 0.5, 1)];
}

function ventHoles(box: Box): readonly Markup[] {
  const holes: Markup[] = [];
  for (const centre of ventCentres(box)) {
    holes.push(flatDisc(centre, 25, 10, '#fff'));
    for (const offset of [-13, 0, 13]) holes.push(flatDisc({ x: centre.x + offset, y: centre.y }, 4, 2.4, '#000'));
  }
  return holes;
}

/** Lies flat: film above, the porous side turned up at the right half so that both can be told apart. */
function pouch(box: Box): readonly Markup[] {
  const flat = (x: number, y: number): Spot => spotIn(box, x, y, 0);
  const hatches: Markup[] = [];
  for (let step = 1; step < 12; step++) {
    const x = 0.5 + step / 24;
    hatches.push(stroke(flat(x, 0.02), flat(x, 0.98), { width: 0.8 }));
  }
  return [
    polygon([flat(0, 0), flat(1, 0), flat(1, 1), flat(0, 1)]),
    polygon([flat(0.5, 0), flat(1, 0), flat(1, 1), flat(0.5, 1)], { fill: '#eee' }),
    ...hatches,
    polygon([flat(0.03, 0.07), flat(0.97, 0.07), flat(0.97, 0.93), flat(0.03, 0.93)], {
      fill: 'none',
      dash: '3 3',
      width: 1,
    }),
  ];
}
