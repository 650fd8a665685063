import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { closerLook, type Expected, scalarHazard } from '../../../server/src/syntax/hazards.ts';
import type { ScalarStyle, ScalarTree } from '../../../server/src/syntax/tree.ts';
import { oddPlains, plains } from '../../support/odd-pieces.ts';
import { hazardRows } from './hazard-rows.ts';

const expectations: readonly Expected[] = ['text', 'id', 'number', 'quantity', 'date', 'flag'];
const styles: readonly ScalarStyle[] = ['plain', 'single-quoted', 'double-quoted', 'block'];

const scalar = (text: string, style: ScalarStyle): ScalarTree => ({
  node: 'scalar',
  span: { start: 0, end: text.length },
  text,
  style,
});

/** Whether the first look says of a value what the closer one says, in every place and form. */
function looksAgree(text: string): void {
  for (const style of styles)
    for (const expected of expectations) {
      const value = scalar(text, style);
      const { rule, message } = closerLook(value, expected) ?? {};
      const found = scalarHazard(value, expected);
      expect({ text, style, expected, rule: found?.rule, message: found?.message }).toEqual({
        text,
        style,
        expected,
        rule,
        message,
      });
    }
}

describe('a value that looks ordinary is held against no form that some program reads otherwise, and need not be', () => {
  it('values of the rows of hostile inputs, and odd ones', () => {
    for (const text of [...hazardRows.flatMap(({ texts }) => texts), ...plains, ...oddPlains]) looksAgree(text);
  });

  it('words that stand for yes, no and nothing, in any letters', () => {
    for (const word of ['y', 'yes', 'on', 'true', 'n', 'no', 'off', 'false', 'null', '~'])
      for (const text of [
        word,
        word.toUpperCase(),
        word.charAt(0).toUpperCase() + word.slice(1),
        `${word}x`,
        `${word} `,
      ])
        looksAgree(text);
  });

  it('any text made of the signs of numbers, dates and units', () => {
    const signs = [
      ...'0123456789',
      '0',
      '1',
      '.',
      ',',
      '-',
      '+',
      ':',
      '_',
      ' ',
      'e',
      'E',
      'x',
      'o',
      'b',
      'm',
      'in',
      'C',
      '°',
      '%',
      '/',
      '²',
      '½',
      '−',
      '…',
      ' to ',
      'T',
      'Z',
      'é',
      '\u0661',
      '\uff11',
    ];
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...signs), { maxLength: 20 }), (parts) => looksAgree(parts.join(''))),
      { numRuns: 3_000 },
    );
    fc.assert(
      fc.property(fc.nat(9999), fc.nat(14), fc.nat(33), fc.constantFrom('-', '/', '.'), (year, month, day, sign) =>
        looksAgree([year, String(month).padStart(2, '0'), String(day).padStart(2, '0')].join(sign)),
      ),
      { numRuns: 1_000 },
    );
  });
});
