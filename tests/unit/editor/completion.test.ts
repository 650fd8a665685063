import { describe, expect, it } from 'vitest';
import { deskWith, labels, offersAt, sampleDesk, withOffer } from '../../support/writing.ts';

const top = 'kind: device\nid: pale\n';
const option = `${top}sterilization:\n  any_of:\n    - id: pv132\n      modality: steam-prevac\n`;

describe('keys', () => {
  it('those that must be first, then in the order of the work, without those that are there', () => {
    expect(labels(deskWith(`${top}‸`)).slice(0, 4)).toEqual(['name', 'maker', 'covers', 'market']);
    expect(labels(deskWith('kind: device\nname: x\n‸'))[0]).toBe('id');
    expect(labels(deskWith(`${top}na‸\nname: x\nmaker: y\n`))).not.toContain('name');
  });

  it('general ones after those of the work, rare ones last', () => {
    const all = labels(deskWith(`${top}‸`));
    const places = ['point_of_use', 'cleaning', 'sterilization', 'review', 'applies_from'].map((key) =>
      all.indexOf(key),
    );
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    const stage = labels(deskWith(`${top}cleaning:\n  all_of:\n    - stage: ultrasonic\n      ‸`));
    const order = ['use', 'frequency', 'src', 'thermal', 'strength'].map((key) => stage.indexOf(key));
    expect(order).toEqual(order.toSorted((a, b) => a - b));
    expect(labels(deskWith(`${top}cleaning:\n  all_of:\n    - ‸`))).toEqual(
      expect.arrayContaining(['stage', 'all_of', 'any_of']),
    );
  });

  it('beside the word that the page is silent only how that was found; silence not beside what the page says', () => {
    const beside = labels(deskWith(`${top}transport:\n  silent: true\n  ‸`));
    expect(beside).toContain('checked');
    expect(beside).not.toContain('container');
    expect(labels(deskWith(`${top}ultrasonic: {use: allowed, ‸}`))).not.toContain('silent');
    expect(labels(deskWith(`${top}ultrasonic: {‸}`))).toContain('silent');
  });

  it('above all others of a group: not those that stand below', () => {
    const limits = `${top}limits:\n  ‸\n  temp: {silent: true}\n  uses: {silent: true}\n`;
    expect(labels(deskWith(limits))).toContain('ph');
    expect(labels(deskWith(limits))).not.toContain('temp');
    const first = `${top}statements:\n  ‸\n  s1: {quote: "x"}\n`;
    expect(labels(deskWith(first))).toEqual(['s2']);
    expect(labels(deskWith(`${top}lumens:\n  - ‸\n    bore: 2 mm\n`))).not.toContain('bore');
  });

  it('at the indent of the map around them, while the file is broken', () => {
    expect(withOffer(deskWith(`${option}      exp‸`), 'exposure')).toBe(`${option}      exposure: …`);
    expect(withOffer(deskWith(`${option}      exp‸\n    - id: other\n`), 'exposure')).toContain(
      '      exposure: …\n    - id: other',
    );
    expect(withOffer(deskWith(`${option}      ‸\nlimits: {`), 'exposure')).toContain('      exposure: …\nlimits: {');
  });

  it('open a group or a list on the next line', () => {
    expect(withOffer(deskWith(`${top}limi‸`), 'limits')).toBe(`${top}limits:\n  …`);
    expect(withOffer(deskWith(`${top}lumens‸`), 'lumens')).toBe(`${top}lumens:\n  - …`);
    expect(withOffer(deskWith(`${top}tra‸`), 'traits')).toBe(`${top}traits: […]`);
    expect(withOffer(deskWith(`${top}limits: {te‸`), 'temp')).toBe(`${top}limits: {temp: …`);
  });

  it('of an item that has only its dash', () => {
    expect(withOffer(deskWith(`${top}lumens:\n  -‸`), 'bore')).toMatch(/\n {2}- bore: … /);
    expect(withOffer(deskWith(`${top}lumens:\n  - ‸`), 'id')).toBe(`${top}lumens:\n  - id: …`);
    expect(withOffer(deskWith(`${top}lumens:\n  - id: a\n  ‸`), 'id')).toBe(`${top}lumens:\n  - id: a\n  - id: …`);
  });

  it('between braces, after a comma and before a closing brace', () => {
    expect(withOffer(deskWith(`${top}lumens:\n  - {id: a,‸}\n`), 'length')).toContain('{id: a, length: … ');
    expect(withOffer(deskWith(`${top}lumens:\n  - {id: a, ‸}\n`), 'length')).toContain('{id: a, length: ');
  });

  it('of a key that is there already: only its name changes', () => {
    expect(withOffer(deskWith(`${top}nam‸: x\n`), 'name')).toBe(`${top}name: x\n`);
  });

  it('nothing in comments, nothing in text over several lines, nothing at an indent that fits nothing', () => {
    for (const text of [`${top}# na‸`, `${top}notes:\n  - |\n    na‸\n`, `${top}    na‸`, `${top}name: x # m‸`])
      expect(labels(deskWith(text)), text).toEqual([]);
  });
});

describe('values', () => {
  it.each([
    ['class: ‸# to do: x', 'critical', 'class: critical'],
    ['class:‸ # to do: x', 'critical', 'class: critical'],
    ['class: cr‸# to do: x', 'critical', 'class: critical'],
    ['class: cr‸ # to do: x', 'critical', 'class: critical'],
    ['class: ‸  # to do: x', 'critical', 'class: critical'],
    ['traits: ‸# to do: x', 'lumen', 'traits: [lumen…]'],
    ['lumens: ‸# to do: x', 'new line of the list', 'lumens: \n  - …'],
    ['class: ‸ # our own note', 'critical', 'class: critical # our own note'],
  ])('take the mark of an open line with them: %s', (line, label, then) => {
    for (const end of ['\n', '\r\n', '\nmaker: x\n'])
      expect(withOffer(deskWith(`${top}${line}${end}`), label)).toBe(`${top}${then}${end}`);
  });

  it('not inside the mark of an open line', () => {
    expect(labels(deskWith(`${top}class: # to ‸do: x\n`))).toEqual([]);
  });

  it('bound words with one line of meaning; a number is never proposed', () => {
    const offers = offersAt(deskWith(`${option}      exposure: ‸`));
    expect(offers.map(({ label }) => label).slice(0, 3)).toEqual(['stated', 'at_least', 'at_most']);
    expect(offers[1]?.detail).toContain('smallest value the page allows');
    expect(withOffer(deskWith(`${option}      exposure: ‸`), 'at_least')).toContain(
      'exposure: {at_least: … min, src: …}',
    );
    expect(withOffer(deskWith(`${option}      exposure:‸`), 'at_least')).toContain('exposure: {at_least:');
    expect(withOffer(deskWith(`${option}      exposure: {‸}`), 'between')).toContain('{between: [… min, … min]}');
    expect(withOffer(deskWith(`${option}      exposure: {‸`), 'silent')).toContain(
      '{silent: true, checked: 2025-03-03',
    );
  });

  it('units behind a number that was typed', () => {
    expect(labels(deskWith(`${option}      exposure: {at_least: 4‸}`))).toEqual(
      expect.arrayContaining(['4 min', '4 s', '4 h']),
    );
    expect(withOffer(deskWith(`${option}      temp: {stated: 132‸}`), '132 C')).toContain('{stated: 132 C}');
    expect(labels(deskWith(`${option}      exposure: {at_least: ‸}`))).toContain('number in min');
  });

  it('yes and no as they are, never as texts; a range with both its ends, and no third', () => {
    expect(withOffer(deskWith(`${top}parts:\n  - {id: a, detachable: ‸}`), 'true')).toContain('detachable: true}');
    expect(withOffer(deskWith(`${option}      temp: {between: ‸}`), 'number in C')).toContain('between: [… C, … C]');
    expect(labels(deskWith(`${option}      temp: {between: [132 C, ‸]}`))).toContain('number in C');
    expect(labels(deskWith(`${option}      temp: {between: [132 C, 135 C, ‸]}`))).toEqual([]);
    expect(labels(deskWith(`${option}      temp: {between: [132 C, 135‸]}`))).toContain('135 C');
  });

  it('closed words with their meanings, and not twice in a list', () => {
    const [first] = offersAt(deskWith(`${top}class: ‸`));
    expect([first?.label, first?.detail]).toEqual(['critical', 'Enters sterile tissue.']);
    expect(labels(deskWith(`${top}traits: [lumen, ‸]`))).not.toContain('lumen');
    expect(withOffer(deskWith(`${top}traits: ‸`), 'hinged')).toBe(`${top}traits: [hinged…]`);
    expect(withOffer(deskWith(`${top}traits:\n  ‸`), 'hinged')).toBe(`${top}traits:\n  - hinged`);
    expect(withOffer(deskWith(`${top}materials: [pe‸`), 'peek')).toBe(`${top}materials: [peek`);
  });

  it('statements with the quote shown, in and out of brackets', () => {
    const file = `${top}statements:\n  s1: {doc: D, rev: A, page: 3, quote: "Rinse: twice."}\nlimits: {temp: {at_most: 140 C, src: ‸}}\n`;
    expect(offersAt(deskWith(file)).map(({ label, detail }) => [label, detail])).toEqual([['s1', 'Rinse: twice.']]);
    expect(withOffer(deskWith(file.replace('‸', '[‸]')), 's1')).toContain('src: [s1]');
  });

  it('the next statement, with the document where there is only one', () => {
    const file = `${top}sources:\n  - {doc: PG-12, rev: "3", role: device-specific}\nstatements:\n  s1: {quote: "x"}\n  ‸`;
    expect(withOffer(deskWith(file), 's2')).toContain('  s2: {doc: PG-12, rev: "3", page: …, quote: "…"}');
  });

  it('ids that exist, those that need quotes between quotes', () => {
    expect(labels(sampleDesk('kind: set\nid: x\nmembers:\n  - {device: quill‸}'))).toContain(
      'quillmark-ringed-forceps',
    );
    expect(
      withOffer(sampleDesk('kind: device\nid: x\nsterilization:\n  any_of:\n    - {listed: [‸'), 'S3:lumen'),
    ).toContain('["S3:lumen"');
    expect(labels(sampleDesk('kind: waiver\nid: x\nrule: ‸'))).toContain('unknown-id');
    expect(labels(sampleDesk('kind: library\nid: x\nrules:\n  ‸'))).toContain('unknown-id');
  });

  it('usual words before the ids where both may stand, each with its meaning', () => {
    const offers = offersAt(deskWith(`${option}      packaging: {relation: restricted_to, allowed: [‸]}\n`));
    expect(offers.slice(0, 2).map(({ label, detail }) => `${label}: ${detail}`)).toEqual([
      'double-wrap: Two layers of wrap.',
      'wrap: Wrap.',
    ]);
  });

  it('a lumen of the same file', () => {
    const file = `${top}lumens: [{id: shaft, bore: 2 mm}]\nmanual:\n  steps:\n    - {do: flush, lumen: ‸}\n`;
    expect(labels(deskWith(file))).toEqual(['shaft']);
  });

  it('the registered revisions of the document beside it', () => {
    expect(labels(sampleDesk('kind: device\nid: x\nsources:\n  - {doc: DW-REP-077, rev: ‸}'))).toEqual(['D']);
  });

  it('kinds in an empty file, and behind the word kind', () => {
    expect(withOffer(deskWith('‸'), 'device')).toBe('kind: device');
    expect(withOffer(deskWith('kind: dev‸\nid: x\n'), 'device')).toBe('kind: device\nid: x\n');
    expect(withOffer(deskWith('kind: device\nid: ‸\n', {}, 'devices/pale-forceps.ifu.yaml'), 'pale-forceps')).toContain(
      'id: pale-forceps',
    );
  });
});

describe('cycles of a set', () => {
  it('those that fit first, with the reason beside the others', () => {
    const set = (members: string) =>
      `kind: set\nid: try\nmembers:\n${members}packaging: P3-rigid-container\nfilter: single-use-polymer\nmass: 3 kg\nlevels: 1\ncycle: ‸\n`;
    const plain = offersAt(sampleDesk(set('  - {device: quillmark-ringed-forceps, qty: 2}\n')));
    const fits = plain.map(({ detail }) => detail.startsWith('consistent with the encoded instructions'));
    expect(fits[0]).toBe(true);
    expect(fits.lastIndexOf(true)).toBeLessThan(fits.indexOf(false));
    const mixed = offersAt(sampleDesk(set('  - {device: skerrow-wristed-grasper, qty: 1}\n')));
    expect(mixed.find(({ label }) => label === 'S1-pv132-4-20')?.detail).toContain('10 min short');
  });

  it('then by the fewest and smallest gaps, what no number bridges behind; a note is told', () => {
    const offers = offersAt(
      sampleDesk(
        'kind: set\nid: try\nmembers:\n  - {device: quillmark-ringed-forceps, qty: 2}\npackaging: P3-rigid-container\nfilter: single-use-polymer\nmass: 3 kg\nlevels: 1\ncycle: ‸\n',
      ),
    );
    const order = offers.map(({ label }) => label);
    const after = order.slice(order.indexOf('S1-pv132-10-30'));
    expect(after.filter((id) => !id.includes('pv134'))).toEqual([
      'S1-pv132-10-30',
      'S1-pv132-4-20',
      'S1-gr121-30-30',
      'S2-gr121-30-30',
      'EO:55-60',
      'S3:surface',
      'S3:lumen',
      'S2-iuss132-4',
    ]);
    const detailOf = (id: string) => offers.find(({ label }) => label === id)?.detail ?? '';
    expect(detailOf('S1-pv132-10-30')).toContain('with a note: Exposure: far longer than the least the page demands');
    expect(detailOf('S1-pv132-4-20')).toContain('10 min short');
    expect(detailOf('S1-gr121-30-30')).toContain('only in Pindlecote light wrap');
    expect(detailOf('S2-iuss132-4')).toBe('not for this use');
  });

  it('the same for the washer', () => {
    const desk = sampleDesk(
      'kind: set\nid: try\nmembers:\n  - {device: quillmark-ringed-forceps, qty: 2}\nwasher_cycle: ‸\n',
    );
    expect(offersAt(desk)[0]?.detail).toContain('consistent with the encoded instructions');
  });
});

describe('days and spans', () => {
  it('a day that is printed on a document is not offered as today; one on which somebody looked is', () => {
    expect(labels(deskWith('kind: document\nid: d\nissued: ‸\n'))).toEqual([]);
    expect(labels(deskWith('kind: device\nid: pale\ncooling: {silent: true, checked: ‸}\n'))).toHaveLength(1);
  });

  it('storage is measured in days, months and years', () => {
    const units = offersAt(deskWith('kind: device\nid: pale\nstorage:\n  time: {at_most: ‸}\n'));
    expect(units.slice(0, 3).map(({ label }) => label)).toEqual(['number in d', 'number in months', 'number in years']);
  });
});
