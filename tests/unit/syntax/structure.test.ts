import { describe, expect, test } from 'vitest';
import { applyEdits } from '../../../server/src/syntax/edits.ts';
import { syntaxRules } from '../../../server/src/syntax/problem-rules.ts';
import { readTree } from '../../../server/src/syntax/read.ts';
import { plain } from './plain.ts';
import { structureRows } from './structure-rows.ts';

describe('structure that silently becomes something else', () => {
  for (const row of structureRows) {
    test(`${row.id}: ${JSON.stringify(row.text).slice(0, 60)}`, () => {
      const { problems } = readTree(row.text);
      const found = problems.map(({ rule, span }) => [rule, row.text.slice(span.start, span.end)]);
      expect(found).toEqual(row.expect.map(([rule, under]) => [rule, under]));
      for (const [index, [, , message]] of row.expect.entries()) expect(problems[index]?.message).toContain(message);
      if (row.after === undefined) return;
      const applied = applyEdits(
        row.text,
        problems.flatMap((problem) => problem.fixes?.[0]?.edits ?? []),
      );
      expect(applied).toEqual({ text: row.after });
      expect(readTree(row.after).problems.filter((problem) => problem.severity === 'error')).toEqual([]);
    });
  }
});

describe('as much of a broken file is read as can be', () => {
  test.each([
    ['two versions of a line', 'a: 1\n<<<<<<< x\nb: 2\n=======\nb: 3\n>>>>>>> y\nc: 4\n', { a: '1', b: '2', c: '4' }],
    ['a quote never closed', 'a: "abc\nb: 2\nc:\n  d: x\n', { a: 'abc', b: '2', c: { d: 'x' } }],
    ['a bracket never closed', 'a: [1, 2\nb: 3\n', { a: ['1', '2'], b: '3' }],
    ['a bracket that closes nothing', 'a: 1\nb: ]\nc: 2\n', { a: '1', b: null, c: '2' }],
    ['a colon in text', 'note: Rinse: 3 min\nb: 1\n', { note: 'Rinse: 3 min', b: '1' }],
    ['a key indented under text', 'note: rinse\n  minutes: 3\nb: 1\n', { note: 'rinse', minutes: '3', b: '1' }],
    ['a line without a colon', 'a: 1\nhello\nb: 2\n', { a: '1', b: '2' }],
    ['a dash further left', 's:\n   - a\n  - b\nc: 1\n', { s: ['a', 'b'], c: '1' }],
    ['tabs', 'a:\n\tb: 1\n\tc:\n\t\td: 2\n', { a: { b: '1', c: { d: '2' } } }],
    ['a second document', 'a: 1\n---\na: 2\n', { a: '1' }],
    ['a hidden character in a key', 'min\u200butes: 3\n', { minutes: '3' }],
  ])('%s', (_name, text, tree) => {
    expect(plain(readTree(text).tree)).toEqual(tree);
  });
});

test('every rule reported is in the list of rules, with one sentence of reason', () => {
  const known = new Set(syntaxRules.map((rule) => rule.id));
  for (const row of structureRows) for (const [rule] of row.expect) expect(known).toContain(rule);
  for (const { id, why } of syntaxRules) {
    expect(id).toMatch(/^[a-z]+(?:-[a-z]+)*$/);
    expect(why).toMatch(/^[A-Z].*\.$/);
  }
});

test('nothing is unreadable but a file without keys', () => {
  expect(readTree('a: "x\n').unreadable).toBe(false);
  expect(readTree('- a\n').unreadable).toBe(true);
  expect(readTree('').unreadable).toBe(true);
});

test('keys of the prototype are keys like others', () => {
  const { tree } = readTree('__proto__: {polluted: yes}\nconstructor: {prototype: {polluted: 1}}\n');
  expect(tree?.node === 'map' && tree.entries.map(({ key }) => key.text)).toEqual(['__proto__', 'constructor']);
  expect(Reflect.get({}, 'polluted')).toBeUndefined();
});
