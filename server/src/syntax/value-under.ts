import type { MapTree, Tree } from './tree.ts';

/** The value of a key of a map; undefined where the map has no such key. */
export function valueUnder(map: MapTree, key: string): Tree | undefined {
  return map.entries.find((entry) => entry.key.text === key)?.value;
}
