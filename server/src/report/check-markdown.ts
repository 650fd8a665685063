import type { Block } from './blocks.ts';
import { markdownOfBlocks } from './blocks.ts';
import type { Palette } from './colour.ts';
import type { CheckReport } from './model.ts';
import { pathShown } from './model.ts';
import { summaryLines } from './summary.ts';
import { counted, settlerWords } from './words.ts';
import { worstFirst } from './worst-first.ts';

/** As many as a page for a pull request bears. */
const most = 40;

/** A short page: counts, the gravest findings, coverage, what was kept back, and the cautions. `plain` is a palette without colours. */
export function checkMarkdown(report: CheckReport, plain: Palette): string {
  const all = worstFirst(report);
  const [headline = '', ...rest] = summaryLines(report, plain);
  const blocks: Block[] = [
    { is: 'heading', level: 2, text: 'Traywright' },
    { is: 'text', text: headline },
  ];
  if (all.length > 0) blocks.push(tableOf(report));
  if (all.length > most)
    blocks.push({
      is: 'text',
      text: `${counted(all.length - most, 'more finding')} not shown; none is graver than the last one above.`,
    });
  blocks.push(...rest.map((text): Block => ({ is: 'faint', text })));
  return markdownOfBlocks(blocks);
}

function tableOf(report: CheckReport): Block {
  const rows = worstFirst(report)
    .slice(0, most)
    .map(({ placed: { finding, at }, library }) => [
      finding.severity,
      `${pathShown(library, at.file)}:${at.start.line + 1}`,
      finding.rule,
      short(finding.message),
      settlerWords[finding.settledBy],
    ]);
  return { is: 'table', head: ['Weight', 'Where', 'Finding', 'What', 'Who can settle it'], rows };
}

function short(words: string): string {
  return words.length > 240 ? `${words.slice(0, 240)}…` : words;
}
