import { printable } from '../base/printable.ts';
import type { Palette } from './colour.ts';
import { cellsOf } from './display-width.ts';
import { harmlessLine } from './escape.ts';

/** A report as parts, so that a terminal and a Markdown page say the same. Texts may hold anything; rendering makes them harmless. */
export type Block =
  | { readonly is: 'heading'; readonly level: 1 | 2; readonly text: string }
  | { readonly is: 'text'; readonly text: string }
  | { readonly is: 'faint'; readonly text: string }
  | { readonly is: 'list'; readonly items: readonly string[] }
  | { readonly is: 'table'; readonly head: readonly string[]; readonly rows: readonly (readonly string[])[] };

export function textOfBlocks(blocks: readonly Block[], palette: Palette): string {
  const parts = blocks.map((block) => textLines(block, palette).map(harmlessLine).join('\n'));
  return `${parts.filter((part) => part !== '').join('\n\n')}\n`;
}

function textLines(block: Block, palette: Palette): readonly string[] {
  switch (block.is) {
    case 'heading':
      return [palette.place(printable(block.text))];
    case 'text':
      return [printable(block.text)];
    case 'faint':
      return [palette.faint(printable(block.text))];
    case 'list':
      return block.items.map((item) => `  - ${printable(item)}`);
    case 'table':
      return tableLines([block.head, ...block.rows]);
  }
}

function tableLines(rows: readonly (readonly string[])[]): readonly string[] {
  const cells = rows.map((row) => row.map(printable));
  const widths = (cells[0] ?? []).map((_, column) => Math.max(...cells.map((row) => widthOfText(row[column] ?? ''))));
  return cells.map((row) => `  ${row.map((cell, column) => padded(cell, widths[column] ?? 0)).join('  ')}`.trimEnd());
}

/** Columns that a text takes on a terminal. */
function widthOfText(text: string): number {
  return cellsOf(text).reduce((sum, { columns }) => sum + columns, 0);
}

function padded(cell: string, width: number): string {
  return `${cell}${' '.repeat(Math.max(0, width - widthOfText(cell)))}`;
}

export function markdownOfBlocks(blocks: readonly Block[]): string {
  return `${blocks
    .map(markdownOf)
    .filter((part) => part !== '')
    .join('\n\n')}\n`;
}

function markdownOf(block: Block): string {
  switch (block.is) {
    case 'heading':
      return `${'#'.repeat(block.level)} ${escaped(block.text)}`;
    case 'text':
      return escaped(block.text);
    case 'faint':
      return `> ${escaped(block.text)}`;
    case 'list':
      return block.items.map((item) => `- ${escaped(item)}`).join('\n');
    case 'table': {
      const line = (cells: readonly string[]) => `| ${cells.map(escaped).join(' | ')} |`;
      return [line(block.head), `| ${block.head.map(() => '---').join(' | ')} |`, ...block.rows.map(line)].join('\n');
    }
  }
}

/** Words of rule files never act as Markdown: no markup, no links, no raw pages. */
function escaped(text: string): string {
  return printable(text)
    .replace(/[\\`*_{}[\]<>|#~]/g, (character) => `\\${character}`)
    .replace(/^(\s*)([-+]|\d+[.)])(\s)/, '$1\\$2$3');
}
