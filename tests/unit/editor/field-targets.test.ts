import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { sameSentence } from '../../../server/src/editor/walk/sentence-walk.ts';
import type { WalkChoice } from '../../../server/src/editor/words/walk-choice.ts';
import { readRuleFile } from '../../../server/src/library/file-record.ts';
import type { Told } from '../../../server/src/panel/sentences.ts';
import { applyEdits } from '../../../server/src/syntax/edits.ts';
import { readTree } from '../../../server/src/syntax/read.ts';

const file = fileId('devices/pale.ifu.yaml');

function about(quote: string, there: string): string {
  return `kind: device\nid: pale\nstatements:\n  s1: {doc: D, rev: A, page: 1, section: Manual cleaning, quote: "${quote}"}\n  s9: {doc: D, rev: A, page: 1, quote: "x", not_needed: [x]}\n${there}`;
}

function offered(text: string, told: Partial<Told>): readonly WalkChoice[] {
  const { tree } = readTree(text);
  const map = tree?.node === 'map' ? tree : undefined;
  const step = sameSentence(readRuleFile(file, text), map, 's1', { words: [], ...told });
  return step.is === 'sentence' ? step.choices : [];
}

/** What the file has when the choice that begins so is taken for the field. */
function taking(text: string, field: string, label: string): string {
  const all = offered(text, { field });
  const choice = all.find((one) => one.label.startsWith(label));
  if (choice === undefined) throw new Error(`${label} is not among ${all.map((one) => one.label).join(' | ')}`);
  const applied = applyEdits(text, choice.edits);
  return 'text' in applied ? applied.text : applied.refused;
}

const brushes = `manual:
  steps:
    - {do: brush, src: s9}
    - {do: brush, times: {stated: 5 times}, src: s1}
`;

describe('what is chosen for a sentence that made a step', () => {
  const passed = 'Pass a soft brush of 5.5 mm diameter through it until no residue can be seen.';

  it.each([
    ['manual.brush.diameter', 'Manual cleaning: brush diameter stated', 'brush: {diameter: {stated: 5.5 mm}}'],
    ['manual.brush.soft', 'Manual cleaning: brush soft: yes', 'brush: {soft: true}'],
    ['manual.brush.endpoint', 'Manual cleaning: brush until: no residue', 'brush: {endpoint: no residue can be seen}'],
  ])('%s stands in that step', (field, label, made) => {
    const text = taking(about(passed, brushes), field, label);
    expect(text).toContain('- {do: brush, src: s9}\n');
    expect(text).toContain(`- {do: brush, times: {stated: 5 times}, src: s1, ${made}}\n`);
    expect(text).not.toContain('\n  brush:');
    expect(readTree(text).problems).toEqual([]);
  });

  it('one field after the other goes into the same group', () => {
    const first = taking(about(passed, brushes), 'manual.brush.diameter', 'Manual cleaning: brush diameter stated');
    const text = taking(first, 'manual.brush.soft', 'Manual cleaning: brush soft: yes');
    expect(text).toContain('brush: {diameter: {stated: 5.5 mm}, soft: true}}\n');
  });

  it.each([
    [
      'manual.flush.volume',
      'Flush it with 50 mL.',
      'flush',
      'Manual cleaning: flush volume stated',
      'volume: {stated: 50 mL}',
    ],
    ['manual.soak', 'Soak it for 10 min.', 'soak', 'Manual cleaning: soak stated', 'time: {stated: 10 min}'],
    ['manual.actuate', 'Move it 10 times.', 'actuate', 'Manual cleaning: actuate stated', 'times: {stated: 10 times}'],
  ])('%s is called as a step calls it', (field, quote, does, label, made) => {
    const there = `manual:\n  steps:\n    - {do: ${does}, src: s1}\n`;
    expect(taking(about(quote, there), field, label)).toContain(`- {do: ${does}, src: s1, ${made}}\n`);
  });

  it('stands in its stage under cleaning, of several by hand', () => {
    const there =
      'cleaning:\n  all_of:\n    - stage: manual\n      steps:\n        - {do: soak, src: s9}\n    - {stage: ultrasonic, src: s9}\n    - stage: manual\n      steps:\n        - {do: brush, src: s1}\n';
    expect(taking(about(passed, there), 'manual.brush.soft', 'Manual cleaning: brush soft: yes')).toContain(
      '- {do: brush, src: s1, brush: {soft: true}}\n',
    );
  });

  it('beside a brush of another sentence it becomes a step of its own, or holds for the stage', () => {
    const there = 'manual:\n  steps:\n    - {do: brush, src: s9}\n';
    const yes = 'Manual cleaning: brush soft: yes';
    expect(taking(about(passed, there), 'manual.brush.soft', `${yes}, as a step`)).toContain(
      '    - {do: brush, src: s9}\n    - {do: brush, brush: {soft: true}, src: s1}\n',
    );
    expect(taking(about(passed, there), 'manual.brush.soft', `${yes}, for the whole`)).toContain(
      '  brush: {soft: true, src: s1}\n',
    );
  });

  it('holds for the stage where it has no such step', () => {
    expect(taking(about(passed, 'manual: {use: required, src: s9}\n'), 'manual.brush.soft', 'Manual')).toContain(
      'manual: {use: required, src: s9, brush: {soft: true, src: s1}}\n',
    );
  });
});

describe('of several stages of one sort', () => {
  const there =
    'cleaning:\n  all_of:\n    - {stage: manual, steps: [{do: soak, src: s9}]}\n    - {stage: ultrasonic, src: s9}\n    - {stage: manual, steps: [{do: rinse, src: s9}]}\n';

  it('each can be chosen for a field', () => {
    const text = about('It is needed.', there);
    const labels = offered(text, { field: 'manual.needed' }).map(({ label }) => label);
    expect(labels).toContain('Manual cleaning: when it is needed: before the machine, in stage 1: soak');
    expect(labels).toContain('Manual cleaning: when it is needed: before the machine, in stage 2: rinse');
    expect(taking(text, 'manual.needed', 'Manual cleaning: when it is needed: always, in stage 2')).toContain(
      '{stage: manual, steps: [{do: rinse, src: s9}], needed: always, src: s1}',
    );
  });
});

describe('fields of cycles that are there', () => {
  const there =
    'sterilization:\n  any_of:\n    - {id: pv134, modality: steam-prevac, temp: {stated: 134 °C}, src: s9}\n    - {id: pv121, modality: steam-prevac, temp: {stated: 121 °C}, src: s9}\n';
  const text = about('At least three pulses, drying 20 min.', there);

  it('are offered, and found by typing', () => {
    const labels = offered(text, { next: 'field' }).map(({ label }) => label);
    expect(labels.slice(0, 6)).toContain('Sterilization: Cycle: Pulses');
    for (const title of ['Exposure', 'Drying', 'Packaging: Packagings named'])
      expect(labels).toContain(`Sterilization: Cycle: ${title}`);
    expect(offered(about('Three pulses.', ''), { next: 'field' }).map(({ label }) => label)).not.toContain(
      'Sterilization: Cycle: Pulses',
    );
  });

  it('are written into all of them by one choice', () => {
    const all = taking(
      text,
      'sterilization.any_of.*.pulses',
      'Sterilization: pulses at least 3 pulses, in all 2 cycles',
    );
    expect(all.match(/pulses: \{at_least: 3 pulses, src: s1\}/g)).toHaveLength(2);
    expect(readTree(all).problems).toEqual([]);
  });

  it('or into one', () => {
    const one = taking(
      text,
      'sterilization.any_of.*.dry',
      'Sterilization: drying stated 20 min, only in pre-vacuum steam, 121 °C',
    );
    expect(one).toContain('temp: {stated: 121 °C}, src: s9, dry: {stated: 20 min, src: s1}}\n');
    expect(one.match(/dry:/g)).toHaveLength(1);
  });
});
