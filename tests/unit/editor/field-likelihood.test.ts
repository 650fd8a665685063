import { describe, expect, it } from 'vitest';
import { sectionOf } from '../../../server/src/editor/reading/quote-section.ts';
import { valuesFor } from '../../../server/src/editor/walk/field-choices.ts';
import { likelyFields, nearWords } from '../../../server/src/editor/walk/field-likelihood.ts';
import { marked } from '../../../server/src/editor/writing/marked.ts';
import { readQuote } from '../../../server/src/quantity/prose/read-quote.ts';

describe('the words of a field in the order of what a sentence names', () => {
  const agents = new Map([
    ['oil', 'Oil.'],
    ['silicone-spray', 'Silicone spray.'],
    ['paraffin', 'Paraffin oil.'],
  ]);

  it.each([
    ['Spray the joint with silicone.', 'silicone-spray', 1],
    ['Apply a silicone-free lubricant.', 'oil', 0],
    ['Use an agent free of silicone.', 'oil', 0],
    ['Silikonfreies Öl verwenden, ohne Silicone.', 'oil', 0],
  ])('%s', (quote, first, named) => {
    const near = nearWords(agents, readQuote(quote));
    expect(near.words[0]).toBe(first);
    expect(near.named).toBe(named);
  });
});

describe('what is together at a stage', () => {
  it.each([
    ['Reassemble the stopcocks loosely; do not tighten the nuts before sterilization.', 'sterilization', 'true'],
    ['The handle is cleaned in the assembled state.', 'cleaning', 'true'],
    ['Put the parts back together before packing.', 'packaging', 'true'],
    ['Sterilize disassembled only.', 'sterilization', 'false'],
    ['Do not reassemble before sterilization.', 'sterilization', 'false'],
  ])('%s', (quote, stage, first) => {
    const reading = readQuote(quote, 'en');
    const section = sectionOf('', 'en');
    const place = likelyFields(reading, 'device', section)[0]?.place;
    expect(place?.path).toBe(`disassembly.assembled_for.${stage}`);
    const [value] = place === undefined ? [] : valuesFor(place, { reading, src: 's1', ids: new Set() });
    const choices = value?.fields.flatMap((field) => marked.pieces(field.value)).find((one) => typeof one !== 'string');
    expect(choices).toMatchObject({ choices: [first, first === 'true' ? 'false' : 'true'] });
  });
});
