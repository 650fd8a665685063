import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { newFileText } from '../../../server/src/editor/items/new-file.ts';
import { saidNothing } from '../../../server/src/editor/walk/said-nothing.ts';
import { readRuleFile } from '../../../server/src/library/file-record.ts';
import { applyEdits } from '../../../server/src/syntax/edits.ts';
import { readTree } from '../../../server/src/syntax/read.ts';
import { testDay } from '../../support/examples.ts';

/** The text after the choice, at the place where `‸` stands; undefined where nothing is offered. */
function chosen(marked: string): string | undefined {
  const offset = marked.indexOf('‸');
  const text = marked.replace('‸', '');
  const { tree } = readTree(text);
  if (tree?.node !== 'map') throw new Error('no map');
  const edits = saidNothing(readRuleFile(fileId('devices/invented.ifu.yaml'), text), tree, offset, testDay);
  const applied = edits === undefined ? undefined : applyEdits(text, edits);
  return applied === undefined || !('text' in applied) ? undefined : applied.text;
}

const device = 'kind: device\nid: pale\n';
const silent = `{silent: true, checked: ${testDay}}`;

describe('a line that is still to be written, where the document says nothing', () => {
  it.each([
    ['drying‸: # to do: Drying after the last rinse.\nstorage:\n', `drying: ${silent}\nstorage:\n`],
    ['drying: # to do: Dry‸ing.\r\nstorage:\r\n', `drying: ${silent}\r\nstorage:\r\n`],
    ['storage:\n  place: dry\n  ‸time:\n', `storage:\n  place: dry\n  time: ${silent}\n`],
    [
      'sterilization:\n  any_of:\n    - id: a\n      ‸dry: # to do\n      src: s1\n',
      `sterilization:\n  any_of:\n    - id: a\n      dry: ${silent}\n      src: s1\n`,
    ],
  ])('%j', (before, after) => {
    expect(chosen(`${device}${before}`)).toBe(`${device}${after}`);
  });

  it.each([
    'lumens‸: # to do: Channels with bore and length.\n',
    'na‸me:\n',
    'drying‸: {time: {at_least: 1 min}}\n',
    'storage: {time‸: , place: dry}\n',
  ])('is not offered where the field has no word for it: %j', (text) => {
    expect(chosen(`${device}${text}`)).toBeUndefined();
  });

  it('is no longer to be written then', () => {
    const answers = { name: ['Punch'], class: ['critical'], traits: ['multi-part'] };
    let text = newFileText('device', 'pale', answers);
    const open = (): readonly string[] => [...text.matchAll(/^([a-z_]+): # to do/gm)].map(([, key = '']) => key);
    for (const key of open()) text = chosen(text.replace(`\n${key}:`, `\n${key}‸:`)) ?? text;
    expect(open()).toEqual([]);
    expect(readRuleFile(fileId('devices/invented.ifu.yaml'), text).problems).toEqual([]);
  });
});
