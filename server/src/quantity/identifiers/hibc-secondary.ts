import type { IdentifierDate, IdentifierFault, Production } from './identifier.ts';
import { dateOf, dateOfDayInYear, fullYear } from './identifier-date.ts';

/** What the secondary code adds. Layouts from the HIBC supplier labelling rule, from memory; `$$4` and `$$5` checked against samples. */
export interface HibcSecondary extends Production {
  readonly quantity?: number;
}

/** A date layout after `$$`: the digits' meaning, `H` for an hour that is read over, `J` for the day of the year. */
const layouts: ReadonlyMap<string, string> = new Map([
  ['2', 'MMDDYY'],
  ['3', 'YYMMDD'],
  ['4', 'YYMMDDHH'],
  ['5', 'YYJJJ'],
  ['6', 'YYJJJHH'],
  ['7', ''],
]);

/** Reads the parts between slashes: the lot and expiry first, then `S` serial, `14D` expiry, `16D` made, `Q` quantity. */
export function readHibcSecondary(parts: readonly string[], currentYear: number): HibcSecondary | IdentifierFault {
  let all: HibcSecondary = {};
  for (const part of parts) {
    const read = readPart(part, currentYear);
    if ('fault' in read) return read;
    for (const key of Object.keys(read)) if (key in all) return { fault: 'field-twice', field: key };
    all = { ...all, ...read };
  }
  return all;
}

function readPart(part: string, currentYear: number): HibcSecondary | IdentifierFault {
  if (part.startsWith('$$+')) return readDated(part.slice(3), 'serial', currentYear);
  if (part.startsWith('$$')) return readDated(part.slice(2), 'lot', currentYear);
  if (part.startsWith('$+')) return named('serial', part.slice(2));
  if (part.startsWith('$')) return named('lot', part.slice(1));
  if (part.startsWith('14D')) return withLongDate('expires', '14D', part.slice(3));
  if (part.startsWith('16D')) return withLongDate('made', '16D', part.slice(3));
  if (part.startsWith('S')) return named('serial', part.slice(1));
  if (part.startsWith('Q')) return withQuantity(part.slice(1), part.length - 1);
  if (/^[0-9]{5}/.test(part)) return readDated(`5${part}`, 'lot', currentYear);
  return { fault: 'field-unknown', field: part.slice(0, 4) };
}

type Name = 'lot' | 'serial';

function named(name: Name, text: string): HibcSecondary | IdentifierFault {
  if (text.length > 18) return { fault: 'length', field: name, found: text.length, allowed: '0 to 18' };
  return text === '' ? {} : { [name]: text };
}

/** After `$$`: an optional quantity (`8` and 2 digits, `9` and 5), a date in one of the layouts, then lot or serial. */
function readDated(text: string, name: Name, currentYear: number): HibcSecondary | IdentifierFault {
  const digits = text.startsWith('8') ? 2 : text.startsWith('9') ? 5 : 0;
  if (digits > 0) {
    const quantity = withQuantity(text.slice(1, 1 + digits), digits);
    const rest = readDated(text.slice(1 + digits), name, currentYear);
    return 'fault' in quantity ? quantity : 'fault' in rest ? rest : { ...rest, ...quantity };
  }
  const layout = layouts.get(text.charAt(0)) ?? 'MMYY';
  const start = layout === 'MMYY' ? 0 : 1;
  const written = text.slice(start, start + layout.length);
  const rest = named(name, text.slice(start + layout.length));
  if (layout === '' || text === '' || 'fault' in rest) return rest;
  const expires = readLayout(written, layout, currentYear);
  return expires === undefined
    ? { fault: 'date-impossible', field: 'expiry date', found: written }
    : { expires, ...rest };
}

function withQuantity(text: string, digits: number): HibcSecondary | IdentifierFault {
  if (text.length === digits && digits > 0 && digits <= 5 && /^[0-9]+$/.test(text)) return { quantity: Number(text) };
  return { fault: 'length', field: 'quantity', found: text.length, allowed: 'digits only, 1 to 5' };
}

function withLongDate(name: 'made' | 'expires', mark: string, text: string): HibcSecondary | IdentifierFault {
  const date = /^[0-9]{8}$/.test(text)
    ? dateOf(Number(text.slice(0, 4)), Number(text.slice(4, 6)), Number(text.slice(6, 8)))
    : undefined;
  return date === undefined ? { fault: 'date-impossible', field: mark, found: text.slice(0, 12) } : { [name]: date };
}

function readLayout(written: string, layout: string, currentYear: number): IdentifierDate | undefined {
  if (written.length !== layout.length || !/^[0-9]+$/.test(written)) return undefined;
  const part = (letter: string): number => {
    const start = layout.indexOf(letter);
    return start === -1 ? 0 : Number(written.slice(start, layout.lastIndexOf(letter) + 1));
  };
  const year = fullYear(part('Y'), currentYear);
  if (layout.includes('H') && part('H') > 24) return undefined;
  return layout.includes('J') ? dateOfDayInYear(year, part('J')) : dateOf(year, part('M'), part('D'));
}
