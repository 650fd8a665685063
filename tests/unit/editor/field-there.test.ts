import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { nextSentence, sameSentence } from '../../../server/src/editor/walk/sentence-walk.ts';
import type { WalkChoice } from '../../../server/src/editor/words/walk-choice.ts';
import { readRuleFile } from '../../../server/src/library/file-record.ts';
import { applyEdits } from '../../../server/src/syntax/edits.ts';
import { readTree } from '../../../server/src/syntax/read.ts';

function about(quote: string, there: string): string {
  return `kind: device\nid: pale\nstatements:\n  s1: {doc: D, rev: A, page: 1, quote: "${quote}"}\n  s9: {doc: D, rev: A, page: 1, quote: "x", not_needed: [x]}\n${there}`;
}

interface Offered {
  readonly asks: string;
  readonly choices: readonly WalkChoice[];
}

/** `typed`: into which field somebody typed what. */
function offered(text: string, typed?: readonly [field: string, words: string]): Offered {
  const { tree } = readTree(text);
  const record = readRuleFile(fileId('devices/invented.ifu.yaml'), text);
  const map = tree?.node === 'map' ? tree : undefined;
  const step =
    typed === undefined
      ? nextSentence(record, map, '')
      : sameSentence(record, map, 's1', { words: [], field: typed[0], text: typed[1] });
  if (step.is === 'done') throw new Error('nothing is asked');
  return step;
}

function taking(text: string, label: string, typed?: readonly [string, string]): string {
  const choice = offered(text, typed).choices.find((one) => one.label.startsWith(label));
  const applied = applyEdits(text, choice?.edits ?? []);
  return 'text' in applied ? applied.text : applied.refused;
}

const limited = about('Do not exceed 140 °C.', 'limits:\n  temp: {at_most: 137 °C, src: s9}\n');

describe('a sentence about a field that the file has already', () => {
  it('is asked about, with both values in words and leaving it open first', () => {
    const { asks, choices } = offered(limited);
    expect(asks).toBe('A field is there already. What does this sentence say of it?');
    expect(choices.slice(0, 3).map(({ label, detail }) => `${label} [${detail}]`)).toEqual([
      'Leave it open [it stays a finding until somebody has dealt with it]',
      'Put this in its place: Limits: highest temperature at most 140 °C [what goes: Limits: highest temperature at most 137 °C]',
      'Keep both as a contradiction: Limits: highest temperature at most 137 °C, and highest temperature at most 140 °C [for pages that do not agree: it stays a finding until the maker has answered]',
    ]);
  });

  it.each([
    ['Put this', 'temp: {at_most: 140 °C, src: s1}\n'],
    ['Keep both', 'temp: {conflict: [{at_most: 137 °C, src: s9}, {at_most: 140 °C, src: s1}]}\n'],
  ])('%s', (label, made) => {
    expect(taking(limited, label)).toContain(made);
  });

  it('a third value goes beside the two', () => {
    const two = limited.replace(
      '{at_most: 137 °C, src: s9}',
      '{conflict: [{at_most: 137 °C, src: s9}, {at_most: 134 °C, src: s9}]}',
    );
    expect(taking(two, 'Keep both')).toContain('{at_most: 134 °C, src: s9}, {at_most: 140 °C, src: s1}]}');
  });

  it('says the same: it is named there too', () => {
    const same = about('Do not exceed 140 °C.', 'limits:\n  temp:\n    at_most: 140 °C\n    src: s9\n');
    expect(offered(same).choices[0]?.label).toBe('It says the same: name this sentence there too');
    expect(taking(same, 'It says the same')).toContain('    at_most: 140 °C\n    src: [s9, s1]\n');
  });

  it.each([
    ['Put this in its place: Storage: place: in a cabinet', '{place: in a cabinet, src: [s9, s1]}'],
    ['Keep both: Storage: place: dry, and place: in a cabinet', '{place: "dry; in a cabinet", src: [s9, s1]}'],
  ])('words: %s', (label, made) => {
    const stored = about('Store it well.', 'storage: {place: dry, src: s9}\n');
    expect(taking(stored, label, ['storage.place', 'in a cabinet'])).toContain(`storage: ${made}\n`);
  });

  it('words without a place for a sentence: the sentence says where it went', () => {
    const kept = taking(about('It is worn.', 'reuse: never\n'), 'Keep both: End of life: never, and when worn', [
      'reuse',
      'when worn',
    ]);
    expect(kept).toContain('reuse: "never; when worn"\n');
    expect(kept).toContain('not_needed: [{text: "It is worn.", reason: in words under reuse}]');
  });
});
