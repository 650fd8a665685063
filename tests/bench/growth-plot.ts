import type { Spot } from '../../server/src/print/drawings/svg.ts';
import { caption, disc, drawing, polygon, stroke } from '../../server/src/print/drawings/svg.ts';
import { element } from '../../server/src/print/markup.ts';

/** What a check costs against the size of its library, both by tens (logarithmic), beside a line that grows as the size does. */

export interface Cost {
  /** Files of the library. */
  readonly size: number;
  /** Processor time of its check, milliseconds. */
  readonly ms: number;
}

const width = 560;
const height = 380;
const left = 70;
const right = width - 30;
const top = 30;
const bottom = height - 50;

/** An SVG file. `through` is the cost that the line of linear growth goes through. */
export function growthPlot(costs: readonly Cost[], through: Cost): string {
  const sizes = decades(costs.map(({ size }) => size));
  const times = decades([...costs.map(({ ms }) => ms), ...costs.map(({ size }) => linear(through, size))]);
  const at = ({ size, ms }: Cost): Spot => ({
    x: round(left + share(size, sizes) * (right - left)),
    y: round(bottom - share(ms, times) * (bottom - top)),
  });
  const corner = { size: sizes[0] ?? 1, ms: times[0] ?? 1 };
  const ends = [costs[0], costs.at(-1)].flatMap((cost) =>
    cost === undefined ? [] : [at({ size: cost.size, ms: linear(through, cost.size) })],
  );
  const shapes = [
    polygon([
      { x: 0, y: 0 },
      { x: width, y: 0 },
      { x: width, y: height },
      { x: 0, y: height },
    ]),
    ...sizes.flatMap((size) => {
      const foot = at({ ...corner, size });
      return [stroke(foot, { x: foot.x, y: top }, thin), caption({ x: foot.x, y: bottom + 18 }, said(size), 'middle')];
    }),
    ...times.flatMap((ms) => {
      const start = at({ ...corner, ms });
      const name = `${said(ms / 1_000)} s`;
      return [stroke(start, { x: right, y: start.y }, thin), caption({ x: left - 8, y: start.y + 4 }, name, 'end')];
    }),
    ...lines(ends, { width: 1.4, dash: '6 4' }),
    ...lines(costs.map(at), { width: 2.4 }),
    ...costs.map((cost) => disc(at(cost), 4)),
    caption({ x: left, y: top - 10 }, 'processor time of a cold check; dashed: growing as the size does'),
    caption({ x: right, y: bottom + 38 }, 'files', 'end'),
  ];
  const words = element('g', { 'font-family': 'sans-serif' }, shapes);
  return `${drawing(width, height, 'What a check costs against the size of its library', words)}\n`;
}

const thin = { width: 0.4 };

function lines(spots: readonly Spot[], how: { width: number; dash?: string }) {
  return spots.slice(1).map((spot, at) => stroke(spots[at] ?? spot, spot, how));
}

function linear(through: Cost, size: number): number {
  return (through.ms / through.size) * size;
}

/** The powers of ten from the one below all values to the one above them. */
function decades(values: readonly number[]): readonly number[] {
  const from = Math.floor(Math.log10(Math.min(...values)));
  const to = Math.ceil(Math.log10(Math.max(...values)));
  return Array.from({ length: to - from + 1 }, (_, step) => 10 ** (from + step));
}

/** Where a value lies between the first and the last power of ten: 0 to 1. */
function share(value: number, powers: readonly number[]): number {
  const [from, to] = [Math.log10(powers[0] ?? 1), Math.log10(powers.at(-1) ?? 1)];
  return to === from ? 0 : (Math.log10(value) - from) / (to - from);
}

function said(value: number): string {
  return Number(value.toPrecision(3)).toLocaleString('en');
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
