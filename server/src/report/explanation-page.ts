import { LineIndex } from '../base/line-index.ts';
import { printable } from '../base/printable.ts';
import type { CatalogueEntry } from '../check/catalogue.ts';
import type { MarkedFile } from '../rules/examples.ts';
import { readMarked } from '../rules/examples.ts';
import type { Stage } from '../rules/rule.ts';
import { stages } from '../rules/rule.ts';
import { sourceWords } from './explanation.ts';
import { cautions, settlerWords, waiverWords } from './words.ts';

const severityWords = {
  error: 'error: must be settled',
  warning: 'warning: counted, and needs an owner',
  advice: 'advice: never fails a check',
} as const;

/** All there is to say about one rule, as a Markdown page that needs no network. Ends with a line end. */
export function explanationPage(entry: CatalogueEntry): string {
  const lines = [
    `# ${entry.id}`,
    '',
    entry.why,
    '',
    `- **Stage:** ${stages[entry.stage]}`,
    `- **Weight:** ${severityWords[entry.severity]}`,
    `- **Who can settle it:** ${settlerWords[entry.settledBy]}`,
    `- **Comes from:** ${sourceWords[entry.source]}`,
    `- **Waiver:** ${waiverWords(entry)}`,
  ];
  if (entry.fix !== undefined) lines.push(`- **Offered fix:** ${entry.fix}`);
  lines.push(...examples('Found in', entry.examples.bad), ...examples('Not found in', entry.examples.good));
  lines.push('', '---', '', ...cautions.map((caution) => `_${caution}_  `));
  return `${lines.join('\n')}\n`;
}

/** The index of all pages, under the stages of the work in their order. `pageOf` gives the address of a page. Ends with a line end. */
export function explanationIndex(entries: readonly CatalogueEntry[], pageOf: (id: string) => string): string {
  const lines = ['# Everything that can be found', '', `${entries.length} findings, by stage of the work.`];
  for (const stage of Object.keys(stages) as Stage[]) {
    const inStage = entries.filter((entry) => entry.stage === stage);
    if (inStage.length === 0) continue;
    lines.push('', `## ${stages[stage]}`, '', '| Finding | Weight | Why it matters |', '|---|---|---|');
    for (const { id, severity, why } of inStage) {
      lines.push(`| [${id}](${pageOf(id)}) | ${severity} | ${why.replaceAll('|', '\\|')} |`);
    }
  }
  lines.push('', '---', '', ...cautions.map((caution) => `_${caution}_  `));
  return `${lines.join('\n')}\n`;
}

function examples(heading: string, marked: readonly string[]): readonly string[] {
  return marked.flatMap((example) => ['', `## ${heading}`, ...readMarked(example).flatMap(exampleLines)]);
}

/** The file as written, with the marked words and the message under them as comments. */
function exampleLines({ file, text, marks }: MarkedFile): readonly string[] {
  const index = new LineIndex(text);
  const lines = ['', `\`${printable(file)}\``, '', '````yaml'];
  for (const [number, line] of text.trimEnd().split('\n').entries()) {
    lines.push(printable(line));
    for (const { span, message } of marks) {
      const { line: at, character } = index.position(span.start);
      if (at !== number) continue;
      const carets = '^'.repeat(Math.max(1, span.end - span.start));
      lines.push(`#${' '.repeat(Math.max(0, character - 1))}${carets} ${printable(message)}`);
    }
  }
  return [...lines, '````'];
}
