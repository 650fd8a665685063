import type { AnyEntity } from '../../model/entity.ts';
import type { Node, Quantity, Rec } from '../../model/node.ts';
import { childrenOf, fieldOf, isRequirement } from '../../model/walk.ts';
import { isFault, parseQuantity } from '../../quantity/parse.ts';
import { matchNumber } from '../../quantity/prose/match.ts';
import type { NumberMention, QuoteReading } from '../../quantity/prose/prose.ts';
import { isEqualAmount } from '../../quantity/prose/ratio.ts';
import { readQuote } from '../../quantity/prose/read-quote.ts';
import type { FieldClaim, FieldClaims } from './field-claim.ts';
import type { QuotedStatement, TranscriptionFault } from './transcription-fault.ts';

/** Faults of the bound word: a bare number has none to be wrong. */
const boundFaults: ReadonlySet<string> = new Set([
  'quote-bound-changed',
  'bare-number-promoted',
  'approximate-used-as-limit',
  'exposure-vs-total-time',
  'half-cycle-encoded',
]);
/** Parts of a device file that hold what the page says in words. */
const wordyFields = ['tse_note', 'reuse', 'disposal', 'notes'] as const;

/** True when the writer has dealt with the fault: by saying how a number is read, why none is needed, or what is wrong on the page. */
export function isAnswered(
  { fault, quoted, field }: TranscriptionFault,
  fields: readonly FieldClaim[],
  found: FieldClaims,
  entity: AnyEntity,
): boolean {
  const { statement, reading } = quoted;
  if (field !== undefined && isBeyond(field, fault.fault) && !isAboveLimit(field, fault, reading)) return true;
  switch (fault.fault) {
    case 'quote-number-mismatch':
    case 'decimal-or-footnote-suspect':
      return fault.value !== undefined && isReadAs(statement.number_read_as?.text, fault.value);
    case 'min-token-ambiguous':
      return statement.read_as !== undefined;
    case 'delta-converted-as-absolute':
      return statement.as_written_error !== undefined;
    case 'unit-pair-mismatch':
      return statement.as_written_error !== undefined && !fields.some((one) => usesAny(reading, one, fault.spans));
    case 'quote-number-not-encoded': {
      const mention = mentionAt(reading, fault.spans[0]?.start);
      return (
        mention !== undefined &&
        (isHeldInWords(mention, quoted, found, entity) || isHeldWithoutUnit(mention, quoted, found))
      );
    }
    default:
      return false;
  }
}

function isBeyond({ repeats }: FieldClaim, fault: string): boolean {
  return repeats === 'nothing' || (repeats === 'number' && boundFaults.has(fault));
}

/** Settings of a machine that may lie below what its maker says, and never above. */
const highestSettings: ReadonlySet<string> = new Set(['load_max']);

/** The department's own setting, above the one highest value that the passage it cites gives. */
function isAboveLimit(
  { at }: FieldClaim,
  { fault, value }: TranscriptionFault['fault'],
  reading: QuoteReading,
): boolean {
  if (fault !== 'quote-number-mismatch' || value === undefined || !highestSettings.has(String(at.key))) return false;
  const limits = reading.numbers.filter(({ quantities }) =>
    quantities.some(({ dimension }) => dimension === value.dimension),
  );
  return (
    limits.length > 0 && limits.every(({ bound, quantities }) => bound === 'at_most' && isBelow(quantities, value))
  );
}

function isBelow(
  quantities: NumberMention['quantities'],
  value: NonNullable<TranscriptionFault['fault']['value']>,
): boolean {
  return quantities.every((one) => one.dimension !== value.dimension || one.value < value.value);
}

function isReadAs(words: string | undefined, value: NonNullable<TranscriptionFault['fault']['value']>): boolean {
  if (words === undefined) return false;
  const read = parseQuantity(words, value.dimension);
  return !isFault(read) && isEqualAmount(read.value, value.value);
}

/** The number of the quote that begins at this offset. */
export function mentionAt(reading: QuoteReading, start: number | undefined): NumberMention | undefined {
  return reading.numbers.find((mention) => mention.span.start === start);
}

/** True when the field's number is one of those at these places of the quote. */
export function usesAny(
  reading: QuoteReading,
  { claim }: FieldClaim,
  spans: readonly { readonly start: number }[],
): boolean {
  if (claim.claim !== 'number') return false;
  return claim.values.some((value) => {
    const match = matchNumber(reading, value, value.dimension);
    return (
      match.kind !== 'absent' &&
      match.mentions.some((mention) => spans.some(({ start }) => mention.span.start === start))
    );
  });
}

/** Said to be needless, or standing in the words of a field that cites the statement or of the file. */
function isHeldInWords(
  mention: NumberMention,
  { id, statement, reading }: QuotedStatement,
  found: FieldClaims,
  entity: AnyEntity,
): boolean {
  for (const row of statement.not_needed?.items ?? []) if (holdsNumber(row.text?.text, mention, reading)) return true;
  for (const { record, statements } of found.citing) {
    if (statements.includes(id) && textsOf(record).some((text) => holdsNumber(text, mention, reading))) return true;
  }
  return wordyFields.some((key) =>
    textsUnder(fieldOf(entity, key)).some((text) => holdsNumber(text, mention, reading)),
  );
}

/** Its number stands in a field that cites the statement, with a unit that is missing or wrong: told there. */
function isHeldWithoutUnit(mention: NumberMention, { id }: QuotedStatement, { citing }: FieldClaims): boolean {
  return citing.some(
    ({ record, statements }) =>
      statements.includes(id) &&
      quantitiesOf(record).some(
        ({ problem, text }) => problem !== undefined && Number.parseFloat(text) === mention.amount,
      ),
  );
}

function quantitiesOf(record: Rec): readonly Quantity[] {
  return childrenOf(record).flatMap((child) => {
    if (child.node === 'quantity') return [child];
    return child.node === 'list' ? child.items.flatMap((item) => (item.node === 'quantity' ? [item] : [])) : [];
  });
}

function textsOf(record: Rec): readonly string[] {
  const texts: string[] = [];
  for (const child of childrenOf(record)) {
    if (child.node === 'text' || child.node === 'list') texts.push(...textsUnder(child));
    else if (child.node === 'record' && isRequirement(child)) continue;
  }
  return texts;
}

function textsUnder(node: Node | undefined): readonly string[] {
  if (node?.node === 'text') return [node.text];
  return node?.node === 'list' ? node.items.flatMap((item) => (item.node === 'text' ? [item.text] : [])) : [];
}

function holdsNumber(text: string | undefined, mention: NumberMention, reading: QuoteReading): boolean {
  if (text === undefined) return false;
  const printed = reading.quote.slice(mention.span.start, mention.span.end);
  if (text.trim() === printed) return true;
  const { numbers } = readQuote(text, reading.language);
  return mention.quantities.some(({ dimension, value }) =>
    numbers.some((one) =>
      one.quantities.some((other) => other.dimension === dimension && isEqualAmount(other.value, value)),
    ),
  );
}
