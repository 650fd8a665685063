import type { FileRecord } from '../../library/file-record.ts';
import { subjectOf } from '../../library/keys.ts';

/**
 * The places of the records in an order in which those that have to do with each other lie together, so that whoever judges a stretch of
 * it works out few answers that others work out too. Files that share a name are joined, those with rare names first: a set with its
 * devices and their documents, then all of a department, then all of a maker. The same for the same records.
 */
export function neighbours(records: readonly (Pick<FileRecord, 'exports'> | undefined)[]): readonly number[] {
  const chains = new Chains(records.length);
  const groups = [...placesBySubject(records).values()].filter(({ length }) => length > 1);
  for (const places of groups.sort((a, b) => a.length - b.length)) {
    const [first = 0, ...others] = places;
    for (const place of others) chains.join(first, place);
  }
  return chains.order();
}

/** Which records declare or name what. */
function placesBySubject(
  records: readonly (Pick<FileRecord, 'exports'> | undefined)[],
): ReadonlyMap<string, readonly number[]> {
  const places = new Map<string, number[]>();
  for (const [place, record] of records.entries()) {
    for (const key of record?.exports ?? []) {
      const subject = subjectOf(key);
      const known = places.get(subject);
      if (known === undefined) places.set(subject, [place]);
      else if (known.at(-1) !== place) known.push(place);
    }
  }
  return places;
}

/** Chains of places; each place is one by itself at first. */
class Chains {
  readonly #parent: Int32Array;
  /** Of the first place of a chain. */
  readonly #last: Int32Array;
  readonly #next: Int32Array;

  constructor(length: number) {
    this.#parent = Int32Array.from({ length }, (_, place) => place);
    this.#last = this.#parent.slice();
    this.#next = new Int32Array(length).fill(-1);
  }

  /** Puts the second's chain behind the first's. */
  join(one: number, other: number): void {
    const [head, tail] = [this.#headOf(one), this.#headOf(other)];
    if (head === tail) return;
    this.#next[this.#last[head] ?? head] = tail;
    this.#last[head] = this.#last[tail] ?? tail;
    this.#parent[tail] = head;
  }

  order(): readonly number[] {
    const order: number[] = [];
    for (let head = 0; head < this.#parent.length; head++)
      if (this.#parent[head] === head)
        for (let place = head; place >= 0; place = this.#next[place] ?? -1) order.push(place);
    return order;
  }

  #headOf(place: number): number {
    let head = place;
    for (let parent = this.#parent[head] ?? head; parent !== head; parent = this.#parent[head] ?? head) {
      this.#parent[head] = this.#parent[parent] ?? parent;
      head = parent;
    }
    return head;
  }
}
