import { span } from '../../base/span.ts';
import type { ListTree, MapEntry, MapTree, ScalarTree, Tree } from '../tree.ts';
import { isBracket, readBrackets } from './brackets.ts';
import { Entries } from './entries.ts';
import { isQuote, readKey, readPlain, readQuoted } from './scalars.ts';
import { isLineEnd, NUMBER_SIGN, type Scan } from './scan.ts';
import { isTextBlock, readTextBlock } from './text-blocks.ts';

/** Keys one below the other, or lines with dashes, the first of which stands at the scan. Ends at a line in another column. */
export function readLines(scan: Scan): Tree | undefined {
  if (scan.isDash()) return readDashes(scan);
  const { column } = scan;
  const key = readKey(scan);
  return key === undefined ? undefined : readKeys(scan, key, column);
}

/** Keys in `column`, the first of which is read already. */
function readKeys(scan: Scan, first: ScalarTree, column: number): MapTree | undefined {
  if (!scan.enter()) return undefined;
  const entries = new Entries();
  let key: ScalarTree | undefined = first;
  let end: number;
  do {
    const value = key === undefined ? undefined : readValue(scan, column, 'key');
    if (key === undefined || value === undefined || !entries.add(key, value)) return undefined;
    end = value.span.end;
    key = scan.column === column ? readKey(scan) : undefined;
  } while (scan.column === column);
  scan.leave();
  return { node: 'map', span: span(first.span.start, end), entries: entries.list };
}

/** One key in `column`, with its value. Ends at the next line that says something. */
export function readEntry(scan: Scan, column: number): MapEntry | undefined {
  const key = readKey(scan);
  const value = key === undefined ? undefined : readValue(scan, column, 'key');
  return key === undefined || value === undefined ? undefined : { key, value };
}

/** Lines that start with a dash in one column. */
function readDashes(scan: Scan): ListTree | undefined {
  if (!scan.enter()) return undefined;
  const { at: start, column } = scan;
  const items: Tree[] = [];
  let end = start;
  do {
    scan.at++;
    const item = readValue(scan, column, 'dash');
    if (item === undefined) return undefined;
    items.push(item);
    end = item.span.end;
  } while (scan.column === column && scan.isDash());
  scan.leave();
  return { node: 'list', span: span(start, end), items };
}

/** What stands behind a colon or a dash, to the next line after it. `column`: that of the key or the dash. */
function readValue(scan: Scan, column: number, behind: 'key' | 'dash'): Tree | undefined {
  const sign = scan.at;
  scan.skipSpaces();
  const code = scan.code(scan.at);
  if (code !== NUMBER_SIGN && !isLineEnd(code))
    return behind === 'key' ? readOnLine(scan, column) : readItem(scan, column, column + 1 + scan.at - sign);
  if (!scan.nextLine()) return undefined;
  const isBelow = scan.column > column || (behind === 'key' && scan.column === column && scan.isDash());
  return isBelow ? readLines(scan) : { node: 'empty', span: span(sign, sign) };
}

/** What stands behind a dash on its line, in `column`: keys and further dashes go on below it. */
function readItem(scan: Scan, dashColumn: number, column: number): Tree | undefined {
  scan.column = column;
  if (scan.isDash()) return readDashes(scan);
  const key = readKey(scan);
  return key === undefined ? readOnLine(scan, dashColumn) : readKeys(scan, key, column);
}

function readOnLine(scan: Scan, column: number): Tree | undefined {
  const code = scan.code(scan.at);
  if (isTextBlock(code)) {
    const block = readTextBlock(scan, column);
    scan.toContent();
    return block;
  }
  const value = isQuote(code) ? readQuoted(scan) : isBracket(code) ? readBrackets(scan) : readPlain(scan);
  return value !== undefined && scan.nextLine() ? value : undefined;
}
