import { invariant } from '../base/assert.ts';
import type { ListTree, MapTree, ScalarTree, Tree } from '../syntax/tree.ts';
import type { Kind } from './kinds.ts';

/** What JSON Schema says of one part, in our short words; row numbers stand for the parts inside. All that is given must hold. */
export interface Condition {
  /** Sum of `typeBits`. */
  readonly types?: number;
  readonly words?: readonly string[];
  readonly pattern?: string;
  readonly shortest?: number;
  readonly longest?: number;
  readonly low?: number;
  readonly high?: number;
  readonly fields?: Readonly<Record<string, number>>;
  /** Row for fields that are not listed. */
  readonly rest?: number;
  /** Set when there may be no other fields. */
  readonly closed?: 1;
  readonly required?: readonly string[];
  readonly fewestFields?: number;
  readonly item?: number;
  readonly fewest?: number;
  readonly most?: number;
  /** Rows of which one must hold. */
  readonly any?: readonly number[];
}

/** All schemas in one table. */
export interface ConditionTable {
  readonly begins: Readonly<Record<Kind, number>>;
  readonly rows: readonly Condition[];
}

export const typeBits = { object: 1, array: 2, string: 4, number: 8, integer: 16, boolean: 32, null: 64 } as const;

/** Says whether trees meet conditions. It means exactly what JSON Schema means; a test compares it with a schema library. */
export class ConditionWalk {
  readonly #rows: readonly Condition[];
  readonly #made: (Ready | undefined)[] = [];

  constructor(rows: readonly Condition[]) {
    this.#rows = rows;
  }

  /** Undefined when the tree meets the condition of this row, else the path of the first part that doesn't, such as `/limits/ph`. */
  refusal(row: number, tree: Tree): string | undefined {
    const { condition, fields, words, pattern } = this.#ready(row);
    if (condition.types !== undefined && (condition.types & typesOf(tree)) === 0) return '';
    if (tree.node === 'scalar') {
      if (words !== undefined && !words.has(tree.text)) return '';
      if (!isWithin(condition, pattern, tree)) return '';
    } else if (tree.node === 'map') {
      const refused = this.#inMap(condition, fields, tree);
      if (refused !== undefined) return refused;
    } else if (tree.node === 'list') {
      const refused = this.#inList(condition, tree);
      if (refused !== undefined) return refused;
    }
    const isAny = condition.any === undefined || condition.any.some((one) => this.refusal(one, tree) === undefined);
    return isAny ? undefined : '';
  }

  #inMap(condition: Condition, fields: ReadonlyMap<string, number> | undefined, tree: MapTree): string | undefined {
    const { entries } = tree;
    if (condition.required?.some((key) => !entries.some((entry) => entry.key.text === key)) === true) return '';
    if (condition.fewestFields !== undefined && countKeys(tree) < condition.fewestFields) return '';
    if (fields === undefined && condition.rest === undefined && condition.closed === undefined) return undefined;
    for (const [at, { key, value }] of entries.entries()) {
      if (isRepeated(tree, at)) continue;
      const row = fields?.get(key.text) ?? condition.rest;
      if (row === undefined && condition.closed !== undefined) return `/${key.text}`;
      const refused = row === undefined ? undefined : this.refusal(row, value);
      if (refused !== undefined) return `/${key.text}${refused}`;
    }
    return undefined;
  }

  #inList(condition: Condition, { items }: ListTree): string | undefined {
    if (items.length < (condition.fewest ?? 0) || items.length > (condition.most ?? items.length)) return '';
    if (condition.item === undefined) return undefined;
    for (const [index, item] of items.entries()) {
      const refused = this.refusal(condition.item, item);
      if (refused !== undefined) return `/${index}${refused}`;
    }
    return undefined;
  }

  #ready(row: number): Ready {
    const known = this.#made[row];
    if (known !== undefined) return known;
    const condition = this.#rows[row];
    invariant(condition !== undefined, 'every row that a condition names is there');
    const ready: Ready = {
      condition,
      fields: condition.fields && new Map(Object.entries(condition.fields)),
      words: condition.words && new Set(condition.words),
      pattern: condition.pattern === undefined ? undefined : new RegExp(condition.pattern, 'u'),
    };
    this.#made[row] = ready;
    return ready;
  }
}

/** A condition with what is looked up in it, made at first use. */
interface Ready {
  readonly condition: Condition;
  readonly fields: ReadonlyMap<string, number> | undefined;
  readonly words: ReadonlySet<string> | undefined;
  readonly pattern: RegExp | undefined;
}

function countKeys({ entries }: MapTree): number {
  return new Set(entries.map(({ key }) => key.text)).size;
}

/** The first of two like keys counts, as everywhere. */
function isRepeated({ entries }: MapTree, at: number): boolean {
  const key = entries[at]?.key.text;
  for (let before = 0; before < at; before++) if (entries[before]?.key.text === key) return true;
  return false;
}

const plainNumber = /^-?\d{1,15}(\.\d{1,15})?$/;

/** What a YAML 1.2 reader would take the value for. */
function typesOf(tree: Tree): number {
  switch (tree.node) {
    case 'map':
      return typeBits.object;
    case 'list':
      return typeBits.array;
    case 'empty':
      return typeBits.null;
    case 'scalar':
      return typesOfScalar(tree);
  }
}

function typesOfScalar({ text, style }: ScalarTree): number {
  if (style !== 'plain') return typeBits.string;
  if (text === 'true' || text === 'false') return typeBits.boolean;
  if (text === '' || text === 'null' || text === '~') return typeBits.null;
  if (!plainNumber.test(text)) return typeBits.string;
  return Number.isInteger(Number(text)) ? typeBits.number | typeBits.integer : typeBits.number;
}

/** Lengths and patterns concern text, limits concern numbers; each passes over the other. */
function isWithin(condition: Condition, pattern: RegExp | undefined, tree: ScalarTree): boolean {
  const types = typesOfScalar(tree);
  if ((types & typeBits.string) !== 0) {
    const { length } = tree.text;
    if (length < (condition.shortest ?? 0) || length > (condition.longest ?? length)) return false;
    return pattern === undefined || pattern.test(tree.text);
  }
  if ((types & typeBits.number) === 0) return true;
  const number = Number(tree.text);
  return number >= (condition.low ?? number) && number <= (condition.high ?? number);
}
