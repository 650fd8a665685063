/** Fields by the keys that lead to them, written on one line: those under one key stand between its braces. */

export interface Keyed {
  /** `[]` behind the last key: an item of a list. */
  readonly keys: readonly string[];
  readonly value: string;
}

/** `wash: {temp: ..., time: ...}` and `steps: [..., ...]`, each entry by itself. */
export function entriesOf(fields: readonly Keyed[]): readonly string[] {
  const groups = new Map<string, Keyed[]>();
  for (const { keys, value } of fields) {
    const [key = '', ...rest] = keys;
    groups.set(key, [...(groups.get(key) ?? []), { keys: rest, value }]);
  }
  return [...groups].map(([key, inner]) => entryOf(key, inner));
}

function entryOf(key: string, inner: readonly Keyed[]): string {
  const values = inner.filter(({ keys }) => keys.length === 0).map(({ value }) => value);
  if (key.endsWith('[]')) return `${key.slice(0, -2)}: [${values.join(', ')}]`;
  const deeper = inner.filter(({ keys }) => keys.length > 0);
  return deeper.length === 0 ? `${key}: ${values[0] ?? ''}` : `${key}: {${entriesOf(deeper).join(', ')}}`;
}
