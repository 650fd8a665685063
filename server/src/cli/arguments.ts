import { parseArgs } from 'node:util';
import { nearest } from '../base/nearest.ts';

/** An option of a command. Without `values` and `form` it is a switch; of the form `texts` it may be given again and again. */
export interface OptionSpec {
  readonly name: string;
  readonly short?: string;
  /** Other spellings that mean the same. */
  readonly alias?: string;
  readonly values?: readonly string[];
  readonly form?: 'date' | 'count' | 'text' | 'texts';
  /** What the value is, for the help page: `FILE`. */
  readonly value?: string;
  readonly help: string;
}

/** Arguments that fit the command's options. */
export interface Arguments {
  readonly operands: readonly string[];
  readonly switches: ReadonlySet<string>;
  readonly values: ReadonlyMap<string, string>;
  /** Values of options that may be given again and again, in order. */
  readonly lists: ReadonlyMap<string, readonly string[]>;
}

export type Parsed = { readonly given: Arguments } | { readonly mistake: string };

/** Reads the words after a command's name. A mistake is worded for the person who typed it. */
export function parse(words: readonly string[], options: readonly OptionSpec[]): Parsed {
  const { tokens } = parseArgs({
    args: [...words],
    options: nodeOptions(options),
    strict: false,
    tokens: true,
    allowPositionals: true,
  });
  const operands: string[] = [];
  const switches = new Set<string>();
  const values = new Map<string, string>();
  const lists = new Map<string, string[]>();
  for (const token of tokens) {
    if (token.kind === 'positional') operands.push(token.value);
    if (token.kind !== 'option') continue;
    const option = options.find(({ name, alias }) => name === token.name || alias === token.name);
    if (option === undefined) return { mistake: unknownOption(token.rawName, options) };
    const fault = takesValue(option) ? valueFault(option, token.value) : switchFault(option, token.value);
    if (fault !== undefined) return { mistake: fault };
    if (option.form === 'texts') lists.set(option.name, [...(lists.get(option.name) ?? []), token.value ?? '']);
    else if (takesValue(option)) values.set(option.name, token.value ?? '');
    else switches.add(option.name);
  }
  return { given: { operands, switches, values, lists } };
}

function nodeOptions(options: readonly OptionSpec[]): Record<string, { type: 'string' | 'boolean'; short?: string }> {
  const known: Record<string, { type: 'string' | 'boolean'; short?: string }> = Object.create(null);
  for (const option of options) {
    const type = takesValue(option) ? 'string' : 'boolean';
    known[option.name] = { type, ...(option.short !== undefined && { short: option.short }) };
    if (option.alias !== undefined) known[option.alias] = { type };
  }
  return known;
}

function takesValue(option: OptionSpec): boolean {
  return option.values !== undefined || option.form !== undefined;
}

function switchFault(option: OptionSpec, value: string | undefined): string | undefined {
  return value === undefined ? undefined : `--${option.name} takes no value, but "${value}" was given.`;
}

function valueFault(option: OptionSpec, value: string | undefined): string | undefined {
  const wanted = wantedBy(option);
  if (value === undefined || value === '') return `--${option.name} needs ${wanted}.`;
  if (option.form === 'text' || option.form === 'texts') return undefined;
  if (option.form === 'count')
    return /^\d{1,9}$/.test(value) ? undefined : `--${option.name} needs ${wanted}, not "${value}".`;
  if (option.values === undefined)
    return isDate(value) ? undefined : `--${option.name} needs ${wanted}, not "${value}".`;
  if (option.values.includes(value)) return undefined;
  const near = nearest(value, option.values);
  return `--${option.name} can't be "${value}". ${near === undefined ? `It is ${wanted}.` : `Did you mean "${near}"?`}`;
}

function wantedBy({ values, form, value }: OptionSpec): string {
  if (values !== undefined) return `one of: ${values.join(', ')}`;
  if (form === 'count') return 'a whole number such as 0 or 12';
  return form === 'date' ? 'a date such as 2025-03-03' : `a value: ${value ?? 'TEXT'}`;
}

function unknownOption(raw: string, options: readonly OptionSpec[]): string {
  const near = nearest(
    raw.replace(/^--?/, ''),
    options.map(({ name }) => name),
  );
  return `There is no option "${raw}".${near === undefined ? '' : ` Did you mean "--${near}"?`}`;
}

/** A calendar date that exists, `YYYY-MM-DD`. */
export function isDate(text: string): boolean {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (parts === null) return false;
  const date = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(date.getTime()) && date.toISOString().startsWith(text);
}
