import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LineIndex } from '../../../server/src/base/line-index.ts';
import type { Problem } from '../../../server/src/base/problem.ts';
import { decodeBytes } from '../../../server/src/syntax/decode.ts';
import { applyEdits } from '../../../server/src/syntax/edits.ts';
import { readTree } from '../../../server/src/syntax/read.ts';
import { byLibrary, withEmpty } from '../../support/by-library.ts';
import { hazardRows } from './hazard-rows.ts';
import { plain } from './plain.ts';
import { ruleFile } from './rule-file.ts';
import { structureRows } from './structure-rows.ts';

/** The library faults a tab on an otherwise blank line; it does no harm, so we do not. */
const BLANK_WITH_TAB = /^[ ]*\t\s*$/m;

/** Small mutations of real files: most of them are the mistakes that people make. */
const pieces = [
  '\n',
  '  ',
  ' ',
  ': ',
  ':',
  '- ',
  '-',
  '"',
  "'",
  '#',
  ' # ',
  '[',
  ']',
  '{',
  '}',
  ', ',
  '\t',
  '|',
  '>',
  '*a',
  '&a ',
  '!x ',
  '? ',
  '---\n',
  'x',
  '1',
  '\\',
  '%',
  '@',
  '\r\n',
];
const bases = [
  ruleFile.split('\n').slice(0, 30).join('\n'),
  'a: 1\nb:\n  - c: 2\n    d: "x"\n  - e\nf: {g: 1, h: [2, 3]}\ni: |\n  text\n  more\nj: end\n',
  "a:\n  b:\n    c: x y\n    d: 'q'\n  e:\n  - 1\n  -\n    k: v\n# end\n",
  ...structureRows.filter(({ text }) => text.length < 200).map(({ text }) => text),
];

const mutated = fc
  .tuple(
    fc.constantFrom(...bases),
    fc.array(fc.tuple(fc.nat(2_000), fc.nat(3), fc.constantFrom('', ...pieces)), { minLength: 1, maxLength: 3 }),
  )
  .map(([base, changes]) => {
    let text = base;
    for (const [place, length, piece] of changes) {
      const at = place % (text.length + 1);
      text = text.slice(0, at) + piece + text.slice(at + length);
    }
    return text;
  });

const signs = fc
  .array(fc.constantFrom(...pieces, 'a', 'b', 'key', 'two words', '\u00a0', '\u200b', '\uff1a', '\r', '°'), {
    maxLength: 40,
  })
  .map((parts) => parts.join(''));

describe('any text at all', () => {
  test('never throws, never leaves the text, and is the same twice', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: 'binary', maxLength: 200 }), signs, mutated), (text) => {
        const { tree, problems } = readTree(text);
        expect(problems.map(({ rule }) => rule)).not.toContain('reader-failed');
        for (const { span, fixes } of problems) {
          expect(span.start).toBeGreaterThanOrEqual(0);
          expect(span.end).toBeLessThanOrEqual(Math.max(text.length, span.start + 1));
          for (const fix of fixes ?? []) expect(applyEdits(text, fix.edits)).toHaveProperty('text');
        }
        if (tree === undefined) expect(problems.length).toBeGreaterThan(0);
        expect(readTree(text)).toEqual({ tree, problems, unreadable: tree?.node !== 'map' });
      }),
      { numRuns: 1_500 },
    );
  });

  test('any bytes are text or a problem', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        const decoded = decodeBytes(bytes);
        if ('text' in decoded) readTree(decoded.text);
        else expect(decoded.problem.rule).toBe('not-readable');
      }),
      { numRuns: 1_000 },
    );
  });

  test('what the library faults, we fault; what neither faults, we read alike', () => {
    fc.assert(
      fc.property(fc.oneof(mutated, signs), (text) => {
        const { tree, problems } = readTree(text);
        if (problems.length > 0 || BLANK_WITH_TAB.test(text)) return;
        const theirs = byLibrary(text);
        expect({ text, theirs: theirs !== undefined }).toEqual({ text, theirs: true });
        expect(withEmpty(plain(tree))).toEqual(withEmpty(theirs));
      }),
      { numRuns: 3_000 },
    );
  });
});

describe('line ends do not matter', () => {
  const places = (text: string, problems: readonly Problem[]) => {
    const lines = new LineIndex(text);
    return problems.map(({ rule, span, message }) => ({ rule, message, start: lines.position(span.start) }));
  };

  test('[L40] LF and CRLF give the same rules, messages and columns', () => {
    const texts = [
      ...bases,
      ...structureRows.map(({ text }) => text),
      ...hazardRows.map(({ texts: [text] }) => `k: ${text}\nb: 1\n`),
    ];
    for (const text of texts.filter((one) => !one.includes('\r'))) {
      const crlf = text.replaceAll('\n', '\r\n');
      expect(places(crlf, readTree(crlf).problems)).toEqual(places(text, readTree(text).problems));
    }
    fc.assert(
      fc.property(mutated, (mixed) => {
        const text = mixed.replaceAll('\r', '');
        const crlf = text.replaceAll('\n', '\r\n');
        expect(places(crlf, readTree(crlf).problems)).toEqual(places(text, readTree(text).problems));
      }),
      { numRuns: 1_500 },
    );
  });
});
