import type { Drawing, IndicatorPlace } from '../card/card.ts';
import type { Markup } from '../markup.ts';
import { element } from '../markup.ts';
import type { Words } from '../words/words.ts';
import type { Box } from './svg.ts';
import { caption, diamond, drawing, polygon, spotIn, stroke } from './svg.ts';

type Indicators = Extract<Drawing, { shows: 'indicators' }>;

/** Parts of the length and width of a level at which the marks lie. */
const marks: Readonly<Record<IndicatorPlace, readonly (readonly [number, number])[]>> = {
  centre: [[0.5, 0.5]],
  'opposed-corners': [
    [0.07, 0.12],
    [0.93, 0.88],
  ],
  'side-corners': [
    [0.07, 0.12],
    [0.93, 0.12],
  ],
  'one-corner': [[0.07, 0.12]],
  visible: [[0.25, 0.5]],
};

/** Every level of this pack with its indicators, seen from above and in front; the lowest level is level 1. */
export function indicatorDrawing(shown: Indicators, words: Words): Markup {
  const { pack, places, levels } = shown;
  const step = 62;
  const width = levels > 1 ? 300 : 250;
  const height = 26 + levels * step + (pack === 'container' ? 26 : 0);
  const shapes: Markup[] = [];
  for (let level = 1; level <= levels; level++) {
    const box = levelBox(height - 8 - (level - 1) * step);
    shapes.push(levelShape(box, shown), ...marks[places].map(([x, y]) => diamond(spotIn(box, x, y, 0), 7)));
    if (levels > 1) shapes.push(levelName(box, level, shown, words));
  }
  if (pack === 'container') shapes.push(lidAbove(levelBox(height - 8 - (levels - 1) * step - 56)));
  return drawing(width, height, words.card.packing.indicatorsTitle, ...shapes);
}

function levelBox(bottom: number): Box {
  return { left: 8, bottom, length: 172, height: 20, depthX: 44, depthY: 36 };
}

function levelName(box: Box, level: number, { levelsFrom }: Indicators, words: Words): Markup {
  const [prefix] = words.card.packing.level('');
  const at = spotIn(box, 1, 0.5, 0);
  const named = {
    text: `${typeof prefix === 'string' ? prefix : ''}${level}`,
    from: levelsFrom,
    how: 'ordinal',
  } as const;
  return caption({ x: at.x + 28, y: at.y + 6 }, named);
}

/** A tray with a low rim; of a pouch only its outline with the seal. */
function levelShape(box: Box, { pack }: Indicators): Markup {
  const floor = [spotIn(box, 0, 0, 0), spotIn(box, 1, 0, 0), spotIn(box, 1, 1, 0), spotIn(box, 0, 1, 0)];
  if (pack === 'pouch') {
    const seal = [
      spotIn(box, 0.04, 0.1, 0),
      spotIn(box, 0.96, 0.1, 0),
      spotIn(box, 0.96, 0.9, 0),
      spotIn(box, 0.04, 0.9, 0),
    ];
    return element('g', {}, [polygon(floor), polygon(seal, { fill: 'none', dash: '3 3', width: 1 })]);
  }
  const back = [spotIn(box, 0, 1, 0), spotIn(box, 1, 1, 0), spotIn(box, 1, 1, 0.5), spotIn(box, 0, 1, 0.5)];
  const right = [spotIn(box, 1, 0, 0), spotIn(box, 1, 1, 0), spotIn(box, 1, 1, 0.5), spotIn(box, 1, 0, 0.5)];
  const grid = [0.25, 0.5, 0.75].map((x) => stroke(spotIn(box, x, 0, 0), spotIn(box, x, 1, 0), { width: 0.4 }));
  return element('g', {}, [polygon(back, { fill: '#eee' }), polygon(right, { fill: '#ddd' }), polygon(floor), ...grid]);
}

/** The vented lid, lifted. */
function lidAbove(box: Box): Markup {
  const outline = [spotIn(box, 0, 0, 0), spotIn(box, 1, 0, 0), spotIn(box, 1, 1, 0), spotIn(box, 0, 1, 0)];
  const holes: Markup[] = [];
  for (const x of [0.26, 0.32, 0.38, 0.62, 0.68, 0.74]) {
    const at = spotIn(box, x, 0.5, 0);
    holes.push(
      polygon(
        [
          { x: at.x - 2, y: at.y - 2 },
          { x: at.x + 2, y: at.y - 2 },
          { x: at.x + 2, y: at.y + 2 },
          { x: at.x - 2, y: at.y + 2 },
        ],
        { fill: '#000' },
      ),
    );
  }
  return element('g', {}, [polygon(outline, { dash: '6 3' }), ...holes]);
}
