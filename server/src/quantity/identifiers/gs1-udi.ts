import { type Gs1Field, gs1Field, gs1FieldAt } from './gs1-fields.ts';
import { checkDigitFault, firstNonDigit } from './gtin.ts';
import type { IdentifierDate, IdentifierFault, Production } from './identifier.ts';
import { dateOf, fullYear } from './identifier-date.ts';

/** One field as found, in order. */
export interface Gs1Element {
  readonly ai: string;
  readonly data: string;
}

export interface Gs1Udi extends Production {
  readonly agency: 'GS1';
  /** The 14 digits of field (01). */
  readonly di: string;
  readonly elements: readonly Gs1Element[];
}

const longestText = 400;
const separator = '\u001d';

/**
 * A GS1 element string: printed, `(01)51022222233336(17)150707`, or as scanned, without parentheses, where a group separator (as the
 * character, or spelled `<GS>` or `<FNC1>`) ends a field of variable length. `currentYear` settles the century of two-digit years.
 */
export function readGs1Udi(text: string, currentYear: number): Gs1Udi | IdentifierFault {
  if (text.length > longestText) return { fault: 'too-long', length: text.length, most: longestText };
  const elements = gs1Elements(text);
  return 'fault' in elements ? elements : assemble(elements, currentYear);
}

/** The fields of an element string, lengths checked, meanings not. */
export function gs1Elements(text: string): readonly Gs1Element[] | IdentifierFault {
  const trimmed = text.trim();
  if (trimmed === '') return { fault: 'empty' };
  return trimmed.startsWith('(') ? printedElements(trimmed) : scannedElements(withoutSymbology(trimmed));
}

/** Scanners put `]C1`, `]d2`, `]Q3` in front, and a separator at the start. */
function withoutSymbology(text: string): string {
  const plain = text.replaceAll('<GS>', separator).replaceAll('<FNC1>', separator);
  const data = plain.startsWith(']') ? plain.slice(3) : plain;
  return data.startsWith(separator) ? data.slice(1) : data;
}

function printedElements(text: string): readonly Gs1Element[] | IdentifierFault {
  const elements: Gs1Element[] = [];
  let at = 0;
  while (at < text.length) {
    const close = text.indexOf(')', at);
    const ai = close === -1 ? '' : text.slice(at + 1, close);
    const field = gs1Field(ai);
    if (field === undefined) return { fault: 'field-unknown', field: text.slice(at, at + 8) };
    const end = nextPrintedField(text, close + 1);
    const data = text.slice(close + 1, end).trim();
    const fault = lengthFault(field, data);
    if (fault !== undefined) return fault;
    elements.push({ ai, data });
    at = end;
  }
  return elements;
}

/** Where the next `(` with a known field stands: lots and serials may hold parentheses themselves. */
function nextPrintedField(text: string, from: number): number {
  for (let at = text.indexOf('(', from); at !== -1; at = text.indexOf('(', at + 1)) {
    const field = gs1FieldAt(text, at + 1);
    if (field !== undefined && text.charAt(at + 1 + field.ai.length) === ')') return at;
    const inner = text.slice(at + 1, at + 6);
    if (/^[0-9]{2,4}\)/.test(inner)) return at;
  }
  return text.length;
}

function scannedElements(text: string): readonly Gs1Element[] | IdentifierFault {
  const elements: Gs1Element[] = [];
  let at = 0;
  while (at < text.length) {
    const field = gs1FieldAt(text, at);
    if (field === undefined) return { fault: 'field-unknown', field: text.slice(at, at + 4) };
    const start = at + field.ai.length;
    const stop = text.indexOf(separator, start);
    const limit = stop === -1 ? text.length : stop;
    const end = field.shortest === field.longest ? Math.min(start + field.longest, limit) : limit;
    const data = text.slice(start, end);
    const fault = lengthFault(field, data);
    if (fault !== undefined) return fault;
    elements.push({ ai: field.ai, data });
    at = text.charAt(end) === separator ? end + 1 : end;
  }
  return elements;
}

function lengthFault(field: Gs1Field, data: string): IdentifierFault | undefined {
  if (data.length >= field.shortest && data.length <= field.longest) return contentFault(field, data);
  const allowed = field.shortest === field.longest ? String(field.longest) : `${field.shortest} to ${field.longest}`;
  return { fault: 'length', field: `(${field.ai})`, found: data.length, allowed };
}

function contentFault(field: Gs1Field, data: string): IdentifierFault | undefined {
  const wrong = field.holds === 'text' ? firstUnprintable(data) : firstNonDigit(data);
  if (wrong !== -1) return { fault: 'character', found: data.charAt(wrong), field: `(${field.ai})` };
  return field.holds === 'key' ? checkDigitFault(data) : undefined;
}

/** Lots and serials hold visible ASCII characters and no space. */
function firstUnprintable(data: string): number {
  for (let i = 0; i < data.length; i++) {
    const code = data.charCodeAt(i);
    if (code <= 32 || code > 126) return i;
  }
  return -1;
}

function assemble(elements: readonly Gs1Element[], currentYear: number): Gs1Udi | IdentifierFault {
  const data = new Map<string, string>();
  for (const element of elements) {
    if (data.has(element.ai)) return { fault: 'field-twice', field: `(${element.ai})` };
    data.set(element.ai, element.data);
  }
  const di = data.get('01');
  if (di === undefined) return { fault: 'device-identifier-missing' };
  const dates = new Map<string, IdentifierDate>();
  for (const ai of ['11', '17']) {
    const written = data.get(ai);
    if (written === undefined) continue;
    const date = readDate(written, currentYear);
    if (date === undefined) return { fault: 'date-impossible', field: `(${ai})`, found: written };
    dates.set(ai, date);
  }
  return { agency: 'GS1', di, elements, ...production(data, dates) };
}

function production(data: ReadonlyMap<string, string>, dates: ReadonlyMap<string, IdentifierDate>): Production {
  const lot = data.get('10');
  const serial = data.get('21');
  const made = dates.get('11');
  const expires = dates.get('17');
  return {
    ...(lot === undefined ? {} : { lot }),
    ...(serial === undefined ? {} : { serial }),
    ...(made === undefined ? {} : { made }),
    ...(expires === undefined ? {} : { expires }),
  };
}

/** YYMMDD. */
function readDate(digits: string, currentYear: number): IdentifierDate | undefined {
  const year = fullYear(Number(digits.slice(0, 2)), currentYear);
  return dateOf(year, Number(digits.slice(2, 4)), Number(digits.slice(4, 6)));
}
