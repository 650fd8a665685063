import type { CST } from 'yaml';
import { span } from '../base/span.ts';
import type { Reading, Within } from './reading.ts';
import { columnOf, reindent } from './repairs.ts';
import type { ListTree, Tree } from './tree.ts';
import { walkTrivia } from './trivia.ts';

/** A list of lines that start with a dash. Items that stand in another column are reported and still read as items. */
export function composeSeq(reading: Reading, token: CST.BlockSequence): ListTree {
  const items: Tree[] = [];
  const within: Within = { indent: token.indent, flow: 'block', begins: 'after-dash' };
  let end = token.offset + 1;
  for (const { start, value } of token.items) {
    const { sign, marked } = walkTrivia(reading, start, 'seq-item-ind');
    if (sign === undefined && value === undefined && !marked) continue;
    if (sign === undefined && value !== undefined) {
      reportUneven(reading, token, value.offset);
      const tree = reading.compose(value, within);
      if (tree.node === 'list') items.push(...tree.items);
      else items.push(tree);
      end = Math.max(end, tree.span.end);
      continue;
    }
    const dashEnd = sign === undefined ? end : sign.offset + 1;
    const tree: Tree =
      value === undefined ? { node: 'empty', span: span(dashEnd, dashEnd) } : reading.compose(value, within);
    items.push(tree);
    end = Math.max(end, tree.span.end);
  }
  return { node: 'list', span: span(token.offset, end), items };
}

function reportUneven(reading: Reading, token: CST.BlockSequence, at: number): void {
  const columns = columnOf(reading.text, token.offset);
  const message = `This line starts in column ${columnOf(reading.text, at) + 1}, but the list it belongs to has its dashes in column ${columns + 1}. Line the dashes up.`;
  const fix = { title: 'Line the dash up with the others', edits: [reindent(reading.text, at, columns)] };
  reading.sink.report('uneven-indent', span(at, at + 1), message, reading.text[at] === '-' ? { fixes: [fix] } : {});
}
