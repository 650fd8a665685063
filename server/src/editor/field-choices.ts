import type { NumberMention, QuoteReading } from '../quantity/prose/prose.ts';
import type { Dimension } from '../quantity/quantity.ts';
import { unitsOf } from '../quantity/units.ts';
import type { RecordShape } from '../schema/shape.ts';
import { asValue } from './bare.ts';
import { mayBe, nearWords } from './field-likelihood.ts';
import { type FieldPlace, headOf, wordsOf } from './field-places.ts';
import type { Home } from './home.ts';
import type { NewField } from './insert-fields.ts';
import { marked } from './marked.ts';
import { homesOf } from './quote-homes.ts';
import type { Placed } from './quote-match.ts';
import { isOwnValue, partnerOf } from './quote-own-values.ts';
import { freeId, requirement, withGroups } from './quote-values.ts';

/** What a sentence may say in one field: fields with one place at most where a word is chosen. */
export interface FieldValue {
  readonly fields: readonly NewField[];
  /** What the words of that place mean. */
  readonly words: ReadonlyMap<string, string>;
}

export interface Saying {
  readonly reading: QuoteReading;
  readonly src: string;
  readonly ids: ReadonlySet<string>;
}

/** What may be written into a field that somebody chose for a sentence, the likely values first. */
export function valuesFor(place: FieldPlace, saying: Saying): readonly FieldValue[] {
  const { shape, path } = place;
  switch (shape.form) {
    case 'record':
      return shape.dimension === undefined ? [] : numbersFor(place, shape.dimension, saying);
    case 'list':
      return shape.item.form === 'record' ? itemsFor(place, shape.item, saying) : textsFor(place, saying);
    case 'flag': {
      const words = isNo(path, saying) ? ['false', 'true'] : ['true', 'false'];
      return [{ fields: cited(place, marked.choice(words, nameOf(path)), saying), words: yesOrNo }];
    }
    case 'words': {
      const { words } = nearWords(place.words, saying.reading);
      return [{ fields: cited(place, marked.choice(words, nameOf(path)), saying), words: place.words }];
    }
    default:
      return textsFor(place, saying);
  }
}

const yesOrNo: ReadonlyMap<string, string> = new Map([
  ['true', 'yes'],
  ['false', 'no'],
]);

function nameOf(path: string): string {
  return path.split('.').at(-1) ?? path;
}

/** A prohibition means no; of what is together or apart its own words tell, whatever else the sentence forbids. */
function isNo(path: string, { reading }: Saying): boolean {
  if (path.startsWith('disassembly.assembled_for.') && togetherOrApart.test(reading.quote))
    return apart.test(reading.quote);
  return reading.negations.some(({ kind }) => kind === 'prohibition');
}

const togetherOrApart = /assembl|dismantl|together|\bapart\b|zusammen|montier|zerleg|mont[ée]/iu;
const apart =
  /dis-?assembl|un-?assembl|dismantl|\bapart\b|zerleg|demontier|démont|\b(?:not|never)\b.{0,20}\b(?:re-?)?assembl|\bbefore (?:re-?)?assembl/iu;

/** The value, and the sentence beside it where the group has a place for that. */
function cited({ path, cites }: FieldPlace, value: string, { src }: Saying): readonly NewField[] {
  const group = path.includes('.') ? `${path.slice(0, path.lastIndexOf('.'))}.src` : 'src';
  return [{ path, value }, ...(cites === 'group' ? [{ path: group, value: src }] : [])];
}

/** Each number of the sentence that can stand there, with its bound word as a choice. */
function numbersFor({ path }: FieldPlace, dimension: Dimension, saying: Saying): readonly FieldValue[] {
  const { reading, src } = saying;
  const dot = path.lastIndexOf('.');
  const home: Home = { field: path.slice(dot + 1), dimension, near: [], ...countedAs(dimension, path) };
  return reading.numbers
    .filter((one, at) => isOwnValue(one, at, reading) && mayBe(dimension, one))
    .map((mention) => {
      const placed = { group: groupAt(path.slice(0, Math.max(0, dot))), home, mentions: both(mention, reading) };
      return { fields: [{ path, value: requirement(placed, reading, `, src: ${src}`) }], words: boundWords };
    });
}

const boundWords: ReadonlyMap<string, string> = new Map([
  ['stated', 'the page has no bound word'],
  ['at_least', 'minimum, at least, or longer'],
  ['at_most', 'maximum, up to, do not exceed'],
  ['exactly', 'the one value the page allows'],
  ['about', 'about, approximately: never a limit'],
]);

/** `uses` where the field counts uses; what nothing else tells is done that many times. */
function countedAs(dimension: Dimension, path: string): { readonly counted?: string } {
  if (dimension !== 'count') return {};
  const name = nameOf(path);
  return { counted: unitsOf('count').find((unit) => unit.name === name)?.name ?? 'times' };
}

function groupAt(path: string): Placed['group'] {
  return { path, stages: [], words: [], fields: [] };
}

function both(mention: NumberMention, reading: QuoteReading): readonly NumberMention[] {
  return mention.range === undefined ? [mention] : [mention, ...partnerOf(mention, reading)];
}

/** A new item with what it is, and the numbers of the sentence that the item has a place for. */
function itemsFor(place: FieldPlace, item: RecordShape, saying: Saying): readonly FieldValue[] {
  const head = headOf(item);
  if (head === undefined) return [];
  const { reading, src, ids } = saying;
  const words = wordsOf(head);
  const placed = inItem(place.path, reading);
  const parts = placed.map((one) => [one.home.field, requirement(one, reading, '')] as const);
  const own = head.shape.form === 'text' ? wordsOfSentence(reading) : [];
  return [...nearWords(words, reading).words, ...own].map((word) => {
    const named = `${head.key}: ${asValue(word)}`;
    // Options are named by other files, so that each needs an id.
    const begin = place.path.endsWith('any_of[]')
      ? `id: ${asValue(freeId(idFor(word, placed), ids))}, ${named}`
      : named;
    const value = `{${[begin, ...withGroups(parts), `src: ${src}`].join(', ')}}`;
    return { fields: [{ path: place.path, value, head: begin }], words };
  });
}

function idFor(word: string, placed: readonly Placed[]): string {
  const temp = placed.find(({ home }) => home.field === 'temp')?.mentions[0]?.amount;
  return temp === undefined ? word : `${word}-${temp}`;
}

/** Of each kind the one number that the item has a field for without further words. */
function inItem(path: string, reading: QuoteReading): readonly Placed[] {
  const homes = (homesOf.device ?? []).find((group) => group.path === path)?.fields ?? [];
  return homes.flatMap((home) => {
    if (home.near.length > 0) return [];
    const fitting = reading.numbers.filter(
      (one, at) => isOwnValue(one, at, reading) && one.quantities.some(({ dimension }) => dimension === home.dimension),
    );
    const [only, other] = fitting;
    return only === undefined || other !== undefined
      ? []
      : [{ group: groupAt(path), home, mentions: both(only, reading) }];
  });
}

/** Words that the field usually has and the sentence names, then what the sentence says, then the other words. */
function textsFor(place: FieldPlace, saying: Saying): readonly FieldValue[] {
  const { words: usual, named } = nearWords(place.words, saying.reading);
  const own = place.shape.form === 'list' && place.shape.item.form !== 'text' ? [] : wordsOfSentence(saying.reading);
  return [...new Set([...usual.slice(0, named), ...own, ...usual])].map((value) => ({
    fields: cited(place, asValue(value), saying),
    words: place.words,
  }));
}

/** Free words may stand there, or begin an item of it. */
export function takesText({ shape }: FieldPlace): boolean {
  if (shape.form === 'text') return true;
  if (shape.form !== 'list') return false;
  return shape.item.form === 'record' ? headOf(shape.item)?.shape.form === 'text' : shape.item.form === 'text';
}

export function typedValue(place: FieldPlace, text: string, saying: Saying): readonly FieldValue[] {
  const { shape, path, words } = place;
  if (!takesText(place)) return [];
  const head = shape.form === 'list' && shape.item.form === 'record' ? headOf(shape.item) : undefined;
  if (head === undefined) return [{ fields: cited(place, asValue(text), saying), words }];
  const begin = `${head.key}: ${asValue(text)}`;
  return [{ fields: [{ path, value: `{${begin}, src: ${saying.src}}`, head: begin }], words }];
}

const longest = 200;

/** The sentence, and what stands behind the words that begin what it says. */
function wordsOfSentence({ quote }: QuoteReading): readonly string[] {
  const whole = quote.replace(/[.!]\s*$/, '');
  const begins =
    /(?:,|\b(?:if|when|until|that|for|to|with|in|from|by|wenn|falls|bis|für|mit|auf|si|lorsque|pour|avec))\s+/giu;
  const parts = [...whole.matchAll(begins)].map(({ index, 0: word }) => whole.slice(index + word.length));
  return [...new Set([whole, ...parts.slice(0, 4)])].filter((text) => text.length > 2 && text.length <= longest);
}
