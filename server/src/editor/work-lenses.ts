import type { Span } from '../base/span.ts';
import { counted } from '../base/words.ts';
import type { FileRecord } from '../library/file-record.ts';
import { shapeOf } from '../schema/shapes.ts';
import type { MapTree } from '../syntax/tree.ts';
import { titleOf } from './items/add-item.ts';
import { type ItemList, writtenLists } from './items/item-lists.ts';
import { statementsFromRaw } from './page/raw-statements.ts';
import { sentencesOf } from './reading/open-sentences.ts';

/** A line above a place of a file that leads to the next piece of work there. */
export interface WorkLens {
  readonly at: Span;
  readonly text: string;
  /** `sentences`: goes through them. Else the path of a list that something is added to. */
  readonly leads: 'sentences' | { readonly adds: string };
}

/** Sentences of the file that nothing was made of yet. */
export interface Waiting {
  readonly at: Span;
  readonly words: string;
  /** They stand there as they were pasted. */
  readonly pasted: boolean;
  /** The last line of many, where the cursor stands after they were pasted. */
  readonly end?: Span;
}

/** Lines between a place and its other end that are seen together. */
const mostOnScreen = 20;

/** Undefined where none waits. The file need not be readable: pages that were only just pasted never are. */
export function waitingSentences({ text, kind }: FileRecord, tree: MapTree | undefined): Waiting | undefined {
  const raw = kind === undefined ? undefined : statementsFromRaw(text, kind, tree);
  if (raw !== undefined) {
    const at = { start: raw.span.start, end: raw.span.start + 'statements'.length };
    const words = `${counted(raw.sentences.length, 'pasted sentence')} ${raw.sentences.length === 1 ? 'waits' : 'wait'}`;
    const last = raw.span.start + text.slice(raw.span.start, raw.span.end).trimEnd().length;
    const isLong = text.slice(raw.span.start, last).split('\n').length > mostOnScreen;
    return { at, words, pasted: true, ...(isLong && { end: { start: last, end: last } }) };
  }
  const entry = tree?.entries.find(({ key }) => key.text === 'statements');
  if (tree === undefined || entry === undefined) return undefined;
  const open = sentencesOf(tree).filter(({ state }) => state === 'open').length;
  if (open === 0) return undefined;
  return { at: entry.key.span, words: `${counted(open, 'sentence')} ${open === 1 ? 'waits' : 'wait'}`, pasted: false };
}

/** What is to be done next at places of the file. */
export function workLensesOf(record: FileRecord, tree: MapTree | undefined): readonly WorkLens[] {
  const waiting = waitingSentences(record, tree);
  const sentences = waiting === undefined ? [] : sentenceLenses(waiting);
  if (tree === undefined || record.kind === undefined) return sentences;
  const lists = writtenLists(tree, shapeOf(record.kind)).filter((list) => hasLine(list, record.text));
  return [...sentences, ...lists.flatMap(addingLens)];
}

function sentenceLenses({ at, end, words }: Waiting): readonly WorkLens[] {
  const text = `${words}: turn ${words.startsWith('1 ') ? 'it' : 'them'} into fields`;
  return [at, ...(end === undefined ? [] : [end])].map((place) => ({ at: place, text, leads: 'sentences' }));
}

/** What is written once, when a file begins. */
const written: ReadonlySet<string> = new Set(['sources']);

/** A list inside the item of a list has none: a file would be full of them. */
function hasLine({ path, key, shape }: ItemList, text: string): boolean {
  const isInItem = path.some((part) => /^\d+$/.test(part));
  if (key === undefined || shape.item.form !== 'record' || isInItem || written.has(path.join('.'))) return false;
  return text.slice(text.lastIndexOf('\n', key.start) + 1, key.start).trim() === '';
}

function addingLens(list: ItemList): readonly WorkLens[] {
  const { path, key } = list;
  return key === undefined ? [] : [{ at: key, text: `${titleOf(list)}…`, leads: { adds: path.join('.') } }];
}
