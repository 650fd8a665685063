import type { QuoteReading, StageMention } from '../../quantity/prose/prose.ts';
import type { Kind } from '../../schema/kinds.ts';
import { bracketAt } from './quote-clauses.ts';
import type { Matched, Placed } from './quote-match.ts';
import { matchNumbers } from './quote-match.ts';
import { isOwnValue } from './quote-own-values.ts';
import type { Section } from './quote-section.ts';
import { methodStages } from './quote-values.ts';

/** Several cycles in one sentence, `121 °C for 20 min or 134 °C for 3 min`: each is a way of its own. */

interface Row {
  readonly start: number;
  readonly end: number;
}

/**
 * Undefined where the sentence has no rows of the same form: what only one of them has (a drying time at the end) may hold for all, and nobody
 * but the reader can tell.
 */
export function inRows(reading: QuoteReading, kind: Kind, section: Section): Matched | undefined {
  const rows = rowsOf(reading);
  if (rows.length < 2 || !rows.every((row) => temperaturesIn(row, reading) === 1)) return undefined;
  const found = rows.map((row) => matchNumbers(ofRow(reading, row, rows), kind, section));
  const isCycle = ({ placed, left }: Matched): boolean =>
    left.length === 0 &&
    placed.length > 1 &&
    placed.every(({ group }) => group === placed[0]?.group && isOption(group.path));
  const fields = ({ placed }: Matched): string =>
    placed
      .map(({ home }) => home.field)
      .sort()
      .join();
  const [first] = found;
  if (first === undefined || !found.every((one) => isCycle(one) && fields(one) === fields(first))) return undefined;
  return { placed: found.flatMap(({ placed }, at) => asOwnItem(placed, ofRow(reading, rows[at], rows))), left: [] };
}

function isOption(path: string): boolean {
  return path === 'sterilization.any_of[]' || path === 'validated[]';
}

function rowsOf({ quote, numbers }: QuoteReading): readonly Row[] {
  const parting = /;\s|\s(?:or|oder|ou)\s(?=[^;]*\d)/g;
  const cuts = [...quote.matchAll(parting)]
    .map(({ index }) => index)
    .filter((at) => bracketAt(quote, at) === undefined);
  const rows = [0, ...cuts].map((start, at) => ({ start, end: cuts[at] ?? quote.length }));
  return rows.filter(({ start, end }) => numbers.some(({ span }) => span.start >= start && span.end <= end));
}

function temperaturesIn(row: Row, reading: QuoteReading): number {
  const isTemperature = ({ quantities }: QuoteReading['numbers'][number]): boolean =>
    quantities.some(({ dimension }) => dimension === 'temperature');
  return reading.numbers.filter(
    (one, at) =>
      isTemperature(one) && isOwnValue(one, at, reading) && one.span.start >= row.start && one.span.end <= row.end,
  ).length;
}

/** The row by itself; numbers keep their places, since they name each other by them. A method that only the first row names holds for all. */
function ofRow(reading: QuoteReading, row: Row | undefined, rows: readonly Row[]): QuoteReading {
  const isIn = ({ span }: StageMention, place: Row | undefined): boolean =>
    place !== undefined && span.start >= place.start && span.end <= place.end;
  const isMethod = ({ stage }: StageMention): boolean => methodStages.has(stage) || stage === 'steam';
  const methods = reading.stages.filter(isMethod);
  const isShared = methods.every((one) => isIn(one, rows[0]));
  const stages = reading.stages.filter((one) => isIn(one, row) || (isShared && isMethod(one)));
  const numbers = reading.numbers.map((one) =>
    row !== undefined && one.span.start >= row.start && one.span.end <= row.end ? one : { ...one, isReference: true },
  );
  const { quote, language, negations, joins, flags } = reading;
  return { quote, language, numbers, stages, negations, joins, flags };
}

/** Groups of their own, so that each row becomes an item. */
function asOwnItem(placed: readonly Placed[], { stages }: QuoteReading): readonly Placed[] {
  const [first] = placed;
  if (first === undefined) return [];
  const group = { ...first.group, named: stages.map(({ stage }) => stage) };
  return placed.map((one) => ({ ...one, group }));
}
