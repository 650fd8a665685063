import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import Ajv2020 from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isSurelyTaken } from '../../../server/src/schema/inspect.ts';
import { isKind, kinds } from '../../../server/src/schema/kinds.ts';
import { passesSchema } from '../../../server/src/schema/passes.ts';
import { readTree } from '../../../server/src/syntax/read.ts';
import type { MapEntry, ScalarTree, Tree } from '../../../server/src/syntax/tree.ts';
import { readSample } from '../../support/samples.ts';
import { runs } from '../fuzz/runs.ts';

const schemaFolder = join(import.meta.dirname, '../../../schemas');
const ajv = new Ajv2020({ strict: false, unicode: false, logger: false });
for (const file of readdirSync(schemaFolder)) ajv.addSchema(JSON.parse(readFileSync(join(schemaFolder, file), 'utf8')));
const validators = new Map(kinds.map((kind) => [kind, ajv.getSchema(`${kind}.schema.json`)]));

/** The tree as plain data, as a YAML 1.2 reader would give it; the first of two like keys counts. */
function plainOf(tree: Tree): unknown {
  switch (tree.node) {
    case 'empty':
      return null;
    case 'scalar':
      return plainScalar(tree);
    case 'list':
      return tree.items.map(plainOf);
    case 'map': {
      const plain: Record<string, unknown> = Object.create(null);
      for (const { key, value } of tree.entries) if (!(key.text in plain)) plain[key.text] = plainOf(value);
      return plain;
    }
  }
}

function plainScalar({ text, style }: ScalarTree): unknown {
  if (style !== 'plain') return text;
  if (text === 'true' || text === 'false') return text === 'true';
  if (text === '' || text === 'null' || text === '~') return null;
  return /^-?\d{1,15}(\.\d{1,15})?$/.test(text) ? Number(text) : text;
}

const nowhere = { start: 0, end: 0 };
const scalar = (text: string, style: ScalarTree['style'] = 'plain'): ScalarTree => ({
  node: 'scalar',
  span: nowhere,
  text,
  style,
});

const strange: readonly Tree[] = [
  ...['', 'null', '~', 'true', 'false', '0', '7', '1.0', '-3', '4 min', 'word', 's1', '2025-03-03', 'a'.repeat(70)].map(
    (text) => scalar(text),
  ),
  ...['', '7', 'true', 'biological', '2025-03-03T10:00', 'x'.repeat(2_100), 'x'.repeat(20_001)].map((text) =>
    scalar(text, 'double-quoted'),
  ),
  { node: 'empty', span: nowhere },
  { node: 'list', span: nowhere, items: [] },
  { node: 'list', span: nowhere, items: [scalar('1'), scalar('2'), scalar('3')] },
  { node: 'map', span: nowhere, entries: [] },
  { node: 'map', span: nowhere, entries: [{ key: scalar('at_least'), value: scalar('4 min') }] },
  { node: 'map', span: nowhere, entries: [{ key: scalar('src'), value: scalar('s1') }] },
];

type Roll = (limit: number) => number;

/** The tree with one part, chosen by `roll`, replaced, left out, doubled or renamed. */
function altered(tree: Tree, roll: Roll): Tree {
  const inside = tree.node === 'map' ? tree.entries.length : tree.node === 'list' ? tree.items.length : 0;
  if (inside === 0 || roll(6) === 0) return strange[roll(strange.length)] ?? tree;
  const at = roll(inside);
  if (tree.node === 'list') {
    return { ...tree, items: tree.items.flatMap((item, index) => (index === at ? alteredItem(item, roll) : [item])) };
  }
  if (tree.node !== 'map') return tree;
  return {
    ...tree,
    entries: tree.entries.flatMap((entry, index) => (index === at ? alteredEntry(entry, roll) : [entry])),
  };
}

function alteredItem(item: Tree, roll: Roll): readonly Tree[] {
  const how = roll(6);
  return how === 0 ? [] : how === 1 ? [item, item] : [altered(item, roll)];
}

function alteredEntry(entry: MapEntry, roll: Roll): readonly MapEntry[] {
  switch (roll(10)) {
    case 0:
      return [];
    case 1:
      return [entry, { key: entry.key, value: altered(entry.value, roll) }];
    case 2:
      return [{ key: scalar('no_such_field'), value: entry.value }];
    default:
      return [{ key: entry.key, value: altered(entry.value, roll) }];
  }
}

const trees = [
  'lanternfield',
  'lanternfield-corrected',
  'saltmere-eye-clinic',
  'saltmere-eye-clinic-corrected',
].flatMap((name) => [...readSample(name).values()].flatMap((text) => readTree(text).tree ?? []));
for (const file of readdirSync(join(import.meta.dirname, 'examples'))) {
  const tree = readTree(readFileSync(join(import.meta.dirname, 'examples', file), 'utf8')).tree;
  if (tree?.node === 'list') trees.push(...tree.items);
}

interface Verdicts {
  readonly library: boolean;
  readonly walk: boolean;
  /** The walk through tree and shape is sure that it fits, without the compiled schema. */
  readonly sure: boolean;
}

/** What the schema library and ours say of one tree; undefined when it is of no kind. */
function verdicts(tree: Tree): Verdicts | undefined {
  if (tree.node !== 'map') return undefined;
  const kind = tree.entries.find(({ key }) => key.text === 'kind')?.value;
  if (kind?.node !== 'scalar' || !isKind(kind.text)) return undefined;
  const library = validators.get(kind.text)?.(plainOf(tree)) === true;
  return { library, walk: passesSchema(tree, kind.text) === undefined, sure: isSurelyTaken(tree) };
}

/** Words of schemas that limit what may stand in a file, under the form of the part they stand in. */
function limitingWords(part: unknown, found: Map<string, Set<string>>): void {
  if (typeof part !== 'object' || part === null) return;
  const words = Object.keys(part).filter((word) => !describing.has(word) && !word.startsWith('x-'));
  const form = '$ref' in part ? 'reference' : 'properties' in part ? 'record' : 'items' in part ? 'list' : 'table';
  if ('$ref' in part || 'properties' in part || 'items' in part || 'additionalProperties' in part)
    for (const word of words) found.set(form, (found.get(form) ?? new Set()).add(word));
  for (const [key, inside] of Object.entries(part)) {
    if (key === 'properties' || key === '$defs')
      for (const one of Object.values(inside as object)) limitingWords(one, found);
    else if (key === 'items' || key === 'additionalProperties') limitingWords(inside, found);
  }
}

const describing: ReadonlySet<string> = new Set(['title', 'description', 'examples', '$schema', '$id', '$defs']);

describe('the walk through tree and shape', () => {
  it('is sure of nearly every file that the schema library takes, and of none that it refuses', () => {
    const said = trees.flatMap((tree) => verdicts(tree) ?? []);
    const taken = said.filter(({ library }) => library);
    expect(said.filter(({ sure, library }) => sure && !library)).toEqual([]);
    expect(taken.filter(({ sure }) => sure).length).toBeGreaterThan(0.9 * taken.length);
  });

  it('looks at all that schemas ask of more than one value', () => {
    const found = new Map<string, Set<string>>();
    for (const file of readdirSync(schemaFolder))
      limitingWords(JSON.parse(readFileSync(join(schemaFolder, file), 'utf8')), found);
    expect(Object.fromEntries([...found].map(([form, words]) => [form, [...words].sort()]))).toEqual({
      reference: ['$ref'],
      record: ['additionalProperties', 'anyOf', 'properties', 'required', 'type'],
      list: ['items', 'maxItems', 'minItems', 'type'],
      table: ['additionalProperties', 'type'],
    });
  });
});

describe('the compiled schemas', () => {
  it('take what the schema library takes, of samples and examples of every kind', () => {
    const differing = trees.filter((tree) => {
      const said = verdicts(tree);
      return said !== undefined && said.library !== said.walk;
    });
    expect(differing).toEqual([]);
    expect(trees.filter((tree) => verdicts(tree)?.walk === true).length).toBeGreaterThan(240);
  });

  it('agree with the schema library on files with parts replaced, left out, doubled and renamed', () => {
    const seen = { taken: 0, sure: 0, refused: 0 };
    fc.assert(
      fc.property(
        fc.nat(trees.length - 1),
        fc.infiniteStream(fc.nat(1_000_000)),
        fc.integer({ min: 1, max: 3 }),
        (which, stream, times) => {
          const roll: Roll = (limit) => (stream.next().value ?? 0) % limit;
          let tree = trees[which];
          for (let time = 0; time < times && tree !== undefined; time++) tree = altered(tree, roll);
          const said = tree === undefined ? undefined : verdicts(tree);
          if (said === undefined) return;
          seen[said.library ? 'taken' : 'refused']++;
          if (said.sure) seen.sure++;
          expect(said.walk).toBe(said.library);
          expect(said.sure && !said.library).toBe(false);
        },
      ),
      { numRuns: runs(4_000), seed: 20250303 },
    );
    expect(seen.taken).toBeGreaterThan(400);
    expect(seen.sure).toBeGreaterThan(400);
    expect(seen.refused).toBeGreaterThan(1_000);
  }, 1_200_000);
});
