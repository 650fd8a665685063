import { firstNonHibc, hibcCheckCharacter } from './hibc-check.ts';
import { type HibcSecondary, readHibcSecondary } from './hibc-secondary.ts';
import type { IdentifierFault, Production } from './identifier.ts';

/** The labeller, its product number and the unit of measure (0-9; 0 is the single item). */
export interface HibcPrimary {
  readonly labeler: string;
  readonly product: string;
  readonly unitOfMeasure: number;
}

export interface HibcUdi extends Production {
  readonly agency: 'HIBCC';
  /** `+`, labeller, product, unit of measure; without check character. Missing when only the secondary code was given. */
  readonly di?: string;
  readonly primary?: HibcPrimary;
  /** A secondary code printed apart ends in the check character of its primary code before its own. */
  readonly link?: string;
  readonly quantity?: number;
}

const longestText = 200;

/** A HIBC code with its check character, with or without asterisks: primary, secondary, or both joined by `/`. */
export function readHibc(text: string, currentYear: number): HibcUdi | IdentifierFault {
  if (text.length > longestText) return { fault: 'too-long', length: text.length, most: longestText };
  const starred = text.trim();
  const code = starred.startsWith('*') && starred.endsWith('*') ? starred.slice(1, -1) : text.trimStart();
  if (code === '') return { fault: 'empty' };
  if (!code.startsWith('+')) return { fault: 'agency-unknown' };
  const wrong = firstNonHibc(code);
  if (wrong !== -1) return { fault: 'character', found: code.charAt(wrong), field: 'HIBC code' };
  const data = code.slice(0, -1);
  const expected = hibcCheckCharacter(data) ?? '';
  if (expected !== code.slice(-1)) return { fault: 'check-character', found: code.slice(-1), expected };
  return startsSecondary(data) ? readApart(data, currentYear) : readJoined(data, currentYear);
}

/** A secondary code starts with `+$` or, in the oldest form, with the digits of a date. */
function startsSecondary(data: string): boolean {
  const first = data.charAt(1);
  return first === '$' || (first >= '0' && first <= '9');
}

function readApart(data: string, currentYear: number): HibcUdi | IdentifierFault {
  const secondary = readHibcSecondary(data.slice(1, -1).split('/'), currentYear);
  return 'fault' in secondary ? secondary : { agency: 'HIBCC', link: data.slice(-1), ...secondary };
}

function readJoined(data: string, currentYear: number): HibcUdi | IdentifierFault {
  const [head = '', ...rest] = data.split('/');
  const primary = readPrimary(head);
  if ('fault' in primary) return primary;
  const secondary: HibcSecondary | IdentifierFault = rest.length === 0 ? {} : readHibcSecondary(rest, currentYear);
  return 'fault' in secondary ? secondary : { agency: 'HIBCC', di: head, primary, ...secondary };
}

/** `+`, four of labeller (a letter first), 1 to 18 of product, one digit of unit of measure. */
function readPrimary(head: string): HibcPrimary | IdentifierFault {
  const body = head.slice(1);
  if (body.length < 6 || body.length > 23) {
    return { fault: 'length', field: 'primary code', found: body.length, allowed: '6 to 23' };
  }
  const wrong = /[^0-9A-Z]/.exec(body);
  if (wrong !== null) return { fault: 'character', found: wrong[0], field: 'primary code' };
  const unit = body.slice(-1);
  if (!/^[A-Z]/.test(body)) return { fault: 'character', found: body.charAt(0), field: 'labeller' };
  if (!/^[0-9]$/.test(unit)) return { fault: 'character', found: unit, field: 'unit of measure' };
  return { labeler: body.slice(0, 4), product: body.slice(4, -1), unitOfMeasure: Number(unit) };
}
