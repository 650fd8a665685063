import type { NumberMention, QuoteReading } from '../../quantity/prose/prose.ts';
import { readQuote } from '../../quantity/prose/read-quote.ts';
import type { Dimension } from '../../quantity/quantity.ts';
import { unitsOf } from '../../quantity/units.ts';
import type { RecordShape } from '../../schema/shape.ts';
import { type FieldPlace, headOf, wordsOf } from '../reading/field-places.ts';
import type { Home } from '../reading/home.ts';
import { homesOf } from '../reading/quote-homes.ts';
import type { Placed } from '../reading/quote-match.ts';
import { amountOf, isOwnValue, partnerOf } from '../reading/quote-own-values.ts';
import { phrasesFor } from '../reading/quote-phrases.ts';
import { freeId, requirement, withGroups } from '../reading/quote-values.ts';
import { asValue } from '../writing/bare.ts';
import type { NewField } from '../writing/insert-fields.ts';
import { marked } from '../writing/marked.ts';
import { mayBe, nearWords } from './field-likelihood.ts';

/** What a sentence may say in one field: fields with one place at most where a word is chosen. */
export interface FieldValue {
  readonly fields: readonly NewField[];
  /** What the words of that place mean. */
  readonly words: ReadonlyMap<string, string>;
  /** The sentence as it stands, where nothing shorter fits. */
  readonly is?: 'whole';
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
  const own = head.shape.form === 'text' ? phrasesFor(place.path, place.titles, reading.quote) : [];
  return inTurn(nearWords(words, reading), own).flatMap((word) => {
    const values = isOfValue(item, word) ? valuesOf(word, reading).map((value) => `, value: ${asValue(value)}`) : [''];
    return values.map((value) => {
      const named = `${head.key}: ${asValue(word)}${value}`;
      // Options are named by other files, so that each needs an id.
      const begin = place.path.endsWith('any_of[]')
        ? `id: ${asValue(freeId(idFor(word, placed), ids))}, ${named}`
        : named;
      const text = `{${[begin, ...withGroups(parts), `src: ${src}`].join(', ')}}`;
      return { fields: [{ path: place.path, value: text, head: begin }], words, ...(word === own.at(-1) && isWhole) };
    });
  });
}

const isWhole = { is: 'whole' } as const;

/** `temp-above` says nothing without the temperature. */
function isOfValue({ fields }: RecordShape, word: string): boolean {
  return fields.has('value') && /-(?:above|below)$/.test(word);
}

/** The numbers of the sentence that such a word can have, as they are written in it. */
function valuesOf(word: string, reading: QuoteReading): readonly string[] {
  const kind = word.replace(/-(?:above|below)$/, '');
  const dimension = ({ temp: 'temperature', ph: 'ph', pressure: 'pressure' } as const)[kind];
  if (dimension === undefined) return [];
  const home: Home = { field: 'value', dimension, near: [] };
  return reading.numbers
    .filter((one, at) => isOwnValue(one, at, reading) && mayBe(dimension, one))
    .map((one) => amountOf(one, home));
}

/** Words that need a value of which the sentence has none: it is asked for. */
export function wordsWithoutValue({ shape }: FieldPlace, { reading }: Saying): readonly string[] {
  const item = shape.form === 'list' && shape.item.form === 'record' ? shape.item : undefined;
  const head = item === undefined ? undefined : headOf(item);
  if (item === undefined || head === undefined) return [];
  return [...wordsOf(head).keys()].filter((word) => isOfValue(item, word) && valuesOf(word, reading).length === 0);
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

/** Words that the field usually has and the sentence names, then what the sentence says, then the other words; the whole sentence last. */
function textsFor(place: FieldPlace, saying: Saying): readonly FieldValue[] {
  const { path, titles, shape, words } = place;
  const own = shape.form === 'list' && shape.item.form !== 'text' ? [] : phrasesFor(path, titles, saying.reading.quote);
  return inTurn(nearWords(words, saying.reading), own).map((value) => ({
    fields: cited(place, asValue(value), saying),
    words,
    ...(value === own.at(-1) && isWhole),
  }));
}

function inTurn({ words, named }: ReturnType<typeof nearWords>, own: readonly string[]): readonly string[] {
  return [...new Set([...words.slice(0, named), ...own.slice(0, -1), ...words, ...own.slice(-1)])];
}

/** Free words or a number may stand there, or begin an item of it. */
export function takesText({ shape }: FieldPlace): boolean {
  if (shape.form === 'text' || isNumber(shape)) return true;
  if (shape.form !== 'list') return false;
  return shape.item.form === 'record' ? headOf(shape.item)?.shape.form === 'text' : shape.item.form === 'text';
}

/** `word`: what the typed words are the value of. */
export function typedValue(place: FieldPlace, text: string, saying: Saying, word = ''): readonly FieldValue[] {
  const { shape, path, words } = place;
  if (!takesText(place)) return [];
  if (shape.form === 'record' && shape.dimension !== undefined)
    return numbersFor(place, shape.dimension, { ...saying, reading: readQuote(text, saying.reading.language) });
  const head = shape.form === 'list' && shape.item.form === 'record' ? headOf(shape.item) : undefined;
  if (head === undefined) return [{ fields: cited(place, asValue(text), saying), words }];
  const begin = word === '' ? `${head.key}: ${asValue(text)}` : `${head.key}: ${word}, value: ${asValue(text)}`;
  return [{ fields: [{ path, value: `{${begin}, src: ${saying.src}}`, head: begin }], words }];
}

/** A value with its unit, and its bound word. */
export function isNumber(shape: FieldPlace['shape']): boolean {
  return shape.form === 'record' && shape.dimension !== undefined;
}
