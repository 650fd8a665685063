import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { Engine } from '../../../server/src/check/engine.ts';
import { hoverAt } from '../../../server/src/editor/hover.ts';
import { definitionsAt } from '../../../server/src/editor/naming/definition.ts';
import { outlineOf } from '../../../server/src/editor/naming/symbols.ts';
import { asMarkdown, asPlainText, escapeMarkdown } from '../../../server/src/editor/writing/text-blocks.ts';
import { shapeOf } from '../../../server/src/schema/shapes.ts';
import { readTree } from '../../../server/src/syntax/read.ts';
import { testDay } from '../../support/examples.ts';

const device = `kind: device
id: pale-forceps
name: Pale forceps
covers: ["DW-3301"]
colour: unheard
class: critical
statements:
  s1: {doc: PG-12, rev: C, page: 2, quote: "Do not exceed 140 °C. [x](command:workbench.action.terminal.new) <img src=x onerror=y> ![](https://tracker.invalid)"}
  s2: {doc: PG-12, rev: C, page: 4, quote: "Rinse."}
limits: {temp: {at_most: 140 C, src: s1}, ph: {between: [7, 10.8], src: s1}}
sterilization:
  any_of:
    - id: pv132
      temp: {stated: 270 F}
      packaging: {relation: requires_class, allowed: [double-wrap]}
      exposure: {at_least: 4 min, src: [s1, s2]}
      src: s2
`;
const others = {
  'library.ifu.yaml': 'kind: library\nid: demo\n',
  'set.ifu.yaml': 'kind: set\nid: tray\nmembers:\n  - {device: pale-forceps, qty: 2}\n',
  'doc-b.ifu.yaml': 'kind: document\nid: pg-12-b\ndoc: PG-12\nrev: B\n',
  'doc-c.ifu.yaml': 'kind: document\nid: pg-12-c\ndoc: PG-12\nrev: C\nstatus: current\nfile: pg.pdf\n',
};

function library(): Engine {
  const engine = new Engine({ rules: [], today: testDay });
  for (const [name, text] of Object.entries({ ...others, 'device.ifu.yaml': device })) engine.set(fileId(name), text);
  return engine;
}

/** The hover at the first place of `words` (plus `from`) in a file, as plain text. */
function hover(words: string, file = 'device.ifu.yaml', markup: typeof asPlainText = asPlainText): string | undefined {
  const engine = library();
  const record = engine.library.record(fileId(file));
  const tree = record === undefined ? undefined : readTree(record.text).tree;
  if (record === undefined || tree?.node !== 'map') throw new Error(`no ${file}`);
  const at = record.text.indexOf(words);
  expect(at).toBeGreaterThan(-1);
  const found = hoverAt(record, tree, at, engine.view());
  return found === undefined ? undefined : markup(found.blocks);
}

function definitions(words: string, file = 'device.ifu.yaml', skip = 0): readonly string[] {
  const engine = library();
  const record = engine.library.record(fileId(file));
  if (record?.entity === undefined) throw new Error(`no ${file}`);
  const at = record.text.indexOf(words) + skip;
  return definitionsAt(record.entity, at, engine.view()).map(
    (found) => `${found.file} ${engine.library.record(found.file)?.text.slice(found.span.start, found.span.end)}`,
  );
}

describe('hover', () => {
  it('over a number: field, bound word, both units, quote and page, and the caution', () => {
    expect(hover('140 C, src')).toMatch(
      /^Highest temperature: At most 140 °C \(284 °F\)\n\n.*\n\n“Do not exceed 140 °C\..*\nPG-12, revision C, page 2\n\nThe manufacturer's current document is the instruction/s,
    );
  });

  it('over a number without a citation of its own: the sentence of what is around it', () => {
    expect(hover('270 F')).toContain('270 °F (132.2 °C)');
    expect(hover('270 F')).toContain('“Rinse.”');
  });

  it('over a number with two citations: both sentences', () => {
    expect(hover('4 min')).toContain('“Rinse.”\nPG-12, revision C, page 4');
    expect(hover('4 min')).toContain('page 2');
  });

  it('over an end of a range: both ends', () => {
    expect(hover('7, 10.8')).toMatch(/^pH: Between 7 and 10\.8\n/);
    expect(hover('10.8]')).toMatch(/^pH: Between 7 and 10\.8\n/);
  });

  it('over a key: where instructions usually put it, be it said of the chapter around it', () => {
    expect(hover('exposure:')).toContain(
      'Where instructions usually put it (common practice): Sterilization table, usually near the end.',
    );
    expect(hover('name: Pale')).toContain('Where instructions usually put it (common practice): Title page.');
    expect(hover('id: pale-forceps')).not.toContain('Where instructions');
  });

  it('over a key: an example for words, what is typical for numbers', () => {
    expect(hover('name: Pale')).toContain('For example: Pale ringed forceps, 180 mm');
    expect(hover('exposure:')).toContain('Typical: ');
  });

  it('over words that say all there is themselves: what their key means', () => {
    expect(hover('Pale forceps')).toBe(
      'Name\n\nName by which the department knows it.\n\nWhere instructions usually put it (common practice): Title page.',
    );
    expect(hover('DW-3301')).toContain('Catalogue numbers\n\nCatalogue numbers and ranges this file is for.');
    expect(hover('pg.pdf', 'doc-c.ifu.yaml')).toContain('File\n\nThe PDF kept in the library.');
    expect(hover('unheard')).toBeUndefined();
  });

  it('over a key: what it means', () => {
    expect(hover('sterilization:')).toMatch(/^Sterilization\n\n/);
    expect(hover('at_least')).toContain('The smallest value the page allows');
  });

  it('over a word of a closed list: its meaning; over an id: what it names', () => {
    expect(hover('critical')).toMatch(/^.*: critical\n\n./);
    expect(hover('pale-forceps, qty', 'set.ifu.yaml')).toContain('device pale-forceps: Pale forceps (device.ifu.yaml)');
    expect(hover('PG-12, rev: C, page: 4')).toContain('revision C, current');
  });

  it('over a usual word where an id may stand too: its meaning', () => {
    expect(hover('double-wrap')).toMatch(/^Packagings named: double-wrap\n\nTwo layers of wrap\./);
  });

  it('over nothing: nothing', () => {
    expect(hover('\n    - id: pv132')).toBeUndefined();
  });

  it('[X05] never passes markup of a file on', () => {
    const said = hover('140 C, src', 'device.ifu.yaml', asMarkdown) ?? '';
    expect(said).toContain(
      '\\[x\\](command:workbench.action.terminal.new) \\<img src=x onerror=y\\> \\!\\[\\](https\\://tracker.invalid)',
    );
    expect(escapeMarkdown('a\nb\u202ec\u0007 www.x.invalid a@b 1. - `x` |y| &lt;')).toBe(
      'a bU+202EcU+0007 www\\.x.invalid a\\@b 1. - \\`x\\` \\|y\\| \\&lt;',
    );
    expect(escapeMarkdown('- x')).toBe('\\- x');
    expect(escapeMarkdown('1. x')).toBe('1\\. x');
    expect(escapeMarkdown('x'.repeat(5000)).length).toBeLessThan(2100);
  });
});

describe('definitions', () => {
  it('lead from set to device, from citation to statement, from statement to the revision that it names', () => {
    expect(definitions('pale-forceps, qty', 'set.ifu.yaml')).toEqual(['device.ifu.yaml pale-forceps']);
    expect(definitions('src: s1', 'device.ifu.yaml', 5)).toEqual(['device.ifu.yaml s1']);
    expect(definitions('src: [s1, s2]', 'device.ifu.yaml', 10)).toEqual(['device.ifu.yaml s2']);
    expect(definitions('PG-12')).toEqual(['doc-c.ifu.yaml pg-12-c']);
  });

  it('lead nowhere from what is no id', () => {
    expect(definitions('Pale forceps')).toEqual([]);
  });
});

describe('outline', () => {
  it('speaks in titles and ids, and every name lies inside its range', () => {
    const { tree } = readTree(device);
    if (tree?.node !== 'map') throw new Error('no tree');
    const outline = outlineOf(tree, shapeOf('device'));
    const sterilization = outline.find(({ name }) => name === 'Sterilization');
    expect(sterilization?.inside[0]?.inside[0]?.name).toBe('pv132');
    const limits = outline.find(({ name }) => name === 'Limits')?.inside ?? [];
    expect(limits.map(({ name, detail }) => `${name}: ${detail}`)).toEqual([
      'Highest temperature: At most 140 C',
      'pH: Between 7 - 10.8',
    ]);
    const check = (items: typeof outline): void => {
      for (const { whole, nameAt, inside, name } of items) {
        expect(name).not.toBe('');
        expect(whole.start <= nameAt.start && nameAt.end <= whole.end).toBe(true);
        check(inside);
      }
    };
    check(outline);
  });
});
