import type { Span } from '../base/span.ts';
import { focusOf } from '../check/finding.ts';
import type { FileRecord } from '../library/file-record.ts';
import { contentOf, contentWithout, fieldAt, keysOf } from '../model/content.ts';
import type { AnyEntity } from '../model/entity.ts';
import { rootOfEntity } from '../model/entity.ts';
import type { List, Node, Rec, Table } from '../model/node.ts';
import { isRequirement } from '../model/walk.ts';
import { alignItems, labelOf } from '../revision/align.ts';
import { recordKeepingFields } from '../revision/fields.ts';
import { meaningWords } from '../revision/words.ts';
import type { MapTree, Tree } from '../syntax/tree.ts';

/** What a second reader is given: who it is about, and what the documents say. Everything else is to be encoded anew. */
const given: ReadonlySet<string> = new Set(['kind', 'id', 'name', 'maker', 'sources', 'statements']);

/** One field as two readers encoded it. */
export interface ComparedField {
  /** `sterilization › any of › pv132 › exposure`. */
  readonly path: string;
  readonly verdict: 'same' | 'differs' | 'only-first' | 'only-second';
  /** In words; empty where the reader has no such field. */
  readonly first: string;
  readonly second: string;
  readonly firstAt?: Span;
  readonly secondAt?: Span;
}

/** A copy with the quotes and none of the values; undefined for a file without quotes, or one that is not laid out line by line. */
export function blindCopy({ text }: FileRecord, tree: MapTree, entity: AnyEntity): string | undefined {
  const { kind, id } = rootOfEntity(entity);
  if (text[tree.span.start] === '{' || !tree.entries.some(({ key }) => key.text === 'statements')) return undefined;
  const parts = tree.entries.filter(({ key }) => given.has(key.text)).map((entry) => sliceOf(text, entry));
  const head = [
    `# Second reading of ${kind} ${id}: encode every quote below as the page has it, without looking at the first reading.`,
    '# Then run "Traywright: Compare Two Readings".',
  ];
  return `${[...head, ...parts].join('\n')}\n`;
}

/** The lines of one field. Comments are left out: they may speak of the first reading. */
function sliceOf(text: string, { key, value }: MapTree['entries'][number]): string {
  const scalars = scalarsIn(value);
  const lines: string[] = [];
  let at = key.span.start;
  for (const line of text.slice(key.span.start, Math.max(key.span.end, value.span.end)).split('\n')) {
    const start = at + (line.length - line.trimStart().length);
    const isComment = line.trimStart().startsWith('#') && !scalars.some((one) => one.start <= start && start < one.end);
    if (!isComment && line.trim() !== '') lines.push(line.replace(/\r$/, ''));
    at += line.length + 1;
  }
  return lines.join('\n');
}

function scalarsIn(tree: Tree): readonly Span[] {
  if (tree.node === 'map') return tree.entries.flatMap(({ value }) => scalarsIn(value));
  if (tree.node === 'list') return tree.items.flatMap(scalarsIn);
  return [tree.span];
}

/**
 * Two readings of one document, field by field. List items are paired by id, by what they are about, else by likeness; ids inside are names
 * that each reader chose and are not compared. What both were given is not compared either.
 */
export function compareReadings(first: AnyEntity, second: AnyEntity): readonly ComparedField[] {
  const rows: ComparedField[] = [];
  compareRecords(first, second, { path: [], rows, leftOut: new Set([...given, ...recordKeepingFields]) });
  return rows;
}

interface Comparing {
  readonly path: readonly string[];
  readonly rows: ComparedField[];
  readonly leftOut: ReadonlySet<string>;
}

function within(comparing: Comparing, step: string): Comparing {
  return { ...comparing, path: [...comparing.path, step], leftOut: inside };
}

const inside: ReadonlySet<string> = new Set(['id', ...recordKeepingFields]);

function compareRecords(first: Rec, second: Rec, comparing: Comparing): void {
  const keys = new Set([...keysOf(first), ...keysOf(second)]);
  for (const key of keys) {
    if (comparing.leftOut.has(key)) continue;
    compareNodes(fieldAt(first, key), fieldAt(second, key), within(comparing, key.replaceAll('_', ' ')));
  }
}

function compareNodes(first: Node | undefined, second: Node | undefined, comparing: Comparing): void {
  if (first === undefined || second === undefined) report(first, second, comparing);
  else if (isRequirement(first) && isRequirement(second)) compareDemands(first, second, comparing);
  else if (first.node === 'record' && second.node === 'record') compareRecords(first, second, comparing);
  else if (first.node === 'table' && second.node === 'table') compareTables(first, second, comparing);
  else if (first.node === 'list' && second.node === 'list' && holdsRecords(first, second))
    compareLists(first, second, comparing);
  else report(first, second, comparing);
}

/** The demand itself, and apart from it the sentence it is taken from. */
function compareDemands(first: Rec, second: Rec, comparing: Comparing): void {
  report(first, second, comparing);
  const [one, other] = [fieldAt(first, 'src'), fieldAt(second, 'src')];
  if (one !== undefined || other !== undefined) report(one, other, within(comparing, 'src'));
}

function holdsRecords(...lists: readonly List<Node>[]): boolean {
  return lists.some(({ items }) => items.some(({ node }) => node === 'record'));
}

function compareLists(first: List<Node>, second: List<Node>, comparing: Comparing): void {
  const { pairs, removed, added } = alignItems(String(first.at.key), first.items, second.items);
  const step = (item: Node): string => labelOf(item) ?? `item ${Number(item.at.key) + 1 || ''}`.trim();
  for (const [one, other] of pairs) compareNodes(one, other, within(comparing, step(one)));
  for (const item of removed) report(item, undefined, within(comparing, step(item)));
  for (const item of added) report(undefined, item, within(comparing, step(item)));
}

function compareTables(first: Table<Node>, second: Table<Node>, comparing: Comparing): void {
  for (const key of new Set([...first.rows.keys(), ...second.rows.keys()]))
    compareNodes(first.rows.get(key)?.value, second.rows.get(key)?.value, within(comparing, key));
}

function report(first: Node | undefined, second: Node | undefined, { path, rows }: Comparing): void {
  const verdict =
    first === undefined
      ? 'only-second'
      : second === undefined
        ? 'only-first'
        : saysOf(first) === saysOf(second)
          ? 'same'
          : 'differs';
  rows.push({
    path: path.join(' › '),
    verdict,
    first: first === undefined ? '' : meaningWords(first),
    second: second === undefined ? '' : meaningWords(second),
    ...(first && { firstAt: focusOf(first.at) }),
    ...(second && { secondAt: focusOf(second.at) }),
  });
}

const notSaid: ReadonlySet<string> = new Set(['src', ...recordKeepingFields]);

/** Words of a list are compared as a set: a reader may name traits or materials in any order. */
function saysOf(node: Node): string {
  if (node.node === 'list') return node.items.map(contentOf).sort().join();
  return contentWithout(node, notSaid);
}
