import { parse } from 'yaml';
import type { HtmlElement } from './html.ts';
import { closest, textsIn } from './html.ts';

/*
 * Leads every number on a printed page back to the rule file it came from. The files are read here by a YAML reader alone, as plain
 * texts: nothing of the program under test takes part.
 */

export type PlainFiles = ReadonlyMap<string, unknown>;

/** Files by `kind/id`, every scalar as the text that stands in the file. */
export function plainFiles(texts: Iterable<readonly [string, string]>): PlainFiles {
  const files = new Map<string, unknown>();
  for (const [, text] of texts) {
    const value: unknown = parse(text, { schema: 'failsafe' });
    if (typeof value !== 'object' || value === null) continue;
    const { kind, id } = value as Record<string, unknown>;
    files.set(`${String(kind)}/${String(id)}`, value);
  }
  return files;
}

/** The plain value at `device/x#cleaning.all_of[0].soak`; undefined when there is none. */
export function valueAt(files: PlainFiles, origin: string): unknown {
  const [file = '', path = ''] = [origin.slice(0, origin.indexOf('#')), origin.slice(origin.indexOf('#') + 1)];
  let value = files.get(file);
  for (const [step] of path.matchAll(/[^.[\]]+|\[[^\]]+\]/g)) value = stepInto(value, step);
  return value;
}

function stepInto(value: unknown, step: string): unknown {
  const name = step.replace(/^\[|\]$/g, '');
  if (Array.isArray(value)) {
    const byId = value.find(
      (one) => typeof one === 'object' && one !== null && (one as Record<string, unknown>).id === name,
    );
    return byId ?? value[Number(name)];
  }
  return typeof value === 'object' && value !== null ? (value as Record<string, unknown>)[name] : undefined;
}

/** Who may say words that stand in no rule file, and whether they did say these. */
export type Tellers = Readonly<Record<string, (text: string) => boolean>>;

/**
 * Numbers that stand on the page without an origin that holds them; `free` names classes whose numbers are no values of the trade. Words
 * of somebody else are put before who is said to say them.
 */
export function untraced(
  page: HtmlElement,
  files: PlainFiles,
  free: readonly string[],
  tellers: Tellers = {},
): readonly string[] {
  const faults: string[] = [];
  for (const { text, in: element } of textsIn(page)) {
    const numbers = numbersIn(text);
    if (numbers.length === 0) continue;
    const isFree = closest(
      element,
      (one) => one.name === 'head' || free.some((name) => one.attributes.get('class')?.split(' ').includes(name)),
    );
    if (isFree !== undefined) continue;
    const from = closest(element, (one) => one.attributes.has('data-from') || one.attributes.has('data-told'));
    const fault =
      from === undefined ? 'has no origin' : (toldFault(text, from, tellers) ?? fieldFault(text, from, files));
    if (fault !== undefined) faults.push(`"${text.trim()}" ${fault}`);
  }
  return faults;
}

function toldFault(text: string, { attributes }: HtmlElement, tellers: Tellers): string | undefined {
  const who = attributes.get('data-told');
  if (who === undefined) return undefined;
  const says = tellers[who];
  if (says === undefined) return `nobody called ${who} is here`;
  return says(text.trim()) ? undefined : `was not said by ${who}`;
}

function fieldFault(text: string, { attributes }: HtmlElement, files: PlainFiles): string | undefined {
  if (attributes.has('data-told')) return undefined;
  const numbers = numbersIn(text);
  const origins = (attributes.get('data-from') ?? '').split(' ');
  const values = origins.map((origin) => valueAt(files, origin));
  const missing = origins.find((_, index) => values[index] === undefined);
  if (missing !== undefined) return `leads to nothing at ${missing}`;
  const [shown] = numbers;
  switch (attributes.get('data-how')) {
    case undefined:
      return numbers.every((number) => values.some((value) => holds(value, number)))
        ? undefined
        : `is not in ${origins.join(' ')}: ${JSON.stringify(values)}`;
    case 'sum':
      return Number(shown) === sumOf(values) ? undefined : `is not the sum ${sumOf(values)}`;
    case 'ordinal':
      return Number(shown) >= 1 && Number(shown) <= sumOf(values) ? undefined : 'is no number of the run';
    case 'count':
      return Number(shown) === values.length ? undefined : `is not the count ${values.length}`;
    case 'judged':
      return judgedFault(text, values, files);
    default:
      return undefined;
  }
}

/** Words of a judgement: names aside, its numbers are those of the fields, or what two of them differ by or make together. */
function judgedFault(text: string, values: readonly unknown[], files: PlainFiles): string | undefined {
  const held = [...new Set(values.flatMap((value) => numbersIn(scalarsIn(value).join(' '))).map(Number))];
  const made = new Set(held.flatMap((a) => [a, ...held.flatMap((b) => [a + b, Math.abs(a - b)])]).map(rounded));
  const strange = numbersIn(withoutNames(text, files)).find((number) => !made.has(rounded(Number(number))));
  return strange === undefined ? undefined : `has ${strange}, which is not in ${JSON.stringify(values)}`;
}

function rounded(number: number): number {
  return Math.round(number * 1000) / 1000;
}

function scalarsIn(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(scalarsIn) : [];
}

/** Without ids of files, cycles and documents, and without the numbers of a list of facts. */
function withoutNames(text: string, files: PlainFiles): string {
  let bare = text.replace(/\(\d\) /g, '');
  for (const name of namesIn(files)) bare = bare.replaceAll(name, '');
  return bare;
}

const names = new WeakMap<PlainFiles, readonly string[]>();

/** Every id and document number that has a digit, longest first. */
function namesIn(files: PlainFiles): readonly string[] {
  const known = names.get(files);
  if (known !== undefined) return known;
  const found = new Set<string>();
  const look = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return;
    for (const [key, one] of Object.entries(value)) {
      if ((key === 'id' || key === 'doc') && typeof one === 'string' && /\d/.test(one)) found.add(one);
      look(one);
    }
  };
  for (const file of files.values()) look(file);
  const sorted = [...found].sort((a, b) => b.length - a.length);
  names.set(files, sorted);
  return sorted;
}

/** Lines without a number count one. */
function sumOf(values: readonly unknown[]): number {
  let sum = 0;
  for (const value of values) sum += typeof value === 'string' ? Number(value) || Number.parseFloat(value) : 1;
  return sum;
}

function holds(value: unknown, number: string): boolean {
  return typeof value === 'string' && numbersIn(value).some((one) => Number(one) === Number(number));
}

/** Signs of the trade that are no numbers. */
const terms = /\b(?:[AF]0|vh2o2|IAPWS-IF97)\b/gi;

/** `8,3` and `8.3` are one number; a date is three. */
export function numbersIn(text: string): readonly string[] {
  return [...text.replaceAll(terms, '').matchAll(/\d+(?:[.,]\d+)?/g)].map(([number]) => number.replace(',', '.'));
}
