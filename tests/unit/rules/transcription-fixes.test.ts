import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { Engine } from '../../../server/src/check/engine.ts';
import { allRules } from '../../../server/src/rules/all.generated.ts';
import { readMarked } from '../../../server/src/rules/examples.ts';
import type { AnyRule } from '../../../server/src/rules/rule.ts';
import { applyEdits } from '../../../server/src/syntax/edits.ts';
import { testDay } from '../../support/examples.ts';
import { takeExample } from '../../support/kept-example.ts';

const sourceRules = allRules.filter((rule) => rule.stage === 'source');

interface FixRun {
  readonly title: string;
  readonly text: string;
  readonly problems: readonly string[];
  readonly before: number;
  readonly after: number;
}

/** Every fix that the bad examples of a rule are offered, applied one at a time. */
function fixRuns(rule: AnyRule): readonly FixRun[] {
  const runs: FixRun[] = [];
  for (const example of rule.examples.bad) {
    const files = readMarked(example);
    const engine = new Engine({ rules: [rule], today: testDay });
    for (const { file, text } of files) takeExample(engine, file, text);
    for (const { file, text } of files) {
      const findings = engine.findings(file);
      for (const fix of findings.flatMap((finding) => finding.fixes)) {
        const applied = applyEdits(text, fix.edits);
        if (!('text' in applied)) throw new Error(`${fix.title}: ${applied.refused}`);
        engine.set(file, applied.text);
        const problems = engine.library.record(file)?.problems.map((problem) => problem.message) ?? [];
        runs.push({
          title: fix.title,
          text: applied.text,
          problems,
          before: findings.length,
          after: engine.findings(file).length - problems.length,
        });
        engine.set(file, text);
      }
    }
  }
  return runs;
}

describe.each(sourceRules.filter((rule) => rule.fix !== undefined).map((rule) => [rule.id, rule] as const))(
  'fixes of %s',
  (id, rule) => {
    it('are offered, leave the file in order and take the finding away', () => {
      const runs = fixRuns(rule);
      expect(runs.length).toBeGreaterThan(0);
      for (const { title, text, problems, before, after } of runs) {
        // The reason why a number is not needed is for the writer: the file is not in order before it is there.
        if (!asksForReason.has(id)) expect(problems, `${title}\n${text}`).toEqual([]);
        else expect(problems.length, `${title}\n${text}`).toBeGreaterThan(0);
        expect(after, `${title}\n${text}`).toBeLessThan(before);
      }
    });
  },
);

const asksForReason: ReadonlySet<string> = new Set(['quote-number-not-encoded', 'passage-not-encoded']);

describe('words underlined in a quote', () => {
  const underlined = (quote: string) => {
    const text = `kind: device\nid: pale-probe\nstatements:\n  s1:\n    doc: PP-1\n    page: 2\n    quote: ${quote}\ndrying: {temp: {stated: 60 C}, src: s1}\n`;
    const engine = new Engine({ rules: sourceRules, today: testDay });
    const file = fileId('device.ifu.yaml');
    engine.set(file, text);
    const finding = engine.findings(file).find(({ rule }) => rule === 'quote-number-not-encoded');
    return text.slice(finding?.span.start, finding?.span.end);
  };

  it.each([
    ['a bare quote', 'Dry at 60 °C for 20 minutes', '20 minutes'],
    ['a quote in double quotation marks', '"Dry at 60 °C for 20 minutes, then wait"', '20 minutes'],
    ['a quote in single quotation marks', "'Dry at 60 °C for 20 minutes: no longer'", '20 minutes'],
    [
      'the whole where there is an escape',
      '"Dry at \\"low\\" 60 °C for 20 minutes"',
      '"Dry at \\"low\\" 60 °C for 20 minutes"',
    ],
    [
      'the whole where a quotation mark is doubled',
      "'The probe''s tip: 60 °C for 20 minutes'",
      "'The probe''s tip: 60 °C for 20 minutes'",
    ],
    ['the whole where lines are folded', 'Dry at 60 °C\n      for 20 minutes', 'Dry at 60 °C\n      for 20 minutes'],
  ])('%s', (_, quote, words) => {
    expect(underlined(quote)).toBe(words);
  });
});
