import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { Engine } from '../../../server/src/check/engine.ts';
import {
  answerFault,
  folderFor,
  guideOf,
  newFileQuestions,
  newFileText,
  proposedId,
} from '../../../server/src/editor/items/new-file.ts';
import { readRuleFile } from '../../../server/src/library/file-record.ts';
import { allRules } from '../../../server/src/rules/all.generated.ts';
import { kinds } from '../../../server/src/schema/kinds.ts';
import { shapeOf } from '../../../server/src/schema/shapes.ts';
import { testDay } from '../../support/examples.ts';
import { sampleEngine } from '../../support/writing.ts';

const scissors = {
  doc: ['DW-REP-077'],
  rev: ['3'],
  maker: ['Duskwell'],
  name: ['Take-apart scissors'],
  covers: ['3301', 'DW-3302'],
  class: ['critical'],
  traits: ['multi-part', 'lumen'],
};

/** Answers that have a form of their own. */
const formed: Readonly<Record<string, string>> = { issued: '2024-01-31', pages: '12' };

describe('a new file', () => {
  it('asks in the order a person knows, with the words of closed lists and the ids that exist', () => {
    const view = sampleEngine().view();
    const questions = newFileQuestions('device', view);
    expect(questions.map(({ key }) => key)).toEqual(['doc', 'rev', 'maker', 'name', 'covers', 'class', 'traits', 'id']);
    expect(questions[0]?.choices.map(({ label }) => label)).toContain('DW-REP-077');
    expect(questions.find(({ key }) => key === 'class')).toMatchObject({ takes: 'one', free: false });
    expect(questions.find(({ key }) => key === 'traits')).toMatchObject({ takes: 'many', free: false });
    expect(newFileQuestions('set', view).find(({ key }) => key === 'packaging')?.choices[0]).toEqual({
      label: 'Pindlecote light wrap',
      detail: 'P1-wrap-light',
      gives: 'P1-wrap-light',
    });
  });

  it('knows revision and maker of a document that is chosen', () => {
    const [document] = newFileQuestions('device', sampleEngine().view());
    const chosen = document?.choices.find(({ label }) => label === 'DW-REP-077');
    expect(chosen?.fills).toEqual({ rev: 'D', maker: 'Duskwell' });
  });

  it('asks of a document everything that must be there', () => {
    const questions = newFileQuestions('document', sampleEngine().view());
    expect(questions.find(({ key }) => key === 'status')).toMatchObject({ takes: 'one', free: false });
    const answered = Object.fromEntries(questions.map(({ key }) => [key, ['1']]));
    expect(newFileText('document', 'x', answered)).not.toContain('to do');
  });

  it('asks for what is known beside the usual questions, so that it is seen', () => {
    const keys = newFileQuestions('document', sampleEngine().view(), ['doc', 'effective', 'no-such']).map(
      ({ key }) => key,
    );
    expect(keys.slice(-3)).toEqual(['pages', 'effective', 'id']);
  });

  it.each([
    ['pages', '12', undefined],
    ['pages', '2026-05-01', '"2026-05-01" is a day. A whole number belongs here, such as 12.'],
    ['pages', '12 pages', '"12 pages" is no whole number. A whole number belongs here, such as 12.'],
    ['issued', '2026-05', undefined],
    ['issued', '5 May', 'A day is written as year, month and day, such as 2025-01-31.'],
    ['title', '2026-05-01', undefined],
  ])('of a document looks at %s "%s"', (key, text, words) => {
    expect(answerFault('document', key, text)).toBe(words);
  });

  it('begins with the text of the instruction where it was copied', () => {
    const text = newFileText('device', 'x', { doc: ['A-1'], rev: ['2'] }, 'Do not soak it.\nDry it.');
    expect(text).toContain('\nstatements:\nDo not soak it.\nDry it.\n');
    expect(text).not.toContain('statements: # to do');
  });

  it('shows and takes the items of a list without the brackets of a file', () => {
    const questions = newFileQuestions('device', sampleEngine().view());
    expect(questions.find(({ key }) => key === 'covers')?.typical).toBe('DW-3301, DW-3302');
    expect(newFileText('device', 'x', { covers: ['["3301"', 'DW-3302]'] })).toContain('covers: ["3301", DW-3302]');
  });

  it('has what was answered in the order of the work, and what is mandatory as empty lines', () => {
    expect(proposedId('device', scissors)).toBe('duskwell-take-apart-scissors');
    const long = { maker: ['Thornwaithe Surgical Craft'], name: ['TW Curved Suction Cannula with Obturator'] };
    expect(proposedId('device', long)).toBe('thornwaithe-surgical-craft-tw-curved-suction-cannula-with');
    expect(proposedId('device', { name: ['x'.repeat(70)] })).toBe('x'.repeat(64));
    expect(newFileText('device', 'duskwell-scissors', scissors)).toMatchInlineSnapshot(`
      "kind: device
      id: duskwell-scissors
      name: Take-apart scissors
      maker: Duskwell
      covers: ["3301", DW-3302]
      class: critical
      traits: [multi-part, lumen]
      lumens: # to do: Channels with bore and length.
      sources:
        - {doc: DW-REP-077, rev: "3", role: device-specific}
      statements: # to do: The text of the instruction: paste it into the line below, then choose "Turn All Sentences into Fields".

      point_of_use: # to do: What to do where the device was used, before it travels.
      disassembly: # to do: How it is taken apart.
      cleaning: # to do: The stages of cleaning: which are all done, and which are a choice.
      drying: # to do: Drying after the last rinse.
      inspection: # to do: Looking and testing before packing.
      packaging: # to do: Packaging for every sterilization option.
      sterilization: # to do: The complete cycles the page gives.
      storage: # to do: Storage of the packed device.
      "
    `);
  });

  it('makes each open line a finding, and nothing else wrong', () => {
    const engine = new Engine({ rules: allRules, today: testDay });
    const file = fileId('devices/x.ifu.yaml');
    const text = newFileText('device', 'duskwell-scissors', scissors);
    engine.set(file, text);
    const found = engine.findings(file);
    const open = found.filter(({ rule }) => rule === 'still-to-write');
    expect(open.map(({ span }) => text.slice(span.start, span.end))).toEqual(
      expect.arrayContaining([
        'lumens',
        'statements',
        'point_of_use',
        'disassembly',
        'cleaning',
        'drying',
        'inspection',
        'packaging',
        'sterilization',
        'storage',
      ]),
    );
    expect(found.filter(({ rule }) => rule !== 'still-to-write')).toEqual([]);
    expect(open.every(({ severity }) => severity === 'error')).toBe(true);
    expect(open.find(({ span }) => text.slice(span.start, span.end) === 'drying')?.message).toBe(
      'Still to write: drying after the last rinse.',
    );
  });

  it.each(kinds)('of kind %s asks for fields that exist and is read without fault but its empty lines', (kind) => {
    const shape = shapeOf(kind);
    const { asks, leavesOpen } = guideOf(kind);
    const known = [...shape.fields.keys(), ...(shape.fields.has('sources') ? ['doc', 'rev'] : [])];
    expect([...asks, ...leavesOpen].filter((key) => !known.includes(key))).toEqual([]);
    const view = sampleEngine().view();
    const answers = Object.fromEntries(
      newFileQuestions(kind, view)
        .filter(({ key }) => key !== 'id')
        .map(({ key, choices }) => [key, [choices[0]?.gives ?? choices[0]?.label ?? formed[key] ?? 'No. 5: a # b']]),
    );
    const text = newFileText(kind, 'x-1', answers);
    const faults = readRuleFile(fileId('x.ifu.yaml'), text).problems.filter(
      ({ rule }) => rule !== 'still-to-write' && rule !== 'field-missing',
    );
    expect(faults, text).toEqual([]);
  });

  it('lies where its like lie', () => {
    const view = sampleEngine().view();
    expect([folderFor('device', view), folderFor('site', view)]).toEqual(['devices', '']);
    expect(folderFor('device', new Engine({ rules: [], today: testDay }).view())).toBe('devices');
  });
});
