import type { Statement } from '../../model/entities/statement.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import type { Table, Text } from '../../model/node.ts';
import { rowOf } from '../../model/walk.ts';
import type { Claim, NumberClaim, QuoteFaultName } from '../../quantity/prose/claims.ts';
import { compareQuote, readerLanguage } from '../../quantity/prose/compare.ts';
import { matchNumber } from '../../quantity/prose/match.ts';
import type { QuoteReading } from '../../quantity/prose/prose.ts';
import { readQuote } from '../../quantity/prose/read-quote.ts';
import { hasCells, headNote, headOver, inCells, type Line } from '../../quantity/prose/table-rows.ts';
import type { Kind } from '../../schema/kinds.ts';
import { isAnswered } from './answered-faults.ts';
import type { FieldClaim, FieldClaims } from './field-claim.ts';
import { claimsOf } from './field-claims.ts';
import type { QuotedStatement, TranscriptionFault } from './transcription-fault.ts';
import { isMentioned } from './wording.ts';

/** Kinds that repeat what a maker's document says. */
export const transcribedKinds = [
  'device',
  'packaging',
  'chemistry',
  'washer',
  'ultrasonic',
  'sterilizer',
  'monitor',
] as const satisfies readonly Kind[];

export type Transcribed = AnyEntity & { readonly statements?: Table<Statement>; readonly lang?: Text };

/** A dozen rules ask for the faults of one entity: they are worked out once. Readings are kept only where there is a fault. */
const known = new WeakMap<AnyEntity, readonly TranscriptionFault[]>();

/** Everything of one name in which the fields of an entity depart from the quotes they cite. */
export function faultsNamed(entity: Transcribed, name: QuoteFaultName): readonly TranscriptionFault[] {
  let faults = known.get(entity);
  if (faults === undefined) {
    faults = entity.statements === undefined ? [] : faultsOf(entity, entity.statements);
    known.set(entity, faults);
  }
  return faults.filter(({ fault }) => fault.fault === name);
}

/** The quote of a statement, read in its own language; undefined when the file has no such statement or it has no quote. */
export function readStatement(entity: Transcribed, id: string): Omit<QuotedStatement, 'cited'> | undefined {
  const statement = rowOf(entity.statements, id);
  const quote = statement?.quote;
  if (statement === undefined || quote === undefined) return undefined;
  const language = readerLanguage(statement.lang?.text ?? entity.lang?.text);
  const reading = readQuote(quote.text, language);
  return { id, statement, quote, reading: hasCells(quote.text) ? underHead(entity, id, reading) : reading };
}

/** The units and bounds of a row that stand in the head of its table. */
function underHead({ statements }: Transcribed, id: string, reading: QuoteReading): QuoteReading {
  const ids = [...(statements?.rows.keys() ?? [])];
  const lines = ids.map((one) => lineOf(rowOf(statements, one)));
  const head = headOver(lines, ids.indexOf(id));
  return head === undefined ? reading : inCells(reading, head.columns);
}

function lineOf(statement: Statement | undefined): Line {
  const isNotedHead = statement?.not_needed?.items[0]?.reason?.text === headNote;
  return { quote: statement?.quote?.text ?? '', section: statement?.section?.text ?? '', isNotedHead };
}

function faultsOf(entity: Transcribed, statements: Table<Statement>): readonly TranscriptionFault[] {
  const found = claimsOf(entity);
  const readings = new Map<string, Omit<QuotedStatement, 'cited'>>();
  for (const id of statements.rows.keys()) {
    const read = readStatement(entity, id);
    if (read !== undefined) readings.set(id, read);
  }
  const assigned = assign(found.claims, readings);
  const citing = timesCited(found);
  const faults: TranscriptionFault[] = [];
  for (const [id, read] of readings) {
    const fields = (assigned.get(id) ?? []).filter((field) => isConcerned(field, read, found));
    const quoted: QuotedStatement = { ...read, cited: citing.get(id) ?? 0 };
    for (const fault of compareQuote(
      read.reading,
      fields.map((field) => claimFor(field, quoted)),
    )) {
      const field = fault.claim === undefined ? undefined : fields[fault.claim];
      const one: TranscriptionFault = { fault, quoted, ...(field !== undefined && { field }) };
      if (!isAnswered(one, fields, found, entity)) faults.push(one);
    }
  }
  return withoutBacked(faults, assigned);
}

/** How many records cite each statement. */
function timesCited({ citing }: FieldClaims): ReadonlyMap<string, number> {
  const times = new Map<string, number>();
  for (const { statements } of citing) for (const id of new Set(statements)) times.set(id, (times.get(id) ?? 0) + 1);
  return times;
}

function claimFor({ claim }: FieldClaim, { statement }: QuotedStatement): Claim {
  if (claim.claim !== 'number' || claim.readAs !== undefined || statement.read_as === undefined) return claim;
  return { ...claim, readAs: statement.read_as.text };
}

type Readings = ReadonlyMap<string, Omit<QuotedStatement, 'cited'>>;

/** A field that cites several statements is held against those that have its number; when none has it, against the likeliest. */
function assign(claims: readonly FieldClaim[], readings: Readings): ReadonlyMap<string, readonly FieldClaim[]> {
  const assigned = new Map<string, FieldClaim[]>();
  for (const field of claims) {
    const ids = field.statements.filter((id) => readings.has(id));
    for (const [id, one] of ids.length > 1 ? spread(field, ids, readings) : ids.map((only) => [only, field] as const)) {
      const fields = assigned.get(id);
      if (fields === undefined) assigned.set(id, [one]);
      else fields.push(one);
    }
  }
  return assigned;
}

function spread(
  field: FieldClaim,
  ids: readonly string[],
  readings: Readings,
): readonly (readonly [string, FieldClaim])[] {
  const { claim } = field;
  if (claim.claim !== 'number') return ids.map((id) => [id, field] as const);
  const holders = ids.filter((id) => claim.values.every((_, at) => holds(readings, id, claim, at)));
  if (holders.length > 0) return holders.map((id) => [id, field] as const);
  const ends = claim.bound === 'between' ? endsOf(field, claim) : [];
  const split = ends.map((end) => [ids.find((id) => holds(readings, id, end.claim as NumberClaim, 0)), end] as const);
  if (split.length > 0 && split.every(([id]) => id !== undefined))
    return split.map(([id = '', end]) => [id, end] as const);
  const likeliest = ids.find((id) => mentionsNear(readings, id, claim)) ?? ids[0] ?? '';
  return [[likeliest, field]];
}

/** The lower and upper end of `between` as two claims: each may stand in a statement of its own. */
function endsOf(field: FieldClaim, claim: NumberClaim): readonly FieldClaim[] {
  const [from, to] = claim.values;
  if (from === undefined || to === undefined) return [];
  const [low, high] = from.value <= to.value ? [from, to] : [to, from];
  return [
    { ...field, claim: { ...claim, bound: 'at_least', values: [low] } },
    { ...field, claim: { ...claim, bound: 'at_most', values: [high] } },
  ];
}

function holds(readings: Readings, id: string, claim: NumberClaim, at: number): boolean {
  const reading = readings.get(id)?.reading;
  const value = claim.values[at];
  return reading !== undefined && value !== undefined && matchNumber(reading, value, value.dimension).kind !== 'absent';
}

function mentionsNear(readings: Readings, id: string, claim: NumberClaim): boolean {
  const reading = readings.get(id)?.reading;
  const value = claim.values[0];
  return (
    reading !== undefined && value !== undefined && matchNumber(reading, value, value.dimension).mentions.length > 0
  );
}

/** Whether a prohibition in the quote can speak of this field at all. */
function isConcerned(field: FieldClaim, { id, reading }: Omit<QuotedStatement, 'cited'>, found: FieldClaims): boolean {
  const { claim, concern } = field;
  if (claim.claim !== 'use') return true;
  if (claim.subject !== undefined && reading.stages.some((mention) => mention.stage === claim.subject)) return true;
  if (concern === 'named' || found.forbidden.has(id)) return false;
  if (concern !== undefined) return reading.negations.some((negation) => isMentioned(negation.targetText, concern));
  return !reading.negations.some(({ target }) =>
    reading.stages.some(({ span }) => target.start <= span.start && span.end <= target.end),
  );
}

/** A field that cites several statements is right when one of them bears it out. */
function withoutBacked(
  faults: readonly TranscriptionFault[],
  assigned: ReadonlyMap<string, readonly FieldClaim[]>,
): readonly TranscriptionFault[] {
  return faults.filter(({ field }) => {
    if (field === undefined || field.statements.length < 2 || field.claim.claim !== 'number') return true;
    const against = [...assigned].filter(([, fields]) => fields.includes(field)).map(([id]) => id);
    return against.every((id) => faults.some((other) => other.field === field && other.quoted.id === id));
  });
}
