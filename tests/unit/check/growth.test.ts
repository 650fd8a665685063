import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { Engine } from '../../../server/src/check/engine.ts';
import { allRules } from '../../../server/src/rules/all.generated.ts';
import { generateLibrary } from '../../bench/generate-library.ts';
import { templatesOf } from '../../bench/templates.ts';
import { callsDuring } from '../../support/call-counts.ts';
import { testDay } from '../../support/examples.ts';
import { readSample } from '../../support/samples.ts';

const templates = templatesOf(readSample('lanternfield-corrected'));
const ofDepartment = templates.department.length + templates.line.length;

interface Cost {
  readonly files: number;
  readonly keys: number;
  readonly calls: ReadonlyMap<string, number>;
}

/** Checks a library of some departments, each with machines, supplies and one line of instruments of its own. */
function costOf(departments: number): Cost {
  const texts = generateLibrary(templates, templates.once.length + departments * ofDepartment, 1);
  let keys = 0;
  const calls = callsDuring(() => {
    const engine = new Engine({ rules: allRules, today: testDay });
    for (const [file, text] of texts) engine.set(fileId(file), text);
    for (const file of engine.library.files()) keys += engine.readsOf(file).length;
  });
  return { files: texts.size, keys, calls };
}

function sumOf(calls: ReadonlyMap<string, number>): number {
  return [...calls.values()].reduce((sum, count) => sum + count, 0);
}

describe('a check of a library with more departments', () => {
  costOf(1);
  const [few, many] = [costOf(2), costOf(8)];
  const growth = many.files / few.files;

  it('costs as much a file, in calls and in keys that its findings rest on', () => {
    expect(many.files).toBeGreaterThan(3 * few.files);
    expect(sumOf(many.calls)).toBeLessThan(1.03 * growth * sumOf(few.calls));
    expect(many.keys).toBeLessThan(1.03 * growth * few.keys);
  });

  it('calls no function that matters for every pair of files', () => {
    const matters = sumOf(many.calls) / 1_000;
    const steep = [...many.calls].filter(
      ([name, count]) => count > matters && count > 1.6 * growth * (few.calls.get(name) ?? 0),
    );
    expect(steep).toEqual([]);
  });
});
