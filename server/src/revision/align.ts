import { contentOf, fieldAt, keysOf, tidy } from '../model/content.ts';
import type { Node, Rec } from '../model/node.ts';
import { optionLists, prohibitionLists } from './fields.ts';

/** Which item of the old list is which of the new. */
export interface Alignment<Item> {
  readonly pairs: readonly (readonly [Item, Item])[];
  readonly removed: readonly Item[];
  readonly added: readonly Item[];
}

/** Longer lists than this are aligned by name and content only: likeness looks at every pair. */
const mostForLikeness = 200;

/** At least this share of what two items say must agree before they are taken for one. */
const alike = 0.5;

type Key<Item> = (item: Item) => string | undefined;
type Likeness<Item> = (a: Item, b: Item) => number;

/** Pairs by each key in turn, then by likeness, best first. Every item stands in exactly one place of the answer. */
export function align<Item>(
  old: readonly Item[],
  now: readonly Item[],
  keys: readonly Key<Item>[],
  likeness: Likeness<Item>,
): Alignment<Item> {
  const partner = new Map<Item, Item>();
  const taken = new Set<Item>();
  for (const key of keys) pairByKey(old, now, key, partner, taken);
  const left = old.filter((item) => !partner.has(item));
  const free = now.filter((item) => !taken.has(item));
  if (left.length <= mostForLikeness && free.length <= mostForLikeness)
    pairByLikeness(left, free, likeness, partner, taken);
  const pairs: [Item, Item][] = [];
  for (const item of old) {
    const other = partner.get(item);
    if (other !== undefined) pairs.push([item, other]);
  }
  return {
    pairs,
    removed: old.filter((item) => !partner.has(item)),
    added: now.filter((item) => !taken.has(item)),
  };
}

function pairByKey<Item>(
  old: readonly Item[],
  now: readonly Item[],
  key: Key<Item>,
  partner: Map<Item, Item>,
  taken: Set<Item>,
): void {
  const waiting = new Map<string, Item[]>();
  for (const item of now) {
    const name = taken.has(item) ? undefined : key(item);
    if (name !== undefined) waiting.set(name, [...(waiting.get(name) ?? []), item]);
  }
  for (const item of old) {
    const name = partner.has(item) ? undefined : key(item);
    const match = name === undefined ? undefined : waiting.get(name)?.shift();
    if (match === undefined) continue;
    partner.set(item, match);
    taken.add(match);
  }
}

/** Ties go to the pair whose texts sort first, whichever side they stand on, so that comparing backwards pairs the same. */
function pairByLikeness<Item>(
  old: readonly Item[],
  now: readonly Item[],
  likeness: Likeness<Item>,
  partner: Map<Item, Item>,
  taken: Set<Item>,
): void {
  const scored: { score: number; apart: number; a: Item; b: Item }[] = [];
  for (const [i, a] of old.entries()) {
    for (const [j, b] of now.entries()) {
      const score = likeness(a, b);
      if (score >= alike) scored.push({ score, apart: Math.abs(i - j), a, b });
    }
  }
  scored.sort((one, other) => other.score - one.score || one.apart - other.apart);
  for (const { a, b } of scored) {
    if (partner.has(a) || taken.has(b)) continue;
    partner.set(a, b);
    taken.add(b);
  }
}

/** Aligns the records of one list: by name, by equal content, by likeness. */
export function alignItems(list: string, old: readonly Node[], now: readonly Node[]): Alignment<Node> {
  const keys: Key<Node>[] = [idOf, contentOf];
  if (prohibitionLists.has(list)) keys.push(forbiddenWithNumber, forbidden);
  else keys.push((item) => labelOf(item));
  return align(old, now, keys, (a, b) => likenessOf(list, a, b));
}

function idOf(item: Node): string | undefined {
  return item.node === 'record' ? textAt(item, 'id') : undefined;
}

function forbidden(item: Node): string | undefined {
  return item.node === 'record' ? textAt(item, 'what') : undefined;
}

function forbiddenWithNumber(item: Node): string | undefined {
  if (item.node !== 'record') return undefined;
  return `${textAt(item, 'what') ?? ''} ${textAt(item, 'value') ?? ''} ${textAt(item, 'when') ?? ''}`;
}

/** Fields that name an item where it has no id, the likeliest first. */
const naming = ['what', 'stage', 'do', 'device', 'doc', 'modality', 'packaging', 'role', 'phase', 'text', 'material'];

/** How an item is called in a path: by its id, or by what it is about; undefined where only its position tells. */
export function labelOf(item: Node): string | undefined {
  if (item.node !== 'record') return undefined;
  const id = textAt(item, 'id');
  if (id !== undefined) return id;
  for (const key of naming) {
    const text = textAt(item, key);
    if (text !== undefined) return text;
  }
  return undefined;
}

export function textAt(record: Rec, key: string): string | undefined {
  const node = fieldAt(record, key);
  return node?.node === 'text' ? tidy(node.text) : undefined;
}

/**
 * Share of fields with equal content among all that either has. An option of another method is another option, and a prohibition of
 * something else another prohibition, however alike the rest.
 */
function likenessOf(list: string, a: Node, b: Node): number {
  if (a.node !== 'record' || b.node !== 'record' || prohibitionLists.has(list)) return 0;
  if (optionLists.has(list) && ['modality', 'context', 'stage'].some((key) => textAt(a, key) !== textAt(b, key)))
    return 0;
  const ours = new Set([...keysOf(a), ...keysOf(b)].filter((key) => key !== 'id' && key !== 'src'));
  let same = 0;
  for (const key of ours) {
    const [one, other] = [fieldAt(a, key), fieldAt(b, key)];
    if (one !== undefined && other !== undefined && contentOf(one) === contentOf(other)) same++;
  }
  return ours.size === 0 ? 1 : same / ours.size;
}
