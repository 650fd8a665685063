import type { Edit } from '../../base/problem.ts';
import type { Span } from '../../base/span.ts';
import type { Place, Quantity } from '../../model/node.ts';
import { sayingOf } from '../../model/saying.ts';
import { isRequirement } from '../../model/walk.ts';
import { dimensionName } from '../../quantity/dimension-name.ts';
import { formatQuantity } from '../../quantity/format.ts';
import type { NumberClaim } from '../../quantity/prose/claims.ts';
import type { NumberMention } from '../../quantity/prose/prose.ts';
import type { Report } from '../rule.ts';
import { mentionAt } from './answered-faults.ts';
import type { FieldClaim } from './field-claim.ts';
import { demandInWords } from './limits-of.ts';
import { placeInQuote } from './quote-place.ts';
import type { QuotedStatement, TranscriptionFault } from './transcription-fault.ts';

/** What every finding about a quote shows: the statement, the words in it that matter, and what the field says. */
export function quoteReport({ fault, quoted, field }: TranscriptionFault): Pick<Report, 'says' | 'related' | 'does'> {
  const words = spanOfWords(fault.spans);
  return {
    says: [sayingOf(quoted.statement, quoted.statement.at)],
    ...(words !== undefined && { related: [{ at: placeInQuote(quoted.quote, words), note: 'what the page says' }] }),
    ...(field !== undefined && { does: doesInWords(field) }),
  };
}

/** The words of the quote that show the fault: from the first to the last of them when they stand close together. */
export function quotedWords({ fault, quoted }: TranscriptionFault): string {
  const words = spanOfWords(fault.spans);
  return words === undefined ? withoutStop(fault.quoted ?? '') : closed(quoted.quote.text, words);
}

/** With the bracket that closes one inside the words, and without the stop of `30 min.`. */
function closed(text: string, { start, end }: Span): string {
  const words = text.slice(start, end);
  return words.includes('(') && !words.includes(')') && text.charAt(end) === ')' ? `${words})` : withoutStop(words);
}

/** `Do not clean ultrasonically`: the negation with what it forbids; the negation alone when that is far away or long. */
export function negatedWords({ fault, quoted }: TranscriptionFault): string {
  const negation = quoted.reading.negations.find(({ span }) => span.start === fault.spans[0]?.start);
  if (negation === undefined) return fault.quoted ?? '';
  const start = Math.min(negation.span.start, negation.target.start);
  const end = Math.max(negation.span.end, negation.target.end);
  const words = end - start > closeTogether ? negation.span : { start, end };
  return withoutStop(quoted.quote.text.slice(words.start, words.end));
}

/** `30 min.` at the end of a sentence. */
function withoutStop(words: string): string {
  return words.endsWith('.') ? words.slice(0, -1) : words;
}

/** Farther apart than this, the last of the words stand alone. */
const closeTogether = 60;

/** From the first to the last of the words that show a fault, when they stand close together. */
export function spanOfWords(spans: TranscriptionFault['fault']['spans']): Span | undefined {
  const last = spans[spans.length - 1];
  if (last === undefined) return undefined;
  const start = Math.min(...spans.map((span) => span.start));
  const end = Math.max(...spans.map((span) => span.end));
  return end - start > closeTogether ? last : { start, end };
}

/** `max delay`: the field as people say it. */
export function fieldName(place: Place): string {
  return String(place.key).replaceAll('_', ' ');
}

function doesInWords(field: FieldClaim): string {
  const { record, at, quantities } = field;
  const said = isRequirement(record) ? demandInWords(record) : (quantities ?? []).map(formatQuantity).join(' and ');
  return said === '' ? fieldName(at) : `${fieldName(at)}: ${said}`;
}

/** The number of the field that is at fault, as it stands in the file. */
export function quantityAtFault({ fault, field }: TranscriptionFault): Quantity | undefined {
  return field?.quantities?.find((quantity) => quantity === fault.value);
}

/** A number of the quote: as printed, and in our spelling. */
export interface Candidate {
  readonly printed: string;
  readonly text: string;
}

/** The numbers that the quote has in place of the one at fault, nearest first, each as printed and in our spelling. Those of other fields are none. */
export function candidatesFor(at: TranscriptionFault): readonly Candidate[] {
  const { spans, taken = [] } = at.fault;
  return candidatesAt(
    spans.filter((span) => !taken.includes(span)),
    at,
  );
}

/** All numbers of the quote that are of the kind, those of other fields with them. */
export function numbersOfKind(at: TranscriptionFault): readonly Candidate[] {
  return candidatesAt(at.fault.spans, at);
}

function candidatesAt(spans: readonly Span[], { fault, quoted }: TranscriptionFault): readonly Candidate[] {
  const candidates: Candidate[] = [];
  for (const { start } of spans) {
    const mention = mentionAt(quoted.reading, start);
    const value = mention?.quantities.find((one) => one.dimension === fault.value?.dimension);
    if (mention === undefined || value === undefined) continue;
    candidates.push({ printed: printedOf(mention, quoted), text: formatQuantity(value) });
  }
  return candidates;
}

function printedOf(mention: NumberMention, { quote }: QuotedStatement): string {
  return withoutStop(quote.text.slice(mention.span.start, mention.span.end));
}

/** `a time`, for a value the quote has none of. */
export function sortOf(value: { readonly dimension: Quantity['dimension'] } | undefined): string {
  return value === undefined ? 'a number' : dimensionName(value.dimension);
}

/** Puts another bound word in place of the field's own; undefined where that is not one word for one number. */
export function changeBound(fault: TranscriptionFault, bound: NumberClaim['bound']): Edit | undefined {
  const quantity = quantityAtFault(fault);
  const { field } = fault;
  if (quantity === undefined || field === undefined || !isRequirement(field.record) || bound === 'between')
    return undefined;
  const isSingle =
    String(quantity.at.key) !== bound && field.record[bound] === undefined && field.quantities?.length === 1;
  const key = quantity.at.keySpan;
  return isSingle && key !== undefined ? { span: key, text: bound } : undefined;
}

const boundNames: Readonly<Record<NumberClaim['bound'], string>> = {
  at_least: 'a lowest value',
  at_most: 'a highest value',
  between: 'a range',
  exactly: 'exactly that',
  stated: 'a number without a bound word',
  about: 'no limit',
};

/** What the page's bound word means: `a lowest value`. */
export function boundInWords(bound: NumberClaim['bound']): string {
  return boundNames[bound];
}

/** `at least 10 min`: what the field says, in the bound word its writer chose. */
export function oursInWords({ field }: TranscriptionFault): string {
  if (field?.claim.claim !== 'number') return '';
  const [first = '', second = ''] = field.claim.values.map(formatQuantity);
  switch (field.claim.bound) {
    case 'between':
      return `between ${first} and ${second}`;
    case 'stated':
      return `${first} without a bound word`;
    default:
      return `${field.claim.bound.replaceAll('_', ' ')} ${first}`;
  }
}

/** The bound word that the writer chose: what is underlined where the number itself is right. */
export function boundSpan(fault: TranscriptionFault): Span {
  const quantity = quantityAtFault(fault);
  const place = quantity?.at ?? fault.field?.at;
  const list = place?.parent;
  return place?.keySpan ?? (list?.key === 'between' ? list.keySpan : undefined) ?? place?.span ?? { start: 0, end: 0 };
}
