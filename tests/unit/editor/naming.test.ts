import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { Engine } from '../../../server/src/check/engine.ts';
import { symbolsFor } from '../../../server/src/editor/naming/library-symbols.ts';
import { namedThingAt } from '../../../server/src/editor/naming/named-thing.ts';
import { includedBy, includersOf, referencesTo } from '../../../server/src/editor/naming/references.ts';
import { rename, renameableAt } from '../../../server/src/editor/rename.ts';
import { allRules } from '../../../server/src/rules/all.generated.ts';
import { applyEdits } from '../../../server/src/syntax/edits.ts';
import { testDay } from '../../support/examples.ts';
import { sampleEngine } from '../../support/writing.ts';

const files: Readonly<Record<string, string>> = {
  'a.ifu.yaml':
    'kind: device\nid: pale\nlumens: [{id: shaft, bore: 2 mm}]\nstatements:\n  s1: {doc: D, rev: A, page: 1, quote: "x"}\n  s2: {doc: D, rev: A, page: 1, quote: "y"}\nmanual:\n  steps:\n    - {do: flush, lumen: shaft, src: [s1, s2]}\nlimits: {temp: {at_most: 140 C, src: s1}}\n',
  'b.ifu.yaml': 'kind: set\nid: tray\nmembers:\n  - {device: "pale", qty: 2}\ncycle: "S1:a"\n',
  'c.ifu.yaml': 'kind: question\nid: q1\nabout: pale\n',
  'd.ifu.yaml':
    'kind: sterilizer\nid: S1\ncycles:\n  - {id: "S1:a", modality: steam-prevac}\n  - {id: other, modality: steam-prevac}\n',
  'e.ifu.yaml': 'kind: packaging\nid: pale-wrap\n',
};

function engine(): Engine {
  const made = new Engine({ rules: [], today: testDay });
  for (const [name, text] of Object.entries(files)) made.set(fileId(name), text);
  return made;
}

/** Renames what stands at `words`, and gives the files that changed, or why not. */
function renamed(file: string, words: string, to: string, skip = 0): Readonly<Record<string, string>> | string {
  const made = engine();
  const found = renameableAt(made.library, fileId(file), (files[file] ?? '').indexOf(words) + skip, made.view());
  if (found === undefined) return 'nothing to rename';
  const result = rename(found.thing, to, made.library, made.view());
  if ('refused' in result) return result.refused;
  const after: Record<string, string> = {};
  for (const [name, edits] of result.edits) {
    const applied = applyEdits(files[name] ?? '', edits);
    after[name] = 'text' in applied ? applied.text : applied.refused;
  }
  return after;
}

describe('renaming', () => {
  it('a device, from where it is given or used, across the library, quotes kept', () => {
    for (const [file, words, skip] of [
      ['a.ifu.yaml', 'id: pale', 4],
      ['b.ifu.yaml', '"pale"', 2],
      ['c.ifu.yaml', 'about: pale', 8],
    ] as const) {
      const after = renamed(file, words, 'pale-2', skip);
      expect(Object.keys(after)).toEqual(['a.ifu.yaml', 'b.ifu.yaml', 'c.ifu.yaml']);
      expect(after).toMatchObject({ 'b.ifu.yaml': files['b.ifu.yaml']?.replace('"pale"', '"pale-2"') });
    }
  });

  it('a cycle, a statement, a lumen', () => {
    expect(renamed('b.ifu.yaml', 'S1:a', 'S1-a', 1)).toMatchObject({
      'd.ifu.yaml': files['d.ifu.yaml']?.replace('S1:a', 'S1-a'),
    });
    expect(renamed('a.ifu.yaml', 's1:', 's9', 1)).toEqual({
      'a.ifu.yaml': files['a.ifu.yaml']?.replaceAll('s1', 's9'),
    });
    expect(renamed('a.ifu.yaml', 'lumen: shaft', 'tube', 8)).toEqual({
      'a.ifu.yaml': files['a.ifu.yaml']?.replaceAll('shaft', 'tube'),
    });
  });

  it('is refused in words when the name is taken, or no name', () => {
    expect(renamed('b.ifu.yaml', '"pale"', 'a b', 2)).toContain("can't be an id");
    expect(renamed('a.ifu.yaml', 's1:', 's2', 1)).toBe('There is a statement "s2" already.');
    expect(renamed('b.ifu.yaml', 'S1:a', 'other', 1)).toBe('There is a cycle "other" already.');
    expect(renamed('a.ifu.yaml', '140 C', 'x')).toBe('nothing to rename');
    const made = engine();
    made.set(fileId('f.ifu.yaml'), 'kind: device\nid: pale\n');
    const found = renameableAt(made.library, fileId('a.ifu.yaml'), 18, made.view());
    expect(found === undefined ? '' : rename(found.thing, 'x', made.library, made.view())).toEqual({
      refused: 'Two files say that they are the device "pale". Settle that first.',
    });
  });

  it('of every device, set and cycle of the samples leaves the findings as they were', () => {
    const before = sampleEngine('lanternfield');
    const view = before.view();
    const ids = [...view.all('device'), ...view.all('packaging'), ...view.all('sterilizer')].slice(0, 30);
    for (const entity of ids) {
      const file = entity.at.root?.file ?? fileId('');
      const found = renameableAt(before.library, file, entity.id?.at.span.start ?? 0, view);
      const result = found === undefined ? undefined : rename(found.thing, 'other-name-1', before.library, view);
      expect(result !== undefined && 'edits' in result).toBe(true);
    }
  });
});

describe('references and hierarchy', () => {
  it('lists every use, and the definition when asked for', () => {
    const made = engine();
    const entity = made.view().get('device', 'pale');
    const thing = entity === undefined ? undefined : namedThingAt(entity, 18, made.view());
    if (thing === undefined || entity === undefined) throw new Error('nothing');
    expect(referencesTo(thing, made.library, made.view(), 'uses-only').map(({ file }) => file)).toEqual([
      'b.ifu.yaml',
      'c.ifu.yaml',
    ]);
    expect(referencesTo(thing, made.library, made.view(), 'with-definition').length).toBe(3);
    expect(includersOf(thing, made.library, made.view()).map((one) => one.thing.id)).toEqual(['tray', 'q1']);
    const set = made.view().get('set', 'tray');
    expect(set === undefined ? [] : includedBy(set, made.view()).map((one) => one.thing.id)).toEqual(['pale', 'S1']);
  });
});

describe('finding by what is printed', () => {
  it('by catalogue number, id, name and document number', () => {
    const { library } = sampleEngine();
    expect(symbolsFor('DW-3302', library)).toMatchObject([
      { kind: 'device', detail: 'device, DW-3302' },
      { kind: 'document', detail: 'document, DW-3302' },
    ]);
    expect(symbolsFor('take-apart', library).map(({ file }) => file)).toContain(
      'devices/duskwell-lap-scissors-takeapart.ifu.yaml',
    );
    expect(symbolsFor('dw-rep', library).map(({ kind }) => kind)).toContain('document');
    expect(symbolsFor('', library).length).toBeLessThanOrEqual(200);
  });
});

describe('a rename in the demonstration department', () => {
  it('changes no finding but the names in them', () => {
    const before = sampleEngine('lanternfield');
    const view = before.view();
    const entity = view.get('device', 'quillmark-ringed-forceps');
    const file = entity?.at.root?.file ?? fileId('');
    const found = renameableAt(before.library, file, entity?.id?.at.span.start ?? 0, view);
    const result = found === undefined ? undefined : rename(found.thing, 'ringed-forceps', before.library, view);
    if (result === undefined || !('edits' in result)) throw new Error('refused');
    const checks = [
      new Engine({ rules: allRules, today: testDay }),
      new Engine({ rules: allRules, today: testDay }),
    ] as const;
    for (const path of before.library.files()) {
      const text = before.library.record(path)?.text ?? '';
      const applied = applyEdits(text, result.edits.get(path) ?? []);
      checks[0].set(path, text);
      checks[1].set(path, 'text' in applied ? applied.text : '');
    }
    const [old, now] = checks.map((engineOf) =>
      before.library.files().flatMap((path) => engineOf.findings(path).map((one) => `${path} ${one.rule}`)),
    );
    expect(now).toEqual(old);
    expect(result.edits.size).toBeGreaterThan(5);
  });
});
