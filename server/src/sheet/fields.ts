import type { ListTree, MapEntry, MapTree, Tree } from '../syntax/tree.ts';

/** Between the items of a list in one cell. */
const between = '; ';

export function entryOf(map: MapTree, key: string): MapEntry | undefined {
  return map.entries.find((entry) => entry.key.text === key);
}

/** What stands at a path, or undefined where a part of the way is missing. */
export function treeAt(tree: Tree, path: readonly (string | number)[]): Tree | undefined {
  let at: Tree | undefined = tree;
  for (const part of path) {
    if (typeof part === 'number') at = at?.node === 'list' ? at.items[part] : undefined;
    else at = at?.node === 'map' ? entryOf(at, part)?.value : undefined;
  }
  return at;
}

/** A value as the text of a cell; undefined for what is too rich for a cell. */
export function cellOf(tree: Tree | undefined): string | undefined {
  if (tree === undefined || tree.node === 'empty') return '';
  if (tree.node === 'scalar') return tree.text;
  return tree.node === 'list' ? listCell(tree) : undefined;
}

function listCell({ items }: ListTree): string | undefined {
  const texts: string[] = [];
  for (const item of items) {
    if (item.node !== 'scalar' || item.text.trim() !== item.text || item.text === '' || item.text.includes(';'))
      return undefined;
    texts.push(item.text);
  }
  return texts.join(between);
}

/** The items that the text of a cell lists. */
export function itemsIn(cell: string): readonly string[] {
  return cell
    .split(/[;\n]/)
    .map((item) => item.trim())
    .filter((item) => item !== '');
}
