import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { hoverAt } from '../../../server/src/editor/hover.ts';
import { inlayHintsOf } from '../../../server/src/editor/inlay-hints.ts';
import { lensesOf } from '../../../server/src/editor/lenses.ts';
import { fileLinksOf } from '../../../server/src/editor/naming/document-links.ts';
import { wordMarksOf } from '../../../server/src/editor/word-marks.ts';
import { workLensesOf } from '../../../server/src/editor/work-lenses.ts';
import { asPlainText } from '../../../server/src/editor/writing/text-blocks.ts';
import { readRuleFile } from '../../../server/src/library/file-record.ts';
import { pathFrom } from '../../../server/src/library/kept-file.ts';
import { shapeOf } from '../../../server/src/schema/shapes.ts';
import { readTree } from '../../../server/src/syntax/read.ts';
import { sampleEngine } from '../../support/writing.ts';

const engine = sampleEngine('lanternfield');
const view = engine.view();

function hover(path: string, words: string, skip = 0): string {
  const record = engine.library.record(fileId(path));
  const tree = record === undefined ? undefined : readTree(record.text).tree;
  if (record === undefined || tree?.node !== 'map') throw new Error(path);
  const at = record.text.indexOf(words);
  expect(at, words).toBeGreaterThan(-1);
  const found = hoverAt(record, tree, at + skip, view);
  return found === undefined ? '' : asPlainText(found.blocks);
}

function entityOf(path: string) {
  const entity = engine.library.record(fileId(path))?.entity;
  if (entity === undefined) throw new Error(path);
  return entity;
}

describe('over a number', () => {
  it('the gauge at this altitude, F0 and A0, each with its caution', () => {
    const temp = hover('sterilizers/S1.ifu.yaml', '132 C');
    expect(temp).toMatch(
      /Saturated steam at 132 C shows about 20\d kPa \(29\.\d psi\) on a gauge here, with 83\.\d kPa of air/,
    );
    expect(temp).toContain('they never justify a different cycle');
    expect(hover('devices/quillmark-ringed-forceps.ifu.yaml', 'exposure: {at_least: 4 min', 22)).toMatch(
      /4 min at 132 C: F0 about 49\.2 min \(reference 121\.1 °C, z 10 K\)/,
    );
  });

  it('the sets in which it decides', () => {
    const said = hover('packaging/P3-rigid-container.ifu.yaml', 'dry: {at_least: 30 min', 16);
    expect(said).toMatch(/Governs in the set Laparoscopic cholecystectomy B: Drying time at least 30 min/);
  });
});

describe('over a value whose citation stands beside it', () => {
  it.each([
    ['mass_max: ', 'The loaded container must weigh at most 11.3 kg.'],
    ['indicator_places: [', 'Place indicators in two opposed corners of each level.'],
    ['cool_aim: ', 'Measure the temperature at the vents.'],
  ])('%s: the sentence', (words, quote) => {
    const said = hover('packaging/P3-rigid-container.ifu.yaml', words, words.length);
    expect(said).toContain(quote);
    expect(said.match(/“/g)).toHaveLength(1);
  });
});

describe('over the name of a cycle', () => {
  it('what the machine does in it, in both units', () => {
    expect(hover('sets/LAP-CHOLE-B.ifu.yaml', 'cycle: S1-pv132-4-20', 8)).toMatch(
      /^S1-pv132-4-20, steam with air removal by vacuum, of sterilizer S1 .*\n\nTemperature 132 °C \(270 °F\), exposure 4 min, drying 20 min\./,
    );
  });
});

describe('hints and lenses', () => {
  it('beside the cycle of a set who governs it', () => {
    const corrected = sampleEngine().view();
    const set = corrected.get('set', 'EYE-D');
    const [hint] = set === undefined ? [] : inlayHintsOf(set, corrected);
    expect(hint?.text).toMatch(
      /^(if packed in [A-Za-z0-9-]+, )?governed by Drying time at least \d\d min: [a-zA-Z0-9-]+/,
    );
    const [seeded] = inlayHintsOf(entityOf('sets/EYE-D.ifu.yaml'), view);
    expect(seeded?.text).toMatch(/governed by Drying time/);
  });

  it('behind a bare number how the site judges it', () => {
    const hints = inlayHintsOf(entityOf('devices/brindlewick-irrigating-tip.ifu.yaml'), view);
    expect(hints.map(({ text }) => text)).toContain('judged as a setpoint');
  });

  it('behind a bare limit that it is the most, though the site counts bare numbers of uses as the least', () => {
    const text = 'kind: device\nid: a\nlimits: {uses: {stated: 200 uses, src: s1}, temp: {stated: 137 C, src: s1}}\n';
    const { entity } = readRuleFile(fileId('here.ifu.yaml'), text);
    if (entity === undefined) throw new Error(text);
    expect(inlayHintsOf(entity, view).map((hint) => hint.text)).toEqual(['judged as a maximum', 'judged as a maximum']);
  });

  it('behind a code word what people say for it', () => {
    const hints = inlayHintsOf(entityOf('devices/lintrel-pressure-probe.ifu.yaml'), view);
    expect(hints.map(({ text }) => text)).toContain('vaporised hydrogen peroxide');
    expect(hints.map(({ text }) => text)).toContain('ethylene oxide');
  });

  it('above a list what may be added, and above sentences how many wait', () => {
    const lensesOfText = (text: string): readonly string[] => {
      const { tree } = readTree(text);
      const record = readRuleFile(fileId('here.ifu.yaml'), text);
      return workLensesOf(record, tree?.node === 'map' ? tree : undefined).map(
        (lens) => `${lens.at.start} ${lens.text}`,
      );
    };
    const head = 'kind: device\nid: a\nstatements:\n';
    expect(lensesOfText(`${head}  s1: {doc: X-1, rev: A, page: 2, quote: "Dry it."}\nlumens:\n  - {id: b}\n`)).toEqual([
      '19 1 sentence waits: turn it into fields',
      '83 Add a further lumen…',
    ]);
    expect(lensesOfText(`${head}Wash it well.\nDry it.\n`)[0]).toBe(
      '19 2 pasted sentences wait: turn them into fields',
    );
    const many = `${head}${'Wash it well.\n'.repeat(30)}`;
    expect(lensesOfText(many).map((lens) => lens.replace(/^\d+ /, ''))).toEqual([
      '30 pasted sentences wait: turn them into fields',
      '30 pasted sentences wait: turn them into fields',
    ]);
    expect(lensesOfText('kind: device\nid: a\n')).toEqual([]);
  });

  it('above a device its sets, what it governs, its questions and its citations', () => {
    const lines = lensesOf(entityOf('devices/quillmark-ringed-forceps.ifu.yaml'), view).map(({ text }) => text);
    expect(lines[0]).toMatch(/^in \d sets$/);
    expect(lines[1]).toMatch(
      /^governs temperature, exposure and highest temperature in \d · governs drying time in \d · /,
    );
    expect(lines[1]).toMatch(/1 open question · \d+ of \d+ values cited$/);
  });
});

describe('kinds of words', () => {
  it('bound words, numbers, units, ids and closed words, never overlapping', () => {
    const path = 'devices/brindlewick-irrigating-tip.ifu.yaml';
    const text = engine.library.record(fileId(path))?.text ?? '';
    const { tree } = readTree(text);
    if (tree === undefined) throw new Error('no tree');
    const marks = wordMarksOf(entityOf(path), tree, shapeOf('device'));
    const words = new Set(marks.map(({ span, as }) => `${as} ${text.slice(span.start, span.end)}`));
    for (const word of [
      'bound-word at_least',
      'number 120',
      'unit mL',
      'id s7',
      'own-id pv134',
      'closed-word critical',
    ])
      expect(words).toContain(word);
    for (const [at, { span }] of marks.entries())
      expect(span.start).toBeGreaterThanOrEqual(marks[at - 1]?.span.end ?? 0);
  });
});

describe('links to files', () => {
  it('never lead out of the library', () => {
    const here = fileId('documents/x.ifu.yaml');
    expect(pathFrom(here, '../pdf/DW.pdf')).toBe('pdf/DW.pdf');
    for (const link of [
      '../../x',
      '/etc/passwd',
      'file:///x',
      'C:\\x',
      '\\\\host\\x',
      'a%2e%2e/b',
      'a\u0000b',
      'https://x.invalid/y',
      'command:x',
      '',
    ])
      expect(pathFrom(here, link), link).toBeUndefined();
  });

  it('from a statement to the page of its document', () => {
    const own = sampleEngine();
    const file = fileId('documents/DW-REP-077-D.ifu.yaml');
    const text = own.library.record(file)?.text ?? '';
    own.set(file, `${text.replace(/^file:.*\n/m, '')}file: pdf/DW.pdf\n`);
    const device = own.view().get('device', 'duskwell-lap-scissors-takeapart');
    const links = device === undefined ? [] : fileLinksOf(device, own.view());
    expect(links[0]).toMatchObject({ path: 'documents/pdf/DW.pdf', page: expect.any(Number) });
  });
});
