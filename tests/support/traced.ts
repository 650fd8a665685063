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

/** Numbers that stand on the page without an origin that holds them; `free` names classes whose numbers are no values of the trade. */
export function untraced(page: HtmlElement, files: PlainFiles, free: readonly string[]): readonly string[] {
  const faults: string[] = [];
  for (const { text, in: element } of textsIn(page)) {
    const numbers = numbersIn(text);
    if (numbers.length === 0) continue;
    const isFree = closest(
      element,
      (one) => one.name === 'head' || free.some((name) => one.attributes.get('class')?.split(' ').includes(name)),
    );
    if (isFree !== undefined) continue;
    const from = closest(element, (one) => one.attributes.has('data-from'));
    const fault = from === undefined ? 'has no origin' : faultOf(numbers, from, files);
    if (fault !== undefined) faults.push(`"${text.trim()}" ${fault}`);
  }
  return faults;
}

function faultOf(numbers: readonly string[], { attributes }: HtmlElement, files: PlainFiles): string | undefined {
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
    default:
      return undefined;
  }
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

/** `8,3` and `8.3` are one number; a date is three. */
export function numbersIn(text: string): readonly string[] {
  return [...text.matchAll(/\d+(?:[.,]\d+)?/g)].map(([number]) => number.replace(',', '.'));
}
