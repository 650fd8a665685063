import { describe, expect, it } from 'vitest';
import { heldOutEnglish, heldOutFrench, heldOutGerman } from './held-out.ts';
import { lateEnglish, lateFrench, lateGerman } from './held-out-2.ts';
import { type Measurement, measure, precision, recall } from './measure.ts';
import { germanRows } from './pairs-de.ts';
import { englishRows } from './pairs-en.ts';
import { moreEnglishRows } from './pairs-en-2.ts';
import { frenchRows } from './pairs-fr.ts';
import { moreFrenchRows, moreGermanRows } from './pairs-more.ts';

const tuned = measure([
  ['en', [...englishRows, ...moreEnglishRows]],
  ['de', [...germanRows, ...moreGermanRows]],
  ['fr', [...frenchRows, ...moreFrenchRows]],
]);
const heldOut = measure([
  ['en', heldOutEnglish],
  ['de', heldOutGerman],
  ['fr', heldOutFrench],
]);

const late = measure([
  ['en', lateEnglish],
  ['de', lateGerman],
  ['fr', lateFrench],
]);

/**
 * The level reached; it may rise, and a change that lowers it must be looked at, not written down. What an unseen table can expect is less:
 * when first measured, before anybody had read their failures, the held-out rows gave precision 0.79 and recall 0.90 (0.82 and 0.95 after
 * the tuning of the other tables), the late rows, written after that, 0.94 and 1.00.
 */
const level = { precision: 0.99, recall: 0.99 } as const;
const levelOfOneFault = 0.9;

function report(name: string, measurement: Measurement): string {
  const lines = [
    `${name}: precision ${precision(measurement.all).toFixed(3)}, recall ${recall(measurement.all).toFixed(3)}`,
  ];
  for (const [fault, score] of measurement.byFault) {
    lines.push(
      `  ${fault}: precision ${precision(score).toFixed(2)}, recall ${recall(score).toFixed(2)} (${score.hits})`,
    );
  }
  return [...lines, ...measurement.wrong].join('\n');
}

describe.each([
  ['tuned', tuned],
  ['held out', heldOut],
  ['late', late],
] as const)('quotes against fields, %s rows', (name, measurement) => {
  it('keeps its precision and recall', () => {
    expect(precision(measurement.all), report(name, measurement)).toBeGreaterThanOrEqual(level.precision);
    expect(recall(measurement.all), report(name, measurement)).toBeGreaterThanOrEqual(level.recall);
  });

  it.each([...measurement.byFault.keys()])('keeps precision and recall of %s', (fault) => {
    const score = measurement.byFault.get(fault) ?? { hits: 0, extra: 1, missed: 1 };
    expect(precision(score), report(name, measurement)).toBeGreaterThanOrEqual(levelOfOneFault);
    expect(recall(score), report(name, measurement)).toBeGreaterThanOrEqual(levelOfOneFault);
  });
});

describe('the table', () => {
  it('has at least 200 rows, about half of them right', () => {
    const rows = [englishRows, moreEnglishRows, germanRows, moreGermanRows, frenchRows, moreFrenchRows].flat();
    const all = [
      ...rows,
      ...heldOutEnglish,
      ...heldOutGerman,
      ...heldOutFrench,
      ...lateEnglish,
      ...lateGerman,
      ...lateFrench,
    ];
    const right = all.filter((row) => row[2] === 'right').length;
    expect(all.length).toBeGreaterThanOrEqual(200);
    expect(right / all.length).toBeGreaterThan(0.4);
    expect(right / all.length).toBeLessThan(0.6);
  });
});
