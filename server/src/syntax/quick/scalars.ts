import { isAscii, isDigitCode, isLetterCode } from '../../base/ascii.ts';
import { span } from '../../base/span.ts';
import type { ScalarStyle, ScalarTree } from '../tree.ts';
import {
  BACKSLASH,
  COLON,
  COMMA,
  DASH,
  DOUBLE_QUOTE,
  isLineEnd,
  NUMBER_SIGN,
  type Scan,
  SINGLE_QUOTE,
  SPACE,
} from './scan.ts';

/** Text without quotes on the line of its key or dash, up to the end of the line or a comment. */
export function readPlain(scan: Scan): ScalarTree | undefined {
  if (!startsPlain(scan)) return undefined;
  let end = scan.at;
  for (let at = end; ; at++) {
    const code = scan.code(at);
    if (code === SPACE) {
      if (scan.code(at + 1) === NUMBER_SIGN) break;
      continue;
    }
    if (isLineEnd(code)) break;
    if (code === COLON && scan.isBlank(at + 1)) return undefined;
    end = at + 1;
  }
  return scalarTo(scan, end, 'plain');
}

/** Text without quotes between brackets, up to a comma or a bracket. */
export function readPlainInBrackets(scan: Scan): ScalarTree | undefined {
  if (!startsPlain(scan)) return undefined;
  let end = scan.at;
  for (let at = end; ; at++) {
    const code = scan.code(at);
    if (code === SPACE) {
      if (scan.code(at + 1) === NUMBER_SIGN) return undefined;
      continue;
    }
    if (isBracketSign(code)) break;
    if (isLineEnd(code)) return undefined;
    if (code === COLON && (scan.isBlank(at + 1) || isBracketSign(scan.code(at + 1)))) return undefined;
    end = at + 1;
  }
  return scalarTo(scan, end, 'plain');
}

/** Text in quotes, closed on its line. The only escape that is read is that of a quote. */
export function readQuoted(scan: Scan): ScalarTree | undefined {
  return scan.code(scan.at) === DOUBLE_QUOTE ? readDouble(scan) : readSingle(scan);
}

function readDouble(scan: Scan): ScalarTree | undefined {
  let escapes = 0;
  for (let at = scan.at + 1; ; at++) {
    const code = scan.code(at);
    if (code === DOUBLE_QUOTE) {
      const written = scan.text.slice(scan.at + 1, at);
      return scalarTo(scan, at + 1, 'double-quoted', escapes === 0 ? written : written.replaceAll('\\"', '"'));
    }
    if (isLineEnd(code)) return undefined;
    if (code !== BACKSLASH) continue;
    if (scan.code(at + 1) !== DOUBLE_QUOTE || scan.code(at - 1) === COLON) return undefined;
    escapes++;
    at++;
  }
}

function readSingle(scan: Scan): ScalarTree | undefined {
  let escapes = 0;
  for (let at = scan.at + 1; ; at++) {
    const code = scan.code(at);
    if (isLineEnd(code)) return undefined;
    if (code !== SINGLE_QUOTE) continue;
    if (scan.code(at + 1) !== SINGLE_QUOTE) {
      const written = scan.text.slice(scan.at + 1, at);
      return scalarTo(scan, at + 1, 'single-quoted', escapes === 0 ? written : written.replaceAll("''", "'"));
    }
    escapes++;
    at++;
  }
}

/**
 * A key and its colon; leaves the scan behind the colon. Only keys that no check of keys could doubt. Undefined, and the scan where it was,
 * when there is none.
 */
export function readKey(scan: Scan): ScalarTree | undefined {
  const start = scan.at;
  const key = isQuote(scan.code(start)) ? readQuoted(scan) : readWord(scan);
  const { at } = scan;
  const isKey = key !== undefined && scan.code(at) === COLON && scan.isBlank(at + 1);
  if (isKey && at - start <= scan.limits.keyLength && isCertain(key) && scan.countKey()) {
    scan.at = at + 1;
    return key;
  }
  scan.at = start;
  return undefined;
}

function isCertain(key: ScalarTree): boolean {
  return key.style === 'plain' || isAscii(key.text);
}

function readWord(scan: Scan): ScalarTree | undefined {
  if (scan.code(scan.at) === DASH) return undefined;
  let at = scan.at;
  while (isWordSign(scan.code(at))) at++;
  return at === scan.at ? undefined : scalarTo(scan, at, 'plain');
}

/** Letters, digits, `_` and `-`. */
function isWordSign(code: number): boolean {
  return isLetterCode(code) || code === 95 || code === DASH || isDigitCode(code);
}

function scalarTo(scan: Scan, end: number, style: ScalarStyle, meant?: string): ScalarTree | undefined {
  const start = scan.at;
  const text = meant ?? scan.text.slice(start, end);
  if (text.length > scan.limits.textLength) return undefined;
  scan.at = end;
  return { node: 'scalar', span: span(start, end), text, style };
}

export function isQuote(code: number): boolean {
  return code === DOUBLE_QUOTE || code === SINGLE_QUOTE;
}

/** `,` `[` `]` `{` `}` */
function isBracketSign(code: number): boolean {
  return code === COMMA || code === 91 || code === 93 || code === 123 || code === 125;
}

/** Whether text without quotes may start here. A dash may only as a minus in front of a digit. */
function startsPlain(scan: Scan): boolean {
  const code = scan.code(scan.at);
  if (code === DASH) return isDigitCode(scan.code(scan.at + 1));
  return !NEVER_FIRST.has(code);
}

/** Signs with a meaning of their own in front of a text, and line ends. */
const NEVER_FIRST: ReadonlySet<number> = new Set(Array.from('\n\r "\'#%&*,:>?@[]`{|}!', (sign) => sign.charCodeAt(0)));
