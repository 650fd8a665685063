import {
  bareRate,
  type Lethality,
  type LethalityScale,
  READABLE_C,
  scaleCheck,
  uncertaintyCheck,
} from './lethality.ts';
import { type Answer, answer, outOfRange, type RangeReason, refuse } from './physics.ts';

/*
 * F0 and A0 of a logged curve. Between two readings the temperature is taken as a straight line and counted exactly. Adding up
 * trapezoids or left rectangles is not offered: with readings far apart both count too much, which is the unsafe side.
 */

/** One reading of one probe. Use the coldest probe. */
export interface Reading {
  readonly timeS: number;
  readonly temperatureC: number;
}

export interface CurveSettings {
  /** Measuring uncertainty to take off every reading first. */
  readonly uncertaintyK: number;
  /** Two readings further apart than this are a gap. */
  readonly longestStepS: number;
}

/** Why the time between two neighbouring readings counted nothing. */
export type NotCountedReason = 'gap' | 'out-of-order' | 'unreadable';

/** The step from reading `fromIndex` to the next, as given. */
export interface NotCounted {
  readonly fromIndex: number;
  readonly reason: NotCountedReason;
}

/** `lethality` is exact for straight lines between readings; `lowerBound` counts each step at its colder end: use it to decide. */
export interface CurveLethality {
  readonly lethality: Lethality;
  readonly lowerBound: Lethality;
  readonly countedS: number;
  readonly notCounted: readonly NotCounted[];
}

export type CurveReason = RangeReason | 'too-few-readings';

/**
 * Lethality of a logged curve. Readings are taken in the order given and never sorted. A gap, an unreadable reading, and
 * a reading that is not later than one before it count nothing, neither to them nor from them, and are listed.
 */
export function lethalityOfCurve(
  scale: LethalityScale,
  readings: readonly Reading[],
  settings: CurveSettings,
): Answer<CurveLethality, CurveReason> {
  const bad = outOfRange(scaleCheck(scale), uncertaintyCheck(settings.uncertaintyK), {
    name: 'longest step between readings',
    value: settings.longestStepS,
    low: 0,
    high: 1e9,
    unit: ' s',
  });
  if (bad) return bad;
  if (readings.length < 2) return refuse('too-few-readings', 'A curve needs two readings or more.');
  return answer(addUp(scale, readings, settings));
}

function addUp(scale: LethalityScale, readings: readonly Reading[], settings: CurveSettings): CurveLethality {
  const { uncertaintyK, longestStepS } = settings;
  const notCounted: NotCounted[] = [];
  let exactS = 0;
  let lowerS = 0;
  let countedS = 0;
  for (const { fromIndex, from, to, reason } of steps(readings, longestStepS)) {
    if (reason !== undefined) {
      notCounted.push({ fromIndex, reason });
      continue;
    }
    const seconds = to.timeS - from.timeS;
    const start = from.temperatureC - uncertaintyK;
    const end = to.temperatureC - uncertaintyK;
    exactS += straightLine(scale, start, end, seconds);
    lowerS += bareRate(scale, Math.min(start, end)) * seconds;
    countedS += seconds;
  }
  return {
    lethality: { scale, equivalentS: exactS, uncertaintyK },
    // Rounding must not lift the bound over the exact amount when every step is level.
    lowerBound: { scale, equivalentS: Math.min(lowerS, exactS), uncertaintyK },
    countedS,
    notCounted,
  };
}

interface Step {
  readonly fromIndex: number;
  readonly from: Reading;
  readonly to: Reading;
  readonly reason: NotCountedReason | undefined;
}

function* steps(readings: readonly Reading[], longestStepS: number): Generator<Step> {
  let latestS = Number.NEGATIVE_INFINITY;
  let from: Reading | undefined;
  let fromIsGood = false;
  for (const [index, to] of readings.entries()) {
    const fault = faultOf(to, latestS);
    if (from !== undefined) {
      const fromFault = fromIsGood ? undefined : (faultOf(from, latestS) ?? 'out-of-order');
      const gap = to.timeS - from.timeS > longestStepS ? 'gap' : undefined;
      yield { fromIndex: index - 1, from, to, reason: fault ?? fromFault ?? gap };
    }
    from = to;
    fromIsGood = fault === undefined;
    if (fromIsGood) latestS = to.timeS;
  }
}

function faultOf(reading: Reading, latestS: number): NotCountedReason | undefined {
  const { timeS, temperatureC } = reading;
  const readable = Number.isFinite(timeS) && temperatureC >= READABLE_C.low && temperatureC <= READABLE_C.high;
  if (!readable) return 'unreadable';
  return timeS > latestS ? undefined : 'out-of-order';
}

/** Exact integral over a straight line of temperature: seconds x (L2 - L1)/ln(L2/L1), after cutting off what is too cold. */
function straightLine(scale: LethalityScale, start: number, end: number, seconds: number): number {
  const cold = Math.min(start, end);
  const warm = Math.max(start, end);
  const floor = scale.lowestCountedC ?? Number.NEGATIVE_INFINITY;
  if (warm < floor) return 0;
  const counted = Math.max(cold, floor);
  const share = warm > cold ? (warm - counted) / (warm - cold) : 1;
  // ln(L2/L1) is known from the temperatures themselves, so nearly level lines lose no digits.
  const logRise = ((warm - counted) * Math.LN10) / scale.zK;
  const mean = logRise === 0 ? 1 : Math.expm1(logRise) / logRise;
  return seconds * share * mean * bareRate(scale, counted);
}
