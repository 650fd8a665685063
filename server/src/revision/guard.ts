import { readerLanguage } from '../quantity/prose/compare.ts';
import { unitPairMismatches } from '../quantity/prose/match.ts';
import { longestQuote, type NumberMention } from '../quantity/prose/prose.ts';
import { readQuote } from '../quantity/prose/read-quote.ts';

/** Why a change of wording is not called wording only. */
export type Guard = 'a number' | 'a unit' | 'a bound word' | 'a negation' | 'an and/or';

export interface QuotedNumber {
  /** In the base unit where a unit is printed, else as printed. */
  readonly value: number;
  readonly unit: string;
  readonly bound: NumberMention['bound'];
}

export interface WordingDifference {
  readonly guards: readonly Guard[];
  /** Numbers (with their bound words) that stand on one side only. */
  readonly gone: readonly QuotedNumber[];
  readonly come: readonly QuotedNumber[];
  /** A negation or join differs, which no number can explain. */
  readonly wordsDiffer: boolean;
}

/** What differs in meaning between two wordings, as far as numbers, units, bound words, negations and joins show it. */
export function wordingDifference(old: string, now: string, language?: string): WordingDifference {
  const [before, after] = [readingOf(old, language), readingOf(now, language)];
  const gone = without(before.numbers, after.numbers, sameNumber);
  const come = without(after.numbers, before.numbers, sameNumber);
  const guards: Guard[] = [];
  if (unmatched(gone, come, (a, b) => near(a.value, b.value))) guards.push('a number');
  else if (gone.length + come.length > 0)
    guards.push(
      unmatched(gone, come, (a, b) => near(a.value, b.value) && a.unit === b.unit) ? 'a unit' : 'a bound word',
    );
  // Numbers that the reader takes for no amount (step 3, catalogue and page numbers) count as well.
  if (guards.length === 0 && digitsIn(old) !== digitsIn(now)) guards.push('a number');
  const negationsDiffer = before.negations !== after.negations;
  const joinsDiffer = before.joins !== after.joins;
  if (negationsDiffer) guards.push('a negation');
  if (joinsDiffer) guards.push('an and/or');
  return { guards, gone, come, wordsDiffer: negationsDiffer || joinsDiffer };
}

function digitsIn(text: string): string {
  return (text.slice(0, 2 * longestQuote).match(/\d+/g) ?? []).sort().join(' ');
}

interface Reading {
  readonly numbers: readonly QuotedNumber[];
  readonly negations: string;
  readonly joins: string;
}

function readingOf(text: string, language: string | undefined): Reading {
  const reading = readQuote(text, readerLanguage(language));
  const numbers: QuotedNumber[] = [];
  for (const { isReference, quantities, amount, bound } of reading.numbers) {
    if (isReference) continue;
    const [quantity] = quantities;
    numbers.push({ value: quantity?.value ?? amount, unit: quantity?.unit ?? '', bound });
  }
  return {
    numbers,
    negations: reading.negations
      .map(({ kind }) => kind)
      .sort()
      .join(' '),
    joins: reading.joins
      .map(({ join }) => join)
      .sort()
      .join(' '),
  };
}

function sameNumber(a: QuotedNumber, b: QuotedNumber): boolean {
  return near(a.value, b.value) && a.unit === b.unit && a.bound === b.bound;
}

/** `list` without one partner for each of `others`. */
function without(
  list: readonly QuotedNumber[],
  others: readonly QuotedNumber[],
  same: typeof sameNumber,
): readonly QuotedNumber[] {
  const left = [...others];
  return list.filter((one) => {
    const at = left.findIndex((other) => same(one, other));
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
}

function unmatched(gone: readonly QuotedNumber[], come: readonly QuotedNumber[], same: typeof sameNumber): boolean {
  return without(gone, come, same).length + without(come, gone, same).length > 0;
}

export function near(a: number, b: number): boolean {
  return Math.abs(a - b) <= 1e-6 * Math.max(1, Math.abs(a), Math.abs(b));
}

/** Does the text print one value in two units that do not agree (`270 °F (134 °C)`)? */
export function hasWrongPair(text: string): boolean {
  return unitPairMismatches(readQuote(text)).length > 0;
}

/** Numbers that a text of a field holds, as printed and in base units. */
export function numbersIn(text: string): readonly number[] {
  return readQuote(text).numbers.flatMap(({ amount, quantities }) => [amount, ...quantities.map(({ value }) => value)]);
}
