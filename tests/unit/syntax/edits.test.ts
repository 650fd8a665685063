import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Edit } from '../../../server/src/base/problem.ts';
import { span } from '../../../server/src/base/span.ts';
import {
  appendItem,
  applyEdits,
  fileForm,
  insertEntry,
  isSafeBare,
  replaceScalar,
} from '../../../server/src/syntax/edits.ts';
import { scalarHazard } from '../../../server/src/syntax/hazards.ts';
import { quoteScalar } from '../../../server/src/syntax/quote.ts';
import { readTree } from '../../../server/src/syntax/read.ts';
import type { ListTree, MapTree, ScalarTree, Tree } from '../../../server/src/syntax/tree.ts';
import { plain } from './plain.ts';

/** Everything that rewriting a whole file would change: line ends, indents, blank lines, spaces, long lines, number forms, quotes. */
const precious = [
  '# header\r',
  'id:   "007"   # keep',
  'steps:',
  '- step: rinse',
  '  minutes:  03',
  '',
  '',
  '- step: dry   ',
  `  note: long text ${'and more of it '.repeat(8)}`.trimEnd(),
  '  when: 0x1F',
  "  q: 'it''s'",
  'list: [a, b]   # two',
  'map: {x: 1}',
  '',
].join('\n');

function treeOf(text: string): MapTree {
  const { tree } = readTree(text);
  if (tree?.node !== 'map') throw new Error('no map');
  return tree;
}

function valueAt(tree: Tree, ...path: readonly (string | number)[]): Tree {
  let at: Tree | undefined = tree;
  for (const step of path) {
    if (at?.node === 'map') at = at.entries.find(({ key }) => key.text === step)?.value;
    else if (at?.node === 'list' && typeof step === 'number') at = at.items[step];
    else at = undefined;
  }
  if (at === undefined) throw new Error(`nothing at ${path.join('.')}`);
  return at;
}

function applied(text: string, ...edits: (Edit | undefined)[]): string {
  const result = applyEdits(
    text,
    edits.filter((edit) => edit !== undefined),
  );
  if ('refused' in result) throw new Error(result.refused);
  return result.text;
}

function scalarsOf(tree: Tree): ScalarTree[] {
  if (tree.node === 'scalar') return [tree];
  if (tree.node === 'list') return tree.items.flatMap(scalarsOf);
  return tree.node === 'map' ? tree.entries.flatMap(({ value }) => scalarsOf(value)) : [];
}

describe('applying edits', () => {
  test('in any order, all at once', () => {
    const edits = [
      { span: span(4, 5), text: 'X' },
      { span: span(0, 1), text: '' },
      { span: span(2, 2), text: '++' },
    ];
    expect(applyEdits('abcdefg', edits)).toEqual({ text: 'b++cdXfg' });
  });

  test.each([
    ['two that share a character', [span(0, 3), span(2, 4)]],
    ['two insertions at one place', [span(1, 1), span(1, 1)]],
    ['an insertion inside a replacement', [span(0, 3), span(1, 1)]],
    ['outside the text', [span(2, 9)]],
    ['back to front', [span(3, 2)]],
  ])('refused: %s', (_name, spans) => {
    expect(
      applyEdits(
        'abcd',
        spans.map((at) => ({ span: at, text: 'x' })),
      ),
    ).toHaveProperty('refused');
  });

  test('[E01] what lies outside the edits is unchanged, and the inverse edits restore the text', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.nat(precious.length), fc.nat(12), fc.string({ maxLength: 6 })), { maxLength: 5 }),
        (raw) => {
          const edits = raw.map(([start, length, text]) => ({
            span: span(start, Math.min(precious.length, start + length)),
            text,
          }));
          const result = applyEdits(precious, edits);
          if ('refused' in result) return;
          let shift = 0;
          const inverse = [...edits]
            .sort((a, b) => a.span.start - b.span.start || a.span.end - b.span.end)
            .map((edit) => {
              const start = edit.span.start + shift;
              shift += edit.text.length - (edit.span.end - edit.span.start);
              return {
                span: span(start, start + edit.text.length),
                text: precious.slice(edit.span.start, edit.span.end),
              };
            });
          const back = applyEdits(result.text, inverse);
          if ('text' in back) expect(back.text).toBe(precious);
        },
      ),
      { numRuns: 300 },
    );
  });
});

describe('[E01] edits of the precious file change one place only', () => {
  const tree = treeOf(precious);

  test('every value can be replaced, and nothing else changes', () => {
    const scalars = scalarsOf(tree);
    expect(scalars.length).toBeGreaterThan(8);
    for (const scalar of scalars) {
      const text = applied(precious, replaceScalar(scalar, 'new: #text', 'quoted'));
      expect(text.startsWith(precious.slice(0, scalar.span.start))).toBe(true);
      expect(text.endsWith(precious.slice(scalar.span.end))).toBe(true);
      expect(scalarsOf(treeOf(text)).map((one) => one.text)).toEqual(
        scalars.map((one) => (one === scalar ? 'new: #text' : one.text)),
      );
    }
  });

  test.each([
    ['at the top', [] as (string | number)[], '\nmap: {x: 1}\nadded: 4 min\n'],
    ['in a list item', ['steps', 0], '  minutes:  03\n  added: 4 min\n'],
    ['in the last list item', ['steps', 1], "  q: 'it''s'\n  added: 4 min\n"],
    ['between braces', ['map'], '{x: 1, added: 4 min}\n'],
  ])('a key added %s', (_name, path, expected) => {
    const map = valueAt(tree, ...path) as MapTree;
    const edit = insertEntry(precious, map, 'added', ['4 min']);
    const text = applied(precious, edit);
    expect(text).toContain(expected);
    expect(text.length).toBe(precious.length + (edit?.text.length ?? 0));
    expect(plain(valueAt(treeOf(text), ...path, 'added'))).toBe('4 min');
  });

  test('an item added to a list', () => {
    const text = applied(
      precious,
      appendItem(precious, valueAt(tree, 'steps') as ListTree, ['step: wait', 'minutes: 5']),
    );
    expect(text).toContain("  q: 'it''s'\n- step: wait\n  minutes: 5\nlist:");
    expect(plain(valueAt(treeOf(text), 'steps', 2))).toEqual({ step: 'wait', minutes: '5' });
  });

  test('an item added between brackets keeps the comment', () => {
    const text = applied(precious, appendItem(precious, valueAt(tree, 'list') as ListTree, ['c']));
    expect(text).toContain('list: [a, b, c]   # two\n');
  });
});

describe('layout is followed', () => {
  test.each([
    ['CRLF', 'a: 1\r\nb:\r\n    c: 1\r\n', { lineEnd: '\r\n', step: 4 }],
    ['LF', 'a: 1\nb:\n  c: 1\n', { lineEnd: '\n', step: 2 }],
    ['mostly LF', 'a: 1\r\nb:\n  c: 1\n', { lineEnd: '\n', step: 2 }],
    ['nothing', '', { lineEnd: '\n', step: 2 }],
  ])('%s', (_name, text, form) => expect(fileForm(text)).toEqual(form));

  test.each([
    ['CRLF stays CRLF', 'a: 1 # c\r\n', 'a: 1 # c\r\nk:\r\n  - x\r\n  - y\r\n'],
    ['no line end at the end', 'a: 1', 'a: 1\nk:\n  - x\n  - y'],
    ['four columns', 'b:\n    c: 1\n', 'b:\n    c: 1\nk:\n    - x\n    - y\n'],
    ['after a text block', 'a: |\n  t\n', 'a: |\n  t\nk:\n  - x\n  - y\n'],
    ['after an empty value', 'a:\n', 'a:\nk:\n  - x\n  - y\n'],
    ['after brackets over lines', 'a: [\n  1,\n]\n', 'a: [\n  1,\n]\nk:\n  - x\n  - y\n'],
  ])('%s', (_name, text, expected) => {
    expect(applied(text, insertEntry(text, treeOf(text), 'k', ['- x', '- y']))).toBe(expected);
  });

  test('empty brackets and braces', () => {
    const text = 'a: []\nb: { }\n';
    expect(applied(text, appendItem(text, valueAt(treeOf(text), 'a') as ListTree, ['x']))).toBe('a: [x]\nb: { }\n');
    expect(applied(text, insertEntry(text, valueAt(treeOf(text), 'b') as MapTree, 'k', ['x']))).toBe(
      'a: []\nb: {k: x }\n',
    );
  });

  test('several lines do not fit between brackets', () => {
    const text = 'a: [1]\nb: {x: 1}\n';
    expect(appendItem(text, valueAt(treeOf(text), 'a') as ListTree, ['x', 'y'])).toBeUndefined();
    expect(insertEntry(text, valueAt(treeOf(text), 'b') as MapTree, 'k', ['x', 'y'])).toBeUndefined();
  });
});

describe('[E02] quoting', () => {
  test.each([
    '12:30',
    'yes',
    'no',
    '1_000',
    '2024-01-02',
    '010',
    "it's",
    'a "b"',
    'C:\\dir',
    'x\ny',
    '',
    ' lead',
    '# no',
    '- x',
    '=1+1',
    '007',
    '1E5',
  ])('%j comes back as it is', (value) => {
    const text = `k: ${quoteScalar(value)}\n`;
    const { problems } = readTree(text);
    expect(problems.filter(({ rule }) => rule !== 'backslash-in-quotes')).toEqual([]);
    expect(plain(valueAt(treeOf(text), 'k'))).toBe(value);
  });

  test('any text comes back as it is', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 40 }), (value) => {
        const quoted = quoteScalar(value);
        const { tree } = readTree(`k: [${quoted}]\n`);
        expect(tree === undefined ? undefined : plain(valueAt(tree, 'k', 0))).toBe(value);
      }),
      { numRuns: 500 },
    );
  });

  test.each(['4 min', '132 C', '45-101', 'Keep dry', '5 %'])('%s may stay bare', (value) =>
    expect(isSafeBare(value)).toBe(true),
  );
  test.each([
    'yes',
    '12:30',
    '007',
    '1.10',
    'a: b',
    'a #b',
    'x, y',
    '- a',
    '',
    ' a',
    'a ',
    'null',
    '2024-01-02',
    '1_000',
  ])('%j may not stay bare', (value) => expect(isSafeBare(value)).toBe(false));

  test('bare text is read as the same text by every reader we know of', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 12 }), (value) => {
        if (!isSafeBare(value)) return;
        const scalar = valueAt(treeOf(`k: ${value}\n`), 'k') as ScalarTree;
        expect(scalar.text).toBe(value);
        expect(scalarHazard(scalar, 'text')).toBeUndefined();
      }),
    );
  });
});
