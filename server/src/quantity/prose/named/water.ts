import type { Span } from '../../../base/span.ts';
import { span } from '../../../base/span.ts';

/** Waters that pages name, in English, German and French, with the grade that our list has for each. */

export interface WaterMention {
  /** Nothing where the page names a water that none of our grades describes. */
  readonly grade: string | undefined;
  readonly span: Span;
}

/** Critical water is by its own description water from reverse osmosis or deionised. */
const waters: readonly (readonly [string | undefined, RegExp])[] = [
  [
    'critical',
    /critical water|(?:de-?ioni[sz]ed|deminerali[sz]ed|desalinated|reverse[ -]osmosis)(?: water)?|(?<!\p{L})(?:di|ro)(?:\/(?:di|ro))? water|ve-wasser|(?:vollentsalzt|entmineralisiert|entionisiert)\p{L}*(?: wasser)?|(?:eau )?(?:déminéralisée|désionisée|osmosée)/gu,
  ],
  ['sterile', /sterile water|sterili[sz]ed water|steril\p{L}* wasser|eau stérile/gu],
  ['purified', /(?:purified|pure)(?: water|(?= or [\p{L}\s-]{2,20}water))|gereinigt\p{L}* wasser|eau purifiée/gu],
  ['softened', /soft(?:ened)?(?: water|(?= or [\p{L}\s-]{2,20}water))|enthärtet\p{L}* wasser|eau adoucie/gu],
  [
    'utility',
    /utility water|(?:tap|mains|drinking|potable|town)(?: water|(?= or [\p{L}\s-]{2,20}water))|(?:leitungs|trink|stadt)wasser|eau (?:froide |chaude |tiède |courante )?(?:du robinet|potable|du réseau)|(?:\| ?| {3})(?:cold,? |hot,? |warm,? )?(?:drinking|tap|potable|mains)(?= ?\|| {3}| ?$)/gu,
  ],
  [undefined, /distilled(?: water|(?= or [\p{L}\s-]{2,20}water))|destillierte\p{L}* wasser|eau distillée/gu],
];

/** Each water that a text in small letters names, in their order. */
export function watersIn(text: string): readonly WaterMention[] {
  return waters
    .flatMap(([grade, words]) =>
      [...text.matchAll(words)].map((found) => ({ grade, span: span(found.index, found.index + found[0].length) })),
    )
    .toSorted((a, b) => a.span.start - b.span.start);
}

export const waterGrades = ['critical', 'sterile', 'purified', 'softened', 'utility'] as const;
