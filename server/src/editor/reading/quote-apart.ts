import { assembledAt } from '../../quantity/prose/named/acts.ts';
import {
  aboutApart,
  aboutPreparing,
  leftTogether,
  noPart,
  openedFirst,
  partsFrom,
  putTogether,
  takesApart,
} from '../../quantity/prose/named/apart.ts';
import { firstOf, wordFor } from '../../quantity/prose/named/named.ts';
import { packedSo } from '../../quantity/prose/named/packagings.ts';
import type { NumberMention, QuoteReading } from '../../quantity/prose/prose.ts';
import { asValue } from '../writing/bare.ts';
import type { NewField } from '../writing/insert-fields.ts';
import { inGroup, withoutStop } from './cited-fields.ts';
import type { Section } from './quote-section.ts';

/** What a sentence says of taking apart and putting together. */
export function takenApartIn(reading: QuoteReading, src: string, section: Section): readonly NewField[] {
  return [
    ...stepsApart(reading, src, section),
    ...together(reading, src, section),
    ...assembled(reading, src, section),
  ];
}

/** A plain request under the heading of taking apart is one of its steps, in the words of the page. */
function stepsApart({ quote, numbers, negations }: QuoteReading, src: string, { text }: Section): readonly NewField[] {
  const asked = quote.replace(ofItem, '');
  const isMeant =
    (aboutApart.test(text) && takesApart.test(asked)) ||
    ((aboutApart.test(text) || aboutPreparing.test(text)) && partsFrom.test(asked));
  const isPlain =
    numbers.every((one) => one.units.length === 0 || isAngle(one, quote)) &&
    negations.length === 0 &&
    quote.length <= longest;
  // What is only opened has a list of its own.
  if (!isMeant || !isPlain || noPart.test(quote) || openedIn(quote) !== undefined) return [];
  const words = withoutStop(quote);
  if (/[.;]\s|\b(?:if|unless|when|wenn|falls|si)\b|\bbefore\s(?:\p{L}+\s)?(?:clean|reprocess)/iu.test(words)) return [];
  const head = `do: ${asValue(words)}`;
  return [{ path: 'disassembly.steps[]', value: `{${head}, src: ${src}}`, head }];
}

/** `S-0715: unscrew the sleeve`. */
const ofItem = /^[\p{L}\d][\p{L}\d\s-]{1,24}:\s/u;
const longest = 160;

/** `Turn it by 90°`: how far, not how warm. */
function isAngle({ numberSpan }: NumberMention, quote: string): boolean {
  return /^\s?(?:°(?!\s?[CFK]\b)|degrees?(?!\s[CF]\b))/.test(quote.slice(numberSpan.end));
}

/** `Leave the locking screw in place`. */
function together({ quote }: QuoteReading, src: string, { text }: Section): readonly NewField[] {
  const what = aboutApart.test(text) || aboutPreparing.test(text) ? firstOf(leftTogether, quote) : undefined;
  return what === undefined ? [] : inGroup('disassembly', [['leave_together[]', asValue(what)]], src);
}

/** `Sterilize assembled but unlocked`: together at that stage, and how it must be then. `Leave the jaws open`, under the heading of packing. */
function assembled({ quote, negations }: QuoteReading, src: string, { stages }: Section): readonly NewField[] {
  const isOfPacking = stages.includes('packaging') && negations.length === 0;
  const isPacked = isOfPacking && putTogether.test(quote);
  const said = wordFor(assembledAt, quote.toLowerCase()) ?? (isPacked ? 'packaging: true' : undefined);
  const position = isOfPacking ? firstOf(packedSo, quote) : undefined;
  if (said === undefined && position !== undefined) return positioned(position, src);
  if (said === undefined || quote.length > longest) return [];
  const [, how] =
    /^sterili[sz]e\s(assembled\s(?:but|and)\s[\p{L}\s-]{3,40}|assembled, [\p{L}\s-]{3,40})\.?$/iu.exec(quote) ?? [];
  return [
    { path: 'disassembly.assembled_for', value: `{${said}, src: ${src}}` },
    ...(how === undefined ? [] : positioned(how, src)),
  ];
}

/** How it lies in its package, in the words of the page. */
export function positioned(how: string, src: string): readonly NewField[] {
  const head = `what: ${asValue(how)}`;
  return [{ path: 'packaging.configuration[]', value: `{${head}, src: ${src}}`, head }];
}

/** `Open all stopcocks`: what is opened before cleaning. */
export function openedIn(quote: string): string | undefined {
  const what = openedFirst.exec(quote)?.[1]?.trim();
  return what === undefined || /\b(?:clos|pack|pouch|door|lid|and)/i.test(what) ? undefined : what;
}
