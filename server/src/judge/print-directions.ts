import { categoryRows } from './categories.ts';
import type { Cell, NumberRow } from './direction-row.ts';
import { numberRows, wordCells } from './directions.ts';

/** The whole direction table as plain text, one block a parameter, for people to read and check. */
export function printDirections(): string {
  const lines = ['NUMBERS', ''];
  for (const row of numberRows) lines.push(...printNumberRow(row), '');
  lines.push('NOT NUMBERS', '');
  for (const row of Object.values(categoryRows)) {
    lines.push(`${row.title} (${row.parameter}; from ${row.source})`);
    for (const [which, cell] of Object.entries(row.cases)) lines.push(printCell(which, cell as Cell));
    lines.push('');
  }
  lines.push('WORDS THAT ARE NO NUMBER, AND OTHER ANSWERS OF EVERY ROW', '');
  for (const [which, cell] of Object.entries(wordCells)) lines.push(printCell(which, cell));
  return `${lines.join('\n')}\n`;
}

function printNumberRow(row: NumberRow): readonly string[] {
  const far = row.farAboveLowest;
  const cells: readonly (readonly [string, Cell | undefined])[] = [
    ['at least X, ours less', row.belowLowest],
    ['at least X, ours more', row.aboveLowest],
    [`at least X, ours over ${far?.times ?? ''} X`, far],
    ['at most X, ours less', row.belowHighest],
    ['at most X, ours more', row.aboveHighest],
    ['between X and Y, ours less', row.belowLowest],
    ['between X and Y, ours more', row.aboveHighest],
    ['exactly X, ours less', row.belowLowest],
    ['exactly X, ours more', row.aboveExactly ?? row.aboveHighest],
    ['bare X, ours less', row.belowBare],
    ['bare X, ours more', row.aboveBare],
    ['bare X = minimum, ours more', row.aboveBareMinimum],
    ['about X, ours less', row.belowAbout],
    ['about X, ours more', row.aboveAbout],
    ['silent', row.silent],
  ];
  const lines = [`${row.title} (${row.parameter}; from ${row.source})`];
  for (const [which, cell] of cells) if (cell !== undefined) lines.push(printCell(which, cell));
  return lines;
}

function printCell(which: string, cell: Cell): string {
  const who = cell.outcome === 'meets' ? '' : ` [${cell.settledBy}]`;
  return `  ${which.padEnd(30)} ${cell.outcome.padEnd(16)} ${cell.because}${who}`;
}
