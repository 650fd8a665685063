import type { LethalityScale } from '../../physics/lethality.ts';
import { type CurveLethality, lethalityOfCurve, type NotCounted } from '../../physics/lethality-curve.ts';
import { saturationTemperatureC } from '../../physics/steam.ts';
import type { CycleLog, LogRow } from './read-log.ts';

/** What the log is held against. Base units. */
export interface RecordQuestion {
  readonly log: CycleLog;
  readonly scale: LethalityScale;
  /** The temperatures that count as exposure. `highC` is infinite where nobody gives an upper end. */
  readonly band: { readonly lowC: number; readonly highC: number };
  /** Pressure of the air at the machine; undefined where it is not known, then a gauge pressure says nothing. */
  readonly atmosphereKPa: number | undefined;
  readonly uncertaintyK: number;
  /** Two readings further apart are a gap. */
  readonly longestStepS: number;
}

export interface Span {
  readonly fromS: number;
  readonly toS: number;
}

/** Kelvin that the steam was hotter (positive) or colder than saturated at its pressure. */
export interface Saturation {
  readonly lowestK: number;
  readonly highestK: number;
  readonly meanK: number;
  readonly readings: number;
}

export interface RecordAnalysis {
  /** The longest time without a break in which every reading was in the band. */
  readonly exposure: Span | undefined;
  /** All times in the band, broken or not. */
  readonly inBandS: number;
  readonly lowestInExposureC: number;
  readonly highestC: number;
  readonly lethality: CurveLethality | { readonly why: string };
  readonly notCounted: readonly NotCounted[];
  readonly saturation: Saturation | undefined;
  /** Seconds after the exposure in which the pressure was under that of the air; gaps count nothing. Undefined where it can't be told. */
  readonly dryingS: number | undefined;
}

/** The step that most readings have, times two and a half: what is longer is a gap. Seconds. */
export function usualLongestStep({ rows }: CycleLog): number {
  const steps = rows
    .slice(1)
    .map((row, index) => row.timeS - (rows[index]?.timeS ?? Number.NaN))
    .filter((step) => step > 0)
    .sort((a, b) => a - b);
  const middle = steps[Math.floor(steps.length / 2)];
  return middle === undefined ? 60 : middle * 2.5;
}

export function analyse(question: RecordQuestion): RecordAnalysis {
  const { log, scale, uncertaintyK, longestStepS } = question;
  const curve = lethalityOfCurve(scale, log.rows, { uncertaintyK, longestStepS });
  const notCounted = curve.ok ? curve.value.notCounted : [];
  const broken = new Set(notCounted.map(({ fromIndex }) => fromIndex));
  const { exposure, inBandS } = timesInBand(question, broken);
  const inside = log.rows.filter(
    ({ timeS }) => exposure !== undefined && timeS >= exposure.fromS && timeS <= exposure.toS,
  );
  return {
    exposure,
    inBandS,
    lowestInExposureC: endsOf(inside.map(({ temperatureC }) => temperatureC)).low,
    highestC: endsOf(log.rows.map(({ hottestC }) => hottestC)).high,
    lethality: curve.ok ? curve.value : { why: curve.message },
    notCounted,
    saturation: saturationIn(inside, question),
    dryingS: exposure === undefined ? undefined : dryingAfter(exposure.toS, question, broken),
  };
}

/** A step counts where both of its ends lie in the band; a gap or disorder ends the run. */
function timesInBand(
  { log, band, uncertaintyK }: RecordQuestion,
  broken: ReadonlySet<number>,
): { exposure: Span | undefined; inBandS: number } {
  const isIn = ({ temperatureC, hottestC }: LogRow): boolean =>
    temperatureC - uncertaintyK >= band.lowC && hottestC <= band.highC;
  let exposure: Span | undefined;
  let run: Span | undefined;
  let inBandS = 0;
  for (const [index, row] of log.rows.entries()) {
    const before = log.rows[index - 1];
    const counts = before !== undefined && !broken.has(index - 1) && isIn(before) && isIn(row);
    if (!counts || before === undefined) {
      run = undefined;
      continue;
    }
    inBandS += row.timeS - before.timeS;
    run = { fromS: run?.fromS ?? before.timeS, toS: row.timeS };
    if (exposure === undefined || run.toS - run.fromS > exposure.toS - exposure.fromS) exposure = run;
  }
  return { exposure, inBandS };
}

/** Undefined where the log has no pressure that can be told as absolute. */
export function absoluteKPa({ pressureKPa }: LogRow, { log, atmosphereKPa }: RecordQuestion): number | undefined {
  if (!Number.isFinite(pressureKPa)) return undefined;
  if (log.pressure === 'absolute') return pressureKPa;
  return log.pressure === 'gauge' && atmosphereKPa !== undefined ? pressureKPa + atmosphereKPa : undefined;
}

function saturationIn(rows: readonly LogRow[], question: RecordQuestion): Saturation | undefined {
  const differences: number[] = [];
  for (const row of rows) {
    const pressure = absoluteKPa(row, question);
    const saturated = pressure === undefined ? undefined : saturationTemperatureC(pressure);
    if (saturated?.ok === true) differences.push(row.temperatureC - saturated.value);
  }
  if (differences.length === 0) return undefined;
  let sum = 0;
  for (const difference of differences) sum += difference;
  const { low, high } = endsOf(differences);
  return { lowestK: low, highestK: high, meanK: sum / differences.length, readings: differences.length };
}

/** The lowest and highest of the numbers among them; NaN where there is none. */
export function endsOf(values: readonly number[]): { readonly low: number; readonly high: number } {
  let low = Number.NaN;
  let high = Number.NaN;
  for (const value of values) {
    if (Number.isNaN(value)) continue;
    if (!(value >= low)) low = Number.isNaN(low) || value < low ? value : low;
    if (!(value <= high)) high = Number.isNaN(high) || value > high ? value : high;
  }
  return { low, high };
}

function dryingAfter(endS: number, question: RecordQuestion, broken: ReadonlySet<number>): number | undefined {
  const { log, atmosphereKPa } = question;
  if (atmosphereKPa === undefined || log.pressure === undefined || log.pressure === 'unstated') return undefined;
  let seconds = 0;
  for (const [index, row] of log.rows.entries()) {
    const before = log.rows[index - 1];
    if (before === undefined || before.timeS < endS || broken.has(index - 1)) continue;
    const pressures = [absoluteKPa(before, question), absoluteKPa(row, question)];
    if (pressures.every((pressure) => pressure !== undefined && pressure < atmosphereKPa))
      seconds += row.timeS - before.timeS;
  }
  return seconds;
}
