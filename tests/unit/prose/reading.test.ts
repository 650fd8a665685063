import { describe, expect, it } from 'vitest';
import { isFault, parseQuantity } from '../../../server/src/quantity/parse.ts';
import { boundOf, deltaPairErrors, matchNumber, unitPairMismatches } from '../../../server/src/quantity/prose/match.ts';
import { longestQuote } from '../../../server/src/quantity/prose/prose.ts';
import { readQuote } from '../../../server/src/quantity/prose/read-quote.ts';
import type { Language } from '../../../server/src/quantity/prose/token.ts';
import type { Dimension, QuantityValue } from '../../../server/src/quantity/quantity.ts';

function quantity(text: string, dimension: Dimension): QuantityValue {
  const value = parseQuantity(text, dimension);
  if (isFault(value)) throw new Error(`${text} is no ${dimension}`);
  return value;
}

/** Numbers of a quote as `text bound`, references left out. */
function numbersOf(quote: string, language?: Language): string[] {
  const reading = readQuote(quote, language);
  const numbers = reading.numbers.filter((mention) => !mention.isReference);
  return numbers.map((mention) => `${quote.slice(mention.span.start, mention.span.end)} ${mention.bound}`);
}

describe('numbers and their bound words', () => {
  it.each([
    ['at least 50 mL of water through the luer port, 3 times', ['50 mL at_least', '3 times none']],
    ['for 4 minutes minimum', ['4 minutes at_least']],
    ['min. 4 min', ['4 min at_least']],
    ['3 to 5 times', ['3 between', '5 times between']],
    ['between 132 and 135 °C', ['132 between', '135 °C between']],
    ['not less than 10 minutes', ['10 minutes at_least']],
    ['do not exceed 140 °C', ['140 °C at_most']],
    ['do not use bleach, hydrogen peroxide or detergents above pH 10.5', ['10.5 at_most']],
    ['do not soak the handle, rinse it at more than 30 °C', ['30 °C at_least']],
    ['twice, and three times more', ['twice none', 'three times none']],
    ['ISO 17664-1, Fig. 3, step 4, SAL 10^-6, REF 45-120, 2024', []],
    ['grade 316L steel, 5th rinse, dilution 1:200', []],
    ['Rinse | 110 °C max. | 20 min', ['110 °C at_most', '20 min none']],
    ['inspect under 4x magnification', ['4x none']],
  ])('%s', (quote, expected) => {
    expect(numbersOf(quote, 'en')).toEqual(expected);
  });

  it.each([
    ['Look for burrs at 20x magnification or more.', 'en', ['20x at_least']],
    ["Le pH de la solution prête à l'emploi doit être compris entre 6 et 8.", 'fr', ['6 between', '8 between']],
  ] as const)('%s (%s)', (quote, language, expected) => {
    expect(numbersOf(quote, language)).toEqual(expected);
  });

  it.each([
    ['Pre-wash 2:30 min cold', [2.5]],
    ['for 3 minutes 30 seconds or longer', [3.5]],
    ['1 h 30 min', [1.5]],
    ['dilution 1:20, 5 min', [1, 20, 5]],
  ])('a time in two parts is one: %s', (quote, amounts) => {
    expect(readQuote(quote, 'en').numbers.map(({ amount }) => amount)).toEqual(amounts);
  });

  it('reads "apart from" as a place of its own or as an exception', () => {
    expect(readQuote('Clean apart from all other instruments.', 'en').negations).toEqual([]);
    expect(readQuote('Wash all parts apart from the motor.', 'en').negations).toHaveLength(1);
  });

  it('gives offsets into the quote as written', () => {
    const quote = 'İ: nicht länger als 18 Minuten';
    const [mention] = readQuote(quote, 'de').numbers;
    expect(quote.slice(mention?.span.start, mention?.span.end)).toBe('18 Minuten');
    expect(quote.slice(mention?.boundSpan?.start, mention?.boundSpan?.end)).toBe('nicht länger als');
  });
});

describe('matching a claimed number', () => {
  it.each([
    ['Expose for 4 min.', 'en', '4 min', 'time', 'exact'],
    ['Expose for 240 s.', 'en', '4 min', 'time', 'exact'],
    ['Expose at 270 °F.', 'en', '132 °C', 'temperature', 'converted-within-rounding'],
    ['Expose at 270 °F.', 'en', '134 °C', 'temperature', 'absent'],
    ['3,5 min', 'de', '35 min', 'time', 'only-by-decimal-comma'],
    ['3,5 min', 'de', '3.5 min', 'time', 'exact'],
    ['4² min', 'en', '42 min', 'time', 'only-by-footnote'],
    ['42 min at 134 °C. 2) Not for implants.', 'en', '4 min', 'time', 'only-by-footnote'],
    ['42 min at 134 °C.', 'en', '4 min', 'time', 'absent'],
    ['1.200 mg/L', 'de', '1200 mg/L', 'concentration', 'exact'],
    ['1 200 mg/L', 'fr', '1200 mg/L', 'concentration', 'exact'],
  ] as const)('%s (%s) for %s', (quote, language, text, dimension, kind) => {
    expect(matchNumber(readQuote(quote, language), quantity(text, dimension), dimension).kind).toBe(kind);
  });

  it('names the nearest numbers of the same kind when there is no match', () => {
    const quote = 'Expose at 132 °C for 4 minutes, dry for 20 minutes.';
    const match = matchNumber(readQuote(quote, 'en'), quantity('14 min', 'time'), 'time');
    expect(match.mentions.map((mention) => mention.amount)).toEqual([20, 4]);
  });

  it('says the bound that the quote gives a number', () => {
    const reading = readQuote('4 minutes or longer, minimum dry time 30 minutes, at 132 °C', 'en');
    expect(boundOf(reading, quantity('30 min', 'time'))).toEqual(['at_least']);
    expect(boundOf(reading, quantity('132 °C', 'temperature'))).toEqual(['none']);
    expect(boundOf(reading, quantity('5 min', 'time'))).toEqual([]);
  });
});

describe('two units for one quantity', () => {
  it.each([
    ['270 °F (132 °C)', 0, 0],
    ['132 °C / 270 °F', 0, 0],
    ['270 °F (134 °C)', 1, 0],
    ['270-275 °F (132-135 °C)', 0, 0],
    ['270-275 °F (132-137 °C)', 1, 0],
    ['30 s (1 min for lumens)', 0, 0],
    ['±3 °C (±5.4 °F)', 0, 0],
    ['±3 °C (±37.4 °F)', 0, 1],
    ['15 °C/min (27 °F/min)', 0, 0],
    // UNIT-035 of the check values: 59 seen printed for 15 °C/min.
    ['15 °C/min (59 °F/min)', 0, 1],
  ])('%s', (quote, mismatches, deltas) => {
    const reading = readQuote(quote, 'en');
    expect([unitPairMismatches(reading).length, deltaPairErrors(reading).length]).toEqual([mismatches, deltas]);
  });
});

describe('negations, joins and flags', () => {
  it('tells prohibitions from bounds, permissions and end-points', () => {
    const kinds = (quote: string): string[] => readQuote(quote, 'en').negations.map((negation) => negation.kind);
    expect(kinds('Do not exceed 140 °C.')).toEqual([]);
    expect(kinds('Brush until no residue remains.')).toEqual([]);
    expect(kinds('Ultrasonic cleaning is not required.')).toEqual(['not-required']);
    expect(kinds('Never immerse the motor.')).toEqual(['prohibition']);
    expect(kinds('All parts except the motor may be immersed.')).toEqual(['exception']);
  });

  it('joins the stages that stand beside each other', () => {
    const joins = readQuote('Clean manually or by machine, then rinse.', 'en').joins;
    expect(joins.map((join) => [join.before.stage, join.join, join.after.stage])).toEqual([
      ['manual', 'or', 'mechanical'],
      ['mechanical', 'then', 'rinse'],
    ]);
  });

  it('sees pictograms, prion paragraphs and what was only used for validation', () => {
    const flags = (quote: string): string[] => readQuote(quote, 'en').flags.map((flag) => flag.flag);
    expect(flags('[pictogram: crossed basin]')).toEqual(['pictogram']);
    expect(flags('If TSE is suspected, 134 °C for 18 min')).toEqual(['prion']);
    expect(flags('Validated with double wrap; use only this wrap')).toEqual(['validated-with', 'only']);
  });
});

describe('hostile quotes', () => {
  it.each(['≥4 min ', 'not 5 min, ', '1,', '(', 'min. ', '±3 °C (', '9', 'or then and ', '\u0000² '])(
    'stays quick on %j repeated',
    (part) => {
      const quote = part.repeat(longestQuote * 2);
      const started = performance.now();
      const reading = readQuote(quote);
      expect(reading.quote.length).toBeLessThanOrEqual(longestQuote);
      expect([reading.numbers, reading.negations, reading.joins, reading.flags].every(Array.isArray)).toBe(true);
      expect(performance.now() - started).toBeLessThan(1500);
    },
  );
});
