import { contentOf } from '../model/content.ts';
import type { List, Node, Rec } from '../model/node.ts';
import { alignItems, labelOf, textAt } from './align.ts';
import type { ChangeClass } from './change.ts';
import type { Verdict } from './demands.ts';
import {
  acceptingLists,
  demandingLists,
  optionLists,
  orderedLists,
  prohibitionLists,
  scopeFields,
  stepLists,
  wordingFields,
} from './fields.ts';
import { citationIn, type Spot, type Walk } from './walk.ts';
import { meaningWords } from './words.ts';

type Compare = (old: Node, now: Node, spot: Spot) => void;

/** Two lists under one key; either may be missing, which is the same as empty. `owner` is the old record that holds it. */
export function compareLists(
  walk: Walk,
  key: string,
  owner: Rec,
  old: List<Node> | undefined,
  now: List<Node> | undefined,
  spot: Spot,
  compare: Compare,
): void {
  const items = [...(old?.items ?? []), ...(now?.items ?? [])];
  if (items.some(({ node }) => node === 'record')) compareRecordLists(walk, key, owner, old, now, spot, compare);
  else compareWordLists(walk, key, old, now, spot);
}

function compareWordLists(
  walk: Walk,
  key: string,
  old: List<Node> | undefined,
  now: List<Node> | undefined,
  spot: Spot,
): void {
  const before = (old?.items ?? []).map(contentOf);
  const after = (now?.items ?? []).map(contentOf);
  const [had, has] = [new Set(before), new Set(after)];
  const gone = [...had].some((word) => !has.has(word));
  const come = [...has].some((word) => !had.has(word));
  const isMoved = orderedLists.has(key) && before.join() !== after.join();
  if (!gone && !come && !isMoved) return;
  const verdict =
    gone || come ? wordListVerdict(key, gone, come, had.size, has.size) : { class: 'step-reordered' as const };
  walk.report(verdict, spot, old, now);
}

function wordListVerdict(key: string, ...[gone, come, had, has]: readonly [unknown, unknown, number, number]): Verdict {
  if (wordingFields.has(key)) return { class: 'editorial' };
  if (scopeFields.has(key)) return { class: 'scope' };
  if (has === 0) return { class: 'became-silent' };
  if (had === 0) return { class: 'became-stated' };
  if (gone === come) return { class: 'different' };
  if (acceptingLists.has(key)) return { class: gone === true ? 'stricter' : 'looser' };
  if (demandingLists.has(key)) return { class: come === true ? 'stricter' : 'looser' };
  return { class: 'different' };
}

function compareRecordLists(
  walk: Walk,
  key: string,
  owner: Rec,
  old: List<Node> | undefined,
  now: List<Node> | undefined,
  spot: Spot,
  compare: Compare,
): void {
  const [before, after] = [old?.items ?? [], now?.items ?? []];
  const { pairs, removed, added } = alignItems(key, before, after);
  const [oldNames, newNames] = [namesOf(before), namesOf(after)];
  const edited = editorOf(owner, key, old, now);
  const spotOf = (one: Node | undefined, other: Node | undefined): Spot => ({
    beforePath: `${spot.beforePath}[${named(oldNames, one) ?? named(newNames, other) ?? ''}]`,
    afterPath: `${spot.afterPath}[${named(newNames, other) ?? named(oldNames, one) ?? ''}]`,
    beforeSrc: citationIn(one) ?? spot.beforeSrc,
    afterSrc: citationIn(other) ?? spot.afterSrc,
    put: (node) => edited(one, node),
  });
  for (const item of removed)
    walk.report({ class: classOfItem(key, 'removed') }, spotOf(item, undefined), item, undefined);
  for (const [one, other] of pairs) compare(one, other, spotOf(one, other));
  for (const item of added) walk.report({ class: classOfItem(key, 'added') }, spotOf(undefined, item), undefined, item);
  if (isOrdered(key, owner)) reportMoves(walk, pairs, after, old, now, spot);
}

/** The list with one item replaced, taken away or put at the end; made anew where the old side has none. */
function editorOf(owner: Rec, key: string, old: List<Node> | undefined, now: List<Node> | undefined) {
  return (one: Node | undefined, node: Node | undefined) => {
    if (old === undefined) {
      const made = now === undefined || node === undefined ? undefined : { ...now, items: [node] };
      return { is: 'field', owner, key, node: made } as const;
    }
    const items: Node[] = [];
    for (const item of old.items) {
      if (item !== one) items.push(item);
      else if (node !== undefined) items.push(node);
    }
    if (one === undefined && node !== undefined) items.push(node);
    return { is: 'list', owner: old, items } as const;
  };
}

const addedClasses: readonly (readonly [ReadonlySet<string>, ChangeClass, ChangeClass])[] = [
  [prohibitionLists, 'new-prohibition', 'prohibition-removed'],
  [optionLists, 'option-added', 'option-removed'],
  [stepLists, 'step-added', 'step-removed'],
  [scopeFields, 'scope', 'scope'],
  [wordingFields, 'editorial', 'editorial'],
];

/** A member of a list of which no role is known is a demand more, or one less. */
function classOfItem(key: string, what: 'added' | 'removed'): ChangeClass {
  for (const [keys, added, removed] of addedClasses) if (keys.has(key)) return what === 'added' ? added : removed;
  return what === 'added' ? 'stricter' : 'looser';
}

function isOrdered(key: string, owner: Rec): boolean {
  if (!orderedLists.has(key)) return false;
  return !('unordered' in owner && (owner.unordered as { on?: boolean } | undefined)?.on === true);
}

/** One change for the whole list, whatever number of steps moved. */
function reportMoves(
  walk: Walk,
  pairs: readonly (readonly [Node, Node])[],
  after: readonly Node[],
  old: List<Node> | undefined,
  now: List<Node> | undefined,
  spot: Spot,
): void {
  const places = pairs.map(([, other]) => after.indexOf(other));
  if (places.every((place, at) => at === 0 || place > (places[at - 1] ?? -1))) return;
  const order = new Map(pairs.map(([one, other]) => [other, one]));
  const moved = after.flatMap((item) => order.get(item) ?? []);
  const rest = (old?.items ?? []).filter((item) => !moved.includes(item));
  const { beforePath, afterPath, beforeSrc, afterSrc } = spot;
  const say = (items: readonly Node[]) => items.map((item) => labelOf(item) ?? meaningWords(item)).join(', then ');
  walk.drafts.push({
    class: 'step-reordered',
    beforePath,
    afterPath,
    beforeSrc,
    afterSrc,
    before: old,
    after: now,
    ...(old !== undefined && { edit: { is: 'list', owner: old, items: [...moved, ...rest] } }),
    words: { before: say(pairs.map(([one]) => one)), after: say(moved) },
  });
}

/** Names of the items in a path; a name that comes twice is numbered. */
function namesOf(items: readonly Node[]): ReadonlyMap<Node, string> {
  const names = new Map<Node, string>();
  const count = new Map<string, number>();
  for (const [index, item] of items.entries()) {
    const label = (item.node === 'record' ? textAt(item, 'id') : undefined) ?? labelOf(item) ?? String(index);
    const times = (count.get(label) ?? 0) + 1;
    count.set(label, times);
    names.set(item, times === 1 ? label : `${label} ${times}`);
  }
  return names;
}

function named(names: ReadonlyMap<Node, string>, item: Node | undefined): string | undefined {
  return item === undefined ? undefined : names.get(item);
}
