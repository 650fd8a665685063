import { LineIndex } from '../base/line-index.ts';
import { printable } from '../base/printable.ts';
import type { CatalogueEntry } from '../check/catalogue.ts';
import type { MarkedFile } from '../rules/examples.ts';
import { readMarked } from '../rules/examples.ts';
import type { SourceTag, Stage } from '../rules/rule.ts';
import { stages } from '../rules/rule.ts';
import type { Palette } from './colour.ts';
import { snippetOf } from './snippet.ts';
import { settlerWords, waiverWords } from './words.ts';

/** Where a rule comes from, in words. */
export const sourceWords: Readonly<Record<SourceTag, string>> = {
  standard: 'a published standard, from memory: check the edition your department has adopted',
  guideline: 'a freely published guideline: check that it is current',
  practice: 'common practice, which differs between departments',
  logic: 'arithmetic, consistency or physics alone',
};

/** All there is to say about one rule, with its examples. Ends with a line end. */
export function explanation(entry: CatalogueEntry, palette: Palette): string {
  const lines = [
    `${palette.rule(entry.id)} (${palette.severity[entry.severity](entry.severity)})`,
    '',
    `  ${entry.why}`,
    '',
    `  Stage:             ${stages[entry.stage]}`,
    `  Who can settle it: ${settlerWords[entry.settledBy]}`,
    `  Comes from:        ${sourceWords[entry.source]}`,
    `  Waiver:            ${waiverWords(entry)}`,
  ];
  if (entry.fix !== undefined) lines.push(`  Offered fix:       ${entry.fix}`);
  for (const example of entry.examples.bad) lines.push('', '  Found in:', ...exampleLines(example, entry, palette));
  for (const example of entry.examples.good)
    lines.push('', '  Not found in:', ...exampleLines(example, entry, palette));
  return `${lines.join('\n')}\n`;
}

function exampleLines(example: string, entry: CatalogueEntry, palette: Palette): readonly string[] {
  const files = readMarked(example);
  return files.flatMap((file) => [
    ...(files.length > 1 ? [`    ${palette.faint(file.file)}`] : []),
    ...fileLines(file, entry, palette),
  ]);
}

function fileLines({ text, marks }: MarkedFile, entry: CatalogueEntry, palette: Palette): readonly string[] {
  const index = new LineIndex(text);
  const lines: string[] = [];
  for (const [number, line] of text.trimEnd().split('\n').entries()) {
    lines.push(`    ${palette.faint('|')} ${printable(line)}`);
    for (const mark of marks) {
      const at = index.position(mark.span.start);
      if (at.line !== number) continue;
      const { carets } = snippetOf(line, at.character, index.position(mark.span.end).character, 10_000);
      lines.push(
        `    ${palette.faint('|')} ${palette.severity[entry.severity](carets)}`,
        `      ${printable(mark.message)}`,
      );
    }
  }
  return lines;
}

/** Every rule under its stage of the work, in that order. Ends with a line end. */
export function ruleIndex(entries: readonly CatalogueEntry[], palette: Palette): string {
  const lines: string[] = [];
  const widest = Math.max(...entries.map(({ id }) => id.length));
  for (const stage of Object.keys(stages) as Stage[]) {
    const inStage = entries.filter((entry) => entry.stage === stage);
    if (inStage.length === 0) continue;
    lines.push(`${palette.place(stages[stage])} (${inStage.length})`);
    for (const { id, severity, why } of inStage) {
      lines.push(`  ${palette.severity[severity](severity.padEnd(7))} ${palette.rule(id.padEnd(widest))}  ${why}`);
    }
    lines.push('');
  }
  lines.push(`${entries.length} rules. "traywright explain RULE" explains one with examples.`);
  return `${lines.join('\n')}\n`;
}
