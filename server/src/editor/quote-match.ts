import { formatQuantity } from '../quantity/format.ts';
import type { NumberMention, QuoteReading } from '../quantity/prose/prose.ts';
import type { Kind } from '../schema/kinds.ts';
import type { Group, Home } from './quote-homes.ts';
import { homesOf } from './quote-homes.ts';

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

/** Proposes a place for each number of a quote: the group whose stage and words the sentence has, the field whose words stand nearest. */
export function matchNumbers(reading: QuoteReading, kind: Kind): Matched {
  const groups = homesOf[kind] ?? [];
  const placed: Placed[] = [];
  const left: string[] = [];
  for (const [index, mention] of reading.numbers.entries()) {
    if (!isOwnValue(mention, index, reading)) continue;
    const mentions = mention.range === undefined ? [mention] : [mention, ...partnerOf(mention, reading)];
    const best = bestHome(mention, reading, groups, placed);
    if (best === undefined) left.push(reading.quote.slice(mention.span.start, mention.span.end));
    else placed.push({ ...best, mentions });
  }
  return { placed, left };
}

/** A page number, a tolerance, the far end of a range, the same value in a second unit, a total or half cycle: not a value of its own. */
function isOwnValue(mention: NumberMention, index: number, { numbers }: QuoteReading): boolean {
  if (mention.isReference || mention.isDifference || mention.tolerance !== undefined || mention.about !== undefined)
    return false;
  if (mention.range?.part === 'high') return false;
  if (mention.pair === undefined) return true;
  const partner = numbers[mention.pair];
  const isCelsius = mention.quantities[0]?.unit === '°C';
  return partner?.quantities[0]?.unit === '°C' ? false : isCelsius || mention.pair > index;
}

function partnerOf({ range }: NumberMention, { numbers }: QuoteReading): readonly NumberMention[] {
  const partner = range === undefined ? undefined : numbers[range.partner];
  return partner === undefined ? [] : [partner];
}

interface Scored {
  readonly group: Group;
  readonly home: Home;
  readonly score: number;
}

function bestHome(
  mention: NumberMention,
  reading: QuoteReading,
  groups: readonly Group[],
  taken: readonly Placed[],
): Scored | undefined {
  let best: Scored | undefined;
  const dimensions = new Set(mention.quantities.map(({ dimension }) => dimension));
  const text = reading.quote.toLowerCase();
  for (const group of groups) {
    const context = contextOf(group, reading, text);
    if (context === 0) continue;
    for (const home of group.fields) {
      const fits = dimensions.has(home.dimension) || (dimensions.size === 0 && unitless(home, text, mention));
      if (!fits || taken.some((one) => one.home === home)) continue;
      const score = context + nearness(home, text, mention);
      if (best === undefined || score > best.score) best = { group, home, score };
    }
  }
  return best;
}

/** pH and A0 are printed without a unit: their name must stand before the number. */
function unitless({ dimension, near }: Home, text: string, { span }: NumberMention): boolean {
  if (dimension !== 'ph' && dimension !== 'a0') return false;
  const before = text.slice(Math.max(0, span.start - 40), span.start);
  return near.some((word) => before.includes(word));
}

function contextOf(group: Group, { stages }: QuoteReading, text: string): number {
  const named = stages.filter(({ stage }) => group.stages.includes(stage)).length;
  const words = group.words.filter((word) => text.includes(word)).length;
  return named * 4 + words * 3;
}

const farthest = 40;

/** Up to 20: a word of the field right beside the number counts most; words before it more than words behind it. */
function nearness({ near }: Home, text: string, { span }: NumberMention): number {
  let best = 0;
  for (const word of near) {
    const before = text.lastIndexOf(word, span.start);
    const after = text.indexOf(word, span.end);
    if (before >= 0 && span.start - before <= farthest) best = Math.max(best, 20 - (span.start - before) / 2);
    if (after >= 0 && after - span.end <= farthest) best = Math.max(best, 16 - (after - span.end) / 2);
  }
  return best;
}

/** `132 °C` as our spelling has it; the digits are those of the page. */
export function amountOf(mention: NumberMention, home: Home): string {
  const quantity = mention.quantities.find(({ dimension }) => dimension === home.dimension);
  return quantity === undefined ? String(mention.amount) : formatQuantity(quantity);
}
