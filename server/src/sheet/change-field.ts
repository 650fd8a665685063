import type { FileId } from '../base/brand.ts';
import type { Edit, Problem } from '../base/problem.ts';
import { readRuleFile } from '../library/file-record.ts';
import { appendItem, applyEdits, insertEntry, isSafeBare } from '../syntax/edits.ts';
import { quoteScalar } from '../syntax/quote.ts';
import { readTree } from '../syntax/read.ts';
import type { ListTree, MapTree, ScalarTree, Tree } from '../syntax/tree.ts';
import { cutEntry } from './cuts.ts';
import { cellOf, entryOf, itemsIn, treeAt } from './fields.ts';

export type Changed = { readonly text: string } | { readonly why: string };

/** How texts may be written, tried in this order: bare; each bare that every reader takes for that text; all in quotation marks. */
export const styles = ['bare', 'safe', 'quoted'] as const;

export type Style = (typeof styles)[number];

/**
 * The file's text with another value at a path, nothing else touched. `cell` is what the sheet says: empty takes the field away. Refused
 * where the result would not say just that, or would bring a fault into the file.
 */
export function changeField(file: FileId, text: string, path: readonly (string | number)[], cell: string): Changed {
  let refusal: string | undefined;
  for (const style of styles) {
    const made = edited(text, path, cell, style);
    if ('why' in made) return made;
    const fault = faultOf(file, text, made.text, path, cell);
    if (fault === undefined) return made;
    refusal ??= fault;
  }
  return { why: refusal ?? unclear };
}

const unclear = 'the file is written in a way that cannot be changed from here; change it there';

/** Undefined when the new text says what the cell says, and is no worse than before. */
function faultOf(
  file: FileId,
  before: string,
  after: string,
  path: readonly (string | number)[],
  cell: string,
): string | undefined {
  const { tree } = readTree(after);
  const now = tree === undefined ? undefined : cellOf(treeAt(tree, path));
  const fresh = newProblem(file, before, after);
  if (fresh !== undefined) return fresh;
  return now === cell || (now !== undefined && itemsIn(now).join('\n') === itemsIn(cell).join('\n'))
    ? undefined
    : unclear;
}

/** What is wrong with the new text that was not wrong with the old, in the words of the check. */
export function newProblem(file: FileId, before: string, after: string): string | undefined {
  const known = new Map<string, number>();
  for (const { rule } of problemsOf(file, before)) known.set(rule, (known.get(rule) ?? 0) + 1);
  for (const { rule, message } of problemsOf(file, after)) {
    const count = known.get(rule) ?? 0;
    if (count === 0) return message;
    known.set(rule, count - 1);
  }
  return undefined;
}

/** Of the texts looked at last: the new text of one change is the old one of the next. */
const recent = new Map<string, readonly Problem[]>();
const mostRecent = 4;

function problemsOf(file: FileId, text: string): readonly Problem[] {
  const known = recent.get(text);
  if (known !== undefined) return known;
  const { problems } = readRuleFile(file, text);
  recent.set(text, problems);
  for (const oldest of recent.keys()) if (recent.size > mostRecent) recent.delete(oldest);
  return problems;
}

function edited(text: string, path: readonly (string | number)[], cell: string, style: Style): Changed {
  const { tree } = readTree(text);
  const key = path.at(-1);
  const parent = tree === undefined ? undefined : treeAt(tree, path.slice(0, -1));
  if (parent?.node !== 'map' || typeof key !== 'string')
    return { why: 'the file has no such part yet; begin it there' };
  const edits = editsFor(text, parent, key, cell, style);
  return edits === undefined ? { why: unclear } : applied(text, edits);
}

export function applied(text: string, edits: readonly Edit[]): Changed {
  const made = applyEdits(text, edits);
  return 'text' in made ? made : { why: unclear };
}

function editsFor(text: string, map: MapTree, key: string, cell: string, style: Style): readonly Edit[] | undefined {
  const entry = entryOf(map, key);
  if (cell === '') return entry === undefined ? [] : some(cutEntry(text, map, entry));
  if (entry === undefined) return some(insertEntry(text, map, key, [valueFor(key, cell, style)]));
  const { value } = entry;
  switch (value.node) {
    case 'scalar':
      return [replaced(value, cell, style)];
    case 'empty':
      return [{ span: value.span, text: ` ${written(cell, style)}` }];
    case 'list':
      return listEdits(text, value, itemsIn(cell), style);
    case 'map':
      return undefined;
  }
}

function some(edit: Edit | undefined): readonly Edit[] | undefined {
  return edit === undefined ? undefined : [edit];
}

/** Fields that are lists, wherever they stand: new ones are written in brackets. */
const listKeys: ReadonlySet<string> = new Set(['covers', 'excludes', 'market', 'instructions', 'tests']);

export function valueFor(key: string, cell: string, style: Style): string {
  if (!listKeys.has(key)) return written(cell, style);
  return `[${itemsIn(cell)
    .map((item) => written(item, style))
    .join(', ')}]`;
}

const plain = /^[\p{L}\p{N}][\p{L}\p{N}_ .°/%+-]{0,198}$/u;

export function written(value: string, style: Style): string {
  const isBare = style === 'safe' ? isSafeBare(value) : style === 'bare' && plain.test(value) && !value.endsWith(' ');
  return isBare ? value : quoteScalar(value);
}

/** Quotation marks stay where they were. */
function replaced(scalar: ScalarTree, cell: string, style: Style): Edit {
  return { span: scalar.span, text: written(cell, scalar.style === 'plain' ? style : 'quoted') };
}

/** Only the items that differ, where as many are left; further ones at the end; else the whole list anew. */
function listEdits(text: string, list: ListTree, items: readonly string[], style: Style): readonly Edit[] | undefined {
  const old = list.items.map(cellOf);
  if (items.length === old.length)
    return list.items.flatMap((item, at) => (old[at] === items[at] ? [] : replacedItem(item, items[at] ?? '', style)));
  const fresh = items.slice(old.length);
  if (fresh.length === 1 && old.every((item, at) => item === items[at]))
    return some(appendItem(text, list, [written(fresh[0] ?? '', style)]));
  const isFlow = text[list.span.start] === '[';
  const texts = items.map((item) => written(item, style));
  if (isFlow) return [{ span: list.span, text: `[${texts.join(', ')}]` }];
  const first = list.items[0]?.span.start ?? list.span.start;
  const last = list.items.at(-1);
  if (last?.node !== 'scalar') return undefined;
  const column = first - text.lastIndexOf('\n', first - 1) - 3;
  const lineEnd = text.includes('\r\n') ? '\r\n' : '\n';
  return [
    { span: { start: first, end: last.span.end }, text: texts.join(`${lineEnd}${' '.repeat(Math.max(0, column))}- `) },
  ];
}

function replacedItem(item: Tree, cell: string, style: Style): readonly Edit[] {
  return item.node === 'scalar' ? [replaced(item, cell, style)] : [];
}
