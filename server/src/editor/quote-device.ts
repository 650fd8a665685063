import { materials } from '../quantity/prose/named/materials.ts';
import { wordFor } from '../quantity/prose/named/named.ts';
import type { NumberMention, QuoteReading } from '../quantity/prose/prose.ts';
import { asValue } from './bare.ts';
import type { Home } from './home.ts';
import type { NewField } from './insert-fields.ts';
import { amountOf, isOwnValue } from './quote-own-values.ts';
import { requirement } from './quote-values.ts';

/** What a sentence says of the device itself: its lumens, what it is made of, parts that are replaced. */

const aLumen =
  /^(?:the\s|one\s|single\s|with\s(?:an?\s|one\s)?|der\s|le\s|la\s|(?:innen)?durchmesser des\s|länge des\s|(?:diamètre|longueur)(?:\sintérieure?)? (?:du|de la)\s)*((?:\p{L}+\s)?(?:lumen|channel|cannulation|\p{L}*kanal|canal|lumière))s?(?!\p{L})/iu;
/** `The cannula has one channel, 4.2 mm in diameter`. */
const hasLumen =
  /(?:\bhas|\bwith|(?<!\p{L})hat|(?<!\p{L})mit|possède|(?<!\p{L})avec)\s(?:an?|one|a single|einen|einem|un|une)\s((?:working\s|arbeits)?(?:lumen|channel|cannulation|\p{L}*kanal|canal|lumière))(?!\p{L})/iu;
const isLong = {
  before: /(?<!\p{L})(?:length|länge|longueur)(?:\sof|\sdu canal|\sdes \p{L}*kanals)?\s?:?\s*$/iu,
  after: /^\s*(?:long\b|in length|length\b|lang\b|de long)/i,
};
const isBore = {
  before:
    /(?:(?:inner|inside|internal)\s(?:diameter|ø)|\bbore|(?<!outer\s)(?<!outside\s)\bdiameter|\bID|Ø|innendurchmesser|lichte weite|diamètre(?:\sintérieur)?)(?:\sof|\sdu canal|\sdes \p{L}*kanals)?\s?:?\s*$/iu,
  after: /^\s*(?:(?:inner|inside|internal|in)\s)?(?:diameter\b|bore\b|ID\b|wide\b)/,
};
const length: Home = { field: 'length', dimension: 'length', near: [] };

/** `Lumen 330 mm long, 2.0 mm inner diameter`: a lumen with its bore and its length. Of several lumens nothing is made. */
export function lumenIn(reading: QuoteReading, src: string, taken: ReadonlySet<string>): readonly NewField[] {
  const { quote, numbers, stages, negations } = reading;
  const [, name] = aLumen.exec(quote) ?? hasLumen.exec(quote) ?? [];
  const own = numbers.filter((one, at) => isOwnValue(one, at, reading));
  const isAll = own.every(
    ({ quantities, bound }) => bound === 'none' && quantities.some((one) => one.dimension === 'length'),
  );
  if (name === undefined || !isAll || stages.length > 0 || negations.length > 0 || quote.length > longest) return [];
  const bores = own.filter((one) => says(isBore, one, quote));
  const lengths = own.filter((one) => says(isLong, one, quote));
  const [bore, otherBore] = bores;
  const [long, otherLong] = lengths;
  if (own.length === 0 || bores.length + lengths.length !== own.length || bore === long) return [];
  if (otherBore !== undefined || otherLong !== undefined) return [];
  const id = idOf(name, taken);
  if (id === undefined) return [];
  const parts = [
    `id: ${id}`,
    ...(bore === undefined ? [] : [`bore: ${amountOf(bore, length)}`]),
    ...(long === undefined ? [] : [`length: ${amountOf(long, length)}`]),
    `src: ${src}`,
  ];
  return [{ path: 'lumens[]', value: `{${parts.join(', ')}}`, head: `id: ${id}` }];
}

const longest = 120;

function says(words: typeof isLong, { span }: NumberMention, quote: string): boolean {
  return words.after.test(quote.slice(span.end)) || words.before.test(quote.slice(0, span.start));
}

/** Nothing where the file has one of that name: whether it is the same is for the reader to say. */
function idOf(name: string, taken: ReadonlySet<string>): string | undefined {
  const id = name
    .toLowerCase()
    .trim()
    .replace(/[^a-z0-9]+/g, '-');
  return taken.has(id) || !/^[a-z]/.test(id) ? undefined : id;
}

const listOfMaterials =
  /^(?:\p{L}+\s)?(?:materials?(?:\sused)?|werkstoffe?|materialien|material|matériaux|matières?)(?:\sof\s[\p{L}\s-]{3,40})?\s*:\s*([^.]{3,160}?)\.?$|^made (?:of|from)\s([^.;:]{3,160}?)\.?$/iu;
/** `Handle: PEEK`, where each word is a material. */
const ofPart = /^(?:the\s)?(?:\p{L}+\s)?\p{L}{3,20}\s*:\s*([^.;:]{3,80})\.?$/iu;
/** `The guide is made of aluminium with a PEEK handle`. */
const madeOf =
  /\b(?:is|are)\s(?:made|manufactured)\s(?:of|from)\s|\bconsists? of\s|(?<!\p{L})(?:besteht|bestehen) aus\s|(?<!\p{L})(?:est|sont) (?:fabriquée?s?\s)?en\s/iu;

/** `Materials: stainless steel, PEEK insulation, silicone seal`. */
export function materialsIn({ quote, negations, numbers }: QuoteReading): {
  readonly fields: readonly NewField[];
  readonly unknown: readonly string[];
} {
  const [, first, second] = listOfMaterials.exec(quote) ?? [];
  const [, alone] = ofPart.exec(quote) ?? [];
  const isMaterial = alone !== undefined && listed(alone).every((item) => wordFor(materials, item.toLowerCase()));
  const made = isMaterial ? alone : madeOf.test(quote) && numbers.length === 0 ? quote : undefined;
  const list = first ?? second ?? made;
  if (list === undefined || negations.length > 0) return { fields: [], unknown: [] };
  const items = listed(list);
  const known = items.map((item) => ({ item, words: wordFor(materials, item.toLowerCase()) }));
  const words = [...new Set(known.flatMap((one) => (one.words === undefined ? [] : [one.words])))];
  return {
    fields: words.map((what) => ({ path: 'materials[]', value: what })),
    unknown: words.length === 0 ? [] : known.flatMap((one) => (one.words === undefined ? [one.item] : [])),
  };
}

function listed(text: string): readonly string[] {
  return text
    .split(/\s*(?:[,;]|(?<!\p{L})(?:and|with|und|mit|aus|et|avec)(?!\p{L}))\s*/u)
    .filter((item) => item !== '');
}

const whole = `(?:device|instrument|product|system|set|it|they|item|unit|tool)s?`;
const replaced =
  /^(?:(?:the|each)\s)?((?:[\p{L}-]+\s){0,2}[\p{L}-]+)\s(?:is|are|must be|should be|shall be|has to be|have to be|needs to be)\s(?:replaced|changed|renewed|discarded|exchanged)\s(?:after|every)\b/iu;
const replace =
  /^(?:replace|change|renew|exchange|discard)\s(?:the\s|each\s)?((?:[\p{L}-]+\s){0,2}[\p{L}-]+)\s(?:after|every)\b/iu;

/** What is a part by its very name; of any other noun nobody knows whether the device itself is meant. */
const reused =
  /^(?:(?:the|each|an?)\s)?((?:[\p{L}-]+\s)?(?:insert|cap|seal|o-?ring|valve|blade|cable|membrane|gasket|filter|cover|plug|sleeve|spring|battery|bulb)s?)\s(?:can|may|must|should|is|are)\b.{0,40}\b(?:(?:re-?)?process(?:ed)?|(?:re-?)?used|sterili[sz]ed|autoclaved|changed|replaced)\b/iu;

/** `The cap is replaced after 20 uses`: the part whose life that is; nothing where the device itself is meant. */
export function partNamed(quote: string): string | undefined {
  const name = (replaced.exec(quote) ?? replace.exec(quote) ?? reused.exec(quote))?.[1];
  return name === undefined || new RegExp(String.raw`(?:^|\s)${whole}$`, 'i').test(name) ? undefined : name;
}

export function partReplaced(reading: QuoteReading, src: string, taken: ReadonlySet<string>): readonly NewField[] {
  const name = partNamed(reading.quote);
  const id = name === undefined ? undefined : idOf(name, taken);
  const [uses, other] = reading.numbers.filter((one, at) => isOwnValue(one, at, reading));
  if (name === undefined || id === undefined || uses === undefined || other !== undefined) return [];
  const isCounted =
    (uses.units.every(({ dimension }) => dimension === 'count') &&
      /^\s*(?:reprocessing\s|processing\s)?(?:uses|cycles|times)\b/i.test(reading.quote.slice(uses.span.end))) ||
    /uses|cycles|times/.test(reading.quote.slice(uses.span.start, uses.span.end));
  if (!isCounted) return [];
  const home: Home = { field: 'uses', dimension: 'count', near: [], counted: 'uses' };
  const group = { path: 'parts[]', stages: [], words: [], fields: [] };
  const value = requirement({ group, home, mentions: [uses] }, reading, '');
  return [
    { path: 'parts[]', value: `{id: ${id}, name: ${asValue(name)}, uses: ${value}, src: ${src}}`, head: `id: ${id}` },
  ];
}
