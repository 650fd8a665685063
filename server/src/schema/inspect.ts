import { nearest } from '../base/nearest.ts';
import type { Problem } from '../base/problem.ts';
import { scalarHazard } from '../syntax/hazards.ts';
import type { MapTree, ScalarTree, Tree } from '../syntax/tree.ts';
import type { Kind } from './kinds.ts';
import { isKind, kinds } from './kinds.ts';
import { passesSchema } from './passes.ts';
import { emptyValue, unfitting, words } from './problems.ts';
import type { RecordShape, Shape } from './shape.ts';
import { shapeOf } from './shapes.ts';

/**
 * What is wrong with a file's form, in plain words: one root cause, one problem. The compiled schema has the last word: if it refuses a
 * file in which the walk below sees nothing, that is said too, so that the two can't drift apart unseen.
 */
export function inspect(tree: MapTree): readonly Problem[] {
  const kind = kindOf(tree);
  if (typeof kind !== 'string') return [kind];
  const problems: Problem[] = [];
  inspectRecord(tree, shapeOf(kind), `A ${kind} file`, problems);
  if (problems.length === 0) {
    const refusal = passesSchema(tree, kind);
    if (refusal !== undefined) problems.push(words.refused(tree, refusal));
  }
  return problems;
}

function kindOf(tree: MapTree): Kind | Problem {
  const entry = tree.entries.find(({ key }) => key.text === 'kind');
  if (entry === undefined) return words.kindMissing(tree);
  if (entry.value.node !== 'scalar') return words.kindUnknown(entry.value, '', undefined);
  const text = entry.value.text;
  return isKind(text) ? text : words.kindUnknown(entry.value, text, nearest(text, kinds));
}

function inspectNode(tree: Tree, shape: Shape, name: string, problems: Problem[]): void {
  if (tree.node === 'empty' || isNull(tree)) {
    if (shape.form === 'date' && shape.mayBeEmpty === true) return;
    problems.push(emptyValue(tree, name));
    return;
  }
  switch (shape.form) {
    case 'record':
      if (tree.node === 'map') inspectRecord(tree, shape, name, problems);
      else problems.push(unfitting(tree, shape, name));
      return;
    case 'list':
      if (tree.node !== 'list') problems.push(unfitting(tree, shape, name));
      else for (const item of tree.items) inspectNode(item, shape.item, `an item of ${name}`, problems);
      return;
    case 'table':
      if (tree.node !== 'map') problems.push(unfitting(tree, shape, name));
      else for (const { key, value } of tree.entries) inspectRow(key, value, shape.value, problems);
      return;
    case 'citation':
      inspectCitation(tree, name, problems);
      return;
    default:
      if (tree.node !== 'scalar') problems.push(unfitting(tree, shape, name));
      else inspectScalar(tree, shape, name, problems);
  }
}

function isNull(tree: Tree): boolean {
  return tree.node === 'scalar' && tree.style === 'plain' && (tree.text === 'null' || tree.text === '~');
}

function inspectRow(key: ScalarTree, value: Tree, shape: Shape, problems: Problem[]): void {
  const hazard = scalarHazard(key, 'id');
  if (hazard !== undefined) problems.push(hazard);
  inspectNode(value, shape, `"${key.text}"`, problems);
}

function inspectRecord(tree: MapTree, shape: RecordShape, name: string, problems: Problem[]): void {
  const seen = new Set<string>();
  for (const { key, value } of tree.entries) {
    if (seen.has(key.text)) continue;
    seen.add(key.text);
    const field = shape.fields.get(key.text);
    if (field === undefined)
      problems.push(words.unknownKey(key, name, nearest(key.text, shape.fields.keys()), [...shape.fields.keys()]));
    else {
      inspectNode(value, field.shape, `"${key.text}"`, problems);
      if (value.node === 'list') inspectWords(value.items, field.suggestions ?? new Map(), problems);
    }
  }
  for (const key of shape.required) {
    if (!seen.has(key)) problems.push(words.keyMissing(tree, name, key, shape.fields.get(key)?.description ?? ''));
  }
  if (shape.name === 'Requirement' && !says(seen)) problems.push(words.requirementEmpty(tree, name));
}

/** Items of which every word is one that is often written there by itself: a comma was left out. */
function inspectWords(items: readonly Tree[], usual: ReadonlyMap<string, string>, problems: Problem[]): void {
  for (const item of items) {
    if (item.node !== 'scalar' || item.style !== 'plain' || usual.has(item.text)) continue;
    const parts = item.text.split(/\s+/);
    if (parts.length > 1 && parts.every((part) => usual.has(part))) problems.push(words.runTogether(item, parts));
  }
}

const sayingKeys = [
  'at_least',
  'at_most',
  'between',
  'exactly',
  'stated',
  'about',
  'silent',
  'ambiguous',
  'not_applicable',
  'defers_to',
  'conflict',
  'specific',
];

function says(keys: ReadonlySet<string>): boolean {
  return sayingKeys.some((key) => keys.has(key));
}

function inspectCitation(tree: Tree, name: string, problems: Problem[]): void {
  const scalars = tree.node === 'list' ? tree.items : [tree];
  for (const scalar of scalars) {
    if (scalar.node === 'map' && tree.node === 'map') continue;
    if (scalar.node !== 'scalar') problems.push(words.citation(scalar, name));
    else pushIfDefined(scalarHazard(scalar, 'id'), problems);
  }
}

function inspectScalar(tree: ScalarTree, shape: Shape, name: string, problems: Problem[]): void {
  if (tree.text === '' && shape.form !== 'flag') {
    problems.push(emptyValue(tree, name));
    return;
  }
  const hazard = scalarHazard(tree, expected(shape));
  if (hazard !== undefined) problems.push(hazard);
  else if (shape.form === 'words' && !shape.words.has(tree.text)) {
    problems.push(words.unknownWord(tree, name, shape.words, nearest(tree.text, shape.words.keys())));
  } else if (shape.form === 'flag' && tree.text !== 'true' && tree.text !== 'false')
    problems.push(unfitting(tree, shape, name));
}

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

function pushIfDefined(problem: Problem | undefined, problems: Problem[]): void {
  if (problem !== undefined) problems.push(problem);
}
