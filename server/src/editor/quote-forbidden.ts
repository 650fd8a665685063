import type { QuoteReading } from '../quantity/prose/prose.ts';
import { asValue } from './bare.ts';
import type { NewField } from './insert-fields.ts';
import type { Section } from './quote-section.ts';
import { isAtUse } from './quote-section.ts';

/** Agents and tools that a sentence says never to use, each as an entry of its own; what the lists have no word for is told. */
export interface Forbidden {
  readonly fields: readonly NewField[];
  /** Items of the sentence that are no word of the list, as printed. */
  readonly unknown: readonly string[];
}

/** The word of the list by how pages print it. A word with strong, concentrated or the like before it says less than the word alone. */
const agents: readonly (readonly [string, RegExp])[] = [
  ['hypochlorite', /bleach|hypochlor|chlorine|chlor(?:bleich|haltig)|javel|chloré/],
  ['aldehyde', /aldehyd/],
  ['metal-brush', /(?:metal|metallic|wire|steel|brass)[\s-]+brush|(?:metall|draht|stahl)bürst|brosses? métalli/],
  ['abrasive', /abrasive|scour|steel wool|scheuer|stahlwolle|abrasif|laine d.acier/],
  ['saline', /saline|salt solution|kochsalz|sérum physiologique/],
  ['iodine', /iodine|povidone|\bjod|\biode/],
  ['chlorhexidine', /chlorhexidin/],
  ['alcohol', /alcohol|ethanol|isopropanol|alkohol|alcool/],
  ['silicone', /silicon/],
  ['oil', /\boils?\b|\böle?\b|huile/],
  ['rinse-aid', /rinse[\s-]aid|klarspül/],
  ['neutraliser', /neutrali[sz]er|neutralisationsmittel|neutralisant/],
  ['enzymatic', /^enzym\p{L}*(?:\s\p{L}+)?$/u],
  ['acid', /^acid(?:s|ic)?(?:\s(?:agents?|cleaners?|detergents?|solutions?))?$|^säuren?$|^acides?$/],
  ['alkaline', /^alkali(?:s|es|ne)?(?:\s(?:agents?|cleaners?|detergents?|solutions?))?$|^laugen?$/],
];
const qualified =
  /\b(?:strong|strongly|concentrated|undiluted|highly|hot|high|pure|starke[nrs]?|fort(?:e?s)?|concentré)/;

const device = String.raw`(?:this|the|these|your)\s(?:device|instrument|product|tube|set)s?`;
/** What is not to be used, behind the verb. */
const objects: readonly RegExp[] = [
  new RegExp(
    String.raw`^(?:warning:\s|caution:\s)?(?:never|do not|don.t|avoid|must not)\s(?:ever\s)?(?:(?:use|using|the use of|apply|contact with|clean(?:ing)?\s(?:${device}\s|it\s)?with|treat\s(?:${device}|it)\swith|exposure to|expose\s(?:${device}|it)\sto)\s)(.+)$`,
  ),
  /^(.+?)\s(?:must not|may not|shall not|should not|must never|are not to|is not to|cannot)\sbe\sused$/,
  /^(?:bitte\s)?(?:keine[nr]?)\s(.+?)\s(?:verwenden|benutzen|einsetzen)$/,
  /^(?:ne\spas\sutiliser|n.utilise[zr]?\s(?:pas|jamais)|ne\sjamais\sutiliser)\s(?:d.|de\s|des\s)?(.+)$/,
];
/** What stands before the name of an agent and says no more than that it is one. */
const beginnings =
  /^(?:no|other|(?:the )?use of|d.|de\s|des\s)\s+|^any\s+|^(?:solutions?|agents?|products?|detergents?|cleaners?)\s(?:that contain|containing|with|based on)\s/i;
/** Ends of a sentence that narrow nothing. */
const idle = new RegExp(
  String.raw`\s(?:(?:on|for|with|to clean)\s(?:${device})|for\s(?:cleaning|reprocessing|disinfection)|at any (?:step|time|stage)|during (?:reprocessing|cleaning|any step)|to keep (?:it|${device}) (?:moist|wet))$`,
);
const narrows =
  /(?<!\p{L})(?:on|for|in|if|when|unless|while|during|before|after|above|below|with|without|more|longer|than|to|near|that|which|except|auf|bei|wenn|vor|nach|ohne|mit|sur|pour|si|avant|après|sans|dans)(?!\p{L})/u;

export function agentsForbidden({ quote, numbers }: QuoteReading, src: string, section: Section): Forbidden {
  const none = { fields: [], unknown: [] };
  const text = quote.replace(/\s*[.!]\s*$/, '').replace(idleEnd(quote), '');
  const said = objects.map((object) => object.exec(text.toLowerCase())).find((found) => found !== null);
  const phrase = said?.[1];
  if (said === undefined || phrase === undefined || numbers.length > 0 || /[.;:]/.test(phrase)) return none;
  const start = text.toLowerCase().indexOf(phrase);
  const items = text
    .slice(start, start + phrase.length)
    .split(/\s*(?:,|\/|(?<!\p{L})(?:and|or|nor|und|oder|et|ou)(?!\p{L}))\s*/u)
    .map((item) => item.replace(beginnings, '').trim())
    .filter((item) => item !== '');
  if (items.some((item) => narrows.test(item.toLowerCase()))) return none;
  const known = items.map((item) => ({ item, what: whatIs(item.toLowerCase()) }));
  const path = isAtUse(section) ? 'point_of_use.avoid[]' : 'not[]';
  return {
    fields: known.flatMap(({ item, what }) =>
      what === undefined ? [] : [{ path, value: `{what: ${what}, as_written: ${asValue(item)}, src: ${src}}` }],
    ),
    unknown: known.some(({ what }) => what !== undefined)
      ? known.flatMap(({ item, what }) => (what === undefined ? [item] : []))
      : [],
  };
}

function idleEnd(quote: string): string {
  return idle.exec(quote.toLowerCase().replace(/\s*[.!]\s*$/, ''))?.[0] ?? '';
}

function whatIs(item: string): string | undefined {
  return qualified.test(item) ? undefined : agents.find(([, words]) => words.test(item))?.[0];
}

/** `Do not mix with instruments of other metals`: of the bath where its heading or the sentence names it, else of every step. */
export function metalsApart(
  { quote, negations, stages }: QuoteReading,
  src: string,
  section: Section,
): readonly NewField[] {
  const isMeant =
    /\b(?:mix(?:ed)?|together|contact|alongside|process(?:ed)?|load(?:ed)?)\b.{0,40}\b(?:other|different|dissimilar|unlike)\s+(?:kinds of\s)?metals?\b/i.test(
      quote,
    );
  if (!isMeant || !negations.some(({ kind }) => kind === 'prohibition') || stages.length > 0) return [];
  return section.stages.length === 1 && section.stages[0] === 'ultrasonic'
    ? [
        { path: 'ultrasonic.single_metal', value: 'true' },
        { path: 'ultrasonic.src', value: src },
      ]
    : [{ path: 'not[]', value: `{what: mixed-metals, src: ${src}}` }];
}
