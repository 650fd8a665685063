import type { Markup } from '../markup.ts';
import { element, text } from '../markup.ts';
import type { Value } from '../piece.ts';

/*
 * Small drawings in black lines on white, made of plain shapes. A pack is drawn as a box seen from the front, left and above: x to the
 * right, y to the back, z up. Coordinates are drawing units; nothing in them is a measure of a real pack.
 */

export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** How a point of the box (in parts of its length, width and height, 0 to 1) falls on the page. */
export interface Box {
  readonly left: number;
  /** Of the front edge of the floor. */
  readonly bottom: number;
  readonly length: number;
  readonly height: number;
  /** How far the back edge is moved to the right and up. */
  readonly depthX: number;
  readonly depthY: number;
}

export function spotIn(box: Box, x: number, y: number, z: number): Spot {
  return {
    x: round(box.left + x * box.length + y * box.depthX),
    y: round(box.bottom - z * box.height - y * box.depthY),
  };
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}

export function drawing(width: number, height: number, label: string, ...shapes: readonly Markup[]): Markup {
  return element(
    'svg',
    { viewBox: `0 0 ${width} ${height}`, role: 'img', 'aria-label': label, xmlns: 'http://www.w3.org/2000/svg' },
    [...shapes],
  );
}

export interface Stroke {
  readonly width?: number;
  readonly dash?: string;
  readonly fill?: string;
}

export function polygon(spots: readonly Spot[], { width = 1.4, dash, fill = '#fff' }: Stroke = {}): Markup {
  const points = spots.map(({ x, y }) => `${x},${y}`).join(' ');
  return element('polygon', {
    points,
    fill,
    stroke: '#000',
    'stroke-width': width,
    'stroke-dasharray': dash,
    'stroke-linejoin': 'round',
  });
}

export function stroke(from: Spot, to: Spot, { width = 1.4, dash }: Stroke = {}): Markup {
  return element('line', {
    x1: from.x,
    y1: from.y,
    x2: to.x,
    y2: to.y,
    stroke: '#000',
    'stroke-width': width,
    'stroke-dasharray': dash,
    'stroke-linecap': 'round',
  });
}

export function disc(centre: Spot, radius: number, { width = 1.4, fill = '#000' }: Stroke = {}): Markup {
  return element('circle', { cx: centre.x, cy: centre.y, r: radius, fill, stroke: '#000', 'stroke-width': width });
}

/** An ellipse that lies flat on a face of the box. */
export function flatDisc(centre: Spot, radiusX: number, radiusY: number, fill: string): Markup {
  return element('ellipse', {
    cx: centre.x,
    cy: centre.y,
    rx: radiusX,
    ry: radiusY,
    fill,
    stroke: '#000',
    'stroke-width': 1.2,
  });
}

/** A full diamond: the mark of an indicator, the same in every drawing. */
export function diamond({ x, y }: Spot, size: number): Markup {
  const spots = [
    { x, y: y - size },
    { x: x + size, y },
    { x, y: y + size },
    { x: x - size, y },
  ];
  return polygon(spots, { fill: '#000' });
}

export function cross({ x, y }: Spot, size: number): Markup {
  return element('g', {}, [
    stroke({ x: x - size, y: y - size }, { x: x + size, y: y + size }, { width: 3 }),
    stroke({ x: x - size, y: y + size }, { x: x + size, y: y - size }, { width: 3 }),
  ]);
}

/** An arrow whose head ends at `to`. */
export function arrow(from: Spot, to: Spot): Markup {
  const away = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const along = { x: (to.x - from.x) / away, y: (to.y - from.y) / away };
  const neck = { x: to.x - along.x * 11, y: to.y - along.y * 11 };
  const head = [
    to,
    { x: round(neck.x - along.y * 5), y: round(neck.y + along.x * 5) },
    { x: round(neck.x + along.y * 5), y: round(neck.y - along.x * 5) },
  ];
  return element('g', {}, [
    stroke(from, { x: round(neck.x), y: round(neck.y) }, { width: 2.4 }),
    polygon(head, { fill: '#000' }),
  ]);
}

/** Words in a drawing. A value keeps its origin. */
export function caption({ x, y }: Spot, words: string | Value, anchor: 'start' | 'middle' | 'end' = 'start'): Markup {
  const value = typeof words === 'string' ? { text: words, from: [] } : words;
  return element(
    'text',
    {
      x,
      y,
      'font-size': 12,
      'text-anchor': anchor,
      'data-from': value.from.length === 0 ? undefined : value.from.join(' '),
      'data-how': value.how,
    },
    text(value.text),
  );
}
