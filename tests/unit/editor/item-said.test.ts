import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { askForItem, titleOf } from '../../../server/src/editor/items/add-item.ts';
import { listAt } from '../../../server/src/editor/items/item-lists.ts';
import { sameSentence } from '../../../server/src/editor/walk/sentence-walk.ts';
import { readRuleFile } from '../../../server/src/library/file-record.ts';
import type { AddedItem } from '../../../server/src/panel/sentences.ts';
import { shapeOf } from '../../../server/src/schema/shapes.ts';
import { readTree } from '../../../server/src/syntax/read.ts';
import { testDay } from '../../support/examples.ts';
import { sampleEngine } from '../../support/writing.ts';

function about(quote: string): string {
  return `kind: device\nid: pale\nstatements:\n  s1: {doc: D, rev: A, page: 1, quote: "${quote}"}\n`;
}

/** What choosing that field for the sentence begins with. */
function added(quote: string, field: string): AddedItem | undefined {
  const text = about(quote);
  const { tree } = readTree(text);
  const record = readRuleFile(fileId('devices/invented.ifu.yaml'), text);
  const step = sameSentence(record, tree?.node === 'map' ? tree : undefined, 's1', { words: [], next: 'field' });
  if (step.is === 'done') throw new Error('nothing is asked');
  return step.choices.find(({ label }) => label === field)?.adds;
}

describe('an item that a sentence speaks of is asked for with what it says', () => {
  it.each([
    ['Lumen 330 mm long, 2.0 mm inner diameter.', { name: 'Lumen', bore: '2.0 mm', length: '330 mm' }],
    ['The working channel has a bore of 3.2 mm.', { name: 'working channel', bore: '3.2 mm' }],
    ['The channel measures 40 cm.', { name: 'channel', length: '40 cm' }],
    ['It has two ports.', {}],
  ])('%s', (quote, known) => {
    expect(added(quote, 'Lumens')).toEqual({ list: 'lumens', known: { ...known, src: 's1' } });
  });

  it('a part that is replaced by its name', () => {
    expect(added('Replace the sealing cap after 20 uses.', 'Parts')).toEqual({
      list: 'parts',
      known: { name: 'sealing cap', src: 's1' },
    });
  });

  it('what is known stands there, and the sentence is not asked for', () => {
    const text = about('Lumen 330 mm long.');
    const { tree } = readTree(text);
    if (tree?.node !== 'map') throw new Error('no map');
    const kind = shapeOf('device');
    const list = listAt(tree, kind, 'lumens');
    if (list === undefined) throw new Error('no list');
    const view = sampleEngine().view();
    const known = new Map([
      ['length', '330 mm'],
      ['src', 's1'],
    ]);
    const item = {
      text,
      root: tree,
      kind,
      list,
      behind: undefined,
      elsewhere: [],
      about: { around: { entity: undefined, view, rules: [] }, today: testDay, title: titleOf(list), known },
    };
    const answers: (readonly string[])[] = [];
    const asked: string[] = [];
    for (;;) {
      const step = askForItem(item, answers);
      if (step.is === 'problem') throw new Error(step.words);
      if (step.is === 'made') {
        expect(asked.some((title) => title.includes('Sentence'))).toBe(false);
        expect(step.edits.map((edit) => edit.text).join('')).toContain('length: 330 mm, src: s1');
        return;
      }
      asked.push(step.title);
      expect(step.of).toBeGreaterThanOrEqual(asked.length);
      answers.push(step.value === '' ? [] : [step.value]);
    }
  });
});
