import { describe, expect, test } from 'vitest';
import { readTree } from '../../../server/src/syntax/read.ts';
import { plain } from './plain.ts';
import { ruleFile } from './rule-file.ts';

/** Nothing in these files is wrong, so nothing may be reported. */
const honest: readonly (readonly [name: string, text: string])[] = [
  ['a rule file', ruleFile],
  [
    'comments after one space, two spaces and on their own',
    'a: 1 # one\nb: 2  # two\n# alone\nc: 3  #glued, two spaces\nd: 4 ## marks\n',
  ],
  ['a comment between key and block', 'steps: # in this order\n  # first\n  - a\n  # then\n  - b\n'],
  ['a comment at every indent', 'a:\n# left\n  b: 1\n    # right\n  c: 2\n'],
  ['a number sign inside a word', 'part: AB#12\nb: C#\n'],
  ['dashes in prose', 'note: rinse - then dry - then wait\nb: "- not a list"\nc: well-known\nd: 1 -2\n'],
  ['dashes in quotes over lines', 'note: "rinse\n  - then dry"\n'],
  ['prose over several lines', 'note: rinse under\n  running water\n  until clear\nb: 1\n'],
  ['colons in prose', 'a: see 3:1\nb: "Rinse: 3 min"\nc: http://example.org/x\nd: 12:30 hours\ne: x:y\n'],
  ['a web address below its key', 'a:\n  http://example.org/x\n'],
  ['a minus below its key', 'a:\n  -5 C\n'],
  [
    'text blocks',
    'a: |\n  Rinse: 3 min\n  - not a list\n  key: value # kept\n  "open\nb: >-\n  folded\n  text\nc: |+\n  kept\n\nd: 1\n',
  ],
  ['a table in a literal block', 'a: |\n  x | 1 | 2\n  y | 2 | 3\n'],
  ['indented code in a folded block', 'a: >\n  text\n\n    kept\n  text\n'],
  ['lists at the column of their key', 'steps:\n- a\n- b\nother:\n- c\n'],
  ['lists in lists', '- - a\n  - b\n- - c\n'.replace(/^/gm, '  ').replace(/^/, 'x:\n')],
  ['brackets', 'a: [1, 2, ]\nb: {x: 1, y: [2, {z: 3}]}\nc: []\nd: {}\ne: [\n  1, # one\n  2,\n]\n'],
  ['quotes', `a: "it's"\nb: 'it''s "x"'\nc: "tab\\tand \\"quote\\" \\u00b0"\nd: ""\ne: ''\n`],
  ['quoted keys', '"a b": 1\n\'c\': 2\n'],
  ['a value below its key', 'a:\n  text\nb:\n  "text"\n'],
  ['signs inside text', 'a: 5 % of x\nb: a & b\nc: x*y\nd: wait!\ne: a > b | c\nf: user@example.org\ng: what?\n'],
  ['other languages', 'a: Spülen für 3 Minuten bei 43 °C\nb: 3 分間すすぐ\nc: 水：3 分\nd: می‌شود\n'],
  ['no-break spaces inside text', 'a: 3\u00a0min\nb: "43\u00a0°C"\n'],
  ['a start mark and an end mark', '---\na: 1\n...\n'],
  ['empty values', 'a:\nb: # later\nc:\n  - \n  -\n'],
  ['tabs where they do no harm', 'a: 1\t# tab before a comment\nb: x\ty\nc: 1\t\n\t\n'],
  ['tabs inside a text block', 'a: |\n  x\ty\n  Time:\t3\n'],
  ['CRLF throughout', 'a: 1\r\nb:\r\n  - x # c\r\n  - "y\r\n    z"\r\nc: |\r\n  t\r\n  u\r\n'],
  ['no line end at the end', 'a:\n  b: [1, 2]'],
  ['deep but honest', Array.from({ length: 40 }, (_, level) => `${'  '.repeat(level)}k:`).join('\n')],
];

describe('honest files give no problem', () => {
  for (const [name, text] of honest) {
    test(name, () => expect(readTree(text).problems).toEqual([]));
  }
});

test('values are the text that is written, never a number, a date or a truth value', () => {
  const text = 'a: 007\nb: 1.10\nc: yes\nd: 2024-01-02\ne: ~\nf: "1"\ng: [0x1F, null]\n';
  expect(plain(readTree(text).tree)).toEqual({
    a: '007',
    b: '1.10',
    c: 'yes',
    d: '2024-01-02',
    e: '~',
    f: '1',
    g: ['0x1F', 'null'],
  });
});

test('spans cover what is written, quotes and brackets too', () => {
  const text = 'a: "x"  # c\nb:\n  - y\n  - {z: 1}\nc:\nd: |\n  t\n';
  const { tree } = readTree(text);
  if (tree?.node !== 'map') throw new Error('no map');
  const under = tree.entries.map(({ value }) => text.slice(value.span.start, value.span.end));
  expect(under).toEqual(['"x"', '- y\n  - {z: 1}', '', '|\n  t\n']);
  expect(tree.span).toEqual({ start: 0, end: text.length });
  expect(tree.entries[2]?.value).toEqual({
    node: 'empty',
    span: { start: text.indexOf('c:') + 2, end: text.indexOf('c:') + 2 },
  });
});

test('where a key is written twice, both stay in the tree, the first one first', () => {
  const { tree } = readTree('a: 1\na: 2\n');
  expect(tree?.node === 'map' && tree.entries.map(({ value }) => plain(value))).toEqual(['1', '2']);
});
