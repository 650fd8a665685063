import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import type { Engine } from '../../../server/src/check/engine.ts';
import { packagingsToName } from '../../../server/src/editor/cycle-packaging.ts';
import { askForItem, titleOf } from '../../../server/src/editor/items/add-item.ts';
import {
  type ItemList,
  itemBefore,
  listAt,
  listsAround,
  listsIn,
} from '../../../server/src/editor/items/item-lists.ts';
import type { FileRecord } from '../../../server/src/library/file-record.ts';
import type { AskedQuestion } from '../../../server/src/panel/questions.ts';
import { inspect } from '../../../server/src/schema/inspect.ts';
import { shapeOf } from '../../../server/src/schema/shapes.ts';
import { applyEdits } from '../../../server/src/syntax/edits.ts';
import { readTree } from '../../../server/src/syntax/read.ts';
import type { MapTree, Tree } from '../../../server/src/syntax/tree.ts';
import { testDay } from '../../support/examples.ts';
import { readSample } from '../../support/samples.ts';
import { sampleEngine } from '../../support/writing.ts';

interface Open {
  readonly engine: Engine;
  readonly record: FileRecord;
  readonly tree: MapTree;
}

const corrected = sampleEngine();

function open(file: string, engine = corrected): Open {
  const record = engine.library.record(fileId(file));
  const tree = record === undefined ? undefined : readTree(record.text).tree;
  if (record?.kind === undefined || tree?.node !== 'map') throw new Error(`${file} can't be read`);
  return { engine, record, tree };
}

function stepAfter(
  { engine, record, tree }: Open,
  list: ItemList,
  answers: readonly (readonly string[])[],
  behind?: number,
) {
  const view = engine.view();
  const about = { around: { entity: record.entity, view, rules: [] }, today: testDay, title: titleOf(list) };
  const kind = shapeOf(record.kind ?? 'device');
  return askForItem({ text: record.text, root: tree, kind, list, behind, elsewhere: [], about }, answers);
}

/** Tried one after the other where an answer is no fitting one. */
const others = [
  '7',
  '7 mm',
  '7 min',
  '7 °C',
  '7 K',
  '7 mL',
  '7 kg',
  '7 kPa',
  '7 %',
  '7 times',
  '2025-01-31',
  'new-one',
];

/** Answers every question as `give` says; what is put in, or what was asked last. */
function added(
  at: Open,
  path: string,
  give: (asked: AskedQuestion, step: number) => readonly string[],
  behind?: number,
) {
  const list = listAt(at.tree, shapeOf(at.record.kind ?? 'device'), path);
  if (list === undefined) throw new Error(`no list ${path}`);
  const answers: (readonly string[])[] = [];
  const titles: string[] = [];
  let tried = 0;
  for (;;) {
    const step = stepAfter(at, list, answers, behind);
    if (step.is === 'problem') {
      const next = others[tried++];
      if (next === undefined) throw new Error(`${titles.at(-1)}: ${answers.at(-1)?.join()}: ${step.words}`);
      answers.splice(-1, 1, [next]);
      continue;
    }
    tried = 0;
    if (step.is === 'made') {
      const applied = applyEdits(at.record.text, step.edits);
      if (!('text' in applied)) throw new Error(applied.refused);
      return { titles, text: applied.text, edits: step.edits, words: step.words };
    }
    titles.push(step.title.replace(`${titleOf(list)}: `, ''));
    answers.push(give(step, answers.length));
    if (answers.length > 200) throw new Error(`no end: ${titles.slice(-5).join()}`);
  }
}

/** Answers in the order of the questions; what is left over is passed over. */
function given(
  ...answers: readonly (string | readonly string[])[]
): (asked: AskedQuestion, step: number) => readonly string[] {
  return (_, step) => [answers[step] ?? []].flat();
}

function newLines(before: string, after: string): readonly string[] {
  const known = new Set(before.split('\n'));
  return after.split('\n').filter((line) => !known.has(line));
}

describe('adding to a list by questions', () => {
  it('a cycle of a sterilizer: as its neighbours have it, the id proposed from the name on the screen', () => {
    const at = open('sterilizers/S1.ifu.yaml');
    const { titles, text } = added(at, 'cycles', (asked, step) => {
      const answers = ['PV134-18-40', 'steam-prevac', 'terminal', '134 C', '0 K', '3 K', '18 min', '40 min', '90 kg'];
      return asked.title.endsWith(': Id') ? [asked.value] : [answers[step] ?? ''];
    });
    expect(titles.slice(0, 5)).toEqual([
      'Name on the screen',
      'Method',
      'Terminal or immediate use',
      'Temperature',
      'Control band, Below',
    ]);
    expect(newLines(at.record.text, text)).toEqual([
      '  - {id: S1-PV134-18-40, name_on_screen: PV134-18-40, modality: steam-prevac, context: terminal, temp: 134 C, band: {minus: 0 K, plus: 3 K}, exposure: 18 min, dry: 40 min, load_max: 90 kg}',
    ]);
    expect(text.indexOf('S1-PV134-18-40')).toBeLessThan(text.indexOf('review:'));
  });

  it('a cycle of a washer on lines, with its phases one after the other', () => {
    const at = open('washers/W1.ifu.yaml');
    const phases = [
      'prewash',
      '20 C',
      '3 min',
      'wash',
      '55 C',
      '5 min',
      'thermal',
      '90 C',
      '5 min',
      'dry',
      '95 C',
      '15 min',
    ];
    const { text } = added(at, 'cycles', (asked, step) => {
      const answers = [['C2'], ['RO-1'], [], ['3000'], ...phases.map((one) => [one]), [], []];
      return asked.title.endsWith(': Id') ? ['W1-long'] : (answers[step] ?? []);
    });
    expect(newLines(at.record.text, text)).toEqual([
      '  - id: W1-long',
      '    doses: [C2]',
      '      - {phase: wash, temp: 55 C, time: 5 min}',
    ]);
    expect(text).toContain(
      '  - id: W1-long\n    doses: [C2]\n    final_water: RO-1\n    a0: 3000\n    phases:\n      - {phase: prewash',
    );
  });

  it('of a demand first what the page says, then the number; the sentence is cited', () => {
    const at = open('devices/duskwell-lap-scissors-takeapart.ifu.yaml');
    const { text, titles } = added(
      at,
      'sterilization.any_of',
      given(
        'steam-gravity',
        'terminal',
        'stated',
        '121 C',
        'at_least',
        '30 min',
        'between',
        '20 min, 30 min',
        [],
        [],
        [],
        's14',
        'gr121',
      ),
    );
    expect(titles).toContain('Exposure, at least');
    expect(text).toContain(
      '    - id: gr121\n      modality: steam-gravity\n      context: terminal\n      temp: {stated: 121 C}\n      exposure: {at_least: 30 min}\n      dry: {between: [20 min, 30 min]}\n      src: s14\n',
    );
  });

  it('a number without its unit, and an id that is taken, are told at once', () => {
    const at = open('sterilizers/S1.ifu.yaml');
    const list = listAt(at.tree, shapeOf('sterilizer'), 'cycles');
    if (list === undefined) throw new Error('no cycles');
    expect(stepAfter(at, list, [[], [], [], ['134']])).toMatchObject({
      is: 'problem',
      words: expect.stringContaining('"134" has no unit.'),
    });
    const all: readonly string[][] = [[], [], [], [], [], [], [], [], [], [], [], ['S1-pv132-4-20']];
    expect(stepAfter(at, list, all)).toEqual({
      is: 'problem',
      words: 'There is one with the id "S1-pv132-4-20" already.',
    });
  });

  it('behind the item where the cursor stands; at the end from the last one', () => {
    const at = open('devices/duskwell-lap-scissors-takeapart.ifu.yaml');
    const offset = at.record.text.indexOf('unscrew the handle');
    const lists = listsAround(at.tree, shapeOf('device'), at.record.text, offset);
    expect(lists.map(titleOf)).toEqual(['Add a further step']);
    const behind = lists[0] === undefined ? undefined : itemBefore(lists[0], offset);
    const { text } = added(at, 'disassembly.steps', given('open the lock'), behind);
    expect(text).toContain('src: s4}\n    - {do: open the lock}\n    - {do: pull the insert');
  });

  it.each([
    ['kind: washer\nid: W9\ncycles: # to do: the cycles\n', 'cycles:\n  - {id: W9-a}\n'],
    ['kind: washer\nid: W9\ncycles:\n  - \n', 'cycles:\n  - {id: W9-a}\n'],
    ['kind: washer\nid: W9\n', 'id: W9\ncycles:\n  - {id: W9-a}\n'],
    ['kind: washer\r\nid: W9\r\ncycles:\r\n', 'cycles:\r\n  - {id: W9-a}\r\n'],
  ])('begins a list in %j', (before, after) => {
    const engine = sampleEngine();
    engine.set(fileId('washers/W9.ifu.yaml'), before);
    const { text } = added(open('washers/W9.ifu.yaml', engine), 'cycles', ({ pass }) => (pass === '' ? ['W9-a'] : []));
    expect(text.endsWith(after)).toBe(true);
  });

  it('nothing is put in where nothing was answered', () => {
    const { words, edits } = added(open('devices/duskwell-lap-scissors-takeapart.ifu.yaml'), 'lumens', () => []);
    expect([words, edits]).toEqual(['Nothing was answered, so nothing was put in.', []]);
  });
});

describe('in every list of the samples', () => {
  it.each(['lanternfield-corrected', 'saltmere-eye-clinic'])(
    '%s: what was answered is read, and nothing else changes',
    (sample) => {
      const engine = sampleEngine(sample);
      let lists = 0;
      for (const file of readSample(sample).keys()) {
        const at = open(file, engine);
        const kind = shapeOf(at.record.kind ?? 'device');
        for (const list of listsIn(at.tree, kind)) {
          lists++;
          const path = list.path.join('.');
          const { text, edits } = added(at, path, answerAll());
          const [edit] = edits;
          expect(edits.length, `${file} ${path}`).toBe(1);
          if (edit !== undefined && list.key !== undefined)
            expect(edit.span.start, `${file} ${path}`).toBe(edit.span.end);
          const after = readTree(text).tree;
          if (after?.node !== 'map') throw new Error(`${file} ${path}: ${text}`);
          expect(faults(after), `${file} ${path}\n${edit?.text}`).toEqual(faults(at.tree));
          const now = listAt(after, kind, path);
          expect(now?.tree?.items.length).toBeGreaterThan(list.tree?.items.length ?? 0);
          expect(now?.tree?.items.slice(0, list.tree?.items.length ?? 0).map(saying)).toEqual(
            list.tree?.items.map(saying) ?? [],
          );
        }
      }
      expect(lists).toBeGreaterThan(400);
    },
  );
});

/** The first choice, the example of a text; each further part once, and two of what may come several times. */
function answerAll(): (asked: AskedQuestion) => readonly string[] {
  const seen = new Map<string, number>();
  return ({ title, asks, takes, choices, typical, pass }) => {
    const times = seen.get(title) ?? 0;
    seen.set(title, times + 1);
    const [first] = choices;
    if (pass === 'That was the last' && / [3-9], /.test(title)) return [];
    if (pass === 'That is all' && times > 1) return [];
    if (takes === 'many') return choices.slice(0, 2).map(({ label, gives }) => gives ?? label);
    if (first !== undefined) return [first.gives ?? first.label];
    if (asks.startsWith('Both ends')) return [typical];
    return [title.endsWith(': Id') ? 'new-one' : typical.split(', ')[0] || 'as the page says: "so"'];
  };
}

function faults(tree: MapTree): readonly string[] {
  return inspect(tree)
    .map(({ rule }) => rule)
    .toSorted();
}

function saying(tree: Tree): string {
  switch (tree.node) {
    case 'map':
      return `{${tree.entries.map(({ key, value }) => `${key.text}:${saying(value)}`).join()}}`;
    case 'list':
      return `[${tree.items.map(saying).join()}]`;
    case 'scalar':
      return JSON.stringify(tree.text);
    case 'empty':
      return '';
  }
}

/** A device in the library beside the sample. */
function device(text: string): Open {
  const engine = sampleEngine();
  engine.set(fileId('devices/pale.ifu.yaml'), text);
  return open('devices/pale.ifu.yaml', engine);
}

describe('a further way of cleaning', () => {
  const head = 'kind: device\nid: pale\n';
  const first = ({ title }: AskedQuestion): readonly string[] => (title.endsWith(': Stage') ? ['manual'] : []);

  it('comes in beside the stages that are there, and moves them in', () => {
    const at = device(
      `${head}cleaning:\n  all_of:\n    - stage: manual\n      steps:\n        - {do: soak}\n    - stage: ultrasonic\n`,
    );
    expect(added(at, 'cleaning.any_of', first).text).toBe(
      `${head}cleaning:\n  any_of:\n    - all_of:\n        - stage: manual\n          steps:\n            - {do: soak}\n        - stage: ultrasonic\n    - {stage: manual}\n`,
    );
  });

  it('is told from a further stage by its title', () => {
    const { tree } = device(`${head}cleaning:\n  all_of:\n    - stage: manual\n`);
    const titles = listsIn(tree, shapeOf('device')).map(titleOf);
    expect(titles).toContain('Add another way of cleaning (one of them is enough)');
    expect(titles).toContain('Add a further stage of cleaning (all are done)');
  });
});

describe('the packagings of a cycle', () => {
  const cycle = 'kind: device\nid: pale\nsterilization:\n  any_of:\n    - {id: a, modality: steam-prevac, src: s1}\n';

  it('are asked for by name and written into the cycle', () => {
    const at = device(cycle);
    const path = packagingsToName(at.tree, at.record.text, cycle.indexOf('modality'));
    expect(path).toBe('sterilization.any_of.0.packaging.allowed');
    const asked: AskedQuestion[] = [];
    const { text, titles } = added(at, path ?? '', (question) => {
      asked.push(question);
      return ['pouch', 'P1-wrap-light'];
    });
    expect(titles).toEqual(['Name the packagings']);
    expect(asked[0]?.takes).toBe('many');
    expect(asked[0]?.choices.map(({ label }) => label)).toEqual(
      expect.arrayContaining(['pouch', 'two layers of wrap', 'Pindlecote light wrap']),
    );
    expect(text).toContain(
      '- {id: a, modality: steam-prevac, src: s1, packaging: {allowed: [pouch, P1-wrap-light]}}\n',
    );
  });

  it.each([
    cycle.replace('src: s1', 'packaging: {allowed: [pouch]}'),
    `${cycle}packaging: {allowed: [pouch]}\n`,
    cycle.replace('steam', 'ste am').replace('sterilization', 'drying'),
  ])('are not asked for where they are named, or no cycle stands', (text) => {
    const { tree } = device(text);
    expect(packagingsToName(tree, text, text.indexOf('modality'))).toBeUndefined();
  });
});
