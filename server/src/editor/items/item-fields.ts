import type { Field, RecordShape } from '../../schema/shape.ts';
import type { MapTree } from '../../syntax/tree.ts';
import { valueUnder } from '../../syntax/value-under.ts';
import { commonFields, missingFields } from '../completion/completion-order.ts';

const mostAsked = 7;

/** Asked for by themselves: what cites, and what is made of the other answers. */
const apart: ReadonlySet<string> = new Set(['src', 'id']);

/**
 * The fields that are asked one after the other: first what must be there, then what most neighbours say. Where there are no neighbours to learn
 * from, the first fields in the order of the work.
 */
export function usualFields(shape: RecordShape, like: readonly MapTree[]): readonly Field[] {
  const keys = like.length === 0 ? commonKeys(shape) : keysOfMost(like);
  const all = [...shape.required, ...keys].filter((key) => !apart.has(key));
  return [...new Set(all)].flatMap((key) => shape.fields.get(key) ?? []).filter(canBeAsked);
}

/** Every other field, in the order of the work. */
export function furtherFields(shape: RecordShape, asked: ReadonlySet<string>): readonly Field[] {
  const present = new Map([...asked].map((key) => [key, '']));
  return missingFields(shape, present).filter((field) => !apart.has(field.key) && canBeAsked(field));
}

function commonKeys(shape: RecordShape): readonly string[] {
  return commonFields(shape)
    .map(({ key }) => key)
    .filter((key) => !apart.has(key))
    .slice(0, mostAsked);
}

function keysOfMost(like: readonly MapTree[]): readonly string[] {
  const counts = new Map<string, number>();
  for (const { entries } of like) for (const { key } of entries) counts.set(key.text, (counts.get(key.text) ?? 0) + 1);
  return [...counts].filter(([, count]) => count * 2 >= like.length).map(([key]) => key);
}

/** A table has names of its own, and a node that holds nodes like itself would never end. */
function canBeAsked({ shape, key }: Field): boolean {
  if (key === 'all_of' || key === 'any_of' || shape.form === 'table') return false;
  return !(shape.form === 'list' && shape.item.form === 'record' && shape.item.dimension !== undefined);
}

/** The same of a group inside an item: groups in it are asked for only where neighbours have them, since some hold themselves. */
export function usualInside(shape: RecordShape, like: readonly MapTree[]): readonly Field[] {
  const fields = usualFields(shape, like);
  return like.length > 0 ? fields : fields.filter((field) => !isGroup(field));
}

function isGroup({ shape }: Field): boolean {
  const one = shape.form === 'list' ? shape.item : shape;
  return one.form === 'record' && one.dimension === undefined;
}

/** What the neighbours have under a key, where that is a group. */
export function insideOf(like: readonly MapTree[], key: string): readonly MapTree[] {
  return like.flatMap((map) => {
    const value = valueUnder(map, key);
    if (value?.node === 'map') return [value];
    return value?.node === 'list' ? value.items.filter((item) => item.node === 'map') : [];
  });
}
