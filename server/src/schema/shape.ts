/**
 * schema/: the JSON Schemas as shapes that a tree is walked with, their compiled validators, and problems in our words.
 * The only user of `ajv` (which compiles them when files are generated). It must not know rules, other files or the disk.
 */
import { invariant } from '../base/assert.ts';
import type { Dimension } from '../quantity/quantity.ts';
import type { Limits, LimitWords } from './limits.ts';
import { isLimitedBy, limitsOf } from './limits.ts';

/** What may stand at one place of a rule file. A closed union: every walker handles each form. */
export type Shape = RecordShape | ListShape | TableShape | WordsShape | QuantityShape | ReferenceShape | LeafShape;

/** What is one scalar in the file. */
export type ScalarShape = WordsShape | QuantityShape | ReferenceShape | LeafShape;

/** Words shown to people: they come from the schema and feed hover, completion and messages. */
export interface Describes {
  readonly title: string;
  readonly description: string;
  readonly examples: readonly string[];
  /** Where instructions usually put it. */
  readonly where?: string | undefined;
  readonly stage?: string | undefined;
  /** Words often written here, each with one line of meaning. The field takes any other text too. */
  readonly suggestions?: ReadonlyMap<string, string> | undefined;
}

export interface RecordShape extends Describes {
  readonly form: 'record';
  /** Name of the generated type. */
  readonly name: string;
  /** Set on a requirement: what its bound words measure. */
  readonly dimension?: Dimension;
  readonly fields: ReadonlyMap<string, Field>;
  readonly required: readonly string[];
}

/** A field of a record. Its shape is made when first asked for, since shapes may hold themselves. */
export interface Field extends Describes {
  readonly key: string;
  readonly shape: Shape;
}

export interface ListShape extends Describes {
  readonly form: 'list';
  readonly item: Shape;
  /** How many items there may be; undefined where the schema limits the list in other ways too. */
  readonly counts: { readonly fewest: number; readonly most: number } | undefined;
}

export interface TableShape extends Describes {
  readonly form: 'table';
  readonly value: Shape;
  /** Names that have a meaning of their own, with what their numbers measure. Other names are allowed too. */
  readonly keys: ReadonlyMap<string, NamedKey>;
}

export interface NamedKey {
  readonly title: string;
  readonly description: string;
  readonly dimension?: Dimension;
}

interface OneScalar extends Describes {
  /** What the schema asks of it; undefined where only the compiled schema can tell. */
  readonly limits: Limits | undefined;
}

export interface WordsShape extends OneScalar {
  readonly form: 'words';
  /** Word to one line of meaning. */
  readonly words: ReadonlyMap<string, string>;
}

export interface QuantityShape extends OneScalar {
  readonly form: 'quantity';
  /** `any`: the name of the table row it stands under says what it measures, else its unit does. */
  readonly dimension: Dimension | 'any';
}

export interface ReferenceShape extends OneScalar {
  readonly form: 'reference';
  /** Kinds of entity, or names of things inside the same file (`statement`, `lumen`, `option`, ...). */
  readonly refers: readonly string[];
  /** Set when a word that names nothing in the library is fine too, such as `double-wrap` beside packaging ids. */
  readonly open?: true;
}

export interface LeafShape extends OneScalar {
  readonly form: 'text' | 'id' | 'date' | 'datetime' | 'flag' | 'link' | 'citation';
  /** Set on a date that may be left empty: it has not happened yet. */
  readonly mayBeEmpty?: true;
  /** Set on a date that documents often print without its day. */
  readonly mayBeMonth?: true;
}

/** A JSON Schema, or a part of one, as far as the subset we write in needs. */
export interface SchemaPart extends LimitWords {
  readonly $id?: string;
  readonly $ref?: string;
  readonly $defs?: Readonly<Record<string, SchemaPart>>;
  readonly enum?: readonly string[];
  readonly properties?: Readonly<Record<string, SchemaPart>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: boolean | SchemaPart;
  readonly items?: SchemaPart;
  readonly minItems?: number;
  readonly maxItems?: number;
  readonly title?: string;
  readonly description?: string;
  readonly examples?: readonly unknown[];
  readonly 'x-form'?: string;
  readonly 'x-dimension'?: string;
  readonly 'x-ref'?: string | readonly string[];
  readonly 'x-words'?: Readonly<Record<string, string>>;
  readonly 'x-where'?: string;
  readonly 'x-stage'?: string;
  readonly 'x-suggest'?: Readonly<Record<string, string>>;
  readonly 'x-open'?: boolean;
  readonly 'x-keys'?: Readonly<Record<string, { title?: string; description?: string; dimension?: string }>>;
}

/** Where schemas are taken from, by file name without `.schema.json` (`device`, `values`, ...). */
export interface SchemaSource {
  get(name: string): SchemaPart | undefined;
}

/** Turns schemas into shapes; a part that is met twice gives the same shape. */
export class ShapeReader {
  readonly #schemas: SchemaSource;
  readonly #made = new Map<string, Shape>();

  constructor(schemas: SchemaSource) {
    this.#schemas = schemas;
  }

  kind(name: string): RecordShape {
    const schema = this.#schemas.get(name);
    invariant(schema !== undefined, `there is a schema for ${name}`);
    const shape = this.#at(`${name}#`, schema, name, typeName(name));
    invariant(shape.form === 'record', `${name} describes a record`);
    return shape;
  }

  #at(address: string, part: SchemaPart, file: string, name: string): Shape {
    const known = this.#made.get(address);
    if (known !== undefined) return known;
    const made = this.#make(address, part, file, name);
    this.#made.set(address, made);
    return made;
  }

  #make(address: string, part: SchemaPart, file: string, name: string): Shape {
    if (part.$ref !== undefined) return this.#reference(part.$ref, part, file);
    const about = describes(part);
    const form = part['x-form'];
    if (form === 'requirement' || (form === undefined && part.properties !== undefined)) {
      return this.#record(address, part, file, form === 'requirement' ? 'Requirement' : name);
    }
    if (part.enum !== undefined || form === 'word')
      return { ...about, form: 'words', words: wordsOf(part), limits: wordLimitsOf(part) };
    if (form !== undefined) return leaf(form, part, about);
    if (part.type === 'array' && part.items !== undefined) {
      const item = this.#at(`${address}/items`, part.items, file, `${name}Item`);
      return { ...about, form: 'list', item, counts: countsOf(part) };
    }
    invariant(
      typeof part.additionalProperties === 'object',
      `${address} is of a form we know: ${JSON.stringify(part).slice(0, 200)}`,
    );
    const value = this.#at(`${address}/*`, part.additionalProperties, file, `${name}Row`);
    return { ...about, form: 'table', value, keys: keysOf(part) };
  }

  #record(address: string, part: SchemaPart, file: string, name: string): RecordShape {
    const fields = new Map<string, Field>();
    const dimension = part['x-dimension'] as Dimension | undefined;
    const shape: RecordShape = {
      ...describes(part),
      form: 'record',
      name,
      ...(dimension && { dimension }),
      fields,
      required: part.required ?? [],
    };
    this.#made.set(address, shape);
    for (const [key, inner] of Object.entries(part.properties ?? {})) {
      fields.set(key, this.#field(key, inner, `${address}/${key}`, file, name));
    }
    return shape;
  }

  #field(key: string, part: SchemaPart, address: string, file: string, owner: string): Field {
    return new LazyField(
      key,
      () => {
        const target = part.$ref === undefined ? undefined : this.#target(part.$ref, file).part;
        return describes({ ...target, ...part } as SchemaPart);
      },
      () => this.#at(address, part, file, `${owner}${typeName(key)}`),
    );
  }

  #reference(ref: string, site: SchemaPart, file: string): Shape {
    const target = this.#target(ref, file);
    if (target.part['x-form'] === 'reference') {
      const kinds = site['x-ref'] ?? [];
      const about = describes({ ...target.part, ...site } as SchemaPart);
      const refers = typeof kinds === 'string' ? [kinds] : kinds;
      const limits = limitsOf(target.part);
      return { ...about, form: 'reference', refers, limits, ...(site['x-open'] === true && { open: true }) };
    }
    return this.#at(target.address, target.part, target.file, typeName(target.name));
  }

  #target(ref: string, file: string): { address: string; part: SchemaPart; file: string; name: string } {
    const [path = '', pointer = ''] = ref.split('#');
    const inFile = path === '' ? file : path.replace('.schema.json', '');
    const name = pointer.replace('/$defs/', '');
    const part = this.#schemas.get(inFile)?.$defs?.[name];
    invariant(part !== undefined, `${ref} in ${file} resolves`);
    return { address: `${inFile}#${pointer}`, part, file: inFile, name };
  }
}

/** A check of one file meets a few of the two thousand fields: what is told of a field, and its shape, are made when asked for. */
class LazyField implements Field {
  readonly key: string;
  readonly #tell: () => Describes;
  readonly #make: () => Shape;
  #told: Describes | undefined;
  #made: Shape | undefined;

  constructor(key: string, tell: () => Describes, make: () => Shape) {
    this.key = key;
    this.#tell = tell;
    this.#make = make;
  }

  get shape(): Shape {
    this.#made ??= this.#make();
    return this.#made;
  }

  get title(): string {
    return this.#about().title;
  }

  get description(): string {
    return this.#about().description;
  }

  get examples(): readonly string[] {
    return this.#about().examples;
  }

  get where(): string | undefined {
    return this.#about().where;
  }

  get stage(): string | undefined {
    return this.#about().stage;
  }

  get suggestions(): ReadonlyMap<string, string> | undefined {
    return this.#about().suggestions;
  }

  #about(): Describes {
    this.#told ??= this.#tell();
    return this.#told;
  }
}

/** The field with another shape. */
export function withShape(field: Field, shape: Shape): Field {
  return new LazyField(
    field.key,
    () => field,
    () => shape,
  );
}

function describes(part: SchemaPart): Describes {
  return {
    title: part.title ?? '',
    description: part.description ?? '',
    examples: (part.examples ?? []).map(String),
    ...(part['x-where'] !== undefined && { where: part['x-where'] }),
    ...(part['x-stage'] !== undefined && { stage: part['x-stage'] }),
    ...(part['x-suggest'] !== undefined && { suggestions: new Map(Object.entries(part['x-suggest'])) }),
  };
}

function leaf(form: string, part: SchemaPart, describing: Describes): Shape {
  const about = { ...describing, limits: limitsOf(part) };
  switch (form) {
    case 'quantity':
      return { ...about, form: 'quantity', dimension: part['x-dimension'] as Dimension | 'any' };
    case 'number':
    case 'integer':
      return { ...about, form: 'quantity', dimension: 'number' };
    case 'reference':
      return { ...about, form: 'reference', refers: [] };
    case 'date-or-month':
      return { ...about, form: 'date', mayBeMonth: true };
    case 'date-or-none':
      return { ...about, form: 'date', mayBeEmpty: true };
    case 'date':
    case 'datetime':
    case 'text':
    case 'id':
    case 'flag':
    case 'link':
    case 'citation':
      return { ...about, form };
    default:
      throw new Error(`unknown x-form ${form}`);
  }
}

/** A word of the list is all that is asked for, where the list of words and the schema's own are the same. */
function wordLimitsOf({ enum: listed, ...part }: SchemaPart): Limits | undefined {
  if (listed === undefined) return limitsOf(part);
  const known = wordsOf(part);
  return known.size > 0 && listed.length === known.size && listed.every((word) => known.has(word))
    ? limitsOf(part)
    : undefined;
}

const counting: ReadonlySet<string> = new Set(['type', 'items', 'minItems', 'maxItems']);

function countsOf(part: SchemaPart): ListShape['counts'] {
  const { minItems: fewest = 0, maxItems: most = Infinity } = part;
  return isLimitedBy(part, counting) ? { fewest, most } : undefined;
}

function keysOf(part: SchemaPart): ReadonlyMap<string, NamedKey> {
  const keys = new Map<string, NamedKey>();
  for (const [key, { title = key, description = '', dimension }] of Object.entries(part['x-keys'] ?? {})) {
    keys.set(key, { title, description, ...(dimension !== undefined && { dimension: dimension as Dimension }) });
  }
  return keys;
}

function wordsOf(part: SchemaPart): ReadonlyMap<string, string> {
  return new Map(Object.entries(part['x-words'] ?? {}));
}

/** `sterilization-option` or `any_of` to `SterilizationOption`, `AnyOf`. */
export function typeName(text: string): string {
  return text
    .split(/[-_.]/)
    .map((part) => part.charAt(0).toUpperCase() + part.slice(1))
    .join('');
}
