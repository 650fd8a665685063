import { span } from '../../base/span.ts';
import type { ListTree, MapTree, Tree } from '../tree.ts';
import { Entries } from './entries.ts';
import { isQuote, readKey, readPlainInBrackets, readQuoted } from './scalars.ts';
import { COMMA, type Scan } from './scan.ts';

const OPEN_LIST = 91;
const CLOSE_LIST = 93;
const OPEN_MAP = 123;
const CLOSE_MAP = 125;

export function isBracket(code: number): boolean {
  return code === OPEN_MAP || code === OPEN_LIST;
}

/** `{key: value}` or `[a, b]`, all on one line, with a value for each key and no comma at the end. */
export function readBrackets(scan: Scan): ListTree | MapTree | undefined {
  if (!scan.enter()) return undefined;
  const tree = scan.code(scan.at) === OPEN_MAP ? readMap(scan) : readList(scan);
  scan.leave();
  return tree;
}

function readMap(scan: Scan): MapTree | undefined {
  const start = scan.at;
  const entries = new Entries();
  open(scan);
  if (!closed(scan, CLOSE_MAP)) {
    do {
      const key = readKey(scan);
      scan.skipSpaces();
      const value = key === undefined ? undefined : readItem(scan);
      if (key === undefined || value === undefined || !entries.add(key, value)) return undefined;
    } while (comma(scan));
    if (!closed(scan, CLOSE_MAP)) return undefined;
  }
  return { node: 'map', span: span(start, scan.at), entries: entries.list };
}

function readList(scan: Scan): ListTree | undefined {
  const start = scan.at;
  const items: Tree[] = [];
  open(scan);
  if (!closed(scan, CLOSE_LIST)) {
    do {
      const item = readItem(scan);
      if (item === undefined) return undefined;
      items.push(item);
    } while (comma(scan));
    if (!closed(scan, CLOSE_LIST)) return undefined;
  }
  return { node: 'list', span: span(start, scan.at), items };
}

function readItem(scan: Scan): Tree | undefined {
  const code = scan.code(scan.at);
  if (isQuote(code)) return readQuoted(scan);
  return isBracket(code) ? readBrackets(scan) : readPlainInBrackets(scan);
}

function open(scan: Scan): void {
  scan.at++;
  scan.skipSpaces();
}

function closed(scan: Scan, sign: number): boolean {
  if (scan.code(scan.at) !== sign) return false;
  scan.at++;
  return true;
}

/** Steps over a comma, when there is one, to what follows it. */
function comma(scan: Scan): boolean {
  scan.skipSpaces();
  if (scan.code(scan.at) !== COMMA) return false;
  open(scan);
  return true;
}
