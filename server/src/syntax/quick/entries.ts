import type { MapEntry, ScalarTree, Tree } from '../tree.ts';

/** Above this many keys a set is faster than looking back. */
const LOOK_BACK = 8;

/** The entries of one map as they are read. All keys are ASCII. */
export class Entries {
  readonly list: MapEntry[] = [];
  #texts: Set<string> | undefined;

  /** False when the same key, capital letters or not, is there already. */
  add(key: ScalarTree, value: Tree): boolean {
    if (this.#has(key.text)) return false;
    this.#texts?.add(key.text.toLowerCase());
    this.list.push({ key, value });
    if (this.list.length === LOOK_BACK) this.#texts = new Set(this.list.map((entry) => entry.key.text.toLowerCase()));
    return true;
  }

  #has(text: string): boolean {
    if (this.#texts !== undefined) return this.#texts.has(text.toLowerCase());
    for (const { key } of this.list) {
      if (key.text.length === text.length && (key.text === text || key.text.toLowerCase() === text.toLowerCase()))
        return true;
    }
    return false;
  }
}
