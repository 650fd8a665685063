import { describe, expect, it } from 'vitest';
import { readTree } from '../../../server/src/syntax/read.ts';
import type { ListTree, Tree } from '../../../server/src/syntax/tree.ts';
import { enter, lineAtCursor, type With } from '../../support/enter-key.ts';
import { readSample } from '../../support/samples.ts';

const both: readonly With[] = ['rules of VS Code', 'the server alone'];

/** The line in front of the cursor after each Enter at the end of `text`. */
function typed(text: string, times: number, by: With): readonly string[] {
  const lines: string[] = [];
  let now = { text, cursor: text.length };
  for (let time = 0; time < times; time++) {
    now = enter(now, by);
    lines.push(lineAtCursor(now));
  }
  return lines;
}

describe.each(both)('Enter, with %s', (by) => {
  it.each([
    ['notes:\n  - one', ['  - ', '']],
    ['notes:\n- one', ['- ', '']],
    ['lumens:\n  - {id: a}   # the long one', ['  - ', '']],
    ['covers:\n  - "A-1: b"', ['  - ', '']],
    ['lumens:\n  - id: a', ['    ', '  - ', '']],
    ['lumens:\n  - id: a\n    bore: {at_least: 2 mm}', ['    ', '  - ', '']],
    ['kind: washer\ncycles:\n  - id: a\n    phases:\n      - {phase: wash}', ['      - ', '    ', '  - ', '']],
    ['kind: washer\ncycles:', ['  - ', '']],
    ['kind: washer\ncycles: # to do: the cycles', ['  - ', '']],
    ['kind: washer\ncycles:\n  - id: a\n    phases:', ['      - ', '    ', '  - ', '']],
    ['kind: device\npoint_of_use:', ['  ', '']],
    ['kind: device\nname:', ['', '']],
    ['kind: device\nnotes:\n  - |', ['  ']],
    ['kind: question\ntext: |', ['  ']],
    ['a: 1', ['', '']],
  ])('%j goes on with %j', (text, lines) => {
    expect(typed(text, lines.length, by)).toEqual(lines);
  });

  it.each([
    ['storage:\n  time: {at_most: 6 months‸}', 'storage:\n  time: {at_most: 6 months}\n  ‸'],
    ['limits:\n  ph: {between: [6, 8‸]}\nnot:', 'limits:\n  ph: {between: [6, 8]}\n  ‸\nnot:'],
    ['lumens:\n  - {id: a‸}', 'lumens:\n  - {id: a}\n  - ‸'],
    ['covers: [A-1‸]', 'covers: [A-1]\n‸'],
    ['lumens:\n  - id: a\n    bore: {at_least: 2 mm‸}', 'lumens:\n  - id: a\n    bore: {at_least: 2 mm}\n    ‸'],
  ])('before the brackets that close a value means behind them: %j', (before, after) => {
    const now = enter({ text: before.replace('‸', ''), cursor: before.indexOf('‸') }, by);
    expect(`${now.text.slice(0, now.cursor)}‸${now.text.slice(now.cursor)}`).toBe(after);
  });

  it.each(['storage: {‸}', 'covers: [‸]', 'a: {b: 1, ‸c: 2}'])(
    'right behind a bracket and between parts it opens a line: %j',
    (text) => {
      const now = enter({ text: text.replace('‸', ''), cursor: text.indexOf('‸') }, by);
      expect(now.text.split('\n')).toHaveLength(2);
      expect(now.text.replaceAll(/\s/g, '')).toBe(text.replaceAll(/[\s‸]/g, ''));
      expect(now.text).toContain(text.slice(text.indexOf('‸') + 1));
    },
  );

  it('an item that is not finished gets no dash', () => {
    for (const text of ['a:\n  - {id: a,', 'a:\n  - "one', 'a:\n  - [1,'])
      expect(typed(text, 1, by)[0]).not.toContain('-');
  });

  it('leaves no empty line behind where a list ends', () => {
    let now = { text: 'notes:\n  - one', cursor: 14 };
    for (let time = 0; time < 2; time++) now = enter(now, by);
    expect(now.text).toBe('notes:\n  - one\n');
  });

  it('goes on as its neighbours have it behind each item of each list of the samples, then one level out', () => {
    let lists = 0;
    for (const sample of ['lanternfield', 'lanternfield-corrected', 'saltmere-eye-clinic'])
      for (const [path, text] of readSample(sample)) {
        const { tree } = readTree(text);
        for (const list of tree === undefined ? [] : listsOnLines(tree, text)) {
          lists++;
          for (const item of list.items) expectNeighbour(text, list, item, path, by);
        }
      }
    expect(lists).toBeGreaterThan(300);
  });
});

function listsOnLines(tree: Tree, text: string): readonly ListTree[] {
  const inner = tree.node === 'map' ? tree.entries.map(({ value }) => value) : tree.node === 'list' ? tree.items : [];
  const own = tree.node === 'list' && text[tree.span.start] === '-' ? [tree] : [];
  return [...own, ...inner.flatMap((one) => listsOnLines(one, text))];
}

/** The innermost thing that ends where the item ends decides what comes first; each further Enter is one level out. */
function expectNeighbour(text: string, list: ListTree, item: Tree, path: string, by: With): void {
  const levels = [`${' '.repeat(columnOf(text, list.span.start))}- `, ...openIn(item, text)].toReversed();
  let now = { text, cursor: lineEndAt(text, item.span.end) };
  for (const line of levels) {
    now = enter(now, by);
    expect(lineAtCursor(now), `${path} behind ${text.slice(item.span.start, item.span.end).slice(-80)}`).toBe(line);
  }
  const before = readTree(text);
  const after = readTree(now.text);
  expect(after.problems.filter(({ rule }) => rule !== 'empty-value')).toEqual(
    before.problems.filter(({ rule }) => rule !== 'empty-value'),
  );
}

/** What an item on several lines leaves open at its end, outermost first. */
function openIn(item: Tree, text: string): readonly string[] {
  if (item.node === 'map' && text[item.span.start] !== '{') {
    const last = item.entries.at(-1)?.value;
    const own = ' '.repeat(columnOf(text, item.span.start));
    return [own, ...(last === undefined ? [] : openIn(last, text))];
  }
  if (item.node === 'list' && text[item.span.start] === '-') {
    const last = item.items.at(-1);
    return [`${' '.repeat(columnOf(text, item.span.start))}- `, ...(last === undefined ? [] : openIn(last, text))];
  }
  return [];
}

function columnOf(text: string, offset: number): number {
  return offset - text.lastIndexOf('\n', offset - 1) - 1;
}

function lineEndAt(text: string, offset: number): number {
  const at = text[offset - 1] === '\n' ? offset - 1 : text.indexOf('\n', offset);
  return at < 0 ? text.length : at;
}
