import { describe, expect, test } from 'vitest';
import { readTree } from '../../../server/src/syntax/read.ts';

const aliasBomb = (levels: number, width: number) =>
  Array.from({ length: levels }, (_, level) => {
    const items = Array.from({ length: width }, () => (level === 0 ? 'x' : `*a${level - 1}`));
    return `a${level}: &a${level} [${items.join(',')}]`;
  }).join('\n');

const merges = Array.from({ length: 2_000 }, (_, n) =>
  n === 0 ? 'a0: &a0 {k0: 0}' : `a${n}: &a${n} { <<: *a${n - 1}, k${n}: ${n} }`,
);
const shared = `base: &b {x: 1}\n${Array.from({ length: 150 }, (_, n) => `k${n}: *b`).join('\n')}`;
const unmerged = '<<<<<<< a\n';

/** Generator, and the rules that may be reported (in order of first appearance). */
const rows: readonly (readonly [id: string, text: string, rules: readonly string[]])[] = [
  ['[R01]', aliasBomb(9, 9), ['anchor-not-allowed']],
  ['[R02] 26 levels', aliasBomb(26, 2), ['anchor-not-allowed']],
  ['[R02] 60 levels', aliasBomb(60, 2), ['anchor-not-allowed']],
  ['[R03]', shared, ['anchor-not-allowed']],
  ['[R04]', merges.join('\n'), ['merge-key-not-allowed', 'too-many-problems']],
  ...[200, 1_000, 5_000, 20_000].map(
    (n) =>
      [`[R05] ${n} brackets`, `${'['.repeat(n)}${']'.repeat(n)}`, ['list-instead-of-keys', 'nested-too-deep']] as const,
  ),
  ['[R05] dashes', '- '.repeat(3_000), ['list-instead-of-keys', 'nested-too-deep']],
  ['[R05] question marks', '? '.repeat(3_000), ['complex-key-not-allowed']],
  ['[R05] keys', Array.from({ length: 1_000 }, (_, n) => `${' '.repeat(n)}k:`).join('\n'), ['nested-too-deep']],
  ['[R06]', Array.from({ length: 50_000 }, (_, n) => `k${n}: ${n}`).join('\n'), []],
  ['[R06] beyond the limit', Array.from({ length: 50_001 }, (_, n) => `k${n}: ${n}`).join('\n'), ['too-many-keys']],
  ['[R07]', 'a: [a,'.repeat(20_000), ['unclosed-bracket', 'nested-too-deep']],
  ['[R07] line by line', 'a: [a,\n'.repeat(20_000), ['unclosed-bracket', 'duplicate-key', 'too-many-problems']],
  ['[R08] documents', '---\na: 1\n'.repeat(20_000), ['second-document']],
  [
    '[R08] anchors',
    `a: ${Array.from({ length: 20_000 }, (_, n) => `&a${n}`).join(' ')} x`,
    ['anchor-not-allowed', 'too-many-problems'],
  ],
  ['[R08] 5 MB', `a: ${'x'.repeat(5_000_000)}`, ['file-too-large']],
  ['[R08] 20,000 steps', `steps:\n${'- step: rinse\n  minutes: 3\n'.repeat(20_000)}`, []],
  ['[L44] a long line', `a: ${'x'.repeat(900_000)}`, ['text-too-long']],
  ['tabs', 'a:\t1\n'.repeat(20_000), ['tab-after-sign', 'too-many-problems']],
  ['tabs in one line', `a: ${'\t'.repeat(900_000)}`, []],
  ['no-break spaces in one line', '\u00a0'.repeat(900_000), ['hidden-character', 'text-too-long']],
  ['hidden characters', 'a\u200b'.repeat(300_000), ['hidden-character', 'text-too-long']],
  ['number signs', 'a: b #1\n'.repeat(20_000), ['text-cut-at-hash', 'duplicate-key', 'too-many-problems']],
  ['unfinished merges', unmerged.repeat(60_000), ['unfinished-merge']],
  ['quotes never closed', 'a: "x\n'.repeat(20_000), ['unclosed-quote', 'too-many-problems']],
  ['brackets never opened', 'a: ]\n'.repeat(20_000), ['stray-bracket', 'duplicate-key']],
];

describe('a hostile file costs little and is said to be what it is', () => {
  for (const [id, text, rules] of rows) {
    test(id, () => {
      const before = process.cpuUsage();
      const { problems } = readTree(text);
      const { user } = process.cpuUsage(before);
      expect(new Set(problems.map(({ rule }) => rule))).toEqual(new Set(rules));
      expect(problems.length).toBeLessThanOrEqual(101);
      expect(user).toBeLessThan(2_000_000);
    });
  }

  test('the last problem counts those that are not listed', () => {
    const { problems } = readTree('a: &x 1\n'.repeat(300));
    expect(problems).toHaveLength(101);
    expect(problems.at(-1)?.message).toContain('more problems in this file');
  });

  test('nothing a file says reaches the objects of the program', () => {
    readTree('__proto__: {polluted: yes}\na: {__proto__: {polluted: yes}}\n');
    expect(Reflect.get({}, 'polluted')).toBeUndefined();
  });
});
