import { describe, expect, it } from 'vitest';
import { type FileId, fileId } from '../../../server/src/base/brand.ts';
import { LibraryView, QueryAnswers } from '../../../server/src/library/view.ts';
import { printingOf } from '../../../server/src/print/amounts.ts';
import { plain } from '../../../server/src/print/piece.ts';
import { allDrafts } from '../../../server/src/print/quiz/build.ts';
import { groundOf } from '../../../server/src/print/quiz/ground.ts';
import { type Draft, quizTemplates } from '../../../server/src/print/quiz/question.ts';
import { wordsOf } from '../../../server/src/print/words/languages.ts';
import { type Asked, filesOf } from '../../support/keys/asked.ts';
import { keyFault } from '../../support/keys/fault.ts';
import { openedSample } from '../../support/printed.ts';
import { libraryOf, randomDepartment, textOf } from '../../support/random-department.ts';
import { demoDay, viewOf } from '../../support/routes.ts';
import { type DepartmentName, departments, readSample } from '../../support/samples.ts';

/* Every question that can be asked: its key and each of its wrong answers, derived a second time without the code that made them. */

type Findings = Parameters<typeof groundOf>[1];

function askedOf(texts: ReadonlyMap<FileId, string>, view: LibraryView, findings: Findings): readonly Asked[] {
  const ground = groundOf(printingOf(view, wordsOf('en')), findings);
  const cards = new Map(ground.sets.map(({ set, fit }) => [set.id?.text ?? '', fit]));
  return allDrafts(ground).map((draft) => ({ draft, view, texts, files: filesOf(texts), cards }));
}

function sampleQuestions(name: DepartmentName): readonly Asked[] {
  const { engine, findings } = openedSample(name);
  return askedOf(readSample(name), engine.view(), findings);
}

function faultsOf(asked: readonly Asked[]): readonly string[] {
  return asked.flatMap((one) => {
    const fault = keyFault(one);
    return fault === undefined ? [] : [`${one.draft.key}: ${fault}`];
  });
}

function countByTemplate(asked: readonly Asked[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { draft } of asked) counts.set(draft.template, (counts.get(draft.template) ?? 0) + 1);
  return counts;
}

describe('keys of questions, derived a second time', () => {
  it.each(departments)(
    'every question about %s',
    (name) => {
      const asked = sampleQuestions(name);
      expect(asked.length).toBeGreaterThan(30);
      expect(faultsOf(asked)).toEqual([]);
    },
    120_000,
  );

  it('every template is asked about the corrected departments', () => {
    for (const name of ['lanternfield-corrected', 'saltmere-eye-clinic-corrected'] as const) {
      const counts = countByTemplate(sampleQuestions(name));
      for (const template of quizTemplates) expect(counts.get(template) ?? 0, `${name} ${template}`).toBeGreaterThan(1);
    }
  });

  it('in small random departments', () => {
    const counts = new Map<string, number>();
    for (let seed = 1; seed <= 600; seed++) {
      const { files } = randomDepartment(seed);
      const texts = new Map(files.map((file) => [`${file.kind}-${file.id}.ifu.yaml` as FileId, textOf(file)]));
      const view = new LibraryView(libraryOf(files), new Set(), new QueryAnswers(demoDay));
      const asked = askedOf(texts, view, []);
      expect(faultsOf(asked), `seed ${seed}`).toEqual([]);
      for (const [template, count] of countByTemplate(asked)) counts.set(template, (counts.get(template) ?? 0) + count);
    }
    for (const template of ['value', 'who-governs', 'may-i', 'sequence'])
      expect(counts.get(template) ?? 0, template).toBeGreaterThan(10);
  }, 180_000);

  it('would be caught if a wrong answer stood in the place of the key', () => {
    for (const asked of sampleQuestions('lanternfield-corrected')) {
      const { draft } = asked;
      for (const wrong of draft.wrong) {
        const forged: Draft = { ...draft, right: wrong, wrong: [draft.right] };
        expect(keyFault({ ...asked, draft: forged }), `${draft.key}: ${plain(wrong)}`).toBeDefined();
      }
    }
  }, 180_000);
});

/** The corrected department with one line of the plain forceps, or of another file, written otherwise. */
function keysWith(file: string, line: string | RegExp, other: string): readonly string[] {
  const { engine, findings } = openedSample('lanternfield-corrected');
  const texts = readSample('lanternfield-corrected');
  const written = texts.get(fileId(file)) ?? '';
  const { view } = viewOf([...texts, [fileId(file), written.replaceAll(line, other)]], engine.view().today);
  return askedOf(texts, view, findings).map(({ draft }) => draft.key);
}

const forceps = 'devices/quillmark-ringed-forceps.ifu.yaml';
const everyDry = /dry: \{at_least: \d+ min\}/g;
const value = 'value set/EYE-D-FORCEPS dry';

describe('what is open, silent or doubtful is not asked', () => {
  const doubtful: readonly (readonly [string, string, string | RegExp, string, string])[] = [
    ['about', forceps, 'dry: {at_least: 20 min}', 'dry: {about: 20 min}', value],
    ['least and about', forceps, 'dry: {at_least: 20 min}', 'dry: {at_least: 20 min, about: 30 min}', value],
    ['ambiguous', forceps, everyDry, 'dry: {ambiguous: "20 minutes or until dry"}', value],
    ['now and then', forceps, 'dry: {at_least: 20 min}', 'dry: {at_least: 20 min, when: in-container}', value],
    ['advice', forceps, 'dry: {at_least: 20 min}', 'dry: {at_least: 20 min, strength: should}', value],
    ['a second way', forceps, 'modality: steam-gravity', 'modality: steam-prevac', value],
    ['silent', forceps, everyDry, 'dry: {silent: true, checked: 2025-02-24}', value],
    [
      'a second device of that name',
      'devices/quillmark-suction-tube.ifu.yaml',
      'name: Suction tube',
      'name: Ringed forceps',
      'sequence device/quillmark-suction-tube',
    ],
    [
      'a second set of that name',
      'sets/MINOR-A.ifu.yaml',
      'name: Minor surgery A',
      'name: Forceps of the eye set',
      value,
    ],
    [
      'a number that the quoted sentence does not give',
      'devices/skerrow-wristed-grasper.ifu.yaml',
      'kind: device',
      'kind: device',
      'bound-words cleaning.all_of[1].temp device/skerrow-wristed-grasper#',
    ],
  ];

  it.each(doubtful)('%s', (_, file, line, other, key) => {
    expect(keysWith(file, line, other)).not.toContain(key);
  });

  it('but asked where it is written plainly', () => {
    expect(keysWith(forceps, 'kind: device', 'kind: device')).toEqual(
      expect.arrayContaining([value, 'sequence device/quillmark-suction-tube']),
    );
  });
});
