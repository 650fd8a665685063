import { describe, expect, it } from 'vitest';
import type { Block } from '../../../server/src/report/blocks.ts';
import { markdownOfBlocks, textOfBlocks } from '../../../server/src/report/blocks.ts';
import { plainPalette } from '../../../server/src/report/colour.ts';

const blocks: readonly Block[] = [
  { is: 'heading', level: 1, text: 'Set A' },
  { is: 'list', items: ['one', '::error::two\u001b[31m'] },
  {
    is: 'table',
    head: ['What', 'Value'],
    rows: [
      ['dry', '30 min'],
      ['a|b', '<b>°C</b>'],
    ],
  },
  { is: 'faint', text: '[link](http://x) *bold*' },
];

describe('reports in parts', () => {
  it('line up on a terminal and send nothing that acts there', () => {
    expect(textOfBlocks(blocks, plainPalette)).toBe(
      'Set A\n\n  - one\n  - ::error::two\\u{1b}[31m\n\n  What  Value\n  dry   30 min\n  a|b   <b>°C</b>\n\n[link](http://x) *bold*\n',
    );
  });

  it('are Markdown in which words of rule files are only words', () => {
    expect(markdownOfBlocks(blocks)).toBe(
      '# Set A\n\n- one\n- ::error::two\\\\u\\{1b\\}\\[31m\n\n| What | Value |\n| --- | --- |\n| dry | 30 min |\n| a\\|b | \\<b\\>°C\\</b\\> |\n\n> \\[link\\](http://x) \\*bold\\*\n',
    );
  });
});
