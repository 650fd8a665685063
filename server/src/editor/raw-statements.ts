import type { Edit } from '../base/problem.ts';
import type { Span } from '../base/span.ts';
import { cleanPaste } from '../quantity/prose/clean-paste.ts';
import { numberSentences } from '../quantity/prose/sentences.ts';
import { tokenize } from '../quantity/prose/token.ts';
import type { Kind } from '../schema/kinds.ts';
import { shapeOf } from '../schema/shapes.ts';
import { fileForm } from '../syntax/edits.ts';
import { quoteScalar } from '../syntax/quote.ts';
import type { MapTree } from '../syntax/tree.ts';
import { asValue } from './bare.ts';
import type { PageMark } from './headings.ts';
import { type Passage, type RawBlock, rawBlock } from './raw-lines.ts';

/**
 * Sentences of pages that were pasted under `statements:` as they are: each becomes a statement with an id that the file does not use yet,
 * the document of the file's first source, and its words between quotation marks. Page and section come from the page marks and headings
 * among the sentences; a page that no mark tells is left open.
 */
export interface MadeStatements {
  /** From the line of `statements:` to the end of what stands under it. */
  readonly span: Span;
  readonly count: number;
  readonly edits: readonly Edit[];
}

export function statementsFromRaw(text: string, kind: Kind, tree: MapTree | undefined): MadeStatements | undefined {
  const keys = new Set(shapeOf(kind).fields.keys());
  const block = keys.has('statements') ? rawBlock(text, keys) : undefined;
  if (block === undefined || block.runs.length === 0) return undefined;
  const { lineEnd, step } = fileForm(text);
  const indent = block.indent ?? ' '.repeat(step);
  const source = sourceIn(text, tree);
  let next = freeNumber(text, block);
  let count = 0;
  const edits: Edit[] = block.mark === undefined ? [] : [{ span: block.mark, text: '' }];
  for (const { span, passages } of block.runs) {
    const lines = quotedIn(passages, numberIn(text, tree)).map(({ page, section, sentence }) => {
      count++;
      const place = `page: ${page ?? ''}${section === '' ? '' : `, section: ${asValue(section)}`}`;
      return `${indent}s${next++}: {${source}, ${place}, quote: ${doubleQuoted(sentence)}}`;
    });
    edits.push({ span, text: lines.join(lineEnd) });
  }
  return { span: block.span, count, edits };
}

/** A number that no id of the file has and that nothing cites: a citation left over must not come to mean another sentence. */
function freeNumber(text: string, { runs }: RawBlock): number {
  let rest = '';
  let from = 0;
  for (const { span } of runs) {
    rest += `${text.slice(from, span.start)}\n`;
    from = span.end;
  }
  rest += text.slice(from);
  let highest = 0;
  for (const [, digits] of rest.matchAll(/\bs(\d{1,6})\b/g)) highest = Math.max(highest, Number(digits));
  return highest + 1;
}

function sourceIn(text: string, tree: MapTree | undefined): string {
  return `doc: ${writtenOfSource(text, tree, 'doc')}, rev: ${writtenOfSource(text, tree, 'rev')}`;
}

function numberIn(text: string, tree: MapTree | undefined): string {
  return writtenOfSource(text, tree, 'doc').replace(/^["']|["']$/g, '');
}

function writtenOfSource(text: string, tree: MapTree | undefined, name: 'doc' | 'rev'): string {
  const sources = tree?.entries.find(({ key }) => key.text === 'sources')?.value;
  const first = sources?.node === 'list' ? sources.items[0] : undefined;
  const value = first?.node === 'map' ? first.entries.find(({ key }) => key.text === name)?.value : undefined;
  return value?.node === 'scalar' ? text.slice(value.span.start, value.span.end) : '';
}

interface Quoted {
  readonly page: number | undefined;
  readonly section: string;
  readonly sentence: string;
}

/** Each sentence with its page and section. Headings that follow each other at once are one: `Cleaning` and `By hand`. */
function quotedIn(passages: readonly Passage[], document: string): readonly Quoted[] {
  const found: Quoted[] = [];
  const pages = pagesOf(passages);
  let section = '';
  let before: Passage | undefined;
  for (const [at, passage] of passages.entries()) {
    if (passage.is === 'heading')
      section = before?.is === 'heading' ? `${section}: ${passage.text}`.slice(-longestSection) : passage.text;
    else if (passage.is === 'paragraph' && !isRunningHead(passage.text, document))
      for (const sentence of sentencesOf(passage.text)) found.push({ page: pages[at], section, sentence });
    before = passage;
  }
  return found;
}

const longestSection = 120;

/**
 * The page of each passage. Where marks stand at the head, what comes before a first head of page 2 stands on page 1. What follows the last
 * foot stands on the last page where the mark tells how many there are. A page that this leaves in doubt stays open.
 */
function pagesOf(passages: readonly Passage[]): readonly (number | undefined)[] {
  const marks = passages.flatMap((passage, at) => (passage.is === 'page' ? [{ ...passage, at }] : []));
  const [first, end] = [marks[0], marks.at(-1)];
  if (first === undefined || end === undefined) return [];
  switch (placeOfMarks(passages, first, end)) {
    case 'foot': {
      const afterEnd = end.of === end.page + 1 ? end.of : undefined;
      return passages.map((_passage, at) => marks.find((mark) => mark.at >= at)?.page ?? afterEnd);
    }
    case 'head': {
      const beforeFirst = first.page === 2 ? 1 : undefined;
      return passages.map((_passage, at) => marks.findLast((mark) => mark.at <= at)?.page ?? beforeFirst);
    }
    case 'unclear':
      return [];
  }
}

type PlacedMark = PageMark & { readonly at: number };

/** Above the head of a first page stands a title at most: a section there, and more so several, shows that the mark is a foot. */
function placeOfMarks(passages: readonly Passage[], first: PlacedMark, end: PlacedMark): 'head' | 'foot' | 'unclear' {
  if (passages.at(-1)?.is === 'page') return 'foot';
  const sections = passages.filter(
    ({ is }, at) => is === 'heading' && at < first.at && passages[at + 1]?.is === 'paragraph',
  ).length;
  if (first.page !== 1 || sections === 0) return 'head';
  return sections > 1 && end.page !== end.of ? 'foot' : 'unclear';
}

/** A line that says nothing but number and revision of the document. */
function isRunningHead(text: string, document: string): boolean {
  return document !== '' && text.includes(document) && text.trim().split(/\s+/).length <= 4;
}

/** A semicolon joins what belongs together on the page, so that it ends no quote. */
function sentencesOf(paragraph: string): readonly string[] {
  const clean = cleanPaste(paragraph).text.replace(/\s+/g, ' ').trim();
  const tokens = tokenize(clean, 'en');
  const numbers = numberSentences(tokens, clean);
  const found: string[] = [];
  let from = 0;
  for (const [at, token] of tokens.entries()) {
    const ends = numbers[at + 1] !== numbers[at] && token.text !== ';';
    if (!ends && at + 1 < tokens.length) continue;
    const end = at + 1 < tokens.length ? token.end : clean.length;
    const sentence = clean.slice(from, end).trim();
    if (/\p{L}/u.test(sentence)) found.push(sentence);
    from = end;
  }
  return found;
}

function doubleQuoted(text: string): string {
  const quoted = quoteScalar(text);
  return quoted.startsWith('"') ? quoted : JSON.stringify(text);
}
