import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { completionsAt } from '../../../server/src/editor/completion.ts';
import type { Offer } from '../../../server/src/editor/offer.ts';
import { readRuleFile } from '../../../server/src/library/file-record.ts';
import { readSample } from '../../support/samples.ts';
import { filled, sampleEngine } from '../../support/writing.ts';

const rules = [{ id: 'unknown-id', why: 'Nobody describes it.' }];
const engine = sampleEngine();
const view = engine.view();
const texts = [...readSample('lanternfield-corrected')];
const name = fileId('here.ifu.yaml');

/** The offer taken, every hole filled so that only an empty place can be missing. */
function afterwards(text: string, offer: Offer): string {
  return text.slice(0, offer.span.start) + offer.pieces.map(filled).join('') + text.slice(offer.span.end);
}

/** Faults of form and syntax that may remain: an empty place, and that the field itself repeats what the rest of the sample says. */
const ofEmptyPlaces = new Set([
  'empty-value',
  'requirement-says-nothing',
  'field-missing',
  'value-empty',
  'does-not-fit',
]);

/** New faults by rule, those of an empty place left out. */
function added(before: string, after: string): readonly string[] {
  const count = (text: string): Map<string, number> => {
    const counts = new Map<string, number>();
    for (const { rule } of readRuleFile(name, text).problems) counts.set(rule, (counts.get(rule) ?? 0) + 1);
    return counts;
  };
  const old = count(before);
  return [...count(after)].flatMap(([rule, number]) =>
    number > (old.get(rule) ?? 0) && !ofEmptyPlaces.has(rule) ? [rule] : [],
  );
}

/** Places of a text where a person writes: behind `key: `, at the start of a word, before a closing bracket, on a new line of a map. */
function writingPlaces(text: string): readonly { readonly before: string; readonly cursor: number }[] {
  const places: { before: string; cursor: number }[] = [];
  for (const { index } of text.matchAll(/: (?=[\w"[{])|, (?=[\w"])|[[{](?=[\w"])/g))
    places.push({ before: text, cursor: index + 1 });
  for (const { index, 1: indent = '' } of text.matchAll(/\n( *)(?=[a-z_]+:)/g)) {
    const at = index + 1 + indent.length;
    places.push({ before: `${text.slice(0, index + 1)}${indent}\n${text.slice(index + 1)}`, cursor: at });
  }
  for (const { index, 0: found } of text.matchAll(/\b[a-z_]+: (?=[^\n{[]*\n)/g)) {
    const at = index + found.length;
    const end = text.indexOf('\n', at);
    places.push({ before: text.slice(0, at) + text.slice(end), cursor: at });
  }
  for (const { index } of text.matchAll(/\}/g))
    places.push({ before: `${text.slice(0, index)}, ${text.slice(index)}`, cursor: index + 2 });
  return places;
}

describe('every offer, at every place of the samples (drawn at random)', () => {
  it('is read as what was meant and adds no fault but the empty place', () => {
    let taken = 0;
    fc.assert(
      fc.property(fc.nat(texts.length - 1), fc.nat(), fc.nat(), (file, place, choice) => {
        const [path = name, text = ''] = texts[file] ?? [];
        const places = writingPlaces(text);
        const { before, cursor } = places[place % places.length] ?? { before: text, cursor: 0 };
        const record = { ...readRuleFile(name, before), file: path };
        const { offers } = completionsAt(record, cursor, view, rules);
        const offer = offers[choice % Math.max(1, offers.length)];
        // Another kind, or another name for a key that is there, changes what everything behind it means.
        if (offer === undefined || /^kind: /m.test(before.slice(cursor - 6, cursor)) || before[offer.span.end] === ':')
          return;
        taken++;
        const after = afterwards(before, offer);
        expect(
          added(before, after),
          `${path} at ${cursor}: ${JSON.stringify(offer.pieces)} in\n${around(before, cursor)}\ngives\n${around(after, cursor)}`,
        ).toEqual([]);
      }),
      { numRuns: 3_000, seed: 5 },
    );
    expect(taken).toBeGreaterThan(1_000);
  });
});

function around(text: string, at: number): string {
  const from = text.lastIndexOf('\n', Math.max(0, at - 80)) + 1;
  return text.slice(from, text.indexOf('\n', at + 60));
}
