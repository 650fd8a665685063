import type { Drawing } from '../card/card.ts';
import type { Markup } from '../markup.ts';
import { element } from '../markup.ts';
import type { Words } from '../words/words.ts';
import { closedPack, foldOf, ventCentres } from './packs.ts';
import type { Box, Spot } from './svg.ts';
import { arrow, caption, cross, drawing, polygon, spotIn, stroke } from './svg.ts';

type Aim = Extract<Drawing, { shows: 'aim' }>;

/** The closed pack, a thermometer with an arrow to where it belongs, and a crossed-out place where it misleads. */
export function aimDrawing({ pack, aim }: Aim, words: Words): Markup {
  const box: Box = { left: 8, bottom: 146, length: 150, height: pack === 'pouch' ? 0 : 50, depthX: 62, depthY: 40 };
  const target = targetOf(aim, box);
  const gun: Spot = { x: target.x + 28, y: 22 };
  const wrong = wrongOf(pack, box);
  return drawing(
    250,
    168,
    words.card.cooling.aimTitle,
    closedPack(pack, box),
    thermometer(gun),
    arrow({ x: gun.x - 4, y: gun.y + 8 }, target),
    cross(wrong, 7),
    caption(
      pack === 'pouch' ? { x: wrong.x - 14, y: box.bottom + 14 } : { x: wrong.x + 12, y: wrong.y + 4 },
      words.card.cooling.notHere,
    ),
  );
}

function targetOf(aim: Aim['aim'], box: Box): Spot {
  switch (aim) {
    case 'fold':
      return foldOf(box);
    case 'vents':
      return ventCentres(box)[1] ?? spotIn(box, 0.5, 0.5, 1);
    case 'porous':
      return spotIn(box, 0.75, 0.5, 0);
  }
}

/** Bare metal mirrors the room; film and the flat side of a wrap are cooler than where vapour leaves. */
function wrongOf(pack: Aim['pack'], box: Box): Spot {
  return pack === 'pouch' ? spotIn(box, 0.16, 0.5, 0) : spotIn(box, 0.1, 0, 0.32);
}

/** A pistol thermometer. */
function thermometer({ x, y }: Spot): Markup {
  const body = [
    { x: x - 6, y: y - 6 },
    { x: x + 26, y: y - 14 },
    { x: x + 29, y: y - 3 },
    { x: x + 21, y: y - 1 },
    { x: x + 27, y: y + 18 },
    { x: x + 17, y: y + 21 },
    { x: x + 10, y: y + 2 },
    { x: x - 3, y: y + 5 },
  ];
  return element('g', {}, [polygon(body), stroke({ x: x + 13, y: y - 8 }, { x: x + 22, y: y - 10 }, { width: 3 })]);
}
