import type { QuantityValue } from '../quantity.ts';
import type { Claim, NumberClaim, QuoteFault, QuoteFaultName } from './claims.ts';
import { type Match, matchNumber } from './match.ts';
import type { ProseBound } from './meaning.ts';
import type { NumberMention, QuoteReading } from './prose.ts';
import { isEqualAmount } from './ratio.ts';
import { readQuote } from './read-quote.ts';
import { isShelfLife } from './shelf-life.ts';

/** What is wrong with one number claim. A number that is not in the quote gets no second fault for its bound. */
export function compareNumber(reading: QuoteReading, claims: readonly Claim[], index: number): QuoteFault[] {
  const claim = claims[index];
  if (claim?.claim !== 'number') return [];
  const faults: QuoteFault[] = [];
  for (const value of claim.values) {
    if (isFromTolerance(reading, claim, value)) continue;
    const fault = faultOfValue(reading, claims, claim, value);
    if (fault !== undefined && !faults.some((one) => one.fault === fault.fault))
      faults.push({ ...fault, claim: index, value });
  }
  const tolerance = claim.tolerance;
  if (tolerance !== undefined && matchNumber(reading, tolerance, tolerance.dimension).kind === 'absent') {
    faults.push({ fault: 'quote-number-mismatch', claim: index, value: tolerance, spans: [] });
  }
  return faults;
}

type Found = Omit<QuoteFault, 'claim' | 'value'>;

function faultOfValue(
  reading: QuoteReading,
  claims: readonly Claim[],
  claim: NumberClaim,
  value: QuantityValue,
): Found | undefined {
  const match = matchNumber(reading, value, value.dimension);
  if (match.kind === 'absent') {
    const taken = match.mentions.filter((mention) => isHeldByAnother(reading, claims, claim, mention));
    return { ...withQuoted(reading, 'quote-number-mismatch', match.mentions), taken: taken.map(({ span }) => span) };
  }
  if (match.kind === 'only-by-decimal-comma' || match.kind === 'only-by-footnote') {
    return withQuoted(reading, 'decimal-or-footnote-suspect', match.mentions);
  }
  return topicFault(reading, claim, match) ?? boundFault(reading, claims, claim, value, match);
}

/** `134 °C, 4 minutes, dry 20 minutes`: the 4 minutes of the exposure are not what the drying time should be. */
function isHeldByAnother(
  reading: QuoteReading,
  claims: readonly Claim[],
  claim: NumberClaim,
  mention: NumberMention,
): boolean {
  return claims.some(
    (other) =>
      other.claim === 'number' &&
      other !== claim &&
      other.values.some((value) => {
        const match = matchNumber(reading, value, value.dimension);
        return match.kind !== 'absent' && match.mentions.includes(mention);
      }),
  );
}

function withQuoted(reading: QuoteReading, fault: QuoteFaultName, mentions: readonly NumberMention[]): Found {
  const spans = mentions.map((mention) => mention.span);
  const nearest = spans[0];
  return nearest === undefined
    ? { fault, spans }
    : { fault, spans, quoted: reading.quote.slice(nearest.start, nearest.end) };
}

/** Half-cycle figures and total times are not the exposure, wherever they match it. */
function topicFault(reading: QuoteReading, claim: NumberClaim, match: Match): Found | undefined {
  const topics = match.mentions.map((mention) => mention.about);
  if (claim.isEvidence !== true && topics.every((topic) => topic === 'half-cycle')) {
    return withQuoted(reading, 'half-cycle-encoded', match.mentions);
  }
  if (isTotal(claim.parameter) || !topics.every((topic) => topic === 'total-time')) return undefined;
  return withQuoted(reading, 'exposure-vs-total-time', match.mentions);
}

function isTotal(parameter: string): boolean {
  return parameter.startsWith('total') || parameter.startsWith('cycle');
}

/** The bound must agree with at least one of the places where the number stands. */
function boundFault(
  reading: QuoteReading,
  claims: readonly Claim[],
  claim: NumberClaim,
  value: QuantityValue,
  match: Match,
): Found | undefined {
  let first: Found | undefined;
  for (const mention of match.mentions) {
    if (mention.minToken === 'ambiguous' && claim.readAs === undefined) return undefined;
    const fault = faultOfBound(claims, claim, value, mention, boundRead(mention, claim, reading));
    if (fault === undefined) return undefined;
    first ??= describeBound(reading, fault, mention);
  }
  return first;
}

function describeBound(reading: QuoteReading, fault: QuoteFaultName, mention: NumberMention): Found {
  const spans = mention.boundSpan === undefined ? [mention.span] : [mention.boundSpan, mention.span];
  const bound = mention.bound === 'none' ? 'stated' : mention.bound;
  return { fault, spans, bound, quoted: reading.quote.slice(mention.span.start, mention.span.end) };
}

/** The writer's reading of an unclear `min` decides. */
function boundRead(mention: NumberMention, claim: NumberClaim, { quote }: QuoteReading): ProseBound {
  const isBare = mention.bound === 'none' && claim.bound === 'at_most';
  if (isBare && isShelfLife(quote.slice(0, mention.span.start))) return 'at_most';
  if (mention.minToken !== 'ambiguous') return mention.bound;
  return claim.readAs === 'minimum' ? 'at_least' : 'none';
}

function faultOfBound(
  claims: readonly Claim[],
  claim: NumberClaim,
  value: QuantityValue,
  mention: NumberMention,
  quoted: ProseBound,
): QuoteFaultName | undefined {
  if (quoted === 'about') return faultOfAbout(claim);
  switch (claim.bound) {
    case 'at_least':
    case 'at_most':
      return faultOfLimit(claims, claim, mention, quoted);
    case 'between':
      return faultOfBetween(claim, value, mention, quoted);
    case 'exactly':
      return faultOfExactly(value, quoted);
    case 'stated':
      return quoted === 'none' ? undefined : 'quote-bound-changed';
    case 'about':
      return 'quote-bound-changed';
  }
}

function faultOfAbout(claim: NumberClaim): QuoteFaultName | undefined {
  if (claim.bound === 'about') return undefined;
  return claim.bound === 'stated' ? 'quote-bound-changed' : 'approximate-used-as-limit';
}

function faultOfLimit(
  claims: readonly Claim[],
  claim: NumberClaim,
  mention: NumberMention,
  quoted: ProseBound,
): QuoteFaultName | undefined {
  if (quoted === claim.bound) return undefined;
  if (quoted === 'none') return 'bare-number-promoted';
  const isWholeRange = quoted === 'between' && isEndWithPartner(claims, claim, mention);
  return isWholeRange ? undefined : 'quote-bound-changed';
}

/** `3-18 min` may be written as two limits on one field. */
function isEndWithPartner(claims: readonly Claim[], claim: NumberClaim, mention: NumberMention): boolean {
  if (mention.range?.part !== (claim.bound === 'at_least' ? 'low' : 'high')) return false;
  const other = claim.bound === 'at_least' ? 'at_most' : 'at_least';
  return claims.some((one) => one.claim === 'number' && one.parameter === claim.parameter && one.bound === other);
}

function faultOfBetween(
  claim: NumberClaim,
  value: QuantityValue,
  mention: NumberMention,
  quoted: ProseBound,
): QuoteFaultName | undefined {
  if (quoted === 'between' || mention.range !== undefined) return undefined;
  const isLow = claim.values.every((other) => value.value <= other.value);
  return quoted === (isLow ? 'at_least' : 'at_most') ? undefined : 'quote-bound-changed';
}

/** "3 times" is three times; "4 minutes" is not "exactly 4 minutes". */
function faultOfExactly(value: QuantityValue, quoted: ProseBound): QuoteFaultName | undefined {
  if (quoted === 'exactly') return undefined;
  if (quoted !== 'none') return 'quote-bound-changed';
  return value.dimension === 'count' ? undefined : 'bare-number-promoted';
}

/** `132 °C ± 3 °C` may be written as between 129 and 135 °C. */
function isFromTolerance(reading: QuoteReading, claim: NumberClaim, value: QuantityValue): boolean {
  if (claim.bound !== 'between' && claim.bound !== 'at_least' && claim.bound !== 'at_most') return false;
  return toleranceEnds(reading).some(
    (end) => end.dimension === value.dimension && isEqualAmount(end.value, value.value),
  );
}

interface ToleranceEnd {
  readonly dimension: QuantityValue['dimension'];
  readonly value: number;
  readonly tolerance: NumberMention;
}

function toleranceEnds(reading: QuoteReading): ToleranceEnd[] {
  const ends: ToleranceEnd[] = [];
  for (const tolerance of reading.numbers) {
    // Few numbers are tolerances.
    if (tolerance.tolerance === undefined) continue;
    const { of, side } = tolerance.tolerance;
    const level = of === undefined ? undefined : reading.numbers[of]?.quantities[0];
    const apart = tolerance.quantities[0]?.value;
    if (level === undefined || apart === undefined) continue;
    if (side !== 'plus') ends.push({ dimension: level.dimension, value: level.value - apart, tolerance });
    if (side !== 'minus') ends.push({ dimension: level.dimension, value: level.value + apart, tolerance });
  }
  return ends;
}

/** Numbers with a unit that no claim uses. Not: references, half-cycle figures, "once", unclear `min`, the second unit of a used number. */
export function unencodedNumbers(reading: QuoteReading, claims: readonly Claim[]): QuoteFault[] {
  const used = usedNumbers(reading, claims);
  const left = reading.numbers.filter(
    (mention) => !used.has(mention) && mustBeEncoded(mention) && !isSecondOfLeft(reading, mention),
  );
  return left.map((mention) => ({
    fault: 'quote-number-not-encoded',
    spans: [mention.span, ...otherEnd(reading, mention)],
    quoted: reading.quote.slice(mention.span.start, mention.span.end),
  }));
}

/** In `20-30 minutes` the unit stands at the other end: the words are the whole range. */
function otherEnd(reading: QuoteReading, { range }: NumberMention): readonly NumberMention['span'][] {
  const other = range === undefined ? undefined : reading.numbers[range.partner];
  return other === undefined ? [] : [other.span];
}

function mustBeEncoded(mention: NumberMention): boolean {
  if (mention.isReference || mention.units.length === 0 || mention.minToken === 'ambiguous') return false;
  if (mention.about === 'half-cycle') return false;
  return !(mention.written === 'word' && mention.amount === 1);
}

/** One quantity or range left over is one fault: its first number stands for it. */
function isSecondOfLeft(reading: QuoteReading, mention: NumberMention): boolean {
  const index = reading.numbers.indexOf(mention);
  const pair = mention.pair;
  const partner = mention.range?.partner;
  return (pair !== undefined && pair < index) || (partner !== undefined && partner < index);
}

function usedNumbers(reading: QuoteReading, claims: readonly Claim[]): ReadonlySet<NumberMention> {
  const used = new Set<NumberMention>();
  for (const claim of claims) {
    if (claim.claim === 'ambiguous') useAmbiguous(reading, claim.text, used);
    if (claim.claim !== 'number') continue;
    for (const value of claim.values) useValue(reading, value, used);
    if (claim.tolerance !== undefined) useValue(reading, claim.tolerance, used);
    useToleranceEnds(reading, claim, used);
  }
  return used;
}

/** A number that is not in the quote stands for the nearest one that is: the mismatch is said once. */
function useValue(reading: QuoteReading, value: QuantityValue, used: Set<NumberMention>): void {
  const match = matchNumber(reading, value, value.dimension);
  const mentions =
    match.kind === 'absent' ? match.mentions.filter((mention) => !used.has(mention)).slice(0, 1) : match.mentions;
  for (const mention of mentions) useWithPartners(reading, mention, used);
}

function useWithPartners(reading: QuoteReading, mention: NumberMention, used: Set<NumberMention>): void {
  used.add(mention);
  for (const index of [mention.pair, mention.range?.partner]) {
    const other = index === undefined ? undefined : reading.numbers[index];
    if (other !== undefined && !used.has(other)) useWithPartners(reading, other, used);
  }
}

function useToleranceEnds(reading: QuoteReading, claim: NumberClaim, used: Set<NumberMention>): void {
  for (const end of toleranceEnds(reading)) {
    if (!claim.values.some((value) => value.dimension === end.dimension && isEqualAmount(value.value, end.value)))
      continue;
    useWithPartners(reading, end.tolerance, used);
    const level = reading.numbers[end.tolerance.tolerance?.of ?? -1];
    if (level !== undefined) useWithPartners(reading, level, used);
  }
}

function useAmbiguous(reading: QuoteReading, text: string, used: Set<NumberMention>): void {
  for (const mention of readQuote(text, reading.language).numbers) {
    for (const quantity of mention.quantities) useValue(reading, quantity, used);
  }
}
