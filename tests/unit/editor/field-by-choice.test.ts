import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { fieldPlaces } from '../../../server/src/editor/reading/field-places.ts';
import { sameSentence } from '../../../server/src/editor/walk/sentence-walk.ts';
import type { WalkChoice } from '../../../server/src/editor/words/walk-choice.ts';
import { readRuleFile } from '../../../server/src/library/file-record.ts';
import type { Told } from '../../../server/src/panel/sentences.ts';
import { readTree } from '../../../server/src/syntax/read.ts';
import type { Encoded } from '../../support/encoding.ts';
import { encode } from '../../support/encoding.ts';

function about(quote: string, section = '', more = ''): string {
  const above = section === '' ? '' : `section: ${section}, `;
  return `kind: device\nid: pale\nstatements:\n  s1: {doc: D, rev: A, page: 1, ${above}quote: "${quote}"}\n${more}`;
}

/** A person who takes what begins with these labels, one after the other, and then goes on. */
function taking(
  text: string,
  ...labels: readonly string[]
): Encoded & { readonly offered: readonly (readonly string[])[] } {
  const left = [...labels];
  const offered: (readonly string[])[] = [];
  const done = encode(text, (_quote, choices) => {
    offered.push(choices);
    const next = left.shift();
    if (next === undefined) return undefined;
    const found = choices.find((label) => label.startsWith(next));
    if (found === undefined) throw new Error(`${next} is not among ${choices.join(' | ')}`);
    return found;
  });
  return { ...done, offered };
}

const another = 'Another field …';

/** Sentence, heading, the field by its title, what is taken there, and what the file has then. */
const rows: readonly (readonly [string, string, string, string, string])[] = [
  [
    'Discard earlier if the tip is bent or the grip is cracked.',
    'Warnings',
    'Inspection and test: Reject if',
    'Inspection and test: reject if: the tip is bent',
    'inspection:\n  reject_if:\n    - the tip is bent or the grip is cracked\n  src: s1\n',
  ],
  [
    'Look through the lumen against light.',
    'Inspection',
    'Inspection and test: Look into the channel: Required',
    'Inspection and test: look into the channel required',
    'inspection:\n  lumen_inspection: {required: true, src: s1}\n',
  ],
  [
    'Attach the channel to the irrigation nozzle.',
    'Automated cleaning',
    'Mechanical washing: Connector',
    'Mechanical washing: connector: the irrigation nozzle',
    'mechanical:\n  connector: the irrigation nozzle\n  src: s1\n',
  ],
  [
    'Shelf life in wrap is 6 months.',
    'Storage',
    'Storage: Longest storage',
    'Storage: longest storage at most 6 months',
    'storage:\n  time: {at_most: 6 months, src: s1}\n',
  ],
  ['Avoid strong acids.', 'Warnings', 'Never', 'Never: acid', 'not:\n  - {what: acid, src: s1}\n'],
  [
    'Swirl it with 40 mL for 2 minutes.',
    'Manual cleaning',
    'Manual cleaning: Steps',
    'Manual cleaning: flush, volume stated 40 mL, time stated 2 min',
    'manual:\n  steps:\n    - {do: flush, volume: {stated: 40 mL}, time: {stated: 2 min}, src: s1}\n',
  ],
  [
    'The shaft is made of hardened steel with silicone parts.',
    '',
    'Materials',
    'Materials: silicone',
    'not_needed: [{text: "The shaft is made of hardened steel with silicone parts.", reason: in words under materials}]}\n',
  ],
];

describe('a sentence that no field is read from is answered by choice', () => {
  it.each(rows)('%s', (quote, section, field, value, made) => {
    const { text, offered } = taking(about(quote, section), another, field, value, 'Go on');
    expect(text).toContain(made);
    expect(readTree(text).problems).toEqual([]);
    // The likely fields come first.
    expect(offered[1]?.findIndex((label) => label.startsWith(field))).toBeLessThan(6);
    expect(offered[3]?.[0]).toBe('Go on to the next sentence');
  });

  it('every field is offered by its title, a number behind all others where the sentence has none of its kind', () => {
    const { offered } = taking(about('Look at it in good light.'), another, 'Leave it open');
    expect(offered[1]).toContain('Cooling: Method');
    const [words = -1, number = -1] = ['Cooling: Method', 'Cooling: Time'].map((title) => offered[1]?.indexOf(title));
    expect(words).toBeGreaterThan(0);
    expect(number).toBeGreaterThan(words);
    expect(offered[1]?.slice(number).filter((title) => /: (?:Agent|Method|Until)$/.test(title))).toEqual([]);
    const titles = fieldPlaces('device').map(({ titles: all }) => all.join(': '));
    expect(new Set(titles).size).toBe(titles.length);
    expect(titles.length).toBeGreaterThan(250);
  });

  it('the bound word is asked, first what the page says', () => {
    const { offered } = taking(about('Shelf life: 6 months.'), another, 'Storage: Longest storage', 'Leave it open');
    expect(offered[2]?.slice(0, 5)).toEqual(
      ['at most', 'stated', 'at least', 'exactly', 'about'].map((word) => `Storage: longest storage ${word} 6 months`),
    );
  });

  it('a field that is there is told with what would go, and a hasty Enter decides nothing', () => {
    const there = about('Shelf life: 6 months.', '', 'storage: {time: {at_most: 1 years}}\n');
    const { text, offered } = taking(there, another, 'Storage: Longest storage', 'Leave it open');
    expect(offered[2]?.slice(0, 3)).toEqual([
      'Leave it open',
      'Put this in its place: Storage: longest storage at most 6 months',
      'Keep both as a contradiction: Storage: longest storage at most 1 years, and longest storage at most 6 months',
    ]);
    expect(text).toBe(there);
  });

  it('is more than one field: the same sentence comes back, and both name it', () => {
    const { text } = taking(
      about('Discard it when it is bent.', 'Inspection', 'inspection: {visual: true, src: s9}\n'),
      another,
      'Inspection and test: Reject if',
      'Inspection and test: reject if: it is bent',
      'A further field',
      'Inspection and test: Then',
      'Inspection and test: then: discard',
      'Go on',
    );
    expect(text).toContain('inspection: {visual: true, src: [s9, s1], reject_if: [it is bent], action: discard}');
  });

  it('beside what was read of it', () => {
    const { text } = taking(
      about('Do not exceed 140 °C; discard it when it is bent.'),
      'Take it, then a further field',
      'Inspection and test: Reject if',
      'Inspection and test: reject if: it is bent',
      'Go on',
    );
    expect(text).toContain('limits:\n  temp: {at_most: 140 °C, src: s1}\n');
    expect(text).toContain('inspection:\n  reject_if:\n    - it is bent\n  src: s1\n');
  });

  it('without a field for it, it stays a quoted statement by one key', () => {
    const { text, words } = taking(about('Follow the advice of the maker of the detergent.'));
    expect(text).toContain(
      'not_needed: [{text: "Follow the advice of the maker of the detergent.", reason: no field is for it}]',
    );
    expect(words).toContain('none is left open');
  });

  it.each([
    ['lumen', 'Inspection and test: Look into the channel: Required'],
    ['shelf life', 'Storage: Longest storage'],
    ['end of life', 'Limits: Number of uses'],
    ['before first use', 'Receipt: Before first use: What the page says'],
    ['pouch', 'Packaging: Packagings named'],
  ])('whoever types "%s" finds the field', (typed, title) => {
    const found = asked('Shelf life: 6 months, 20 uses.', { words: [], next: 'field' })
      .filter(({ label, detail }) => `${label} ${detail}`.toLowerCase().includes(typed))
      .map(({ label }) => label);
    expect(found).toContain(title);
  });

  it('a list of fields leads back and to a quoted statement, behind the likely ones', () => {
    const { offered } = taking(about('Look at it in good light.'), another, 'Back to the sentence');
    expect(offered[1]?.indexOf('Back to the sentence')).toBeLessThan(8);
    expect(offered[1]?.indexOf('Keep it as a quoted statement')).toBeLessThan(8);
    expect(offered[2]).toEqual(offered[0]);
  });

  it('a field that holds the sentence already is not offered first again', () => {
    const { offered } = taking(
      about('Discard it when it is bent.', 'Inspection'),
      another,
      'Inspection and test: Reject if',
      'Inspection and test: reject if: it is bent',
      'A further field',
    );
    expect(offered[1]?.[0]).toBe('Inspection and test: Reject if');
    expect(offered[4]?.[0]).not.toBe('Inspection and test: Reject if');
  });

  it.each([
    ['Allow it to cool to room temperature before use.', 'cooling.before', 'Cooling: before: use'],
    [
      'Use a soft brush until no residue can be seen.',
      'manual.brush.endpoint',
      'Manual cleaning: brush until: no residue can be seen',
    ],
    [
      'Neutralisation   cold   2 min   citric acid based, if required',
      'mechanical.neutralise.agent',
      'Mechanical washing: neutralise agent: citric acid based',
    ],
    ['Connect the sheath to the connectors of the MIS rack.', 'mechanical.rack', 'Mechanical washing: rack: MIS rack'],
    ['Moisture is to be removed with medical compressed air.', 'drying.air.grade', 'Drying: air grade: medical'],
    ['Do not use fixing agents.', 'point_of_use.avoid[]', 'Point of use: keep away from it fixing agents'],
  ])('the words that fit come first, the whole sentence behind what can be typed: %s', (quote, field, first) => {
    const labels = asked(quote, { words: [], field }).map(({ label }) => label);
    expect(labels[0]).toBe(first);
    const whole = labels.findIndex((label) => label.endsWith(quote.replace(/\.$/, '')));
    expect(labels[whole - 1]).toBe('Type it yourself …');
    expect(labels[whole + 1]).toBe('Another field …');
  });

  it('a word that needs a value has that of the sentence, or asks for it', () => {
    const field = 'point_of_use.avoid[]';
    const [first] = asked('Do not use water above 40 °C.', { words: [], field });
    expect(first?.label).toBe('Point of use: keep away from it above a temperature, value: 40 °C');
    expect(first?.edits.map(({ text }) => text).join('')).toContain('{what: temp-above, value: "40 °C", src: s1}');
    const open = asked('Do not use hot water.', { words: [], field }).find(({ label }) =>
      label.includes('temperature'),
    );
    expect(open).toMatchObject({ does: 'ask', told: { words: ['temp-above'], field }, edits: [] });
    expect(open?.types).toContain('which value');
    const typed = asked('Do not use hot water.', { words: ['temp-above'], field, text: '45 °C' });
    expect(typed[0]?.edits.map(({ text }) => text).join('')).toContain('{what: temp-above, value: "45 °C", src: s1}');
  });

  it('a number can be typed with its unit, whatever the sentence says', () => {
    const field = 'cooling.time';
    const labels = (text: string): readonly string[] =>
      asked('Cool it well.', { words: [], field, text }).map(({ label }) => label);
    expect(labels('at least 30 min')[0]).toBe('Cooling: time at least 30 min');
    expect(labels('long')[0]).toBe('Type it yourself …');
  });

  it('closed words can be chosen, whatever the sentence says, and lead back', () => {
    const offered = asked('It is needed.', { words: [], field: 'manual.needed' });
    expect(offered[2]?.detail).toContain('by hand alone is then no way');
    const labels = offered.map(({ label }) => label);
    expect(labels).toEqual([
      'Manual cleaning: when it is needed: always',
      'Manual cleaning: when it is needed: if soil is seen',
      'Manual cleaning: when it is needed: before the machine',
      'Manual cleaning: when it is needed: instead of the machine',
      'Another field …',
      'Back to the sentence',
      'Keep it as a quoted statement',
      'Leave it open',
      'Stop here',
    ]);
  });

  it('what is taken is not offered again on the way back', () => {
    const { text, offered } = taking(
      about('Use pouches or a rigid container.', 'Packaging'),
      'Take it, then a further field',
      'Back to the sentence',
      'Go on',
    );
    expect(offered[2]?.[0]).toBe('Go on to the next sentence');
    expect(text.match(/- pouch/g)).toHaveLength(1);
  });

  it('parts of words do not count: a part that is put in is no insert of a machine', () => {
    const labels = asked('Turn the jaw insert counter-clockwise.', { words: [], next: 'field' }).map(
      ({ label }) => label,
    );
    for (const title of ['Mechanical washing: Rack', 'Point of use: Clock starts at'])
      expect(labels.slice(0, labels.indexOf('Back to the sentence'))).not.toContain(title);
  });

  it('words of one’s own can be typed where words may stand', () => {
    const told = { words: [], field: 'storage.place' };
    const typing = asked('Store it well.', told).find(({ types }) => types !== undefined);
    expect(typing?.label).toBe('Type it yourself …');
    const [first] = asked('Store it well.', { ...told, text: 'in a closed cabinet' });
    expect(first?.label).toBe('Storage: place: in a closed cabinet');
    expect(first?.edits.map(({ text }) => text).join('')).toContain('place: in a closed cabinet');
    expect(
      asked('Store it well.', { words: [], field: 'storage.no_stack' }).some(({ types }) => types !== undefined),
    ).toBe(false);
  });
});

/** What is offered for one sentence when this has been told of it. */
function asked(quote: string, told: Told): readonly WalkChoice[] {
  const text = about(quote);
  const { tree } = readTree(text);
  if (tree?.node !== 'map') throw new Error('no map');
  const step = sameSentence(readRuleFile(fileId('devices/pale.ifu.yaml'), text), tree, 's1', told);
  return step.is === 'sentence' ? step.choices : [];
}
