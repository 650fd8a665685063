import type { Paper } from '../print/paper.ts';
import { paperHtml } from '../print/paper.ts';
import type { Part } from '../print/paper-part.ts';
import { defaultPaper, paperSizes } from '../print/paper-size.ts';
import { plain } from '../print/piece.ts';
import type { Block } from '../report/blocks.ts';
import { textOfBlocks } from '../report/blocks.ts';
import type { Arguments } from './arguments.ts';
import { paletteFor } from './colours.ts';
import type { CommandIo } from './io.ts';

/** Prints a page on the output as the command line asks: text, or HTML on the given sheet. */
export function writePaper(paper: Paper, io: CommandIo, given: Arguments): void {
  if (given.values.get('format') === 'html') {
    io.stdout.write(paperHtml(paper, paperSizes[given.values.get('paper') ?? 'a4'] ?? defaultPaper));
    return;
  }
  io.stdout.write(textOfBlocks(paper.parts.flatMap(blocksOf), paletteFor(io, given)));
}

/** The same content for a terminal. Drawings and lines to write on have no place there. */
function blocksOf(part: Part): readonly Block[] {
  switch (part.is) {
    case 'heading':
      return [{ is: 'heading', level: part.level === 1 ? 1 : 2, text: plain(part.line) }];
    case 'verdict':
      return [
        { is: 'heading', level: 1, text: plain(part.line) },
        ...part.under.map((line): Block => ({ is: 'text', text: plain(line) })),
      ];
    case 'text':
      return [{ is: 'text', text: plain(part.line) }];
    case 'small':
      return [{ is: 'faint', text: plain(part.line) }];
    case 'contents':
      return [{ is: 'list', items: part.items.map(({ line }) => plain(line)) }];
    case 'cautions':
      return part.items.map((item) => ({ is: 'faint', text: plain(item) }));
    case 'list':
    case 'choices':
      return [{ is: 'list', items: part.items.map(plain) }];
    case 'numbered':
      return [{ is: 'list', items: part.items.map((item, index) => `${index + 1}. ${plain(item)}`) }];
    case 'table':
      return part.rows.length === 0
        ? []
        : [{ is: 'table', head: part.head, rows: part.rows.map((row) => row.map(plain)) }];
    case 'quote': {
      const cited = plain(part.citation);
      return [{ is: 'text', text: `“${plain(part.quote)}”${cited === '' ? '' : ` (${cited})`}` }];
    }
    case 'figure':
    case 'blank':
    case 'new-page':
      return [];
  }
}

/** The day that stands on paper: the one that was asked for, else the clock's, also where a library is checked as of another day. */
export function printedOn(io: CommandIo, { values }: Arguments): string {
  return values.get('today') ?? io.today();
}
