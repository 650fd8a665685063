import type { Edit } from '../../base/problem.ts';
import type { FileRecord } from '../../library/file-record.ts';
import type { Kind } from '../../schema/kinds.ts';
import type { Shape } from '../../schema/shape.ts';
import { appendItem, insertEntry } from '../../syntax/edits.ts';
import { quoteScalar } from '../../syntax/quote.ts';
import type { ListTree, MapTree, Tree } from '../../syntax/tree.ts';
import { valueUnder } from '../../syntax/value-under.ts';
import type { Sentence } from '../reading/open-sentences.ts';
import { shapeAt, told } from '../reading/told-fields.ts';
import type { WalkChoice } from '../words/walk-choice.ts';
import { leaveOpen } from '../words/walk-choice.ts';
import { asValue } from '../writing/bare.ts';
import type { NewField } from '../writing/insert-fields.ts';
import { citedAlso } from '../writing/insert-fields.ts';
import { marked } from '../writing/marked.ts';
import { noted } from './sentence-notes.ts';

/** A field that the file has already, and what a further sentence says of it: nothing goes without being told. */
export interface Twice {
  readonly field: NewField;
  readonly node: Tree;
  /** The group it stands in. */
  readonly around: Tree | undefined;
  /** What stands there, and what would stand there, as people read it. */
  readonly old: string;
  readonly new: string;
}

/** Those of the fields of which the file has a value already. `words`: what was chosen in their open places. */
export function standing(
  { text, kind }: FileRecord,
  root: MapTree,
  fields: readonly NewField[],
  words: readonly string[],
): readonly Twice[] {
  if (kind === undefined) return [];
  return fields.flatMap((given) => {
    const keys = given.path.replaceAll('[]', '').split('.');
    const node = nodeAt(root, keys);
    if (node === undefined || node.node === 'empty' || given.path.endsWith('[]')) return [];
    const field = { path: given.path, value: marked.plain(given.value, words) };
    const old = told(kind, [{ path: field.path, value: onOneLine(text, node) ?? '' }], []);
    return [{ field, node, around: nodeAt(root, keys.slice(0, -1)), old, new: told(kind, [field], []) }];
  });
}

/** What stands at the end of these keys; of an item its number from 0. */
export function nodeAt(tree: Tree, keys: readonly string[]): Tree | undefined {
  const [key, ...rest] = keys;
  if (key === undefined) return tree;
  const inner = tree.node === 'map' ? valueUnder(tree, key) : tree.node === 'list' ? itemAt(tree, key) : undefined;
  return inner === undefined ? undefined : nodeAt(inner, rest);
}

function itemAt({ items }: ListTree, key: string): Tree | undefined {
  return /^\d{1,6}$/.test(key) ? items[Number(key)] : undefined;
}

/** As it stands, in braces where it stands on lines of its own; undefined where it is more than values. */
function onOneLine(text: string, node: Tree): string | undefined {
  const own = text.slice(node.span.start, node.span.end);
  if (!own.includes('\n') || node.node !== 'map') return own.includes('\n') ? undefined : own;
  const parts = node.entries.map(({ key, value }) => [key.text, text.slice(value.span.start, value.span.end)] as const);
  return parts.some(([, value]) => value.includes('\n'))
    ? undefined
    : `{${parts.map(([key, value]) => `${key}: ${value}`).join(', ')}}`;
}

/**
 * What can be done where a sentence says something of fields that are there: the same, or this instead, or both. Where it says something else, a
 * hasty Enter decides nothing.
 */
export function aboutTwice(record: FileRecord, sentence: Sentence, all: readonly Twice[]): readonly WalkChoice[] {
  const { kind } = record;
  if (kind === undefined || all.length === 0) return [];
  const [was, says] = [all.map((one) => one.old).join(' | '), all.map((one) => one.new).join(' | ')];
  if (all.every((one) => one.old === one.new)) return [...sameAgain(record, sentence, all), leaveOpen()];
  const kept = bothKept(record, kind, all);
  const cited = citedBeside(record, kind, sentence, all);
  return [
    leaveOpen(),
    {
      label: `Put this in its place: ${says}`,
      detail: `what goes: ${was}`,
      does: 'fields',
      edits: [...all.map(({ field, node }) => ({ span: node.span, text: field.value })), ...cited],
    },
    ...(kept === undefined
      ? []
      : [
          {
            label: `Keep both${isBeside(all) ? '' : ' as a contradiction'}: ${was}, and ${lastNamed(says)}`,
            detail: both(all),
            does: 'fields' as const,
            edits: [...kept, ...cited],
          },
        ]),
  ];
}

/** Behind what is there, the same name need not stand again. */
function lastNamed(words: string): string {
  return words.includes(' | ') ? words : words.slice(words.indexOf(': ') + 2);
}

function isBeside(all: readonly Twice[]): boolean {
  return all.some(({ node }) => node.node === 'scalar');
}

/** Two numbers for one thing are written as what the page says in two ways; which of them holds is nobody's guess. */
function both(all: readonly Twice[]): string {
  return isBeside(all)
    ? 'one behind the other'
    : 'for pages that do not agree: it stays a finding until the maker has answered';
}

/** A value without a place for its sentence: the group names it, or the sentence itself says where it went. */
function citedBeside(record: FileRecord, kind: Kind, sentence: Sentence, all: readonly Twice[]): readonly Edit[] {
  const [first] = all.filter(({ node }) => node.node === 'scalar');
  if (first === undefined) return [];
  const { around, field } = first;
  const group = shapeAt(kind, field.path.split('.').slice(0, -1).join('.'));
  const isNamed = group?.form === 'record' && group.fields.has('src') && field.path.includes('.');
  if (isNamed && around !== undefined) return citing(record.text, around, asValue(sentence.id));
  return noted(record, sentence, `in words under ${field.path}`) ?? [];
}

function sameAgain({ text }: FileRecord, { id }: Sentence, all: readonly Twice[]): readonly WalkChoice[] {
  const edits = all.flatMap(({ node, around }) =>
    citing(text, node.node === 'map' ? node : (around ?? node), asValue(id)),
  );
  const [first] = all;
  return edits.length === 0
    ? []
    : [{ label: 'It says the same: name this sentence there too', detail: first?.old ?? '', does: 'fields', edits }];
}

function citing(text: string, node: Tree, id: string): readonly Edit[] {
  if (node.node !== 'map') return [];
  const src = valueUnder(node, 'src');
  const edit = src === undefined ? insertEntry(text, node, 'src', [id]) : undefined;
  return src === undefined ? (edit === undefined ? [] : [edit]) : citedAlso(text, src, id);
}

/** Undefined where a field has no place for more than one value. */
function bothKept({ text }: FileRecord, kind: Kind, all: readonly Twice[]): readonly Edit[] | undefined {
  const edits = all.map(({ field, node }) => {
    const shape = shapeAt(kind, field.path);
    const old = onOneLine(text, node);
    if (shape === undefined || old === undefined) return undefined;
    if (node.node === 'scalar') return besideText(shape, node.text, field.value, node);
    return node.node === 'map' && canDisagree(shape) ? disagreeing(text, node, old, field.value) : undefined;
  });
  return edits.every((edit) => edit !== undefined) ? edits : undefined;
}

function canDisagree(shape: Shape): boolean {
  return shape.form === 'record' && shape.dimension !== undefined && shape.fields.has('conflict');
}

function disagreeing(text: string, node: MapTree, old: string, value: string): Edit | undefined {
  const known = valueUnder(node, 'conflict');
  if (known !== undefined) return known.node === 'list' ? appendItem(text, known, [value]) : undefined;
  return { span: node.span, text: `{conflict: [${old}, ${value}]}` };
}

/** Free words go on behind those that are there. */
function besideText(shape: Shape, old: string, value: string, { span }: Tree): Edit | undefined {
  if (shape.form !== 'text') return undefined;
  const own = /^"(?:[^"\\]|\\.)*"$/.test(value) ? String(JSON.parse(value)) : value;
  return { span, text: quoteScalar(`${old}; ${own}`) };
}
