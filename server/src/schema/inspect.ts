import { nearest } from '../base/nearest.ts';
import type { Problem } from '../base/problem.ts';
import { scalarHazard } from '../syntax/hazards.ts';
import type { ListTree, MapEntry, MapTree, ScalarTree, Tree } from '../syntax/tree.ts';
import type { Kind } from './kinds.ts';
import { isKind, kinds } from './kinds.ts';
import { isWithin, plainTypeOf } from './limits.ts';
import { passesSchema } from './passes.ts';
import { emptyValue, unfitting, words } from './problems.ts';
import { sayingWords } from './saying-words.ts';
import type { ListShape, RecordShape, ScalarShape, Shape } from './shape.ts';
import { shapeOf } from './shapes.ts';

/**
 * What is wrong with a file's form, in plain words: one root cause, one problem. The compiled schema has the last word wherever the walk
 * below is not sure: if it refuses a file in which the walk sees nothing, that is said too, so that the two can't drift apart unseen.
 */
export function inspect(tree: MapTree): readonly Problem[] {
  const { kind, problems, isDoubtful } = seenIn(tree);
  if (kind !== undefined && problems.length === 0 && isDoubtful) {
    const refusal = passesSchema(tree, kind);
    if (refusal !== undefined) problems.push(words.refused(tree, refusal));
  }
  return problems;
}

/** Whether the walk alone sees that the compiled schema takes the file. Where it does not, the schema may take it all the same. */
export function isSurelyTaken(tree: MapTree): boolean {
  const { problems, isDoubtful } = seenIn(tree);
  return problems.length === 0 && !isDoubtful;
}

/** What the walk has come upon so far. */
interface Seen {
  readonly kind?: Kind;
  readonly problems: Problem[];
  /** Set at anything of which only the compiled schema can tell whether it is right. */
  isDoubtful: boolean;
}

function seenIn(tree: MapTree): Seen {
  const kind = kindOf(tree);
  if (typeof kind !== 'string') return { problems: [kind], isDoubtful: false };
  const seen: Seen = { kind, problems: [], isDoubtful: false };
  inspectRecord(tree, shapeOf(kind), `A ${kind} file`, seen);
  return seen;
}

function kindOf(tree: MapTree): Kind | Problem {
  const entry = tree.entries.find(({ key }) => key.text === 'kind');
  if (entry === undefined) return words.kindMissing(tree);
  if (entry.value.node !== 'scalar') return words.kindUnknown(entry.value, '', undefined);
  const text = entry.value.text;
  return isKind(text) ? text : words.kindUnknown(entry.value, text, nearest(text, kinds));
}

/** How a part is named in a message: by its key, or by words. Most parts have no message, so that no words are made for them. */
type Name = ScalarTree | string;

function worded(name: Name): string {
  return typeof name === 'string' ? name : `"${name.text}"`;
}

/** The words that may stand in an empty place; none where a colon is missing before it. */
function wordsFor(tree: Tree, shape: Shape, name: Name): readonly string[] {
  if (shape.form !== 'words') return [];
  const isColonMissing = typeof name !== 'string' && name.span.end === tree.span.start;
  return isColonMissing ? [] : [...shape.words.keys()];
}

function inspectNode(tree: Tree, shape: Shape, name: Name, seen: Seen): void {
  if (tree.node === 'empty' || isNull(tree)) {
    if (shape.form === 'date' && shape.mayBeEmpty === true) {
      if (shape.limits?.types.has('null') !== true) seen.isDoubtful = true;
      return;
    }
    seen.problems.push(emptyValue(tree, worded(name), wordsFor(tree, shape, name)));
    return;
  }
  switch (shape.form) {
    case 'record':
      if (tree.node === 'map') inspectRecord(tree, shape, name, seen);
      else seen.problems.push(unfitting(tree, shape, worded(name)));
      return;
    case 'list':
      if (tree.node === 'list') inspectItems(tree, shape, `an item of ${worded(name)}`, seen);
      else seen.problems.push(unfitting(tree, shape, worded(name)));
      return;
    case 'table':
      if (tree.node !== 'map') seen.problems.push(unfitting(tree, shape, worded(name)));
      else for (const { key, value } of tree.entries) inspectRow(key, value, shape.value, seen);
      return;
    case 'citation':
      inspectCitation(tree, name, seen);
      return;
    default:
      if (tree.node !== 'scalar') seen.problems.push(unfitting(tree, shape, worded(name)));
      else inspectScalar(tree, shape, name, seen);
  }
}

function inspectItems({ items }: ListTree, { item, counts }: ListShape, name: string, seen: Seen): void {
  if (counts === undefined || items.length < counts.fewest || items.length > counts.most) seen.isDoubtful = true;
  for (const one of items) inspectNode(one, item, name, seen);
}

function isNull(tree: Tree): boolean {
  return tree.node === 'scalar' && tree.style === 'plain' && (tree.text === 'null' || tree.text === '~');
}

function inspectRow(key: ScalarTree, value: Tree, shape: Shape, seen: Seen): void {
  const hazard = scalarHazard(key, 'id');
  if (hazard !== undefined) seen.problems.push(hazard);
  inspectNode(value, shape, key, seen);
}

function inspectRecord(tree: MapTree, shape: RecordShape, name: Name, seen: Seen): void {
  const entries = entriesOf(tree);
  for (const { key, value } of entries) {
    const field = shape.fields.get(key.text);
    if (field !== undefined) {
      inspectNode(value, field.shape, key, seen);
      if (value.node === 'list' && field.suggestions !== undefined) inspectWords(value.items, field.suggestions, seen);
    } else {
      const known = [...shape.fields.keys()];
      seen.problems.push(words.unknownKey(key, worded(name), nearest(key.text, known), known));
    }
  }
  for (const key of shape.required) {
    if (!hasKey(entries, key))
      seen.problems.push(words.keyMissing(tree, worded(name), key, shape.fields.get(key)?.description ?? ''));
  }
  if (shape.name === 'Requirement' && !entries.some(({ key }) => sayingWords.has(key.text)))
    seen.problems.push(words.requirementEmpty(tree, worded(name)));
}

/** Items of which every word is one that is often written there by itself: a comma was left out. */
function inspectWords(items: readonly Tree[], usual: ReadonlyMap<string, string>, seen: Seen): void {
  for (const item of items) {
    if (item.node !== 'scalar' || item.style !== 'plain' || usual.has(item.text)) continue;
    const parts = item.text.split(/\s+/);
    if (parts.length > 1 && parts.every((part) => usual.has(part))) seen.problems.push(words.runTogether(item, parts));
  }
}

/** Of several entries with one key, the first. Nearly every map has each key once, and few keys. */
function entriesOf({ entries }: MapTree): readonly MapEntry[] {
  if (entries.length > 12) return firstEntries(entries);
  for (let at = 1; at < entries.length; at++)
    for (let before = 0; before < at; before++)
      if (entries[before]?.key.text === entries[at]?.key.text) return firstEntries(entries);
  return entries;
}

function firstEntries(entries: readonly MapEntry[]): readonly MapEntry[] {
  const seen = new Set<string>();
  return entries.filter(({ key }) => {
    const isFirst = !seen.has(key.text);
    seen.add(key.text);
    return isFirst;
  });
}

function hasKey(entries: readonly MapEntry[], wanted: string): boolean {
  for (const { key } of entries) if (key.text === wanted) return true;
  return false;
}

function inspectCitation(tree: Tree, name: Name, seen: Seen): void {
  const scalars = tree.node === 'list' ? tree.items : [tree];
  if (scalars.length === 0 || tree.node === 'map') seen.isDoubtful = true;
  for (const scalar of scalars) {
    if (scalar.node === 'map' && tree.node === 'map') continue;
    if (scalar.node !== 'scalar') seen.problems.push(words.citation(scalar, worded(name)));
    else {
      const type = plainTypeOf(scalar);
      if (type !== 'string' && type !== 'number') seen.isDoubtful = true;
      pushIfDefined(scalarHazard(scalar, 'id'), seen);
    }
  }
}

function inspectScalar(tree: ScalarTree, shape: ScalarShape, name: Name, seen: Seen): void {
  if (shape.limits === undefined || !isWithin(tree, shape.limits)) seen.isDoubtful = true;
  if (tree.text === '' && shape.form !== 'flag') {
    seen.problems.push(emptyValue(tree, worded(name), wordsFor(tree, shape, name)));
    return;
  }
  if (shape.form === 'date' && shape.mayBeMonth === true && month.test(tree.text)) return;
  const hazard = scalarHazard(tree, expected(shape));
  if (hazard !== undefined) seen.problems.push(hazard);
  else if (shape.form === 'words' && !shape.words.has(tree.text)) {
    seen.problems.push(words.unknownWord(tree, worded(name), shape.words, nearest(tree.text, shape.words.keys())));
  } else if (shape.form === 'flag' && tree.text !== 'true' && tree.text !== 'false')
    seen.problems.push(unfitting(tree, shape, worded(name)));
}

const month = /^[0-9]{4}-(?:0[1-9]|1[0-2])$/;

function expected(shape: Shape): Parameters<typeof scalarHazard>[1] {
  switch (shape.form) {
    case 'quantity':
      return shape.dimension === 'number' ? 'number' : 'quantity';
    case 'id':
    case 'reference':
      return 'id';
    case 'date':
    case 'datetime':
      return 'date';
    case 'flag':
      return 'flag';
    default:
      return 'text';
  }
}

function pushIfDefined(problem: Problem | undefined, seen: Seen): void {
  if (problem !== undefined) seen.problems.push(problem);
}
