import type { Edit } from '../../base/problem.ts';
import type { RecordShape } from '../../schema/shape.ts';
import { appendItem, fileForm, insertEntry } from '../../syntax/edits.ts';
import type { ListTree, MapTree, Tree } from '../../syntax/tree.ts';
import { valueUnder } from '../../syntax/value-under.ts';
import { entriesOf } from './nested-flow.ts';

/** A field to add, by the keys that lead to it; `[]` at the end adds an item. */
export interface NewField {
  readonly path: string;
  /** On one line. */
  readonly value: string;
  /** The same on lines of its own, where it grows as an instruction is read: used wherever the file is not between braces there. */
  readonly lines?: readonly string[];
  /** The fields inside it by name, where it is more than the one at its path. */
  readonly holds?: readonly string[];
  /** What an item of a list begins with: what is done, or which method. */
  readonly head?: string;
}

export interface Inserted {
  readonly edits: readonly Edit[];
  readonly made: readonly string[];
  /** Fields that the file has already: they are left as they are. */
  readonly there: readonly string[];
}

/** Adds fields to a file: into groups that are there, else as new groups at their place in the order of the work. */
export function insertFields(text: string, root: MapTree, shape: RecordShape, fields: readonly NewField[]): Inserted {
  const edits: Edit[] = [];
  const made: string[] = [];
  const there: string[] = [];
  for (const [head, group] of inOrder(grouped(together(root, fields)), shape)) {
    const known = valueUnder(root, head);
    if (known === undefined || known.node === 'empty') {
      edits.push(known === undefined ? newEntry(text, root, shape, head, group) : inOpenLine(text, root, head, group));
      made.push(...group.flatMap(namesOf));
      continue;
    }
    const [citing, saying] = parted(byPath(group));
    for (const [path, fields] of saying) {
      const added = into(text, known, path.split('.').slice(1), fields);
      if (added.length === 0) there.push(path);
      else made.push(...fields.flatMap(namesOf));
      edits.push(...added);
    }
    for (const [path, fields] of citing) {
      const around = path.slice(0, -'src'.length);
      if (!saying.some(([other]) => other.startsWith(around) && !there.includes(other))) continue;
      edits.push(...into(text, known, path.split('.').slice(1), fields));
      made.push(path);
    }
  }
  return { edits: joined(edits), made, there };
}

/** Fields that share a group which is not there yet come in as that one group: `wash: {temp: ..., time: ...}`. */
function together(root: MapTree, fields: readonly NewField[]): readonly NewField[] {
  const shared = new Map<string, NewField[]>();
  for (const field of fields) {
    const parent = field.path.split('.').slice(0, -1).join('.');
    const isNested = parent.includes('.') && !parent.includes('[]') && !isThere(root, parent.split('.'));
    const key = isNested ? parent : field.path;
    shared.set(key, [...(shared.get(key) ?? []), field]);
  }
  return [...shared].flatMap(([path, inside]) => {
    if (inside.length === 1 || inside[0]?.path === path) return inside;
    const parts = inside.map((field) => ({ keys: [field.path.split('.').at(-1) ?? ''], value: field.value }));
    return [{ path, value: `{${entriesOf(parts).join(', ')}}`, holds: inside.flatMap(namesOf) }];
  });
}

function namesOf({ path, holds }: NewField): readonly string[] {
  return holds ?? [path];
}

function isThere(tree: Tree, keys: readonly string[]): boolean {
  const [key, ...rest] = keys;
  if (key === undefined) return tree.node !== 'empty';
  const inner = tree.node === 'map' ? valueUnder(tree, key) : tree.node === 'list' ? itemOf(tree, key) : undefined;
  return inner !== undefined && isThere(inner, rest);
}

function grouped(fields: readonly NewField[]): ReadonlyMap<string, NewField[]> {
  const groups = new Map<string, NewField[]>();
  for (const field of fields) {
    const head = (field.path.split('.')[0] ?? '').replace('[]', '');
    groups.set(head, [...(groups.get(head) ?? []), field]);
  }
  return groups;
}

/** Groups that come in at one place stand in the order of the work. */
function inOrder(groups: ReadonlyMap<string, NewField[]>, { fields }: RecordShape): readonly [string, NewField[]][] {
  const order = [...fields.keys()];
  return [...groups].sort(([a], [b]) => order.indexOf(a) - order.indexOf(b));
}

type AtPath = readonly [string, readonly NewField[]];

/** Where the sentence is named comes last, and only where something else came in beside it. */
function parted(paths: ReadonlyMap<string, readonly NewField[]>): readonly [readonly AtPath[], readonly AtPath[]] {
  const all = [...paths];
  const isCiting = ([path]: AtPath): boolean => path.endsWith('.src');
  return [all.filter(isCiting), all.filter((one) => !isCiting(one))];
}

function byPath(fields: readonly NewField[]): ReadonlyMap<string, readonly NewField[]> {
  const found = new Map<string, NewField[]>();
  for (const field of fields) found.set(field.path, [...(found.get(field.path) ?? []), field]);
  return found;
}

/** Below a value that is there; none when what leads there has another form or the field is given. */
function into(text: string, tree: Tree, keys: readonly string[], fields: readonly NewField[]): readonly Edit[] {
  const [key, ...rest] = keys;
  const isItem = fields[0]?.path.endsWith('[]') === true;
  if (key === undefined) return tree.node === 'list' && isItem ? items(text, tree, fields) : [];
  const item = tree.node === 'list' ? itemOf(tree, key) : undefined;
  if (item !== undefined) return into(text, item, rest, fields);
  if (tree.node !== 'map') return [];
  const name = key.replace('[]', '');
  const inner = valueUnder(tree, name);
  if (inner !== undefined) {
    if (key.endsWith('[]')) return inner.node === 'list' ? items(text, inner, fields) : [];
    if (key === 'src' && rest.length === 0) return citedAlso(text, inner, fields[0]?.value ?? '');
    return into(text, inner, rest, fields);
  }
  const edit = insertEntry(
    text,
    tree,
    name,
    text[tree.span.start] === '{' ? [flow(keys, fields)] : block(keys, fields),
  );
  return edit === undefined ? [] : [edit];
}

/** A group that names a sentence already names the further one beside it. */
export function citedAlso(text: string, src: Tree, statement: string): readonly Edit[] {
  if (src.node === 'scalar') {
    const { start, end } = src.span;
    const known = text.slice(start, end);
    return known === statement ? [] : [{ span: src.span, text: `[${known}, ${statement}]` }];
  }
  if (src.node !== 'list') return [];
  const isCited = src.items.some(({ span }) => text.slice(span.start, span.end) === statement);
  const edit = isCited ? undefined : appendItem(text, src, [statement]);
  return edit === undefined ? [] : [edit];
}

/** What stands behind the first of the keys, on one line. */
function flow([key = '', ...rest]: readonly string[], fields: readonly NewField[]): string {
  const all = fields.map(({ value }) => value).join(', ');
  if (key.endsWith('[]')) return nested(rest, `[${all}]`);
  return nested(rest, rest.at(-1)?.endsWith('[]') === true ? all : (fields[0]?.value ?? ''));
}

/** The same on lines: a list is written with dashes. */
function block(keys: readonly string[], fields: readonly NewField[]): readonly string[] {
  const [key = '', ...rest] = keys;
  if (rest.length > 0 || !key.endsWith('[]')) return [flow(keys, fields)];
  return fields.flatMap(asItem);
}

function asItem({ value, lines = [value] }: NewField): readonly string[] {
  return lines.map((line, at) => `${at === 0 ? '- ' : '  '}${line}`);
}

/** The item that a number in a path stands for. */
function itemOf({ items }: ListTree, key: string): Tree | undefined {
  return /^\d{1,6}$/.test(key) ? items[Number(key)] : undefined;
}

function items(text: string, list: ListTree, fields: readonly NewField[]): readonly Edit[] {
  const isFlow = text[list.span.start] === '[';
  const one = fields.map(({ value }) => value).join(', ');
  const added = isFlow
    ? [appendItem(text, list, [one])]
    : fields.map(({ value, lines }) => appendItem(text, list, lines ?? [value]));
  return added.filter((edit) => edit !== undefined);
}

/** `steps[]` and a value: `{steps: [value]}`. */
function nested(keys: readonly string[], value: string): string {
  let inner = value;
  for (const key of keys.toReversed()) {
    const name = key.replace('[]', '');
    inner = key.endsWith('[]') ? `{${name}: [${inner}]}` : `{${name}: ${inner}}`;
  }
  return inner;
}

/** A group of its own, before the first one that comes later in the order of the work. */
function newEntry(text: string, root: MapTree, shape: RecordShape, head: string, group: readonly NewField[]): Edit {
  const { lineEnd, step } = fileForm(text);
  const lines = linesOf(head, group, ' '.repeat(step));
  const order = [...shape.fields.keys()];
  const next = root.entries.find(({ key }) => order.indexOf(key.text) > order.indexOf(head));
  if (next !== undefined) {
    const at = next.key.span.start;
    return { span: { start: at, end: at }, text: `${lines.join(lineEnd)}${lineEnd}` };
  }
  const end = text.length;
  const before = text.endsWith('\n') || text === '' ? '' : lineEnd;
  return { span: { start: end, end }, text: `${before}${lines.join(lineEnd)}${lineEnd}` };
}

/** An open line, with its to-do behind it, gives way to what it waited for. */
function inOpenLine(text: string, root: MapTree, head: string, group: readonly NewField[]): Edit {
  const { lineEnd, step } = fileForm(text);
  const start = root.entries.find(({ key }) => key.text === head)?.key.span.start ?? text.length;
  const line = text.slice(start).split(/\r?\n/, 1)[0] ?? '';
  return {
    span: { start, end: start + line.length },
    text: linesOf(head, group, ' '.repeat(step)).join(lineEnd),
  };
}

function linesOf(head: string, group: readonly NewField[], indent: string): readonly string[] {
  const [first] = group;
  if (first !== undefined && group.length === 1 && first.path === head) return [`${head}: ${first.value}`];
  const indented = (added: readonly string[], times: number): readonly string[] =>
    added.map((line) => `${indent.repeat(times)}${line}`);
  if (first?.path === `${head}[]`) return [`${head}:`, ...indented(group.flatMap(asItem), 1)];
  const lines = [`${head}:`];
  for (const field of group) {
    const [key = '', ...rest] = field.path.split('.').slice(1);
    const opens = `${indent}${key.replace('[]', '')}:`;
    if (key.endsWith('[]')) lines.push(...(lines.includes(opens) ? [] : [opens]), ...indented(asItem(field), 2));
    else lines.push(`${opens} ${nested(rest, field.value)}`);
  }
  return lines;
}

/** Edits at the same place become one: what lies deeper belongs to what stands above and comes first, else they keep their order. */
function joined(edits: readonly Edit[]): readonly Edit[] {
  const at = new Map<number, Edit>();
  for (const edit of edits.toSorted((a, b) => indentOf(b) - indentOf(a))) {
    const known = at.get(edit.span.start);
    at.set(edit.span.start, known === undefined ? edit : { span: edit.span, text: known.text + edit.text });
  }
  return [...at.values()].sort((a, b) => a.span.start - b.span.start);
}

function indentOf({ text }: Edit): number {
  return text.length - text.trimStart().length;
}
