import { span } from '../../base/span.ts';
import type { ScalarTree } from '../tree.ts';
import { DASH, isLineEnd, type Scan } from './scan.ts';

const LITERAL = 124;
const FOLDED = 62;

export function isTextBlock(code: number): boolean {
  return code === LITERAL || code === FOLDED;
}

/**
 * `|` or `>`, with `-` or alone, and the lines below it. The first has text and is indented further than `column`, that of the key or the
 * dash in front; in a folded block all are indented alike. Leaves the scan at the start of the line behind the block.
 */
export function readTextBlock(scan: Scan, column: number): ScalarTree | undefined {
  const start = scan.at;
  const isFolded = scan.code(start) === FOLDED;
  const headerEnd = scan.code(start + 1) === DASH ? start + 2 : start + 1;
  if (!isLineEnd(scan.code(headerEnd))) return undefined;
  const lines = readBlockLines(scan, scan.lineAfter(headerEnd), column, isFolded ? 'even' : 'any');
  if (lines === undefined || (isFolded && lines.some(mayBeRow))) return undefined;
  const joined = lines.join('\n');
  const meant = isFolded ? joined.replace(/\n+/g, (feeds) => (feeds.length === 1 ? ' ' : feeds.slice(1))) : joined;
  const text = headerEnd === start + 1 ? `${meant}\n` : meant;
  if (text.length > scan.limits.textLength) return undefined;
  return { node: 'scalar', span: span(start, scan.at), text, style: 'block' };
}

/** The lines from offset `first` on without their indent, blank ones at the end left out. Leaves the scan behind the last. */
function readBlockLines(scan: Scan, first: number, column: number, indents: 'even' | 'any'): string[] | undefined {
  const indent = scan.spacesAt(first);
  if (indent <= column || isLineEnd(scan.code(first + indent))) return undefined;
  const lines: string[] = [];
  let filled = 0;
  for (let line = first; line < scan.text.length; line = scan.lineAfter(line)) {
    const own = scan.spacesAt(line);
    const isBlank = isLineEnd(scan.code(line + own));
    if (isBlank ? own > 0 : own > indent && indents === 'even') return undefined;
    if (!isBlank && own < indent) break;
    lines.push(scan.text.slice(line + indent, scan.lineEnd(line)));
    if (isBlank) continue;
    filled = lines.length;
    scan.at = scan.lineAfter(line);
  }
  lines.length = filled;
  return lines;
}

/** A line that may belong to a table, which nobody wants folded. */
function mayBeRow(line: string): boolean {
  return line.includes('   ') || line.includes(' | ');
}
