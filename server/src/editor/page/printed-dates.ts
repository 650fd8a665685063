/** Days and months as the heads of pages print them. What could be two different days is none. */

const months: readonly string[] = [
  'jan(?:uary|uar|vier)?',
  'feb(?:ruary|ruar)?|f[ée]v(?:rier)?',
  'mar(?:ch|s)?|märz',
  'a[pv]r(?:il)?',
  'may|mai',
  'june?|juni|juin',
  'july?|juli|juillet',
  'aug(?:ust)?|août',
  'sept?(?:ember|embre)?',
  'o[ck]t(?:ober|obre)?',
  'nov(?:ember|embre)?',
  'de[cz](?:ember)?|déc(?:embre)?',
];
const named = String.raw`(${months.map((one) => `(?:${one})`).join('|')})\.?`;
const byName = new RegExp(String.raw`(?<![\p{L}\d])(?:(\d{1,2})\.?\s)?${named}\s(\d{4})(?!\d)`, 'iu');
const nameFirst = new RegExp(String.raw`(?<![\p{L}\d])${named}\s(\d{1,2}),\s?(\d{4})(?!\d)`, 'iu');
const inNumbers = /(?<![\d-])(\d{4})-(0[1-9]|1[0-2])(?:-(0[1-9]|[12]\d|3[01]))?(?![\d-])/;
const withPoints = /(?<![\d.])(0?[1-9]|[12]\d|3[01])\.(0?[1-9]|1[0-2])\.(\d{4})(?!\d)/;
const monthAndYear = /(?<![\d/.])(0?[1-9]|1[0-2])[/.](\d{4})(?!\d)/;

export interface PrintedDate {
  /** As a rule file has it: `2026-05-01`, or `2026-05` where no day is printed. */
  readonly date: string;
  readonly start: number;
}

export function printedDate(text: string): PrintedDate | undefined {
  const read = [inNumbers, withPoints, byName, nameFirst, monthAndYear].map((form, at) => readAs(form, at, text));
  return read.find((one) => one !== undefined);
}

function readAs(form: RegExp, at: number, text: string): PrintedDate | undefined {
  const found = form.exec(text);
  if (found === null) return undefined;
  const [, a = '', b = '', c = ''] = found;
  const parts: readonly (readonly [year: string, month: string, day: string])[] = [
    [a, b, c],
    [c, b, a],
    [c, monthOf(b), a],
    [c, monthOf(a), b],
    [b, a, ''],
  ];
  const [year, month, day] = parts[at] ?? ['', '', ''];
  const words = [year, month, day].filter((one) => one !== '').map((one) => one.padStart(2, '0'));
  return { date: words.join('-'), start: found.index };
}

function monthOf(name: string): string {
  return String(months.findIndex((one) => new RegExp(`^(?:${one})$`, 'iu').test(name)) + 1);
}
