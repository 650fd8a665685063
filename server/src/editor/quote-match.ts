import { formatQuantity } from '../quantity/format.ts';
import type { StageWord } from '../quantity/prose/meaning.ts';
import type { NumberMention, QuoteReading } from '../quantity/prose/prose.ts';
import type { Kind } from '../schema/kinds.ts';
import type { Group, Home } from './quote-homes.ts';
import { homesOf } from './quote-homes.ts';
import type { Section } from './quote-section.ts';
import { underHeading } from './quote-section.ts';

/** A number of the quote with the place proposed for it. */
export interface Placed {
  readonly group: Group;
  readonly home: Home;
  /** One number, or the two ends of a range. */
  readonly mentions: readonly NumberMention[];
}

export interface Matched {
  readonly placed: readonly Placed[];
  /** Numbers of the quote that have no place, as printed. */
  readonly left: readonly string[];
}

/**
 * Proposes a place for each number of a quote: the group whose stage and words the sentence has, the field whose words stand in the same
 * clause. The surest places are given first, and each field takes one number.
 */
export function matchNumbers(sentence: QuoteReading, kind: Kind, section: Section = noSection): Matched {
  const groups = homesOf[kind] ?? [];
  const reading = underHeading(sentence, section);
  const own = reading.numbers.filter((mention, index) => isOwnValue(mention, index, reading));
  const candidates = own.flatMap((mention) => homesFor(mention, reading, groups, section));
  candidates.sort((a, b) => b.score - a.score || a.mention.span.start - b.mention.span.start);
  const found = new Map<NumberMention, Candidate>();
  for (const candidate of candidates) {
    const isTaken = [...found.values()].some(({ group, home }) => group === candidate.group && home === candidate.home);
    if (!isTaken && !found.has(candidate.mention)) found.set(candidate.mention, candidate);
  }
  const placed = own.flatMap((mention) => {
    const best = found.get(mention);
    const mentions = mention.range === undefined ? [mention] : [mention, ...partnerOf(mention, reading)];
    return best === undefined ? [] : [{ group: best.group, home: best.home, mentions }];
  });
  const left = own.filter((mention) => !found.has(mention));
  return { placed, left: left.map((mention) => asPrinted(mention, reading)) };
}

/** With its other end, and with what is counted where no unit is printed: `5 passes`. */
function asPrinted(mention: NumberMention, reading: QuoteReading): string {
  const { quote } = reading;
  const [far = mention] = partnerOf(mention, reading);
  const end = Math.max(mention.span.end, far.span.end);
  const counted = far.units.length === 0 ? (/^[ -]\p{L}{2,30}/u.exec(quote.slice(end))?.[0] ?? '') : '';
  return quote.slice(mention.span.start, end + counted.length);
}

/** A page number, a tolerance, the far end of a range, the same value in a second unit, a total or half cycle: not a value of its own. */
function isOwnValue(mention: NumberMention, index: number, { numbers }: QuoteReading): boolean {
  if (mention.isReference || mention.isDifference || mention.tolerance !== undefined || mention.about !== undefined)
    return false;
  if (mention.range?.part === 'high') return false;
  if (mention.pair === undefined) return true;
  const partner = numbers[mention.pair];
  const own = isMetric(mention);
  return partner === undefined || own === isMetric(partner) ? mention.pair > index : own;
}

const metric: ReadonlySet<string> = new Set(['°C', 'K', 'kg', 'g', 'mm', 'cm', 'm', 'mL', 'L', 'kPa', 'bar', 'mbar']);

/** Of a value given twice, the metric one is encoded; the other stays in `as_written`. */
function isMetric({ quantities }: NumberMention): boolean {
  return quantities.some(({ unit }) => metric.has(unit));
}

function partnerOf({ range }: NumberMention, { numbers }: QuoteReading): readonly NumberMention[] {
  const partner = range === undefined ? undefined : numbers[range.partner];
  return partner === undefined ? [] : [partner];
}

interface Candidate {
  readonly mention: NumberMention;
  readonly group: Group;
  readonly home: Home;
  readonly score: number;
}

const noSection: Section = { text: '', stages: [] };

function homesFor(
  mention: NumberMention,
  reading: QuoteReading,
  groups: readonly Group[],
  section: Section,
): readonly Candidate[] {
  const measured = mention.quantities.map(({ dimension }) => dimension);
  const dimensions = new Set(measured.filter((one) => one !== 'ph' || mention.amount <= highestPh));
  const text = reading.quote.toLowerCase();
  const found: Candidate[] = [];
  const governing = stageBefore(mention, reading);
  for (const group of groups) {
    const context = contextOf(group, reading, text, section.text);
    if (context === 0) continue;
    const governed = governing !== undefined && group.stages.includes(governing) ? governs + besides(group) : 0;
    for (const home of group.fields) {
      const fits = dimensions.has(home.dimension) || (measured.length === 0 && unitless(home, text, mention));
      const near = isBeside(home, reading) ? nearness(home, mention, reading) : undefined;
      if (fits && near !== undefined) found.push({ mention, group, home, score: context + near + governed });
    }
  }
  return found;
}

const highestPh = 14;

function isBeside({ beside }: Home, { numbers }: QuoteReading): boolean {
  return (
    beside === undefined || numbers.some(({ quantities }) => quantities.some(({ dimension }) => dimension === beside))
  );
}

/** pH and A0 are printed without a unit: their name must stand before the number. What is counted stands beside it (`100 reprocessing cycles`). */
function unitless({ dimension, near, counted }: Home, text: string, { span }: NumberMention): boolean {
  if (dimension === 'count') return counted !== undefined;
  if (dimension !== 'ph' && dimension !== 'a0') return false;

  const before = text.slice(Math.max(0, span.start - 40), span.start);
  return near.some((word) => before.includes(word));
}

function contextOf(group: Group, { stages }: QuoteReading, text: string, above: string): number {
  if (group.unlessStage?.some((other) => stages.some(({ stage }) => stage === other))) return 0;
  if (group.besideStage !== undefined && !stages.some(({ stage }) => stage === group.besideStage)) return 0;
  const named = stages.filter(({ stage }) => group.stages.includes(stage)).length;
  const words = group.words.filter((word) => text.includes(word)).length;
  const heading = group.words.some((word) => above.includes(word)) ? 3 : 0;
  return named * 4 + words * 3 + heading;
}

/** Less than a word of the group: a `flushing port` of a washer is no step of flushing. */
const governs = 2;

/** `Thermal disinfection in the washer`: the phase of a machine is meant, more surely than disinfection by itself or the wash. */
function besides({ besideStage }: Group): number {
  return besideStage === undefined ? 0 : 6;
}

/**
 * `Rinse for 1 minute and flush with 60 mL`: a number belongs rather to the stage named last before it in its sentence. `Disinfect in the
 * washer at 90 °C`: the machine is only where that happens.
 */
function stageBefore({ span, sentence }: NumberMention, { stages, numbers }: QuoteReading): StageWord | undefined {
  const start = Math.max(0, ...numbers.filter((one) => one.sentence < sentence).map((one) => one.span.end));
  const before = stages.filter((one) => one.span.start >= start && one.span.end <= span.start);
  const [last, other] = [before.at(-1), before.at(-2)];
  if (last?.stage !== 'mechanical' || (other?.stage !== 'disinfection' && other?.stage !== 'dry')) return last?.stage;
  const isBetween = numbers.some((one) => one.span.start > other.span.end && one.span.end < last.span.start);
  return isBetween ? last.stage : other.stage;
}

const farthest = 60;

/**
 * Up to 20, for a range as for one number: a word of the field right beside the number counts most. Before the number no other number
 * may stand between; behind it no comma either. A field that asks for words and has none beside the number is no place for it: undefined.
 */
function nearness({ near, leads }: Home, mention: NumberMention, reading: QuoteReading): number | undefined {
  if (near.length === 0) return 0;
  const { quote, numbers } = reading;
  const [far = mention] = partnerOf(mention, reading);
  const twin = mention.pair === undefined ? mention : (numbers[mention.pair] ?? mention);
  const span = {
    start: Math.min(mention.span.start, twin.span.start),
    end: Math.max(mention.span.end, far.span.end, twin.span.end),
  };
  const text = quote.toLowerCase();
  const before = Math.max(
    0,
    span.start - farthest,
    ...numbers.filter((one) => one.span.end <= span.start).map((one) => one.span.end),
  );
  const itself = text.slice(span.start, span.end);
  if (near.some((word) => itself.includes(word))) return 20;
  const clause = text.slice(span.end, span.end + farthest).search(/[,;.:(]/);
  const after = clause < 0 ? span.end + farthest : span.end + clause;
  const behind = Math.min(after, ...numbers.filter((one) => one.span.start >= span.end).map((one) => one.span.start));
  let best = leads === true && near.some((word) => text.startsWith(word)) ? 8 : undefined;
  for (const word of near) {
    const left = text.slice(before, span.start).lastIndexOf(word);
    const right = text.slice(span.end, behind).indexOf(word);
    // `3 minutes with a drying time of 20 minutes`: a word between two numbers belongs to the one behind it, unless a comma parts them.
    const isParted = left >= 0 && /[,;]/.test(text.slice(before + left, span.start));
    if (left >= 0) best = Math.max(best ?? 0, (isParted ? 12 : 20) - (span.start - before - left) / 4);
    if (right >= 0) best = Math.max(best ?? 0, 15 - right / 4);
  }
  return best;
}

/** `132 °C` as our spelling has it; the digits are those of the page. */
export function amountOf(mention: NumberMention, home: Home): string {
  const quantity = mention.quantities.find(({ dimension }) => dimension === home.dimension);
  if (quantity !== undefined) return formatQuantity(quantity);
  return home.counted === undefined ? String(mention.amount) : `${mention.amount} ${home.counted}`;
}
