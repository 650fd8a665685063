import { caption, drawing, stroke } from '../drawings/svg.ts';
import type { Markup } from '../markup.ts';
import { element, text } from '../markup.ts';
import type { RecordAnalysis, RecordQuestion } from './analyse.ts';
import { absoluteKPa, endsOf } from './analyse.ts';

const frame = { left: 44, right: 596, top: 18, bottom: 250 };
const mostPoints = 1500;

interface Scale {
  x(timeS: number): number;
  y(temperatureC: number): number;
  p(pressureKPa: number): number;
  readonly lowC: number;
  readonly highC: number;
  readonly lowS: number;
  readonly highS: number;
  readonly highKPa: number;
}

/** Temperature (full line) and absolute pressure (dashes) over time; the band is grey, the exposure is bracketed, gaps stay open. */
export function recordPlot(question: RecordQuestion, analysis: RecordAnalysis): Markup {
  const scale = scaleOf(question);
  if (scale === undefined) return '' as Markup;
  return drawing(
    640,
    290,
    'Temperature and pressure over time',
    bandShape(question, scale),
    stroke({ x: frame.left, y: frame.top }, { x: frame.left, y: frame.bottom }, { width: 1 }),
    stroke({ x: frame.left, y: frame.bottom }, { x: frame.right, y: frame.bottom }, { width: 1 }),
    element('g', { 'data-told': 'log' }, [...ticks(scale)]),
    ...curves(question, analysis, scale),
    exposureMark(analysis, scale),
    caption({ x: frame.left, y: 12 }, '°C, full line'),
    caption({ x: frame.right, y: 12 }, scale.highKPa > 0 ? 'kPa absolute, dashes' : '', 'end'),
    caption({ x: (frame.left + frame.right) / 2, y: 284 }, 'minutes', 'middle'),
  );
}

function scaleOf(question: RecordQuestion): Scale | undefined {
  const rows = question.log.rows.filter(
    ({ timeS, temperatureC }) => Number.isFinite(timeS) && Number.isFinite(temperatureC),
  );
  if (rows.length < 2) return undefined;
  const { low: lowS, high: highS } = endsOf(rows.map(({ timeS }) => timeS));
  const { low: lowC, high: highC } = endsOf([...rows.map(({ temperatureC }) => temperatureC), question.band.lowC]);
  const { high: highKPa } = endsOf([0, ...rows.flatMap((row) => absoluteKPa(row, question) ?? [])]);
  const across = Math.max(1, highS - lowS);
  const up = Math.max(1, highC - lowC + 5);
  return {
    lowC,
    highC,
    lowS,
    highS,
    highKPa,
    x: (timeS) => tenths(frame.left + ((timeS - lowS) / across) * (frame.right - frame.left)),
    y: (temperature) => tenths(frame.bottom - ((temperature - lowC) / up) * (frame.bottom - frame.top)),
    p: (pressure) => tenths(frame.bottom - (pressure / Math.max(1, highKPa * 1.05)) * (frame.bottom - frame.top)),
  };
}

function tenths(value: number): number {
  return Math.round(value * 10) / 10;
}

function bandShape({ band }: RecordQuestion, scale: Scale): Markup {
  const top = scale.y(Math.min(band.highC, scale.highC + 4));
  return element('rect', {
    x: frame.left,
    y: top,
    width: frame.right - frame.left,
    height: Math.max(1, tenths(scale.y(band.lowC) - top)),
    fill: '#ddd',
  });
}

function ticks(scale: Scale): readonly Markup[] {
  const marks: Markup[] = [];
  for (const temp of steps(scale.lowC, scale.highC, 6)) {
    marks.push(stroke({ x: frame.left - 4, y: scale.y(temp) }, { x: frame.left, y: scale.y(temp) }, { width: 1 }));
    marks.push(caption({ x: frame.left - 7, y: scale.y(temp) + 4 }, String(temp), 'end'));
  }
  for (const minute of steps(scale.lowS / 60, scale.highS / 60, 8)) {
    const x = scale.x(minute * 60);
    marks.push(
      stroke({ x, y: frame.bottom }, { x, y: frame.bottom + 4 }, { width: 1 }),
      caption({ x, y: frame.bottom + 17 }, String(minute), 'middle'),
    );
  }
  for (const pressure of scale.highKPa > 0 ? steps(0, scale.highKPa, 5) : [])
    marks.push(caption({ x: frame.right + 5, y: scale.p(pressure) + 4 }, String(pressure)));
  return marks;
}

/** Round numbers between two ends, about so many. */
function steps(low: number, high: number, about: number): readonly number[] {
  const raw = Math.max(1e-6, (high - low) / about);
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = [1, 2, 5, 10].map((factor) => factor * power).find((one) => one >= raw) ?? raw;
  const found: number[] = [];
  for (let value = Math.ceil(low / step) * step; value <= high && found.length < 20; value += step)
    found.push(Number(value.toPrecision(6)));
  return found;
}

/** Lines break where nothing was counted, so that a gap is seen as a gap. */
function curves(question: RecordQuestion, { notCounted }: RecordAnalysis, scale: Scale): readonly Markup[] {
  const broken = new Set(notCounted.map(({ fromIndex }) => fromIndex));
  const every = Math.max(1, Math.floor(question.log.rows.length / mostPoints));
  const temperature: string[][] = [[]];
  const pressure: string[][] = [[]];
  for (const [index, row] of question.log.rows.entries()) {
    if (broken.has(index - 1)) {
      temperature.push([]);
      pressure.push([]);
    }
    if (index % every !== 0 || !Number.isFinite(row.timeS) || !Number.isFinite(row.temperatureC)) continue;
    temperature.at(-1)?.push(`${scale.x(row.timeS)},${scale.y(row.temperatureC)}`);
    const absolute = absoluteKPa(row, question);
    if (absolute !== undefined) pressure.at(-1)?.push(`${scale.x(row.timeS)},${scale.p(absolute)}`);
  }
  return [
    ...pressure.map((points) => polyline(points, 1.2, '5 4')),
    ...temperature.map((points) => polyline(points, 2.2)),
  ];
}

function polyline(points: readonly string[], width: number, dash?: string): Markup {
  return element('polyline', {
    points: points.join(' '),
    fill: 'none',
    stroke: '#000',
    'stroke-width': width,
    'stroke-dasharray': dash,
  });
}

function exposureMark({ exposure }: RecordAnalysis, scale: Scale): Markup {
  if (exposure === undefined) return text('');
  const [from, to] = [scale.x(exposure.fromS), scale.x(exposure.toS)];
  const y = frame.bottom - 8;
  return element('g', {}, [
    stroke({ x: from, y }, { x: to, y }, { width: 3 }),
    stroke({ x: from, y: y - 6 }, { x: from, y: y + 6 }, { width: 2 }),
    stroke({ x: to, y: y - 6 }, { x: to, y: y + 6 }, { width: 2 }),
  ]);
}
