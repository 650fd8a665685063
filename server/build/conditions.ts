import type { Condition } from '../src/schema/condition.ts';
import { typeBits } from '../src/schema/condition.ts';
import { kinds } from '../src/schema/kinds.ts';
import type { SchemaPart } from '../src/schema/shape.ts';
import { bareSchemas } from './bare-schemas.ts';

type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };
type Part = Readonly<Record<string, Json>>;

/** The schemas as the table that schema/condition.ts walks, as one line of text, with the row where each kind begins. */
export function conditions(schemas: ReadonlyMap<string, SchemaPart>): string {
  const table = new ConditionTable(bareSchemas(schemas) as ReadonlyMap<string, Part>);
  const begins = Object.fromEntries(kinds.map((kind) => [kind, table.rowOf(`${kind}.schema.json#`, '')]));
  const text = JSON.stringify({ begins, rows: table.rows() });
  return `// Generated from schemas/ by \`npm run generate\`. Do not edit.
/** A \`ConditionTable\` as JSON: parsed at first use, which is quicker than the same as code. */
export const conditionTable =
  ${quoted(text)};
`;
}

function quoted(text: string): string {
  return `'${text.replaceAll('\\', '\\\\').replaceAll("'", "\\'")}'`;
}

/** Rows that say the same are one row. A part that refers to itself gets its row before its content is known. */
class ConditionTable {
  readonly #schemas: ReadonlyMap<string, Part>;
  readonly #rows: (Condition | undefined)[] = [];
  readonly #byAddress = new Map<string, number>();
  readonly #byText = new Map<string, number>();

  constructor(schemas: ReadonlyMap<string, Part>) {
    this.#schemas = schemas;
  }

  rows(): readonly Condition[] {
    return this.#rows.map((row) => {
      if (row === undefined) throw new Error('a schema part was begun and never finished');
      return row;
    });
  }

  /** Row of what a reference such as `values.schema.json#/$defs/text` or `#/$defs/part` names, met in `file`. */
  rowOf(reference: string, file: string): number {
    const [path = '', pointer = ''] = reference.split('#');
    const name = path === '' ? file : path.replace('.schema.json', '');
    const address = `${name}#${pointer}`;
    const known = this.#byAddress.get(address);
    if (known !== undefined) return known;
    const part = this.#partAt(name, pointer);
    if (typeof part.$ref === 'string') return this.#inline(part, name);
    const row = this.#rows.push(undefined) - 1;
    this.#byAddress.set(address, row);
    this.#rows[row] = this.#condition(part, name);
    return row;
  }

  #partAt(name: string, pointer: string): Part {
    let part: Json | undefined = this.#schemas.get(name);
    for (const step of pointer.split('/').slice(1)) part = isPart(part) ? part[step] : undefined;
    if (!isPart(part)) throw new Error(`${name}#${pointer} does not resolve`);
    return part;
  }

  #inline(part: Json, file: string): number {
    if (!isPart(part)) throw new Error(`not a schema: ${JSON.stringify(part)}`);
    if (typeof part.$ref === 'string') {
      if (Object.keys(part).length > 1)
        throw new Error(`a reference with conditions beside it: ${JSON.stringify(part)}`);
      return this.rowOf(part.$ref, file);
    }
    const condition = this.#condition(part, file);
    const text = JSON.stringify(condition);
    const known = this.#byText.get(text);
    if (known !== undefined) return known;
    const row = this.#rows.push(condition) - 1;
    this.#byText.set(text, row);
    return row;
  }

  #condition(part: Part, file: string): Condition {
    const condition: Record<string, unknown> = {};
    for (const [word, value] of Object.entries(part)) {
      if (word === '$schema' || word === '$id' || word === '$defs') continue;
      if (word === 'additionalProperties' && value === false) condition.closed = 1;
      else condition[shortFor(word)] = this.#value(word, value, file);
    }
    return condition as Condition;
  }

  #value(word: string, value: Json, file: string): unknown {
    switch (word) {
      case 'type':
        return [value].flat().reduce((bits: number, name) => bits | typeBits[name as keyof typeof typeBits], 0);
      case 'properties':
        return Object.fromEntries(Object.entries(value as Part).map(([key, part]) => [key, this.#inline(part, file)]));
      case 'items':
      case 'additionalProperties':
        return this.#inline(value, file);
      case 'anyOf':
        return (value as readonly Json[]).map((part) => this.#inline(part, file));
      default:
        return value;
    }
  }
}

function isPart(part: Json | undefined): part is Part {
  return typeof part === 'object' && part !== null && !Array.isArray(part);
}

const shortNames: Readonly<Record<string, keyof Condition | undefined>> = {
  type: 'types',
  enum: 'words',
  pattern: 'pattern',
  minLength: 'shortest',
  maxLength: 'longest',
  minimum: 'low',
  maximum: 'high',
  properties: 'fields',
  additionalProperties: 'rest',
  required: 'required',
  minProperties: 'fewestFields',
  items: 'item',
  minItems: 'fewest',
  maxItems: 'most',
  anyOf: 'any',
};

/** A word of JSON Schema that the walk does not know would be passed over in silence, so it ends the build. */
function shortFor(word: string): keyof Condition {
  const short = shortNames[word];
  if (short === undefined) throw new Error(`schemas may not use "${word}": schema/condition.ts does not know it`);
  return short;
}
