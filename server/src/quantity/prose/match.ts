import type { Dimension, QuantityValue } from '../quantity.ts';
import { withinRounding } from '../rounding.ts';
import type { Unit } from '../unit-list.ts';
import { unitsOf } from '../units.ts';
import type { ProseBound } from './meaning.ts';
import type { NumberReading } from './number-forms.ts';
import type { NumberMention, QuoteReading } from './prose.ts';
import { compareAmount, isEqualAmount } from './ratio.ts';

/** How a claimed number stands in a quote, best first. */
export type MatchKind =
  | 'exact'
  | 'converted-within-rounding'
  /** Only by skipping a decimal sign or taking a thousands sign for one, or the other way round. */
  | 'only-by-decimal-comma'
  /** Only by gluing a raised footnote to the digits, or cutting one off. */
  | 'only-by-footnote'
  | 'absent';

export interface Match {
  readonly kind: MatchKind;
  /** Numbers of the quote that match in this way. For `absent`: the nearest ones of the same dimension, nearest first. */
  readonly mentions: readonly NumberMention[];
}

const rank: Readonly<Record<MatchKind, number>> = {
  exact: 0,
  'converted-within-rounding': 1,
  'only-by-decimal-comma': 2,
  'only-by-footnote': 3,
  absent: 4,
};
const unitless: ReadonlySet<Dimension> = new Set(['count', 'number', 'ph', 'a0', 'magnification']);
const mostNearest = 3;

/** Looks for a claimed number in the quote. `dimension` is the field's own (a tolerance asks for `temperature-difference`). */
export function matchNumber(reading: QuoteReading, value: QuantityValue, dimension: Dimension): Match {
  const claimedUnit = unitsOf(dimension).find((unit) => unit.name === value.unit);
  const isPrintedWithUnit = reading.numbers.some(
    (mention) => !mention.isReference && unitOf(mention, dimension) !== undefined,
  );
  let kind: MatchKind = 'absent';
  let mentions: NumberMention[] = [];
  for (const mention of reading.numbers) {
    if (mention.isReference) continue;
    const found = matchMention(
      mention,
      value,
      dimension,
      claimedUnit,
      isPrintedWithUnit ? 'units-printed' : 'no-units',
    );
    if (found === 'absent' || rank[found] > rank[kind]) continue;
    if (found === 'converted-within-rounding' && isPrintedOtherwise(reading, mention, value)) continue;
    if (found !== kind) mentions = [];
    kind = found;
    mentions.push(mention);
  }
  return kind === 'absent' ? { kind, mentions: nearestMentions(reading, value, dimension) } : { kind, mentions };
}

/** `25 lb (11.3 kg)`: who writes kilograms copies them from the page; what 25 lb would come to does not count beside it. */
function isPrintedOtherwise(reading: QuoteReading, mention: NumberMention, value: QuantityValue): boolean {
  const partner = mention.pair === undefined ? undefined : reading.numbers[mention.pair];
  const printed = partner?.quantities.find(({ unit }) => unit === value.unit);
  const own = mention.quantities.find(({ dimension }) => dimension === value.dimension);
  if (printed === undefined || own === undefined || !withinRounding(own, printed)) return false;
  return !isEqualAmount(printed.amount, value.amount) && !mention.quantities.some(({ unit }) => unit === value.unit);
}

function unitOf(mention: NumberMention, dimension: Dimension): Unit | undefined {
  return mention.units.find((unit) => unit.dimension === dimension);
}

function matchMention(
  mention: NumberMention,
  value: QuantityValue,
  dimension: Dimension,
  claimedUnit: Unit | undefined,
  printed: 'units-printed' | 'no-units',
): MatchKind {
  const unit = unitOf(mention, dimension);
  let best: MatchKind = 'absent';
  for (const [at, reading] of mention.readings.entries()) {
    const found =
      unit === undefined
        ? matchBare(mention, reading, value, dimension, printed)
        : compareAmount(reading, unit, value, claimedUnit);
    if (found === 'apart') continue;
    const kind = kindOf(reading, at, found);
    if (rank[kind] < rank[best]) best = kind;
  }
  return best;
}

/** A number without a unit answers for a dimension that is written without one, or where the quote prints no unit of the kind at all. */
function matchBare(
  mention: NumberMention,
  reading: NumberReading,
  value: QuantityValue,
  dimension: Dimension,
  printed: 'units-printed' | 'no-units',
): 'equal' | 'apart' {
  if (mention.units.length > 0) return 'apart';
  if (!unitless.has(dimension) && printed === 'units-printed') return 'apart';
  return isEqualAmount(reading.amount, value.amount) ? 'equal' : 'apart';
}

function kindOf(reading: NumberReading, at: number, found: 'equal' | 'rounded'): MatchKind {
  if (reading.how === 'footnote-glued' || reading.how === 'footnote-split') return 'only-by-footnote';
  if (at > 0) return found === 'equal' ? 'only-by-decimal-comma' : 'absent';
  return found === 'equal' ? 'exact' : 'converted-within-rounding';
}

function nearestMentions(reading: QuoteReading, value: QuantityValue, dimension: Dimension): NumberMention[] {
  const near: { readonly mention: NumberMention; readonly apart: number }[] = [];
  for (const mention of reading.numbers) {
    const quantity = mention.quantities.find((one) => one.dimension === dimension);
    if (quantity !== undefined) near.push({ mention, apart: Math.abs(quantity.value - value.value) });
  }
  near.sort((a, b) => a.apart - b.apart);
  return near.slice(0, mostNearest).map((one) => one.mention);
}

/** The bound words the quote gives a number, one for each place where the number stands. Empty when it does not stand there. */
export function boundOf(reading: QuoteReading, value: QuantityValue): readonly ProseBound[] {
  const match = matchNumber(reading, value, value.dimension);
  return match.kind === 'absent' ? [] : match.mentions.map((mention) => mention.bound);
}

/** One quantity printed in two units that do not agree. */
export interface PairFault {
  readonly first: NumberMention;
  readonly second: NumberMention;
}

/** Pairs of levels, volumes, masses, ... that differ beyond rounding (`270 °F (134 °C)`). Differences are `deltaPairErrors`' business. */
export function unitPairMismatches(reading: QuoteReading): PairFault[] {
  return pairsOf(reading).filter((pair) => !isWrongOffset(pair) && !agree(pair));
}

/** Differences and rates converted as if they were temperatures, with the offset of 32 (`±3 °C (±37.4 °F)`, `15 °C/min (59 °F/min)`). */
export function deltaPairErrors(reading: QuoteReading): PairFault[] {
  return pairsOf(reading).filter((pair) => !agree(pair) && isWrongOffset(pair));
}

function pairsOf(reading: QuoteReading): PairFault[] {
  const pairs: PairFault[] = [];
  for (const [index, first] of reading.numbers.entries()) {
    const second = first.pair === undefined || first.pair < index ? undefined : reading.numbers[first.pair];
    if (second !== undefined) pairs.push({ first, second });
  }
  return pairs;
}

function sharedQuantities(pair: PairFault): readonly [QuantityValue, QuantityValue] | undefined {
  for (const a of pair.first.quantities) {
    const b = pair.second.quantities.find((one) => one.dimension === a.dimension);
    if (b !== undefined) return [a, b];
  }
  return undefined;
}

function agree(pair: PairFault): boolean {
  const shared = sharedQuantities(pair);
  return shared === undefined || withinRounding(shared[0], shared[1]);
}

function isWrongOffset(pair: PairFault): boolean {
  const shared = sharedQuantities(pair);
  if (shared === undefined) return false;
  const [a, b] = shared;
  if (a.dimension !== 'temperature-difference' && a.dimension !== 'temperature-rate') return false;
  const fahrenheit = a.unit.startsWith('°F') ? a : b;
  const celsius = fahrenheit === a ? b : a;
  return Math.abs(celsius.amount * 1.8 + 32 - fahrenheit.amount) <= wrongOffsetSlack;
}

/** A printed °F figure is rounded to whole degrees at worst. */
const wrongOffsetSlack = 1;
