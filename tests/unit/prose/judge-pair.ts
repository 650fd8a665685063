import { isFault, parseQuantity } from '../../../server/src/quantity/parse.ts';
import type { Claim, NumberClaim } from '../../../server/src/quantity/prose/claims.ts';
import { compareQuote } from '../../../server/src/quantity/prose/compare.ts';
import type { StageWord } from '../../../server/src/quantity/prose/meaning.ts';
import { readQuote } from '../../../server/src/quantity/prose/read-quote.ts';
import type { Language } from '../../../server/src/quantity/prose/token.ts';
import type { Dimension, QuantityValue } from '../../../server/src/quantity/quantity.ts';
import type { Row } from './rows.ts';

const dimensions: Readonly<Record<string, Dimension>> = {
  temp: 'temperature',
  tol: 'temperature-difference',
  rate: 'temperature-rate',
  volume: 'volume',
  times: 'count',
  strokes: 'count',
  uses: 'count',
  ph: 'ph',
  a0: 'a0',
  pressure: 'pressure',
  mass: 'mass',
  frequency: 'frequency',
  concentration: 'concentration',
  conductivity: 'conductivity',
  bacteria: 'bacteria',
  endotoxin: 'endotoxin',
  hardness: 'hardness',
  dose: 'dose',
  humidity: 'percentage',
  bore: 'length',
  length: 'length',
};

/** Fault names a row should give, sorted; empty for `right`. */
export function truthOf(row: Row): readonly string[] {
  return row[2] === 'right' ? [] : row[2].split(' ').sort();
}

/** Fault names the reader gives for a row, sorted, one for each fault. */
export function judgePair(row: Row, language: Language): readonly string[] {
  const claims = row[1].split('|').map((text) => readClaim(text.trim()));
  return compareQuote(readQuote(row[0], language), claims)
    .map((fault) => fault.fault)
    .sort();
}

function readClaim(text: string): Claim {
  const [first = '', second = '', ...rest] = text.split(' ');
  if (first === 'use') {
    const use = { claim: 'use', subject: second as StageWord, use: rest[0] as 'allowed' } as const;
    return rest[1] === 'condition' ? { ...use, hasCondition: true } : use;
  }
  if (first === 'any_of' || first === 'all_of') {
    return { claim: 'structure', structure: first, stages: [second, ...rest] as StageWord[] };
  }
  if (first === 'ambiguous') return { claim: 'ambiguous', text: text.slice('ambiguous '.length) };
  return readNumberClaim(first, second as NumberClaim['bound'], rest.join(' '));
}

function readNumberClaim(parameter: string, bound: NumberClaim['bound'], rest: string): NumberClaim {
  const [withoutReadAs = '', readAs] = rest.split(' read_as ');
  const [values = '', tolerance] = withoutReadAs.split(' tol ');
  const dimension = dimensions[parameter] ?? 'time';
  const claim: NumberClaim = {
    claim: 'number',
    parameter,
    bound,
    values: values.split('..').map((value) => quantity(value, dimension)),
  };
  const withTolerance: NumberClaim =
    tolerance === undefined ? claim : { ...claim, tolerance: quantity(tolerance, 'temperature-difference') };
  return readAs === undefined ? withTolerance : { ...withTolerance, readAs: readAs as 'minutes' };
}

function quantity(text: string, dimension: Dimension): QuantityValue {
  const value = parseQuantity(text, dimension);
  if (isFault(value)) throw new Error(`table: ${text} is no ${dimension}`);
  return value;
}
