import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { Engine } from '../../../server/src/check/engine.ts';
import type { Language } from '../../../server/src/quantity/prose/token.ts';
import { allRules } from '../../../server/src/rules/all.generated.ts';
import { deviceOfRow } from '../../support/device-of-row.ts';
import { testDay } from '../../support/examples.ts';
import { heldOutEnglish, heldOutFrench, heldOutGerman } from '../prose/held-out.ts';
import { lateEnglish, lateFrench, lateGerman } from '../prose/held-out-2.ts';
import { truthOf } from '../prose/judge-pair.ts';
import { precision, recall, type Score } from '../prose/measure.ts';
import { germanRows } from '../prose/pairs-de.ts';
import { englishRows } from '../prose/pairs-en.ts';
import { moreEnglishRows } from '../prose/pairs-en-2.ts';
import { frenchRows } from '../prose/pairs-fr.ts';
import { moreFrenchRows, moreGermanRows } from '../prose/pairs-more.ts';
import type { Row } from '../prose/rows.ts';

/*
 * The table of quotes and fields once more, this time as device files through the reader, the model and the rules themselves: what a
 * person would see. A row may go wrong here where it does not in the reader of quotes: a field was gathered with the wrong statement.
 */

const groups: readonly (readonly [Language, readonly Row[]])[] = [
  ['en', [...englishRows, ...moreEnglishRows, ...heldOutEnglish, ...lateEnglish]],
  ['de', [...germanRows, ...moreGermanRows, ...heldOutGerman, ...lateGerman]],
  ['fr', [...frenchRows, ...moreFrenchRows, ...heldOutFrench, ...lateFrench]],
];
const level = { precision: 0.99, recall: 0.99 } as const;
const rowsAtLeast = 300;
/** Faults that the table knows: a finding of another rule (no way of sterilizing, say) is none of its business. */
const inTable: ReadonlySet<string> = new Set(groups.flatMap(([, rows]) => rows.flatMap((row) => truthOf(row))));

interface Outcome {
  readonly rows: number;
  readonly score: Score;
  readonly wrong: readonly string[];
  readonly unread: readonly string[];
}

function run(): Outcome {
  const score: Score = { hits: 0, extra: 0, missed: 0 };
  const wrong: string[] = [];
  const unread: string[] = [];
  let rows = 0;
  for (const [language, table] of groups) {
    for (const row of table) {
      const text = deviceOfRow(row, language);
      if (text === undefined) continue;
      rows++;
      const { found, problems } = findingsOf(text);
      unread.push(...problems);
      const truth = truthOf(row);
      if (found.join() !== truth.join()) wrong.push(`${text}   truth: ${truth.join()}\n   found: ${found.join()}`);
      count(score, truth, found);
    }
  }
  return { rows, score, wrong, unread };
}

function findingsOf(text: string): { readonly found: readonly string[]; readonly problems: readonly string[] } {
  const file = fileId('device.ifu.yaml');
  const engine = new Engine({ rules: allRules, today: testDay });
  engine.set(file, text);
  const names = engine.findings(file).map((finding) => finding.rule);
  const problems = engine.library.record(file)?.problems ?? [];
  return {
    found: names.filter((name) => inTable.has(name)).sort(),
    problems: problems.map((problem) => `${problem.rule}: ${problem.message}\n${text}`),
  };
}

function count(score: Score, truth: readonly string[], found: readonly string[]): void {
  const left = [...truth];
  for (const name of found) {
    const at = left.indexOf(name);
    if (at >= 0) left.splice(at, 1);
    score[at >= 0 ? 'hits' : 'extra']++;
  }
  score.missed += left.length;
}

describe('the quote table as device files', () => {
  const outcome = run();

  it('holds most rows of the table, each without a fault of form', () => {
    expect(outcome.rows).toBeGreaterThanOrEqual(rowsAtLeast);
    expect(outcome.unread).toEqual([]);
  });

  it('keeps the precision and recall of the reader of quotes', () => {
    expect(precision(outcome.score), outcome.wrong.join('\n')).toBeGreaterThanOrEqual(level.precision);
    expect(recall(outcome.score), outcome.wrong.join('\n')).toBeGreaterThanOrEqual(level.recall);
  });
});
