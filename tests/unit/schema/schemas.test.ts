import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import Ajv2020 from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { kinds } from '../../../server/src/schema/kinds.ts';
import { typeName } from '../../../server/src/schema/shape.ts';

const schemaFolder = join(import.meta.dirname, '../../../schemas');
const exampleFolder = join(import.meta.dirname, 'examples');

type Part = Record<string, unknown>;

const schemas = new Map<string, Part>();
for (const file of readdirSync(schemaFolder)) {
  schemas.set(file.replace('.schema.json', ''), JSON.parse(readFileSync(join(schemaFolder, file), 'utf8')));
}

const ownWords = ['x-form', 'x-dimension', 'x-ref', 'x-open', 'x-words', 'x-suggest', 'x-keys', 'x-where', 'x-stage'];
const forms = [
  'text',
  'id',
  'reference',
  'date',
  'datetime',
  'date-or-none',
  'date-or-month',
  'flag',
  'number',
  'integer',
  'link',
  'citation',
  'quantity',
  'requirement',
  'word',
];
const dimensions = [
  'temperature',
  'temperature-difference',
  'time',
  'pressure',
  'length',
  'volume',
  'mass',
  'frequency',
  'conductivity',
  'hardness',
  'concentration',
  'dose',
  'bacteria',
  'endotoxin',
  'percentage',
  'count',
  'ph',
  'a0',
  'magnification',
  'temperature-rate',
  'flow',
  'energy',
  'illuminance',
  'number',
];
const requirementFields = [
  'at_least',
  'at_most',
  'between',
  'exactly',
  'stated',
  'about',
  'silent',
  'checked',
  'ambiguous',
  'ask',
  'not_applicable',
  'as_written',
  'read_as',
  'tol',
  'of',
  'strength',
  'defers_to',
  'edition',
  'conflict',
  'specific',
  'doc',
  'when',
  'reason',
  'src',
];
/** Names inside a file, or of things that are no kind, that a reference may name. */
const inFile = [
  'statement',
  'lumen',
  'part',
  'option',
  'cleaning-node',
  'cycle',
  'washer-cycle',
  'document-number',
  'rule',
];

function isPart(value: unknown): value is Part {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

interface Met {
  readonly at: string;
  readonly file: string;
  readonly part: Part;
  /** A definition or a property, whose title and description people read. */
  readonly named: boolean;
  /** Inside a form of values.schema.json, where a leaf may use more of JSON Schema. */
  readonly inLeaf: boolean;
}

function* partsOf(met: Met): Iterable<Met> {
  yield met;
  const { part, at } = met;
  const inLeaf = met.inLeaf || (met.file === 'values' && 'x-form' in part);
  for (const key of ['properties', '$defs']) {
    const inner = part[key];
    if (isPart(inner))
      for (const [name, child] of Object.entries(inner)) yield* below(met, child, `${at}/${key}/${name}`, true, inLeaf);
  }
  for (const key of ['items', 'additionalProperties']) yield* below(met, part[key], `${at}/${key}`, false, inLeaf);
  const choices = part.anyOf;
  if (Array.isArray(choices))
    for (const [index, child] of choices.entries()) yield* below(met, child, `${at}/anyOf/${index}`, false, true);
}

function* below(met: Met, child: unknown, at: string, named: boolean, inLeaf: boolean): Iterable<Met> {
  if (isPart(child)) yield* partsOf({ at, file: met.file, part: child, named, inLeaf });
}

const parts: Met[] = [];
for (const [file, part] of schemas) parts.push(...partsOf({ at: file, file, part, named: true, inLeaf: false }));

function complaints(check: (met: Met) => string | undefined): readonly string[] {
  return parts.flatMap((met) => {
    const complaint = check(met);
    return complaint === undefined ? [] : [`${met.at}: ${complaint}`];
  });
}

const head = ['title', 'description', 'examples', 'x-where', 'x-stage', 'x-suggest'];
const subset: readonly { when: (part: Part) => boolean; keys: readonly string[] }[] = [
  { when: (part) => '$ref' in part, keys: ['$ref', ...head, 'x-ref', 'x-open'] },
  { when: (part) => 'enum' in part, keys: ['type', 'enum', 'x-words', 'x-form', ...head] },
  { when: (part) => part.type === 'array', keys: ['type', 'items', ...head] },
  {
    when: (part) => 'properties' in part,
    keys: ['type', 'properties', 'required', 'additionalProperties', ...head, '$schema', '$id', '$defs'],
  },
  { when: (part) => part.type === 'object', keys: ['type', 'additionalProperties', 'x-keys', ...head] },
];

function outsideSubset({ part, inLeaf, at }: Met): string | undefined {
  if (inLeaf || 'x-form' in part || at === 'values') return undefined;
  const keys = subset.find(({ when }) => when(part))?.keys;
  if (keys === undefined) return 'is of no form we know';
  const extra = Object.keys(part).filter((key) => !keys.includes(key));
  if ('properties' in part && part.additionalProperties !== false) return 'leaves room for fields nobody knows';
  return extra.length > 0 ? `uses ${extra.join(', ')}` : undefined;
}

function targetOf(ref: string, file: string): unknown {
  const [path = '', pointer = ''] = ref.split('#/$defs/');
  const defs = schemas.get(path === '' ? file : path.replace('.schema.json', ''))?.$defs;
  return isPart(defs) ? defs[pointer] : undefined;
}

describe('schemas', () => {
  it('there is one a kind, and the shared forms', () => {
    expect([...schemas.keys()].sort()).toEqual([...kinds, 'values'].sort());
    for (const kind of kinds) {
      const properties = schemas.get(kind)?.properties;
      const first = isPart(properties) ? Object.entries(properties) : [];
      expect(first[0]?.[0]).toBe('kind');
      expect(first[0]?.[1]).toMatchObject({ enum: [kind] });
      expect(first[1]?.[0]).toBe('id');
      expect(schemas.get(kind)?.required).toEqual(expect.arrayContaining(['kind', 'id']));
    }
  });

  it('every reference resolves, inside the file or to the shared forms', () => {
    const broken = complaints(({ part, file }) => {
      const ref = part.$ref;
      if (ref === undefined) return undefined;
      const wellFormed = typeof ref === 'string' && /^(values\.schema\.json)?#\/\$defs\/[A-Za-z0-9_-]+$/.test(ref);
      return wellFormed && targetOf(ref, file) !== undefined ? undefined : `refers to ${String(ref)}`;
    });
    expect(broken).toEqual([]);
  });

  it('every definition and field has a title and a description that ends as a sentence', () => {
    const bare = complaints(({ part, named, file }) => {
      if (!named) return undefined;
      const target = typeof part.$ref === 'string' ? targetOf(part.$ref, file) : undefined;
      const { title, description } = { ...(isPart(target) && target), ...part };
      if (typeof title !== 'string' || title === '') return 'has no title';
      return typeof description === 'string' && /[.?]$/.test(description) ? undefined : 'has no description';
    });
    expect(bare).toEqual([]);
  });

  it('nothing outside the subset that the walker knows', () => {
    expect(complaints(outsideSubset)).toEqual([]);
  });

  it('every word of a closed list has a meaning, and no meaning is without its word', () => {
    const wordless = complaints(({ part }) => {
      const words = part['x-words'];
      if (part.enum === undefined && words === undefined) return undefined;
      if (!isPart(words) || Object.values(words).some((meaning) => typeof meaning !== 'string' || meaning.length < 4))
        return 'lacks a meaning';
      const listed = part.enum;
      return listed === undefined || String(Object.keys(words)) === String(listed)
        ? undefined
        : 'lists other words than it explains';
    });
    expect(wordless).toEqual([]);
  });

  it('every form and every referred kind is known', () => {
    const unknown = complaints(({ part }) => {
      const form = part['x-form'];
      if (form !== undefined && !forms.includes(String(form))) return `form ${String(form)}`;
      const named = [part['x-ref'] ?? []].flat().map(String);
      const stray = named.filter((name) => !inFile.includes(name) && !(kinds as readonly string[]).includes(name));
      if (stray.length > 0) return `refers to ${stray.join(', ')}`;
      const isReference = String(part.$ref).endsWith('#/$defs/reference');
      return isReference && named.length === 0 ? 'does not say what it refers to' : undefined;
    });
    expect(unknown).toEqual([]);
  });

  it('every dimension has a plain form and a requirement form with the same fields', () => {
    for (const dimension of dimensions) {
      expect(targetOf(`#/$defs/q-${dimension}`, 'values')).toMatchObject({
        'x-form': 'quantity',
        'x-dimension': dimension,
      });
      const requirement = targetOf(`#/$defs/${dimension}`, 'values');
      expect(requirement).toMatchObject({ 'x-form': 'requirement', 'x-dimension': dimension });
      const properties = isPart(requirement) ? requirement.properties : undefined;
      expect(isPart(properties) ? Object.keys(properties).sort() : []).toEqual([...requirementFields].sort());
    }
  });

  it('no two records share a name, so that generated types keep theirs', () => {
    const names = [...kinds.map(typeName)];
    for (const { at, part } of parts) {
      const name = /^[a-z-]+\/\$defs\/([A-Za-z0-9-]+)$/.exec(at)?.[1];
      if (name !== undefined && part.type === 'object' && part['x-form'] === undefined) names.push(typeName(name));
    }
    expect(names.filter((name, index) => names.indexOf(name) !== index)).toEqual([]);
  });
});

const ajv = new Ajv2020({ strict: true, strictRequired: false, allowUnionTypes: true });
ajv.addVocabulary(ownWords);
for (const schema of schemas.values()) ajv.addSchema(schema);

/** Undefined, or what the schema of the entity's kind says against it. */
function refusal(entity: Part): string | undefined {
  const validate = ajv.getSchema(`${String(entity.kind)}.schema.json`);
  if (validate === undefined) return 'no schema';
  return validate(entity) === true ? undefined : ajv.errorsText(validate.errors);
}

const entities = readdirSync(exampleFolder).flatMap(
  (file) => parse(readFileSync(join(exampleFolder, file), 'utf8')) as Part[],
);

describe('examples', () => {
  it.each(entities.map((entity) => [`${String(entity.kind)} ${String(entity.id)}`, entity] as const))(
    '%s is accepted',
    (_, entity) => {
      expect(refusal(entity)).toBeUndefined();
    },
  );

  it('there is one of every kind', () => {
    expect(kinds.filter((kind) => !entities.some((entity) => entity.kind === kind))).toEqual([]);
  });

  it.each([
    ['an unknown field', { kind: 'device', id: 'd', colour: 'red' }],
    ['a requirement that says nothing', { kind: 'device', id: 'd', manual: { soak: { src: 's1' } } }],
    ['a word outside a closed list', { kind: 'device', id: 'd', traits: ['shiny'] }],
    ['an id with a space', { kind: 'device', id: 'two words' }],
    ['an id of 65 letters', { kind: 'device', id: 'a'.repeat(65) }],
    ['a bare number where a bound word is needed', { kind: 'device', id: 'd', manual: { soak: '5 min' } }],
    ['a date of another form', { kind: 'set', id: 's', changed: '1.2.2025' }],
    ['an indicator of type 7', { kind: 'monitor', id: 'm', type: 7 }],
    ['a range of three', { kind: 'device', id: 'd', limits: { ph: { between: [6, 7, 8] } } }],
    ['no id', { kind: 'water' }],
  ])('%s is refused', (_, entity) => {
    expect(refusal(entity)).toBeDefined();
  });

  it('several bound words, a silent value and a missing unit are left to the rules', () => {
    const soak = { at_least: 5, at_most: '3 min', silent: true };
    expect(refusal({ kind: 'device', id: 'd', manual: { soak } })).toBeUndefined();
  });

  it('examples of leaf values are accepted where they stand', () => {
    const refused: string[] = [];
    for (const { part, at, file } of parts) {
      if (!Array.isArray(part.examples)) continue;
      const address = `${file}.schema.json#${at.slice(file.length)}`;
      const validate = ajv.getSchema(address);
      for (const example of part.examples) {
        if (validate?.(parse(String(example))) !== true)
          refused.push(`${address}: ${String(example)}: ${ajv.errorsText(validate?.errors)}`);
      }
    }
    expect(refused).toEqual([]);
  });
});
