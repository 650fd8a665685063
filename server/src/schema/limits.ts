import type { ScalarTree } from '../syntax/tree.ts';

/** A scalar as plain data is one of these. */
export type PlainType = 'string' | 'number' | 'boolean' | 'null';

/** What a schema asks of one scalar, as far as it can be seen without the schema library. */
export interface Limits {
  readonly types: ReadonlySet<string>;
  readonly shortest: number;
  readonly longest: number;
  readonly pattern: RegExp | undefined;
  /** Of a number. */
  readonly least: number;
  readonly most: number;
}

/** The keywords of a schema that limit a scalar. */
export interface LimitWords {
  readonly type?: string | readonly string[];
  readonly minLength?: number;
  readonly maxLength?: number;
  readonly pattern?: string;
  readonly minimum?: number;
  readonly maximum?: number;
}

const limiting: ReadonlySet<string> = new Set(['type', 'minLength', 'maxLength', 'pattern', 'minimum', 'maximum']);
const describing: ReadonlySet<string> = new Set(['title', 'description', 'examples']);

/** Undefined where the schema asks for something else too: then only the compiled schema can tell. */
export function limitsOf(part: LimitWords): Limits | undefined {
  const { type, minLength: shortest = 0, maxLength: longest = Infinity, pattern } = part;
  const { minimum: least = -Infinity, maximum: most = Infinity } = part;
  if (type === undefined || !isLimitedBy(part, limiting)) return undefined;
  const types = new Set(typeof type === 'string' ? [type] : type);
  return { types, shortest, longest, pattern: pattern === undefined ? undefined : new RegExp(pattern), least, most };
}

/** True when the schema says nothing that is not among these words, besides what only describes. */
export function isLimitedBy(part: object, words: ReadonlySet<string>): boolean {
  return Object.keys(part).every((word) => words.has(word) || describing.has(word) || word.startsWith('x-'));
}

export function isWithin(scalar: ScalarTree, { types, shortest, longest, pattern, least, most }: Limits): boolean {
  const { text } = scalar;
  const type = plainTypeOf(scalar);
  if (type === 'number' && (Number(text) < least || Number(text) > most)) return false;
  if (type === 'number' && types.has('integer')) return !text.includes('.');
  if (!types.has(type)) return false;
  if (type !== 'string') return true;
  return text.length >= shortest && text.length <= longest && (pattern === undefined || pattern.test(text));
}

const plainNumber = /^-?\d{1,15}(\.\d{1,15})?$/;

/** What a YAML 1.2 reader takes the scalar for. */
export function plainTypeOf({ text, style }: ScalarTree): PlainType {
  if (style !== 'plain') return 'string';
  if (text === 'true' || text === 'false') return 'boolean';
  if (text === '' || text === 'null' || text === '~') return 'null';
  return plainNumber.test(text) ? 'number' : 'string';
}
