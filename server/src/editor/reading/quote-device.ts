import { materials } from '../../quantity/prose/named/materials.ts';
import { wordFor } from '../../quantity/prose/named/named.ts';
import type { NumberMention, QuoteReading } from '../../quantity/prose/prose.ts';
import { asValue } from '../writing/bare.ts';
import type { NewField } from '../writing/insert-fields.ts';
import type { Home } from './home.ts';
import { amountOf, isOwnValue } from './quote-own-values.ts';
import type { Section } from './quote-section.ts';
import { requirement } from './quote-values.ts';

/** What a sentence says of the device itself: its lumens, what it is made of, parts that are replaced. */

const aLumen =
  /^(?:the\s|one\s|single\s|with\s(?:an?\s|one\s)?|der\s|le\s|la\s|(?:innen)?durchmesser des\s|länge des\s|(?:diamètre|longueur)(?:\sintérieure?)? (?:du|de la)\s)*((?:\p{L}+\s)?(?:lumen|channel|cannulation|\p{L}*kanal|canal|lumière))s?(?!\p{L})/iu;
/** `The cannula has one channel, 4.2 mm in diameter`. */
const hasLumen =
  /(?:\bhas|\bwith|(?<!\p{L})hat|(?<!\p{L})mit|possède|(?<!\p{L})avec)\s(?:an?|one|a single|einen|einem|un|une)\s(?:[\d.,]+\s?mm\s)?((?:working\s|instrument\s|suction\s|arbeits)?(?:lumen|channel|cannulation|\p{L}*kanal|canal|lumière))(?!\p{L})/iu;
const isLong = {
  before: /(?<!\p{L})(?:length|länge|longueur)(?:\sof|\sdu canal|\sdes \p{L}*kanals)?\s?:?\s*$/iu,
  after: /^\s*(?:long\b|in length|length\b|lang\b|de long)/i,
};
const isBore = {
  before:
    /(?:(?:inner|inside|internal)\s(?:diameter|ø)|\bbore|(?<!outer\s)(?<!outside\s)(?<!external\s)\bdiameter|\b(?:lumen|channel)(?= of)|\bID|Ø|innendurchmesser|lichte weite|diamètre(?:\sintérieur)?)(?:\sof|\sdu canal|\sdes \p{L}*kanals)?\s?:?\s*$/iu,
  after:
    /^\s*(?:(?:inner|inside|internal|in)\s)?(?:diameter\b|bore\b|ID\b|wide\b|(?:working\s|instrument\s)?(?:channel|lumen)\b)/,
};
/** `3 mm × 250 mm`: what stands behind the bore is the length. */
const behindBore = /^\s*[×x]\s*$/;
const outer =
  /(?:outer|outside|external)\s(?:diameter|Ø)\s?:?\s*$|außendurchmesser\s?:?\s*$|diamètre extérieur\s?:?\s*$/iu;
/** A lumen by what is told of it, without its name. */
const onlyMeasured = /(?:inner|internal|inside)\s(?:diameter|ø)|innendurchmesser|diamètre intérieur/iu;
/** `Each stopcock has a bore of 2 mm`. */
const ofPartSaid =
  /^(?:each|every|the)\s((?:[\p{L}-]+\s)?[\p{L}-]+)\shas\s(?:an?\s)?(?:bore|lumen|inner diameter|internal diameter)\sof\s/iu;
const length: Home = { field: 'length', dimension: 'length', near: [] };

/** `Lumen 330 mm long, 2.0 mm inner diameter`: a lumen with its bore and its length. Of several lumens nothing is made. */
export function lumenIn(reading: QuoteReading, src: string, taken: ReadonlySet<string>): readonly NewField[] {
  const { quote, numbers, stages, negations } = reading;
  const own = numbers.filter((one, at) => isOwnValue(one, at, reading) && !outer.test(quote.slice(0, one.span.start)));
  const name = lumenNamed(quote);
  const isAll = own.every(
    ({ quantities, bound }) => bound === 'none' && quantities.some((one) => one.dimension === 'length'),
  );
  if (name === undefined || !isAll || stages.length > 0 || negations.length > 0 || quote.length > longest) return [];
  const bores = own.filter((one) => says(isBore, one, quote));
  const isBehind = ({ span }: NumberMention): boolean =>
    bores.some((one) => one.span.end <= span.start && behindBore.test(quote.slice(one.span.end, span.start)));
  const lengths = own.filter((one) => !bores.includes(one) && (says(isLong, one, quote) || isBehind(one)));
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

function lumenNamed(quote: string): string | undefined {
  const named = (ofPartSaid.exec(quote) ?? aLumen.exec(quote) ?? hasLumen.exec(quote))?.[1];
  return (
    named ??
    (onlyMeasured.test(quote) && /^[\p{L}\s]*(?:length|diameter|ø|länge|durchmesser|longueur|diamètre)/iu.test(quote)
      ? 'lumen'
      : undefined)
  );
}

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
  /^(?:\p{L}+\s)?(?:materials?(?:\s(?:used|in contact))?|werkstoffe?|materialien|material|matériaux|matières?)(?:\sof\s[\p{L}\s-]{3,40})?\s*:\s*([^.]{3,160}?)\.?$|^made (?:of|from)\s([^.;:]{3,160}?)\.?$/iu;
/** `Handle: PEEK, coated`, where no heading speaks of a step. */
const ofPart = /^(?:the\s)?(?:[\p{L}-]+\s){0,2}[\p{L}-]{3,24}\s*:\s*([^.;:]{3,100})\.?$/iu;
/** `The guide is made of aluminium with a PEEK handle`. */
const madeOf =
  /\b(?:made|manufactured)\s(?:entirely\s|mainly\s)?(?:of|from)\s|\bconsists? of\s|(?<!\p{L})(?:besteht|bestehen) aus\s|(?<!\p{L})(?:est|sont) (?:fabriquée?s?\s)?en\s/iu;
/** Things of the work that are made of something too. */
const noDevice =
  /\b(?:brush|cloth|wipe|tray|basket|container|pouch|wrap|mat|rack|load|towel|swab|instruments? of other)\p{L}*\b|bürste|tuch|korb|behälter|brosse|panier|conteneur/iu;

/** `Materials: stainless steel, PEEK insulation, silicone seal`. */
export function materialsIn(
  { quote, negations, numbers, stages }: QuoteReading,
  section: Section,
): {
  readonly fields: readonly NewField[];
  readonly unknown: readonly string[];
} {
  const [, first, second] = listOfMaterials.exec(quote) ?? [];
  const isFree = negations.every(({ kind }) => kind === 'exception') && stages.length === 0 && !noDevice.test(quote);
  const alone = isFree && section.stages.length === 0 && !quote.includes('|') ? partsIn(quote) : undefined;
  const isMade = isFree && madeOf.test(quote) && numbers.every(({ units }) => units.length === 0);
  const made = alone ?? (isMade ? quote.slice(quote.search(madeOf)).replace(madeOf, '') : undefined);
  const list = first ?? second ?? made;
  if (list === undefined || negations.some(({ kind }) => kind !== 'exception')) return { fields: [], unknown: [] };
  const items = listed(list);
  const known = items.map((item) => ({ item, words: wordFor(materials, item.toLowerCase()) }));
  const words = [...new Set(known.flatMap((one) => (one.words === undefined ? [] : [one.words])))];
  return {
    fields: words.map((what) => ({ path: 'materials[]', value: what })),
    unknown: words.length === 0 ? [] : known.flatMap((one) => (one.words === undefined ? [one.item] : [])),
  };
}

/** What stands behind the names of parts, where the first thing behind each is a material. */
function partsIn(quote: string): string | undefined {
  const parts = quote.split(/;\s+/).map((part) => ofPart.exec(part)?.[1]);
  const isOfMaterials = parts.every((part) => {
    const [first] = part === undefined ? [] : listed(part);
    return first !== undefined && wordFor(materials, first.toLowerCase()) !== undefined;
  });
  return isOfMaterials ? parts.join(', ') : undefined;
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

/** `Check O-rings for nicks, and replace them after ten uses`. */
const andReplace =
  /^(?:check|inspect|examine)\s(?:the\s|all\s|each\s)?((?:[\p{L}-]+\s)?[\p{L}-]+)\s(?:for\s.{3,40})?,?\sand\s(?:replace|change|renew|discard)\s(?:them|it)\s(?:after|every)\b/iu;

/** What is a part by its very name; of any other noun nobody knows whether the device itself is meant. */
export const partNouns = `(?:insert|cap|seal|o-?ring|valve|blade|cable|membrane|gasket|filter|cover|plug|sleeve|spring|flap|battery|bulb|box(?:e)?|case|tray|basket|mat|lid|washer|electrode|tip|sheath|hose|tubing)s?`;
const reused = new RegExp(
  String.raw`^(?:(?:the|each|an?)\s)?((?:[\p{L}-]+\s)?${partNouns})\s(?:can|may|must|should|is|are)\b.{0,40}\b(?:(?:re-?)?process(?:ed)?|(?:re-?)?used|sterili[sz]ed|autoclaved|changed|replaced)\b`,
  'iu',
);
/** `Flaps and springs: 100 cycles`. */
const counted = new RegExp(
  String.raw`^(?:(?:the|all)\s)?((?:[\p{L}-]+\s)?(?:${partNouns}|parts)(?:\sand\s(?:[\p{L}-]+\s)?(?:${partNouns}|parts))?)\s?[:|=]\s?(?:max\p{L}*\.?\s|up to\s|no more than\s|at most\s)?\d[\d.,]*\s(?:\p{L}+\s)?(?:cycles|uses|times)\b`,
  'iu',
);

/** `O-rings: change after 25 cycles`. */
const changed = new RegExp(
  String.raw`^((?:[\p{L}-]+\s)?${partNouns})\s?:\s(?:to be\s|must be\s)?(?:change|replace|renew|discard|exchange)d?\s(?:after|every)\b`,
  'iu',
);

/** `The cap is replaced after 20 uses`: the part whose life that is; nothing where the device itself is meant. */
export function partNamed(quote: string): string | undefined {
  const name = (replaced.exec(quote) ??
    replace.exec(quote) ??
    andReplace.exec(quote) ??
    reused.exec(quote) ??
    counted.exec(quote) ??
    changed.exec(quote))?.[1];
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
