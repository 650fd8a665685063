import type { Span } from '../base/span.ts';
import { formatQuantity } from '../quantity/format.ts';
import type { StageWord } from '../quantity/prose/meaning.ts';
import type { NumberMention, QuoteReading } from '../quantity/prose/prose.ts';
import type { Dimension } from '../quantity/quantity.ts';
import type { Kind } from '../schema/kinds.ts';
import {
  bracketAt,
  isAlike,
  isAside,
  partsBefore,
  partsBehind,
  phaseBefore,
  rowAround,
  withoutNames,
} from './quote-clauses.ts';
import type { Group, Home } from './quote-homes.ts';
import { elsewhere, homesOf } from './quote-homes.ts';
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
  const reading = underHeading(sentence, section);
  const own = reading.numbers.filter((mention, index) => isOwnValue(mention, index, reading));
  const sought: Sought = { reading, own, words: withoutNames(reading), above: section.text };
  const candidates = own
    .filter((mention) => !isAside(mention, own, reading))
    .flatMap((mention) => homesFor(mention, sought, homesOf[kind] ?? []));
  candidates.sort((a, b) => b.score - a.score || a.mention.span.start - b.mention.span.start);
  const found = chosenOf(candidates, reading);
  const placed = own.flatMap((mention) => {
    const best = found.get(mention);
    const mentions = mention.range === undefined ? [mention] : [mention, ...partnerOf(mention, reading)];
    return best === undefined ? [] : [{ group: best.group, home: best.home, mentions }];
  });
  const left = own.filter((mention) => !found.has(mention));
  return { placed, left: left.map((mention) => asPrinted(mention, reading)) };
}

/** A number that finds its field taken by another. */
interface Rivals {
  readonly loser: Candidate;
  readonly holder: Candidate;
}

/**
 * The surest first. A number whose field is taken goes to no other group, unless a word of that stands beside it: a second temperature of
 * a cycle is not the temperature of a drying that the sentence names as well.
 */
function chosenOf(candidates: readonly Candidate[], reading: QuoteReading): ReadonlyMap<NumberMention, Candidate> {
  const found = new Map<NumberMention, Candidate>();
  const lost = new Map<NumberMention, Rivals>();
  for (const candidate of candidates) {
    const { mention, group, home, near } = candidate;
    const before = lost.get(mention)?.loser;
    if (found.has(mention) || (before !== undefined && before.group !== group && near === 0)) continue;
    const holder = [...found.values()].find((other) => other.group === group && other.home === home);
    if (holder === undefined || home.field === elsewhere) found.set(mention, candidate);
    else if (before === undefined) lost.set(mention, { loser: candidate, holder });
  }
  for (const rivals of lost.values()) if (!found.has(rivals.loser.mention)) giveUp(found, rivals, reading);
  for (const [mention, { home }] of found) if (home.field === elsewhere) found.delete(mention);
  return found;
}

/**
 * Two numbers for one field: what stands in the row of the second one (`2 min cold, then 5 min at 55 °C`) does not belong to the first. Of
 * two that bear the word of the field alike (`dry 40 min, otherwise dry 20 min`) none is surer.
 */
function giveUp(found: Map<NumberMention, Candidate>, { loser, holder }: Rivals, reading: QuoteReading): void {
  const isEqual = loser.near > 0 && Math.abs(loser.near - holder.near) <= asSure;
  if (isOtherEnd(holder.mention, loser.mention)) return;
  const row = rowAround(reading, loser.mention);
  if (isEqual) found.delete(holder.mention);
  else if (holder.mention.span.end <= row.start || holder.mention.span.start >= row.end)
    leaveRow(found, holder.group, row);
}

function leaveRow(found: Map<NumberMention, Candidate>, whose: Group, row: Span): void {
  for (const [mention, { group }] of found)
    if (group === whose && mention.span.start >= row.start && mention.span.end <= row.end) found.delete(mention);
}

const asSure = 2;

/** `at least 4 min, at most 18 min`: two ends of one value, not two rows. */
function isOtherEnd(a: NumberMention, b: NumberMention): boolean {
  return (a.bound === 'at_least' && b.bound === 'at_most') || (a.bound === 'at_most' && b.bound === 'at_least');
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
export function isOwnValue(mention: NumberMention, index: number, { numbers }: QuoteReading): boolean {
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

export function partnerOf({ range }: NumberMention, { numbers }: QuoteReading): readonly NumberMention[] {
  const partner = range === undefined ? undefined : numbers[range.partner];
  return partner === undefined ? [] : [partner];
}

interface Candidate {
  readonly mention: NumberMention;
  readonly group: Group;
  readonly home: Home;
  readonly near: number;
  readonly score: number;
}

/** What all numbers of a sentence are looked at with. */
interface Sought {
  readonly reading: QuoteReading;
  readonly own: readonly NumberMention[];
  /** The quote in small letters, without names that are spelled like steps. */
  readonly words: string;
  /** The heading, in small letters. */
  readonly above: string;
}

const noSection: Section = { text: '', stages: [] };

function homesFor(mention: NumberMention, sought: Sought, groups: readonly Group[]): readonly Candidate[] {
  const { reading, words, above } = sought;
  const measured = mention.quantities.map(({ dimension }) => dimension);
  const dimensions = new Set(measured.filter((one) => one !== 'ph' || mention.amount <= highestPh));
  const text = reading.quote.toLowerCase();
  const found: Candidate[] = [];
  const governing = stageBefore(mention, reading);
  const phase = phaseBefore(words, mention);
  for (const group of groups) {
    const context = contextOf(group, reading, text, above);
    if (context === 0) continue;
    const governed = governing !== undefined && group.stages.includes(governing) ? governs + besides(group) : 0;
    const later = governing !== undefined && governed === 0 && isNamedLater(group, mention, reading) ? isLater : 0;
    for (const home of group.fields) {
      if (home.ofStage !== undefined && !reading.stages.some(({ stage }) => home.ofStage?.includes(stage))) continue;
      const fits = dimensions.has(home.dimension) || (measured.length === 0 && unitless(home, text, mention));
      if (!fits || !isBeside(home, mention, sought) || (isLong(mention) && !ofLongTimes.has(group.path))) continue;
      const near =
        nearness(home, mention, sought) ?? (group.path === phase && home.field !== elsewhere ? underPhase : undefined);
      if (near === undefined || (near <= underPhase && isOtherPhase(group, phase, reading))) continue;
      found.push({
        mention,
        group,
        home,
        near,
        score: context + near + governed - later + (home.beside === undefined ? 0 : 1),
      });
    }
  }
  return found;
}

/** Months and years are no times of a step or a cycle. */
const ofLongTimes: ReadonlySet<string> = new Set(['storage', 'limits', '']);
const longUnits: ReadonlySet<string> = new Set(['weeks', 'months', 'years']);

function isLong({ quantities }: NumberMention): boolean {
  return quantities.length > 0 && quantities.every(({ unit }) => longUnits.has(unit));
}

const highestPh = 14;
const isLater = 4;

/** `Prewash 20 °C, 2 min`: the name of a phase of a machine counts for each number behind it, up to the next name. */
const underPhase = 8;

/** `Wash at 55 °C`: a number under the name of one phase belongs to no other, nor to a step of the same name without a machine. */
function isOtherPhase({ path }: Group, phase: string | undefined, { stages }: QuoteReading): boolean {
  if (phase === undefined || path === phase) return false;
  if (outsideMachines.has(path)) return stages.some(({ stage }) => stage === 'mechanical');
  return path.startsWith('mechanical.') && path !== 'mechanical.detergent';
}

const outsideMachines: ReadonlySet<string> = new Set(['disinfection', 'rinse', 'drying']);

/** `Steam at 134 °C; the washer dries`: what a later part of the sentence is about. */
function isNamedLater(group: Group, { span }: NumberMention, { quote, stages }: QuoteReading): boolean {
  const parting = quote.indexOf(';', span.end);
  const text = quote.toLowerCase();
  const places = [
    ...stages.filter(({ stage }) => group.stages.includes(stage)).map((one) => one.span.start),
    ...group.words.map((word) => text.indexOf(word)).filter((at) => at >= 0),
  ];
  return parting >= 0 && places.length > 0 && places.every((at) => at > parting);
}

/** Of several times in `dry for 20 min or blow out at 1.5 bar for 30 s` the one nearest to the pressure. */
function isBeside({ beside, unlessAlso }: Home, mention: NumberMention, { reading, own }: Sought): boolean {
  const has = (one: NumberMention, dimension: Dimension): boolean =>
    one.quantities.some((quantity) => quantity.dimension === dimension);
  if (unlessAlso !== undefined && reading.numbers.some((one) => has(one, unlessAlso))) return false;
  if (beside === undefined) return true;
  const partner = reading.numbers.find((one) => has(one, beside));
  if (partner === undefined) return false;
  const far = (one: NumberMention): number => Math.abs(one.span.start - partner.span.start);
  return !own.some((other) => other !== mention && isAlike(other, mention) && far(other) < far(mention));
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
  if (group.follows === true && !standsBehind(group, stages)) return 0;
  const named = new Set(stages.map(({ stage }) => stage).filter((stage) => group.stages.includes(stage))).size;
  const words = group.words.filter((word) => text.includes(word)).length;
  const heading = group.words.some((word) => above.includes(word)) ? 3 : 0;
  return named * 4 + words * 3 + heading;
}

/** Its own stage is named after that of the way it belongs to: what is rinsed before the bath is no rinse after it. */
function standsBehind({ stages, besideStage }: Group, mentions: QuoteReading['stages']): boolean {
  const way = mentions.find(({ stage }) => stage === besideStage);
  return mentions.some(
    ({ stage, span }) => stages.includes(stage) && way !== undefined && span.start >= way.span.start,
  );
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
function stageBefore({ span, sentence }: NumberMention, reading: QuoteReading): StageWord | undefined {
  const { quote, numbers } = reading;
  const bracket = bracketAt(quote, span.start);
  const stages = reading.stages.filter((one) => [undefined, bracket].includes(bracketAt(quote, one.span.start)));
  const start = Math.max(0, ...numbers.filter((one) => one.sentence < sentence).map((one) => one.span.end));
  const before = stages.filter((one) => one.span.start >= start && one.span.end <= span.start);
  const behind = verbBehind(span, reading, stages);
  if (behind !== undefined) return behind;
  const [last, other] = [before.at(-1), before.at(-2)];
  if (last?.stage !== 'mechanical' || (other?.stage !== 'disinfection' && other?.stage !== 'dry')) return last?.stage;
  const isBetween = numbers.some((one) => one.span.start > other.span.end && one.span.end < last.span.start);
  return isBetween ? last.stage : other.stage;
}

/** `danach mit 20 ml durchspülen`: in German the step stands at the end of its clause. */
function verbBehind(
  own: Span,
  { quote, language }: QuoteReading,
  stages: QuoteReading['stages'],
): StageWord | undefined {
  if (language !== 'de') return undefined;
  const start = Math.max(quote.lastIndexOf(', ', own.start), quote.lastIndexOf('; ', own.start), 0);
  const length = quote.slice(own.end).search(/[,;:.(](?!\d)/);
  const end = length < 0 ? quote.length : own.end + length;
  const clause = stages.filter(
    (one) => one.span.start >= start && one.span.end <= end && one.span.end > one.span.start,
  );
  return clause.some((one) => one.span.end <= own.start) ? undefined : clause[0]?.stage;
}

const farthest = 60;

/**
 * Up to 20, for a range as for one number: a word of the field right beside the number counts most. Before the number no other number
 * may stand between; behind it no comma either. A field that asks for words and has none beside the number is no place for it: undefined.
 */
function nearness(home: Home, mention: NumberMention, { reading, words: text }: Sought): number | undefined {
  const { near } = home;
  if (near.length === 0) return 0;
  const { numbers } = reading;
  const [far = mention] = partnerOf(mention, reading);
  const twin = mention.pair === undefined ? mention : (numbers[mention.pair] ?? mention);
  const span = {
    start: Math.min(mention.span.start, twin.span.start),
    end: Math.max(mention.span.end, far.span.end, twin.span.end),
  };
  const others = numbers.filter((one) => one.span.end <= span.start);
  const before = Math.max(0, span.start - farthest, ...others.map((one) => one.span.end));
  const itself = text.slice(span.start, span.end);
  if (near.some((word) => itself.includes(word))) return 20;
  const clause = text.slice(span.end, span.end + farthest).search(partsBehind);
  const after = clause < 0 ? span.end + farthest : span.end + clause;
  const behind = Math.min(after, ...numbers.filter((one) => one.span.start >= span.end).map((one) => one.span.start));
  let best = home.reaches === true && reachesOver(near, text.slice(0, span.start)) ? 10 : undefined;
  for (const word of near) {
    const left = text.slice(before, span.start).lastIndexOf(word);
    const right = text.slice(span.end, behind).indexOf(word);
    // `3 minutes with a drying time of 20 minutes`: a word between two numbers belongs to the one behind it, unless something parts them.
    const isParted = left >= 0 && partsBefore.test(text.slice(before + left + word.length, span.start));
    if (left >= 0) best = Math.max(best ?? 0, (isParted ? 12 : 20) - (span.start - before - left) / 4);
    if (right >= 0) best = Math.max(best ?? 0, 15 - right / 4);
  }
  return best;
}

/** `cool for 20 minutes to below 40 °C`: over a number of another kind, within the clause. */
function reachesOver(near: readonly string[], before: string): boolean {
  return near.some((word) => {
    const at = before.lastIndexOf(word);
    return at >= 0 && !partsBefore.test(before.slice(at + word.length));
  });
}

/** `132 °C` as our spelling has it; the digits are those of the page. */
export function amountOf(mention: NumberMention, home: Home): string {
  const quantity = mention.quantities.find(({ dimension }) => dimension === home.dimension);
  if (quantity !== undefined) return formatQuantity(quantity);
  return home.counted === undefined ? String(mention.amount) : `${mention.amount} ${home.counted}`;
}
