import type { Span } from '../../base/span.ts';
import type { NumberMention, QuoteReading } from '../../quantity/prose/prose.ts';
import type { Kind } from '../../schema/kinds.ts';
import type { Group, Home } from './home.ts';
import { elsewhere } from './home.ts';
import type { Candidate } from './quote-candidates.ts';
import { homesFor } from './quote-candidates.ts';
import { isAside, rowAround, withoutNames } from './quote-clauses.ts';
import { homesOf } from './quote-homes.ts';
import type { Sought } from './quote-nearness.ts';
import { isOwnValue, partnerOf } from './quote-own-values.ts';
import type { Section } from './quote-section.ts';
import { isAtUse, underHeading } from './quote-section.ts';

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
  const { found, ends } = chosenOf(candidates, reading);
  const placed = own.flatMap((mention) => {
    const best = found.get(mention);
    if (best === undefined) return [];
    const other = own.find((one) => ends.get(one) === mention);
    const mentions = other === undefined ? [mention, ...partnerOf(mention, reading)] : inOrder(mention, other);
    return [{ group: placesAtUse(best.group, section), home: best.home, mentions }];
  });
  const left = own.filter((mention) => !found.has(mention) && !ends.has(mention));
  return { placed, left: left.map((mention) => asPrinted(mention, reading)) };
}

const stepsAtUse = new Map<Group, Group>();

/** Steps by hand under the heading of the point of use are steps there. */
function placesAtUse(group: Group, section: Section): Group {
  if (group.path !== 'manual.steps[]' || !isAtUse(section)) return group;
  const own = stepsAtUse.get(group) ?? { ...group, path: 'point_of_use.steps[]' };
  stepsAtUse.set(group, own);
  return own;
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
function chosenOf(candidates: readonly Candidate[], reading: QuoteReading): Chosen {
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
  const ends = new Map<NumberMention, NumberMention>();
  for (const rivals of lost.values()) {
    const { loser, holder } = rivals;
    if (found.has(loser.mention)) continue;
    if (isOtherEnd(holder.mention, loser.mention)) ends.set(loser.mention, holder.mention);
    else giveUp(found, rivals, reading);
  }
  for (const [mention, { home }] of found) if (home.field === elsewhere) found.delete(mention);
  return { found, ends };
}

interface Chosen {
  readonly found: ReadonlyMap<NumberMention, Candidate>;
  /** A number that is the other end of one that has its place. */
  readonly ends: ReadonlyMap<NumberMention, NumberMention>;
}

function inOrder(a: NumberMention, b: NumberMention): readonly NumberMention[] {
  return a.bound === 'at_most' ? [b, a] : [a, b];
}

/**
 * Two numbers for one field: what stands in the row of the second one (`2 min cold, then 5 min at 55 °C`) does not belong to the first. Of
 * two that bear the word of the field alike (`dry 40 min, otherwise dry 20 min`) none is surer.
 */
function giveUp(found: Map<NumberMention, Candidate>, { loser, holder }: Rivals, reading: QuoteReading): void {
  const isEqual = loser.near > 0 && Math.abs(loser.near - holder.near) <= asSure;
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

/** `at least 4 min, at most 18 min`, `5 min, max. 20 min`: two ends of one value, not two rows. */
function isOtherEnd(a: NumberMention, b: NumberMention): boolean {
  const [low, high] = a.bound === 'at_most' ? [b, a] : [a, b];
  return low.bound === 'at_least' && high.bound === 'at_most' && low.range === undefined && high.range === undefined;
}

/** With its other end, and with what is counted where no unit is printed: `5 passes`. */
function asPrinted(mention: NumberMention, reading: QuoteReading): string {
  const { quote } = reading;
  const [far = mention] = partnerOf(mention, reading);
  const end = Math.max(mention.span.end, far.span.end);
  const counted = far.units.length === 0 ? (/^[ -]\p{L}{2,30}/u.exec(quote.slice(end))?.[0] ?? '') : '';
  return quote.slice(mention.span.start, end + counted.length);
}

const noSection: Section = { text: '', stages: [] };
