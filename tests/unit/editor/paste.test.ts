import { describe, expect, it } from 'vitest';
import { pasteInto } from '../../../server/src/editor/page/paste.ts';
import { cleanPaste } from '../../../server/src/quantity/prose/clean-paste.ts';
import { readTree } from '../../../server/src/syntax/read.ts';
import { treeAt } from '../../support/writing-contexts.ts';

const cleaned: readonly (readonly [string, string])[] = [
  ['di\ufb00erent \ufb01lter', 'different filter'],
  ['disin\u00adfection', 'disinfection'],
  ['disin-\nfection of parts', 'disinfection of parts'],
  ['in a pre-\r\nvacuum cycle', 'in a pre-vacuum cycle'],
  ['4\u00a0min at 132\u202f\u00baC', '4 min at 132 °C'],
  ['134 \u2103', '134 °C'],
  ['at \u22125 °C', 'at -5 °C'],
  ['\uff11\uff12 min', '12 min'],
  ['10\u2076 spores', '10^6 spores'],
  ['10\u207b\u2076', '10^-6'],
  ['5 cm\u00b2', '5 cm2'],
  ['4 min\u00b2', '4 min'],
  ['40 \u03bcS/cm', '40 µS/cm'],
  ['zero\u200bwidth', 'zerowidth'],
  ['st\u0435am', 'steam'],
];

const kept: readonly string[] = [
  '3\u201318 min',
  '3 \u2013 18 min',
  'DW-\n3301',
  'DW-REP-077',
  '45-1xx',
  'P3-\nrigid-container',
  '\u201cDo not exceed 140 °C.\u201d',
  'Größe – später',
  'кипение',
  'rinse - then dry',
];

describe('text pasted from a PDF', () => {
  it.each(cleaned)('%j becomes %j, and the change is told', (from, to) => {
    const { text, changes } = cleanPaste(from);
    expect(text).toBe(to);
    expect(changes.length).toBeGreaterThan(0);
    expect(changes.every(({ why }) => why !== '')).toBe(true);
  });

  it.each(kept)('%j stays as it is', (text) => {
    expect(cleanPaste(text)).toEqual({ text, changes: [] });
  });

  it('says what was changed and how often, unseen signs by their number', () => {
    expect(cleanPaste('a\u00a0b\u00a0c \ufb01').changes).toEqual([
      { from: 'U+00A0', to: ' ', why: 'space that is no ordinary space', count: 2 },
      { from: '\ufb01', to: 'fi', why: 'letters printed as one sign', count: 1 },
    ]);
  });

  it('a second cleaning changes nothing more; a very long text is left alone', () => {
    for (const [from] of cleaned) expect(cleanPaste(cleanPaste(from).text).changes).toEqual([]);
    expect(cleanPaste('\u00a0'.repeat(200_001)).changes).toEqual([]);
    const start = performance.now();
    cleanPaste('a-'.repeat(100_000));
    expect(performance.now() - start).toBeLessThan(1_000);
  });
});

describe('text pasted into a rule file', () => {
  const head = 'kind: device\nid: pale\n';

  /** The file after the paste at `‸`, or over what stands between two of them. */
  function pastedAt(marked: string, pasted: string): string {
    const [before = '', second = '', third] = marked.split('‸');
    const replaced = third === undefined ? '' : second;
    const rest = third ?? second;
    const span = { start: before.length, end: before.length + replaced.length };
    return before + pasteInto(before + replaced + rest, span, pasted).text + rest;
  }

  function quoteIn(text: string): string {
    const { tree, problems } = readTree(text);
    expect(problems, text).toEqual([]);
    const quote = treeAt(tree, ['statements', 's1', 'quote']);
    return quote?.node === 'scalar' ? quote.text : '';
  }

  const page = 'Rinse: use "critical" water\nand the ﬁlter #2,\n  then dry.';
  const meant = 'Rinse: use "critical" water and the filter #2, then dry.';

  it.each([
    'statements:\n  s1: {doc: D, page: 1, quote: "‸"}\n',
    "statements:\n  s1: {doc: D, page: 1, quote: '‸'}\n",
    'statements:\n  s1: {doc: D, page: 1, quote: ‸}\n',
    'statements:\n  s1: {doc: D, page: 1, quote: ‸, lang: en}\n',
    'statements:\n  s1:\n    doc: D\n    quote: ‸\n    lang: en\n',
    'statements:\n  s1:\n    quote: "‸the old words‸"\n',
    'statements:\n  s1: {section: "a \\"b\\"", quote: "‸"}\n',
  ])('is one sentence with its own marks in %j', (statements) => {
    expect(quoteIn(pastedAt(head + statements, page))).toBe(meant);
  });

  it('within a sentence only what is pasted changes', () => {
    expect(pastedAt(`${head}statements:\n  s1: {quote: "Rinse ‸."}\n`, 'with\nwater')).toContain('"Rinse with water."');
  });

  it('plain words need no marks; fields, lists and what stands in marks already stay as they are', () => {
    const quote = `${head}statements:\n  s1:\n    quote: ‸\n`;
    for (const kept of ['Rinse twice', '"Rinse: twice"', '- one\n- two', 'x\n    page: 3'])
      expect(pastedAt(quote, kept)).toBe(quote.replace('‸', kept));
    expect(pastedAt(`${head}‸`, 'name: x\nmaker: y\n')).toBe(`${head}name: x\nmaker: y\n`);
    expect(pastedAt(`${head}limits: {‸}\n`, 'temp: {at_most: 4 C}')).toContain('{temp: {at_most: 4 C}}');
  });

  it('every change is told', () => {
    const text = `${head}statements:\n  s1: {quote: ""}\n`;
    const at = text.indexOf('""') + 1;
    const { changes } = pasteInto(text, { start: at, end: at }, page);
    expect(changes.map(({ from }) => from)).toEqual(['ﬁ', '⏎', '"']);
  });
});
