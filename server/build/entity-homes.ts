import type { Kind } from '../src/schema/kinds.ts';
import type { RecordShape, Shape } from '../src/schema/shape.ts';

/**
 * In which file each record's type stands, by the file's name: with the kind that alone uses it; of a device with the stage of the work that
 * alone uses it (`device-manual`); else in a file of its own, named after it (`water-quality`). Kinds come in the order of `roots`.
 */
export function homesOf(
  roots: ReadonlyMap<Kind, RecordShape>,
  nameOf: (shape: RecordShape) => string,
): ReadonlyMap<string, readonly RecordShape[]> {
  const users = new Map<RecordShape, Set<string>>();
  for (const [kind, root] of roots) {
    note(users, root, kind);
    for (const { shape, stage } of root.fields.values()) {
      const user = kind === 'device' && stage !== undefined ? `device-${stage}` : kind;
      for (const record of recordsIn(shape)) note(users, record, user);
    }
  }
  const homes = new Map<string, RecordShape[]>();
  for (const [shape, of] of users) {
    const [only, ...more] = of;
    const home = only === undefined || more.length > 0 ? kebab(nameOf(shape)) : only;
    homes.set(home, [...(homes.get(home) ?? []), shape]);
  }
  return homes;
}

function note(users: Map<RecordShape, Set<string>>, shape: RecordShape, user: string): void {
  users.set(shape, (users.get(shape) ?? new Set()).add(user));
}

/** Every record that the shape is made of, itself included, but no requirement: its type is written by hand. */
function recordsIn(shape: Shape, found = new Set<RecordShape>()): ReadonlySet<RecordShape> {
  if (shape.form === 'list') return recordsIn(shape.item, found);
  if (shape.form === 'table') return recordsIn(shape.value, found);
  if (shape.form !== 'record' || shape.name === 'Requirement' || found.has(shape)) return found;
  found.add(shape);
  for (const field of shape.fields.values()) recordsIn(field.shape, found);
  return found;
}

/** `WaterQuality` to `water-quality`. */
function kebab(name: string): string {
  return name.replace(/(?<=[a-z0-9])[A-Z]/g, '-$&').toLowerCase();
}
