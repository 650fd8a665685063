import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layoutEdits } from '../../../server/src/editor/writing/layout-edits.ts';
import { foldsOf, selectionsAt } from '../../../server/src/editor/writing/structure.ts';
import { applyEdits } from '../../../server/src/syntax/edits.ts';
import { readTree } from '../../../server/src/syntax/read.ts';
import { readSample } from '../../support/samples.ts';

function tidied(text: string): string {
  const applied = applyEdits(text, layoutEdits(text));
  return 'text' in applied ? applied.text : applied.refused;
}

describe('tidying the layout', () => {
  it('indents by whole steps, takes blanks at line ends, ends with one line end', () => {
    expect(tidied('kind: device\nlimits:\n    temp: 1   \n\nlumens:\n   - id: a\n     bore: 2 mm\n\n\n')).toBe(
      'kind: device\nlimits:\n   temp: 1\n\nlumens:\n   - id: a\n     bore: 2 mm\n',
    );
    expect(tidied('a:\n  b: 1\n  c:\n     - d\n     - e: 1\n       f: 2\n')).toBe(
      'a:\n  b: 1\n  c:\n    - d\n    - e: 1\n      f: 2\n',
    );
  });

  it('never touches quotes, folds, comments, list style or what stands in text over several lines', () => {
    const text =
      "# header\r\nid:   \"007\"   # keep\r\nsteps:\r\n- step: rinse\r\n  minutes:  03\r\n\r\n\r\n- step: dry\r\n  when: 0x1F\r\n  q: 'it''s'\r\nnote: |\r\n  two   \r\n    lines  \r\n";
    expect(tidied(text)).toBe(text);
  });

  it('does nothing to a file that is broken', () => {
    expect(layoutEdits('a: [1, 2\nb: 3   \n')).toEqual([]);
  });

  it('leaves the samples as they are, twice is once, and brings shifted files back', () => {
    for (const [path, text] of [...readSample('lanternfield'), ...readSample('lanternfield-corrected')])
      expect(tidied(text), path).toBe(text);
    fc.assert(
      fc.property(
        fc.constantFrom(...readSample('lanternfield-corrected').values()),
        fc.integer({ min: 1, max: 3 }),
        (text, by) => {
          const shifted = text
            .replace(/^( +)/gm, (indent) => indent + ' '.repeat(indent.length * (by - 1)))
            .replace(/\n/g, by === 2 ? '  \n' : '\n');
          const once = tidied(shifted);
          expect(tidied(once)).toBe(once);
          expect(readTree(once).problems).toEqual(readTree(text).problems);
        },
      ),
      { numRuns: 40, seed: 3 },
    );
  });
});

describe('folds and selections', () => {
  const text = '# one\n# two\nkind: device\nlimits:\n  temp: {at_most: 140 C}\n\nnotes:\n  - one\n  - two\n';
  const { tree } = readTree(text);
  if (tree?.node !== 'map') throw new Error('no map');
  it('fold groups without the blank line behind them', () => {
    expect(foldsOf(text, tree)).toEqual([
      { from: 0, to: 1, of: 'comment' },
      { from: 3, to: 4, of: 'group' },
      { from: 6, to: 8, of: 'group' },
    ]);
  });
  it('grow from the word to the file', () => {
    const spans = selectionsAt(tree, text.indexOf('140'));
    expect(spans.map(({ start, end }) => text.slice(start, end))).toEqual([
      '140 C',
      'at_most: 140 C',
      '{at_most: 140 C}',
      'temp: {at_most: 140 C}',
      expect.stringMatching(/^limits/),
      expect.stringMatching(/^kind/),
    ]);
  });
});
