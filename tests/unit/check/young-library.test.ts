import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { Engine } from '../../../server/src/check/engine.ts';
import { allRules } from '../../../server/src/rules/all.generated.ts';
import { testDay } from '../../support/examples.ts';

const library = {
  'library.ifu.yaml': 'kind: library\nid: first\nsite: here\n',
  'here.ifu.yaml': 'kind: site\nid: here\naltitude: 5 m\n',
  'clamp.ifu.yaml':
    'kind: device\nid: clamp\nclass: critical\ncleaning:\n  - {step: rinse}\nsterilization:\n  - {modality: steam-prevac}\n',
  'tray.ifu.yaml': 'kind: set\nid: tray\nmembers: [{device: clamp, qty: 2}]\n',
};

function found(files: Readonly<Record<string, string>>): readonly string[] {
  const engine = new Engine({ rules: allRules, today: testDay });
  for (const [name, text] of Object.entries(files)) engine.set(fileId(name), text);
  return Object.keys(files)
    .flatMap((name) => engine.findings(fileId(name)))
    .map(({ file, rule, path, message }) => `${file} ${rule} ${path} ${message}`);
}

describe('a library that was begun today', () => {
  const findings = found(library);

  it('is told once that nothing describes the department, and nothing about routes of sets', () => {
    expect(findings.filter((line) => line.includes('department-not-encoded'))).toHaveLength(1);
    expect(findings.filter((line) => line.includes('set-route-none'))).toEqual([]);
  });

  it('is told how a list in the wrong place is mended, and not that the stage is absent too', () => {
    const ofCleaning = findings.filter((line) => /"cleaning"|about cleaning/.test(line));
    expect(ofCleaning).toEqual([
      expect.stringContaining('Put the list under "any_of:" when one of them is enough, under "all_of:"'),
    ]);
    expect(findings.filter((line) => line.includes('about sterilization'))).toEqual([]);
  });

  it('is told about stages that no line names', () => {
    expect(findings.some((line) => line.includes('Nothing is said about drying'))).toBe(true);
  });
});
