import type { QuoteReading } from '../../quantity/prose/prose.ts';
import type { Dimension } from '../../quantity/quantity.ts';
import type { Kind } from '../../schema/kinds.ts';
import { type FieldPlace, fieldPlaces } from '../reading/field-places.ts';
import { homesOf } from '../reading/quote-homes.ts';
import type { Section } from '../reading/quote-section.ts';

export interface LikelyField {
  readonly place: FieldPlace;
  /** The more, the likelier; below `likely` only the kind of value fits. */
  readonly score: number;
}

/** From here on a word of the field, or its stage and the kind of its number, is in the sentence. */
export const likely = 5;
/** From here on more than one thing speaks for it. */
export const surely = 8;

/** Behind all others: what has no number of the kind that is asked for can only be typed. */
const unlikely = 100;

/** Fields that may hold what a sentence says, the likely ones first. One that holds a number is the last where the sentence has none of its kind. */
export function likelyFields(
  reading: QuoteReading,
  kind: Kind,
  section: Section,
  places: readonly FieldPlace[] = fieldPlaces(kind),
): readonly LikelyField[] {
  const words = wordsIn(reading.quote);
  const above = wordsIn(section.text);
  const near = nearGroups(reading, kind, section);
  const counted = itemsWithNumbers(reading, kind);
  const compared = { words, above, near, counted, quote: reading.quote };
  return places
    .map((place) => ({ place, score: scoreOf(place, compared) - (holdsNumber(place.shape, reading) ? 0 : unlikely) }))
    .toSorted((a, b) => b.score - a.score || a.place.titles.length - b.place.titles.length);
}

/** Whether the sentence has a number that can stand there, where one is asked for. */
function holdsNumber(shape: FieldPlace['shape'], { numbers }: QuoteReading): boolean {
  if (shape.form !== 'record' || shape.dimension === undefined) return true;
  const { dimension } = shape;
  return numbers.some((one) => !one.isReference && mayBe(dimension, one));
}

/** A bare number may be counted, or be a value that is printed without a unit. */
export function mayBe(dimension: Dimension, { quantities, units }: QuoteReading['numbers'][number]): boolean {
  if (units.length > 0) return quantities.some((one) => one.dimension === dimension);
  return dimension === 'count' || dimension === 'ph' || dimension === 'a0';
}

interface Compared {
  readonly words: readonly string[];
  readonly above: readonly string[];
  readonly near: ReadonlySet<string>;
  /** Lists whose items have a place for a number of the sentence. */
  readonly counted: ReadonlySet<string>;
  readonly quote: string;
}

/** Together or apart, and the stage that is meant; what is put together before sterilization is together for it. */
const togetherAt = {
  packaging: /assembl\p{L}*\b.{0,80}\bpack|together\b.{0,40}\bpack|pack\p{L}*\b.{0,40}assembl/iu,
  sterilization: /assembl\p{L}*\b.{0,80}\bsterili|together\b.{0,40}\bsterili|sterili\p{L}*\b.{0,40}assembl/iu,
  cleaning: /assembl\p{L}*\b.{0,80}\bclean|clean\p{L}*\b.{0,40}assembl/iu,
} as const;

/** Words of a page for fields whose own names say it otherwise. */
const usualWords: readonly (readonly [string, RegExp])[] = [
  [
    'not[]',
    /\b(?:never|not(?!\sexceed)|avoid|forbidden|prohibited|nicht|nie|niemals|kein\p{L}*|verboten|jamais|pas|interdit)\b/iu,
  ],
  [
    'inspection.reject_if[]',
    /\b(?:discard|replace|reject|worn|bent|crack|corro|damage|aussonder|beschädig|verschliss|endommag)/iu,
  ],
  [
    'lumens[]',
    /\b(?:lumen|channel|cannulation|bore|(?:inner|internal) diameter)\b|\b(?:kanal|innendurchmesser|canal)/iu,
  ],
  ['parts[]', /\b(?:replace|renew|exchange)d?\b.{0,60}\b(?:after|every)\b/iu],
  ['mechanical.connector', /\b(?:connect|nozzle|adapter|luer|anschließ|anschluss|raccord)/iu],
  ['mechanical.rack', /\b(?:rack|basket|tray|load carrier|korb|einsatz|panier)\b/iu],
  ['limits.temp', /\b(?:exceed|withstand|(?:maximum|highest)\s(?:\p{L}+\s)?temperature|überschreit|dépass)/iu],
  [
    'inspection.lumen_inspection.required',
    /\b(?:look|view|hold)\b.{0,40}\b(?:through|into|lumen|channel)|borescope|endoskop\p{L}* prüf/iu,
  ],
  ['point_of_use.flush_now', /\b(?:suction|aspirat|absaug|aspire)/iu],
  ['point_of_use.max_delay', /\b(?:delay|within|no later than|spätestens|innerhalb|au plus tard)\b/iu],
  ['limits.until', /\b(?:end of life|lifetime|service life|lebensdauer|durée de vie)\b/iu],
  ...(['packaging', 'sterilization', 'cleaning'] as const).map(
    (stage) => [`disassembly.assembled_for.${stage}`, togetherAt[stage]] as const,
  ),
  [
    'transport.container',
    /\b(?:closed|transport)\b.{0,30}\b(?:container|box)|geschlossene\p{L}* behälter|récipient fermé/iu,
  ],
];

function saidBy(path: string, quote: string): number {
  return usualWords.some(([field, words]) => field === path && words.test(quote)) ? 8 : 0;
}

function scoreOf(
  { path, titles, about, words: usual, shape }: FieldPlace,
  { words, above, near, counted, quote }: Compared,
): number {
  const own = wordsIn(titles.at(-1) ?? '');
  const around = titles.slice(0, -1).flatMap(wordsIn);
  const [named, meant] = [[...usual.keys()].flatMap(wordsIn), [...usual.values()].flatMap(wordsIn)];
  const deep = Math.max(0, titles.length - 2);
  // A temperature is that of the phase, and of its detergent or water only where these are spoken of.
  const unnamed = titles.slice(2, -1).filter((title) => shared(wordsIn(title), [...words, ...above]) === 0).length;
  const measured = (shape.form === 'record' && shape.dimension !== undefined) || counted.has(path) ? 3 : 0;
  const stage = [...near].some((head) => path === head || path.startsWith(`${head}.`) || path === `${head}[]`) ? 3 : 0;
  return (
    shared(own, words) * 4 +
    Math.min(1, shared(around, words)) * 3 +
    Math.min(1, shared(around, above)) * 2 +
    Math.min(2, shared(named, words)) * 3 +
    Math.min(2, shared(meant, words)) +
    saidBy(path, quote) -
    deep -
    unnamed * 3 +
    Math.min(2, shared(wordsIn(about), words)) +
    measured +
    stage
  );
}

function itemsWithNumbers({ numbers }: QuoteReading, kind: Kind): ReadonlySet<string> {
  const measured = new Set(numbers.flatMap(({ quantities }) => quantities.map(({ dimension }) => dimension)));
  const groups = (homesOf[kind] ?? []).filter(
    ({ path, fields }) => path.endsWith('[]') && fields.some(({ dimension }) => measured.has(dimension)),
  );
  return new Set(groups.map(({ path }) => path));
}

/** Groups of which the sentence or its heading names the stage. */
function nearGroups(
  { stages, quote }: QuoteReading,
  kind: Kind,
  { stages: above, text }: Section,
): ReadonlySet<string> {
  const named = new Set([...above, ...stages.map(({ stage }) => stage)]);
  const said = `${quote.toLowerCase()} ${text}`;
  const groups = (homesOf[kind] ?? []).filter(
    (group) => group.stages.some((stage) => named.has(stage)) || group.words.some((word) => said.includes(word)),
  );
  return new Set(groups.map(({ path }) => path.replace('[]', '')).filter((path) => path !== ''));
}

/** `silicone-free`, `free of oil`: what the page wants kept away is not what it names. */
const without =
  /\p{L}+[\s-]free(?!\p{L}|\s(?:of|from)\s)|(?<!\p{L})free\s(?:of|from)\s\p{L}+|\p{L}+frei\p{L}*|(?<!\p{L})(?:sans|ohne|without)\s\p{L}+/giu;

/** The words of a field with those first that the sentence names; `named` is how many. */
export function nearWords(
  words: ReadonlyMap<string, string>,
  { quote }: QuoteReading,
): { readonly words: readonly string[]; readonly named: number } {
  const said = wordsIn(quote.replace(without, ' '));
  const score = (word: string, meaning: string): number =>
    shared(wordsIn(word), said) * 2 + shared(wordsIn(meaning.replace(/\bagents?\b/gi, '')), said);
  const all = [...words].map(([word, meaning]) => ({ word, score: score(word, meaning) }));
  return {
    words: all.toSorted((a, b) => b.score - a.score).map(({ word }) => word),
    named: all.filter((one) => one.score > 0).length,
  };
}

const common: ReadonlySet<string> = new Set(
  `what when that this with from which where must should shall will have been does page says than each only such also into
  other before after yes they there it is in on of or and the for not are be to by at an as device devices instrument instruments product products use used using`.split(
    /\s+/,
  ),
);

/** Of words joined by strokes the whole and the last, which is what is meant: `counter-clockwise` has nothing of a counter. */
function wordsIn(text: string): readonly string[] {
  const found = text.toLowerCase().match(/\p{L}[\p{L}-]*\p{L}/gu) ?? [];
  const words = found.flatMap((word) => (word.includes('-') ? [word, word.slice(word.lastIndexOf('-') + 1)] : [word]));
  return words.filter((word) => word.length > 2 && !common.has(word));
}

/** How many of the first words begin as one of the second does: `storage` and `stored`. */
function shared(words: readonly string[], others: readonly string[]): number {
  return new Set(words).size === 0
    ? 0
    : [...new Set(words)].filter((word) => others.some((other) => isAlike(word, other))).length;
}

function isAlike(a: string, b: string): boolean {
  const [short, long] = a.length < b.length ? [a, b] : [b, a];
  if (short.length < 4) return short === long;
  const stem = short.slice(0, Math.max(4, short.length - 3));
  return long.startsWith(stem) && long.length - short.length < 6;
}
