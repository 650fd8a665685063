import type { Tree } from '../../../server/src/syntax/tree.ts';

export type Plain = string | null | Plain[] | { [key: string]: Plain };

/** A tree as bare values, to compare. An empty place is null. Keys are own properties, `__proto__` too. */
export function plain(tree: Tree | undefined): Plain {
  if (tree === undefined || tree.node === 'empty') return null;
  if (tree.node === 'scalar') return tree.text;
  if (tree.node === 'list') return tree.items.map(plain);
  const out: { [key: string]: Plain } = Object.create(null);
  for (const { key, value } of tree.entries) out[key.text] = plain(value);
  return { ...out };
}
