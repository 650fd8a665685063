import type { SchemaPart } from '../src/schema/shape.ts';

/**
 * The schemas without anything that only describes, and with definitions that then say the same merged into one: what a validator needs
 * and no more. `24 dimensions x the same requirement` becomes one function.
 */
export function bareSchemas(schemas: ReadonlyMap<string, SchemaPart>): ReadonlyMap<string, Json> {
  const bare = new Map<string, Json>();
  for (const [name, schema] of schemas) bare.set(name, withoutWords(schema as Json));
  for (let merged = true; merged; ) merged = mergeTwins(bare);
  return bare;
}

type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };

const describing = new Set(['title', 'description', 'examples']);

function withoutWords(part: Json): Json {
  if (Array.isArray(part)) return part.map(withoutWords);
  if (typeof part !== 'object' || part === null) return part;
  const kept: Record<string, Json> = {};
  for (const [key, value] of Object.entries(part)) {
    if (
      key.startsWith('x-') ||
      (describing.has(key) && typeof value !== 'object') ||
      (key === 'examples' && Array.isArray(value))
    )
      continue;
    kept[key] = withoutWords(value);
  }
  return kept;
}

/** Points every reference to a definition that says what another says to the first of them. True when anything changed. */
function mergeTwins(schemas: Map<string, Json>): boolean {
  const values = schemas.get('values') as { $defs: Record<string, Json> } | undefined;
  if (values === undefined) return false;
  const firstWith = new Map<string, string>();
  const twins = new Map<string, string>();
  for (const [name, definition] of Object.entries(values.$defs)) {
    const text = JSON.stringify(definition).replaceAll(`#/$defs/${name}"`, '#/$defs/itself"');
    const first = firstWith.get(text);
    if (first === undefined) firstWith.set(text, name);
    else twins.set(name, first);
  }
  if (twins.size === 0) return false;
  for (const [file, schema] of schemas) schemas.set(file, repointed(schema, twins));
  const merged = schemas.get('values') as { $defs: Record<string, Json> };
  const kept = Object.entries(merged.$defs).filter(([name]) => !twins.has(name));
  schemas.set('values', { ...merged, $defs: Object.fromEntries(kept) } as Json);
  return true;
}

function repointed(part: Json, twins: ReadonlyMap<string, string>): Json {
  if (Array.isArray(part)) return part.map((item) => repointed(item, twins));
  if (typeof part !== 'object' || part === null) return part;
  const kept: Record<string, Json> = {};
  for (const [key, value] of Object.entries(part)) {
    kept[key] = key === '$ref' && typeof value === 'string' ? repointedRef(value, twins) : repointed(value, twins);
  }
  return kept;
}

function repointedRef(ref: string, twins: ReadonlyMap<string, string>): string {
  const [file = '', name = ''] = ref.split('#/$defs/');
  const first = file === 'values.schema.json' || file === '' ? twins.get(name) : undefined;
  return first === undefined ? ref : `${file}#/$defs/${first}`;
}
