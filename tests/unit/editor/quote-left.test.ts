import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import type { FieldsFromQuote } from '../../../server/src/editor/reading/quote-to-fields.ts';
import { quoteToFields } from '../../../server/src/editor/reading/quote-to-fields.ts';
import { asPlain } from '../../../server/src/editor/writing/offer.ts';
import { readRuleFile } from '../../../server/src/library/file-record.ts';
import { readTree } from '../../../server/src/syntax/read.ts';

function from(quote: string, more = ''): FieldsFromQuote {
  const text = `kind: device\nid: pale\nstatements:\n  s5: {doc: D, rev: A, page: 5, quote: "${quote}"}\n${more}`;
  const { tree } = readTree(text);
  const found =
    tree?.node === 'map'
      ? quoteToFields(readRuleFile(fileId('x.ifu.yaml'), text), tree, text.indexOf('s5'))
      : undefined;
  if (found === undefined) throw new Error('nothing');
  return found;
}

function madeFrom(quote: string, more = ''): string {
  return from(quote, more)
    .insertions.map(({ pieces }) => asPlain(pieces, '\n'))
    .join('\n');
}

describe('what a quote says beside its fields', () => {
  it.each([
    [
      'Do not process in an ultrasonic cleaner with damaged instruments.',
      '{what: ultrasonic, when: with damaged instruments, src: s5}',
      1,
    ],
    [
      'Do not immerse the handle unless the cap is closed.',
      '{what: immersion, when: unless the cap is closed, src: s5}',
      1,
    ],
    ['Do not soak in hot water.', '{what: immersion, when: in hot water, src: s5}', 1],
    [
      'Do not clean the forceps in an ultrasonic bath together with heavy instruments.',
      '{what: ultrasonic, when: together with heavy instruments, src: s5}',
      1,
    ],
    ['Do not immerse in any liquid.', '{use: forbidden, src: s5}', 0],
    ['Do not clean with ultrasound.', '{use: forbidden, src: s5}', 0],
    ['Do not use ultrasonic cleaning with this device.', '{use: forbidden, src: s5}', 0],
  ])('what narrows a prohibition is its condition, and told: %s', (quote, made, told) => {
    expect(madeFrom(quote)).toContain(made);
    expect(from(quote).left.length).toBe(told);
  });

  it.each([
    ['Do not process in an ultrasonic cleaner with dissimilar metals.', 'ultrasonic:\n  single_metal: true'],
    ['Nicht mit anderen Metallen im Ultraschallbad reinigen.', 'ultrasonic:\n  single_metal: true'],
    ['Do not soak in saline.', 'not:\n  - {what: saline, as_written: saline, src: s5}'],
  ])('a prohibition with a field of its own forbids no stage: %s', (quote, made) => {
    expect(madeFrom(quote)).toContain(made);
    expect(madeFrom(quote)).not.toContain('use: forbidden');
  });

  it('a number without a field is told with what is counted', () => {
    expect(from('Brush the lumen with 5 twists.').left).toEqual(['5 twists (no field found)']);
  });

  it('packages that are named beside a cycle have no field of it, and are told', () => {
    const { left } = from('Pre-vacuum steam 132 °C, at least 4 minutes, in a double wrap or a peel pouch.');
    expect(left).toEqual(['no field for: "double wrap"', 'no field for: "pouch"']);
    expect(from('Pre-vacuum steam 132 °C, at least 4 minutes.').left).toEqual([]);
  });

  it('the pH of a bath and of a washer go to their own detergents, beside the limit of the device', () => {
    const limit = 'limits:\n  ph: {between: [6, 11], src: s1}\n';
    expect(madeFrom('Soak in a detergent of pH 6 to 8.', limit)).toContain(
      '{do: soak, detergent: {ph: {between: [6, 8]}}, src: s5}',
    );
    expect(madeFrom('Wash in a washer with a detergent of pH 9 to 10.5.', limit)).toContain(
      'detergent: {ph: {between: [9, 10.5], src: s5}}',
    );
  });
});
