import type { QuoteReading } from '../quantity/prose/prose.ts';
import { asValue } from './bare.ts';
import type { NewField } from './insert-fields.ts';

/** What a sentence says is looked at and tested, and what takes a device out of use. */

const discards = `(?:discard(?:ed)?|scrap(?:ped)?|dispose(?:d)? of|replace(?:d)?|(?:remove|take)n? (?:it )?(?:from|out of) (?:use|service)|reject(?:ed)?|withdrawn?)`;
const repairs = String.raw`(?:(?:return|send|sent)(?:ed)?\b.{0,40}\brepair)`;
const unused = `(?:(?:do not|must not be|never) (?:be )?used?)`;
const verb = `(?:${discards}|${repairs}|${unused})`;

/** `Discard it if the tip is bent`, `An instrument that is cracked must be discarded`, `If it is bent, discard it`. */
const forms: readonly RegExp[] = [
  new RegExp(String.raw`^(?:[^,;:]{0,40}\s)?${verb}\b[^,;:]{0,60}?\b(?:if|when|once|as soon as)\s(.+)$`, 'i'),
  new RegExp(String.raw`^(?:if|when|once|as soon as)\s(.+?),\s(?:[^,;:]{0,40}\s)?${verb}\b[^,;:]{0,60}$`, 'i'),
  new RegExp(String.raw`^${verb}\s[^,;:]{0,40}?\bwhose\s(.+)$`, 'i'),
  new RegExp(String.raw`^${verb}\s[^,;:]{0,40}?\b(?:that|which)\s(?:is|are)\s(.+)$`, 'i'),
  new RegExp(String.raw`^${verb}\s[^,;:]{0,40}?\bwith\s(.+)$`, 'i'),
];

/** Of the package, of a date, of soil: other things than the state of the device. */
const notOfTheDevice =
  /\b(?:pack|package|packaging|pouch|wrap|barrier|expir|date|soil|debris|blood|clean|wet|moist|sterile|indicator|water|detergent|solution)/i;

export function rejectedIf({ quote, numbers }: QuoteReading, src: string): readonly NewField[] {
  const text = quote.replace(/\s*[.!]\s*$/, '');
  const at = forms.findIndex((form) => form.test(text));
  const condition = forms[at]?.exec(text)?.[1];
  if (condition === undefined || numbers.length > 0 || notOfTheDevice.test(text)) return [];
  const action = new RegExp(repairs, 'i').test(text) ? 'repair' : new RegExp(discards, 'i').test(text) ? 'discard' : '';
  return [
    ...partsOf(condition, at < 3 ? 'clauses' : 'words').map((part) => ({
      path: 'inspection.reject_if[]',
      value: asValue(part),
    })),
    ...(action === '' ? [] : [{ path: 'inspection.action', value: action }]),
    { path: 'inspection.src', value: src },
  ];
}

/** `the tip is bent or the grip is cracked` in two, `the tip or the shaft is bent` in one: each part must say by itself what is seen. */
function partsOf(text: string, of: 'clauses' | 'words'): readonly string[] {
  const parts = listed(text);
  const isWhole = (part: string): boolean =>
    /\b(?:is|are|has|have|shows?|does|do|can|cannot|no longer|becomes?|fails?)\b/.test(part);
  return of === 'words' || parts.every(isWhole) ? parts : [text.trim()];
}

function listed(text: string): readonly string[] {
  return text
    .split(/\s*(?:,\s*(?:and|or)?|\b(?:and|or)\b)\s*/)
    .map((part) => part.trim())
    .filter((part) => part !== '');
}

/** `Inspect for corrosion, cracks and loose screws`: what is looked for. Nothing where it is something else than nouns. */
export function lookedFor(quote: string): readonly string[] {
  const found =
    /\b(?:inspect|check|examine|look)\b[^.;:]*?\bfor\s(?:signs? of\s|visible\s)*([^.;:()]+?)\s*[.;]?$/i.exec(
      quote,
    )?.[1];
  const isOther =
    found === undefined ||
    /\d|\b(?:each|every|use|cleaning|function\p{L}*|movement|operation|proper|correct|smooth|free|complete\p{L}*|the|if|when|under|with|by|before|after|until|and\/or)\b/iu.test(
      found,
    );
  return isOther ? [] : listed(found.replace(/^any\s/, ''));
}

const tests: readonly (readonly [string, RegExp])[] = [
  [
    'lumen_inspection',
    /\b(?:look|view|inspect|check|examine)\b.{0,60}\b(?:through|into|inside|interior)\b.{0,40}\b(?:lumens?|channels?|bore|tube|cannula|shaft)\b|\b(?:lumens?|channels?)\b.{0,60}\bborescope\b|\bborescope\b.{0,60}\b(?:lumens?|channels?)\b/i,
  ],
  [
    'leak_test',
    /\b(?:perform|carry out|do|conduct)\b.{0,20}\bleak(?:age)?[\s-]test\b|\btest(?:ed)?\b.{0,40}\bfor (?:leaks|leakage|tightness)\b/i,
  ],
  ['insulation_test', /\b(?:test|check)\b.{0,30}\binsulation\b|\binsulation test\b/i],
  [
    'function_test',
    /\b(?:check|test|verify)\b.{0,60}\b(?:functions?|functioning|functionality|movement|moves?|operation|operates?|opens? and closes?)\b|\bfunction(?:al)? test\b/i,
  ],
];

const eachUse = /\b(?:before|prior to)\s(?:each|every)\s(?:use|procedure|surgery|operation)\b/i;

/** Tests that the sentence asks for by name. */
export function testsAsked({ quote, negations, numbers }: QuoteReading, src: string): readonly NewField[] {
  if (negations.length > 0 || numbers.some(({ units }) => units.length > 0)) return [];
  const each = eachUse.test(quote) ? 'each_use: true, ' : '';
  return tests
    .filter(([, words]) => words.test(quote))
    .map(([name]) => ({ path: `inspection.${name}`, value: `{required: true, ${each}src: ${src}}` }));
}
