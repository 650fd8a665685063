import { whenDelayed } from '../../quantity/prose/named/at-use.ts';
import type { NumberMention, QuoteReading } from '../../quantity/prose/prose.ts';
import { partNamed } from './quote-device.ts';
import { homesOf } from './quote-homes.ts';
import type { Matched, Placed } from './quote-match.ts';
import { isOwnValue } from './quote-own-values.ts';

/** What words around a number say against the place or the bound that was found for it. */

export const packages: ReadonlySet<string> = new Set(['wrap', 'pouch', 'container']);

/** Without the numbers that other words of the sentence show to be something else: they are told instead. */
export function lookedAtAgain(matched: Matched, reading: QuoteReading): Matched {
  const cycles = byPackaging(wholeCycles(matched, reading), reading);
  const known = withoutParts(withoutOtherActs(withoutProtected(cycles, reading), reading), reading);
  return withoutPerItem(withoutOneOfTwo(oneCooling(known, reading), reading), reading);
}

/** `Cool for 10 minutes with the door ajar, then for 45 minutes outside`: none of the two is how long it cools. */
function oneCooling(matched: Matched, reading: QuoteReading): Matched {
  const times = reading.numbers.filter((one, at) => isOwnValue(one, at, reading) && secondsOf(one) !== undefined);
  const isFree = times.some((time) => !matched.placed.some(({ mentions }) => mentions.includes(time)));
  const isOneOfMore = ({ group, home }: Placed): boolean => isFree && group.path === 'cooling' && home.field === 'time';
  return without(matched, isOneOfMore, reading.quote);
}

/** `Protect from temperatures above 30 °C`: the value is not what is asked for but what is kept away. */
function withoutProtected({ placed, left }: Matched, { quote }: QuoteReading): Matched {
  const isKeptAway = ({ mentions: [mention] }: Placed): boolean =>
    mention?.bound === 'at_least' && /\b(?:protect|shield|schütz|protég)/i.test(clauseBefore(quote, mention));
  return without({ placed, left }, isKeptAway, quote);
}

function clauseBefore(quote: string, { span }: NumberMention): string {
  return quote.slice(Math.max(0, quote.lastIndexOf(';', span.start), quote.lastIndexOf('. ', span.start)), span.start);
}

/** `Drying time: 30 minutes`, under the heading of sterilization: by itself no cycle that the page gives. */
function wholeCycles(matched: Matched, { quote }: QuoteReading): Matched {
  const isSaid = /expos|sterili|stérili|autoclav|vacuum|vakuum|vide|steam|dampf|vapeur|cycle|zyklus|halte/i.test(quote);
  const isCycle = ({ home }: Placed): boolean => home.field === 'temp' || (home.field === 'exposure' && isSaid);
  const groups = new Set(matched.placed.filter(isCycle).map(({ group }) => group));
  if (isHalf(matched)) groups.clear();
  return without(matched, ({ group }) => group.path === 'sterilization.any_of[]' && !groups.has(group), quote);
}

/** Of two cycles that run into each other each number is one of two: a temperature whose time was given up is no cycle. */
function isHalf({ placed, left }: Matched): boolean {
  const cycle = placed.filter(({ group }) => group.path === 'sterilization.any_of[]');
  const has = (field: string): boolean => cycle.some(({ home }) => home.field === field);
  return has('temp') && !has('exposure') && left.length > 1;
}

/** `Remove gross soil within 15 minutes` is no delay before cleaning begins. */
function withoutOtherActs(matched: Matched, { quote }: QuoteReading): Matched {
  const isAct = /^(?:remove|wipe|rinse|flush|cover|spray|apply|immerse)\b/i.test(quote) || whenDelayed.test(quote);
  return without(
    matched,
    ({ group, home, mentions: [mention] }) =>
      (home.field === 'times' && mention !== undefined && onceDone.test(quote.slice(mention.span.start))) ||
      (isAct && group.path === 'point_of_use' && home.field === 'max_delay'),
    quote,
  );
}

/** `Once the soak is finished`: no count. */
const onceDone = /^once\s(?:the|all|it|they|this|these|every)\b/i;

/** `The cap is replaced after 20 uses`: the life of a part is not that of the device. */
function withoutParts(matched: Matched, { quote }: QuoteReading): Matched {
  const part = partNamed(quote);
  return part === undefined ? matched : without(matched, ({ group }) => group.path === 'limits', quote);
}

/** `FX-15: 10 ml, FX-25: 20 ml`: a value for each item, and none of them for all. */
function withoutPerItem(matched: Matched, { quote, numbers }: QuoteReading): Matched {
  const isOfItem = ({ span }: NumberMention): boolean =>
    /\p{Lu}{1,5}-\d[\p{L}\d-]*\s?:\s?$/u.test(quote.slice(0, span.start));
  const items = numbers.filter((one) => !one.isReference && isOfItem(one));
  if (items.length < 2) return matched;
  return without(matched, ({ mentions }) => mentions.some((one) => items.includes(one)), quote);
}

/** `a brush of 3.5 mm or 5 mm`: a brush has one diameter, and none of the two is it. */
function withoutOneOfTwo(matched: Matched, { quote }: QuoteReading): Matched {
  const isOneOfTwo = ({ home, mentions: [mention] }: Placed): boolean =>
    home.field === 'brush.diameter' &&
    mention !== undefined &&
    /^\s*(?:or|oder|ou|\/)\s*\d/.test(quote.slice(mention.span.end));
  return without(matched, isOneOfTwo, quote);
}

function without({ placed, left }: Matched, isOther: (one: Placed) => boolean, quote: string): Matched {
  const told = placed
    .filter(isOther)
    .flatMap(({ mentions }) => mentions.map(({ span }) => quote.slice(span.start, span.end)));
  return { placed: placed.filter((one) => !isOther(one)), left: [...told, ...left] };
}

/** `A0 of 3000 or 5 minutes at 93 °C`: fields of one group hold all of it, which the reader is told. */
export function joinedByOr(placed: readonly Placed[], { quote }: QuoteReading): readonly string[] {
  const inOrder = placed.toSorted((a, b) => (a.mentions[0]?.span.start ?? 0) - (b.mentions[0]?.span.start ?? 0));
  return inOrder.flatMap(({ group, mentions }, at) => {
    const [before] = inOrder[at - 1]?.group === group ? (inOrder[at - 1]?.mentions.slice(-1) ?? []) : [];
    const [next] = mentions;
    if (before === undefined || next === undefined) return [];
    const between = quote.slice(before.span.end, next.span.start);
    return /\s(?:or|oder|ou)\s(?!(?:more|longer|less|above|below|higher|lower|mehr|länger|plus|moins)\b)/i.test(between)
      ? [`"or" stands between "${textAt(quote, before)}" and "${textAt(quote, next)}": the fields ask for both`]
      : [];
  });
}

function textAt(quote: string, { span }: NumberMention): string {
  return quote.slice(span.start, span.end).replace(/\.$/, '');
}

const timed: ReadonlySet<string> = new Set(['storage', 'drying']);

/** `6 months in wrap, 12 months in pouches`: a device has one longest storage and one time of drying, so that none of
 * them may stand for all. */
function byPackaging({ placed, left }: Matched, reading: QuoteReading): Matched {
  const { quote, stages } = reading;
  const isNamed = stages.some(({ stage }) => packages.has(stage));
  const isOf = ({ group, home }: Placed): boolean => timed.has(group.path) && home.field === 'time';
  const stored = placed
    .filter(isOf)
    .flatMap(({ mentions }) => mentions.map(({ span }) => quote.slice(span.start, span.end)));
  if (isNamed && placed.length === 0) return onlyLives(left, reading);
  if (!isNamed || stored.length === 0 || left.length === 0) return { placed, left };
  const shortest = shortestStorage(placed.filter(isOf), reading);
  const others = [...stored, ...left].filter((time) => shortest === undefined || time !== printed(shortest, quote));
  const told = others.map((time) => `${time} (a time for each packaging belongs into the file of that packaging)`);
  const kept = placed.filter((one) => !isOf(one));
  if (shortest === undefined) return { placed: kept, left: told };
  const only = `${printed(shortest, quote)} alone is proposed (the shortest: it holds for every packaging named here)`;
  return { placed: [...kept, shortest], left: [only, ...told] };
}

/** `Trays may be kept for 6 months, trays in containers for 12 months`, where none is surer: by their length they are lives. */
function onlyLives(left: readonly string[], reading: QuoteReading): Matched {
  const all = reading.numbers.filter((one, at) => isOwnValue(one, at, reading));
  const isLives = all.length > 1 && all.every((one) => (secondsOf(one) ?? 0) > aWeek);
  const group = homesOf.device?.find(({ path }) => path === 'storage');
  const home = group?.fields.find(({ field }) => field === 'time');
  const [mention] = all;
  if (!isLives || group === undefined || home === undefined || mention === undefined) return { placed: [], left };
  const shortest = shortestStorage([{ group, home, mentions: [mention] }], reading);
  if (shortest === undefined) return { placed: [], left };
  const words = printed(shortest, reading.quote);
  const others = left.filter((time) => time !== words);
  const only = `${words} alone is proposed (the shortest: it holds for every packaging named here)`;
  return { placed: [shortest], left: [only, ...others] };
}

const aWeek = 7 * 86_400;

/** Of several shelf lives the shortest holds for all of them; undefined where one is no plain longest time. */
function shortestStorage([first, ...more]: readonly Placed[], reading: QuoteReading): Placed | undefined {
  if (first?.group.path !== 'storage' || more.length > 0) return undefined;
  const all = reading.numbers.filter((one, at) => isOwnValue(one, at, reading) && secondsOf(one) !== undefined);
  const isPlain = all.every(({ bound, range }) => range === undefined && (bound === 'none' || bound === 'at_most'));
  const [shortest] = all.toSorted((a, b) => (secondsOf(a) ?? 0) - (secondsOf(b) ?? 0));
  return isPlain && shortest !== undefined ? { ...first, mentions: [shortest] } : undefined;
}

function secondsOf({ quantities }: NumberMention): number | undefined {
  const time = quantities.find(({ dimension }) => dimension === 'time');
  return time === undefined ? undefined : time.value;
}

function printed({ mentions }: Placed, quote: string): string {
  return mentions.map(({ span }) => quote.slice(span.start, span.end)).join(' ');
}

const under =
  /^(?:below|under|less than|lower than|cooler than|colder than|shorter than|smaller than|unter|weniger als|kürzer als|moins de|inférieure? à)$/i;
const over =
  /^(?:above|over|more than|greater than|higher than|longer than|über|mehr als|länger als|plus de|supérieure? à)$/i;

/** `below 40 °C`: the files have no bound that leaves its own value out, which the reader is told. */
export function strictlyMeant(placed: readonly Placed[], { quote }: QuoteReading): readonly string[] {
  return placed.flatMap(({ mentions: [mention] }) => {
    const { bound, boundSpan, span } = mention ?? {};
    if (boundSpan === undefined || span === undefined) return [];
    const word = quote.slice(boundSpan.start, boundSpan.end);
    const isStrict = (bound === 'at_most' && under.test(word)) || (bound === 'at_least' && over.test(word));
    const value = quote.slice(span.start, span.end).replace(word, '').replace(/\.$/, '').trim();
    return isStrict
      ? [
          `"${word} ${value}" stands as ${bound === 'at_most' ? 'at most' : 'at least'} ${value}: ${value} itself is not allowed by the page`,
        ]
      : [];
  });
}
