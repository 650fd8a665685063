import type { Span } from '../../base/span.ts';
import type { StageWord } from '../../quantity/prose/meaning.ts';
import type { NumberMention, QuoteReading } from '../../quantity/prose/prose.ts';
import type { Home } from './home.ts';
import { bracketAt, partsBefore, partsBehind } from './quote-clauses.ts';
import { partnerOf } from './quote-own-values.ts';

/** How near a number stands to the words of a field, and which stage its part of the sentence is about. */

/** What all numbers of a sentence are looked at with. */
export interface Sought {
  readonly reading: QuoteReading;
  readonly own: readonly NumberMention[];
  /** The quote in small letters, without names that are spelled like steps. */
  readonly words: string;
  /** The heading, in small letters. */
  readonly above: string;
}

/**
 * `Rinse for 1 minute and flush with 60 mL`: a number belongs rather to the stage named last before it in its sentence. `Disinfect in the
 * washer at 90 °C`: the machine is only where that happens.
 */
export function stageBefore({ span, sentence }: NumberMention, reading: QuoteReading): StageWord | undefined {
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
export function nearness(home: Home, mention: NumberMention, { reading, words: text }: Sought): number | undefined {
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
  for (const word of home.behind ?? []) {
    const right = text.slice(span.end, behind).indexOf(word);
    if (right >= 0) best = Math.max(best ?? 0, 15 - right / 4);
  }
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
